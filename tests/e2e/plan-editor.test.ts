/**
 * The plan editor in the real browser, on the small terrace: 9 m × 6 m, paving above y = 2.5, bed from 0.5 to 2.5, gravel below, two bays that
 * meet at x = 4.5.
 */

import { readFileSync } from 'node:fs';
import type { Browser, CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { untilIdle, untilReady } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { terracePixel as at, type Point } from './terrace-pixel.ts';
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

const zones = () => page.evaluate(() => window.__loamdeck.scene().snapshot!.scene.zones.map(({ id, outline }) => ({ id, outline })));
const areas = () =>
  page.evaluate(() => Object.fromEntries(window.__loamdeck.scene().snapshot!.report.zones.map(({ id, areaM2 }) => [id, areaM2])));
const untilZone = (id: string) =>
  page.waitForFunction((wanted) => window.__loamdeck.scene().snapshot!.scene.zones.some((zone) => zone.id === wanted), id);
const outlineOf = async (id: string) => (await zones()).find((zone) => zone.id === id)?.outline;
const choose = (id: string) => page.evaluate((zone) => window.__loamdeck.view().select([{ part: 'zone', id: zone }]), id);

describe('on the terrace', () => {
  it('a zone drawn by mouse catches the corners of a bay to the digit', async () => {
    await page.getByRole('button', { name: 'Draw', exact: true }).click();
    // Up to 8 px beside each place: both upper corners of bay B2, then two places of its lower half.
    for (const [place, [dx, dy]] of [
      [
        [4.5, 6],
        [6, -5],
      ],
      [
        [9, 6],
        [-5, -6],
      ],
      [
        [9, 3],
        [0, 0],
      ],
      [
        [4.5, 3],
        [0, 0],
      ],
    ] as readonly (readonly [Point, Point])[]) {
      const [x, y] = await at(page, place);
      await page.mouse.click(x + dx, y + dy);
    }
    await page.getByRole('button', { name: 'Finish' }).click();
    await untilZone('Z1');
    // The other two lie on edges, at round coordinates.
    expect(await outlineOf('Z1')).toEqual([
      [4.5, 6],
      [9, 6],
      [9, 3],
      [4.5, 3],
    ]);
    await page.keyboard.press('Control+z');
    await page.waitForFunction(() => window.__loamdeck.scene().snapshot!.scene.zones.length === 3);
    await page.getByRole('button', { name: 'Choose and move' }).click();
  });

  it('a common edge moves both zones, and the command line agrees with the page', async () => {
    const before = await areas();
    // 9 m × 3.5 m above, 9 m × 2 m below.
    expect(before.paving).toBeCloseTo(31.5, 9);
    expect(before.bed).toBeCloseTo(18, 9);
    await choose('paving');
    // Beside the handle in the middle of the side.
    const [x, y] = await at(page, [2.5, 2.5]);
    const [toX, toY] = await at(page, [2.5, 3.5]);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y - 12, { steps: 3 });
    await page.mouse.move(toX, toY, { steps: 5 });
    await page.mouse.up();
    // What was sent while the edge was held comes before its end.
    await untilIdle(page);
    const edgeY = (await outlineOf('paving'))![0]![1];
    expect(edgeY).toBeGreaterThan(3.2);
    expect(edgeY).toBeLessThan(3.8);
    const after = await areas();
    // 9 m long, so many metres up: what the one loses the other gains. The third zone and the bays stay.
    expect(after.paving).toBeCloseTo(9 * (6 - edgeY), 6);
    expect(after.bed).toBeCloseTo(9 * (edgeY - 0.5), 6);
    expect(after.gravel).toBeCloseTo(before.gravel!, 9);
    const { text } = await page.evaluate(() => window.__loamdeck.scene().sceneText('copy'));
    const { out } = run(['check', 'moved.scene.json', '--json'], () => new TextEncoder().encode(text));
    const shown = await page.evaluate(() => JSON.stringify(window.__loamdeck.scene().snapshot!.report));
    expect(JSON.parse(out)).toEqual(JSON.parse(shown));
  });

  it('an edge set to a height by typing is there to the millimetre', async () => {
    await page.getByRole('tab', { name: /^Chosen/ }).click();
    const fields = page.getByRole('textbox', { name: /^y of point/ });
    for (const point of [1, 2]) {
      const field = page.getByRole('textbox', { name: `y of point ${point}`, exact: true });
      await field.fill('3.25');
      await field.press('Enter');
      await page.waitForFunction((index) => window.__loamdeck.scene().snapshot!.scene.zones[0]!.outline[index]![1] === 3.25, point - 1);
    }
    expect(await fields.count()).toBe(4);
    // 9 m × (6 − 3.25) m and 9 m × (3.25 − 0.5) m
    expect(await areas()).toMatchObject({ paving: expect.closeTo(24.75, 6), bed: expect.closeTo(24.75, 6) });
  });

  it('split along a typed line and merged again', async () => {
    await choose('bed');
    await page.getByRole('button', { name: 'Split…' }).click();
    for (const [x, y] of [
      ['3', '0'],
      ['3', '6'],
    ]) {
      await page.getByRole('textbox', { name: 'x [m]' }).fill(x!);
      await page.getByRole('textbox', { name: 'y [m]' }).fill(y!);
      await page.keyboard.press('Enter');
    }
    await page.getByRole('button', { name: 'Finish' }).click();
    await page.waitForFunction(() => window.__loamdeck.scene().snapshot!.scene.zones.length === 4);
    const parts = await page.evaluate(() => window.__loamdeck.view().selected);
    const split = await areas();
    // 2.75 m high: 6 m and 3 m of it.
    expect(parts.map(({ id }) => split[id]!).sort((a, b) => b - a)).toEqual([expect.closeTo(16.5, 6), expect.closeTo(8.25, 6)]);
    await page.getByRole('button', { name: 'Merge' }).click();
    await page.waitForFunction(() => window.__loamdeck.scene().snapshot!.scene.zones.length === 3);
    expect((await areas()).bed).toBeCloseTo(24.75, 6);
  });

  it('a zone drawn by keys alone has the typed corners', async () => {
    await page.getByRole('button', { name: 'Draw', exact: true }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('textbox', { name: 'x [m]' }).focus();
    for (const [x, y] of [
      ['1', '1'],
      ['2,5', '1'],
      ['2,5', '2'],
    ]) {
      await page.keyboard.type(x!);
      await page.keyboard.press('Tab');
      await page.keyboard.type(y!);
      await page.keyboard.press('Enter');
    }
    await page.getByRole('button', { name: 'Finish' }).focus();
    await page.keyboard.press('Enter');
    await untilZone('Z1');
    expect(await outlineOf('Z1')).toEqual([
      [1, 1],
      [2.5, 1],
      [2.5, 2],
    ]);
    // Half of 1.5 m × 1 m.
    expect((await areas()).Z1).toBeCloseTo(0.75, 9);
  });

  it('an outline that crosses itself is refused in place, with its place', async () => {
    for (const [x, y] of [
      ['1', '3'],
      ['3', '5'],
      ['3', '3'],
      ['1', '5'],
    ]) {
      await page.getByRole('textbox', { name: 'x [m]' }).fill(x!);
      await page.getByRole('textbox', { name: 'y [m]' }).fill(y!);
      await page.keyboard.press('Enter');
    }
    await page.getByRole('button', { name: 'Finish' }).click();
    const problem = page.locator('.pe-problem');
    await problem.waitFor();
    expect(await problem.textContent()).toMatch(/cross/i);
    // The diagonals of a square of 2 m meet in its middle, 2 / 4.
    await problem.getByRole('button', { name: 'Show the place' }).click();
    const mark = (await page.locator('.pe-fault').first().boundingBox())!;
    const surface = (await page.locator('.pe-surface').boundingBox())!;
    expect(Math.abs(mark.x + mark.width / 2 - (surface.x + surface.width / 2))).toBeLessThan(3);
    expect((await zones()).map(({ id }) => id)).toEqual(['paving', 'bed', 'gravel', 'Z1']);
    await page.getByRole('button', { name: 'Cancel' }).click();
  });

  it('undoing everything gives the first file to the byte', async () => {
    // The edge, its two heights, the split, the merger and the zone by keys; the zone by mouse was undone before.
    for (let steps = 0; steps < 6; steps++) {
      const seen = await page.evaluateHandle(() => window.__loamdeck.scene().snapshot);
      await page.locator('.pe-drawing').press('Control+z');
      await page.waitForFunction((old) => window.__loamdeck.scene().snapshot !== old, seen);
    }
    const { text } = await page.evaluate(() => window.__loamdeck.scene().sceneText('copy'));
    expect(await page.evaluate(() => window.__loamdeck.scene().history)).toMatchObject({ undo: null, changed: false });
    expect(text).toBe(readFileSync('scenes/terrace.scene.json', 'utf8'));
    expect(opened.problems).toEqual([]);
  });
});

describe('by finger on a tablet', () => {
  let tablet: OpenedPage;
  let cdp: CDPSession;
  beforeAll(async () => {
    tablet = await openPage(browser, `${inject('base')}?scene=terrace&show=edit-plan`, {
      width: 1024,
      height: 768,
      touch: true,
      reducedMotion: true,
    });
    await untilReady(tablet.page);
    await tablet.page.waitForSelector('.pe-surface .pe-outline');
    cdp = await tablet.context.newCDPSession(tablet.page);
  });
  afterAll(() => tablet?.close());

  it('taps set points that catch corners, two fingers zoom', async () => {
    const on = tablet.page;
    await on.getByRole('button', { name: 'Draw', exact: true }).tap();
    for (const [place, [dx, dy]] of [
      [
        [0, 2.5],
        [8, -8],
      ],
      [
        [4.5, 6],
        [-9, -7],
      ],
      [
        [0, 6],
        [-9, -8],
      ],
    ] as readonly (readonly [Point, Point])[]) {
      const [x, y] = await at(on, place);
      await on.touchscreen.tap(x + dx, y + dy);
    }
    await on.getByRole('button', { name: 'Finish' }).tap();
    await on.waitForFunction(() => window.__loamdeck.scene().snapshot!.scene.zones.length === 4);
    expect(await on.evaluate(() => window.__loamdeck.scene().snapshot!.scene.zones[3]!.outline)).toEqual([
      [0, 2.5],
      [4.5, 6],
      [0, 6],
    ]);
    const width = async () => (await on.locator('.pe-surface .pe-outline').boundingBox())!.width;
    const before = await width();
    const [x, y] = await at(on, [4.5, 3]);
    const fingers = (apart: number) => [
      { id: 0, x: x - apart, y },
      { id: 1, x: x + apart, y },
    ];
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: fingers(40) });
    for (const apart of [50, 60, 70, 80]) await cdp.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: fingers(apart) });
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    // From 80 to 160 px apart: twice as near.
    await expect.poll(async () => (await width()) / before).toBeGreaterThan(1.8);
    const small = await on
      .locator('.plan-editor button, .plan-editor select')
      .evaluateAll((all) =>
        all.filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 43.5).map((one) => one.outerHTML.slice(0, 80)),
      );
    expect(small).toEqual([]);
    expect(tablet.problems).toEqual([]);
  });
});
