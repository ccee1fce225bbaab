/**
 * The whole way of somebody new: an architect's outline and a surveyor's levels become bays, zones, build-ups and stages; what is too heavy
 * is lightened; the scene is saved, sent as a link and opened again without a network; the command line says the same.
 */

import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { dxf, rectangle } from '../import/dxf-builder.ts';
import { CACHE } from '../tools/chromium.ts';
import { untilReady } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

const SAVED = join(CACHE, 'new-user.scene.json');

let browser: Browser;
let opened: OpenedPage;
let page: Page;
let context: BrowserContext;
beforeAll(async () => {
  browser = await workerBrowser();
  opened = await openPage(browser, inject('base'), { reducedMotion: true });
  ({ page, context } = opened);
  await untilReady(page);
});
afterAll(async () => {
  await opened?.close();
  await browser?.close();
});

const scene = () => page.evaluate(() => window.__loamdeck.scene().snapshot!.scene);
const stops = () =>
  page.evaluate(() =>
    window.__loamdeck
      .scene()
      .snapshot!.report.findings.filter(({ severity }) => severity === 'stop')
      .map(({ rule }) => rule),
  );
const reportText = (on: Page) => on.evaluate(() => JSON.stringify(window.__loamdeck.scene().snapshot!.report));
const pick = (name: string, text: string) =>
  page
    .locator('input[type=file]')
    .first()
    .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
const button = (name: string) => page.getByRole('button', { name, exact: true });

it('an outline in millimetres begins the scene', async () => {
  await pick('hof.dxf', dxf({ entities: [rectangle('DECK', 24_000, 15_000)] }));
  await page.getByRole('radio', { name: /^millimetres/ }).check();
  await button('Begin the scene').click();
  await page.waitForFunction(() => window.__loamdeck.scene().snapshot?.scene.name === 'hof');
  expect((await scene()).deck.outline).toEqual([
    [0, 0],
    [24, 0],
    [24, 15],
    [0, 15],
  ]);
});

it('levels with decimal commas go into it', async () => {
  await pick('hoehen.csv', 'Punkt;x;y;z\n1;0;0;0,000\n2;24;0;0,480\n3;24;15;0,480\n4;0;15;0,000\n');
  await page.getByRole('radio', { name: /^Into the open scene/ }).check();
  await button('Take into the scene').click();
  await page.waitForFunction(() => window.__loamdeck.scene().snapshot!.scene.deck.levels !== undefined);
  expect((await scene()).deck.levels?.spots[2]).toEqual([24, 15, 0.48]);
});

it('bays come from axes, with the loads and the basis of the load plan', async () => {
  await page.getByRole('tab', { name: 'Parts' }).click();
  await button('Bays from axes…').click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel(/^Distances to the right/).fill('2 x 12,00');
  await dialog.getByLabel(/^Distances upwards/).fill('15');
  await dialog.locator('button[type=submit]').click();
  await page.waitForFunction(() => window.__loamdeck.scene().snapshot!.report.bays.length === 2);
  const form = page.getByRole('form', { name: 'For several bays at once' });
  for (const [label, value] of [
    ['Bays', 'all'],
    ['Loads', '4.4/5'],
    ['Document', 'load plan'],
    ['Revision', 'A'],
    ['Date', '2026-11-02'],
  ] as const) {
    await form.getByLabel(label, { exact: true }).fill(value);
  }
  await form.locator('button[type=submit]').click();
  await page.waitForFunction(() => window.__loamdeck.scene().snapshot!.report.bays.every(({ confirmed }) => confirmed));
  // 12 m × 15 m each.
  const bays = await page.evaluate(() =>
    window.__loamdeck.scene().snapshot!.report.bays.map(({ areaM2, permanent }) => [areaM2, permanent.permittedKNm2]),
  );
  expect(bays).toEqual([
    [expect.closeTo(180, 9), 4.4],
    [expect.closeTo(180, 9), 4.4],
  ]);
});

it('the rest of the deck is one zone, and gets a build-up from a template', async () => {
  await page.getByRole('tab', { name: 'Parts' }).click();
  await button('Rest of the deck as new zones…').click();
  await button('Make the zones').click();
  await page.waitForFunction(() => window.__loamdeck.scene().snapshot!.report.zones[0]?.areaM2 === 360);
  await page.getByRole('tab', { name: 'Build-ups' }).click();
  await button('New').click();
  await page.getByRole('combobox', { name: 'Use' }).selectOption('perennials');
  await page.getByRole('checkbox', { name: /^Z1/ }).check();
  await button('Create').click();
  await page.waitForFunction(() => (window.__loamdeck.scene().snapshot!.report.deck.saturatedKN ?? 0) > 0);
  expect(await stops()).toContain('load.permanent');
});

it('what is too heavy is lightened', async () => {
  await page.getByRole('tab', { name: 'Lighten' }).click();
  await button('Look for it').click();
  const answer = page.getByRole('region', { name: 'Lightest' });
  await answer.getByRole('button', { name: 'Take over' }).click();
  await page.waitForFunction(() => window.__loamdeck.scene().history.undo?.kind === 'parts');
  await page.getByText('The scene was changed since. Look again.').waitFor();
  expect(await stops()).toEqual([]);
});

it('stages are derived and written down', async () => {
  await page.getByRole('tab', { name: 'Stages' }).click();
  await button('Write them into the scene to change them').click();
  await page.waitForFunction(() => (window.__loamdeck.scene().snapshot!.scene.stages?.length ?? 0) > 3);
  expect(await stops()).toEqual([]);
});

it('saved, sent as a link and opened without a network it is the same, and the command line agrees', async () => {
  const report = await reportText(page);
  await button('File').click();
  const link = await page.locator('.share input').first().inputValue();
  await page.keyboard.press('Escape');
  const { text } = await page.evaluate(() => window.__loamdeck.scene().sceneText('copy'));
  const checked = run(['check', 'hof.scene.json', '--json'], () => new TextEncoder().encode(text));
  expect(JSON.parse(checked.out)).toEqual(JSON.parse(report));
  expect(checked.code).toBe(0);

  await page.waitForFunction(async () => (await navigator.serviceWorker.getRegistration())?.active?.state === 'activated');
  await context.setOffline(true);
  const next = await context.newPage();
  await next.goto(link);
  await next.waitForFunction(() => window.__loamdeck?.scene().snapshot?.scene.name === 'hof');
  expect(JSON.parse(await reportText(next))).toEqual(JSON.parse(report));
  // The solver is code of its own: it has to be kept on the device like the rest.
  const lighter = await next.evaluate(() => window.__loamdeck.scene().lighten({ aims: ['weight'], zones: ['Z1'] }));
  expect(lighter?.variants.map(({ proven }) => proven)).toEqual([true]);
  expect(opened.problems).toEqual([]);
});

it('and so it is after saving to a file', async () => {
  await page.evaluate(() => {
    delete (window as unknown as { showSaveFilePicker?: unknown }).showSaveFilePicker;
    delete (Window.prototype as unknown as { showSaveFilePicker?: unknown }).showSaveFilePicker;
  });
  await page.keyboard.press('Control+s');
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).last().click();
  await (await downloading).saveAs(SAVED);
  const saved = await readFile(SAVED, 'utf8');
  expect(JSON.parse(saved)).toEqual(await scene());
});
