/**
 * The deck shared out among its columns, each part to the nearest one, and the permanent load on every share. For the
 * engineer's punching check; a share by distance knows nothing of stiffness and is not a support reaction.
 */

import type { ColumnInput, Region } from '../../model/deck-input.ts';
import { type BayCells, layBays, splitAmongBays } from '../geometry/bay-split.ts';
import { clipSide } from '../geometry/convex-clip.ts';
import type { DeckGround, RegionCells } from '../geometry/region-cells.ts';
import { type Bounds, boundsOf } from '../geometry/ring.ts';
import type { StackCoefficients } from '../layers/coefficients.ts';
import { type ZoneBayShare, zoneBayShare, zonesInBayKN } from './bays.ts';
import { layStanding } from './standing.ts';

/** Shares that depend on drawn shapes only. */
export interface ColumnCells {
  readonly cells: BayCells;
  /** Per zone: its parts of the cells that several columns share. */
  readonly zonePieces: readonly ReturnType<typeof splitAmongBays>[];
  /** Per column: weight of all objects on its share [kN]. */
  readonly objectsKN: Float64Array;
}

export interface ColumnShare {
  readonly shareM2: number;
  /** Finished garden, saturated. */
  readonly permanentKN: number;
}

/**
 * Part of a box that is nearer to each point than to any other. Of points in one place the first has the part, the others none.
 * @param points - points, local [m]
 * @param box - box to share out [m]
 * @returns convex regions, in the order of the points; empty rings where a point has no part [m]
 * @source none: geometry; the box cut by the perpendicular bisectors
 */
export function nearestRegions(points: readonly { readonly x: number; readonly y: number }[], box: Bounds): Region[] {
  const corners = [box.minX, box.minY, box.maxX, box.minY, box.maxX, box.maxY, box.minX, box.maxY];
  return points.map((own, i) => {
    let part = corners;
    for (let j = 0; j < points.length && part.length > 0; j++) {
      const a = points[j].x - own.x;
      const b = points[j].y - own.y;
      if (j === i) continue;
      if (a === 0 && b === 0) part = j < i ? [] : part;
      else part = clipSide(part, a, b, a * (own.x + a / 2) + b * (own.y + b / 2));
    }
    return { outer: Float64Array.from(part), holes: [] };
  });
}

/**
 * Shares the deck out among its columns.
 * @param deck - deck on its grid [-]
 * @param columns - columns, local [m]
 * @param zones - regions of the zones and their cells [-]
 * @param objects - pieces of even pressure per object [kN/m²]
 * @returns cells, pieces of zones and weights of objects per column [kN]
 * @source contract.md, section 2, Column share
 */
export function layColumns(
  deck: DeckGround,
  columns: readonly ColumnInput[],
  zones: readonly { readonly region: Region; readonly laid: RegionCells }[],
  objects: readonly { readonly pieces: Parameters<typeof layStanding>[3] }[],
): ColumnCells {
  const cells = layBays(deck, nearestRegions(columns, boundsOf(deck.region.outer)));
  const objectsKN = new Float64Array(columns.length);
  for (const { pieces } of objects) {
    layStanding(deck, cells, null, pieces).bayKN.forEach((weightKN, c) => {
      objectsKN[c] += weightKN;
    });
  }
  return { cells, zonePieces: zones.map(({ region, laid }) => splitAmongBays(deck, cells, region, laid)), objectsKN };
}

/**
 * Load on every column's share.
 * @param on - shares of the columns [-]
 * @param zones - cells, coefficients and make-up thicknesses of every zone [kN/m²]
 * @param cellM - side of a cell [m]
 * @returns area and permanent load per column, in the order given [kN]
 * @source contract.md, section 2, Column share
 */
export function columnShares(
  on: ColumnCells,
  zones: readonly { readonly laid: RegionCells; readonly stack: StackCoefficients; readonly makeUpM: Float64Array }[],
  cellM: number,
): ColumnShare[] {
  const shares: ZoneBayShare[] = zones.map(({ laid, makeUpM }, z) => zoneBayShare(laid, on.zonePieces[z], on.cells, makeUpM, cellM));
  const loads = zones.map(({ stack }) => stack.saturated);
  return on.cells.laid.map(({ areaM2 }, c) => ({ shareM2: areaM2, permanentKN: zonesInBayKN(shares, loads, c) + on.objectsKN[c] }));
}
