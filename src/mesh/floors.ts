/** Floors of the exploded view: which layers rise together, by how much, and how thick sheets are drawn there. */

import { ROLES, type Role } from '../model/roles.ts';

/** Thickness a sheet is drawn with when exploded [m]. */
export const DRAWN_SHEET_M = 0.02;

/** Least gap between floors [m], and as a share of the deck's size [-]. */
const LEAST_GAP_M = 0.25;
const GAP_SHARE = 0.03;

export interface StackLayer {
  readonly role: Role;
  /** False for a layer without thickness of its own: it stays with the layer below. */
  readonly drawn: boolean;
}

/**
 * Floor of every layer: like roles of all build-ups on one floor where their order allows it, the order always kept,
 * no floor without a drawn layer.
 * @param stacks - layers of each zone, bottom to top [-]
 * @returns floors of each zone's layers, 1 and up; 0 for undrawn layers with nothing below [-]
 * @source none: arithmetic
 */
export function layerFloors(stacks: readonly (readonly StackLayer[])[]): number[][] {
  const used = new Set<number>([0]);
  const wide = stacks.map((stack) => {
    let floor = 0;
    return stack.map((layer) => {
      if (layer.drawn) {
        floor = Math.max(floor + 1, ROLES.indexOf(layer.role) + 1);
        used.add(floor);
      }
      return floor;
    });
  });
  const order = [...used].sort((p, q) => p - q);
  const compact = new Map(order.map((floor, index) => [floor, index]));
  return wide.map((floors) => floors.map((floor) => compact.get(floor) as number));
}

export interface DrawnExtra {
  readonly bottomM: number;
  readonly topM: number;
}

/**
 * Height that drawing thin sheets thicker adds below and above each layer of a stack.
 * @param thicknessesM - greatest thickness of each layer, bottom to top; 0 is not drawn [m]
 * @returns added height of each layer's lower and upper face [m]
 * @source none: arithmetic
 */
export function drawnExtras(thicknessesM: readonly number[]): DrawnExtra[] {
  let sumM = 0;
  return thicknessesM.map((thicknessM) => {
    const bottomM = sumM;
    if (thicknessM > 0) sumM += Math.max(0, DRAWN_SHEET_M - thicknessM);
    return { bottomM, topM: sumM };
  });
}

/** Lowest and highest point of all parts of a floor, drawn thicker [m]; lowest above highest where it has none. */
export interface FloorRange {
  readonly lowM: number;
  readonly highM: number;
}

/**
 * Lifts at which every floor lies clear above all floors below it.
 * @param ranges - range of each floor before lifting, from the slab up [m]
 * @param gapM - gap between floors [m]
 * @returns lift of each floor, never falling; 0 for the slab [m]
 * @source none: arithmetic
 */
export function floorLifts(ranges: readonly FloorRange[], gapM: number): Float64Array {
  const lifts = new Float64Array(ranges.length);
  let reachedM = -Infinity;
  ranges.forEach(({ lowM, highM }, floor) => {
    const before = floor === 0 ? 0 : lifts[floor - 1];
    const empty = lowM > highM;
    lifts[floor] = empty || reachedM === -Infinity ? before : Math.max(before, reachedM + gapM - lowM);
    if (!empty) reachedM = highM + lifts[floor];
  });
  return lifts;
}

/**
 * Gap between floors that can be read at the size of a deck.
 * @param deckSizeM - longer side of the deck's bounds [m]
 * @returns gap [m]
 * @source none: arithmetic; own choice of 0.25 m or 3 % of the size, whichever is larger
 */
export function floorGapM(deckSizeM: number): number {
  return Math.max(LEAST_GAP_M, GAP_SHARE * deckSizeM);
}
