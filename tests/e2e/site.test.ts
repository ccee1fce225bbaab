/** The site in the real browser: map of reach, site plan in stages, lanes, areas and retaining edges in their sheets, room for all tabs. */

import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, inject, it } from 'vitest';
import { namedStyles } from '../../src/model/class-style.ts';
import { CELL_ON_DECK, REACH_CLASSES } from '../../src/model/maps.ts';
import { rgbOf } from '../../src/view3d/cell-colour.ts';
import { untilIdle, untilMapped, untilReady } from './app-state.ts';
import { openPage } from './open-page.ts';
import { sharedPage } from './shared-page.ts';

const opened = sharedPage('?scene=courtyard');

/** What the page shows uses narrow no-break spaces before units. */
const plain = (text: string) => text.replaceAll('\u202F', ' ');

async function show(page: Page, stage: string | null, map: 'reach' | null): Promise<void> {
  await page.evaluate(
    ([id, kind]) => {
      const view = window.__loamdeck.view();
      const stages = window.__loamdeck.scene().snapshot!.stages;
      view.setStillMotion(true);
      view.showStage(id === null ? null : stages.findIndex((one) => one.id === id));
      view.showMap(kind);
    },
    [stage, map] as const,
  );
  await untilMapped(page);
}

const labels = (page: Page, kind: 'post' | 'class') =>
  page.locator(`.field-label-${kind}`).evaluateAll((all) => {
    return all.filter((one) => getComputedStyle(one).visibility === 'visible').map((one) => one.textContent ?? '');
  });

describe('the map of reach', () => {
  beforeEach(() => show(opened.page, 'S10', 'reach'));

  it('names its classes with their areas, which are those of the report', async () => {
    const { page } = opened;
    const reach = await page.evaluate(() => window.__loamdeck.scene().snapshot!.report.reach!.find(({ stage }) => stage === 'S10')!);
    const classM2 = await page.evaluate(() => [...window.__loamdeck.scene().cellMap!.classM2!]);
    expect(classM2[0] + classM2[1] + classM2[2]).toBeCloseTo(reach.areaM2, 6);
    expect(classM2[2]).toBeCloseTo(reach.unreachedM2, 6);
    const legend = plain((await page.locator('.map-legend').textContent()) ?? '');
    expect(legend).toContain(`Plant drives there: ${classM2[0].toFixed(1)} m²`);
    expect(legend).toContain('within 2 m of an open edge');
  });

  it('draws the colour of each class', async () => {
    const { page } = opened;
    await page.evaluate(() => {
      window.__loamdeck.view().setSitePlan(false);
      window.__loamdeck.view().moveCamera('plan');
    });
    await untilIdle(page);
    const map = await page.evaluate(() => {
      const { values, flags } = window.__loamdeck.scene().cellMap!;
      return { values: [...values], flags: [...flags] };
    });
    const styles = namedStyles({ kind: 'reach', names: REACH_CLASSES });
    for (const [index, { fill, hatch }] of styles.entries()) {
      const cells = map.flags.flatMap((flags, cell) => (flags === CELL_ON_DECK && map.values[cell] === index ? [cell] : []));
      if (cells.length < 100 || hatch !== 'none') continue;
      const chosen = Array.from({ length: 40 }, (_, i) => cells[Math.floor(((i + 0.5) / 40) * cells.length)]);
      const pixels = await page.evaluate((of) => {
        const { probe } = window.__loamdeck;
        return probe.source!.readPixels(of.map((cell) => probe.source!.projectCell(cell) ?? [0, 0]));
      }, chosen);
      const right = pixels.filter((pixel) => pixel.every((value, c) => Math.abs(value - rgbOf(fill)[c]) <= 4)).length;
      // Arrows, ink, trees and machines lie over some.
      expect(right / chosen.length, REACH_CLASSES[index]).toBeGreaterThan(0.5);
    }
    await page.evaluate(() => window.__loamdeck.view().setSitePlan(true));
  });

  it('stands in the table in words', async () => {
    const { page } = opened;
    await page.getByRole('tab', { name: 'Cells' }).click();
    const first = page.locator('table.cells tbody tr').first();
    expect(await first.locator('strong').textContent()).toMatch(/driven to|crane or hose|not reached/);
  });

  it('says in the finished garden that reach belongs to a stage', async () => {
    await show(opened.page, null, 'reach');
    expect(await opened.page.locator('.map-legend').textContent()).toContain('Reach belongs to a stage');
  });
});

describe('the site plan', () => {
  it('puts a post at every access point in a stage, and goes away on demand', async () => {
    const { page } = opened;
    await page.evaluate(() => window.__loamdeck.view().moveCamera('home'));
    await show(page, 'S8', null);
    const wanted = await page.evaluate(() => window.__loamdeck.scene().snapshot!.scene.accessPoints!.map(({ id }) => id));
    expect((await labels(page, 'post')).map((text) => text.split(' ')[0]).sort()).toEqual([...wanted].sort());
    await opened.screenshot('site-plan');
    const { calls } = await page.evaluate(() => window.__loamdeck.probe.source!.drawing());
    await page.getByRole('button', { name: 'Site', exact: true }).click();
    await untilIdle(page);
    expect(await labels(page, 'post')).toEqual([]);
    expect((await page.evaluate(() => window.__loamdeck.probe.source!.drawing())).calls).toBeLessThan(calls);
    await page.getByRole('button', { name: 'Site', exact: true }).click();
  });

  it('shows areas for appliances in the finished garden, and no posts', async () => {
    const { page } = opened;
    await show(page, null, null);
    expect(await labels(page, 'post')).toEqual([]);
    expect(await labels(page, 'class')).toEqual(['U1 set-up area']);
  });

  it('is told in the stage sheet', async () => {
    const { page } = opened;
    await show(page, 'S8', null);
    await page.getByRole('button', { name: 'Stage sheet' }).click();
    const sheet = plain((await page.locator('.stage-sheet').textContent()) ?? '');
    expect(sheet).toContain('G3: crane, reaches 48.0 m');
    expect(sheet).toContain('Within 2 m of an open edge');
    await page.getByRole('button', { name: 'Stage sheet' }).click();
  });
});

describe('the sheets', () => {
  it('Site: a row of reach shows its stage and map', async () => {
    const { page } = opened;
    await page.getByRole('tab', { name: 'Site' }).click();
    await page.getByRole('button', { name: /map of reach in stage 7/ }).click();
    await untilMapped(page);
    expect(await page.evaluate(() => [window.__loamdeck.view().stage, window.__loamdeck.view().map])).toEqual([6, 'reach']);
    await show(page, null, null);
  });

  it('Site: a lane with what is drawn and asked for', async () => {
    const { page } = opened;
    const [lane] = await page.evaluate(() => window.__loamdeck.scene().snapshot!.report.routes!);
    const text = plain((await page.locator('.tab-panel').textContent()) ?? '');
    expect(text).toContain(`Width drawn${lane.widthM!.toFixed(2)} m`);
    expect(text).toContain(`Width asked for${lane.requiredM.toFixed(2)} m`);
    expect(text).toContain('The fire authority decides');
  });

  it('Edges: a retaining edge with both cases, and the way there', async () => {
    const { page } = opened;
    await page.getByRole('tab', { name: 'Edges' }).click();
    const [wall] = await page.evaluate(() => window.__loamdeck.scene().snapshot!.report.walls!);
    const row = page.locator('.wall tbody tr', { hasText: 'Weight' }).first();
    const cells = await row.locator('td').allTextContents();
    expect(cells).toEqual([wall.bare.verticalKNm.toFixed(2), wall.loaded.verticalKNm.toFixed(2)]);
    const before = await page.evaluate(() => window.__loamdeck.probe.source!.cameraPosition());
    await page.getByRole('button', { name: `Go to retaining edge ${wall.id}` }).click();
    await untilIdle(page);
    const after = await page.evaluate(() => window.__loamdeck.probe.source!.cameraPosition());
    expect(Math.hypot(...after.map((value, i) => value - before[i]))).toBeGreaterThan(5);
  });
});

describe('room for all tabs', () => {
  it.each([
    ['a low window', 1280, 720, false],
    ['a tablet', 1024, 768, true],
  ] as const)('%s shows every tab', async (_, width, height, touch) => {
    const other = await openPage(opened.browser, `${inject('base')}?scene=courtyard`, { width, height, touch, reducedMotion: true });
    await untilReady(other.page);
    const register = (await other.page.locator('.register').boundingBox())!;
    const boxes = await other.page.getByRole('tab').evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON()));
    expect(boxes.length).toBeGreaterThan(9);
    for (const box of boxes) expect(box.bottom).toBeLessThanOrEqual(register.y + register.height + 1);
    expect(other.problems).toEqual([]);
    await other.close();
  });

  it('a phone draws them sideways, and brings the chosen one into sight', async () => {
    const other = await openPage(opened.browser, `${inject('base')}?scene=courtyard`, {
      width: 390,
      height: 844,
      touch: true,
      reducedMotion: true,
    });
    const { page } = other;
    await untilReady(page);
    await page.getByRole('tab').first().focus();
    await page.keyboard.press('End');
    const chosen = (await page.locator('[role=tab][aria-selected=true]').boundingBox())!;
    expect(chosen.x).toBeGreaterThanOrEqual(0);
    expect(chosen.x + chosen.width).toBeLessThanOrEqual(391);
    const register = (await page.locator('.register').boundingBox())!;
    expect(register.height).toBeLessThan(110);
    await other.screenshot('site-phone');
    expect(other.problems).toEqual([]);
    await other.close();
  });

  it('nothing went wrong in all this', () => {
    expect(opened.problems).toEqual([]);
  });
});
