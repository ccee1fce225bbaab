/** Saved files, opened again: the workbook is unzipped and its cells read from the XML. */

import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { exportFile } from '../../src/export/export-file.ts';
import { workbookBytes } from '../../src/export/workbook.ts';
import type { ExportTable } from '../../src/project/export-tables.ts';
import { read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const TABLE: ExportTable = {
  id: 'edges',
  title: 'Anschlüsse',
  columns: [
    { head: 'Rand', decimals: null },
    { head: 'mm', decimals: 0 },
    { head: 'm²', decimals: 3 },
  ],
  rows: [
    ['E1', -35, 1234.5678901234],
    ['=1+1 & <b>', null, -0.35],
  ],
  note: 'Kein Standsicherheitsnachweis.',
};

interface SheetCell {
  /** `s` for a text of the shared list, none for a number. */
  readonly type: string | undefined;
  readonly value: string;
  readonly style: number;
}

/** Cells of one sheet by their addresses. */
function cellsOf(files: Record<string, Uint8Array>, sheet: number): Map<string, SheetCell> {
  const xml = strFromU8(files[`xl/worksheets/sheet${sheet}.xml`]);
  expect(xml).not.toContain('<f>');
  const cells = new Map<string, SheetCell>();
  for (const [, attributes, inside] of xml.matchAll(/<c ([^>]*?)(?:\/>|>(.*?)<\/c>)/g)) {
    const attribute = (name: string) => new RegExp(`\\b${name}="([^"]*)"`).exec(attributes)?.[1];
    const value = /<v>(.*?)<\/v>/.exec(inside ?? '')?.[1];
    if (value !== undefined) cells.set(attribute('r')!, { type: attribute('t'), value, style: Number(attribute('s') ?? 0) });
  }
  return cells;
}

function sharedTexts(files: Record<string, Uint8Array>): string[] {
  const xml = strFromU8(files['xl/sharedStrings.xml']);
  return [...xml.matchAll(/<t[^>]*>(.*?)<\/t>/gs)].map(([, text]) =>
    text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&'),
  );
}

const sheetNames = (files: Record<string, Uint8Array>) =>
  [...strFromU8(files['xl/workbook.xml']).matchAll(/<sheet [^>]*name="([^"]*)"/g)].map(([, name]) => name);

describe('a workbook', async () => {
  const files = unzipSync(await workbookBytes([TABLE, { ...TABLE, title: 'Leer', rows: [] }]));
  const cells = cellsOf(files, 1);
  const texts = sharedTexts(files);
  const textAt = (address: string) => {
    const { type, value } = cells.get(address)!;
    expect(type, address).toBe('s');
    return texts[Number(value)];
  };

  it('has a sheet per table, by its title', () => {
    expect(sheetNames(files)).toEqual(['Anschlüsse', 'Leer']);
  });

  it('has headings and texts as texts, also those that look like formulas', () => {
    expect(['A1', 'B1', 'C1', 'A2', 'A3'].map(textAt)).toEqual(['Rand', 'mm', 'm²', 'E1', '=1+1 & <b>']);
  });

  it('has whole numbers in cells of numbers', () => {
    for (const [address, value] of [
      ['B2', -35],
      ['C2', 1234.5678901234],
      ['C3', -0.35],
    ] as const) {
      expect(cells.get(address)!.type ?? 'n', address).toBe('n');
      expect(Number(cells.get(address)!.value), address).toBe(value);
    }
    expect(cells.has('B3')).toBe(false);
  });

  it('shows the decimals of the column', () => {
    const styles = strFromU8(files['xl/styles.xml']);
    const formats = new Map(
      [...styles.matchAll(/<numFmt [^>]*>/g)].map(([tag]) => [/numFmtId="(\d+)"/.exec(tag)![1], /formatCode="([^"]*)"/.exec(tag)![1]]),
    );
    const cellFormats = [...styles.split('<cellXfs')[1].matchAll(/<xf ([^>]*)>/g)].map(([, xf]) => /numFmtId="(\d+)"/.exec(xf)?.[1] ?? '0');
    const formatOf = (address: string) => formats.get(cellFormats[cells.get(address)!.style]);
    expect([formatOf('C2'), formatOf('C3')]).toEqual(['0.000', '0.000']);
  });

  it('says at the foot what it is not, after an empty row', () => {
    expect(textAt('A5')).toBe('Kein Standsicherheitsnachweis.');
    expect([...cells.keys()].filter((address) => address.endsWith('4'))).toEqual([]);
  });

  it('of an empty table has its headings', () => {
    expect([...cellsOf(files, 2).keys()]).toEqual(['A1', 'B1', 'C1', 'A3']);
  });
});

describe('files of a scene', () => {
  const project = read(sceneOf({ name: 'Hof “Süd” / 2', zones: [zone('Z1', rect(0, 0, 4, 3), 'soil-100')] }));

  it('take-off as CSV: bytes of UTF-8 with mark, named after the scene', async () => {
    const file = await exportFile('take-off csv', project, 'de');
    expect([file.name, file.mediaType]).toEqual(['hof-süd-2-take-off.csv', 'text/csv;charset=utf-8']);
    expect([...file.bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    // 12 m², 1.2 m³ placed, 1.44 m³ loose
    expect(new TextDecoder().decode(file.bytes)).toContain('soil;Soil;12;1,2;1,44;m³ lose;1200;1800;;;;;\r\n');
  });

  it('all tables as a workbook, the take-off first', async () => {
    const file = await exportFile('take-off xlsx', project, 'en');
    expect(file.name).toBe('hof-süd-2-tables.xlsx');
    const files = unzipSync(file.bytes);
    const loads = ['Take-off', 'Take-off by zone', 'Take-off by stage', 'Bays', 'Heap heights', 'Columns', 'Edges'];
    expect(sheetNames(files)).toEqual([...loads, 'Run-off', 'Outlets', 'Blocked outlets']);
    // 12 m² laid and 1.2 m³ placed
    const cells = cellsOf(files, 1);
    expect([Number(cells.get('C2')!.value), Number(cells.get('D2')!.value)]).toEqual([expect.closeTo(12, 9), expect.closeTo(1.2, 9)]);
  });

  it('a name without letters gives a plain one', async () => {
    expect((await exportFile('take-off csv', { ...project, scene: { ...project.scene, name: '?!' } }, 'en')).name).toBe(
      'deck-take-off.csv',
    );
  });
});
