/**
 * What the plan editor does with parts that are there, on the small terrace: 9 m × 6 m, paving above y = 2.5 (31.5 m²), bed from 0.5 to 2.5
 * (18 m²), gravel below (4.5 m²).
 */

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { dxf, polyline } from '../import/dxf-builder.ts';
import { untilReady } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { terracePixel as at, type Point } from './terrace-pixel.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
let other: OpenedPage;
let on: Page;
beforeAll(async () => {
  browser = await workerBrowser();
  other = await openPage(browser, `${inject('base')}?scene=terrace&show=edit-plan`, { reducedMotion: true });
  on = other.page;
  await untilReady(on);
  await on.waitForSelector('.pe-surface .pe-outline');
});
afterAll(async () => {
  await other?.close();
  await browser?.close();
  expect(other.problems).toEqual([]);
});

const button = (name: string | RegExp) => on.getByRole('button', { name, exact: typeof name === 'string' });
const chooseParts = (part: 'zone' | 'bay', ...ids: string[]) =>
  on.evaluate(([kind, names]) => window.__loamdeck.view().select(names.map((id) => ({ part: kind, id }))), [part, ids] as const);
/** Areas of the zones once the scene is another than before [m²]. */
async function areasAfter(act: () => Promise<unknown>): Promise<Record<string, number>> {
  const before = await on.evaluateHandle(() => window.__loamdeck.scene().snapshot);
  await act();
  await on.waitForFunction((old) => window.__loamdeck.scene().snapshot !== old, before);
  return on.evaluate(() =>
    Object.fromEntries(window.__loamdeck.scene().snapshot!.report.zones.map(({ id, areaM2 }) => [id, Math.round(areaM2 * 1e6) / 1e6])),
  );
}
const undo = () => areasAfter(() => on.locator('.pe-drawing').press('Control+z'));
async function typePoints(points: readonly Point[]): Promise<void> {
  for (const [x, y] of points) {
    await on.getByRole('textbox', { name: 'x [m]' }).fill(`${x}`);
    await on.getByRole('textbox', { name: 'y [m]' }).fill(`${y}`);
    await on.keyboard.press('Enter');
  }
}
const drawKind = (kind: string) => on.getByRole('combobox', { name: 'What to draw' }).selectOption(kind);
const tab = (name: string | RegExp) => on.getByRole('tab', { name }).click();
const rectangle = (x0: number, y0: number, x1: number, y1: number): readonly Point[] => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];

it('parallel outlines: smaller, as a strip', async () => {
  await tab(/^Chosen/);
  const parallel = (make: string) =>
    areasAfter(async () => {
      await chooseParts('zone', 'bed');
      await button('Parallel…').click();
      await on.getByRole('textbox', { name: 'Distance [m]' }).fill('0.25');
      await on.getByRole('combobox', { name: 'Make of it' }).selectOption(make);
      await button('Make').click();
    });
  // 9 m × 2 m, a quarter of a metre off all round: 8.5 m × 1.5 m; the strip is the rest of 18 m².
  expect(await parallel('same')).toMatchObject({ bed: 12.75, paving: 31.5 });
  await undo();
  expect(await parallel('strip')).toMatchObject({ bed: 12.75, Z1: 5.25 });
  await undo();
});

it('while an edge is dragged the numbers follow, and letting go is one step of undo', async () => {
  await chooseParts('zone', 'paving');
  const [x, y] = await at(on, [2.5, 2.5]);
  const [, toY] = await at(on, [2.5, 3.5]);
  await on.mouse.move(x, y);
  await on.mouse.down();
  const held = await areasAfter(() => on.mouse.move(x, toY, { steps: 8 }));
  // The button is still down: 31.5 m² before; what the paving has lost the bed has gained.
  expect(held.paving).toBeLessThan(31);
  expect(held.paving! + held.bed!).toBeCloseTo(31.5 + 18, 5);
  const [, highY] = await at(on, [2.5, 3]);
  await on.mouse.move(x, highY, { steps: 3 });
  await on.mouse.up();
  await on.waitForFunction(() => window.__loamdeck.scene().snapshot!.scene.zones[0]!.outline[0]![1] === 3);
  expect(await undo()).toEqual({ paving: 31.5, bed: 18, gravel: 4.5 });
  expect(await on.evaluate(() => window.__loamdeck.scene().history)).toMatchObject({ undo: null, changed: false });
});

it('cut at the edge of the deck, cut out of a neighbour; the gap is filled by a new zone or a neighbour', async () => {
  await drawKind('zone');
  await typePoints(rectangle(7, 4, 11, 6));
  await areasAfter(() => button('Finish').click());
  await button('Choose and move').click();
  await tab(/^Chosen/);
  await chooseParts('zone', 'Z1');
  await areasAfter(() => button('Cut at deck edge').click());
  expect(await on.evaluate(() => window.__loamdeck.scene().snapshot!.scene.zones[3]!.outline)).toEqual(rectangle(7, 4, 9, 6));
  await chooseParts('zone', 'paving', 'Z1');
  // 31.5 m² less 2 m × 2 m.
  expect(await areasAfter(() => button('Cut out the others').click())).toMatchObject({ paving: 27.5, Z1: 4 });
  await chooseParts('zone', 'Z1');
  await areasAfter(() => button('Remove').click());
  await tab('Parts');
  await button('Rest of the deck as new zones…').click();
  await on.getByRole('combobox', { name: 'Build-up' }).selectOption('bed');
  expect(await areasAfter(() => button('Make the zones').click())).toMatchObject({ paving: 27.5, Z1: 4 });
  expect(await on.evaluate(() => window.__loamdeck.scene().snapshot!.scene.zones[3]!.buildup)).toBe('bed');
  await undo();
  await on.getByText('Gaps between zones').click();
  await button('Show the gap of 4.0 m²').click();
  // 2 m × 2 m in the upper right corner of 9 m × 6 m.
  const share = () =>
    on.evaluate(() => {
      const [gap, deck] = ['.pe-ghost', '.pe-outline'].map((css) => document.querySelector(css)!.getBoundingClientRect()) as [
        DOMRect,
        DOMRect,
      ];
      return [gap.width / deck.width, gap.height / deck.height, (gap.right - deck.left) / deck.width, (gap.top - deck.top) / deck.height];
    });
  await expect.poll(share).toEqual([2 / 9, 1 / 3, 1, 0].map((wanted) => expect.closeTo(wanted, 2)));
  await on.getByText('The gap gets the build-up of what fills it: Zone Terrace: ').waitFor();
  expect(await areasAfter(() => button('Fill from Zone Terrace').click())).toEqual({ paving: 31.5, bed: 18, gravel: 4.5 });
});

it('a hole in a zone; pasted levels', async () => {
  await tab(/^Chosen/);
  await chooseParts('zone', 'paving');
  await button('Draw a hole').click();
  await typePoints(rectangle(5, 4, 6.5, 5));
  // 1.5 m × 1 m less.
  expect(await areasAfter(() => button('Finish').click())).toMatchObject({ paving: 30 });
  await button('Choose and move').click();
  await tab('Parts');
  await button('Levels…').click();
  await on.getByRole('textbox', { name: 'Rows x y z' }).fill('2\t2\t0,080\n7; 2; 0.081\n');
  await areasAfter(() => button('Add to the levels').click());
  expect(await on.evaluate(() => window.__loamdeck.scene().snapshot!.scene.deck.levels!.spots.slice(4))).toEqual([
    [2, 2, 0.08],
    [7, 2, 0.081],
  ]);
});

it('a stockpile and a machine route in the stage that is shown', async () => {
  await on.evaluate(() => window.__loamdeck.view().showStage(2));
  await drawKind('stockpile');
  await on.getByRole('combobox', { name: 'Material' }).selectOption('base-0-32');
  await on.getByRole('textbox', { name: 'Height' }).fill('0.5');
  await on.keyboard.press('Enter');
  await typePoints(rectangle(1, 3, 3, 4));
  await areasAfter(() => button('Finish').click());
  await drawKind('plant');
  await on.getByRole('combobox', { name: 'Vehicle' }).selectOption('mini-excavator-1t8');
  await typePoints([
    [1, 1.5],
    [5, 1.5],
  ]);
  await areasAfter(() => button('Finish').click());
  const stage = await on.evaluate(() => window.__loamdeck.scene().snapshot!.scene.stages![2]!);
  expect(stage.stockpiles!.at(-1)).toMatchObject({ material: 'base-0-32', heightM: 0.5, outline: rectangle(1, 3, 3, 4) });
  expect(stage.plant!.at(-1)).toEqual({
    vehicle: 'mini-excavator-1t8',
    route: [
      [1, 1.5],
      [5, 1.5],
    ],
  });
  await button('Choose and move').click();
});

it('a picture under the plan, scaled by two of its points', async () => {
  await tab('Layers');
  const png = await on.evaluate(() => {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [180, 120];
    canvas.getContext('2d')!.strokeRect(20, 20, 100, 60);
    return canvas.toDataURL('image/png').split(',')[1]!;
  });
  const files = { name: 'scan.png', mimeType: 'image/png', buffer: Buffer.from(png, 'base64') };
  await on.locator('.pe-underlay-fields input[type=file]').setInputFiles(files);
  const picture = on.locator('image.pe-underlay');
  await picture.waitFor({ state: 'attached' });
  const matrix = async () => (await picture.getAttribute('transform'))!.match(/-?[\d.e]+/g)!.map(Number);
  const before = await matrix();
  await button('Scale by two points…').click();
  const [first, second] = [await at(on, [1.5, 3.9]), await at(on, [6.5, 3.9])];
  await on.mouse.click(...first);
  await on.mouse.click(...second);
  await on.getByRole('textbox', { name: 'Distance of the two points [m]' }).fill('10');
  await button('Scale').click();
  await expect.poll(async () => (await matrix())[0]! / before[0]!).toBeGreaterThan(1.5);
  const after = await matrix();
  // 5 m (to the millimetre) that are 10 m: twice as large, and the first point stays where it is.
  expect(after[0]! / before[0]!).toBeCloseTo(2, 2);
  const surface = (await on.locator('.pe-surface').boundingBox())!;
  const seen = [first[0] - surface.x, first[1] - surface.y] as const;
  for (const [axis, shift] of [
    [0, 4],
    [1, 5],
  ] as const)
    expect(Math.abs(seen[axis] - after[shift]! - 2 * (seen[axis] - before[shift]!))).toBeLessThan(1);
});

it('a drawing laid under the plan: a corner of it is caught to the digit', async () => {
  const text = dxf({
    header: [['$INSUNITS', 70, 6]],
    entities: [polyline('Deck', rectangle(0, 0, 9, 6)), polyline('Beds', rectangle(1.234567, 3.3, 3.1, 4.7))],
  });
  const drawing = { name: 'garden.dxf', mimeType: 'text/plain', buffer: Buffer.from(text) };
  await on.locator('input[type=file]').first().setInputFiles(drawing);
  const sheet = on.getByRole('dialog', { name: /garden\.dxf/ });
  await sheet.getByRole('radio', { name: /^Lines under the plan/ }).check();
  await sheet.getByRole('button', { name: 'Lay under the plan' }).click();
  await on.locator('.pe-underlay-lines path').first().waitFor({ state: 'attached' });
  await drawKind('zone');
  for (const [place, [dx, dy]] of [
    [
      [1.234567, 3.3],
      [5, -6],
    ],
    [
      [3.1, 3.3],
      [6, 4],
    ],
    [
      [3.1, 4.7],
      [-5, 5],
    ],
  ] as readonly (readonly [Point, Point])[]) {
    const [x, y] = await at(on, place);
    await on.mouse.click(x + dx, y + dy);
  }
  await areasAfter(() => button('Finish').click());
  expect(await on.evaluate(() => window.__loamdeck.scene().snapshot!.scene.zones.at(-1)!.outline)).toEqual([
    [1.234567, 3.3],
    [3.1, 3.3],
    [3.1, 4.7],
  ]);
  await button('Choose and move').click();
  await tab('Layers');
  await button('Remove the lines').click();
  expect(await on.locator('.pe-underlay-lines').count()).toBe(0);
});

it('on a phone, where the plan takes the place of the model, the page is ready and its chosen tab in sight', async () => {
  const phone = await openPage(browser, `${inject('base')}?scene=terrace&show=edit-plan`, {
    width: 320,
    height: 640,
    touch: true,
    reducedMotion: true,
  });
  try {
    await untilReady(phone.page);
    await phone.page.evaluate(() => window.__loamdeck.view().setLanguage('de'));
    await phone.page.getByRole('tab', { name: 'Alle Felder' }).tap();
    await phone.page.keyboard.press('End');
    const inSight = () =>
      phone.page.locator('.pe-tabs [aria-selected="true"]').evaluate((tab) => {
        const [row, own] = [tab.parentElement!.getBoundingClientRect(), tab.getBoundingClientRect()];
        return tab.textContent === 'Ebenen' && own.left >= row.left - 1 && own.right <= row.right + 1;
      });
    await expect.poll(inSight).toBe(true);
    expect(phone.problems).toEqual([]);
  } finally {
    await phone.close();
  }
});
