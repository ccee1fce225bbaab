/** No weight is lost or counted twice: zones and objects, bays, and cells all add up to the same deck. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellMap } from '../../src/core/maps.ts';
import type { Project } from '../../src/project/evaluate-project.ts';
import { read, rect, zone } from '../helpers/scene-builder.ts';
import { AREA_M2, gardenScene } from './random-scene.ts';

const SEED = 90210;
const gardens = fc.integer({ min: 0, max: 1e6 });
const cells = fc.constantFrom(0.1, 0.25, 0.3, 0.5, 1, 2);

/** From the map of loads, stored in 32 bits [kN]. */
function cellsKN(project: Project, stage: number | null): number {
  const { deckShare, grid } = project.evaluation.prepared.ground;
  const { values } = cellMap(project.evaluation, 'load', stage);
  return deckShare.reduce((sum, share, cell) => (share > 0 ? sum + share * grid.cellM ** 2 * values[cell] : sum), 0);
}

const sum = <T>(list: readonly T[], of: (entry: T) => number) => list.reduce((total, entry) => total + of(entry), 0);
const expectNear = (actual: number, expected: number, tolerance: number) =>
  expect(Math.abs(actual - expected)).toBeLessThan(tolerance * Math.max(1, expected));

describe(`weight is conserved (seed ${SEED})`, () => {
  it('zones + objects = deck = bays = cells', () => {
    fc.assert(
      fc.property(gardens, cells, (seed, cellM) => {
        const project = read(gardenScene(seed), cellM);
        const { deck, zones, bays } = project.report;
        expectNear(deck.areaM2, AREA_M2, 1e-9);
        expectNear(sum(zones, (entry) => entry.areaM2) + deck.unzonedM2 - deck.overlapM2, AREA_M2, 1e-9);
        expectNear(
          sum(bays, (entry) => entry.areaM2),
          AREA_M2,
          1e-9,
        );
        expectNear(sum(zones, (entry) => entry.areaM2 * entry.saturatedKNm2.mean) + deck.objectsKN, deck.saturatedKN, 1e-9);
        expectNear(sum(zones, (entry) => entry.areaM2 * entry.dryKNm2.mean) + deck.objectsKN, deck.dryKN, 1e-9);
        expectNear(
          sum(bays, (entry) => entry.areaM2 * entry.permanent.meanKNm2),
          deck.saturatedKN,
          1e-9,
        );
        expectNear(cellsKN(project, null), deck.saturatedKN, 1e-6);
      }),
      { seed: SEED, numRuns: 30 },
    );
  });

  it('objects by hand: tree, wall and block as far as they stand on the deck', () => {
    const scene = gardenScene(3);
    const objects = [
      { kind: 'tree' as const, id: 'T1', at: [2.5, 2] as const, massKg: 1500, spreadM: 1.7 },
      {
        kind: 'line' as const,
        id: 'W1',
        line: [
          [2, 8],
          [5, 4],
        ] as const,
        kNm: 6,
        widthM: 0.35,
      },
      { kind: 'block' as const, id: 'P1', outline: rect(6, 2, 7.5, 4), kNm2: 5 },
    ];
    const { report } = read({ ...scene, objects });
    // by hand: 1500 · 9.81 / 1000 = 14.715; 5 m (3-4-5) · 6 = 30; 3 m² less the part over the opening 5.3 … 6.8 × 3.1 … 5.1, which is
    // 0.8 · 0.9 = 0.72 m², · 5 = 11.4
    expect(report.deck.objectsKN).toBeCloseTo(14.715 + 30 + 11.4, 9);
  });

  it('stages: what is placed adds up to the finished garden, and each map holds what is placed, heaped and flooded', () => {
    fc.assert(
      fc.property(gardens, (seed) => {
        const project = read(gardenScene(seed));
        const placed = project.report.stages.map((stage) => stage.placedKN);
        expectNear(placed[0] + placed[1] + placed[2], project.report.deck.saturatedKN, 1e-9);
        // by hand: flood test 0.100 · 9.81 on 105 m²; heap 2.7 m · 2.4 m · 0.7 m of 1500 / 1.2 kg/m³
        expectNear(cellsKN(project, 0), placed[0] + 0.981 * AREA_M2, 1e-6);
        expectNear(cellsKN(project, 1), placed[0] + placed[1] + 2.7 * 2.4 * 0.7 * 1.25 * 9.81, 1e-6);
        expectNear(cellsKN(project, 2), project.report.deck.saturatedKN, 1e-6);
      }),
      { seed: SEED, numRuns: 15 },
    );
  });

  it('overlapping and missing zones: both build-ups count, bare deck weighs nothing', () => {
    fc.assert(
      fc.property(gardens, cells, (seed, cellM) => {
        const scene = gardenScene(seed);
        const zones = [scene.zones[0], scene.zones[2], zone('Extra', rect(1.13, 2.07, 10.31, 4.89), 'planted')];
        const project = read({ ...scene, zones }, cellM);
        const { report } = project;
        expectNear(
          sum(report.zones, (entry) => entry.areaM2 * entry.saturatedKNm2.mean) + report.deck.objectsKN,
          report.deck.saturatedKN,
          1e-9,
        );
        expectNear(report.deck.zonedM2 + report.deck.unzonedM2, AREA_M2, 1e-9);
        expectNear(
          sum(report.zones, (entry) => entry.areaM2),
          report.deck.zonedM2 + report.deck.overlapM2,
          1e-9,
        );
        expectNear(
          sum(report.bays, (entry) => entry.areaM2 * entry.permanent.meanKNm2),
          report.deck.saturatedKN,
          1e-9,
        );
        expectNear(cellsKN(project, null), report.deck.saturatedKN, 1e-6);
      }),
      { seed: SEED, numRuns: 15 },
    );
  });
});
