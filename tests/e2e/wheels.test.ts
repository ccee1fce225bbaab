/** Vehicles in a real browser: chosen in the sheet, driven by keys, drawn with their patches; machines stand in their stage. */

import { describe, expect, inject, it } from 'vitest';
import { framesAtRest, untilIdle, untilMapped, untilReady } from './app-state.ts';
import { openPage } from './open-page.ts';
import { sharedPage } from './shared-page.ts';

const opened = sharedPage('?scene=courtyard');

const vehicles = () =>
  opened.page.evaluate(() => window.__loamdeck.probe.source!.vehicles().map(({ run, atM }) => ({ run, atM: [...atM] })));
const patches = () => opened.page.evaluate(() => window.__loamdeck.probe.source!.patches().map((ring) => ring.map((at) => [...at])));
const front = () => opened.page.evaluate(() => window.__loamdeck.view().run?.frontM);

describe('the sheet of vehicles', () => {
  it('lists all of them and shows the one that is chosen, at its worst place', async () => {
    const { page } = opened;
    expect(await vehicles()).toEqual([]);
    await page.getByRole('tab', { name: 'Wheels' }).click();
    const rows = page.getByRole('tabpanel').getByRole('button', { name: /^Show / });
    expect(await rows.count()).toBe(await page.evaluate(() => window.__loamdeck.scene().snapshot!.runs.length));
    await rows.first().focus();
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => window.__loamdeck.scene().poses.length === 1);
    await untilIdle(page);
    await opened.screenshot('wheels-appliance');
    const state = await page.evaluate(() => {
      const { run, stage } = window.__loamdeck.view();
      return { run, stage, worst: window.__loamdeck.scene().snapshot!.runs[0]!.worst };
    });
    expect(state.run).toEqual({ id: 'F1', ...state.worst });
    expect(state.stage).toBeNull();
    expect((await vehicles()).map(({ run }) => run)).toEqual(['F1']);
  });

  it('tells the report’s worst in its table, as it stands there', async () => {
    const { page } = opened;
    const most = await page.evaluate(() => {
      const [lane] = window.__loamdeck.scene().snapshot!.report.traffic!;
      return Math.max(...lane!.layers.map(({ utilisation }) => utilisation ?? 0));
    });
    const used = `${(100 * most).toFixed(1)} %`.replace(' ', '\u202F');
    const cells = page.locator('.run-layers td');
    const texts = (await cells.allTextContents()).filter((text) => text.includes(used));
    // Here and on the whole line
    expect(texts.length).toBeGreaterThanOrEqual(2);
    expect(await page.getByRole('tabpanel').textContent()).toMatch(/no load map.*structural engineer decides/);
  });
});

describe('driving by keys', () => {
  it('moves the vehicle by one cell a press, without new geometry, and then nothing more is drawn', async () => {
    const { page } = opened;
    await page.evaluate(() => window.__loamdeck.view().moveRun(20));
    await untilIdle(page);
    const before = { at: await vehicles(), memory: await page.evaluate(() => window.__loamdeck.probe.source!.memory()) };
    await page.getByRole('slider', { name: /Front axle/ }).focus();
    for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowRight');
    await expect.poll(front).toBeCloseTo(21, 6);
    await untilIdle(page);
    const [moved] = await vehicles();
    // The lane runs along x
    expect((moved?.atM[0] ?? 0) - (before.at[0]?.atM[0] ?? 0)).toBeCloseTo(1, 6);
    expect(await page.evaluate(() => window.__loamdeck.probe.source!.memory())).toEqual(before.memory);
    expect(await framesAtRest(page)).toBe(0);
  });

  it('takes a typed place, refuses one beyond the line, and finds back to the worst', async () => {
    const { page } = opened;
    const field = page.getByRole('textbox', { name: /Front axle/ });
    await field.fill('12,5');
    await field.press('Enter');
    await expect.poll(front).toBe(12.5);
    await field.fill('99');
    await field.press('Enter');
    await page.getByRole('alert').filter({ hasText: /47/ }).waitFor();
    expect(await front()).toBe(12.5);
    await field.press('Escape');
    await page.getByRole('button', { name: 'Worst place' }).press('Enter');
    await expect.poll(front).toBe(await page.evaluate(() => window.__loamdeck.scene().snapshot!.runs[0]!.worst!.frontM));
  });

  it('nothing drives by itself where less motion is wished for', async () => {
    expect(await opened.page.getByRole('button', { name: 'Drive' }).count()).toBe(0);
  });
});

describe('patches', () => {
  /** Share of points along the outlines that have the colour of ink on paper of the outline. */
  async function outlined(): Promise<number> {
    const rings = await patches();
    const points = rings.flatMap((ring) =>
      ring.map((at, i) => at.map((value, axis) => (value + ring[(i + 1) % 4]![axis]!) / 2) as [number, number]),
    );
    const colours = await opened.page.evaluate((list) => window.__loamdeck.probe.source!.readPixels(list).map((rgb) => [...rgb]), points);
    // #1F5C6B, or half of it with what lies beneath
    const near = colours.filter(
      ([red, green, blue]) => (red ?? 255) < 130 && (blue ?? 0) > (red ?? 0) + 15 && (green ?? 0) > (red ?? 0) + 10,
    );
    return near.length / Math.max(1, colours.length);
  }

  it('are outlined on the membrane and grow with depth', async () => {
    const { page } = opened;
    await page.evaluate(() => {
      window.__loamdeck.view().moveRun(20);
      window.__loamdeck.view().moveCamera('plan');
    });
    await untilIdle(page);
    await page.evaluate(() => window.__loamdeck.view().moveCamera({ at: [18, 2.75], sizeM: 8 }));
    await untilIdle(page);
    const deep = await patches();
    expect(deep.length).toBe(4);
    expect(await outlined()).toBeGreaterThan(0.8);
    await page.locator('.run-layers .row-button').first().click();
    await untilIdle(page);
    const shallow = await patches();
    const width = (ring: number[][] | undefined) => Math.hypot(ring![1]![0]! - ring![0]![0]!, ring![1]![1]! - ring![0]![1]!);
    expect(width(deep[0])).toBeGreaterThan(2 * width(shallow[0]));
    expect(await outlined()).toBeGreaterThan(0.8);
  });

  it('go with their layer when the model is exploded', async () => {
    const { page } = opened;
    await page.evaluate(() => {
      window.__loamdeck.view().chooseFoot({ materialId: '', nth: 0 });
      window.__loamdeck.view().setExplode(0.5);
    });
    await untilIdle(page);
    await opened.screenshot('wheels-exploded');
    const [vehicle] = await vehicles();
    const state = await page.evaluate(() => {
      const { snapshot, poses } = window.__loamdeck.scene();
      return { datumM: snapshot!.datumM, surfaceM: poses[0]!.wheels[0]!.surfaceM };
    });
    // The vehicle has gone up with the layer it stands on; the membrane lies on the slab, which stays
    expect(vehicle!.atM[2]).toBeGreaterThan((state.surfaceM ?? 0) - state.datumM + 0.5);
    expect(await outlined()).toBeGreaterThan(0.8);
    await page.evaluate(() => window.__loamdeck.view().setExplode(0));
  });
});

describe('in the stages', () => {
  it('a machine stands on its way by itself, and is chosen in its stage', async () => {
    const { page } = opened;
    await page.evaluate(() => {
      window.__loamdeck.view().chooseRun(null);
      window.__loamdeck.view().showStage(7);
      window.__loamdeck.view().moveCamera('home');
    });
    await expect.poll(async () => (await vehicles()).map(({ run }) => run)).toEqual(['S8 wheel-loader-2t']);
    await untilIdle(page);
    await opened.screenshot('wheels-stage');
    // Not chosen: it has no patches
    expect(await patches()).toEqual([]);
    await page.evaluate(() => window.__loamdeck.view().showStage(0));
    await expect.poll(vehicles).toEqual([]);
    await page.getByRole('button', { name: /^Show Wheel loader.*S8/ }).click();
    await expect.poll(() => page.evaluate(() => window.__loamdeck.view().stage)).toBe(7);
    await expect.poll(async () => (await patches()).length).toBeGreaterThan(0);
    await page.evaluate(() => window.__loamdeck.view().showStage(null));
    await page.getByRole('button', { name: 'Show its stage' }).click();
    expect(await page.evaluate(() => window.__loamdeck.view().stage)).toBe(7);
  });
});

describe('maps of wheels', () => {
  it('are found in the bar by group, by keyboard, and come back with their group', async () => {
    const { page } = opened;
    const kind = () => page.evaluate(() => window.__loamdeck.view().map);
    await page.evaluate(() => window.__loamdeck.view().showStage(null));
    await page.getByRole('radio', { name: 'None' }).focus();
    for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
    expect(await page.getByRole('radio', { name: 'Wheels and stages' }).isChecked()).toBe(true);
    await page.getByRole('radio', { name: 'On membrane' }).check({ force: true });
    expect(await kind()).toBe('wheel-membrane');
    await untilMapped(page);
    const map = await page.evaluate(() => {
      const { cellMap, snapshot } = window.__loamdeck.scene();
      return { max: cellMap!.max, cells: cellMap!.dataCells, exact: snapshot!.report.traffic![0]!.maxMembraneKPa! };
    });
    expect(map.cells).toBeGreaterThan(500);
    expect(map.max).toBeLessThanOrEqual(map.exact * 1.000001);
    expect(map.max).toBeGreaterThan(0.5 * map.exact);
    await page.getByRole('radio', { name: 'Loads' }).check({ force: true });
    expect(await kind()).toBe('load');
    await page.getByRole('radio', { name: 'Wheels and stages' }).check({ force: true });
    expect(await kind()).toBe('wheel-membrane');
    expect(opened.problems).toEqual([]);
  });
});

it('on a phone: one grouped list of maps, targets for fingers', async () => {
  const phone = await openPage(opened.browser, `${inject('base')}?scene=courtyard`, {
    width: 390,
    height: 844,
    // Nothing here is about fine pixels, and four times as many take four times as long.
    touch: true,
    reducedMotion: true,
  });
  const { page } = phone;
  await untilReady(page);
  expect(await page.locator('.map-select optgroup').count()).toBeGreaterThanOrEqual(3);
  await page.getByRole('tab', { name: 'Wheels' }).tap();
  await page.getByRole('button', { name: /^Show Fire appliance/ }).tap();
  await page.getByRole('slider', { name: /Front axle/ }).waitFor();
  const small = await page
    .locator('.tab-panel .slider-row button, .tab-panel .sheet-buttons button, .tab-panel select, .tab-panel .row-button')
    .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height).filter((height) => height < 43.5));
  expect(small).toEqual([]);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(wide).toBeLessThanOrEqual(0);
  await phone.screenshot('wheels-phone');
  expect(phone.problems).toEqual([]);
  await phone.close();
});

it('drives along and stops at the end', async () => {
  const moving = await openPage(opened.browser, `${inject('base')}?scene=courtyard`);
  const { page } = moving;
  await untilReady(page);
  await page.getByRole('tab', { name: 'Wheels' }).click();
  await page.getByRole('button', { name: /^Show Fire appliance/ }).click();
  const end = await page.evaluate(() => {
    const { travelM } = window.__loamdeck.scene().snapshot!.runs[0]!;
    window.__loamdeck.view().moveRun(travelM - 1);
    return travelM;
  });
  await page.getByRole('button', { name: 'Drive' }).click();
  await page.waitForFunction((at) => window.__loamdeck.view().run!.frontM === at, end);
  expect(await page.evaluate(() => window.__loamdeck.view().driving)).toBe(false);
  expect(moving.problems).toEqual([]);
  await moving.close();
});
