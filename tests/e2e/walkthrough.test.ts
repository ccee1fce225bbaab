/** The walkthrough in a real browser: nothing to edit, keys and clicker, still pictures, no idle frames, facts of the report. */

import { beforeAll, describe, expect, it } from 'vitest';
import { framesAtRest, untilIdle } from './app-state.ts';
import { sharedPage } from './shared-page.ts';

const opened = sharedPage('?scene=courtyard&show=walk');
beforeAll(async () => {
  await opened.page.waitForFunction(() => window.__loamdeck.view().walk !== null);
  await untilIdle(opened.page);
});

const walk = () => opened.page.evaluate(() => window.__loamdeck.view().walk!);
const frames = () => opened.page.evaluate(() => window.__loamdeck.probe.frames);
const camera = () => opened.page.evaluate(() => [...window.__loamdeck.probe.source!.cameraPosition()]);

/** Eye of a saved view of the scene, local [m]. */
const eyeOf = (index: number) =>
  opened.page.evaluate((at) => {
    const { scene, originM, datumM } = window.__loamdeck.scene().snapshot!;
    const [x, y, z] = scene.views![at]!.eye;
    return [x - originM[0], y - originM[1], z - datumM];
  }, index);

async function expectEye(index: number): Promise<void> {
  const [at, wanted] = [await camera(), await eyeOf(index)];
  // The arrays on the screen hold 32-bit floats
  for (const axis of [0, 1, 2]) expect(at[axis]).toBeCloseTo(wanted[axis]!, 3);
}

describe('the walkthrough', () => {
  it('has nothing to edit, and says what it is', async () => {
    const { page } = opened;
    expect(await page.locator('select, textarea, [contenteditable], input:not([type=range])').count()).toBe(0);
    // The one slider is the time of day.
    expect(await page.locator('input').count()).toBe(1);
    expect(await page.getByRole('tab').count()).toBe(0);
    expect(await page.getByText('Compares entered loads with entered limits. Not a structural check.').isVisible()).toBe(true);
  });

  it('names the bays that the engineer’s list names', async () => {
    const said = await opened.page.getByTestId('walk-safety').textContent();
    // The scene is made so: heap over D3 and mound on E3 too heavy, B4 without a date.
    expect(said).toContain('More than permitted: bay D3 and bay E3.');
    expect(said).toContain('Permitted load not confirmed: bay B4.');
    expect(said).toContain('17 bays of 20');
    await opened.screenshot('walk-street');
  });

  it('steps with a clicker and jumps with digits, each at once where motion is unwanted', async () => {
    const { page } = opened;
    await expectEye(0);
    for (const [key, at] of [
      ['PageDown', 1],
      ['ArrowRight', 2],
      ['PageUp', 1],
      ['ArrowLeft', 0],
      ['4', 3],
    ] as const) {
      const before = await frames();
      await page.keyboard.press(key);
      await page.waitForFunction((wanted) => window.__loamdeck.view().walk!.at === wanted, at);
      await page.waitForFunction((count) => window.__loamdeck.probe.frames > count, before);
      await expectEye(at);
    }
  });

  it('draws nothing while it stands still', async () => {
    expect(await framesAtRest(opened.page)).toBe(0);
  });

  it('lifts the layers at a tap and tells the very figures of the core log', async () => {
    const { page } = opened;
    await page.keyboard.press('1');
    await untilIdle(page);
    await page.mouse.click(560, 320);
    await page.waitForFunction(() => window.__loamdeck.scene().coreLog !== null && window.__loamdeck.view().walk!.lifted);
    await untilIdle(page);
    await opened.screenshot('walk-under');
    const log = await page.evaluate(() => {
      const { patchKNm2, permittedKNm2, utilisation, layers } = window.__loamdeck.scene().coreLog!;
      return {
        patchKNm2,
        permittedKNm2,
        utilisation,
        shown: layers.filter((one) => one.zone === layers[0]!.zone && one.thicknessMm > 0).length,
      };
    });
    const says = (await page.getByTestId('under').textContent())!;
    expect(says).toContain(`${log.patchKNm2!.toFixed(2)}\u202FkN/m²`);
    expect(says).toContain(`${log.permittedKNm2!.toFixed(2)}\u202FkN/m²`);
    expect(says).toContain(`${(100 * log.utilisation!).toFixed(1)}\u202F%`);
    expect(await page.locator('.lift-label').count()).toBe(log.shown);
    await page.keyboard.press('Escape');
    expect((await walk()).lifted).toBe(false);
  });

  it('walks with keys at eye height and stops at the edge of the deck', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: 'Walk here' }).click();
    await untilIdle(page);
    const before = await camera();
    for (let press = 0; press < 3; press++) await page.keyboard.press('w');
    await untilIdle(page);
    const after = await camera();
    expect(Math.hypot(after[0]! - before[0]!, after[1]! - before[1]!)).toBeGreaterThan(0.5);
    await opened.screenshot('walk-foot');
    // 80 steps of 0.75 m are 60 m: more than the deck is wide anywhere (45 m × 38 m), so some edge or wall must stop one.
    for (let press = 0; press < 80; press++) await page.keyboard.press('ArrowUp');
    await untilIdle(page);
    const [x, y] = await camera();
    expect(x! > 0 && x! < 45 && y! > 0 && y! < 38).toBe(true);
    expect(await framesAtRest(page)).toBe(0);
    await page.keyboard.press('Escape');
    expect((await walk()).onFoot).toBe(false);
  });

  it('shows the bare deck and the finished garden in turn', async () => {
    const { page } = opened;
    const shownLayers = () =>
      page.evaluate(() => window.__loamdeck.probe.source!.parts().filter((part) => part.shown && part.layer >= 0).length);
    await untilIdle(page);
    expect(await shownLayers()).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Show the bare deck' }).click();
    await untilIdle(page);
    expect(await shownLayers()).toBe(0);
    await page.getByRole('button', { name: 'Show the finished garden' }).click();
    await untilIdle(page);
    expect(await shownLayers()).toBeGreaterThan(0);
  });

  it('leaves shadows out by itself where frames are slow, and says so', async () => {
    const { page } = opened;
    const caption = page.getByTestId('walk-caption');
    // This machine may be quick or slow: the test makes each clearing of the picture take a third of a second, more than the limit of 220 ms.
    await page.evaluate(() => {
      const drawing = WebGL2RenderingContext.prototype;
      const { clear } = drawing;
      drawing.clear = function (this: WebGL2RenderingContext, mask) {
        for (const end = performance.now() + 330; performance.now() < end; );
        clear.call(this, mask);
      };
      (window as { quick?: () => void }).quick = () => {
        drawing.clear = clear;
      };
    });
    await page.evaluate(() => window.__loamdeck.view().setWalk({ shadow: 'on' }));
    await page.mouse.move(600, 300);
    await page.mouse.down();
    for (let step = 1; step <= 8 && (await walk()).shadow === 'on'; step++) await page.mouse.move(600 + 10 * step, 300);
    await page.mouse.up();
    expect((await walk()).shadow).toBe('slow');
    expect(await caption.textContent()).toContain('Shadows are left out: this device draws them too slowly.');
    await page.evaluate(() => (window as { quick?: () => void }).quick?.());
    await untilIdle(page);
    // Still pictures are no reason to leave them out.
    await page.evaluate(() => window.__loamdeck.view().setWalk({ shadow: 'on' }));
    await untilIdle(page);
    expect((await walk()).shadow).toBe('on');
    expect(await caption.textContent()).not.toContain('Shadows are left out');
  });

  it('leaves with Escape, back to the work with its tables', async () => {
    const { page } = opened;
    await page.keyboard.press('Escape');
    await page.getByRole('tab', { name: 'Bays' }).waitFor();
    expect(await page.evaluate(() => window.__loamdeck.view().walk)).toBeNull();
    expect(opened.problems).toEqual([]);
  });
});
