/** Cases an independent review found: narrow loads in windows, two limits in one bay, cells that only graze a zone, nets of breaklines. */

import { describe, expect, it } from 'vitest';
import { coreLog } from '../../src/core/core-log.ts';
import { cellMap } from '../../src/core/maps.ts';
import type { Role } from '../../src/model/roles.ts';
import { bay, buildUp, byId, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

/** Saturated soil of the builder, 1500 · 9.81/1000 [kN/m³]; zones of 0.10 m unless told otherwise. */
const SOIL_KNM3 = 14.715;
const YARD = rect(0, 0, 10, 6);

describe('a wall narrower than a cell', () => {
  // 12 kN/m, 0.3 m wide: it fits whole into any window whose centre is within 0.35 m of its axis.
  const wall = (y: number, cellM: number) => {
    const line: [number, number][] = [
      [0.5, y],
      [9.5, y],
    ];
    return read(sceneOf({ deck: { outline: YARD }, objects: [{ kind: 'line', id: 'W', line, kNm: 12, widthM: 0.3 }] }), cellM).report;
  };

  it.each([0.1, 0.25, 0.5])('counts whole in a 1 m window, whatever the cells: %s m', (cellM) => {
    // by hand: 12 kN on the metre of wall in the window, and the soil
    for (const y of [2.01, 2.13, 2.2, 2.37]) expect(wall(y, cellM).bays[0].permanent.patchKNm2).toBeCloseTo(12 + 0.1 * SOIL_KNM3, 9);
  });

  it('counts its whole weight once', () => {
    expect(wall(2.13, 0.25).deck.objectsKN).toBeCloseTo(9 * 12, 9);
  });
});

it('a bay with a permanent and a total limit is judged alike by map and core log: by the limit nearer to being reached', () => {
  // 1.4715; with imposed 5: 6.4715. Of 10 permanent 14.7 %, of 6 in all 107.9 %.
  const zones = [zone('Z', YARD, 'soil-100', { imposedKNm2: 5 })];
  const { evaluation } = read(sceneOf({ deck: { outline: YARD, bays: [bay('A', YARD, { permanentKNm2: 10, totalKNm2: 6 })] }, zones }));
  const cell = 500;
  const log = coreLog(evaluation, cell, null);
  expect([log?.permittedKNm2, log?.permittedBasis]).toEqual([6, 'total']);
  expect(log?.utilisation).toBeCloseTo((0.1 * SOIL_KNM3 + 5) / 6, 9);
  expect(cellMap(evaluation, 'utilisation', null).values[cell]).toBeCloseTo((0.1 * SOIL_KNM3 + 5) / 6, 6);
});

it('a zone is not called too high for what only the surface beyond its edge lacks', () => {
  // The deck rises 2 % in x; the finish leaves exactly the least make-up at the zone's edge x = 9.755. The cell 9.75 … 10
  // has its centre at 9.875, outside the zone, where 2.4 mm would be missing.
  const edge = 9.755;
  const spots: [number, number, number][] = YARD.map(([x, y]) => [x, y, 0.02 * x]);
  const buildups = [buildUp('fill', [{ material: 'soil', thicknessMm: { min: 100, max: 500, nominal: 200 } }])];
  const zones = [zone('Z', rect(0, 0, edge, 6), 'fill', { finish: { kind: 'level', levelM: 0.02 * edge + 0.1 } })];
  const { report } = read(sceneOf({ deck: { outline: YARD, levels: { spots } }, buildups, zones }));
  expect(report.findings.filter((finding) => finding.rule === 'depth.short').map((finding) => finding.severity)).toEqual(['note']);
  expect(byId(report.zones, 'Z').shortM2).toBeGreaterThan(0);
});

it('levels given by far breaklines alone reach the deck by their nearest point', () => {
  const line = (x: number): [number, number, number][] => [
    [x, 0, 5],
    [x, 10, 5],
  ];
  const { report } = read(sceneOf({ deck: { outline: YARD, levels: { spots: [], breaklines: [line(200), line(210)] } } }));
  // 5.000 and 100 mm of soil
  expect(report.zones[0].finishedM.min).toBeCloseTo(5.1, 9);
  expect(report.zones[0].finishedM.max).toBeCloseTo(5.1, 9);
});

it('a very small bay gets the imposed load of the zone it lies in', () => {
  const bays = [bay('A', YARD), bay('tiny', rect(2, 2, 2.2, 2.2), { permanentKNm2: 12, imposedKNm2: 1 })];
  const zones = [zone('Z', YARD, 'soil-100', { imposedKNm2: 5 })];
  const { report } = read(sceneOf({ deck: { outline: YARD, bays }, zones }));
  expect(byId(report.bays, 'tiny').imposed).toEqual({ maxKNm2: 5, permittedKNm2: 1, utilisation: 5 });
});

describe('vegetation in the stages', () => {
  const planted = buildUp('planted', [{ material: 'soil', thicknessMm: 100 }], { vegetation: { form: 'perennials', kNm2: 0.2 } });
  const staged = (roles: readonly (readonly Role[])[]) => {
    const stages = roles.map((list, i) => ({ id: `S${i + 1}`, name: `Stage ${i + 1}`, place: [{ roles: list }] }));
    return read(sceneOf({ deck: { outline: YARD }, buildups: [planted], zones: [zone('Z', YARD, 'planted')], stages })).report;
  };

  it('is out of order before its substrate', () => {
    const order = staged([['vegetation'], ['substrate']]).findings.filter((finding) => finding.rule === 'stage.order');
    expect(order.map((finding) => finding.where)).toEqual([{ zone: 'Z', stage: 'S1' }]);
  });

  it('comes with the top layer where no stage names it, and is left with it', () => {
    // 60 m² of soil and planting
    expect(staged([['substrate']]).stages[0].placedKN).toBeCloseTo(60 * (0.1 * SOIL_KNM3 + 0.2), 9);
    const left = staged([['protection']]).findings.filter((finding) => finding.rule === 'stage.left');
    expect(left[0].says).toContain('vegetation');
  });

  it('is derived with the rest from an empty list of stages', () => {
    expect(staged([]).stages.map((stage) => stage.id)).toEqual(['substrate', 'vegetation']);
  });
});
