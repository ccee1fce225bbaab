/** Reading drawings in the real browser: bad inputs with the words of the command line, a plan taken over, large files. */

import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { issueLine } from '../../src/model/issue.ts';
import { rect, sceneOf } from '../helpers/scene-builder.ts';
import type { BadInput } from '../import/corpus/bad-input.ts';
import { DRAWING_ROWS } from '../import/corpus/drawing-rows.ts';
import { KIND_ROWS } from '../import/corpus/kind-rows.ts';
import { SCENE_ROWS } from '../import/corpus/scene-rows.ts';
import { TABLE_ROWS } from '../import/corpus/table-rows.ts';
import { dxf, line, type Pair, rectangle } from '../import/dxf-builder.ts';
import { CLIPPED } from '../import/ifc/models.ts';
import { seriousFaults, smallTargets } from './access-faults.ts';
import { untilReady } from './app-state.ts';
import { type DroppedFile, dropAll, type Outcome } from './dropped.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
let opened: OpenedPage;
let page: Page;
beforeAll(async () => {
  browser = await workerBrowser();
  opened = await openPage(browser, `${inject('base')}favicon.svg`, { reducedMotion: true });
  page = opened.page;
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ violatedDirective }) => console.error(`policy: ${violatedDirective}`));
  });
  await page.goto(`${inject('base')}?scene=terrace`);
  await untilReady(page);
});
afterEach(async () => {
  await page.evaluate(() => {
    window.__loamdeck.imports().close();
    window.__loamdeck.view().setLanguage('en');
  });
});
afterAll(async () => {
  expect(opened.problems).toEqual([]);
  await opened.close();
  await browser.close();
});

const bytesOf = ({ file }: BadInput): Uint8Array => {
  const content = file();
  return typeof content === 'string' ? new TextEncoder().encode(content) : content;
};
const pick = (file: { name: string; mimeType: string; buffer: Buffer }) => page.locator('input[type=file]').first().setInputFiles(file);
const textFile = (name: string, text: string) => ({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });

describe('bad inputs', () => {
  // The app reads a drawing that `check` can only refuse.
  const rows = [...DRAWING_ROWS, ...TABLE_ROWS, ...KIND_ROWS, ...SCENE_ROWS].filter(({ what }) => what !== 'a drawing given to check');

  function callOf({ by, answers = {}, roles = {}, around }: BadInput): string[] {
    if (by === 'check') return ['check', 'bad.file', '--json'];
    return [
      'import',
      'bad.file',
      '--json',
      ...Object.entries(answers).flatMap(([id, value]) => ['--answer', `${id}=${value}`]),
      ...Object.entries(roles).flatMap(([layer, role]) => ['--role', `${layer}=${role}`]),
      ...(around === undefined ? [] : ['--deck', 'deck.file']),
    ];
  }

  function expectSame(input: BadInput, outcome: Outcome): void {
    const { around } = input;
    const deck = around && sceneOf({ deck: { outline: rect(around.minX, around.minY, around.maxX, around.maxY) } });
    const { err, out } = run(callOf(input), (file) =>
      file === 'deck.file' ? new TextEncoder().encode(JSON.stringify(deck)) : bytesOf(input),
    );
    const lines = err
      .split('\n')
      .filter((text) => text !== '')
      .map((text) => text.replace(/^bad\.file: /, ''));
    const { kind, issues, warnings, mends } = outcome;
    if (kind === 'refused') expect(issues).toEqual(lines);
    else if (kind === 'scene') {
      const { findings } = JSON.parse(out) as { findings: { rule: string; says: string }[] };
      expect(lines).toEqual([...mends.map((says) => expect.stringContaining(says)), ...warnings.map(issueLine)]);
      expect(outcome.findings).toEqual(findings.map(({ rule, says }) => `${rule}: ${says}`));
    } else {
      const read = JSON.parse(out) as { mends: { says: string; layer?: string }[] };
      const roles = Object.keys(input.roles ?? {});
      // Without roles the page misses an outline, which the command line was not asked for.
      const own = roles.length > 0 || around !== undefined ? issues : issues.filter((text) => !text.includes(' OUTLINE_MISSING'));
      expect(own).toEqual(lines);
      expect(mends).toEqual(read.mends.map(({ says, layer }) => (layer === undefined ? says : `Layer ${layer}: ${says}`)));
      const [asked] = input.expected.asks ?? [];
      if (asked !== undefined) expect(outcome.open).toContain(asked);
    }
  }

  it(`${rows.length} files get the answer of the command line`, async () => {
    const files = rows.map((input): DroppedFile => {
      const { answers, roles, around } = input;
      return {
        name: 'bad.file',
        content: Buffer.from(bytesOf(input)).toString('base64'),
        ...(answers && { answers }),
        ...(roles && { roles: roles as NonNullable<DroppedFile['roles']> }),
        ...(around && { around }),
      };
    });
    const outcomes = await dropAll(page, files);
    const wrong = outcomes.flatMap((outcome, i) => {
      const input = rows[i]!;
      try {
        expectSame(input, outcome);
        return [];
      } catch (error) {
        return [`row ${input.row}, ${input.what}: ${(error as Error).message}`];
      }
    });
    expect(wrong).toEqual([]);
  });

  it('two files at once, and a folder, as the command line says', async () => {
    const two = run(['import', 'a.dxf', 'b.dxf'], () => new Uint8Array(0)).err.trim();
    await page.evaluate(() => {
      const dataTransfer = new DataTransfer();
      for (const name of ['a.dxf', 'b.dxf']) dataTransfer.items.add(new File(['0'], name));
      window.dispatchEvent(new DragEvent('drop', { dataTransfer, cancelable: true }));
    });
    const dialog = page.getByRole('dialog', { name: 'Open a scene' });
    expect(two).toContain((await dialog.locator('p').textContent())!);
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
  });
});

describe('a plan in millimetres without a unit', () => {
  // The deck of 40 × 30 m in two bays by its axes, one opening of 2 × 3 m, a lawn of 10 × 20 m.
  const plan = dxf({
    entities: [
      rectangle('Deck', 40_000, 30_000),
      rectangle('Shafts', 2_000, 3_000, [30_000, 10_000]),
      rectangle('Zones', 10_000, 20_000, [1_000, 1_000]),
      ...[0, 20_000, 40_000].map((x) => line('Axes', [x, 0, x, 30_000])),
      ...[0, 30_000].map((y) => line('Axes', [0, y, 40_000, y])),
    ] as readonly (readonly Pair[])[],
  });
  const levels = 'Nr;x;y;z\n1;0;0;1,20\n2;40;0;1,20\n3;40;30;0,80\n4;0;30;0,80\n';

  it('is asked about, drawn, taken over by keyboard, and gives the scene by hand', async () => {
    await pick(textFile('Garden.dxf', plan));
    const sheet = page.getByRole('dialog', { name: 'Read from Garden.dxf' });
    const size = sheet.locator('.import-size');
    await size.waitFor();
    expect(await size.textContent()).toBe('40.00 × 30.00 m');
    const millimetres = sheet.getByRole('radio', { name: /^millimetres: 40 × 30 m/ });
    await millimetres.focus();
    await page.keyboard.press('ArrowDown');
    await page.waitForFunction(() => document.querySelector('.import-size')?.textContent === '40,000.00 × 30,000.00 m');
    await page.keyboard.press('ArrowUp');
    await page.waitForFunction(() => document.querySelector('.import-size')?.textContent === '40.00 × 30.00 m');
    await sheet.getByRole('combobox', { name: 'Use of layer Zones' }).selectOption('zones');
    expect(await seriousFaults(page, '.import-page')).toEqual([]);
    expect(await smallTargets(page, 24)).toEqual([]);
    await opened.screenshot('import-check');
    const go = sheet.getByRole('button', { name: 'Begin the scene' });
    await go.focus();
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => window.__loamdeck.scene().snapshot?.scene.name === 'Garden');
    const { areaM2, zonedM2, bays, changed } = await page.evaluate(() => {
      const { snapshot, history } = window.__loamdeck.scene();
      const { deck, bays: all } = snapshot!.report;
      return { ...deck, bays: all.map(({ id, areaM2: own }) => [id, own]), changed: history.changed };
    });
    // 40 · 30 − 2 · 3 = 1194; the second bay holds the opening: 600 − 6; 10 · 20 = 200.
    expect([areaM2, zonedM2].map((area) => Number(area.toFixed(6)))).toEqual([1194, 200]);
    expect(bays.map(([id, area]) => [id, Number(Number(area).toFixed(6))])).toEqual([
      ['A1', 600],
      ['B1', 594],
    ]);
    expect(changed).toBe(true);
  });

  it('takes levels into the open scene as one step of undo, and keeps the history', async () => {
    await pick(textFile('levels.csv', levels));
    const sheet = page.getByRole('dialog', { name: 'Read from levels.csv' });
    expect(await sheet.getByRole('radio', { name: /^Into the open scene/ }).isChecked()).toBe(true);
    await sheet.getByRole('button', { name: 'Take into the scene' }).click();
    await page.waitForFunction(() => window.__loamdeck.scene().snapshot?.scene.deck.levels?.spots.length === 4);
    const entries = await page.evaluate(() => {
      const { snapshot, history } = window.__loamdeck.scene();
      return { undo: history.undo, says: snapshot!.scene.history!.map(({ on, says }) => `${on !== undefined} ${says}`) };
    });
    expect(entries.undo).toEqual({ kind: 'parts', act: 'import', part: 'levels', names: ['levels.csv'] });
    expect(entries.says.filter((says) => says.startsWith('true Read from "'))).toHaveLength(2);
    expect(entries.says.join('\n')).toContain(
      'Lengths were changed from millimetres to metres: 40000 × 30000 in the file became 40 × 30 m.',
    );
    await page.evaluate(() => window.__loamdeck.scene().travel('undo'));
    await page.waitForFunction(() => window.__loamdeck.scene().snapshot?.scene.deck.levels === undefined);
    expect(
      await page.evaluate(() => window.__loamdeck.scene().snapshot!.scene.history!.some(({ says }) => says.includes('levels.csv'))),
    ).toBe(false);
  });

  it('lies as lines under the plan on wish, and in German all of it is German', async () => {
    await page.evaluate(() => window.__loamdeck.view().setLanguage('de'));
    await pick(textFile('Garten.dxf', plan));
    const sheet = page.getByRole('dialog', { name: 'Gelesen aus Garten.dxf' });
    await sheet.getByRole('radio', { name: /^Linien unter dem Plan/ }).check();
    expect(await sheet.textContent()).not.toMatch(/\b(the|with|not|use as|left out|read|north|take)\b/i);
    await sheet.getByRole('button', { name: 'Unter den Plan legen' }).click();
    const lines = await page.evaluate(() => {
      const { underlayLines } = window.__loamdeck.view();
      return underlayLines && { name: underlayLines.name, layers: underlayLines.layers.map(({ name }) => name) };
    });
    expect(lines).toEqual({ name: 'Garten.dxf', layers: ['Deck', 'Shafts', 'Zones', 'Axes'] });
  });
});

describe('a building model', () => {
  it('becomes a scene: a slab cut by a plane, laid out by the library that is loaded for it', async () => {
    await pick(textFile('Invented court.ifc', CLIPPED));
    const sheet = page.getByRole('dialog', { name: 'Read from Invented court.ifc' });
    await sheet.getByText('The deck is "Cut"').waitFor();
    await sheet.getByRole('button', { name: 'Begin the scene' }).click();
    await page.waitForFunction(() => window.__loamdeck.scene().snapshot?.scene.name === 'Invented court');
    const { areaM2, levels, says, kept } = await page.evaluate(async () => {
      const { report, scene } = window.__loamdeck.scene().snapshot!;
      const heights = scene.deck.levels!.spots.map(([, , z]) => z);
      const told = scene.history!.map((entry) => entry.says).join('\n');
      return { ...report.deck, levels: heights, says: told, kept: await (await fetch('sw.js')).text() };
    });
    // From −10 to 2.5 m, 10 m across, less the opening of 2 × 1 m.
    expect(Number(areaM2.toFixed(6))).toBe(12.5 * 10 - 2);
    expect([Math.min(...levels), Math.max(...levels)]).toEqual([0, 0.3]);
    expect(says).toContain('a surface of triangles made of it');
    // Works without a network too.
    expect(kept).toMatch(/"assets\/web-ifc-[\w-]+\.wasm"/);
  });
});

describe('large files', () => {
  /** Longest time the page did not answer while something ran [ms]; tasks of 50 ms and more are told by the browser. */
  async function longestTaskMs(work: () => Promise<void>): Promise<number> {
    await page.evaluate(() => {
      const tasks: number[] = [];
      const observer = new PerformanceObserver((list) => {
        for (const { duration } of list.getEntries()) tasks.push(duration);
      });
      observer.observe({ entryTypes: ['longtask'] });
      Object.assign(window, { tasks, stopTasks: () => observer.disconnect() });
    });
    await work();
    return page.evaluate(() => {
      const watched = window as unknown as { tasks: number[]; stopTasks: () => void };
      watched.stopTasks();
      return Math.max(0, ...watched.tasks);
    });
  }

  /** Made in the page: sent there, it would take longer than to be read. */
  const make = (name: string, parts: readonly (readonly [text: string, times: number])[]) =>
    page.evaluate(
      ([called, pieces]) => {
        const content = pieces.flatMap(([text, times]) => Array.from({ length: times }, () => text));
        Object.assign(window, { made: new File(content, called) });
      },
      [name, parts] as const,
    );
  const drop = () =>
    page.evaluate(() => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add((window as unknown as { made: File }).made);
      window.dispatchEvent(new DragEvent('drop', { dataTransfer, cancelable: true }));
    });

  it('a drawing of a million points is read beside the page, which stays responsive', async () => {
    // A thousand rounds of a thousand points on a circle.
    const points = Array.from({ length: 1000 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 1000;
      return `10\n${(50 * Math.cos(angle)).toFixed(4)}\n20\n${(50 * Math.sin(angle)).toFixed(4)}\n`;
    });
    const head =
      '0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n6\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n0\nLWPOLYLINE\n8\nDeck\n90\n1000000\n70\n1\n';
    await make('wave.dxf', [
      [head, 1],
      [points.join(''), 1000],
      ['0\nENDSEC\n0\nEOF\n', 1],
    ]);
    const longest = await longestTaskMs(async () => {
      await drop();
      const sheet = page.getByRole('dialog', { name: 'Read from wave.dxf' });
      await sheet.getByText('up to 1,000,000 points').waitFor();
      await page.waitForFunction(() => !window.__loamdeck.imports().drafting);
      await sheet.getByRole('button', { name: /^Leave/ }).click();
    });
    expect(longest).toBeLessThan(200);
  });

  it('a map of 100 MB shows how far it is and stops at once when told to', async () => {
    const ring = Array.from({ length: 500 }, (_, i) => `[${(i * 0.1).toFixed(3)},${(i * i * 0.0001).toFixed(3)}]`).join();
    const feature = `{"type":"Feature","properties":{"layer":"Deck"},"geometry":{"type":"Polygon","coordinates":[[${ring},[0.000,0.000]]]}}`;
    await make('large.geojson', [
      ['{"type":"FeatureCollection","features":[', 1],
      [`${feature},`, Math.ceil(100_000_000 / feature.length)],
      [`${feature}]}`, 1],
    ]);
    const longest = await longestTaskMs(async () => {
      await drop();
      const sheet = page.getByRole('dialog', { name: 'Reading large.geojson, 100 MB' });
      await sheet.getByRole('progressbar').waitFor();
      await page.waitForFunction(() => Number(document.querySelector('.import-waits progress')?.getAttribute('value')) > 0);
      await sheet.getByRole('button', { name: 'Cancel' }).click();
      await sheet.waitFor({ state: 'detached' });
      await pick(textFile('levels.csv', 'x;y;z\n0;0;1.2\n40;0;1.3\n40;30;1.25\n'));
      await page.getByRole('dialog', { name: 'Read from levels.csv' }).waitFor();
      await page.keyboard.press('Escape');
    });
    expect(longest).toBeLessThan(200);
  });
});
