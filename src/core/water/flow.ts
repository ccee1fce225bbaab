/**
 * Which way water runs from every cell of a filled terrain. Decks are made of planes, so the flow is split between the two
 * neighbours beside the steepest descent, in the ratio that makes its mean way exact on a plane: by the tangent of the angle.
 */

import type { Flood } from './flood.ts';
import { CLOSED, stepsAround, type WaterTerrain } from './terrain.ts';

/** Values of `Flow.facet` beyond the eight sectors. */
export const ALONG_PARENT = 8;
export const AT_EXIT = 9;
export const NOWHERE = 10;
/** Added to a facet where the cell lies across a divide and a part of its water runs the other way. */
const DIVIDED = 16;
/** Bits of the facet itself. */
const FACET = 15;

/** A divide must stand out by this much over its four neighbours together, in units: less is rounding of the levels. */
const DIVIDE_UNITS = 8;

/** Eight sectors of 45°, anticlockwise from +x: neighbour along the grid and diagonal neighbour beside each. */
const ALONG = Int8Array.of(0, 1, 1, 2, 2, 3, 3, 0);
const ACROSS = Int8Array.of(4, 4, 5, 5, 6, 6, 7, 7);

/** The part of a cell's water that runs over to the other side of a divide. */
export interface OtherSide {
  readonly facet: number;
  readonly share: number;
  /** Of all water of the cell [-]. */
  readonly part: number;
}

export interface Flow {
  readonly steps: Int32Array;
  /** Sector that the water runs in, or one of the values above. */
  readonly facet: Uint8Array;
  /** Share that goes to the diagonal neighbour of the sector [-]. */
  readonly share: Float32Array;
  readonly otherSides: ReadonlyMap<number, OtherSide>;
}

/**
 * Directions of flow.
 * @param terrain - terrain [-]
 * @param flooded - filled levels and order of filling [-]
 * @returns sector and share per cell [-]
 * @source facets after D. G. Tarboton, Water Resources Research 33 (1997), doi 10.1029/96WR03137; shared by the tangent, which no source is known for: the mean way is exact on a plane
 */
export function flowOf(terrain: WaterTerrain, flooded: Flood): Flow {
  const steps = stepsAround(terrain.width);
  const facet = new Uint8Array(terrain.level.length).fill(NOWHERE);
  const share = new Float32Array(terrain.level.length);
  steepest(flooded, steps, facet, share);
  const otherSides = new Map<number, OtherSide>();
  const descents = { steepness: new Float64Array(8), share: new Float64Array(8) };
  for (let cell = 0; cell < facet.length; cell++) {
    if (facet[cell] >= ALONG_PARENT || !standsOut(flooded.filled, steps, cell)) continue;
    if (!fallsBehind(flooded.filled, steps, cell, nearestRay(facet[cell], share[cell]))) continue;
    const other = otherSide(flooded.filled, steps, cell, facet[cell], descents);
    if (!other) continue;
    otherSides.set(cell, other);
    facet[cell] |= DIVIDED;
  }
  return { steps, facet, share, otherSides };
}

/** The hot loop, in the order of the cells in memory. Only lower neighbours are chosen, so a cell was reached after those that it runs to. */
function steepest({ filled, parent }: Flood, steps: Int32Array, facet: Uint8Array, share: Float32Array): void {
  for (let cell = 0; cell < facet.length; cell++) {
    if (parent[cell] < 0) continue;
    if (parent[cell] === cell) {
      facet[cell] = AT_EXIT;
      continue;
    }
    const own = filled[cell];
    let best = 0;
    let found = ALONG_PARENT;
    for (let f = 0; f < 8; f++) {
      const steepness = steepnessOf(own, filled[cell + steps[ALONG[f]]], filled[cell + steps[ACROSS[f]]]);
      if (steepness <= best) continue;
      best = steepness;
      found = f;
    }
    facet[cell] = found;
    if (found < ALONG_PARENT) share[cell] = shareOf(own, filled[cell + steps[ALONG[found]]], filled[cell + steps[ACROSS[found]]]);
  }
}

/** Square of the steepest fall within a sector, in units per cell; 0 for none. The diagonal beside a closed neighbour belongs to the sector on its other side. */
function steepnessOf(own: number, along: number, across: number): number {
  if (along === CLOSED) return 0;
  const s1 = own - along;
  const s2 = across === CLOSED ? 0 : along - across;
  if (s2 <= 0) return s1 > 0 ? s1 * s1 : 0;
  if (s2 < s1) return s1 * s1 + s2 * s2;
  const drop = own - across;
  return drop > 0 ? (drop * drop) / 2 : 0;
}

/** Share of the diagonal neighbour, for a sector with a fall. */
function shareOf(own: number, along: number, across: number): number {
  const s1 = own - along;
  const s2 = across === CLOSED ? 0 : along - across;
  return s2 <= 0 ? 0 : s2 < s1 ? s2 / s1 : 1;
}

/** Whether a cell lies above the mean of its four neighbours, as it does where a ridge passes. */
function standsOut(filled: Int32Array, steps: Int32Array, cell: number): boolean {
  let over = 0;
  for (let k = 0; k < 4; k++) {
    const beside = filled[cell + steps[k]];
    if (beside !== CLOSED) over += filled[cell] - beside;
  }
  return over > DIVIDE_UNITS;
}

/** The neighbours by angle, eighths of a turn anticlockwise from +x. */
const BY_ANGLE = Int8Array.of(0, 4, 1, 5, 2, 6, 3, 7);

/** Whether a neighbour behind the main way lies lower, or one at a right angle to it by half as much: quick, and true of every divide worth its share. */
function fallsBehind(filled: Int32Array, steps: Int32Array, cell: number, main: number): boolean {
  const own = filled[cell];
  const drop = own - filled[cell + steps[BY_ANGLE[main]]];
  for (let turn = 2; turn <= 6; turn++) {
    const beside = own - filled[cell + steps[BY_ANGLE[(main + turn) & 7]]];
    if (2 * beside > (turn === 2 || turn === 6 ? drop : 0)) return true;
  }
  return false;
}

/** The steepest fall of each sector of one cell. */
interface Descents {
  readonly steepness: Float64Array;
  readonly share: Float64Array;
}

/** The steepest way down on the other side of a divide, more than 60° from the main one, and how much of the cell lies there. */
function otherSide(filled: Int32Array, steps: Int32Array, cell: number, main: number, descents: Descents): OtherSide | null {
  const { steepness, share } = descents;
  for (let f = 0; f < 8; f++) {
    const [along, across] = [filled[cell + steps[ALONG[f]]], filled[cell + steps[ACROSS[f]]]];
    steepness[f] = steepnessOf(filled[cell], along, across);
    share[f] = shareOf(filled[cell], along, across);
  }
  let other = -1;
  for (let f = 0; f < 8; f++) {
    if (steepness[f] === 0 || (other >= 0 && steepness[f] <= steepness[other]) || !isOwnWay(descents, f)) continue;
    if (Math.cos(angleOf(f, share[f]) - angleOf(main, share[main])) < 0.5) other = f;
  }
  if (other < 0) return null;
  const stepOf = (f: number) => steps[share[f] < 0.5 ? ALONG[f] : ACROSS[f]];
  const part = partBeyond(filled, cell, stepOf(main), stepOf(other));
  return part > 0 ? { facet: other, share: share[other], part } : null;
}

/** Eighths of a turn. */
function nearestRay(facet: number, share: number): number {
  return (facet + (((facet & 1) === 0) === share < 0.5 ? 0 : 1)) & 7;
}

/** Anticlockwise from +x, in radians. */
function angleOf(facet: number, share: number): number {
  const turned = Math.atan(share);
  return facet % 2 === 0 ? (facet * Math.PI) / 4 + turned : ((facet + 1) * Math.PI) / 4 - turned;
}

/** Whether the steepest way of a sector is no mere edge of a steeper sector beside it. */
function isOwnWay({ steepness, share }: Descents, f: number): boolean {
  if (share[f] > 0 && share[f] < 1) return true;
  const beside = (f % 2 === 0) === (share[f] === 0) ? (f + 7) % 8 : (f + 1) % 8;
  return steepness[beside] === 0 || share[beside] === share[f];
}

/**
 * Part of a cell beyond a ridge. The slopes of both sides are read one cell further down, where the ridge is out of the way; by how
 * much a neighbour lies higher than its slope says tells how far the ridge is from the cell's middle. Exact for a ridge across both ways.
 */
function partBeyond(filled: Int32Array, cell: number, step: number, otherStep: number): number {
  const drop = filled[cell] - filled[cell + step];
  const otherDrop = filled[cell] - filled[cell + otherStep];
  const slope = slopeBeyond(filled, cell, step);
  const otherSlope = slopeBeyond(filled, cell, otherStep);
  if (!(slope > 0 && otherSlope > 0)) return 0;
  return Math.max(0, Math.min(1, 0.5 + (slope - drop - (otherSlope - otherDrop)) / (slope + otherSlope)));
}

/** Fall from the neighbour to the one behind it; the neighbour's own where that is closed. */
function slopeBeyond(filled: Int32Array, cell: number, step: number): number {
  const behind = filled[cell + 2 * step];
  return behind === CLOSED ? filled[cell] - filled[cell + step] : filled[cell + step] - behind;
}

/**
 * Sums a quantity down the flow.
 * @param flow - directions [-]
 * @param flooded - order of filling [-]
 * @param weights - what each cell brings, in any unit [m²]
 * @returns per cell what passes it, its own included; the sum over all exits is the sum of all cells reached [m²]
 * @source none: arithmetic
 */
export function accumulate(flow: Flow, flooded: Flood, weights: Float64Array): Float64Array {
  const { steps, facet, share, otherSides } = flow;
  const { order, parent } = flooded;
  const sums = weights.slice();
  for (let i = flooded.reached - 1; i >= 0; i--) {
    const cell = order[i];
    const way = facet[cell];
    let sum = sums[cell];
    if (way === AT_EXIT) continue;
    if (way === ALONG_PARENT) {
      sums[parent[cell]] += sum;
      continue;
    }
    if (way >= DIVIDED) {
      const other = otherSides.get(cell)!;
      const beyond = sum * other.part;
      const across = beyond * other.share;
      sums[cell + steps[ACROSS[other.facet]]] += across;
      sums[cell + steps[ALONG[other.facet]]] += beyond - across;
      sum -= beyond;
    }
    // The rest, not the other product: nothing is lost to rounding.
    const across = sum * share[cell];
    if (across > 0) sums[cell + steps[ACROSS[way & FACET]]] += across;
    sums[cell + steps[ALONG[way & FACET]]] += sum - across;
  }
  return sums;
}

/**
 * Where a cell's water runs to.
 * @param flow - directions [-]
 * @param cell - cell of the terrain [-]
 * @returns direction clockwise from +y; NaN at exits, in ponds and where it runs nowhere [°]
 * @source none: geometry
 */
export function bearingDeg(flow: Flow, cell: number): number {
  const way = flow.facet[cell];
  const f = way & FACET;
  if (f >= ALONG_PARENT) return Number.NaN;
  return (450 - (angleOf(f, flow.share[cell]) * 180) / Math.PI) % 360;
}

/** Up to four neighbours and what part of the water each gets. */
export interface Targets {
  readonly cells: Int32Array;
  readonly parts: Float64Array;
  count: number;
}

/**
 * Neighbours that a cell's water runs to by its directions.
 * @param flow - directions [-]
 * @param cell - cell of the terrain that has a direction: no exit, and no pond [-]
 * @param out - receives the neighbours and their parts [-]
 * @returns the same [-]
 * @source none: arithmetic
 */
export function targetsOf(flow: Flow, cell: number, out: Targets): Targets {
  const way = flow.facet[cell];
  out.count = 0;
  const other = way >= DIVIDED ? flow.otherSides.get(cell)! : null;
  addTargets(flow, cell, way & FACET, flow.share[cell], 1 - (other?.part ?? 0), out);
  if (other) addTargets(flow, cell, other.facet, other.share, other.part, out);
  return out;
}

function addTargets({ steps }: Flow, cell: number, facet: number, share: number, part: number, out: Targets): void {
  if (share < 1) {
    out.cells[out.count] = cell + steps[ALONG[facet]];
    out.parts[out.count++] = part * (1 - share);
  }
  if (share > 0) {
    out.cells[out.count] = cell + steps[ACROSS[facet]];
    out.parts[out.count++] = part * share;
  }
}

/**
 * Share of a cell's water that runs to one of its neighbours.
 * @param flow - directions [-]
 * @param flooded - parents [-]
 * @param cell - cell of the terrain [-]
 * @param k - which neighbour, in the order of `stepsAround` [-]
 * @returns share [-]
 * @source none: arithmetic
 */
export function shareTo(flow: Flow, flooded: Flood, cell: number, k: number): number {
  const way = flow.facet[cell];
  if (way < ALONG_PARENT) return sectorShare(way, flow.share[cell], k);
  if (way === ALONG_PARENT) return flooded.parent[cell] === cell + flow.steps[k] ? 1 : 0;
  if (way < DIVIDED) return 0;
  const other = flow.otherSides.get(cell)!;
  return (1 - other.part) * sectorShare(way & FACET, flow.share[cell], k) + other.part * sectorShare(other.facet, other.share, k);
}

function sectorShare(facet: number, share: number, k: number): number {
  if (k < 4) return ALONG[facet] === k ? 1 - share : 0;
  return ACROSS[facet] === k ? share : 0;
}
