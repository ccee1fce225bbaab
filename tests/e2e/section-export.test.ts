/** Sections, exports and units in the real browser: from the tap to the saved file, and the file read again. */

import { createHash } from 'node:crypto';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, inject, it } from 'vitest';
import { untilIdle, untilReady } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
let opened: OpenedPage;
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'loamdeck-'));
  browser = await workerBrowser();
  opened = await openPage(browser, `${inject('base')}?scene=terrace&lang=en`, { reducedMotion: true });
  await untilReady(opened.page);
});
afterAll(async () => {
  await opened?.close();
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
});
beforeEach(async () => {
  await opened.page.evaluate(() => window.__loamdeck.view().closeSection());
});

async function saved(
  page: Page,
  act: () => Promise<void>,
): Promise<{ readonly name: string; readonly bytes: Buffer; readonly path: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), act()]);
  const name = download.suggestedFilename();
  const path = join(folder, name);
  await download.saveAs(path);
  return { name, bytes: await readFile(path), path };
}

/** Draws a section by keyboard: two points typed. */
async function typeSection(page: Page, points: readonly (readonly [number, number])[]): Promise<void> {
  await page.getByRole('button', { name: 'Section', exact: true }).press('Enter');
  for (const [i, [x, y]] of points.entries()) {
    await page.getByRole('button', { name: 'Add a point' }).press('Enter');
    for (const [axis, value] of [
      ['x', x],
      ['y', y],
    ] as const) {
      const field = page.getByRole('textbox', { name: `Point ${i + 1}, ${axis}` });
      await field.fill(String(value));
      await field.press('Enter');
    }
  }
  await page.getByRole('button', { name: 'Draw the section' }).press('Enter');
  await untilSection(page);
}

async function untilSection(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const { section } = window.__loamdeck.view();
    return section !== null && window.__loamdeck.scene().section?.of === section;
  });
  await untilIdle(page);
}

/** Area of a polygon in the units of its points. */
function areaOf(points: readonly (readonly number[])[]): number {
  const twice = points.reduce((sum, [x = 0, y = 0], i) => {
    const [nextX = 0, nextY = 0] = points[(i + 1) % points.length] ?? [];
    return sum + x * nextY - nextX * y;
  }, 0);
  return Math.abs(twice) / 2;
}

/** Areas of all hatched shapes of the cut of one hatch [mm² on paper]. */
function hatchedMm2(svg: string, hatch: string): number {
  const cut = svg.split('<g class="LEGEND')[0] ?? svg;
  return [...cut.matchAll(/<path d="([^"]+)" fill="url\(#hatch-([a-z-]+)\)"/g)]
    .filter(([, , name]) => name === hatch || name === `loose-${hatch}`)
    .flatMap(([, d = '']) => d.split('Z').filter(Boolean))
    .reduce(
      (sum, ring) =>
        sum +
        areaOf(
          ring
            .slice(1)
            .split('L')
            .map((point) => point.split(' ').map(Number)),
        ),
      0,
    );
}

describe('section', () => {
  it('is drawn by keyboard, cut alike in the model, and told in a table', async () => {
    const { page } = opened;
    await typeSection(page, [
      [0, 3],
      [9, 3],
    ]);
    const { cut, length } = await page.evaluate(() => ({
      cut: window.__loamdeck.view().cut,
      length: window.__loamdeck.scene().section!.drawing.lengthM,
    }));
    expect(length).toBeCloseTo(9, 9);
    // from west to east one looks north: 0° clockwise from +y
    expect(cut).toMatchObject({ on: true, lookDeg: 0 });
    await page.getByRole('radio', { name: 'Table' }).check({ force: true });
    const rows = await page.locator('.section-table tbody tr').allInnerTexts();
    expect(rows.length).toBeGreaterThan(6);
    await page.getByRole('radio', { name: 'Drawing' }).check({ force: true });
    await opened.screenshot('section-terrace');
    expect(opened.problems).toEqual([]);
  });

  it('saved as SVG has areas of thickness × length', async () => {
    const { page } = opened;
    // The gravel border: 60 mm of gravel along its whole width, read from the scene file; the line runs in it alone.
    const scene = await page.evaluate(() => window.__loamdeck.scene().snapshot!);
    const gravel = scene.scene.zones.find((zone) => zone.id === 'gravel')!;
    const xs = gravel.outline.map(([x]) => x);
    const ys = gravel.outline.map(([, y]) => y);
    const [left, right] = [Math.min(...xs), Math.max(...xs)];
    const [low, high] = [Math.min(...ys), Math.max(...ys)];
    const lengthways = right - left > high - low;
    const line: [number, number][] = lengthways
      ? [
          [left + 0.5, (low + high) / 2],
          [right - 0.5, (low + high) / 2],
        ]
      : [
          [(left + right) / 2, low + 0.5],
          [(left + right) / 2, high - 0.5],
        ];
    await typeSection(page, line);
    const { name, bytes } = await saved(page, () => page.getByRole('button', { name: 'Save the section as SVG' }).click());
    expect(name).toBe('pebble-terrace-section.svg');
    const svg = bytes.toString('utf8');
    const drawn = await page.evaluate(() => window.__loamdeck.scene().section!.drawing);
    const lengthM = (lengthways ? right - left : high - low) - 1;
    expect(drawn.lengthM).toBeCloseTo(lengthM, 6);
    for (const layer of scene.buildUps.find(({ zones }) => zones.includes('gravel'))!.layers) {
      if (layer.rangeMm !== null || !layer.adjustable) continue;
      const kind = layer.role.replaceAll(' ', '-');
      const same = scene.buildUps.find(({ zones }) => zones.includes('gravel'))!.layers.filter(({ role }) => role === layer.role);
      const thicknessM = same.reduce((sum, { thicknessMm }) => sum + thicknessMm / 1000, 0);
      if (same.some(({ rangeMm }) => rangeMm !== null)) continue;
      // 1:50: a square metre is (1000 / 50)² mm²
      const expected = thicknessM * lengthM * 400;
      expect(Math.abs(hatchedMm2(svg, kind) - expected), `${layer.role}`).toBeLessThan(0.005 * expected);
    }
  });

  it('follows thickness, stage and exaggeration', async () => {
    const { page } = opened;
    await typeSection(page, [
      [0, 3],
      [9, 3],
    ]);
    const highest = () => page.evaluate(() => window.__loamdeck.scene().section!.drawing.highM);
    const pieces = () => page.evaluate(() => window.__loamdeck.scene().section!.drawing.pieces.length);
    const whole = await pieces();
    await page.evaluate(() => window.__loamdeck.view().showStage(0));
    await expect.poll(pieces).toBeLessThan(whole);
    await page.evaluate(() => window.__loamdeck.view().showStage(null));
    await expect.poll(pieces).toBe(whole);
    expect(await highest()).toBeGreaterThan(0);
    await page.getByRole('combobox', { name: 'Heights' }).selectOption('5');
    await expect.poll(() => page.evaluate(() => window.__loamdeck.scene().section?.of.heights)).toBe(5);
    await expect.poll(() => page.locator('.section-says').textContent()).toContain('Heights are drawn 5 times as large as lengths.');
    await page.getByRole('combobox', { name: 'Heights' }).selectOption('1');
  });

  it('is taken where the cut stands and goes with it', async () => {
    const { page } = opened;
    await page.evaluate(() => window.__loamdeck.view().setCut({ on: true, lookDeg: 90, position: 0.5 }));
    await page.getByRole('button', { name: 'Section here' }).click();
    await untilSection(page);
    const x = () => page.evaluate(() => window.__loamdeck.view().section!.line.map(([at]) => at));
    const [first] = await x();
    await page.evaluate(() => window.__loamdeck.view().setCut({ position: 0.75 }));
    await expect.poll(async () => (await x())[0]).toBeGreaterThan(first! + 1);
    const [from, to] = await x();
    expect(from).toBeCloseTo(to!, 6);
    await page.evaluate(() => window.__loamdeck.view().setCut({ on: false }));
  });

  it('takes points tapped on the model', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: 'Section', exact: true }).click();
    await untilIdle(page);
    const places = await page.evaluate(() => {
      const { grid } = window.__loamdeck.scene().snapshot!;
      const box = document.querySelector('canvas')!.getBoundingClientRect();
      const cells = [3, grid.columns - 4].map((column) => Math.floor(grid.rows / 2) * grid.columns + column);
      return cells.map((cell) => {
        const [x, y] = window.__loamdeck.probe.source!.projectCell(cell)!;
        return [box.left + x, box.top + y] as const;
      });
    });
    for (const [i, [x, y]] of places.entries()) {
      await page.mouse.click(x, y);
      await page.waitForFunction((count) => window.__loamdeck.view().sectionPoints?.length === count, i + 1);
    }
    const points = await page.evaluate(() => window.__loamdeck.view().sectionPoints!);
    expect(points).toHaveLength(2);
    // Middles of cells of 0.25 m: columns 3 and 32 of 36
    expect(points[0]![0]).toBeCloseTo(0.875, 0);
    expect(points[1]![0]).toBeCloseTo(8.125, 0);
    await page.getByRole('button', { name: 'Cancel' }).click();
  });
});

async function exportSheet(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Export', exact: true }).click();
}

describe('export', () => {
  it('saves a picture of the size asked for, without touching the canvas', async () => {
    const { page } = opened;
    const size = () => page.evaluate(() => [document.querySelector('canvas')!.width, document.querySelector('canvas')!.height]);
    // The model takes back the room of the section closed before.
    await untilIdle(page);
    const before = await size();
    await exportSheet(page);
    await page.getByRole('combobox', { name: 'Size' }).selectOption('1');
    const { bytes } = await saved(page, () => page.getByRole('button', { name: 'Save PNG' }).click());
    // PNG: width and height stand at bytes 16 and 20 (RFC 2083, 4.1.1)
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([1920, 1080]);
    expect(await size()).toEqual(before);
    const colours = await page.evaluate(
      async (address) => {
        const image = new Image();
        image.src = address;
        await image.decode();
        const canvas = document.createElement('canvas');
        [canvas.width, canvas.height] = [image.width, image.height];
        const pen = canvas.getContext('2d')!;
        pen.drawImage(image, 0, 0);
        const { data } = pen.getImageData(0, 0, image.width, image.height);
        const found = new Set<number>();
        for (let at = 0; at < data.length; at += 4) found.add((data[at]! << 16) | (data[at + 1]! << 8) | data[at + 2]!);
        return { count: found.size, corner: [data[0], data[1], data[2]] };
      },
      `data:image/png;base64,${bytes.toString('base64')}`,
    );
    // Paper of the page, F5F1E8, and a model in many colours
    expect(colours.corner).toEqual([0xf5, 0xf1, 0xe8]);
    expect(colours.count).toBeGreaterThan(100);
  });

  it('saves a handover that opens without server, script, request or error, with true checksums', async () => {
    const { page } = opened;
    const { name, path, bytes } = await saved(page, () => page.getByRole('button', { name: 'Handover, HTML' }).click());
    expect(name).toBe('pebble-terrace-handover.html');
    expect(bytes.toString('utf8')).not.toMatch(/<script|javascript:/i);
    const context = await browser.newContext({ offline: true });
    const alone = await context.newPage();
    const problems: string[] = [];
    alone.on('console', (message) => problems.push(message.text()));
    alone.on('pageerror', (error) => problems.push(error.message));
    alone.on('request', (request) => {
      if (!/^(file|data):/.test(request.url())) problems.push(request.url());
    });
    await alone.goto(`file://${path}`);
    const read = await alone.evaluate(() => ({
      chapters: [...document.querySelectorAll('h2')].map((head) => head.textContent),
      broken: [...document.images].filter((image) => image.naturalWidth === 0).length,
      files: [...document.querySelectorAll('#files tbody tr')].map((row) => ({
        name: row.querySelector('a')!.download,
        href: row.querySelector('a')!.href,
        sum: row.querySelector('.c')!.textContent!,
      })),
    }));
    expect(problems).toEqual([]);
    expect(read.broken).toBe(0);
    expect(read.chapters).toEqual(
      expect.arrayContaining(['Findings', 'Pictures', 'Plan', 'Hold points', 'Heap heights', 'Files in this page']),
    );
    expect(read.files.length).toBeGreaterThanOrEqual(5);
    for (const file of read.files) {
      const body = Buffer.from(file.href.split(',')[1]!, 'base64');
      expect(createHash('sha256').update(body).digest('hex'), file.name).toBe(file.sum);
    }
    const scene = JSON.parse(Buffer.from(read.files[0]!.href.split(',')[1]!, 'base64').toString('utf8')) as { name: string };
    expect(scene.name).toBe('Pebble Terrace');
    await context.close();
  });

  it('saves the scene the same, whatever units are shown', async () => {
    const { page } = opened;
    const scene = () => saved(page, () => page.getByRole('button', { name: 'Scene file' }).click());
    const before = await scene();
    expect(before.name).toBe('pebble-terrace.scene.json');
    await page.getByRole('button', { name: 'Close' }).first().click();
    await page.evaluate(() => window.__loamdeck.view().setUnits({ load: 'psf', length: 'ft-in' }));
    await expect.poll(() => page.getByText('Load and permitted, psf').count()).toBeGreaterThan(0);
    await page.evaluate(() => window.__loamdeck.view().setUnits({ load: 'kN/m²', length: 'mm' }));
    await exportSheet(page);
    expect((await scene()).bytes.equals(before.bytes)).toBe(true);
    await page.keyboard.press('Escape');
    expect(opened.problems).toEqual([]);
  });
});
