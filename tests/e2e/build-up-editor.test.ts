/** The build-up editor in a real browser: a boundary dragged, layers moved by keys, a material of one's own, a build-up from a template. */

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { untilReady, untilReported } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
let opened: OpenedPage;
let page: Page;
beforeAll(async () => {
  browser = await workerBrowser();
  opened = await openPage(browser, `${inject('base')}?scene=courtyard&show=edit-build-ups`);
  page = opened.page;
  await untilReady(page);
  await page.locator('.bu-column').waitFor();
});
afterAll(async () => {
  await opened?.close();
  await browser?.close();
});

/** Lawn of the courtyard: its sums, the thickness of its substrate, what undo would take back. */
const lawn = () =>
  page.evaluate(() => {
    const { snapshot, history } = window.__loamdeck.scene();
    const found = snapshot!.buildUps.find(({ id }) => id === 'lawn')!;
    const zones = snapshot!.report.zones.filter(({ id }) => found.zones.includes(id));
    return {
      ids: found.layers.map(({ materialId }) => materialId),
      substrateMm: found.layers.find(({ materialId }) => materialId === 'substrate-lawn')!.thicknessMm,
      sum: found.sum,
      zoneKNm2: zones.map(({ saturatedKNm2 }) => saturatedKNm2.mean),
      greatestMakeUpMm: Math.max(...zones.map(({ makeUpMm }) => makeUpMm!.max)),
      undo: history.undo,
      rules: snapshot!.report.findings.filter(({ where }) => found.zones.includes(where.zone ?? '')).map(({ rule }) => rule),
    };
  });

const undo = async (steps: number) => {
  for (let i = 0; i < steps; i++) await page.keyboard.press('Control+z');
};

/** What has changed each time that tables begin to be older than the map, and cease to be. */
interface Turn {
  readonly behind: boolean;
  readonly newMap: boolean;
  readonly newReport: boolean;
  readonly note: boolean;
}

/** Watches the mark on the page by which tables are said to be those of the state before. */
const watchTurns = () =>
  page.evaluate(() => {
    const { scene } = window.__loamdeck;
    let { cellMap, snapshot } = scene();
    const turns: Turn[] = [];
    Object.assign(window, { turns });
    const see = () => {
      const now = scene();
      const newReport = now.snapshot?.report !== snapshot?.report;
      const note = document.querySelector('.bu-live .follows') !== null;
      turns.push({ behind: now.behind !== null, newMap: now.cellMap !== cellMap, newReport, note });
      ({ cellMap, snapshot } = now);
    };
    new MutationObserver(see).observe(document.documentElement, { attributes: true, attributeFilter: ['data-behind'] });
  });

describe('a boundary dragged', () => {
  it('sets whole millimetres; loads and map follow; one step of undo', async () => {
    await page.evaluate(() => window.__loamdeck.view().showMap('load'));
    await page.waitForFunction(() => window.__loamdeck.scene().cellMap?.kind === 'load');
    const before = await lawn();
    const mapBefore = await page.evaluate(() => [...window.__loamdeck.scene().cellMap!.values]);
    expect(before.substrateMm).toBe(250);
    const handle = page.getByRole('slider', { name: 'Top of Lawn substrate: its thickness' });
    await handle.scrollIntoViewIfNeeded();
    const box = (await handle.boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await watchTurns();
    const turns = () => page.evaluate(() => (window as unknown as { readonly turns: readonly Turn[] }).turns);
    // While the button is still down the scene follows: the map first, then, however long the hand goes on, the tables.
    for (let down = 4; !(await turns()).some(({ behind }) => !behind); down = down < 20 ? down + 1 : 4) await page.mouse.move(x, y + down);
    const [first, ...others] = await turns();
    expect(first).toEqual({ behind: true, newMap: true, newReport: false, note: true });
    expect(others.find(({ behind }) => !behind)).toMatchObject({ newReport: true, note: false });
    expect(await page.evaluate(() => window.__loamdeck.scene().history.undo?.kind)).toBe('thickness');
    await page.mouse.move(x, y + 20);
    await page.mouse.up();
    const shown = Number(await handle.getAttribute('aria-valuenow'));
    // 20 px at about half a pixel per millimetre.
    expect(shown).toBeLessThan(220);
    expect(Number.isInteger(shown)).toBe(true);
    await page.waitForFunction((mm) => {
      const { snapshot } = window.__loamdeck.scene();
      return snapshot!.buildUps.find(({ id }) => id === 'lawn')!.layers.some(({ thicknessMm }) => thicknessMm === mm);
    }, shown);
    await untilReported(page);
    const after = await lawn();
    const mm = shown - 250;
    // Lawn substrate 1600 kg/m³ saturated, 1150 dry: ρ · t · g.
    expect(after.sum.saturatedKNm2 - before.sum.saturatedKNm2).toBeCloseTo((1600 * (mm / 1000) * 9.81) / 1000, 9);
    expect(after.sum.dryKNm2 - before.sum.dryKNm2).toBeCloseTo((1150 * (mm / 1000) * 9.81) / 1000, 9);
    await page
      .locator('.bu-live')
      .getByText(`${after.sum.saturatedKNm2.toFixed(2)}\u202FkN/m²`)
      .first()
      .waitFor();
    // In the zones the finish stays: foam glass of 250 kg/m³ takes its place, wherever its greatest of 450 mm is not reached.
    expect(after.greatestMakeUpMm).toBeLessThan(450);
    const changeKNm2 = ((1600 - 250) * (mm / 1000) * 9.81) / 1000;
    for (const [i, kNm2] of after.zoneKNm2.entries()) expect(kNm2 - before.zoneKNm2[i]).toBeCloseTo(changeKNm2, 6);
    await page.waitForFunction(
      ({ values, change }) => {
        const now = window.__loamdeck.scene().cellMap!.values;
        return Math.abs(Math.min(...values.map((value, cell) => (now[cell] ?? 0) - value || 0)) - change) < 1e-4;
      },
      { values: mapBefore, change: changeKNm2 },
    );
    expect(after.undo).toEqual({ kind: 'thickness', buildUp: 'lawn', layer: 7, fromMm: 250, toMm: shown });
    await undo(1);
    await page.waitForFunction(() => window.__loamdeck.scene().history.undo === null);
    expect((await lawn()).substrateMm).toBe(250);
  });

  it('goes by keys a millimetre at a time', async () => {
    const handle = page.getByRole('slider', { name: 'Top of Lawn substrate: its thickness' });
    await handle.focus();
    await page.keyboard.press('ArrowDown');
    await page.waitForFunction(() => window.__loamdeck.scene().history.undo?.kind === 'thickness');
    expect((await lawn()).substrateMm).toBe(249);
    await undo(1);
    await page.waitForFunction(() => window.__loamdeck.scene().history.undo === null);
  });
});

it('limits of the make-up layer: by keys a step each, dragged one step', async () => {
  const range = () =>
    page.evaluate(() => {
      const { snapshot, history } = window.__loamdeck.scene();
      return {
        mm: snapshot!.buildUps.find(({ id }) => id === 'lawn')!.layers.find(({ rangeMm }) => rangeMm !== null)!.rangeMm!,
        undo: history.undo,
      };
    });
  const before = await range();
  const greatest = page.getByRole('slider', { name: /^Greatest thickness of/ });
  await greatest.focus();
  await page.keyboard.press('PageUp');
  await expect.poll(async () => (await range()).mm).toEqual({ min: before.mm.min, max: before.mm.max + 10 });
  expect(await greatest.getAttribute('aria-valuetext')).toBe(`${before.mm.max + 10}\u202fmm`);
  await undo(1);
  await expect.poll(range).toEqual(before);
  const least = page.getByRole('slider', { name: /^Least thickness of/ });
  const box = (await least.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (const up of [4, 8, 12]) await page.mouse.move(x, y - up);
  // While the button is still down the scene follows.
  await expect.poll(async () => (await range()).mm.min).toBeGreaterThan(before.mm.min);
  await page.mouse.up();
  const shown = Number(await least.getAttribute('aria-valuenow'));
  await expect.poll(async () => (await range()).mm).toEqual({ min: shown, max: before.mm.max });
  await undo(1);
  await expect.poll(range).toEqual(before);
});

it('a layer moved by keys breaks a rule, and undo mends it', async () => {
  const before = await lawn();
  expect(before.rules).not.toContain('order.separation');
  await page.getByRole('button', { name: /^Separation fleece 200 g\/m².*layer 7 of 9/ }).focus();
  await page.keyboard.press('Alt+ArrowUp');
  await page.waitForFunction(() => window.__loamdeck.scene().history.undo?.kind === 'parts');
  const after = await lawn();
  expect(after.ids.slice(5, 8)).toEqual(['foam-glass', 'substrate-lawn', 'separation-200']);
  expect(after.rules).toContain('order.separation');
  await page.locator('.bu-findings').getByText('Separation', { exact: false }).first().waitFor();
  await undo(1);
  await page.waitForFunction(() => window.__loamdeck.scene().history.undo === null);
  expect(await lawn()).toEqual(before);
});

it('a material of one’s own: asked about tonnes, called without source until it has one', async () => {
  await page.getByRole('radio', { name: 'Materials' }).check();
  await page.getByRole('button', { name: 'Lava 8/16', exact: true }).click();
  await page.getByRole('button', { name: 'Own copy beside it' }).click();
  const form = page.getByRole('region', { name: 'Lava 8/16, own values' });
  await form.waitFor();
  expect(await form.getByText('without source', { exact: true }).count()).toBe(1);
  const field = form.getByRole('textbox', { name: 'Saturated', exact: true });
  await field.fill('1,4');
  await field.press('Enter');
  await form.getByText('Was 1.40 t/m³ meant').waitFor();
  await form.getByRole('button', { name: 'Take 1,400 kg/m³' }).click();
  await page.waitForFunction(() => window.__loamdeck.scene().snapshot!.scene.materials?.at(-1)?.density?.saturated === 1400);
  const source = form.getByRole('textbox', { name: 'Source', exact: true });
  await source.fill('Data sheet of the quarry, 3/2026');
  await source.press('Enter');
  await form.getByText('without source', { exact: true }).waitFor({ state: 'detached' });
  const own = await page.evaluate(() => window.__loamdeck.scene().snapshot!.scene.materials!.at(-1));
  expect(own).toMatchObject({ id: 'lava-8-16-2', density: { dry: 1100, saturated: 1400 }, source: 'Data sheet of the quarry, 3/2026' });
});

it('a build-up from a template lies in the zone chosen; the saved file reports the same on the command line', async () => {
  await page.getByRole('radio', { name: 'Build-ups' }).check();
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.getByRole('combobox', { name: 'Use' }).selectOption('perennials');
  const zone = await page.evaluate(() => window.__loamdeck.scene().snapshot!.scene.zones.find(({ buildup }) => buildup === 'meadow')!.id);
  await page.getByRole('checkbox', { name: new RegExp(`\\(${zone}\\)|^${zone},`) }).check();
  await page.getByRole('button', { name: 'Create' }).click();
  await page.waitForFunction(() =>
    window.__loamdeck.scene().snapshot!.buildUps.some(({ id, zones }) => id === 'perennials-2' && zones.length === 1),
  );
  expect(await page.getByRole('button', { name: /^Perennials.* 1 zone/, pressed: true }).count()).toBe(1);
  const { text, report } = await page.evaluate(async () => {
    const { sceneText, snapshot } = window.__loamdeck.scene();
    return { text: (await sceneText('copy')).text, report: JSON.stringify(snapshot!.report) };
  });
  const { out } = run(['check', 'saved.scene.json', '--json'], () => new TextEncoder().encode(text));
  expect(JSON.parse(out)).toEqual(JSON.parse(report));
  expect(opened.problems).toEqual([]);
});
