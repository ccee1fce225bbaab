/**
 * What hands do in the editors: several parts chosen by a box, levels of a finish drawn and moved, a drag given up, lines that lie under the plan
 * on the next visit, a row dragged beyond what its list shows. On the small terrace: 9 m × 6 m.
 */

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { dxf, polyline } from '../import/dxf-builder.ts';
import { untilIdle, untilReady } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { type Point, terracePixel } from './terrace-pixel.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
let opened: OpenedPage;
let page: Page;
beforeAll(async () => {
  browser = await workerBrowser();
  opened = await openPage(browser, `${inject('base')}?scene=terrace&show=edit-plan`, { reducedMotion: true });
  page = opened.page;
  await untilReady(page);
  await page.waitForSelector('.pe-surface .pe-outline');
});
afterAll(async () => {
  await opened?.close();
  await browser?.close();
});

const button = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });
const at = (place: Point) => terracePixel(page, place);
const chosen = () =>
  page.evaluate(() =>
    window.__loamdeck
      .view()
      .selected.map(({ part, id }) => `${part} ${id}`)
      .sort(),
  );
const zones = () => page.evaluate(() => window.__loamdeck.scene().snapshot!.scene.zones.map(({ id }) => id));
const untilZones = (count: number) =>
  page.waitForFunction((wanted) => window.__loamdeck.scene().snapshot!.scene.zones.length === wanted, count);
const history = () => page.evaluate(() => window.__loamdeck.scene().history);
const undo = () => page.locator('.pe-drawing').press('Control+z');
async function drag(from: Point, to: Point): Promise<void> {
  await page.mouse.move(...from);
  await page.mouse.down();
  await page.mouse.move(...to, { steps: 6 });
}

it('a box with Shift chooses what lies wholly in it; of several kinds one is kept; they go and come back together', async () => {
  // Up to y = 2.8: the paving begins at 2.5 and does not end there, bays and deck end at 6.
  await page.keyboard.down('Shift');
  await drag(await at([-0.4, -0.4]), await at([9.4, 2.8]));
  await page.mouse.up();
  await page.keyboard.up('Shift');
  expect(await chosen()).toEqual(
    [
      'column C1',
      'column C2',
      'column C3',
      'edge E4',
      'levels spot 0',
      'levels spot 1',
      'object K1',
      'outlet O1',
      'outlet V1',
      'zone bed',
      'zone gravel',
    ].sort(),
  );
  await page.getByText('11 parts chosen').first().waitFor();
  await button('Zones (2)').click();
  expect(await chosen()).toEqual(['zone bed', 'zone gravel']);
  await page.locator('.pe-drawing').press('Delete');
  await untilZones(1);
  expect(await history()).toMatchObject({ undo: { act: 'remove', part: 'zone', names: ['bed', 'gravel'] } });
  await undo();
  await untilZones(3);
});

it('the tool for it adds and takes out by single clicks; the list chooses by ticks, and all in view', async () => {
  await button('Choose several by a box').click();
  const [x, y] = await at([4, 1.5]);
  await page.mouse.click(x, y);
  expect(await chosen()).toEqual(['zone bed']);
  await drag(await at([0.6, 3.6]), await at([2.4, 5.4]));
  await page.mouse.up();
  // The plant pot is 1 m square, from (1, 4).
  expect(await chosen()).toEqual(['object P1', 'zone bed']);
  await page.mouse.click(x, y);
  expect(await chosen()).toEqual(['object P1']);
  await button('Choose and move').click();
  await page.getByRole('tab', { name: 'Parts' }).click();
  const tick = page.getByRole('checkbox', { name: 'Zone Planting bed: one of several chosen' });
  await tick.check();
  expect(await chosen()).toEqual(['object P1', 'zone bed']);
  await page.locator('.pe-drawing').press('Control+a');
  const all = await chosen();
  expect(all).toEqual(expect.arrayContaining(['bay B1', 'bay B2', 'zone paving', 'object P1', 'column C6']));
  expect(all).not.toContain('outline outline');
  await button('Choose none').click();
  expect(await chosen()).toEqual([]);
});

it('levels of a finish are begun, drawn in the zone and moved', async () => {
  await page.evaluate(() => window.__loamdeck.view().select([{ part: 'zone', id: 'paving' }]));
  await page.getByRole('tab', { name: /^Chosen/ }).click();
  await page.getByRole('combobox', { name: 'Finished level' }).selectOption('spots');
  const spots = () =>
    page.evaluate(() => {
      const { finish } = window.__loamdeck.scene().snapshot!.scene.zones[0]!;
      return finish?.kind === 'spots' ? finish.spots : [];
    });
  // 1.5 % from 0.5 m at y = 6 to y = 2.5: 0.5 − 3.5 · 0.015 = 0.4475, to the millimetre.
  await expect.poll(spots).toEqual([
    [0, 2.5, 0.448],
    [9, 2.5, 0.448],
    [9, 6, 0.5],
    [0, 6, 0.5],
  ]);
  await button('Draw a level').click();
  const level = page.getByRole('textbox', { name: 'Level', exact: true });
  await level.fill('0,48');
  await level.press('Enter');
  for (const [label, value] of [
    ['x [m]', '3'],
    ['y [m]', '4.5'],
  ] as const)
    await page.getByRole('textbox', { name: label }).fill(value);
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await spots()).at(-1)).toEqual([3, 4.5, 0.48]);
  expect(await chosen()).toEqual(['finish paving spot 4']);
  await button('Choose and move').click();
  const [fromX, fromY] = await at([3, 4.5]);
  const [toX, toY] = await at([6, 4.5]);
  await drag([fromX, fromY], [toX + 2, toY + 2]);
  await page.mouse.up();
  await untilIdle(page);
  const [x, y, z] = (await spots()).at(-1)!;
  expect([Math.abs(x - 6) < 0.2, Math.abs(y - 4.5) < 0.2, z]).toEqual([true, true, 0.48]);
  for (let steps = 0; steps < 3; steps++) await undo();
  await page.waitForFunction(() => window.__loamdeck.scene().history.undo === null);
});

it('a drag given up with Escape leaves the scene and what could be done again', async () => {
  expect(await history()).toMatchObject({ undo: null, redo: { act: 'change', part: 'zone' } });
  const before = await history();
  await page.evaluate(() => window.__loamdeck.view().select([{ part: 'zone', id: 'bed' }]));
  const [x, y] = await at([2.5, 2.5]);
  await drag([x, y], [x, y - 40]);
  // The scene follows, and nothing is there to be done again.
  await page.waitForFunction(() => window.__loamdeck.scene().history.undo?.kind === 'parts');
  await page.keyboard.press('Escape');
  await expect.poll(history).toEqual(before);
  await page.mouse.up();
  await untilIdle(page);
  expect(await history()).toEqual(before);
  expect(await page.evaluate(() => window.__loamdeck.scene().snapshot!.scene.zones[1]!.outline[2])).toEqual([9, 2.5]);
  expect(await zones()).toEqual(['paving', 'bed', 'gravel']);
});

it('lines under the plan are there on the next visit, until they are removed', async () => {
  const text = dxf({
    header: [['$INSUNITS', 70, 6]],
    entities: [
      polyline('Deck', [
        [0, 0],
        [9, 0],
        [9, 6],
      ]),
    ],
  });
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({ name: 'garden.dxf', mimeType: 'text/plain', buffer: Buffer.from(text) });
  const sheet = page.getByRole('dialog', { name: /garden\.dxf/ });
  await sheet.getByRole('radio', { name: /^Lines under the plan/ }).check();
  await sheet.getByRole('button', { name: 'Lay under the plan' }).click();
  const lines = page.locator('.pe-underlay-lines path');
  await lines.first().waitFor({ state: 'attached' });
  const drawn = await lines.first().getAttribute('d');
  const kept = () =>
    page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          const opening = indexedDB.open('loamdeck-underlay');
          opening.onsuccess = () => {
            const counting = opening.result.transaction('lines').objectStore('lines').count();
            counting.onsuccess = () => {
              opening.result.close();
              resolve(counting.result);
            };
          };
        }),
    );
  await expect.poll(kept).toBe(1);
  await page.reload();
  await untilReady(page);
  await lines.first().waitFor({ state: 'attached' });
  expect(await lines.first().getAttribute('d')).toBe(drawn);
  await page.getByRole('tab', { name: 'Layers' }).click();
  await button('Remove the lines').click();
  await expect.poll(kept).toBe(0);
});

it('a stage held at the end of its list scrolls the list', async () => {
  const other = await openPage(browser, `${inject('base')}?scene=courtyard&show=edit-stages`, { reducedMotion: true });
  try {
    await untilReady(other.page);
    // With a stage chosen the list is a low one of its own.
    await other.page.evaluate(() => window.__loamdeck.view().showStage(0));
    const list = other.page.locator('.stage-scroll[data-short=true]');
    await list.waitFor();
    const scrolled = () => list.evaluate((one) => one.scrollTop);
    await list.evaluate((one) => {
      one.scrollTop = 0;
    });
    const [handle, box] = [(await other.page.locator('.stage-handle').first().boundingBox())!, (await list.boundingBox())!];
    await other.page.mouse.move(handle.x + handle.width / 2, handle.y + handle.height / 2);
    await other.page.mouse.down();
    await other.page.mouse.move(handle.x, Math.min(box.y + box.height, 720) - 4, { steps: 5 });
    const end = await list.evaluate((one) => one.scrollHeight - one.clientHeight);
    expect(end).toBeGreaterThan(50);
    await expect.poll(scrolled).toBeGreaterThan(end - 2);
    await other.page.mouse.up();
    await other.page.waitForFunction(() => window.__loamdeck.scene().history.undo?.kind === 'parts');
    expect(other.problems).toEqual([]);
  } finally {
    await other.close();
  }
  expect(opened.problems).toEqual([]);
});
