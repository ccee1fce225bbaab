/** Tables of a small scene: every number of the report in its column, by hand. */

import { describe, expect, it } from 'vitest';
import { EXPORT_TABLES, type ExportTableId } from '../../src/model/export-table.ts';
import { exportTable } from '../../src/project/export-tables.ts';
import { EXPORT_WORDS } from '../../src/project/export-words.ts';
import { bay, MATERIALS, read, rect, sceneOf } from '../helpers/scene-builder.ts';

const SOIL = {
  ...MATERIALS.find(({ id }) => id === 'soil')!,
  porePercent: 10,
  delivery: { unit: 'truck', kg: 1500 },
  price: { per: 'm3', amount: 50 },
} as const;

const SCENE = sceneOf({
  name: 'Hillside',
  currency: 'EUR',
  materials: [SOIL],
  tolerance: { densityPercent: 10 },
  rain: { designLpsHa: 300, extremeLpsHa: 500, annualMm: 800, filledPercent: 50 },
  deck: {
    outlets: [
      { id: 'O1', at: [2, 1], kind: 'outlet', lps: 2 },
      { id: 'V1', at: [3.9, 1], kind: 'overflow', lps: 1, invertM: 0.02 },
    ],
    bays: [{ ...bay('A1', rect(0, 0, 4, 3), { permanentKNm2: 3, imposedKNm2: 5 }), basis: { document: 'plan' } }],
    columns: [{ id: 'C1', at: [2, 1], sizeM: [0.3, 0.3] }],
    edges: [
      {
        id: 'E1',
        line: [
          [0, 0],
          [4, 0],
        ],
        kind: 'upstand',
        membraneTopM: 0.05,
      },
    ],
  },
});
const { report } = read(SCENE);
const table = (id: ExportTableId, language: 'en' | 'de' = 'en') => exportTable(id, SCENE, report, language);
/** One row by its headings. */
const row = (id: ExportTableId, at = 0, language: 'en' | 'de' = 'en') => {
  const { columns, rows } = table(id, language);
  return Object.fromEntries(columns.map(({ head }, c) => [head, rows[at][c]]));
};
const close = (value: number) => expect.closeTo(value, 9);

describe.each(EXPORT_TABLES)('%s', (id) => {
  it.each(['en', 'de'] as const)('has a heading, decimals and a cell for each column in %s', (language) => {
    const { columns, rows, note, title } = table(id, language);
    expect(new Set(columns.map(({ head }) => head)).size).toBe(columns.length);
    expect(rows.length).toBeGreaterThan(0);
    for (const cells of rows) {
      expect(cells).toHaveLength(columns.length);
      cells.forEach((cell, c) => {
        if (cell !== null) expect(typeof cell, columns[c].head).toBe(columns[c].decimals === null ? 'string' : 'number');
      });
    }
    expect(note).toMatch(language === 'en' ? /Not a structural check/ : /Kein Standsicherheitsnachweis/);
    expect(note).toContain('Hillside');
    // Longest name of a sheet, and signs it must not have
    expect(title).toMatch(/^[^\\/?*:[\]]{1,31}$/);
  });
});

it('titles are different, as sheets must be', () => {
  for (const language of ['en', 'de'] as const) {
    const titles = EXPORT_TABLES.map((id) => EXPORT_WORDS[language].tables[id].title);
    expect(new Set(titles).size).toBe(EXPORT_TABLES.length);
  }
});

describe('rows', () => {
  it('of the take-off: 1.2 m³, 1.44 loose, 1.2 and 1.8 t, 2 loads of 1.5 t, one if dry, 1.44 · 50', () => {
    expect(row('take-off')).toEqual({
      material: 'soil',
      name: 'Soil',
      'laid m²': close(12),
      'placed m³': close(1.2),
      'to order': close(1.44),
      unit: 'm³ loose',
      'dry kg': close(1200),
      'at most kg': close(1800),
      deliveries: 2,
      'governed by': 'weight',
      'deliveries if dry': 1,
      price: close(72),
      currency: 'EUR',
    });
    expect(row('take-off', 0, 'de')).toMatchObject({ Einheit: 'm³ lose', maßgebend: 'Gewicht', Fuhren: 2 });
  });

  it('of zones and stages: their shares', () => {
    expect(row('take-off by zone')).toEqual({ zone: 'Z1', material: 'soil', name: 'Soil', 'laid m²': close(12), 'placed m³': close(1.2) });
    expect(row('take-off by stage')).toMatchObject({ stage: 'substrate', 'placed m³': close(1.2) });
  });

  it('of bays: 1.4715 of 3 is 49.05 %, ± 10 % in density 44.145 and 53.955 %, basis incomplete', () => {
    expect(row('bays')).toEqual({
      bay: 'A1',
      'area m²': close(12),
      'mean kN/m²': close(1.4715),
      'worst cell kN/m²': close(1.4715),
      'worst patch of 1 m × 1 m kN/m²': close(1.4715),
      'permitted permanent kN/m²': 3,
      'use %': close(49.05),
      'use at least %': close(44.145),
      'use at most %': close(53.955),
      'imposed kN/m²': 0,
      'permitted imposed kN/m²': 5,
      'use in all %': null,
      'worst stage': 'substrate',
      'there kN/m²': close(1.4715),
      'permitted there kN/m²': 3,
      'use there %': close(49.05),
      basis: 'NOT CONFIRMED',
      document: 'plan',
      revision: null,
      date: null,
      by: null,
    });
  });

  it('of heaps: (3 − 1.4715)/12.2625 = 0.1246', () => {
    expect(row('heaps')).toEqual({
      bay: 'A1',
      stage: 'substrate',
      material: 'soil',
      name: 'Soil',
      'height m': 0.1,
      'over by kN/m²': 0,
      basis: 'NOT CONFIRMED',
    });
  });

  it('of columns: 17.658 kN are 1.8 t', () => {
    expect(row('columns')).toEqual({ column: 'C1', 'share m²': close(12), 'permanent kN': close(17.658), 'permanent t': close(1.8) });
  });

  it('of edges: membrane 0.05 over the deck, finish 0.10: −50 mm stay a number', () => {
    expect(row('edges')).toMatchObject({ edge: 'E1', 'least upstand mm': expect.closeTo(-50, 6), 'required mm': 150 });
  });
});

describe('rows of water, on a level deck of 12 m² under 100 mm of soil that holds 40 %', () => {
  it('run-off: DIN from 10 cm 0.4, the year up to 10 cm 0.5; 300 · 0.4 · 12 / 10 000 and 0.8 · 0.5 · 12', () => {
    expect(row('run-off')).toEqual({
      zone: 'Z1',
      'area m²': close(12),
      'held m³': close(0.48),
      'free l/m²': close(20),
      'peak coefficient': 0.4,
      'row of the table': 'extensive planting from 10 cm at up to 5°',
      'design rain l/s': close(0.144),
      'annual coefficient': 0.5,
      'row of the table, year': 'planting over 6 to 10 cm',
      'm³ a year': close(4.8),
      'flow in the drainage l/(s·m)': null,
      'it carries l/(s·m)': null,
    });
  });

  it('outlets: 0.144 of 2 l/s; the overflow (500 − 300 · 0.4) · 12 / 10 000 = 0.456 of 1 l/s', () => {
    expect(row('outlets')).toMatchObject({
      outlet: 'O1',
      kind: 'outlet',
      'drains m²': close(12),
      'must take l/s': close(0.144),
      'use %': close(7.2),
    });
    expect(row('outlets', 1)).toMatchObject({
      outlet: 'V1',
      'must take l/s': close(0.456),
      'use %': close(45.6),
      'runs at m': 0.02,
      'water then mm': close(20),
    });
    expect(row('outlets', 1, 'de')).toMatchObject({ Art: 'Notüberlauf' });
  });

  it('blocked: 20 mm up to the overflow, in 10 % of pores 2 l/m² or 0.01962 kN/m²', () => {
    expect(row('blocked outlets')).toMatchObject({
      outlet: 'O1',
      'depth mm': expect.closeTo(20, 3),
      'water m³': expect.closeTo(0.024, 6),
      'then into': 'V1',
      'worst bay': 'A1',
      'kN/m² there': expect.closeTo(1.49112, 6),
    });
  });
});

it('parts that the report does not have give no rows', () => {
  const plain = sceneOf();
  const without = read(plain).report;
  expect(exportTable('columns', plain, without, 'en').rows).toEqual([]);
  for (const id of ['edges', 'run-off', 'outlets', 'blocked outlets'] as const)
    expect(exportTable(id, plain, without, 'en').rows).toEqual([]);
});
