/** Water in the real browser: maps by keyboard, a blocked outlet, its rising surface, numbers of the sheet against the report. */

import { beforeAll, describe, expect, inject, it } from 'vitest';
import { framesAtRest, untilIdle, untilMapped, untilReady } from './app-state.ts';
import { openPage } from './open-page.ts';
import { sharedPage } from './shared-page.ts';

const opened = sharedPage('?scene=courtyard');
beforeAll(async () => {
  await opened.page.getByRole('tab', { name: 'Water' }).click();
});

/** What the page shows uses narrow no-break spaces before units. */
const plain = (text: string | null) => (text ?? '').replaceAll('\u202F', ' ');
const report = () => opened.page.evaluate(() => window.__loamdeck.scene().snapshot!.report);
const labels = () =>
  opened.page.locator('.field-label-post').evaluateAll((all) => {
    return all.filter((one) => getComputedStyle(one).visibility === 'visible').map((one) => one.textContent ?? '');
  });

describe('maps of water', () => {
  it('are chosen by keys; every outlet is named with its exact area', async () => {
    const { page } = opened;
    await page.getByRole('radio', { name: 'None' }).focus();
    for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowRight');
    await untilMapped(page);
    await page.getByRole('radio', { name: 'Held' }).focus();
    await page.keyboard.press('ArrowRight');
    await untilMapped(page);
    expect(await page.evaluate(() => window.__loamdeck.view().map)).toBe('catchment');
    const legend = plain(await page.locator('.map-legend').textContent());
    const { outlets, deck } = await report();
    for (const { id, kind, catchmentM2 } of outlets!) {
      if (kind === 'outlet') expect(legend).toContain(`To outlet ${id}: ${catchmentM2.toFixed(1)} m²`);
    }
    const classM2 = await page.evaluate(() => [...window.__loamdeck.scene().cellMap!.classM2!]);
    expect(classM2.reduce((sum, areaM2) => sum + areaM2, 0)).toBeCloseTo(deck.areaM2, 6);
    expect(legend).toContain('Arrows: the way the water runs');
    await untilIdle(page);
    expect((await labels()).some((text) => /^V1 runs from/.test(text))).toBe(true);
    await opened.screenshot('water-catchments');
  });

  it('stand in the table in words', async () => {
    const { page } = opened;
    await page.getByRole('tab', { name: 'Cells' }).click();
    expect(await page.locator('table.cells tbody tr').first().locator('strong').textContent()).toMatch(/^to O\d$/);
    await page.getByRole('tab', { name: 'Water' }).click();
  });
});

describe('a blocked outlet', () => {
  it('tells the report’s numbers, worst bay and who decides', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: 'Block outlet O3' }).click();
    const blocked = (await report()).water!.blocked.find(({ outlet }) => outlet === 'O3')!;
    const text = plain(await page.getByRole('region', { name: 'Outlet O3 blocked' }).textContent());
    expect(text).toContain(`Deepest${Math.ceil(blocked.depthMm!)} mm`);
    expect(text).toContain(`Stands on${blocked.areaM2!.toFixed(1)} m²`);
    expect(text).toContain(`${blocked.litres!.toFixed(0)} l`);
    expect(text).toContain(`Leaves at${blocked.into}`);
    for (const { bay, waterKNm2, utilisation } of blocked.bays) {
      const row = plain(
        await page
          .locator('.water-bays tr')
          .filter({ has: page.getByRole('button', { name: `Go to bay ${bay}` }) })
          .textContent(),
      );
      expect(row).toContain(waterKNm2.toFixed(2));
      if (utilisation !== null) expect(row).toContain(`${(100 * utilisation).toFixed(1)} %`);
    }
    expect(text).toContain('The structural engineer decides');
  });

  it('stands at once with reduced motion, and nothing more is drawn', async () => {
    const { page } = opened;
    await expect.poll(() => page.evaluate(() => window.__loamdeck.scene().rise !== null)).toBe(true);
    await untilIdle(page);
    expect((await labels()).sort()).toEqual(['O3 blocked', 'leaves here to O5']);
    expect(await framesAtRest(opened.page)).toBe(0);
    const { triangles } = await page.evaluate(() => window.__loamdeck.probe.source!.drawing());
    // Held at nothing, there is less to draw.
    await page.getByRole('slider', { name: 'Depth shown' }).focus();
    await page.keyboard.press('Home');
    await untilIdle(page);
    expect((await page.evaluate(() => window.__loamdeck.probe.source!.drawing())).triangles).toBeLessThan(triangles);
    expect(plain(await page.locator('.water-held').textContent())).toContain('Shown: 0 mm');
    await page.keyboard.press('End');
    await untilIdle(page);
    expect((await page.evaluate(() => window.__loamdeck.probe.source!.drawing())).triangles).toBe(triangles);
    expect(await framesAtRest(opened.page)).toBe(0);
  });

  it('lies open on the slab alone', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: 'Slab alone' }).click();
    await untilIdle(page);
    await opened.screenshot('water-blocked');
    await page.getByRole('button', { name: 'Layers too' }).click();
  });

  it('has its map, which follows another outlet', async () => {
    const { page } = opened;
    await page.getByRole('radio', { name: 'Blocked outlet' }).check();
    await untilMapped(page);
    const most = async (id: string) => {
      const depthMm = (await report()).water!.blocked.find(({ outlet }) => outlet === id)!.depthMm!;
      await expect.poll(() => page.evaluate(() => window.__loamdeck.scene().cellMap!.max)).toBeCloseTo(depthMm, 3);
    };
    await most('O3');
    await page.getByRole('button', { name: 'Block outlet O1' }).click();
    await most('O1');
    expect(plain(await page.locator('.map-legend').textContent())).toContain('Outlet O1 blocked');
    await page.getByRole('button', { name: 'Open O1 again' }).first().click();
    expect(await page.evaluate(() => [window.__loamdeck.view().blocked, window.__loamdeck.view().map])).toEqual([null, 'ponding']);
  });
});

describe('with motion', () => {
  it('the water rises, then the view is still', async () => {
    const moving = await openPage(opened.browser, `${inject('base')}?scene=terrace`);
    const { page } = moving;
    await untilReady(page);
    const { drawn, highestM, mostM } = await page.evaluate(async () => {
      const { view, scene, probe } = window.__loamdeck;
      view().blockOutlet('O1');
      const drawn: number[] = [];
      const deadline = performance.now() + 40_000;
      let highestM = Infinity;
      while ((drawn.at(-1) ?? 0) < highestM - 1e-9 && performance.now() < deadline) {
        await new Promise(requestAnimationFrame);
        const { rise, snapshot } = scene();
        if (rise?.levelM != null) highestM = rise.levelM - snapshot!.datumM;
        const nowM = probe.source!.waterM();
        if (nowM !== null && nowM !== drawn.at(-1)) drawn.push(nowM);
      }
      return { drawn, highestM, mostM: scene().rise!.water!.mostM };
    });
    // Up to the level that was calculated, never down, and through heights between none and all of it.
    expect(drawn.at(-1)).toBeCloseTo(highestM, 9);
    expect(drawn).toEqual([...drawn].sort((a, b) => a - b));
    const between = drawn.filter((heightM) => heightM > highestM - 0.95 * mostM && heightM < highestM - 0.05 * mostM);
    expect(between.length).toBeGreaterThan(2);
    expect(await framesAtRest(page)).toBe(0);
    expect(moving.problems).toEqual([]);
    await moving.close();
  });
});

it('leaves no error behind', () => {
  expect(opened.problems).toEqual([]);
});
