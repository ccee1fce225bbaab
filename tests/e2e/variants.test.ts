/** Variants in the real browser: kept, changed, held against what stands as table and as map, taken over, and saved in the file. */

import { describe, expect, it } from 'vitest';
import { untilMapped } from './app-state.ts';
import { sharedPage } from './shared-page.ts';

const opened = sharedPage('?scene=terrace&show=edit-variants');

const scene = () => opened.page.evaluate(() => window.__loamdeck.scene().snapshot!.scene);
const saturatedKN = () => opened.page.evaluate(() => window.__loamdeck.scene().snapshot!.report.deck.saturatedKN);
const row = (name: string) => opened.page.getByRole('row', { name });
const numberIn = (text: string) => Number(text.replace(/[^\d.−+]/g, '').replace('−', '-'));

describe('a variant', () => {
  it('is kept under the name typed', async () => {
    const { page } = opened;
    await page.getByLabel('Name of the variant').first().fill('As tendered');
    await page.keyboard.press('Enter');
    await page.getByText('stands now').waitFor();
    expect((await scene()).variants?.map(({ id, name }) => [id, name])).toEqual([['A', 'As tendered']]);
  });

  it('compared tells the load that a changed thickness brings, as table and map', async () => {
    const { page } = opened;
    const before = await saturatedKN();
    // Substrate of the bed, 350 to 450 mm on 18 m²: what it weighs stands in the snapshot's own list of layers.
    const density = await page.evaluate(
      () => window.__loamdeck.scene().snapshot!.buildUps.find(({ id }) => id === 'bed')!.layers[5]!.density!.saturated,
    );
    await page.evaluate(() => window.__loamdeck.scene().setThickness('bed', 5, 450));
    await page.waitForFunction((kN) => window.__loamdeck.scene().snapshot!.report.deck.saturatedKN > kN, before);
    const bedM2 = 18;
    expect((await saturatedKN()) - before).toBeCloseTo((density * 9.81 * 0.1 * bedM2) / 1000, 6);
    await page.getByRole('button', { name: 'Compare As tendered with what stands' }).click();
    await row('Load, saturated').waitFor();
    const [now, then, difference] = await row('Load, saturated').getByRole('cell').allTextContents();
    expect([now, then].map((text) => numberIn(text ?? ''))).toEqual([Math.round(await saturatedKN()), Math.round(before)]);
    expect(numberIn(difference ?? '')).toBe(-Math.round((density * 9.81 * 0.1 * bedM2) / 1000));
    await page.getByRole('button', { name: 'Show the difference on the model' }).click();
    await untilMapped(page);
    const lighterM2 = await page.evaluate(() => {
      const { names, classM2 } = window.__loamdeck.scene().cellMap!;
      return classM2![names!.indexOf('lighter 0.5')]!;
    });
    // 100 mm of wet substrate are between 0.5 and 2 kN/m².
    expect(lighterM2).toBeCloseTo(bedM2, 6);
    await opened.screenshot('variants-difference');
  });

  it('taken over is what stands, and what stood before is kept', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: 'Take over As tendered' }).click();
    await page.waitForFunction(() => window.__loamdeck.scene().snapshot!.scene.variants?.length === 2);
    expect((await scene()).buildups[1]?.layers[5]?.thicknessMm).toBe(350);
    expect((await scene()).variants?.map(({ name }) => name)).toEqual(['As tendered', 'Before As tendered']);
    await page.getByText('Nothing differs.').waitFor();
    await page.getByRole('button', { name: /^Undo: variant As tendered/ }).click();
    await page.waitForFunction(() => window.__loamdeck.scene().snapshot!.scene.variants?.length === 1);
    expect((await scene()).buildups[1]?.layers[5]?.thicknessMm).toBe(450);
    expect(opened.problems).toEqual([]);
  });
});

describe('lightening', () => {
  it('is asked for from a finding, and its answer mends it', async () => {
    const { page } = opened;
    await page.evaluate(() => window.__loamdeck.scene().setThickness('bed', 5, 650));
    const stops = () =>
      page.evaluate(() => window.__loamdeck.scene().snapshot!.report.findings.filter(({ severity }) => severity === 'stop').length);
    await page.waitForFunction(() => window.__loamdeck.scene().snapshot!.report.findings.some(({ rule }) => rule === 'load.permanent'));
    expect(await stops()).toBeGreaterThan(0);
    await page.getByRole('tab', { name: /^Findings/ }).click();
    await page.getByRole('button', { name: 'Look for lighter build-ups…' }).first().click();
    // Stopped as soon as it can be: no answer comes, and the next search is a new one.
    await page.evaluate(() => {
      const stopAtOnce = new MutationObserver(() => {
        const stop = [...document.querySelectorAll('button')].find(({ textContent }) => textContent === 'Stop looking');
        if (!stop) return;
        stopAtOnce.disconnect();
        stop.click();
      });
      stopAtOnce.observe(document.body, { childList: true, subtree: true });
    });
    await page.getByRole('button', { name: 'Look for it' }).click();
    await page.getByRole('button', { name: 'Stop looking' }).waitFor({ state: 'detached' });
    await page.waitForFunction(() => window.__loamdeck.scene().lightening === null);
    expect(await page.getByRole('region', { name: 'Least exchanged' }).count()).toBe(0);
    await page.getByRole('button', { name: 'Look for it' }).click();
    const answer = page.getByRole('region', { name: 'Least exchanged' });
    await answer.waitFor();
    expect(await answer.textContent()).toContain('What is new is laid in stage 5');
    await answer.getByRole('button', { name: 'Take over' }).click();
    await page.waitForFunction(() => window.__loamdeck.scene().history.undo?.kind === 'parts');
    expect(await stops()).toBe(0);
    await page.getByText('The scene was changed since. Look again.').waitFor();
    expect(opened.problems).toEqual([]);
  });
});
