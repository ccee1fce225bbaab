/** Reads the running app's state from the page, as numbers. */

import type { Page } from 'playwright-core';
import type { SceneActions, SceneState } from '../../src/store/scene-store.ts';
import type { ViewActions, ViewState } from '../../src/store/view-store.ts';
import type { ViewProbe } from '../../src/view3d/probe.ts';

export interface Loamdeck {
  readonly ready: boolean;
  scene(): SceneState & SceneActions;
  view(): ViewState & ViewActions;
  readonly probe: ViewProbe;
}

declare global {
  interface Window {
    readonly __loamdeck: Loamdeck;
  }
}

/** Waits until a scene is open and drawn. */
export async function untilReady(page: Page): Promise<void> {
  await page.waitForFunction(() => window.__loamdeck?.ready === true, null, { timeout: 30_000 });
  await untilIdle(page);
}

/** Waits until no frame has been drawn for a third of a second. */
export async function untilIdle(page: Page): Promise<void> {
  await page.evaluate(() => {
    delete (window as { idleAt?: unknown }).idleAt;
  });
  await page.waitForFunction(
    () => {
      const idle = window as unknown as { idleAt?: { frames: number; since: number } };
      const { frames } = window.__loamdeck.probe;
      if (idle.idleAt?.frames !== frames) idle.idleAt = { frames, since: performance.now() };
      return performance.now() - idle.idleAt.since > 350;
    },
    null,
    { timeout: 30_000, polling: 50 },
  );
}

/** Waits for the cell map that the view asks for. */
export async function untilMapped(page: Page): Promise<void> {
  await page.waitForFunction(
    () => {
      const { map, stage } = window.__loamdeck.view();
      const shown = window.__loamdeck.scene().cellMap;
      return map === null ? shown === null : shown?.kind === map && shown.stage === stage;
    },
    null,
    { timeout: 30_000 },
  );
  await untilIdle(page);
}
