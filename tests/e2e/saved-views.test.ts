/** Saved views in the real browser: kept from what is seen, put in order, and stepped through in the walkthrough. */

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { untilIdle, untilReady } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
let opened: OpenedPage;
let page: Page;
beforeAll(async () => {
  browser = await workerBrowser();
  opened = await openPage(browser, `${inject('base')}?scene=terrace&show=edit-views`, { reducedMotion: true });
  page = opened.page;
  await untilReady(page);
  // One of the scene's own, so that the lists below are short.
  await page.evaluate(() =>
    window.__loamdeck
      .scene()
      .edit((scene) => ({ views: scene.views!.slice(0, 1) }), { kind: 'parts', act: 'remove', part: 'view', names: [] }),
  );
});
afterAll(async () => {
  await opened?.close();
  await browser?.close();
});

const views = () => page.evaluate(() => window.__loamdeck.scene().snapshot!.scene.views!);
const camera = () => page.evaluate(() => window.__loamdeck.probe.source!.cameraPosition());
const rows = () => page.locator('.views-table .row-button').allTextContents();
const untilRows = (names: readonly string[]) =>
  page.waitForFunction(
    (wanted) => [...document.querySelectorAll('.views-table .row-button')].map((one) => one.textContent).join('|') === wanted,
    names.join('|'),
  );

describe('saved views', () => {
  it('have a button beside the model', async () => {
    await page.evaluate(() => window.__loamdeck.view().edit(null));
    await page.locator('.view-tools').getByRole('button', { name: 'Views', exact: true }).click();
    await page.locator('.views-table').waitFor();
    await page.waitForFunction(() => document.activeElement?.id === 'edit-views');
  });

  it('are kept as seen: eye, stage and explode, in coordinates of the file', async () => {
    expect(await rows()).toEqual(['1 From the garden']);
    await page.evaluate(() => {
      const view = window.__loamdeck.view();
      view.moveCamera('plan');
      view.showStage(2);
      view.setExplode(0.4);
    });
    await untilIdle(page);
    await page.getByRole('button', { name: 'Keep this view' }).click();
    await untilRows(['1 From the garden', '2 View 2']);
    const [, kept] = await views();
    const { originM, datumM } = await page.evaluate(() => window.__loamdeck.scene().snapshot!);
    const [x, y, z] = await camera();
    const inFile = [x + originM[0], y + originM[1], z + datumM];
    for (const [i, valueM] of kept!.eye.entries()) expect(Math.abs(valueM - inFile[i]!)).toBeLessThan(0.0051);
    expect(kept!.show).toEqual({ stage: 'S3', explode: 0.4 });
    // Straight down on the middle of 9 m × 6 m.
    expect(kept!.target[0]).toBeCloseTo(4.5, 1);
    expect(kept!.target[1]).toBeCloseTo(3, 1);
  });

  it('are named, described and moved to the front by keys', async () => {
    const name = page.getByRole('textbox', { name: 'Name' });
    await name.fill('From above');
    await name.press('Enter');
    await untilRows(['1 From the garden', '2 From above']);
    const caption = page.getByRole('textbox', { name: 'Caption' });
    await caption.fill('Light fill goes in.');
    await caption.press('Control+Enter');
    await page.getByText('Light fill goes in.').first().waitFor();
    await page.locator('.views-table .row-button').nth(1).focus();
    await page.keyboard.press('Alt+ArrowUp');
    await untilRows(['1 From above', '2 From the garden']);
    await opened.screenshot('saved-views');
  });

  it('are what the walkthrough steps through, and can be kept there too', async () => {
    await page.evaluate(() => window.__loamdeck.view().startWalk());
    const caption = page.getByTestId('walk-caption');
    await caption.getByText('From above').waitFor();
    expect(await caption.textContent()).toContain('1 of 2');
    expect(await page.evaluate(() => [window.__loamdeck.view().stage, window.__loamdeck.view().explode])).toEqual([2, 0.4]);
    await page.getByRole('button', { name: 'Keep this view' }).click();
    await caption.getByText('2 of 3').waitFor();
    expect((await views()).map(({ name }) => name)).toEqual(['From above', 'View 3', 'From the garden']);
    await page.getByRole('button', { name: 'Next view' }).click();
    await caption.getByText('From the garden').waitFor();
    await untilIdle(page);
    const [, , garden] = await views();
    const { originM, datumM } = await page.evaluate(() => window.__loamdeck.scene().snapshot!);
    const [x, y, z] = await camera();
    const inFile = [x + originM[0], y + originM[1], z + datumM];
    for (const [i, valueM] of garden!.eye.entries()) expect(inFile[i]).toBeCloseTo(valueM, 2);
    await page.getByRole('button', { name: 'Previous view' }).click();
    await caption.getByText('View 3').waitFor();
  });

  it('taken out leave the others; nothing went wrong in all this', async () => {
    await page.evaluate(() => {
      window.__loamdeck.view().leaveWalk();
      window.__loamdeck.view().edit('views');
    });
    await page.locator('.views-table .row-button').nth(1).click();
    await page.getByRole('button', { name: 'Remove', exact: true }).click();
    await untilRows(['1 From above', '2 From the garden']);
    expect(opened.problems).toEqual([]);
  });
});
