/** A scene means the same wherever it lies: moved by whole cells, turned by a right angle, turned by any angle, on the national grid. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SceneFile } from '../../src/model/scene-file.ts';
import type { Project } from '../../src/project/evaluate-project.ts';
import { read } from '../helpers/scene-builder.ts';
import { expectPatchesAtTheirPlace, expectSameReport, fieldDifference } from './compare.ts';
import { shifted, turned, turnedQuarter } from './move-scene.ts';
import { gardenScene } from './random-scene.ts';

const SEED = 4711;
const gardens = fc.integer({ min: 0, max: 1e6 });

describe(`moved by whole cells (seed ${SEED})`, () => {
  it.each([0.25, 0.5, 0.3, 0.1])('cells of %f m: nothing changes', (cellM) => {
    const whole = fc.integer({ min: -400, max: 400 });
    fc.assert(
      fc.property(gardens, whole, whole, (seed, columns, rows) => {
        const scene = gardenScene(seed);
        const base = read(scene, cellM);
        const moved = read(shifted(scene, columns * cellM, rows * cellM), cellM);
        expectSameReport(moved.report, base.report, 1e-9);
        expectPatchesAtTheirPlace(moved);
        if (moved.evaluation.patchKNm2.length === base.evaluation.patchKNm2.length) {
          expect(fieldDifference(moved.evaluation.patchKNm2, base.evaluation.patchKNm2)).toBeLessThan(1e-9);
        }
      }),
      { seed: SEED, numRuns: cellM === 0.1 ? 3 : 10 },
    );
  });
});

describe(`turned by 90° (seed ${SEED})`, () => {
  it('nothing changes: sums, peaks, patches, bays, zones, stages', () => {
    fc.assert(
      fc.property(gardens, fc.constantFrom(0.25, 0.5, 0.75), (seed, cellM) => {
        const scene = gardenScene(seed);
        const base = read(scene, cellM);
        const quarter = read(turnedQuarter(scene), cellM);
        expectSameReport(quarter.report, base.report, 1e-9);
        expectPatchesAtTheirPlace(quarter);
        const { columns, rows } = base.evaluation.prepared.ground.grid;
        const turnedCell = (cell: number) => (cell % columns) * rows + rows - 1 - Math.floor(cell / columns);
        expect(fieldDifference(base.evaluation.patchKNm2, quarter.evaluation.patchKNm2, turnedCell)).toBeLessThan(1e-9);
        const full = read(turnedQuarter(turnedQuarter(turnedQuarter(turnedQuarter(scene)))), cellM);
        expectSameReport(full.report, base.report, 1e-12);
      }),
      { seed: SEED, numRuns: 12 },
    );
  });
});

/** Areas, weights and means of a project: what no turn may change. */
function sums({ report }: Project) {
  return {
    deck: report.deck,
    zones: report.zones.map(({ id, areaM2, depthMm, dryKNm2, saturatedKNm2, heldLm2 }) => ({
      id,
      areaM2,
      depth: depthMm.mean,
      dry: dryKNm2.mean,
      saturated: saturatedKNm2.mean,
      held: heldLm2.mean,
    })),
    bays: report.bays.map(({ id, areaM2, permanent, imposed }) => ({ id, areaM2, mean: permanent.meanKNm2, imposed: imposed.maxKNm2 })),
    placed: report.stages.map(({ placedKN }) => placedKN),
  };
}

/** Greatest difference between numbers at the same place, relative above 1. */
function difference(a: unknown, b: unknown): number {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) / Math.max(1, Math.abs(b));
  if (typeof a !== 'object' || a === null || b === null) return a === b ? 0 : Infinity;
  const right = Object.entries(b as object);
  return Math.max(0, ...Object.values(a).map((value, i) => difference(value, right[i][1])));
}

/** The garden with every layer of one thickness: finishes by build-up. */
function flatGarden(seed: number): SceneFile {
  const scene = gardenScene(seed);
  return { ...scene, zones: scene.zones.map(({ finish: _, ...zone }) => zone) };
}

describe(`turned by any angle (seed ${SEED})`, () => {
  const angles = fc.double({ min: 0, max: 360, noNaN: true });
  const middles = fc.tuple(fc.double({ min: -20, max: 20, noNaN: true }), fc.double({ min: -20, max: 20, noNaN: true }));

  it('constant layers: no area, weight or mean changes', () => {
    fc.assert(
      fc.property(gardens, angles, middles, (seed, deg, middle) => {
        const scene = flatGarden(seed);
        expect(difference(sums(read(turned(scene, deg, middle))), sums(read(scene)))).toBeLessThan(1e-9);
      }),
      { seed: SEED, numRuns: 25 },
    );
  });

  it('sloping make-up: areas exactly, means as far as cells of 0.25 m sample a slope', () => {
    // A boundary cell is sampled at its centre, at most half a cell from the middle of its covered part. With some 45 m of boundary per
    // zone, slopes below 5 % between finish and membrane: 45 · 0.25 · 0.125 · 0.05 / 30 m² = 2.3 mm at the very worst, all on one side.
    fc.assert(
      fc.property(gardens, angles, middles, (seed, deg, middle) => {
        const scene = gardenScene(seed);
        const [base, spun] = [read(scene).report, read(turned(scene, deg, middle)).report];
        base.zones.forEach((zone, z) => {
          expect(Math.abs(spun.zones[z].areaM2 / zone.areaM2 - 1)).toBeLessThan(1e-9);
          expect(Math.abs(spun.zones[z].depthMm.mean - zone.depthMm.mean)).toBeLessThan(2.3);
        });
        expect(Math.abs(spun.deck.saturatedKN / base.deck.saturatedKN - 1)).toBeLessThan(2e-3);
      }),
      { seed: SEED, numRuns: 15 },
    );
  });
});

describe(`on the national grid (seed ${SEED})`, () => {
  it.each([0, 0.123, 0.877])('E 4 500 000, N 5 300 000 and %f m: less than 1e-6', (fraction) => {
    fc.assert(
      fc.property(gardens, (seed) => {
        const scene = gardenScene(seed);
        const local = read(shifted(scene, fraction, fraction));
        const national = read(shifted(scene, 4_500_000 + fraction, 5_300_000 + fraction));
        expectSameReport(national.report, local.report, 1e-6);
        expectPatchesAtTheirPlace(national);
        for (const { permanent } of national.report.bays) {
          expect(permanent.patchAt[0]).toBeGreaterThan(4_500_000);
          expect(permanent.patchAt[1]).toBeGreaterThan(5_300_000);
        }
      }),
      { seed: SEED, numRuns: 8 },
    );
  });
});
