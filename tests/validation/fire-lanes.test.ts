/**
 * Widths of lanes for fire appliances, against the printed table.
 * Source: Dienstblatt des Senats von Berlin VI Nr. 11, 30.10.1985 (https://digital.zlb.de/viewer/fulltext/34665630_1985/71/), table of widths by outer
 * radius, transitions and set-up areas; the cell 3.2 m for 40 to 70 m from memory, as the scan is misread there. Straight widths: DIN 14090:2003, 4.2, as
 * building glossaries repeat it. Approved Document B 2019: row pump as two fire authorities repeat it, row high reach from memory.
 * Set-up areas: 3.50 m and strips as two pages on fire protection repeat the guideline, strips 11 m long and 1 m to the wall in the Berlin print, 3 to 9 m
 * from memory; 5 m by 11 m, 7 m by 12 m and 4 m as glossaries repeat DIN 14090:2003; gradient 5 % in the Berlin print.
 * International Fire Code D103.2 and D103.4 as a county repeats them; 1 ft = 0.3048 m.
 */

import { describe, expect, it } from 'vitest';
import { fireTable } from '../../src/catalogue/fire-access.ts';
import { bendWidthM, straightWidthM } from '../../src/core/rules/route-geometry.ts';
import type { FireTable } from '../../src/model/fire-access.ts';
import type { PointM, SceneObject, SceneSetUpArea } from '../../src/model/scene-file.ts';
import { bay, read, rect, type SceneParts, sceneOf } from '../helpers/scene-builder.ts';

const table = (id: 'de-mrflfw' | 'de-din14090' | 'en-adb' | 'us-ifc', grossKN = 156.96) => fireTable(id, grossKN) as FireTable;
const germany = table('de-mrflfw');

it.each([
  [10.4, null],
  [10.5, 5],
  [12, 5],
  [12.01, 4.5],
  [15, 4.5],
  [15.01, 4],
  [20, 4],
  [20.01, 3.5],
  [40, 3.5],
  [40.01, 3.2],
  [70, 3.2],
  [70.01, 3],
])('outer radius %d m: %s m wide', (outerM, widthM) => {
  expect(bendWidthM(germany.bends!, outerM)).toBe(widthM);
});

it('straight 3.0 m, and 3.5 m where bounded over more than 12 m', () => {
  expect([0, 12, 12.01].map((boundedM) => straightWidthM(germany, boundedM))).toEqual([3, 3, 3.5]);
});

it('transition 11 m, gradient 10 %, set-up 5 %', () => {
  expect([germany.transitionM, germany.gradientPercent, germany.setUpPercent].map((limit) => limit?.value)).toEqual([11, 10, 5]);
});

it('England: 3.7 m; turning circles between kerbs of 16.8 m for the pump up to 12.5 t (122.625 kN), 26.0 m for high reach', () => {
  const pump = table('en-adb', 122.625);
  const reach = table('en-adb', 166.77);
  expect(straightWidthM(pump, 50)).toBe(3.7);
  expect([8.39, 8.4].map((outerM) => bendWidthM(pump.bends!, outerM))).toEqual([null, 3.7]);
  expect([12.99, 13].map((outerM) => bendWidthM(reach.bends!, outerM))).toEqual([null, 3.7]);
});

it('United States: 20 ft, 10 %, and no radius of its own', () => {
  const code = table('us-ifc');
  expect(straightWidthM(code, 50)).toBeCloseTo(20 * 0.3048, 12);
  expect(code.gradientPercent?.value).toBe(10);
  expect(code.bends).toBeNull();
});

it('none: no table', () => {
  expect(fireTable('none', 100)).toBeNull();
});

const outline = rect(0, 0, 40, 40);
const bays = [bay('A1', outline, { permanentKNm2: 12, imposedKNm2: 5, vehicles: ['fire-16t'] })];
const wall = (id: string, y: number, x0: number, x1: number): SceneObject => {
  return { kind: 'line', id, line: [[x0, y] as PointM, [x1, y] as PointM], kNm: 3, widthM: 0.2 };
};

/** Rules of lanes and areas that a scene breaks, with value and limit. */
function broken(parts: SceneParts): unknown[] {
  const scene = sceneOf({ grid: { cellM: 1 }, ...parts, deck: { outline, bays, ...parts.deck } });
  const found = read(scene).report.findings.filter(({ rule }) => /^traffic\.(width|bend|gradient|setup)$/.test(rule));
  return found.map(({ rule, severity, value, limit }) => [rule, severity, Number(value.toFixed(4)), limit]);
}

describe('bounded on both sides: 3.50 m clear over more than 12 m', () => {
  // Lane 3.2 m wide along y = 20, between the faces of two walls; where they bound it for no longer a note says what a bounded one needs.
  const lane = { id: 'F1', vehicle: 'fire-16t', route: [[2, 20] as PointM, [38, 20] as PointM], widthM: 3.2 };
  const between = (lengthM: number, clearM: number) =>
    broken({ traffic: [lane], objects: [wall('W1', 20 + clearM / 2 + 0.1, 5, 30), wall('W2', 20 - clearM / 2 - 0.1, 10, 10 + lengthM)] });

  it.each([
    [11.9, 3.2, [['traffic.width', 'note', 3.2, 3.5]]],
    [12, 3.2, [['traffic.width', 'note', 3.2, 3.5]]],
    [12.1, 3.2, [['traffic.width', 'check', 3.2, 3.5]]],
    [12.1, 3.5, [['traffic.width', 'note', 3.2, 3.5]]],
    [12.1, 3.49, [['traffic.width', 'check', 3.49, 3.5]]],
  ])('%d m long, %d m clear', (lengthM, clearM, expected) => {
    expect(between(lengthM, clearM)).toEqual(expected);
  });
});

describe('set-up and movement areas', () => {
  const area = (widthM: number, lengthM: number, more: Partial<SceneSetUpArea> = {}): SceneParts => ({
    setUpAreas: [{ id: 'U1', kind: 'set-up', vehicle: 'fire-16t', outline: rect(10, 20, 10 + lengthM, 20 + widthM), ...more }],
  });
  const norm = { limits: { fireTable: 'de-din14090' } } as const;
  const movement = { kind: 'movement' } as const;

  it.each([
    ['guideline', area(3.5, 11), []],
    ['guideline', area(3.49, 11), [['traffic.width', 'check', 3.49, 3.5]]],
    ['guideline', area(3.5, 10.99), [['traffic.width', 'check', 10.99, 11]]],
    ['norm', { ...area(5, 11), ...norm }, []],
    ['norm', { ...area(4.99, 11), ...norm }, [['traffic.width', 'check', 4.99, 5]]],
    ['movement', area(7, 12, movement), []],
    ['movement', area(6.99, 12, movement), [['traffic.width', 'check', 6.99, 7]]],
    ['movement, norm', { ...area(7, 11.99, movement), ...norm }, [['traffic.width', 'check', 11.99, 12]]],
  ])('size, %s', (_, parts, expected) => {
    expect(broken(parts)).toEqual(expected);
  });

  // The membrane rises along y, across the area.
  it.each([
    [5, []],
    [5.01, [['traffic.gradient', 'check', 5.01, 5]]],
  ])('gradient across it of %d %%', (percent, expected) => {
    const riseM = (40 * percent) / 100;
    const spots = [...rect(0, 0, 40, 40)].map(([x, y]) => [x, y, y === 0 ? 0 : riseM] as const);
    expect(broken({ ...area(3.5, 11), deck: { outline, levels: { spots } } })).toEqual(expected);
  });

  const along = (y: number) => ({ building: [[0, y] as PointM, [40, y] as PointM] });
  it.each([
    [3, []],
    [2.99, [['traffic.setup', 'check', 2.99, 3]]],
    [9, []],
    [9.01, [['traffic.setup', 'check', 9.01, 9]]],
  ])('along a building %d m away', (distanceM, expected) => {
    expect(broken(area(3.5, 11, along(23.5 + distanceM)))).toEqual(expected);
  });

  const across = (distanceM: number) => ({ building: [[21 + distanceM, 0] as PointM, [21 + distanceM, 40] as PointM] });
  it.each([
    [1, []],
    [1.01, [['traffic.setup', 'check', 1.01, 1]]],
  ])('across to a building %d m away', (distanceM, expected) => {
    expect(broken(area(3.5, 11, across(distanceM)))).toEqual(expected);
  });

  it('strips: 2.00 m on the side away from the building along it, 1.25 m on both sides across', () => {
    const stands = [['traffic.setup', 'check', 1, 0]];
    const low = (distanceM: number) => ({ objects: [wall('W1', 20 - distanceM - 0.1, 10, 21)] });
    expect(broken({ ...area(3.5, 11, along(28)), ...low(2) })).toEqual([]);
    expect(broken({ ...area(3.5, 11, along(28)), ...low(1.99) })).toEqual(stands);
    // On the side of the building nothing is asked for.
    expect(broken({ ...area(3.5, 11, along(12)), ...low(1.99) })).toEqual([]);
    expect(broken({ ...area(3.5, 11, across(1)), ...low(1.25) })).toEqual([]);
    expect(broken({ ...area(3.5, 11, across(1)), ...low(1.24) })).toEqual(stands);
    // 5.5 m wide holds its strip itself.
    expect(broken({ ...area(5.5, 11, along(29)), ...low(0.1) })).toEqual([]);
    // Where no building is drawn one free side is enough.
    expect(broken({ ...area(3.5, 11), ...low(0.5) })).toEqual([]);
  });

  it('4 m before and after a movement area', () => {
    const behind = (distanceM: number): SceneParts => ({
      objects: [{ kind: 'block', id: 'P1', outline: rect(22 + distanceM, 20, 24 + distanceM, 22), kNm2: 3 }],
    });
    expect(broken({ ...area(7, 12, movement), ...behind(4) })).toEqual([]);
    expect(broken({ ...area(7, 12, movement), ...behind(3.99) })).toEqual([['traffic.setup', 'check', 1, 0]]);
  });
});
