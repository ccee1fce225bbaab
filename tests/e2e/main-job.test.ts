/** The main job in a real browser: the model, the exploded layers, heat maps, stages and the core log show what the core calculated. */

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { CELL_ON_DECK, CELL_OVER, CELL_UNCONFIRMED, MAP_KINDS, type MapKind } from '../../src/model/maps.ts';
import { cellColour } from '../../src/view3d/cell-colour.ts';
import { framesAtRest, untilIdle, untilMapped, untilReady } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
let opened: OpenedPage;
beforeAll(async () => {
  browser = await workerBrowser();
  // Large enough for a cell to be several pixels, so that ink lines cover few of them.
  opened = await openPage(browser, `${inject('base')}?scene=courtyard`, { width: 1440, height: 1000 });
  await untilReady(opened.page);
});
afterAll(async () => {
  await opened?.close();
  await browser?.close();
});

/** Colours of the picture at the middle of cells; black where a cell is not on the canvas. */
function pixelsAt(page: Page, cells: readonly number[]): Promise<(readonly [number, number, number])[]> {
  return page.evaluate((list) => {
    const source = window.__loamdeck.probe.source!;
    return [...source.readPixels(list.map((cell) => source.projectCell(cell) ?? [-1, -1]))];
  }, cells);
}

describe('the model', () => {
  it('is not blank and needs few draw calls', async () => {
    await opened.screenshot('courtyard');
    const seen = await opened.page.evaluate(() => {
      const source = window.__loamdeck.probe.source!;
      const { clientWidth, clientHeight } = document.querySelector('canvas') as HTMLCanvasElement;
      const points = Array.from(
        { length: 40 * 40 },
        (_, i) => [(clientWidth * ((i % 40) + 0.5)) / 40, (clientHeight * (Math.floor(i / 40) + 0.5)) / 40] as const,
      );
      return { colours: new Set(source.readPixels(points).map((rgb) => rgb.join())).size, drawing: source.drawing() };
    });
    expect(seen.colours).toBeGreaterThan(20);
    expect(seen.drawing.triangles).toBeGreaterThan(1000);
    expect(seen.drawing.calls).toBeLessThanOrEqual(40);
  });

  it('draws nothing while nothing changes', async () => {
    expect(await framesAtRest(opened.page)).toBe(0);
    expect(await opened.page.evaluate(() => window.__loamdeck.probe.frames)).toBeGreaterThan(0);
  });

  it('shows layers at their true levels when closed, and none touching the next when exploded', async () => {
    const parts = () => opened.page.evaluate(() => window.__loamdeck.probe.source!.parts().map((part) => ({ ...part })));
    const zones = await opened.page.evaluate(() =>
      window.__loamdeck
        .scene()
        .snapshot!.report.zones.map(({ id, finishedM }) => ({ id, max: finishedM.max - window.__loamdeck.scene().snapshot!.datumM })),
    );
    const closed = await parts();
    expect(closed.every((part) => part.lowerLiftM === 0 && part.upperLiftM === 0)).toBe(true);
    for (const zone of zones) {
      const layers = closed.filter((part) => part.owner === zone.id && part.layer >= 0);
      const top = Math.max(...layers.map((part) => part.highestM));
      // The report's greatest level is at cell centres, the mesh goes to the very edge: half a cell's fall more,
      // on the steepest mound (about 1 : 3) some 4 cm.
      expect(top).toBeGreaterThan(zone.max - 0.001);
      expect(top).toBeLessThan(zone.max + 0.05);
    }
    await opened.page.evaluate(() => window.__loamdeck.view().setExplode(1));
    await untilIdle(opened.page);
    await opened.screenshot('courtyard-exploded');
    const open = await parts();
    for (const zone of zones) {
      const layers = open
        .filter((part) => part.owner === zone.id && part.layer >= 0 && Number.isFinite(part.lowestM))
        .sort((a, b) => a.layer - b.layer);
      for (let i = 1; i < layers.length; i++)
        expect(layers[i].lowestM, `${zone.id}: ${layers[i].name}`).toBeGreaterThan(layers[i - 1].highestM);
    }
    await opened.page.evaluate(() => window.__loamdeck.view().setExplode(0));
    await untilIdle(opened.page);
  });
});

describe('heat maps', () => {
  // Heights at edges stand in one row of cells, under the edges drawn there; classes with hatches, and water, of which the courtyard
  // has none standing, have tests of their own; so have differences, which need a scene with a second scheme.
  const ELSEWHERE: readonly MapKind[] = ['upstand', 'reach', 'catchment', 'ponding', 'blocked', 'difference'];
  it.each(MAP_KINDS.filter((kind) => !ELSEWHERE.includes(kind)))('%s: pixels are the class of their cell', async (kind) => {
    const { page } = opened;
    await page.evaluate((map) => {
      const view = window.__loamdeck.view();
      view.setStillMotion(true);
      for (const part of ['tree crown', 'tree trunk', 'block', 'line load'] as const)
        if (!view.hiddenKinds.has(part)) view.toggleKind(part);
      view.moveCamera('plan');
      view.showMap(map);
    }, kind);
    await untilMapped(page);
    await opened.screenshot(`map-${kind}`);
    const map = await page.evaluate(() => {
      const shown = window.__loamdeck.scene().cellMap!;
      return { ...shown, values: [...shown.values], flags: [...shown.flags] };
    });
    // Plain cells only: hatched ones show hatch or colour, and those are looked at below.
    const plain = map.flags
      .map((flags, cell) => ({ flags, cell }))
      .filter(({ flags, cell }) => flags === CELL_ON_DECK && Number.isFinite(map.values[cell]));
    const chosen = Array.from({ length: 60 }, (_, i) => plain[Math.floor(((i + 0.5) / 60) * plain.length)].cell);
    const pixels = await pixelsAt(page, chosen);
    const shown = { ...map, values: Float32Array.from(map.values), flags: Uint8Array.from(map.flags) };
    let right = 0;
    chosen.forEach((cell, i) => {
      const want = cellColour(shown.values[cell], shown.flags[cell], shown);
      if (pixels[i].every((value, c) => Math.abs(value - want[c]) <= 4)) right++;
    });
    // Ink lines, bay lines and labels may lie over a few of them.
    // The maps of falls and flow carry arrows with halos besides.
    expect(right / chosen.length).toBeGreaterThan(kind === 'fall' || kind === 'flow' ? 0.6 : 0.85);
    expect(plain.length).toBeGreaterThan(1000);
  });

  it('hatches what is over the limit and what is not confirmed', async () => {
    const { page } = opened;
    await page.evaluate(() => window.__loamdeck.view().showMap('worst-stage'));
    await untilMapped(page);
    const flags = await page.evaluate(() => [...window.__loamdeck.scene().cellMap!.flags]);
    for (const bit of [CELL_OVER, CELL_UNCONFIRMED]) {
      const cells = flags.flatMap((value, cell) => (value & bit ? [cell] : []));
      expect(cells.length).toBeGreaterThan(10);
      const colours = new Set((await pixelsAt(page, cells.slice(0, 150))).map((rgb) => rgb.join()));
      // A hatch has at least two colours, a flat area one.
      expect(colours.size).toBeGreaterThan(1);
    }
  });
});

describe('stages', () => {
  it('are reached one by one with the keys, each with its own state', async () => {
    const { page } = opened;
    const count = await page.evaluate(() => window.__loamdeck.scene().snapshot!.stages.length);
    await page.evaluate(() => {
      window.__loamdeck.view().showAll();
      window.__loamdeck.view().showMap(null);
      window.__loamdeck.view().showStage(0);
    });
    await page.getByRole('button', { name: /next/i }).first().focus();
    const shown: number[] = [];
    for (let stage = 0; stage < count; stage++) {
      await untilIdle(page);
      const at = await page.evaluate(() => ({
        stage: window.__loamdeck.view().stage,
        visible: window.__loamdeck.probe.source!.parts().filter((part) => part.shown && part.layer >= 0).length,
      }));
      expect(at.stage).toBe(stage);
      shown.push(at.visible);
      await page.keyboard.press('Enter');
    }
    expect(await page.evaluate(() => window.__loamdeck.view().stage)).toBeNull();
    // Layers only ever come.
    expect([...shown].sort((a, b) => a - b)).toEqual(shown);
    expect(shown[0]).toBe(0);
    await untilIdle(page);
    const whole = await page.evaluate(() => window.__loamdeck.probe.source!.parts().filter((part) => part.shown && part.layer >= 0).length);
    expect(whole).toBeGreaterThanOrEqual(shown[shown.length - 1]);
  });
});

describe('the core log', () => {
  it('opens where one clicks, and its lines add up to its total', async () => {
    const { page } = opened;
    await page.evaluate(() => {
      const view = window.__loamdeck.view();
      view.showStage(null);
      view.moveCamera('plan');
    });
    await untilIdle(page);
    const cell = await page.evaluate(() => {
      const { grid } = window.__loamdeck.scene().snapshot!;
      return Math.floor(grid.rows / 2) * grid.columns + Math.floor(grid.columns / 2);
    });
    const at = await page.evaluate((wanted) => window.__loamdeck.probe.source!.projectCell(wanted), cell);
    const box = (await page.locator('canvas').boundingBox())!;
    await page.mouse.click(box.x + at![0], box.y + at![1]);
    await page.waitForFunction(() => window.__loamdeck.scene().coreLog !== null);
    await opened.screenshot('core-log');
    const log = await page.evaluate(() => window.__loamdeck.scene().coreLog!);
    const grid = await page.evaluate(() => window.__loamdeck.scene().snapshot!.grid);
    // The very cell, or a neighbour where the click falls on the edge between two.
    expect(Math.abs((log.cell % grid.columns) - (cell % grid.columns))).toBeLessThanOrEqual(1);
    expect(Math.abs(Math.floor(log.cell / grid.columns) - Math.floor(cell / grid.columns))).toBeLessThanOrEqual(1);
    const lines = [...log.layers.filter((layer) => layer.placed), ...log.others].reduce((sum, line) => sum + line.saturatedKNm2, 0);
    expect(lines).toBeCloseTo(log.saturatedKNm2, 9);
    await expect.poll(() => page.getByTestId('core-total').textContent()).toBe(log.saturatedKNm2.toFixed(2));
    // What is printed adds up too, to the last digit shown.
    const rows = await page.locator('.sums tbody tr td:last-child').allTextContents();
    const printed = rows.filter((text) => /^\d/.test(text)).reduce((sum, text) => sum + Math.round(Number(text) * 100), 0);
    expect(printed / 100).toBeCloseTo(log.saturatedKNm2, 2);
  });
});

describe('a lost graphics context', () => {
  it('is told, restored, and shows the same picture', async () => {
    const { page } = opened;
    await page.evaluate(() => {
      window.__loamdeck.view().showMap('load');
      window.__loamdeck.view().moveCamera('home');
    });
    await untilMapped(page);
    const sample = () =>
      page.evaluate(() => {
        const { clientWidth, clientHeight } = document.querySelector('canvas') as HTMLCanvasElement;
        const points = Array.from(
          { length: 400 },
          (_, i) => [(clientWidth * ((i % 20) + 0.5)) / 20, (clientHeight * (Math.floor(i / 20) + 0.5)) / 20] as const,
        );
        return window.__loamdeck.probe.source!.readPixels(points).map((rgb) => rgb.join());
      });
    const before = await sample();
    await page.evaluate(() => {
      const canvas = document.querySelector('canvas') as HTMLCanvasElement;
      const extension = canvas.getContext('webgl2')!.getExtension('WEBGL_lose_context')!;
      (window as unknown as { loss: WEBGL_lose_context }).loss = extension;
      extension.loseContext();
    });
    await page.waitForFunction(() => window.__loamdeck.view().canvas === 'lost');
    await page.evaluate(() => (window as unknown as { loss: WEBGL_lose_context }).loss.restoreContext());
    await page.waitForFunction(() => window.__loamdeck.view().canvas === 'ready');
    await untilIdle(page);
    const after = await sample();
    const same = after.filter((pixel, i) => pixel === before[i]).length;
    expect(same / before.length).toBeGreaterThan(0.99);
  });
});

describe('a depth measured on site', () => {
  it('is typed at the picked place as one reads it off, compared with the plan, and taken back', async () => {
    const { page } = opened;
    // x 4.125, y 16.125: perennials with 300 mm of substrate; the deck is 180 cells wide.
    await page.evaluate(() => window.__loamdeck.view().pickCell(64 * 180 + 16));
    await page.getByRole('tab', { name: 'Probes' }).click();
    await page.getByLabel('What was measured').selectOption('substrate-intensive');
    const depth = page.getByRole('textbox', { name: 'Depth measured' });
    await depth.fill('a lot');
    await depth.press('Enter');
    await page.getByText('That is not a number.').waitFor();
    await depth.fill('62 cm');
    await page.getByLabel('Measured on').fill('2026-11-02');
    await page.getByLabel('Measured by').fill('foreman');
    await page.getByRole('button', { name: 'Compare with the plan' }).click();
    // 0.32 m · 1450 kg/m³ · 9.81 = 4.55 kN/m²
    const row = page.getByRole('listitem').filter({ hasText: 'P4' });
    await row.getByText('620\u202Fmm measured, 300\u202Fmm planned, +320\u202Fmm').waitFor();
    await row.getByText('+4.55\u202FkN/m² saturated').waitFor();
    await row.getByText('Measured on 2026-11-02 by foreman').waitFor();
    await page.getByRole('button', { name: 'Remove P4' }).click();
    await row.waitFor({ state: 'detached' });
  });
});

it('nothing went wrong on the page and no request left the app', () => {
  expect(opened.problems.filter((problem) => !/context lost|CONTEXT_LOST/i.test(problem))).toEqual([]);
});
