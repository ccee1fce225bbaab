/** Access to the editor in the real browser: no serious fault on its pages and dialogs, targets, and build-ups and stages by keyboard alone. */

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { dxf, rectangle } from '../import/dxf-builder.ts';
import { seriousFaults, sidewaysPx, smallTargets, tabUntil } from './access-faults.ts';
import { untilReady } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

/** An edit waits for the worker. */
const until = <T>(of: () => T) => expect.poll(of);

let browser: Browser;
beforeAll(async () => {
  browser = await workerBrowser();
});
afterAll(async () => {
  await browser?.close();
});

describe.each([
  ['laptop', { width: 1280, height: 720 }, 24],
  ['phone', { width: 390, height: 844, touch: true, dpr: 3 }, 44],
] as const)('the editor on a %s', (device, options, leastPx) => {
  let opened: OpenedPage;
  let page: Page;
  beforeAll(async () => {
    opened = await openPage(browser, `${inject('base')}?scene=courtyard&show=edit-build-ups`, { ...options, reducedMotion: true });
    page = opened.page;
    await untilReady(page);
  });
  afterAll(() => opened?.close());

  const found: Record<string, string[]> = {};
  async function look(where: string, within = '.area-edit'): Promise<void> {
    const sideways = await sidewaysPx(page);
    const faults = [
      ...(await seriousFaults(page, within)),
      ...(await smallTargets(page, leastPx)),
      ...(sideways > 0 ? [`scrolls sideways by ${sideways} px`] : []),
    ];
    if (faults.length > 0) found[where] = faults;
  }
  const tab = (id: string) => page.locator(`#${id}`).click();

  it('build-ups and materials', async () => {
    await page.locator('.bu-chosen').waitFor();
    await page.getByRole('button', { name: 'New', exact: true }).click();
    await look('build-ups');
    await page.getByRole('radio', { name: 'Materials' }).check({ force: true });
    await page.locator('.bu-material').first().waitFor();
    await look('materials');
    expect(found).toEqual({});
  });

  it('the plan', async () => {
    await tab('edit-plan');
    await page.locator('.plan-editor, .pe-surface').first().waitFor();
    await look('plan');
    expect(found).toEqual({});
  });

  it('every page of a stage', async () => {
    await tab('edit-stages');
    await page.locator('.stage-table').getByRole('button').nth(9).click();
    // On a phone one with cards and one with a grid.
    for (const name of device === 'phone' ? ['lay', 'heaps'] : ['lay', 'heaps', 'plant', 'holds']) {
      await tab(`stage-tab-${name}`);
      await look(name);
    }
    expect(found).toEqual({});
  });

  it('a variant compared, lightening with its zones, views', async () => {
    await tab('edit-variants');
    await page.getByRole('button', { name: 'Keep what stands' }).click();
    await page.locator('.variant-row').waitFor();
    await look('variants');
    await tab('edit-lighten');
    await page.getByRole('radio', { name: 'These' }).check({ force: true });
    await look('lighten');
    await tab('edit-views');
    await page.locator('.views-table').getByRole('button').first().click();
    await look('views');
    expect(found).toEqual({});
  });

  it('the dialog of a new scene says beside its fields what is wrong', async () => {
    await page.getByRole('button', { name: 'Scenes', exact: true }).click();
    await page.getByRole('button', { name: 'New scene…' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Length of the deck').fill('twelve');
    await dialog.getByRole('button', { name: 'Begin' }).click();
    const said = await dialog.getByRole('alert').boundingBox();
    const room = await dialog.boundingBox();
    // Whole within the dialog, which cuts off what lies beyond it.
    expect(said!.y + said!.height).toBeLessThan(room!.y + room!.height);
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).value)).toBe('twelve');
    await look('new scene', 'dialog[open]');
    await dialog.getByRole('button', { name: 'Cancel' }).click();
    expect([found, opened.problems]).toEqual([{}, []]);
  });

  it.runIf(device === 'phone')('a drawing that is read', async () => {
    await page
      .locator('input[type=file]')
      .first()
      .setInputFiles({
        name: 'a.dxf',
        mimeType: 'text/plain',
        buffer: Buffer.from(dxf({ entities: [rectangle('DECK', 24_000, 15_000)] })),
      });
    await page.getByRole('radio', { name: /^millimetres/ }).waitFor();
    await look('import', '.import-page');
    expect([found, opened.problems]).toEqual([{}, []]);
  });

  it.runIf(device === 'laptop')('build-ups and stages by keyboard alone', async () => {
    const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');
    const inEditor = () => page.evaluate(() => document.activeElement?.closest('.area-edit') !== null);
    const press = (key: string) => page.keyboard.press(key);
    const scene = () => page.evaluate(() => window.__loamdeck.scene().snapshot!.scene);
    const toTab = async () => {
      do await tabUntil(page, /./, 'Shift+Tab');
      while (!(await page.evaluate(() => document.activeElement?.matches('.edit-tabs > *'))));
    };
    await page.evaluate(() => document.body.focus());
    await tabUntil(page, /^Views$/);
    await press('Home');
    await press('ArrowRight');
    await page.locator('.bu-chosen').waitFor();
    await tabUntil(page, /^Copy$/);
    await press('Enter');
    await tabUntil(page, /^Create$/);
    await press('Enter');
    await until(async () => (await scene()).buildups.at(-1)!.name).toMatch(/^Lawn/);
    await until(inEditor).toBe(true);

    // The layer that is moved keeps the focus, and can be moved on.
    const order = async () => (await scene()).buildups.at(-1)!.layers.map(({ material }) => material);
    const before = await order();
    await tabUntil(page, /^Lawn substrate/);
    await press('Alt+ArrowDown');
    await until(order).not.toEqual(before);
    expect(await focused()).toMatch(/^Lawn substrate.*layer 7 of 9/);
    await press('Alt+ArrowUp');
    await until(order).toEqual(before);

    await toTab();
    await press('ArrowRight');
    await tabUntil(page, /^10 West half/);
    await press('Enter');
    await tabUntil(page, /^Later$/);
    await press('Enter');
    await until(async () => (await scene()).stages!.findIndex(({ id }) => id === 'S10')).toBe(10);
    expect(await focused()).toBe('Later');
    // Past every field of the hold point, its date and calendar too.
    const holds = async () => (await scene()).stages!.find(({ id }) => id === 'S10')!.holdPoints?.length ?? 0;
    const held = await holds();
    await tabUntil(page, /^Hold points/);
    await tabUntil(page, /^Remove hold point/);
    await press('Enter');
    await until(holds).toBe(held - 1);
    await until(inEditor).toBe(true);

    await tabUntil(page, /^Leave the editor$/, 'Shift+Tab');
    await press('Enter');
    expect(await focused()).toContain('Edit');
    expect(opened.problems).toEqual([]);
  });
});
