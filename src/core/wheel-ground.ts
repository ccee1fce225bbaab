/** What lies under a wheel: zone, make-up thickness, bays, and the tops of the layers that are there in its run's stage. */

import type { WheelLayer } from '../model/wheel-input.ts';
import type { Evaluation } from './evaluation.ts';
import { cellAt } from './geometry/grid.ts';
import { isInside } from './geometry/ring.ts';
import type { Affine } from './layers/coefficients.ts';
import { firstAtLeast } from './loads/field.ts';
import { type LayerTop, layerTops } from './loads/wheel-stress.ts';

/** Zone (-1 on bare deck) and make-up thickness at a place. */
export interface Ground {
  readonly zone: number;
  readonly makeUpM: number;
}

const BARE: readonly LayerTop[] = [
  { layer: -1, spread: { fixed: 0, perM: 0 }, above: { fixed: 0, perM: 0 }, depth: { fixed: 0, perM: 0 } },
];

/**
 * Value of an affine quantity.
 * @param value - fixed part and part per metre of make-up layer [-]
 * @param makeUpM - thickness of the make-up layer [m]
 * @returns value [-]
 * @source none: arithmetic
 */
export function at({ fixed, perM }: Affine, makeUpM: number): number {
  return fixed + perM * makeUpM;
}

/**
 * What lies at a place.
 * @param on - evaluation [-]
 * @param x - place, local [m]
 * @param y - place, local [m]
 * @returns zone and make-up thickness; null off the deck [m]
 * @source none: geometry
 */
export function groundAt({ input, prepared, field }: Evaluation, x: number, y: number): Ground | null {
  const cell = cellAt(prepared.ground.grid, x, y);
  if (cell < 0) return null;
  if (prepared.ground.deckShare[cell] < 1 && !isInside(input.deck, x, y)) return null;
  const { owner, mixed, start, entryZone } = prepared.zoneCells;
  if (owner[cell] >= 0) return { zone: owner[cell], makeUpM: field.makeUpM[cell] };
  if (owner[cell] === -2) {
    const i = firstAtLeast(mixed, cell);
    for (let e = start[i]; e < start[i + 1]; e++) {
      if (isInside(input.zones[entryZone[e]].region, x, y)) return { zone: entryZone[e], makeUpM: field.entryMakeUpM[e] };
    }
  }
  return { zone: -1, makeUpM: 0 };
}

/**
 * Bays at a place.
 * @param on - evaluation [-]
 * @param x - place, local [m]
 * @param y - place, local [m]
 * @returns indices of the bays, none off the deck [-]
 * @source none: geometry
 */
export function baysAt({ input, prepared }: Evaluation, x: number, y: number): readonly number[] {
  const cell = cellAt(prepared.ground.grid, x, y);
  if (cell < 0) return [];
  const sole = prepared.bays.sole[cell];
  if (sole === -1) return [];
  if (prepared.ground.deckShare[cell] < 1 && !isInside(input.deck, x, y)) return [];
  if (sole >= 0) return [sole];
  const shared = prepared.bays.shared.get(cell) ?? [];
  return shared.filter(({ bay }) => isInside(input.bays[bay].region, x, y)).map(({ bay }) => bay);
}

/**
 * Tops of the layers of a zone that are there in a stage, the membrane last.
 * @param on - evaluation [-]
 * @param layers - per zone how its layers spread and bear [kPa]
 * @param stage - index of the stage, null for the finished deck [-]
 * @returns function from a zone (-1 for bare deck) to its tops, which it keeps [-]
 * @source contract.md, section 2, Wheels and Stages
 */
export function topsInStage(
  on: Evaluation,
  layers: readonly (readonly WheelLayer[])[],
  stage: number | null,
): (zone: number) => readonly LayerTop[] {
  const known = new Map<number, readonly LayerTop[]>();
  const { layerStages, vegetationStages } = on.plan;
  const placed = (stageOf: number) => stage === null || (stageOf >= 0 && stageOf <= stage);
  return (zone) => {
    if (zone < 0) return BARE;
    const kept = known.get(zone);
    if (kept) return kept;
    const present = (layer: number) => placed(layerStages[zone][layer]);
    const found = layerTops(on.input.zones[zone].buildUp, layers[zone], present, placed(vegetationStages[zone]));
    known.set(zone, found);
    return found;
  };
}
