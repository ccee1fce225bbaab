/** Fingers on the model, as the browser's own protocol sends them: one turns, two move and zoom, a long press does no harm. */

import type { Browser, CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { untilIdle, untilReady } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
let opened: OpenedPage;
let page: Page;
let cdp: CDPSession;
/** Middle of the model on the page [CSS px]. */
let middle: readonly [number, number];

beforeAll(async () => {
  browser = await workerBrowser();
  opened = await openPage(browser, `${inject('base')}?scene=terrace`, {
    width: 820,
    height: 1180,
    touch: true,
    reducedMotion: true,
  });
  page = opened.page;
  await untilReady(page);
  cdp = await opened.context.newCDPSession(page);
  const box = (await page.locator('.deck-view canvas').boundingBox())!;
  middle = [box.x + box.width / 2, box.y + box.height / 2];
});
afterAll(async () => {
  await opened?.close();
  await browser?.close();
});

type Point = readonly [number, number];

/** Fingers go from their first to their last places in steps; each place is an offset from the middle [CSS px]. */
async function drag(fingers: readonly (readonly [from: Point, to: Point])[]): Promise<void> {
  const steps = 8;
  const at = (step: number) =>
    fingers.map(([from, to], id) => ({
      id,
      x: middle[0] + from[0] + ((to[0] - from[0]) * step) / steps,
      y: middle[1] + from[1] + ((to[1] - from[1]) * step) / steps,
    }));
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
  for (let step = 1; step <= steps; step++) await cdp.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(step) });
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await untilIdle(page);
}

interface Seen {
  /** From one cell to another on the picture: its middle, length [CSS px] and direction [°]. */
  readonly x: number;
  readonly y: number;
  readonly lengthPx: number;
  readonly bearingDeg: number;
}

/** Where two far cells stand on the picture. */
async function seen(): Promise<Seen> {
  const [a, b] = await page.evaluate(() => {
    const { grid } = window.__loamdeck.scene().snapshot!;
    const row = Math.floor(grid.rows / 2) * grid.columns;
    const source = window.__loamdeck.probe.source!;
    return [source.projectCell(row + Math.floor(grid.columns / 3))!, source.projectCell(row + Math.floor((2 * grid.columns) / 3))!];
  });
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  return { x: (a[0] + b[0]) / 2, y: (a[1] + b[1]) / 2, lengthPx: Math.hypot(dx, dy), bearingDeg: (Math.atan2(dy, dx) * 180) / Math.PI };
}

async function home(): Promise<Seen> {
  await page.evaluate(() => window.__loamdeck.view().moveCamera('home'));
  await untilIdle(page);
  return seen();
}

describe('fingers', () => {
  it('one turns the model about itself', async () => {
    const before = await home();
    await drag([
      [
        [-60, 0],
        [60, 0],
      ],
    ]);
    const after = await seen();
    expect(Math.abs(after.bearingDeg - before.bearingDeg)).toBeGreaterThan(8);
    // The model stays where it is.
    expect(Math.hypot(after.x - before.x, after.y - before.y)).toBeLessThan(60);
  });

  it('two side by side move it and do not turn it', async () => {
    const before = await home();
    await drag([
      [
        [-75, 0],
        [-15, 0],
      ],
      [
        [75, 0],
        [135, 0],
      ],
    ]);
    const after = await seen();
    expect(after.x - before.x).toBeGreaterThan(30);
    expect(Math.abs(after.bearingDeg - before.bearingDeg)).toBeLessThan(3);
  });

  it('two going apart bring it nearer, what is between them stays there', async () => {
    const before = await home();
    await drag([
      [
        [-50, 0],
        [-100, 0],
      ],
      [
        [50, 0],
        [100, 0],
      ],
    ]);
    const after = await seen();
    expect(after.lengthPx / before.lengthPx).toBeGreaterThan(1.3);
    expect(Math.abs(after.bearingDeg - before.bearingDeg)).toBeLessThan(8);
  });

  it('a long press hides nothing and opens no menu of the browser', async () => {
    await home();
    const shown = () =>
      page.evaluate(() => {
        const { hiddenKinds, hiddenZones, onlyKind, onlyZone, explode, map, stage } = window.__loamdeck.view();
        return { hidden: [...hiddenKinds, ...hiddenZones], onlyKind, onlyZone, explode, map, stage };
      });
    const before = await shown();
    const touchPoints = [{ id: 0, x: middle[0], y: middle[1] }];
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints });
    await page.waitForTimeout(900);
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await untilIdle(page);
    expect(await shown()).toEqual(before);
    expect(opened.problems).toEqual([]);
  });
});
