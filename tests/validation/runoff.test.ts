/**
 * Run-off coefficients and volumes.
 * DIN 1986-100:2016-12, Table 9 (Cs peak): planted rows read at http://www.info-regenwasser.de/dachbegruenung/ and repeated by public code, the
 * other rows in public code only. FLL green-roof guideline: from memory, not confirmed, but for one cross-check in a trade article
 * (handwerkundbau.at: C = 0.5 for an extensive build-up of 8 cm, 100 m² count as 50 m²).
 */

import { describe, expect, it } from 'vitest';
import { ANNUAL_TABLE, PEAK_TABLES } from '../../src/catalogue/runoff-tables.ts';
import { freeStorageLm2, meanC, runoffRow, yearlyRunoffM3 } from '../../src/core/water/runoff.ts';
import { annualC, peakC, type RunoffTableId } from '../../src/model/runoff.ts';

const planted = (table: RunoffTableId, depthMm: number, pitchDeg = 1) =>
  runoffRow(PEAK_TABLES[table], { surface: 'planted', depthMm, pitchDeg })?.c ?? null;

describe('DIN 1986-100, Table 9', () => {
  it.each([
    [0, 1, 0.5],
    [99.9, 1, 0.5],
    [100, 1, 0.4],
    [299.9, 5, 0.4],
    [300, 5, 0.2],
    [600, 0, 0.2],
    [80, 5.1, 0.7],
    [250, 30, 0.7],
  ])('planting of %d mm at %d°: %d', (depthMm, pitchDeg, c) => {
    expect(planted('din-1986-100', depthMm, pitchDeg)).toBe(c);
  });

  it('has no row for deep planting on a pitch over 5°', () => {
    expect(planted('din-1986-100', 300, 5.1)).toBeNull();
  });

  it.each([
    ['sealed', 1, 1],
    ['open joints', 1, 0.7],
    ['gravel', 3, 0.8],
    ['bare deck', 1, 1],
  ] as const)('%s at %d°: %d', (surface, pitchDeg, c) => {
    expect(runoffRow(PEAK_TABLES['din-1986-100'], { surface, depthMm: 0, pitchDeg })?.c).toBe(c);
  });

  it('knows gravel up to 3° only, and nothing of what has no name', () => {
    expect(runoffRow(PEAK_TABLES['din-1986-100'], { surface: 'gravel', depthMm: 0, pitchDeg: 3.1 })).toBeNull();
    expect(runoffRow(PEAK_TABLES['din-1986-100'], { surface: null, depthMm: 0, pitchDeg: 0 })).toBeNull();
  });

  it('says how far each row can be trusted', () => {
    const grades = Object.fromEntries(PEAK_TABLES['din-1986-100'].map(({ name, source }) => [name, source.grade]));
    expect(grades).toMatchObject({ 'intensive planting from 30 cm at up to 5°': 'secondary', 'grass pavers': 'from memory' });
    expect(
      PEAK_TABLES['fll-depth'].filter(({ surface }) => surface === 'planted').every(({ source }) => source.grade === 'from memory'),
    ).toBe(true);
  });
});

describe('FLL, from memory: depth bands with their upper limit in', () => {
  it.each([
    [19.9, null],
    [20, 0.7],
    [40, 0.7],
    [40.1, 0.6],
    [60, 0.6],
    [60.1, 0.5],
    [80, 0.5], // the one cross-check: 8 cm, C = 0.5
    [100, 0.5],
    [100.1, 0.4],
    [150, 0.4],
    [150.1, 0.3],
    [250, 0.3],
    [250.1, 0.2],
    [500, 0.2],
    [500.1, 0.1],
  ])('%d mm, flat: %s', (depthMm, c) => {
    expect(planted('fll-depth', depthMm)).toBe(c);
  });

  it.each([
    [40, 0.8],
    [60, 0.7],
    [100, 0.6],
    [150, 0.5],
    [150.1, null],
  ])('%d mm, over 5°: %s', (depthMm, c) => {
    expect(planted('fll-depth', depthMm, 6)).toBe(c);
  });

  it.each([
    [40, 0.6],
    [60, 0.55],
    [100, 0.5],
    [150, 0.45],
    [200, 0.4],
    [250, 0.4],
    [500, 0.3],
    [500.1, 0.1],
  ])('the year, %d mm: %d', (depthMm, c) => {
    expect(runoffRow(ANNUAL_TABLE, { surface: 'planted', depthMm, pitchDeg: 0 })?.c).toBe(c);
  });
});

describe('mean coefficient and volumes, worked by hand (check-values.md, 4.6)', () => {
  it('620 m² · 0.2 + 180 m² · 0.7 + 240 m² · 1.0 = 490 m² of 1040 m²: 0.471154', () => {
    const mean = meanC([
      { c: peakC(0.2), areaM2: 620 },
      { c: peakC(0.7), areaM2: 180 },
      { c: peakC(1), areaM2: 240 },
    ]);
    expect(mean).toBeCloseTo(0.471154, 6);
    expect(Number(mean) * 1040).toBeCloseTo(490, 9);
  });

  it('has no mean without an area', () => {
    expect(meanC([])).toBeNull();
    expect(meanC([{ c: peakC(0.5), areaM2: 0 }])).toBeNull();
  });

  it('800 mm on 1000 m² at 0.30: 240 m³ a year', () => {
    expect(yearlyRunoffM3(800, annualC(0.3), 1000)).toBeCloseTo(240, 9);
  });

  it('45 % of 250 mm and 12 l/m² hold 124.5 l/m²; 60 % full leaves 49.8 l/m²', () => {
    expect(freeStorageLm2(0.45 * 250 + 12, 60)).toBeCloseTo(49.8, 9);
    expect(freeStorageLm2(124.5, 100)).toBe(0);
  });
});

describe('peak and year are never swapped', () => {
  it('is refused by the types', () => {
    // @ts-expect-error a peak coefficient is no annual one
    yearlyRunoffM3(800, peakC(0.2), 1000);
    // @ts-expect-error the two never make one mean
    meanC<ReturnType<typeof peakC>>([{ c: annualC(0.3), areaM2: 1 }]);
    expect(ANNUAL_TABLE.length).toBeGreaterThan(0);
  });

  it('refuses what is no coefficient', () => {
    expect(() => peakC(1.01)).toThrow(RangeError);
    expect(() => annualC(-0.1)).toThrow(RangeError);
  });
});
