/** Values per cell that go with edges and planting: falls, heights at edges, depth of substrate. */

import type { EdgeInput } from '../model/edge-input.ts';
import { deckSite } from './edge-facts.ts';
import type { Evaluation } from './evaluation.ts';
import { cellUpstands } from './rules/edges.ts';
import { type CellFalls, cellFalls } from './rules/falls.ts';

/**
 * Fall of the membrane at each cell's centre.
 * @param on - evaluation [m]
 * @returns fall [%] and bearing of the steepest descent, clockwise from +y [°]; NaN off the deck, beyond the levels and, for the bearing, where level
 * @source none: geometry
 */
export function fallAtCells(on: Evaluation): CellFalls {
  return cellFalls(deckSite(on));
}

/**
 * Height of the membrane above the finish in the cells beside edges.
 * @param on - evaluation [m]
 * @param edges - edges, local [m]
 * @returns least height per cell, NaN where no edge passes [mm]
 * @source contract.md, section 4
 */
export function upstandAtCells(on: Evaluation, edges: readonly EdgeInput[]): Float64Array {
  return cellUpstands(deckSite(on), edges);
}

/**
 * Depth of substrate in each cell: the mean over its zones that have any, by area.
 * @param on - evaluation [m]
 * @param stage - index of the stage by whose end it is placed, null for the finished garden [-]
 * @returns depth per cell, NaN where no zone has substrate [mm]
 * @source none: arithmetic
 */
export function substrateDepthAtCells(on: Evaluation, stage: number | null): Float64Array {
  const { owner, mixed, start, entryZone, entryShare } = on.field.zones;
  const depthM = on.input.zones.map((_, z) => substrateOf(on, z, stage));
  const out = new Float64Array(owner.length).fill(Number.NaN);
  for (let cell = 0; cell < owner.length; cell++) {
    const depth = owner[cell] >= 0 ? depthM[owner[cell]] : null;
    if (depth) out[cell] = 1000 * depth(on.field.makeUpM[cell]);
  }
  mixed.forEach((cell, i) => {
    let sum = 0;
    let share = 0;
    for (let e = start[i]; e < start[i + 1]; e++) {
      const depth = depthM[entryZone[e]];
      if (!depth) continue;
      sum += entryShare[e] * depth(on.field.entryMakeUpM[e]);
      share += entryShare[e];
    }
    if (share > 0) out[cell] = (1000 * sum) / share;
  });
  return out;
}

/** Depth of a zone's substrate by its make-up thickness; null where it has none. */
function substrateOf(on: Evaluation, z: number, stage: number | null): ((makeUpM: number) => number) | null {
  const placed = on.input.zones[z].buildUp.layers.filter((layer, i) => {
    const placedIn = on.plan.layerStages[z][i];
    return layer.role === 'substrate' && (stage === null || (placedIn >= 0 && placedIn <= stage));
  });
  if (placed.length === 0) return null;
  return (makeUpM) => placed.reduce((sum, layer) => sum + (layer.rangeM ? makeUpM : layer.thicknessM), 0);
}
