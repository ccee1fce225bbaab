/** Reads the running app's state from the page, as numbers. */

import type { Page } from 'playwright-core';
import type { ImportActions, ImportState } from '../../src/store/import-store.ts';
import type { SceneActions, SceneState } from '../../src/store/scene-store.ts';
import type { ViewActions, ViewState } from '../../src/store/view-store.ts';
import type { ViewProbe } from '../../src/view3d/probe.ts';

export interface Loamdeck {
  readonly ready: boolean;
  scene(): SceneState & SceneActions;
  view(): ViewState & ViewActions;
  imports(): ImportState & ImportActions;
  readonly probe: ViewProbe;
}

declare global {
  interface Window {
    readonly __loamdeck: Loamdeck;
  }
}

/** Waits until a scene is open and drawn. */
export async function untilReady(page: Page): Promise<void> {
  await page.waitForFunction(() => window.__loamdeck?.ready === true);
  await untilIdle(page);
}

/** Waits until the tables are those of the scene as it is shown. */
export async function untilReported(page: Page): Promise<void> {
  await page.waitForFunction(() => window.__loamdeck.scene().behind === null);
}

/** Waits until the worker has answered all it was asked, and what came of it is drawn. */
export async function untilIdle(page: Page): Promise<void> {
  await untilReported(page);
  const idle = await page.evaluate(async () => {
    const { probe, scene } = window.__loamdeck;
    // The worker answers one question after the other: this one last. Without an open scene it refuses.
    await scene()
      .sources()
      .catch(() => null);
    const deadline = performance.now() + 60_000;
    let [frames, still, sinceMs] = [-1, 0, 0];
    // A frame that is asked for is drawn at the browser's next. On fine screens the picture gets its full sharpness after 200 ms of rest.
    const restMs = devicePixelRatio > 1 ? 250 : 120;
    while (still < 6 || performance.now() - sinceMs < restMs) {
      if (performance.now() > deadline) return false;
      if (probe.frames !== frames) [frames, still, sinceMs] = [probe.frames, 0, performance.now()];
      else still++;
      await new Promise(requestAnimationFrame);
    }
    return true;
  });
  if (!idle) throw new Error('untilIdle: frames are still drawn after 60 s');
}

/** Frames that are drawn by themselves once all is drawn; a good page draws none. */
export async function framesAtRest(page: Page): Promise<number> {
  await untilIdle(page);
  const frames = () => page.evaluate(() => window.__loamdeck.probe.frames);
  const before = await frames();
  // Time itself is what is tested: anything that blinks, sways or polls comes within it.
  await page.waitForTimeout(600);
  return (await frames()) - before;
}

/** Waits until a print sheet is on its pages, with the letters that it is printed with. */
export async function untilLaid(page: Page): Promise<void> {
  await page.locator('.sheet-overlay .paper').first().waitFor();
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  await untilIdle(page);
}

/** Waits for the cell map that the view asks for. */
export async function untilMapped(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const { map, stage } = window.__loamdeck.view();
    const shown = window.__loamdeck.scene().cellMap;
    return map === null ? shown === null : shown?.kind === map && shown.stage === stage;
  });
  await untilIdle(page);
}
