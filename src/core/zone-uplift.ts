/** Where in a zone standing water lifts the light layers most: in the finished garden and while they lie open. */

import type { UpliftLayer } from '../model/uplift-input.ts';
import type { Evaluation } from './evaluation.ts';
import { NO_SHARE } from './geometry/region-cells.ts';
import { type FloatLayer, type Uplift, type UpliftFactors, worstUplift } from './water/flotation.ts';

export interface UpliftAt extends Uplift {
  readonly cell: number;
  /** Water above the membrane there [m]. */
  readonly waterM: number;
  /** Share of its volume that the lowest lifting layer pushes aside; 1 for sealed blocks [-]. */
  readonly displaces: number;
  /** Index of the stage; null for the finished garden. */
  readonly stage: number | null;
}

export interface ZoneUplift {
  /** Null where water reaches no light layer. */
  readonly finished: UpliftAt | null;
  /** Worst of the stages in which not all is laid yet. */
  readonly building: UpliftAt | null;
}

export interface Standing {
  /** Level up to which water stands at each cell; NaN where it is not known [m]. */
  readonly levelM: (cell: number) => number;
  readonly factors: UpliftFactors;
}

/**
 * Worst uplift of one zone, dry weights without plants and objects.
 * @param on - evaluation [m]
 * @param z - index of the zone [-]
 * @param layers - how its layers behave in water, bottom to top [-]
 * @param water - standing water and partial factors [m]
 * @returns worst place of the finished garden and of its stages [kN/m²]
 * @source contract.md, section 2, Flotation
 */
export function zoneUplift(on: Evaluation, z: number, layers: readonly UpliftLayer[], water: Standing): ZoneUplift {
  const lowest = layers.findIndex(({ light }) => light);
  if (lowest < 0) return { finished: null, building: null };
  const laidIn = on.plan.layerStages[z];
  const worst = (stage: number | null, placed: (layer: number) => boolean) => worstPlace(on, z, { layers, water, stage, placed });
  let building: UpliftAt | null = null;
  for (const stage of openStages(laidIn, layers)) {
    const found = worst(stage, (i) => laidIn[i] >= 0 && laidIn[i] <= stage);
    if (found && !(building && building.ratio <= found.ratio)) building = found;
  }
  return { finished: worst(null, () => true), building };
}

/** Stages at whose end a light layer lies, and layers are missing; only those that bring something. */
function openStages(laidIn: Int16Array, layers: readonly UpliftLayer[]): number[] {
  const last = laidIn.includes(-1) ? Infinity : Math.max(...laidIn);
  const firstLight = Math.min(...layers.flatMap(({ light }, i) => (light && laidIn[i] >= 0 ? [laidIn[i]] : [])));
  return [...new Set(laidIn)].filter((stage) => stage >= firstLight && stage < last).sort((a, b) => a - b);
}

interface Look {
  readonly layers: readonly UpliftLayer[];
  readonly water: Standing;
  readonly stage: number | null;
  readonly placed: (layer: number) => boolean;
}

function worstPlace(on: Evaluation, z: number, { layers, water, stage, placed }: Look): UpliftAt | null {
  const { cells, shares } = on.prepared.zones[z];
  const made = on.makeUps[z].thicknessM;
  const laid = on.input.zones[z].buildUp.layers.flatMap((layer, i) => (placed(i) ? [{ layer, ...layers[i] }] : []));
  const lowest = laid.findIndex(({ light }) => light);
  const belowM = laid.slice(0, lowest).reduce((sum, { layer }) => sum + (layer.rangeM ? layer.rangeM.min : layer.thicknessM), 0);
  let worst: UpliftAt | null = null;
  for (let i = 0; i < cells.length; i++) {
    const waterM = water.levelM(cells[i]) - on.prepared.deckLevelsM[cells[i]];
    // Also false where no level is known.
    if (!(waterM > belowM) || shares[i] <= NO_SHARE) continue;
    const makeUpM = made[made.length === 1 ? 0 : i];
    const stack = laid.map(({ layer, light, displaces }): FloatLayer => {
      const thicknessM = layer.rangeM ? makeUpM : layer.thicknessM;
      return { thicknessM, weightKNm2: layer.dryFixedKNm2 + layer.dryPerMKNm3 * thicknessM, light, displaces };
    });
    const found = worstUplift(stack, waterM, water.factors);
    if (found && !(worst && worst.ratio <= found.ratio))
      worst = { ...found, cell: cells[i], waterM, stage, displaces: laid[found.layer].displaces };
  }
  return worst && { ...worst, layer: on.input.zones[z].buildUp.layers.indexOf(laid[worst.layer].layer) };
}
