/** The sheets beside the model in the real browser: heap board, take-off with its files, register, sources; at three sizes of window. */

import { readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { untilReady } from './app-state.ts';
import { openPage } from './open-page.ts';
import { sharedPage } from './shared-page.ts';

const opened = sharedPage('?scene=courtyard');

const openSheet = (page: Page, name: string | RegExp) => page.getByRole('tab', { name }).click();

/** What the page shows uses narrow no-break spaces before units. */
const plain = (text: string) => text.replaceAll('\u202F', ' ');

describe('the heap board', () => {
  /** Rows of the table as bay and height, and the words of the plan. */
  async function shown(page: Page): Promise<{ rows: [string, string][]; plan: string }> {
    const rows = await page.locator('table.heaps tbody tr').evaluateAll((all) => {
      return all.map((row): [string, string] => [
        row.querySelector('button')?.textContent ?? '',
        row.querySelector('strong')?.textContent ?? '',
      ]);
    });
    const plan = await page.locator('.heap-plan').first().textContent();
    return { rows: rows.map(([bay, height]) => [bay, plain(height)]), plan: plain(plan ?? '') };
  }

  /** What the report says of a stage and material, worded by hand here. */
  async function wanted(page: Page, stage: number, material: string): Promise<Map<string, string>> {
    const entries = await page.evaluate(
      ([s, id]) => {
        const { report, stages } = window.__loamdeck.scene().snapshot!;
        return report.bays.map((bay) => {
          const found = bay.heapM?.find((one) => one.stage === stages[s as number]?.id && one.material === id);
          return { bay: bay.id, confirmed: bay.confirmed, heightM: found?.heightM ?? 0, overKNm2: found?.overKNm2 ?? 0 };
        });
      },
      [stage, material] as const,
    );
    return new Map(
      entries.map(({ bay, confirmed, heightM, overKNm2 }) => {
        const words = overKNm2 > 0 ? `over by ${overKNm2.toFixed(2)} kN/m²` : `${heightM.toFixed(2)} m`;
        return [bay, confirmed ? words : `(${words})`];
      }),
    );
  }

  it('shows the report’s height of every bay, in table and plan, and follows rail and material', async () => {
    const { page } = opened;
    await openSheet(page, 'Heaps');
    const materials = await page
      .getByLabel('Material')
      .locator('option')
      .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value));
    expect(materials.length).toBeGreaterThan(2);
    let seen = '';
    for (const [stage, material] of [
      [3, materials[0]],
      [10, materials[0]],
      [10, materials.at(-1)],
    ] as const) {
      await page.evaluate((at) => window.__loamdeck.view().showStage(at), stage);
      await page.getByLabel('Material').selectOption(material as string);
      const expected = await wanted(page, stage, material as string);
      await expect.poll(async () => Object.fromEntries((await shown(page)).rows)).toEqual(Object.fromEntries(expected));
      const { plan } = await shown(page);
      for (const [bay, words] of expected) {
        // On the plan a number over the limit stands in two lines.
        expect(plan).toContain(`${bay}${words.replace('over by ', 'over by')}`);
      }
      expect(plan).not.toBe(seen);
      seen = plan;
    }
    await opened.screenshot('heaps');
    const text = await page.getByRole('tabpanel').textContent();
    expect(text).toContain('rounded down to 5 cm');
    expect(text).toContain('Not for machines');
  });

  it('says over in the stage whose heap is too high, with the basis of each permitted load', async () => {
    const { page } = opened;
    // Stage 11 of this scene heaps soil on a weak bay on purpose.
    await page.evaluate(() => window.__loamdeck.view().showStage(10));
    await expect.poll(async () => (await shown(page)).rows.find(([bay]) => bay === 'D3')?.[1]).toMatch(/^over by \d+\.\d\d kN\/m²$/);
    const bases = await page.locator('table.heaps tbody td:last-child').allTextContents();
    for (const basis of bases) expect(basis).toMatch(/load plan rev C|not confirmed/);
  });

  it('leads to a bay from the plan', async () => {
    const { page } = opened;
    await page.locator('.heap-plan [data-bay="C2"]').first().click();
    expect(await page.evaluate(() => window.__loamdeck.view().bay)).toBe('C2');
  });

  it('opens as large as the window', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: 'Large plan' }).click();
    const box = await page.getByRole('dialog').locator('.heap-plan').boundingBox();
    expect(box?.height).toBeGreaterThan(500);
    await page.keyboard.press('Escape');
  });
});

describe('the take-off', () => {
  it('has a row per material, and sums that add up', async () => {
    const { page } = opened;
    await openSheet(page, 'Take-off');
    const rows = await page.evaluate(() => window.__loamdeck.scene().snapshot!.report.takeoff!);
    expect(await page.getByTestId('take-off').locator('tbody tr').count()).toBe(rows.length);
    const dryT = rows.reduce((sum, row) => sum + row.dryKg, 0) / 1000;
    const foot = await page
      .getByTestId('take-off')
      .locator('tfoot td')
      .evaluate((one) => one.firstChild?.textContent ?? '');
    expect(foot.replaceAll(',', '')).toBe(dryT.toFixed(2));
    await page.getByRole('radio', { name: 'Zone', exact: true }).check();
    const zones = new Set(rows.flatMap((row) => row.zones.map(({ id }) => id)));
    await expect.poll(() => page.locator('.share-groups details').count()).toBe(zones.size);
    await page.getByRole('radio', { name: 'Stage', exact: true }).check();
    const stages = new Set(rows.flatMap((row) => row.stages.map(({ id }) => id)));
    await expect.poll(() => page.locator('.share-groups details').count()).toBe(stages.size);
    await page.getByRole('radio', { name: 'Material', exact: true }).check();
    await opened.screenshot('take-off');
  });

  it.each([
    ['CSV (English)', /\.csv$/, ','],
    ['CSV (German)', /\.csv$/, ';'],
    ['Workbook (English)', /\.xlsx$/, null],
    ['Workbook (German)', /\.xlsx$/, null],
  ] as const)('is saved by the button %s', async (button, ending, separator) => {
    const { page } = opened;
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: button }).click();
    const download = await coming;
    expect(download.suggestedFilename()).toMatch(ending);
    // The browser may run elsewhere, so the file is fetched from it.
    const path = join(tmpdir(), `loamdeck-${process.pid}-${download.suggestedFilename()}`);
    await download.saveAs(path);
    const bytes = readFileSync(path);
    rmSync(path);
    if (separator === null) {
      // A zip archive.
      expect(bytes.subarray(0, 2).toString('latin1')).toBe('PK');
      return;
    }
    // UTF-8 with a byte order mark
    expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    const [head = '', first = ''] = bytes.subarray(3).toString('utf8').split('\r\n');
    expect(head.split(separator).length).toBeGreaterThan(6);
    expect(first.split(separator).length).toBeGreaterThan(6);
  });
});

describe('the register', () => {
  it('is moved through with the arrow keys, and back round', async () => {
    const { page } = opened;
    await openSheet(page, 'Bays');
    await page.getByRole('tab', { name: 'Bays' }).focus();
    const names: string[] = [];
    const count = await page.getByRole('tab').count();
    for (let i = 0; i < count; i++) {
      await page.keyboard.press('ArrowDown');
      names.push((await page.getByRole('tab', { selected: true }).textContent()) ?? '');
    }
    const sheets = ['Findings', 'Zones', 'Cells', 'Heaps', 'Edges', 'Site', 'Wheels', 'Water', 'Take-off', 'Probes', 'Sources', 'Bays'];
    expect(names.map((name) => name.replace(/\d+$/, ''))).toEqual(sheets);
    expect(await page.getByRole('tablist').first().getAttribute('aria-orientation')).toBe('vertical');
  });
});

describe('findings', () => {
  it('say number and name of their stage, and show it', async () => {
    const { page } = opened;
    await openSheet(page, /Findings/);
    await page.evaluate(() => window.__loamdeck.view().showStage(null));
    const of = await page.evaluate(() => {
      const { report, stages } = window.__loamdeck.scene().snapshot!;
      const found = report.findings.find(({ rule, severity }) => rule === 'load.stage' && severity === 'stop')!;
      const index = stages.findIndex(({ id }) => id === found.where.stage);
      return { says: found.says, index, name: stages[index].name };
    });
    const item = page.locator('button.finding', { hasText: of.says });
    expect(await item.textContent()).toContain(`Stage ${of.index + 1}, ${of.name}`);
    await item.click();
    expect(await page.evaluate(() => window.__loamdeck.view().stage)).toBe(of.index);
    expect(await page.evaluate(() => window.__loamdeck.view().bay)).toBe('D3');
  });
});

describe('edges', () => {
  it('lists sills before upstands, and leads to the lowest place', async () => {
    const { page } = opened;
    await openSheet(page, 'Edges');
    const heads = await page.getByRole('tabpanel').getByRole('heading').allTextContents();
    expect(heads.map((head) => head.replace(/^\d+ /, ''))).toEqual(['door sills', 'upstands', 'retaining edge']);
    await page.getByRole('tabpanel').getByRole('row').nth(1).click();
    expect(await page.evaluate(() => window.__loamdeck.view().cell)).not.toBeNull();
  });
});

describe('sources', () => {
  it('are listed by grade, more of them when all are asked for', async () => {
    const { page } = opened;
    await openSheet(page, 'Sources');
    const items = page.locator('.sources > li');
    await expect.poll(() => items.count()).toBeGreaterThan(5);
    const used = await items.count();
    await page.getByLabel('Also what this scene does not use').check();
    await expect.poll(() => items.count()).toBeGreaterThan(used);
  });
});

describe('every sheet', () => {
  it.each([
    ['laptop', { width: 1280, height: 720 }],
    ['tablet', { width: 1024, height: 768, touch: true }],
    ['phone', { width: 390, height: 844, touch: true }],
  ] as const)('fits its panel on a %s, and nothing lies over the model', async (_name, options) => {
    const other = await openPage(opened.browser, `${inject('base')}?scene=courtyard`, { ...options, reducedMotion: true });
    const { page } = other;
    await untilReady(page);
    await page.evaluate(() => {
      window.__loamdeck.view().showMap('utilisation');
      window.__loamdeck.view().setCut({ on: true });
    });
    const count = await page.getByRole('tab').count();
    for (let i = 0; i < count; i++) {
      const tab = page.getByRole('tab').nth(i);
      const name = await tab.evaluate((one) => one.id);
      await tab.click();
      const panel = await page.getByRole('tabpanel').evaluate((one) => ({ room: one.clientWidth, needed: one.scrollWidth }));
      expect(panel.needed, name).toBeLessThanOrEqual(panel.room);
    }
    const over = await page.evaluate(() => {
      const canvas = document.querySelector('canvas') as HTMLCanvasElement;
      const box = canvas.getBoundingClientRect();
      const found = new Set<string>();
      for (let i = 1; i < 20; i++) {
        for (let j = 1; j < 20; j++) {
          const top = document.elementFromPoint(box.left + (box.width * i) / 20, box.top + (box.height * j) / 20);
          if (top !== null && top !== canvas && !top.contains(canvas)) found.add(top.className || top.tagName);
        }
      }
      return [...found];
    });
    expect(over).toEqual([]);
    expect(other.problems).toEqual([]);
    await other.close();
  });
});

describe('numbers in tables', () => {
  /** Number and its unit, as the kind of number is shown in its table, in the unit of its derivation. */
  const inDerivation: Readonly<Record<string, number>> = { utilisation: 0.01, depth: 0.001, mass: 1000 };

  /** By keyboard: opens the derivation of the first such number, reads it, and comes back. */
  async function derived(page: Page, tab: string | null, kind: string): Promise<void> {
    if (tab !== null) await page.locator(`#tab-${tab}`).click();
    const number = page.locator(`.page .derived[data-ask="${kind}"]`).first();
    const text = /[\d,]+(\.\d+)?/.exec((await number.textContent())!)![0].replaceAll(',', '');
    const shown = Number(text);
    const picked = await page.evaluate(() => window.__loamdeck.view().bay);
    await number.focus();
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog', { name: 'How this number comes about' });
    const value = dialog.getByTestId('derivation-value').locator('strong');
    await value.waitFor();
    const exact = Number((await value.textContent())!.replace(/\u202F.*$/, ''));
    const scale = inDerivation[kind] ?? 1;
    // Rounded for the table, by at most half of its last figure.
    const half = 0.5001 * 10 ** -(text.split('.')[1]?.length ?? 0) * scale;
    expect(Math.abs(exact - shown * scale), `${kind}: ${shown} in the table, ${exact} derived`).toBeLessThanOrEqual(half);
    expect(exact, kind).toBeGreaterThan(0);
    expect(await dialog.locator('.derivation-again').getAttribute('data-agrees'), kind).toBe('true');
    expect(await dialog.locator('.derivation-lines li').count(), kind).toBeGreaterThan(2);
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'hidden' });
    // The browser gives the focus back once the dialog is gone.
    await expect.poll(() => number.evaluate((one) => one === document.activeElement), { message: kind }).toBe(true);
    expect(await page.evaluate(() => window.__loamdeck.view().bay), 'a tap on a number picks no row').toBe(picked);
  }

  it('are in the units chosen, heads and values, in every table', async () => {
    const { page } = opened;
    await page.evaluate(() => {
      window.__loamdeck.view().showStage(null);
      window.__loamdeck.view().showMap('depth');
      window.__loamdeck.view().setUnits({ load: 'psf', length: 'ft-in' });
    });
    const found: string[] = [];
    for (const tab of await page.getByRole('tab').all()) {
      const id = await tab.evaluate((one) => one.id);
      // Findings, rules and sources are sentences of the report, which states its own units.
      if (/findings|sources/.test(id)) continue;
      await tab.click();
      await page.locator(`[aria-labelledby=${id}]`).waitFor();
      // Names of materials begin their rows, and keep the sizes they are traded by.
      const cells = await page.locator('#tab-panel table :is(thead th, td, caption)').allTextContents();
      for (const text of cells) if (/(?<![\w/])mm(?!\w)|kN\/m²(?!\w)/.test(text)) found.push(`${id}: ${text}`);
    }
    await page.evaluate(() => {
      window.__loamdeck.view().setUnits({ load: 'kN/m²', length: 'mm' });
      window.__loamdeck.view().showMap(null);
    });
    expect(found).toEqual([]);
  });

  it('tell how they come about, by keyboard, and what is derived is what is shown', async () => {
    const { page } = opened;
    await page.evaluate(() => window.__loamdeck.view().showStage(null));
    for (const [tab, kinds] of [
      ['bays', ['load', 'utilisation']],
      ['zones', ['depth', 'zone load']],
      ['heaps', ['heap', 'column']],
      ['takeoff', ['mass']],
      ['water', ['held']],
    ] as const) {
      for (const kind of kinds) await derived(page, tab, kind);
    }
    await page.locator('#tab-wheels').click();
    await page.locator('.runs .row-button').first().click();
    await page.locator('.page .derived[data-ask="wheel"]').first().waitFor();
    await derived(page, null, 'wheel');
    await page.evaluate(() => window.__loamdeck.view().pickCell(window.__loamdeck.scene().snapshot!.bayAt.indexOf(3)));
    await page.waitForFunction(() => window.__loamdeck.scene().coreLog?.cell === window.__loamdeck.view().cell);
    await page.getByTestId('core-total').waitFor();
    await derived(page, null, 'core log');
    await page.getByRole('tab', { name: 'Bays' }).click();
  });
});

it('nothing went wrong on the page and no request left the app', () => {
  expect(opened.problems).toEqual([]);
});
