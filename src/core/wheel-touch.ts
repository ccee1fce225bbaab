/** What the patch of a wheel touches besides the ground under its middle: zones and bays beside it, and what stands on the layers. */

import type { BuildUpInput, Region, Ring } from '../model/deck-input.ts';
import type { WheelLayer } from '../model/wheel-input.ts';
import type { Evaluation } from './evaluation.ts';
import { areaInConvexM2 } from './geometry/convex-clip.ts';
import { cellCentreM } from './geometry/grid.ts';
import { type Bounds, boundsOf, isInside } from './geometry/ring.ts';
import { firstAtLeast } from './loads/field.ts';
import { patchRing, type WheelPatch } from './loads/wheel-stress.ts';
import { baysAt, type Ground } from './wheel-ground.ts';

/** A patch that laps over a line by less is rounding of the drawing [m²]. */
const GRAZED_M2 = 1e-4;

/** Zone beside a wheel, with the make-up thickness of its nearest cell and the bays there. */
export interface GroundBeside extends Ground {
  readonly bays: readonly number[];
}

/**
 * How far patches can spread on a deck.
 * @param buildUps - build-ups of the zones [m]
 * @param layers - per zone how its layers spread [-]
 * @returns greatest growth on one side, make-up layers at their thickest [m]
 * @source contract.md, section 2, Wheels
 */
export function greatestSpreadM(buildUps: readonly BuildUpInput[], layers: readonly (readonly WheelLayer[])[]): number {
  const sums = buildUps.map((buildUp, z) =>
    buildUp.layers.reduce((sum, { thicknessM, rangeM }, i) => sum + layers[z][i].dispersal * (rangeM?.max ?? thicknessM), 0),
  );
  return Math.max(0, ...sums);
}

/**
 * Zones within reach of a wheel besides the one under its middle.
 * @param on - evaluation [-]
 * @param wheel - wheel [m]
 * @param under - zone under its middle; -2 where it stands beyond the deck [-]
 * @param spreadM - greatest growth of its patch [m]
 * @returns zones; most often none [m]
 * @source none: geometry
 */
export function groundsBeside(on: Evaluation, wheel: WheelPatch, under: number, spreadM: number): GroundBeside[] {
  const { grid } = on.prepared.ground;
  const { owner, mixed, start, entryZone } = on.prepared.zoneCells;
  const nearest = new Map<number, { readonly awayM: number; readonly cell: number; readonly makeUpM: number }>();
  const take = (zone: number, cell: number, makeUpM: number) => {
    if (zone === under) return;
    const [cx, cy] = cellCentreM(grid, cell);
    const awayM = Math.hypot(cx - wheel.x, cy - wheel.y);
    const kept = nearest.get(zone);
    if (!kept || awayM < kept.awayM) nearest.set(zone, { awayM, cell, makeUpM });
  };
  eachCellNear(on, wheel, spreadM, (cell) => {
    const zone = owner[cell];
    if (zone === under || zone === -1) return;
    if (zone >= 0) return take(zone, cell, on.field.makeUpM[cell]);
    const i = firstAtLeast(mixed, cell);
    for (let e = start[i]; e < start[i + 1]; e++) take(entryZone[e], cell, on.field.entryMakeUpM[e]);
  });
  return [...nearest].map(([zone, { cell, makeUpM }]) => ({ zone, makeUpM, bays: baysAt(on, ...cellCentreM(grid, cell)) }));
}

/**
 * Bays that a wheel stands on, if only with a part of its patch.
 * @param on - evaluation [-]
 * @param wheel - wheel [m]
 * @returns indices of the bays [-]
 * @source none: geometry
 */
export function baysTouched(on: Evaluation, wheel: WheelPatch): readonly number[] {
  const { ground, bays } = on.prepared;
  const near = new Set<number>();
  let whole = true;
  eachCellNear(on, wheel, 0, (cell) => {
    if (ground.deckShare[cell] === 0) return;
    const sole = bays.sole[cell];
    if (sole >= 0) near.add(sole);
    else whole = false;
    for (const { bay } of bays.shared.get(cell) ?? []) near.add(bay);
  });
  const found = [...near];
  if (whole && found.length === 1) return found;
  return found.filter((bay) => touches(on.input.bays[bay].region, wheel, 0));
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
  return areaInConvexM2(region, Array.from(patchRing(wheel, spreadM))) > GRAZED_M2;
}

/** Cells of the grid that the box around a grown patch meets. */
function eachCellNear({ prepared }: Evaluation, wheel: WheelPatch, spreadM: number, look: (cell: number) => void): void {
  const { x0M, y0M, cellM, columns, rows } = prepared.ground.grid;
  const along = wheel.alongM / 2 + spreadM;
  const across = wheel.acrossM / 2 + spreadM;
  const halfX = along * Math.abs(wheel.dirX) + across * Math.abs(wheel.dirY);
  const halfY = along * Math.abs(wheel.dirY) + across * Math.abs(wheel.dirX);
  const column0 = Math.max(0, Math.floor((wheel.x - halfX - x0M) / cellM));
  const column1 = Math.min(columns - 1, Math.floor((wheel.x + halfX - x0M) / cellM));
  const row1 = Math.min(rows - 1, Math.floor((wheel.y + halfY - y0M) / cellM));
  for (let row = Math.max(0, Math.floor((wheel.y - halfY - y0M) / cellM)); row <= row1; row++) {
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
