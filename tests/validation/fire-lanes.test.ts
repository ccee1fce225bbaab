/**
 * Widths of lanes for fire appliances, against the printed table.
 * Source: Dienstblatt des Senats von Berlin VI Nr. 11, 30.10.1985 (https://digital.zlb.de/viewer/fulltext/34665630_1985/71/), table of widths by outer
 * radius, transitions and set-up areas; the cell 3.2 m for 40 to 70 m from memory, as the scan is misread there. Straight widths: DIN 14090:2003, 4.2, as
 * building glossaries repeat it. Approved Document B 2019: row pump as two fire authorities repeat it, row high reach from memory.
 * International Fire Code D103.2 and D103.4 as a county repeats them; 1 ft = 0.3048 m.
 */

import { expect, it } from 'vitest';
import { fireTable } from '../../src/catalogue/fire-access.ts';
import { bendWidthM, straightWidthM } from '../../src/core/rules/route-geometry.ts';
import type { FireTable } from '../../src/model/fire-access.ts';

const table = (id: 'de-mrflfw' | 'en-adb' | 'us-ifc', grossKN = 156.96) => fireTable(id, grossKN) as FireTable;
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
