/** Whether regions tile the deck: gaps and overlaps with area and place, exact in every cell. */

import type { Region } from '../../model/deck-input.ts';
import { sharedInCell } from './cell-overlap.ts';
import type { DeckGround } from './region-cells.ts';
import type { ZoneCells } from './zone-cells.ts';

/** Shares that differ by less than this tile the cell [-]. */
const TILED = 1e-9;
/** Common shares below this are rounding of a cell's geometry [-]. */
const NO_COMMON_SHARE = 1e-10;
/** Gaps and overlaps below this are rounding of the drawing [m²]. */
const NO_AREA_M2 = 1e-6;

export interface Overlap {
  readonly a: number;
  readonly b: number;
  readonly areaM2: number;
  /** Cell with the largest part of it. */
  readonly cell: number;
}

export interface Gap {
  readonly areaM2: number;
  readonly cell: number;
}

export interface Tiling {
  /** Deck covered by at least one region [m²]. */
  readonly coveredM2: number;
  readonly gapM2: number;
  /** Connected gaps, largest first. */
  readonly gaps: readonly Gap[];
  /** Area counted too often: all regions together less what they cover [m²]. */
  readonly overlapM2: number;
  /** Pairs that overlap, largest first. */
  readonly overlaps: readonly Overlap[];
}

/**
 * Finds gaps and overlaps.
 * @param deck - deck on its grid [-]
 * @param regions - regions, local [m]
 * @param cells - who lies on which cell, from the same regions [-]
 * @returns covered, gap and overlap areas with their places [m²]
 * @source none: geometry; union by inclusion and exclusion where more than one boundary passes through a cell
 */
export function checkTiling(deck: DeckGround, regions: readonly Region[], cells: ZoneCells): Tiling {
  const cellAreaM2 = deck.grid.cellM ** 2;
  const gapShare = new Float64Array(deck.deckShare.length);
  const pairs = new Map<string, { a: number; b: number; area: number; cell: number; most: number }>();
  let counted = cells.entryShare.reduce((sum, share) => sum + share, 0);
  for (let cell = 0; cell < gapShare.length; cell++) {
    if (cells.owner[cell] === -1) gapShare[cell] = deck.deckShare[cell];
    else if (cells.owner[cell] >= 0) counted += 1;
  }
  for (let i = 0; i < cells.mixed.length; i++) {
    const cell = cells.mixed[i];
    const from = cells.start[i];
    const to = cells.start[i + 1];
    let sum = 0;
    for (let e = from; e < to; e++) sum += cells.entryShare[e];
    const onDeck = deck.deckShare[cell];
    // Shares that add up prove nothing where several boundaries cross a cell: an overlap may hide a gap.
    if (to - from === 1) {
      if (onDeck - sum > TILED) gapShare[cell] = onDeck - sum;
      continue;
    }
    const zones = [...cells.entryZone.subarray(from, to)];
    const shares = [...cells.entryShare.subarray(from, to)];
    const common = (members: readonly number[]) =>
      sharedInCell(deck.grid, cell, [...members.map((m) => regions[zones[m]]), ...(onDeck < 1 ? [deck.region] : [])]);
    const union = unionShare(shares, common, (a, b, share) => {
      const key = `${zones[a]} ${zones[b]}`;
      const pair = pairs.get(key) ?? { a: zones[a], b: zones[b], area: 0, cell, most: 0 };
      pair.area += share * cellAreaM2;
      if (share > pair.most) {
        pair.most = share;
        pair.cell = cell;
      }
      pairs.set(key, pair);
    });
    gapShare[cell] = Math.max(0, onDeck - union);
  }
  const gaps = connectedGaps(gapShare, deck);
  const gapM2 = gaps.reduce((total, gap) => total + gap.areaM2, 0);
  const overlaps = [...pairs.values()].filter((p) => p.area > NO_AREA_M2).map((p) => ({ a: p.a, b: p.b, areaM2: p.area, cell: p.cell }));
  overlaps.sort((p, q) => q.areaM2 - p.areaM2);
  return {
    coveredM2: deck.areaM2 - gapM2,
    gapM2,
    gaps: gaps.filter((gap) => gap.areaM2 > NO_AREA_M2),
    overlapM2: overlaps.length === 0 ? 0 : counted * cellAreaM2 - (deck.areaM2 - gapM2),
    overlaps,
  };
}

/** Inclusion and exclusion; only sets whose members all meet are followed further. */
function unionShare(
  shares: readonly number[],
  common: (members: readonly number[]) => number,
  met: (a: number, b: number, share: number) => void,
): number {
  let union = shares.reduce((a, b) => a + b, 0);
  const grow = (members: readonly number[], sign: number): void => {
    for (let next = members[members.length - 1] + 1; next < shares.length; next++) {
      const set = [...members, next];
      const share = common(set);
      if (share <= NO_COMMON_SHARE) continue;
      if (set.length === 2) met(set[0], set[1], share);
      union += sign * share;
      grow(set, -sign);
    }
  };
  for (let first = 0; first < shares.length; first++) grow([first], -1);
  return union;
}

function connectedGaps(gapShare: Float64Array, deck: DeckGround): Gap[] {
  const { columns, rows, cellM } = deck.grid;
  const seen = new Uint8Array(gapShare.length);
  const gaps: Gap[] = [];
  for (let seed = 0; seed < gapShare.length; seed++) {
    if (gapShare[seed] <= TILED || seen[seed] === 1) continue;
    seen[seed] = 1;
    const stack = [seed];
    let share = 0;
    let cell = seed;
    while (stack.length > 0) {
      const at = stack.pop()!;
      share += gapShare[at];
      if (gapShare[at] > gapShare[cell]) cell = at;
      const column = at % columns;
      const row = (at - column) / columns;
      for (let dr = -1; dr <= 1; dr++) {
        for (let dc = -1; dc <= 1; dc++) {
          const c = column + dc;
          const r = row + dr;
          if (c < 0 || r < 0 || c >= columns || r >= rows) continue;
          const near = r * columns + c;
          if (gapShare[near] <= TILED || seen[near] === 1) continue;
          seen[near] = 1;
          stack.push(near);
        }
      }
    }
    gaps.push({ areaM2: share * cellM * cellM, cell });
  }
  return gaps.sort((p, q) => q.areaM2 - p.areaM2);
}
