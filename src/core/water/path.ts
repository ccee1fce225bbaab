/** How far water has run when it leaves a cell, for the flow per metre of width in a drainage layer. */

import type { Flood } from './flood.ts';
import { ALONG_PARENT, AT_EXIT, type Flow, shareTo } from './flow.ts';
import type { WaterTerrain } from './terrain.ts';

/** Each neighbour's way back, in the order of `stepsAround`. */
const BACK = Int8Array.of(2, 3, 0, 1, 6, 7, 4, 5);
const FACET = 15;

/**
 * Weighted length of the longest way to each cell. A cell passes on what one cell's width brings, the longest inflow first: where
 * slopes run together the longest counts, where water spreads out less than a whole width arrives. On a plane it is exact: the
 * distance from its upper edge along the fall.
 * @param terrain - terrain [m]
 * @param flow - directions [-]
 * @param flooded - order of filling [-]
 * @param weights - weight of each cell's length, the run-off coefficient [-]
 * @returns per cell Σ weight · length of the longest way, the way through the cell included [m]
 * @source q = r · L per metre of width, check-values.md, 6; lengths none: geometry
 */
export function longestPaths(terrain: WaterTerrain, flow: Flow, flooded: Flood, weights: Float64Array): Float64Array {
  const { steps } = flow;
  const { order, reached } = flooded;
  const pathM = new Float64Array(weights.length);
  const inflow = new Float64Array(8);
  const lengthM = new Float64Array(8);
  for (let i = reached - 1; i >= 0; i--) {
    const cell = order[i];
    let count = 0;
    for (let k = 0; k < 8; k++) {
      const from = cell + steps[k];
      // What comes from there was reached after this cell, and so is done already.
      const share = flow.facet[from] === AT_EXIT ? 0 : shareTo(flow, flooded, from, BACK[k]);
      if (share === 0) continue;
      inflow[count] = share;
      lengthM[count++] = pathM[from];
    }
    pathM[cell] = widthOf(inflow, lengthM, count) + weights[cell] * terrain.cellM * lengthThrough(flow, flooded, cell);
  }
  return pathM;
}

/** Mean length over one width, the longest first; what is missing to a whole width has come no way. */
function widthOf(inflow: Float64Array, lengthM: Float64Array, count: number): number {
  let open = 1;
  let sum = 0;
  for (let taken = 0; taken < count && open > 0; taken++) {
    let longest = -1;
    for (let j = 0; j < count; j++) if (inflow[j] > 0 && (longest < 0 || lengthM[j] > lengthM[longest])) longest = j;
    const part = Math.min(open, inflow[longest]);
    sum += part * lengthM[longest];
    open -= part;
    inflow[longest] = 0;
  }
  return sum;
}

/** In cells: the mean step lies along the fall, 1 on and `share` across. */
function lengthThrough({ facet, share, steps }: Flow, { parent }: Flood, cell: number): number {
  if (facet[cell] === ALONG_PARENT)
    return Math.abs(parent[cell] - cell) === 1 || Math.abs(parent[cell] - cell) === steps[1] ? 1 : Math.SQRT2;
  return (facet[cell] & FACET) < ALONG_PARENT ? Math.sqrt(1 + share[cell] ** 2) : 1;
}
