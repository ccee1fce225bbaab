/** Between what and what a bay's load may lie within the tolerances of its layers. */

import type { FindingFact } from '../model/finding.ts';
import type { Evaluation, Patch } from './evaluation.ts';
import { at, ROUNDING } from './findings.ts';
import type { Affine } from './layers/coefficients.ts';
import { coefficientArrays, zoneLoads } from './loads/field.ts';
import { windowSums } from './loads/patch.ts';
import { type LayerTolerance, tolerantLoad } from './loads/tolerance.ts';

/** Load of the finished garden on a bay's worst patch of 1 m × 1 m, against one of its limits. */
export interface LoadBand {
  readonly rule: 'load.permanent' | 'load.total';
  readonly limitKNm2: number;
  readonly plannedKNm2: number;
  readonly low: Patch;
  readonly high: Patch;
}

/**
 * Bands of all bays. Objects, plants and imposed loads count as planned.
 * @param on - evaluation [kN/m²]
 * @param toleranceOf - tolerance of a material by its id [m]
 * @returns per bay one band for each of its limits; none where it has no deck [kN/m²]
 * @source contract.md, section 2, Bay result; every layer thicker and heavier, or thinner and lighter
 */
export function loadBands(on: Evaluation, toleranceOf: (materialId: string) => LayerTolerance): LoadBand[][] {
  const low = differences(on, toleranceOf, -1);
  const high = differences(on, toleranceOf, 1);
  const { totalPatchKNm2 } = on;
  return on.input.bays.map((bay, b) => {
    const { patch, total } = on.bays[b];
    const cells = on.prepared.bays.judged[b];
    const band = (rule: LoadBand['rule'], limitKNm2: number, planned: Patch, patches: Float64Array): LoadBand => ({
      rule,
      limitKNm2,
      plannedKNm2: planned.kNm2,
      low: greatestSum(patches, low, cells),
      high: greatestSum(patches, high, cells),
    });
    const found: LoadBand[] = [];
    if (bay.permanentKNm2 !== null && patch.cell >= 0) found.push(band('load.permanent', bay.permanentKNm2, patch, on.patchKNm2));
    if (bay.totalKNm2 !== null && total && totalPatchKNm2) found.push(band('load.total', bay.totalKNm2, total.patch, totalPatchKNm2));
    return found;
  });
}

/** What the tolerances add to the mean over each cell's window; in the scratch field, so copied [kN/m²]. */
function differences(on: Evaluation, toleranceOf: (materialId: string) => LayerTolerance, way: 1 | -1): Float64Array {
  const { ground, scratch, reach, deckSums } = on.prepared;
  const { columns, rows } = ground.grid;
  const loads = on.input.zones.map((zone, z): Affine => {
    const planned = on.stacks[z].saturated;
    const off = tolerantLoad(zone, planned, toleranceOf, way);
    return { fixed: off.fixed - planned.fixed, perM: off.perM - planned.perM };
  });
  const whole = { column0: 0, column1: columns, row0: 0, row1: rows };
  zoneLoads(on.field, coefficientArrays(loads), whole, scratch.loads);
  windowSums(scratch.loads, ground.grid, reach, whole, scratch.sums);
  return scratch.sums.map((sum, cell) => (deckSums[cell] > 0 ? sum / deckSums[cell] : 0));
}

function greatestSum(patches: Float64Array, added: Float64Array, cells: Int32Array): Patch {
  let best: Patch = { kNm2: -Infinity, cell: -1 };
  for (const cell of cells) {
    const kNm2 = patches[cell] + added[cell];
    if (kNm2 > best.kNm2) best = { kNm2, cell };
  }
  return best;
}

/**
 * Bays that are within a limit as planned and could go over it within the tolerances.
 * @param on - evaluation [-]
 * @param bands - bands of all bays [kN/m²]
 * @returns facts of `load.permanent` and `load.total` [-]
 * @source none: arithmetic
 */
export function bandFacts(on: Evaluation, bands: readonly (readonly LoadBand[])[]): FindingFact[] {
  return on.input.bays.flatMap((bay, b) =>
    bands[b].flatMap(({ rule, limitKNm2, plannedKNm2, high }): FindingFact[] => {
      const most = limitKNm2 * (1 + ROUNDING);
      if (plannedKNm2 > most || high.kNm2 <= most) return [];
      const facts = { why: 'tolerance', plannedKNm2 };
      const where = { bay: bay.id, ...at(on, high.cell) };
      return [{ rule, severity: 'check', where, value: high.kNm2, limit: limitKNm2, unit: 'kN/m²', facts }];
    }),
  );
}
