/** Long work in the real browser: edits, stages and openings leave nothing behind; a lost context comes back with the same picture. */

import type { Browser, CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { CARDS, SHEETS } from '../../src/store/sheet-view.ts';
import { untilIdle, untilMapped, untilReady } from './app-state.ts';
import { type KeptObjects, keptObjects } from './kept-objects.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
let opened: OpenedPage;
let page: Page;
let cdp: CDPSession;
let objects: KeptObjects;
beforeAll(async () => {
  browser = await workerBrowser();
  // Few pixels, since the work is drawn by software here and none of it is about pixels.
  opened = await openPage(browser, `${inject('base')}?scene=terrace`, { width: 720, height: 500, reducedMotion: true });
  page = opened.page;
  await untilReady(page);
  cdp = await opened.context.newCDPSession(page);
  objects = await keptObjects(cdp);
});
afterAll(async () => {
  await opened?.close();
  await browser?.close();
});

/** One thickness of every build-up goes up and comes back, each time through the calculation. */
const edit = (times: number) =>
  page.evaluate(async (count) => {
    const { scene } = window.__loamdeck;
    const adjustable = (layer: { role: string; adjustable: boolean }) => layer.role === 'substrate' && layer.adjustable;
    const buildUp = scene().snapshot!.buildUps.find(({ zones, layers }) => zones.length > 0 && layers.some(adjustable))!;
    const index = buildUp.layers.findIndex(adjustable);
    const usualMm = buildUp.layers[index]!.thicknessMm;
    const shownMm = () => scene().snapshot!.buildUps.find(({ id }) => id === buildUp.id)!.layers[index]!.thicknessMm;
    for (let i = 0; i < count; i++) {
      const wantedMm = i % 2 === 0 ? usualMm + 10 : usualMm;
      scene().setThickness(buildUp.id, index, wantedMm);
      while (shownMm() !== wantedMm) await new Promise((resolve) => setTimeout(resolve, 1));
    }
  }, times);

/** Through all stages to the finished garden, a frame each. */
const sweep = (times: number) =>
  page.evaluate(async (count) => {
    const { view, scene } = window.__loamdeck;
    for (let i = 0; i < count; i++) {
      for (let stage = 0; stage < scene().snapshot!.stages.length; stage++) {
        view().showStage(stage);
        await new Promise(requestAnimationFrame);
      }
      view().showStage(null);
      await new Promise(requestAnimationFrame);
    }
  }, times);

/** Every mode is opened and left again. */
async function modes(times: number): Promise<void> {
  for (let i = 0; i < times; i++) {
    await page.evaluate(async () => {
      const { view } = window.__loamdeck;
      const frames = async (count: number) => {
        for (let k = 0; k < count; k++) await new Promise(requestAnimationFrame);
      };
      view().showMap('utilisation');
      await frames(2);
      view().showMap(null);
      view().setExplode(1);
      await frames(2);
      view().setExplode(0);
      view().setCut({ on: true });
      await frames(2);
      view().setCut({ on: false });
      view().startWalk();
      await frames(3);
      view().leaveWalk();
      await frames(2);
    });
  }
  await page.evaluate(() => {
    window.__loamdeck.view().showMap(null);
    window.__loamdeck.view().moveCamera('home');
  });
  await untilMapped(page);
}

/** Every print sheet, every card of the talk, the panels and a section are opened and closed again, all within the page itself. */
const panels = (times: number) =>
  page.evaluate(
    async ([count, sheets, cards]) => {
      const { view, scene } = window.__loamdeck;
      const until = async (done: () => unknown) => {
        while (!done()) await new Promise(requestAnimationFrame);
      };
      const seen = (selector: string) => document.querySelector<HTMLElement>(selector);
      for (let i = 0; i < count; i++) {
        for (const sheet of sheets) {
          view().showSheet(sheet);
          await until(() => seen('.sheet-overlay .paper'));
          view().showSheet(null);
          await until(() => !seen('.sheet-overlay'));
        }
        for (let card = 0; card < cards; card++) {
          view().showCard(card);
          await until(() => seen('.talk'));
        }
        view().showCard(null);
        await until(() => !seen('.talk'));
        for (const name of ['Export', 'Settings']) {
          const buttons = [...document.querySelectorAll<HTMLElement>('.top-strip button')];
          buttons.find((one) => (one.getAttribute('aria-label') ?? one.textContent) === name)!.click();
          await until(() => seen('dialog[open]'));
          seen('dialog[open] button')!.closest('dialog')!.close();
          await until(() => !seen('dialog[open]'));
        }
        seen('.bays .derived')!.click();
        await until(() => seen('[data-testid=derivation-value]'));
        seen('dialog[open]')!.querySelector('button')!.click();
        await until(() => !seen('[data-testid=derivation-value]'));
        view().showSection({
          line: [
            [1, 4],
            [8, 4],
          ],
        });
        await until(() => scene().section?.of === view().section);
        view().closeSection();
        await until(() => !seen('.section-panel'));
      }
    },
    [times, SHEETS, CARDS.length] as const,
  );

/** What the document keeps alive, shown or not. */
async function held(): Promise<{ nodes: number; listeners: number }> {
  await untilIdle(page);
  for (let i = 0; i < 3; i++) await cdp.send('HeapProfiler.collectGarbage');
  const { metrics } = await cdp.send('Performance.getMetrics');
  const value = (wanted: string) => metrics.find(({ name }) => name === wanted)!.value;
  return { nodes: value('Nodes'), listeners: value('JSEventListeners') };
}

interface Kept {
  readonly geometries: number;
  readonly textures: number;
  readonly pageBytes: number;
  readonly workerBytes: number;
}

async function kept(): Promise<Kept> {
  await untilIdle(page);
  const { geometries, textures } = await page.evaluate(() => window.__loamdeck.probe.source!.memory());
  return { geometries, textures, pageBytes: await objects.page(), workerBytes: await objects.worker() };
}

describe('memory', () => {
  it('is seen where the page holds on to something', async () => {
    const hold = (count: number) =>
      page.evaluate((many) => {
        (window as unknown as { held: object[] }).held = Array.from({ length: many }, (_, i) => ({ i }));
      }, count);
    await hold(10_000);
    const full = await objects.page();
    await hold(0);
    // An object with one property takes 16 bytes at the very least, and 4 in the list.
    expect(full - (await objects.page())).toBeGreaterThan(200_000);
  });

  it('200 edits, 50 sweeps of the stages and 20 openings of every mode leave no more behind than one of each', async () => {
    // A hundred steps of undo are kept on purpose: they are there before the count begins.
    await edit(100);
    await sweep(2);
    await modes(2);
    const before = await kept();
    await edit(200);
    await sweep(50);
    await modes(20);
    const after = await kept();
    expect(Math.abs(after.geometries - before.geometries)).toBeLessThanOrEqual(2);
    expect(Math.abs(after.textures - before.textures)).toBeLessThanOrEqual(2);
    // A kilobyte left by each edit would be 200 kB; the browser's own record of slow frames is a few dozen.
    expect((after.pageBytes - before.pageBytes) / 1e3, 'kB of the page').toBeLessThan(150);
    expect((after.workerBytes - before.workerBytes) / 1e3, 'kB of the worker').toBeLessThan(150);
  }, 120_000);
});

describe('memory of panels', () => {
  it('20 openings of every sheet, card, panel, derivation and section leave no node and no listener behind', async () => {
    await cdp.send('Performance.enable');
    await panels(5);
    const [before, beforeKept] = [await held(), await kept()];
    await panels(20);
    const [after, afterKept] = [await held(), await kept()];
    // A single node kept by each of the 13 openings would be 260 more.
    expect(after.nodes - before.nodes).toBeLessThan(20);
    expect(after.listeners - before.listeners).toBeLessThan(5);
    expect((afterKept.pageBytes - beforeKept.pageBytes) / 1e3, 'kB of the page').toBeLessThan(150);
    expect((afterKept.workerBytes - beforeKept.workerBytes) / 1e3, 'kB of the worker').toBeLessThan(150);
  }, 120_000);
});

describe('a lost context', () => {
  /** Colours at 400 points of the picture. */
  const sample = () =>
    page.evaluate(() => {
      const { clientWidth, clientHeight } = document.querySelector('.deck-view canvas') as HTMLCanvasElement;
      const points = Array.from(
        { length: 400 },
        (_, i) => [(clientWidth * ((i % 20) + 0.5)) / 20, (clientHeight * (Math.floor(i / 20) + 0.5)) / 20] as const,
      );
      return window.__loamdeck.probe.source!.readPixels(points).map((rgb) => rgb.join());
    });

  /** Shadows are given up while frames are slow, which here they may be: they are wanted in both pictures. */
  const shadowed = async () => {
    for (let tries = 0; tries < 5; tries++) {
      await page.evaluate(() => window.__loamdeck.view().setWalk({ shadow: 'on' }));
      await untilIdle(page);
      const colours = await sample();
      if (await page.evaluate(() => window.__loamdeck.view().walk?.shadow === 'on')) return colours;
    }
    throw new Error('shadowed: shadows are given up each time');
  };

  it.each([1, 0.5])('in the walkthrough comes back with the same picture, at %d device pixels per CSS pixel', async (dpr) => {
    await opened.close();
    opened = await openPage(browser, `${inject('base')}?scene=terrace`, { dpr, reducedMotion: true });
    page = opened.page;
    await untilReady(page);
    await page.evaluate(() => window.__loamdeck.view().startWalk());
    await page.waitForFunction(() => window.__loamdeck.view().walk !== null);
    await untilIdle(page);
    const before = await shadowed();
    expect(new Set(before).size).toBeGreaterThan(20);
    await page.evaluate(() => {
      const canvas = document.querySelector('.deck-view canvas') as HTMLCanvasElement;
      const loss = canvas.getContext('webgl2')!.getExtension('WEBGL_lose_context')!;
      (window as unknown as { loss: WEBGL_lose_context }).loss = loss;
      loss.loseContext();
    });
    await page.waitForFunction(() => window.__loamdeck.view().canvas === 'lost');
    await page.evaluate(() => (window as unknown as { loss: WEBGL_lose_context }).loss.restoreContext());
    await page.waitForFunction(() => window.__loamdeck.view().canvas === 'ready');
    const after = await shadowed();
    // Whole pixels, rounded down, however the page is divided: else a row of the picture is cut off.
    const [drawnOn, canvas] = await page.evaluate(() => {
      const gl = (document.querySelector('.deck-view canvas') as HTMLCanvasElement).getContext('webgl2')!;
      return [[...(gl.getParameter(gl.VIEWPORT) as Int32Array)], [0, 0, gl.drawingBufferWidth, gl.drawingBufferHeight]];
    });
    expect(drawnOn).toEqual(canvas);
    expect(after.filter((pixel, i) => pixel === before[i]).length / before.length).toBeGreaterThan(0.99);
    expect(opened.problems.filter((problem) => !/context lost|CONTEXT_LOST/i.test(problem))).toEqual([]);
  });
});
