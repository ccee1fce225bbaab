/** What the patch of a wheel touches besides the ground under its middle: zones and bays beside it, and what stands on the layers. */

import type { Region, Ring } from '../model/deck-input.ts';
import type { VehicleInput, WheelLayer, WheelPatch } from '../model/wheel-input.ts';
import type { Evaluation } from './evaluation.ts';
import { areaInConvexM2 } from './geometry/convex-clip.ts';
import { cellAt, cellCentreM } from './geometry/grid.ts';
import { type Bounds, boundsOf, isInside, ringsOf } from './geometry/ring.ts';
import { firstAtLeast } from './loads/field.ts';
import { patchRing } from './loads/wheel-stress.ts';
import { baysAt, type Ground } from './wheel-ground.ts';

/** A patch that laps over a line by less is rounding of the drawing [m²]. */
const GRAZED_M2 = 1e-4;

/** Zone near a wheel, with the make-up thickness of its nearest cell and the bays there. */
export interface GroundBeside extends Ground {
  readonly bays: readonly number[];
}

/** Bays that patches with their middles in one cell may touch. */
interface NearBays {
  readonly bays: readonly number[];
  /** All around is in the one bay listed, or in none. */
  readonly oneBay: boolean;
}

/**
 * Zones that patches of a vehicle may touch from some places, by their bounds: all that what it presses on can depend on.
 * @param around - keeper of what is known [m]
 * @param places - places of wheels, x y each [m]
 * @param marginM - how far wheels may stand from these places [m]
 * @returns indices of the zones, rising [-]
 * @source none: geometry
 */
export function zonesTouchedFrom(around: Around, places: Float64Array, marginM: number): number[] {
  const all = boundsOf(places);
  return around.on.input.zones.flatMap((_, z) => {
    const { minX, minY, maxX, maxY } = reachOf(around, z);
    if (all.minX > maxX + marginM || all.maxX < minX - marginM || all.minY > maxY + marginM || all.maxY < minY - marginM) return [];
    for (let i = 0; i < places.length; i += 2) {
      const [x, y] = [places[i], places[i + 1]];
      if (x >= minX - marginM && x <= maxX + marginM && y >= minY - marginM && y <= maxY + marginM) return [z];
    }
    return [];
  });
}

/** Looks around cells, and keeps what it has found: wheels come to the same cells again and again. */
export interface Around {
  readonly on: Evaluation;
  /** Half of the diagonal of the largest patch on the surface [m]. */
  readonly patchM: number;
  /** The same per zone, grown as far as its layers can grow it, and the greatest of them [m]. */
  readonly grownM: readonly number[];
  readonly mostGrownM: number;
  /** Per zone: greatest growth on one side [m]. */
  readonly spreadsM: readonly number[];
  /** Zones that are looked for, with their bounds as far as they may be touched from; null for all. */
  readonly only: ReadonlyMap<number, Bounds> | null;
  readonly zonesKnown: Map<number, readonly GroundBeside[]>;
  readonly baysKnown: Map<number, NearBays>;
}

/**
 * Begins to look around on a deck.
 * @param on - evaluation [-]
 * @param vehicle - vehicle, for its patches [m]
 * @param layers - per zone how its layers spread [-]
 * @param wanted - zones to look for; null for all [-]
 * @returns keeper that knows nothing yet [m]
 * @source contract.md, section 2, Wheels
 */
export function lookAround(
  on: Evaluation,
  { axles, pad }: VehicleInput,
  layers: readonly (readonly WheelLayer[])[],
  wanted: ReadonlySet<number> | null = null,
): Around {
  const patches = [...axles.map(({ alongM, acrossM }) => [alongM, acrossM]), ...(pad ? [pad.sizeM] : [])];
  const half = (spreadM: number) => Math.max(...patches.map(([a, b]) => Math.hypot(a / 2 + spreadM, b / 2 + spreadM)));
  const spreadsM = on.input.zones.map(({ buildUp }, z) =>
    buildUp.layers.reduce((sum, { thicknessM, rangeM }, i) => sum + layers[z][i].dispersal * (rangeM?.max ?? thicknessM), 0),
  );
  const grownM = spreadsM.map(half);
  const found = { on, patchM: half(0), grownM, mostGrownM: Math.max(half(0), ...grownM), spreadsM };
  const only = wanted && new Map([...wanted].filter((z) => z >= 0).map((z) => [z, reachOf(found, z)]));
  return { ...found, only, zonesKnown: new Map(), baysKnown: new Map() };
}

/** Bounds of the places from which a zone may be touched: cells that hold a sliver of it, and the cell of a wheel, add a diagonal each. */
function reachOf({ on, grownM }: Pick<Around, 'on' | 'grownM'>, z: number): Bounds {
  const { minX, minY, maxX, maxY } = boundsOf(on.input.zones[z].region.outer);
  const byM = grownM[z] + 2 * Math.SQRT2 * on.prepared.ground.grid.cellM;
  return { minX: minX - byM, minY: minY - byM, maxX: maxX + byM, maxY: maxY + byM };
}

function zonesNearTo(around: Around, x: number, y: number): readonly GroundBeside[] {
  const { on, only, zonesKnown } = around;
  if (only && !isInAny(only, x, y)) return NONE;
  const { grid } = on.prepared.ground;
  const cell = cellAt(grid, x, y);
  if (cell < 0) return zonesNear(around, [x, y], -1);
  const kept = zonesKnown.get(cell) ?? zonesNear(around, cellCentreM(grid, cell), on.prepared.zoneCells.owner[cell]);
  zonesKnown.set(cell, kept);
  return kept;
}

function isInAny(boxes: ReadonlyMap<number, Bounds>, x: number, y: number): boolean {
  for (const { minX, minY, maxX, maxY } of boxes.values()) if (x >= minX && x <= maxX && y >= minY && y <= maxY) return true;
  return false;
}

function baysNearTo({ on, patchM, baysKnown }: Around, x: number, y: number): NearBays {
  const { grid } = on.prepared.ground;
  const cell = cellAt(grid, x, y);
  if (cell < 0) return baysNear(on, x, y, patchM);
  const kept = baysKnown.get(cell) ?? baysNear(on, ...cellCentreM(grid, cell), patchM + grid.cellM / 2);
  baysKnown.set(cell, kept);
  return kept;
}

/**
 * All but the zone whose own the place is, each as far as its own layers grow a patch: what a zone is to a wheel does not depend on
 * zones elsewhere. From the middle of a cell to the middle of another with a touched zone in it, half a diagonal is added at both ends.
 */
function zonesNear({ on, only, grownM, mostGrownM }: Around, [x, y]: readonly [number, number], own: number): GroundBeside[] {
  const { grid } = on.prepared.ground;
  const { owner, mixed, start, entryZone } = on.prepared.zoneCells;
  const nearest = new Map<number, { readonly awayM: number; readonly cell: number; readonly makeUpM: number }>();
  const diagonalM = Math.SQRT2 * grid.cellM;
  const take = (zone: number, cell: number, makeUpM: number) => {
    if (only && !only.has(zone)) return;
    const [cx, cy] = cellCentreM(grid, cell);
    const awayM = Math.hypot(cx - x, cy - y);
    if (awayM > grownM[zone] + diagonalM) return;
    const kept = nearest.get(zone);
    if (!kept || awayM < kept.awayM) nearest.set(zone, { awayM, cell, makeUpM });
  };
  eachCellNear(on, x, y, mostGrownM + diagonalM, (cell) => {
    if (owner[cell] === -1 || (owner[cell] === own && own >= 0)) return;
    if (owner[cell] >= 0) return take(owner[cell], cell, on.field.makeUpM[cell]);
    const i = firstAtLeast(mixed, cell);
    for (let e = start[i]; e < start[i + 1]; e++) if (entryZone[e] !== own) take(entryZone[e], cell, on.field.entryMakeUpM[e]);
  });
  const found = [...nearest].sort(([a], [b]) => a - b);
  return found.map(([zone, { cell, makeUpM }]) => ({ zone, makeUpM, bays: baysAt(on, ...cellCentreM(grid, cell)) }));
}

function baysNear(on: Evaluation, x: number, y: number, halfM: number): NearBays {
  const { ground, bays } = on.prepared;
  const near = new Set<number>();
  let whole = true;
  eachCellNear(on, x, y, halfM, (cell) => {
    if (ground.deckShare[cell] < 1) whole = false;
    const sole = bays.sole[cell];
    if (sole >= 0) near.add(sole);
    else whole = false;
    for (const { bay } of bays.shared.get(cell) ?? []) near.add(bay);
  });
  return { bays: [...near], oneBay: near.size === 0 || (whole && near.size === 1) };
}

/**
 * Zones besides the one under the middle of a wheel that its patch may lap onto once it has grown.
 * @param around - keeper of what is known [m]
 * @param wheel - wheel [m]
 * @param under - zone under its middle; -2 where it stands beyond the deck [-]
 * @returns zones; most often none [m]
 * @source none: geometry
 */
export function groundsBeside(around: Around, wheel: WheelPatch, under: number): readonly GroundBeside[] {
  const zones = zonesNearTo(around, wheel.x, wheel.y);
  if (zones.length === 0) return NONE;
  return zones.filter(({ zone }) => zone !== under && mayReach(around.on.input.zones[zone].region, wheel, around.spreadsM[zone]));
}

const NONE: readonly GroundBeside[] = [];

/**
 * Bays that a wheel stands on, if only with a part of its patch.
 * @param around - keeper of what is known [m]
 * @param wheel - wheel [m]
 * @returns indices of the bays [-]
 * @source none: geometry
 */
export function baysTouched(around: Around, wheel: WheelPatch): readonly number[] {
  const { bays, oneBay } = baysNearTo(around, wheel.x, wheel.y);
  return oneBay ? bays : bays.filter((bay) => touches(around.on.input.bays[bay].region, wheel, 0));
}

/**
 * Whether the grown patch of a wheel laps onto a region.
 * @param region - region [m]
 * @param wheel - wheel [m]
 * @param spreadM - growth on every side [m]
 * @returns true where it does by more than the rounding of a drawing [-]
 * @source none: geometry
 */
export function touches(region: Region, wheel: WheelPatch, spreadM: number): boolean {
  if (!mayReach(region, wheel, spreadM)) return false;
  return areaInConvexM2(region, Array.from(patchRing(wheel, spreadM))) > GRAZED_M2;
}

/** Whether a region comes as near to the middle of a wheel as the corners of its grown patch: quick, and false for most. */
function mayReach(region: Region, { x, y, alongM, acrossM }: WheelPatch, spreadM: number): boolean {
  const reach2 = (alongM / 2 + spreadM) ** 2 + (acrossM / 2 + spreadM) ** 2;
  for (const ring of ringsOf(region)) {
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const ax = ring[j] - x;
      const ay = ring[j + 1] - y;
      const ex = ring[i] - ring[j];
      const ey = ring[i + 1] - ring[j + 1];
      const share = Math.min(1, Math.max(0, -(ax * ex + ay * ey) / (ex * ex + ey * ey)));
      if ((ax + share * ex) ** 2 + (ay + share * ey) ** 2 < reach2) return true;
    }
  }
  return isInside(region, x, y);
}

/** Cells of the grid that a square around a place meets. */
function eachCellNear({ prepared }: Evaluation, x: number, y: number, halfM: number, look: (cell: number) => void): void {
  const { x0M, y0M, cellM, columns, rows } = prepared.ground.grid;
  const column0 = Math.max(0, Math.floor((x - halfM - x0M) / cellM));
  const column1 = Math.min(columns - 1, Math.floor((x + halfM - x0M) / cellM));
  const row1 = Math.min(rows - 1, Math.floor((y + halfM - y0M) / cellM));
  for (let row = Math.max(0, Math.floor((y - halfM - y0M) / cellM)); row <= row1; row++) {
    for (let column = column0; column <= column1; column++) look(row * columns + column);
  }
}

/** A piece of even pressure that stands on the layers. */
interface StandingPiece {
  readonly ring: Ring;
  readonly kNm2: number;
  readonly bounds: Bounds;
}

/**
 * What stands on the layers: objects, and in a stage the stockpiles of that stage.
 * @param on - evaluation [-]
 * @param stage - index of the stage, null for the finished deck, -1 before the first [-]
 * @returns pieces of even pressure [kN/m²]
 * @source contract.md, section 2, Area load and Stages
 */
export function standingPieces({ input, plan }: Evaluation, stage: number | null): StandingPiece[] {
  const there = (placed: number) => stage === null || (placed >= 0 && placed <= stage);
  const objects = input.objects.filter((_, i) => there(plan.objectStages[i])).flatMap(({ pieces }) => pieces);
  const heaps = stage === null ? [] : (input.stages?.[stage]?.stockpiles ?? []);
  return [...objects, ...heaps].map(({ ring, kNm2 }) => ({ ring, kNm2, bounds: boundsOf(ring) }));
}

/**
 * Pressure of what stands where a wheel does, as its weight goes straight down: the greatest at the middle and the corners of
 * the wheel's patch. It counts in full on every layer below, which is on the safe side: a real load spreads as a wheel does.
 * @param pieces - what stands there [kN/m²]
 * @param wheel - wheel [m]
 * @returns pressure [kPa]
 * @source contract.md, section 2, Wheels (weight above counts with the wheels)
 */
export function standingKPa(pieces: readonly StandingPiece[], wheel: WheelPatch): number {
  const reachM = Math.hypot(wheel.alongM, wheel.acrossM) / 2;
  const { x, y } = wheel;
  const near = pieces.filter(
    ({ bounds: { minX, maxX, minY, maxY } }) => x > minX - reachM && x < maxX + reachM && y > minY - reachM && y < maxY + reachM,
  );
  if (near.length === 0) return 0;
  const corners = patchRing(wheel, 0);
  let greatest = 0;
  for (let i = -2; i < corners.length; i += 2) {
    const [px, py] = i < 0 ? [x, y] : [corners[i], corners[i + 1]];
    const sum = near.reduce((all, { ring, kNm2 }) => all + (isInside({ outer: ring, holes: [] }, px, py) ? kNm2 : 0), 0);
    greatest = Math.max(greatest, sum);
  }
  return greatest;
}
