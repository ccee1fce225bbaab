/** Files saved by the app's own export sheet, as real downloads, read again by other readers: the model, tables and the plan. */

import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { Box3, type Mesh, type Object3D } from 'three';
import { type GLTF, GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import type { Report } from '../../src/model/report.ts';
import { untilReady } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
let opened: OpenedPage;
let report: Report;
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'loamdeck-'));
  browser = await workerBrowser();
  opened = await openPage(browser, `${inject('base')}?scene=terrace&lang=en`, { reducedMotion: true });
  await untilReady(opened.page);
  report = await opened.page.evaluate(() => window.__loamdeck.scene().snapshot!.report);
  await opened.page.getByRole('button', { name: 'Export', exact: true }).click();
});
afterAll(async () => {
  await opened?.close();
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
});

async function saved(button: string): Promise<{ readonly name: string; readonly bytes: Buffer }> {
  const { page } = opened;
  const act = () => page.getByRole('button', { name: button, exact: true }).click();
  const [download] = await Promise.all([page.waitForEvent('download'), act()]);
  const name = download.suggestedFilename();
  const path = join(folder, name);
  await download.saveAs(path);
  return { name, bytes: await readFile(path) };
}

/** Rows of a CSV text as RFC 4180 has it, with another mark between cells where told. */
function rowsOf(bytes: Buffer, separator: string): string[][] {
  const text = bytes.toString('utf8').replace(/^\uFEFF/, '');
  const rows: string[][] = [[]];
  let [cell, quoted] = ['', false];
  const close = () => {
    rows[rows.length - 1]!.push(cell);
    cell = '';
  };
  for (let i = 0; i < text.length; i++) {
    const letter = text[i]!;
    if (quoted && letter === '"' && text[i + 1] === '"') {
      cell += '"';
      i++;
    } else if (letter === '"') quoted = !quoted;
    else if (!quoted && letter === separator) close();
    else if (!quoted && letter === '\r' && text[i + 1] === '\n') {
      close();
      rows.push([]);
      i++;
    } else cell += letter;
  }
  return rows;
}

/** Rows by their first cell and the heads of their columns; the note below a table is no row. */
function tableOf(rows: readonly (readonly string[])[]): Map<string, Map<string, string>> {
  const [heads, ...others] = rows;
  const body = others.filter((cells) => cells.length === heads!.length);
  return new Map(body.map((cells) => [cells[0]!, new Map(heads!.map((head, i) => [head, cells[i]!]))]));
}

/** Half of the last decimal that a cell of the table shows. */
const roundedTo = (value: number, decimals: number) => Math.round(value * 10 ** decimals) / 10 ** decimals;

describe('the model, read by the loader of a 3D library', () => {
  let gltf: GLTF;
  beforeAll(async () => {
    const { name, bytes } = await saved('Model, GLB');
    expect(name).toBe('pebble-terrace-model.glb');
    const buffer = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer;
    gltf = await new GLTFLoader().parseAsync(buffer, '');
    gltf.scene.updateMatrixWorld(true);
  });
  const layer = (zone: string, materialId: string): Object3D => {
    const found: Object3D[] = [];
    gltf.scene.traverse((node) => {
      if (node.userData.zone === zone && node.userData.materialId === materialId) found.push(node);
    });
    expect(found).toHaveLength(1);
    return found[0]!;
  };
  const boxOf = (node: Object3D) => {
    const { min, max } = new Box3().setFromObject(node, true);
    return { min: min.toArray(), max: max.toArray() };
  };
  const within1mm = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 3));

  it('lies in metres, Y up, to the millimetre: the slabs of the paving', () => {
    // Paving from y = 2.5 to 6; its finish is 0.500 at y = 6 and falls 1.5 % towards y = 0: 0.500 − 0.015 · 3.5 = 0.4475 at y = 2.5.
    // Slabs of 60 mm hang below; x goes along X, y against Z.
    expect(boxOf(layer('paving', 'slab-60'))).toEqual({ min: within1mm([0, 0.3875, -6]), max: within1mm([9, 0.5, -2.5]) });
  });

  it('lies in metres to the millimetre: the soil of the bed on the deck that falls', () => {
    // Deck 0.045 at the edge y = 0, 0.02 higher with each metre; along the breakline x = 4.5 it is 0.045 lower. Bed from y = 0.5 to 2.5:
    // 350 mm of soil as thick everywhere, so its top spans what the deck spans: 0.02 · 2 + 0.045 = 0.085 m.
    const { min, max } = boxOf(layer('bed', 'substrate-intensive'));
    expect([min[0], max[0], min[2], max[2]]).toEqual(within1mm([0, 9, -2.5, -0.5]));
    expect(max[1]! - min[1]!).toBeCloseTo(0.35 + 0.085, 3);
  });

  it('encloses the volumes of the take-off, and says them', () => {
    // Closed meshes, so that the divergence theorem gives their volume.
    const volumeM3 = (root: Object3D) => {
      let six = 0;
      root.traverse((node) => {
        const { geometry } = node as Mesh;
        if (geometry === undefined) return;
        const position = geometry.getAttribute('position');
        const index = geometry.getIndex()!;
        const at = (k: number) => [position.getX(k), position.getY(k), position.getZ(k)] as const;
        for (let i = 0; i < index.count; i += 3) {
          const [a, b, c] = [at(index.getX(i)), at(index.getX(i + 1)), at(index.getX(i + 2))];
          six += a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
        }
      });
      return six / 6;
    };
    // 350 mm on 9 m × 2 m, 300 mm on 9 m × 0.5 m.
    for (const [zone, material, wantedM3] of [
      ['bed', 'substrate-intensive', 6.3],
      ['gravel', 'gravel-strip', 1.35],
    ] as const) {
      const node = layer(zone, material);
      expect(volumeM3(node)).toBeCloseTo(wantedM3, 4);
      expect(node.userData.placedM3).toBeCloseTo(wantedM3, 9);
      expect(report.takeoff!.find((row) => row.material === material)!.placedM3).toBeCloseTo(wantedM3, 9);
    }
  });
});

describe('tables, read by the rules of CSV', () => {
  const choose = async (table: string, language: string) => {
    await opened.page.getByRole('combobox', { name: 'Language of the files' }).selectOption(language);
    await opened.page.getByRole('combobox', { name: 'Table' }).selectOption(table);
    const { bytes } = await saved('Table, CSV');
    return tableOf(rowsOf(bytes, language === 'de' ? ';' : ','));
  };

  it('hold the bays of the report, number by number, in both languages', async () => {
    const [english, german] = [await choose('bays', 'en'), await choose('bays', 'de')];
    expect([...english.keys()]).toEqual(report.bays.map(({ id }) => id));
    for (const { id, areaM2, permanent, imposed } of report.bays) {
      const row = english.get(id)!;
      const told = (head: string) => Number(row.get(head));
      expect(told('area m²')).toBe(roundedTo(areaM2, 2));
      expect(told('mean kN/m²')).toBe(roundedTo(permanent.meanKNm2, 3));
      expect(told('worst patch of 1 m × 1 m kN/m²')).toBe(roundedTo(permanent.patchKNm2, 3));
      expect(told('permitted permanent kN/m²')).toBe(permanent.permittedKNm2);
      expect(told('use %')).toBe(roundedTo(100 * permanent.utilisation!, 1));
      expect(told('imposed kN/m²')).toBe(imposed.maxKNm2);
      // The same numbers, with decimal commas; days are written another way.
      const numbers = (cells: Iterable<string>) =>
        [...cells].map((cell) => cell.replace(/^(-?\d+),(\d+)$/, '$1.$2')).filter((cell) => /^-?\d+(\.\d+)?$/.test(cell));
      expect(numbers(german.get(id)!.values())).toEqual(numbers(row.values()));
    }
  });

  it('hold the take-off of the report', async () => {
    const table = await choose('take-off', 'en');
    expect([...table.keys()]).toEqual(report.takeoff!.map(({ material }) => material));
    for (const { material, areaM2, placedM3, dryKg } of report.takeoff!) {
      const row = table.get(material)!;
      expect([Number(row.get('laid m²')), Number(row.get('placed m³')), Number(row.get('dry kg'))]).toEqual([
        expect.closeTo(areaM2, 1),
        expect.closeTo(placedM3, 2),
        expect.closeTo(dryKg, 0),
      ]);
    }
  });
});

describe('the plan, read as a drawing in millimetres', () => {
  it('is true to its scale: the deck of 9 m × 6 m and its zones', async () => {
    await opened.page.getByRole('combobox', { name: 'Language of the files' }).selectOption('en');
    await opened.page.getByRole('combobox', { name: 'Scale of the plan' }).selectOption('50');
    const { bytes } = await saved('Plan, SVG');
    const found = await opened.page.evaluate((text) => {
      const svg = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement as unknown as SVGSVGElement;
      document.body.append(svg);
      const sizeOf = (one: SVGGraphicsElement) => {
        const { width, height } = one.getBBox();
        return [width, height];
      };
      const shapes = (layer: string) => [...svg.querySelectorAll<SVGGraphicsElement>(`g.${layer} > *`)].map(sizeOf);
      const sizes = {
        page: [
          svg.width.baseVal.valueInSpecifiedUnits,
          svg.viewBox.baseVal.width,
          svg.height.baseVal.valueInSpecifiedUnits,
          svg.viewBox.baseVal.height,
        ],
        unit: svg.getAttribute('width')!.replace(/[\d.]/g, ''),
        outline: shapes('OUTLINE'),
        zones: shapes('ZONES'),
      };
      svg.remove();
      return sizes;
    }, bytes.toString('utf8'));
    expect(found.unit).toBe('mm');
    // One unit of the drawing is one millimetre of paper.
    expect(found.page[0]).toBeCloseTo(found.page[1]!, 3);
    expect(found.page[2]).toBeCloseTo(found.page[3]!, 3);
    // 1 : 50: 9 m are 180 mm, 6 m 120 mm; zones of 3.5 m, 2 m and 0.5 m.
    expect(found.outline).toEqual([[expect.closeTo(180, 1), expect.closeTo(120, 1)]]);
    expect(found.zones).toEqual([70, 40, 10].map((heightMm) => [expect.closeTo(180, 1), expect.closeTo(heightMm, 1)]));
    expect(opened.problems).toEqual([]);
  });
});
