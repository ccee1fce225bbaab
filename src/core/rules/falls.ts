/** Falls of the surfaces that carry water off: the membrane by the triangles of its net, and paved finishes. */

import type { BuildUpInput } from '../../model/deck-input.ts';
import type { GridShape } from '../../model/maps.ts';
import { areaInConvexM2, clipConvex } from '../geometry/convex-clip.ts';
import { cellCentreM } from '../geometry/grid.ts';
import type { RegionCells } from '../geometry/region-cells.ts';
import { centroidM, isInside } from '../geometry/ring.ts';
import { type NetSurface, triangleSlopes } from '../levels/surface.ts';
import type { DeckSite } from './deck-site.ts';

/** Falls this little under a limit are rounding of the levels [%]. */
const ROUNDING_PERCENT = 1e-6;
/** Areas below this are not told [m²]. */
const NO_AREA_M2 = 1e-6;

/** All that falls too little, and its largest place. */
export interface FlatArea {
  readonly areaM2: number;
  /** Least and greatest fall in it [%]. */
  readonly leastPercent: number;
  readonly mostPercent: number;
  /** Places that do not touch one another. */
  readonly places: number;
  readonly largestM2: number;
  /** A point of the largest place, local [m]. */
  readonly x: number;
  readonly y: number;
  /** Zone of the largest place; -1 for the membrane. */
  readonly zone: number;
}

/** Per cell; NaN where nothing is known. */
export interface CellFalls {
  /** Fall [%]. */
  readonly percent: Float64Array;
  /** Where to the steepest descent runs, clockwise from +y; NaN where level [°]. */
  readonly bearingDeg: Float64Array;
}

/** An even part of a surface. */
interface EvenPart {
  readonly areaM2: number;
  readonly percent: number;
  /** A point of it; worked out only for the part that is told, local [m]. */
  readonly placeM: () => [number, number];
  /** Parts of one group touch one another or belong to one zone. */
  readonly group: number;
}

/**
 * Steepest descent of a rise.
 * @param slopeX - rise per metre along x [-]
 * @param slopeY - rise per metre along y [-]
 * @returns fall in percent and its bearing clockwise from +y, NaN where level [%]
 * @source none: geometry
 */
export function fallOf(slopeX: number, slopeY: number): { percent: number; bearingDeg: number } {
  const percent = 100 * Math.hypot(slopeX, slopeY);
  if (percent === 0) return { percent, bearingDeg: Number.NaN };
  return { percent, bearingDeg: ((Math.atan2(-slopeX, -slopeY) * 180) / Math.PI + 360) % 360 };
}

/**
 * Where the membrane falls less than wanted; nothing where the file gives no levels. Valleys and ridges are lines and have no area.
 * @param site - deck and its surface [m]
 * @param fromPercent - falls from here on [%]
 * @param belowPercent - and below here [%]
 * @returns the area; null where there is none [%]
 * @source contract.md, section 2, Deck level; areas by clipping each triangle
 */
export function flatMembrane(site: DeckSite, fromPercent: number, belowPercent: number): FlatArea | null {
  const { deckSurface, ground } = site;
  if (deckSurface.kind === 'plane') return null;
  const chosen: number[] = [];
  for (let t = 0; t < deckSurface.netTriangles; t++)
    if (isBetween(triangleFall(deckSurface, t).percent, fromPercent, belowPercent)) chosen.push(t);
  const groups = touchingGroups(deckSurface, chosen);
  const parts = chosen.map((t, i): EvenPart => ({ ...triangleIn(deckSurface, t, ground.region), group: groups[i] }));
  return summed(parts, () => -1);
}

/**
 * Whether a build-up is paved: its surfacing lies on a bedding. Gravel strips and decks on bearers let water through everywhere.
 * @param buildUp - layers bottom to top [m]
 * @returns true if paved [-]
 * @source none: arithmetic
 */
export function isPaved(buildUp: BuildUpInput): boolean {
  return buildUp.layers.at(-1)?.role === 'surfacing' && buildUp.layers.at(-2)?.role === 'bedding';
}

/**
 * Where the finish of paved zones falls less than wanted. A finish that follows the membrane is told there.
 * @param site - zones and the levels wanted [m]
 * @param belowPercent - falls below here [%]
 * @returns the area; null where there is none [%]
 * @source contract.md, section 2, Finished level
 */
export function flatPaving(site: DeckSite, belowPercent: number): FlatArea | null {
  const parts = site.zones.flatMap((zone, z): EvenPart[] => {
    const surface = site.finishSurfaces[z];
    if (!surface || !isPaved(zone.buildUp)) return [];
    if (surface.kind === 'plane') {
      const { percent } = fallOf(surface.slopeX, surface.slopeY);
      const laid = site.zoneCells[z];
      if (!isBetween(percent, 0, belowPercent) || laid.cells.length === 0) return [];
      return [{ areaM2: laid.areaM2, percent, placeM: () => middleOf(site.ground.grid, laid, zone.region.outer), group: z }];
    }
    const all = Array.from({ length: surface.netTriangles }, (_, t) => t);
    return all
      .filter((t) => isBetween(triangleFall(surface, t).percent, 0, belowPercent))
      .map((t) => ({ ...triangleIn(surface, t, zone.region), group: z }));
  });
  return summed(parts, (group) => group);
}

/**
 * Fall of the membrane at the centre of each cell with any deck.
 * @param site - deck and its surface [m]
 * @returns fall [%] and bearing of the steepest descent, clockwise from +y [°]; NaN off the deck and where no levels are given
 * @source none: geometry
 */
export function cellFalls(site: DeckSite): CellFalls {
  const { grid, deckShare } = site.ground;
  const percent = new Float64Array(deckShare.length).fill(Number.NaN);
  const bearingDeg = new Float64Array(deckShare.length).fill(Number.NaN);
  const { deckSurface } = site;
  if (deckSurface.kind === 'plane') return { percent, bearingDeg };
  for (let t = 0; t < deckSurface.netTriangles; t++) {
    const fall = triangleFall(deckSurface, t);
    eachCellCentre(grid, cornersOf(deckSurface, t), (cell) => {
      if (deckShare[cell] === 0) return;
      percent[cell] = fall.percent;
      bearingDeg[cell] = fall.bearingDeg;
    });
  }
  return { percent, bearingDeg };
}

function isBetween(percent: number, fromPercent: number, belowPercent: number): boolean {
  return percent >= fromPercent - ROUNDING_PERCENT && percent < belowPercent - ROUNDING_PERCENT;
}

function triangleFall(net: NetSurface, t: number): { percent: number; bearingDeg: number } {
  const [a, b, c] = net.triangles.subarray(3 * t, 3 * t + 3);
  return fallOf(...triangleSlopes(net.points, 3 * a, 3 * b, 3 * c));
}

function cornersOf(net: NetSurface, t: number): number[] {
  return Array.from(net.triangles.subarray(3 * t, 3 * t + 3)).flatMap((i) => [net.points[3 * i], net.points[3 * i + 1]]);
}

/** The part of a triangle in a region; its place is the middle of what the outer ring leaves of it. */
function triangleIn(net: NetSurface, t: number, region: DeckSite['ground']['region']): Omit<EvenPart, 'group'> {
  const corners = cornersOf(net, t);
  const placeM = () => centroidM(Float64Array.from(clipConvex(Array.from(region.outer), corners)));
  return { areaM2: areaInConvexM2(region, corners), percent: triangleFall(net, t).percent, placeM };
}

/** For each chosen triangle the first one it hangs together with over common sides. */
function touchingGroups(net: NetSurface, chosen: readonly number[]): number[] {
  const group = chosen.map((_, i) => i);
  const rootOf = (i: number): number => (group[i] === i ? i : rootOf(group[i]));
  const bySide = new Map<string, number>();
  chosen.forEach((t, i) => {
    const corners = net.triangles.subarray(3 * t, 3 * t + 3);
    for (let e = 0; e < 3; e++) {
      const side = [corners[e], corners[(e + 1) % 3]].sort((p, q) => p - q).join();
      const other = bySide.get(side);
      if (other === undefined) bySide.set(side, i);
      else group[rootOf(i)] = rootOf(other);
    }
  });
  return group.map((_, i) => rootOf(i));
}

function summed(parts: readonly EvenPart[], zoneOf: (group: number) => number): FlatArea | null {
  const told = parts.filter((part) => part.areaM2 > NO_AREA_M2);
  if (told.length === 0) return null;
  const groups = new Map<number, EvenPart & { readonly partM2: number }>();
  for (const part of told) {
    const before = groups.get(part.group);
    const areaM2 = (before?.areaM2 ?? 0) + part.areaM2;
    // The place of a group is that of its largest part.
    if (before && before.partM2 >= part.areaM2) groups.set(part.group, { ...before, areaM2 });
    else groups.set(part.group, { ...part, areaM2, partM2: part.areaM2 });
  }
  const largest = [...groups.values()].reduce((most, one) => (one.areaM2 > most.areaM2 ? one : most));
  const percents = told.map((part) => part.percent);
  const [x, y] = largest.placeM();
  return {
    areaM2: told.reduce((sum, part) => sum + part.areaM2, 0),
    leastPercent: Math.min(...percents),
    mostPercent: Math.max(...percents),
    places: groups.size,
    largestM2: largest.areaM2,
    x,
    y,
    zone: zoneOf(largest.group),
  };
}

/** Centre of the zone's cell that comes nearest to the zone's centroid. */
function middleOf(grid: GridShape, laid: RegionCells, outer: Float64Array): [number, number] {
  const [cx, cy] = centroidM(outer);
  let best: [number, number] = [cx, cy];
  let least = Infinity;
  for (const cell of laid.cells) {
    const centre = cellCentreM(grid, cell);
    const distance = Math.hypot(centre[0] - cx, centre[1] - cy);
    if (distance >= least) continue;
    least = distance;
    best = centre;
  }
  return best;
}

function eachCellCentre(grid: GridShape, corners: readonly number[], visit: (cell: number) => void): void {
  const ring = Float64Array.from(corners);
  const triangle = { outer: ring, holes: [] };
  const index = (v: number, from: number) => (v - from) / grid.cellM - 0.5;
  const xs = [corners[0], corners[2], corners[4]];
  const ys = [corners[1], corners[3], corners[5]];
  const column0 = Math.max(0, Math.ceil(index(Math.min(...xs), grid.x0M)));
  const column1 = Math.min(grid.columns - 1, Math.floor(index(Math.max(...xs), grid.x0M)));
  const row0 = Math.max(0, Math.ceil(index(Math.min(...ys), grid.y0M)));
  const row1 = Math.min(grid.rows - 1, Math.floor(index(Math.max(...ys), grid.y0M)));
  for (let row = row0; row <= row1; row++) {
    for (let column = column0; column <= column1; column++) {
      const cell = row * grid.columns + column;
      const [x, y] = cellCentreM(grid, cell);
      if (isInside(triangle, x, y)) visit(cell);
    }
  }
}
