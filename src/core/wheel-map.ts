/**
 * Pressure of wheels per cell: the greatest mean over each cell that any place of a vehicle brings, wheels that overlap
 * summed by exact stamping. A patch smaller than a cell presses more on its own area than the cell's mean tells; the
 * exact peaks are those of the envelope.
 */

import type { Ring } from '../model/deck-input.ts';
import type { CellMap, GridShape } from '../model/maps.ts';
import type { WheelLayer, WheelRun } from '../model/wheel-input.ts';
import type { Evaluation } from './evaluation.ts';
import { createRasteriser, type Rasteriser } from './geometry/coverage.ts';
import { cellCentreM } from './geometry/grid.ts';
import { boundsOf } from './geometry/ring.ts';
import type { Affine } from './layers/coefficients.ts';
import { firstAtLeast } from './loads/field.ts';
import { axlePath, frontPlaces, type StandingWheel, supportAt, wheelsAt } from './loads/wheel-path.ts';
import { type LayerTop, patchKPa, patchRing } from './loads/wheel-stress.ts';
import { mapOfCells } from './map-cells.ts';
import { at, type Ground, groundAt, topsInStage } from './wheel-ground.ts';
import { type Around, groundsBeside, lookAround, standingKPa, standingPieces, touches } from './wheel-touch.ts';

/** Vehicles and how the layers of every zone take them. */
export interface Wheels {
  readonly runs: readonly WheelRun[];
  readonly layers: readonly (readonly WheelLayer[])[];
}

/** Longest step, also where cells are larger [m]. */
const STEP_M = 0.25;
/** Less than this is rounding of what was carried along a row [kPa]. */
const REACHED_KPA = 1e-6;
/** Standing in for the zone where there is none. */
const BARE = -1;

/** Wheels at one place of a vehicle with what lies under and beside each. */
interface Place {
  readonly wheels: readonly StandingWheel[];
  readonly under: readonly (Ground | null)[];
  /** Of wheels on the line only. */
  readonly beside: readonly (readonly Ground[])[];
}

/**
 * One map of wheels.
 * @param on - evaluation [-]
 * @param kind - pressure on the membrane [kPa], or share of what the layers bear [-]
 * @param wheels - vehicles and layers [kN]
 * @param stage - index of the stage whose plant counts, null for traffic on the finished deck [-]
 * @returns map, NaN where no wheel comes [kPa]
 * @throws RangeError for a stage that does not exist
 * @source contract.md, section 2, Wheels
 */
export function wheelMap(on: Evaluation, kind: 'wheel-membrane' | 'wheel-bearing', wheels: Wheels, stage: number | null): CellMap {
  if (stage !== null && !(stage >= 0 && stage < on.plan.stages.length)) throw new RangeError(`wheelMap: no stage ${stage}`);
  const ofMembrane = kind === 'wheel-membrane';
  const values = ofMembrane ? membraneWheelsKPa(on, wheels, stage) : bearingShare(on, wheels, stage);
  return mapOfCells(on, {
    kind,
    stage,
    unit: ofMembrane ? 'kPa' : '-',
    valueAt: (cell) => values[cell],
    limitOf: ofMembrane ? null : 'layers',
  });
}

/** Every place of every vehicle of a stage, by the zones under and beside its wheels on the line. */
function placesByZone(on: Evaluation, { runs, layers }: Wheels, stage: number | null): Map<number, Place[]> {
  const byZone = new Map<number, Place[]>();
  const add = (around: Around, wheels: readonly StandingWheel[]) => {
    const under = wheels.map(({ x, y }) => groundAt(on, x, y));
    const beside = wheels.map((wheel, w) => (wheel.onLine ? groundsBeside(around, wheel, under[w] ? under[w].zone : -2) : []));
    const zones = new Set<number>();
    wheels.forEach(({ onLine }, w) => {
      if (!onLine) return;
      if (under[w]) zones.add(under[w].zone);
      for (const { zone } of beside[w]) zones.add(zone);
    });
    for (const zone of zones) {
      const list = byZone.get(zone) ?? [];
      list.push({ wheels, under, beside });
      byZone.set(zone, list);
    }
  };
  for (const run of runs) {
    if (run.stage !== stage) continue;
    const { vehicle, dynamicFactor } = run;
    const { pad } = vehicle;
    const path = axlePath(run.route, vehicle.radiusM);
    const around = lookAround(on, vehicle, layers);
    const stepM = Math.min(on.input.cellM, STEP_M);
    const lastM = Math.max(...vehicle.axles.map((axle) => axle.atM));
    for (const frontM of frontPlaces(path, lastM, stepM)) add(around, wheelsAt(path, vehicle, frontM, dynamicFactor));
    if (pad) for (const placeM of frontPlaces(path, 0, stepM)) add(around, [supportAt(path, pad, placeM)]);
  }
  return byZone;
}

/** What wheels at one place lay on the grid: patches and their pressures, and which of them are looked at. */
interface Stamp {
  readonly rings: readonly Ring[];
  readonly weights: readonly number[];
  readonly looked: readonly boolean[];
}

/**
 * Patches grown for one top of one zone, as the envelope takes them: under a wheel that stands on the zone all press, beside it
 * only those whose patch laps onto it. A wheel on other ground grows like one that is looked at.
 */
function stampOn(on: Evaluation, { wheels, under, beside }: Place, zone: number, spread: Affine): Stamp {
  const grounds = wheels.map((_, w) => (under[w]?.zone === zone ? under[w] : beside[w].find((one) => one.zone === zone)));
  const own = grounds.map((ground) => ground && at(spread, ground.makeUpM));
  const shared = own.find((spreadM, w) => spreadM !== undefined && wheels[w].onLine) ?? 0;
  const spreads = own.map((spreadM) => spreadM ?? shared);
  const stands = wheels.map(({ onLine }, w) => onLine && under[w]?.zone === zone);
  const laps = (w: number) => zone !== BARE && touches(on.input.zones[zone].region, wheels[w], spreads[w]);
  const looked = wheels.map(({ onLine }, w) => stands[w] || (onLine && grounds[w] !== undefined && laps(w)));
  const pressing = wheels.flatMap((_, w) => (stands.includes(true) || looked[w] || laps(w) ? [w] : []));
  return {
    rings: pressing.map((w) => patchRing(wheels[w], spreads[w])),
    weights: pressing.map((w) => patchKPa(wheels[w], spreads[w])),
    looked: pressing.map((w) => looked[w]),
  };
}

/** Raises fields of a grid by stamps; only under wheels that are looked at. */
class Stamper {
  private readonly rasteriser: Rasteriser;
  private readonly grid: GridShape;
  private readonly all: Float64Array;
  private readonly seen: Float64Array;

  constructor(grid: GridShape) {
    this.grid = grid;
    this.rasteriser = createRasteriser(grid);
    this.all = new Float64Array(grid.columns * grid.rows);
    this.seen = new Float64Array(grid.columns * grid.rows);
  }

  raise({ rings, weights, looked }: Stamp, field: Float64Array): void {
    if (!looked.includes(true)) return;
    if (!looked.includes(false)) {
      this.rasteriser.raise(rings, weights, field);
      return;
    }
    this.rasteriser.raise(rings, weights, this.all);
    const only = <T>(list: readonly T[]) => list.filter((_, i) => looked[i]);
    this.rasteriser.raise(only(rings), only(weights), this.seen);
    this.overCells(rings, (cell) => {
      if (this.seen[cell] > 0 && this.all[cell] > field[cell]) field[cell] = this.all[cell];
      this.all[cell] = 0;
      this.seen[cell] = 0;
    });
  }

  /** All cells that rings may touch. */
  overCells(rings: readonly Ring[], act: (cell: number) => void): void {
    const { columns, rows, cellM, x0M, y0M } = this.grid;
    for (const ring of rings) {
      const { minX, maxX, minY, maxY } = boundsOf(ring);
      const column1 = Math.min(columns - 1, Math.floor((maxX - x0M) / cellM) + 1);
      const row1 = Math.min(rows - 1, Math.floor((maxY - y0M) / cellM) + 1);
      const column0 = Math.max(0, Math.floor((minX - x0M) / cellM) - 1);
      for (let row = Math.max(0, Math.floor((minY - y0M) / cellM) - 1); row <= row1; row++) {
        for (let column = column0; column <= column1; column++) act(row * columns + column);
      }
    }
  }
}

/** Stamps all places on one top of a zone and hands every cell of the zone that wheels reach to `take`, once. */
function foldZone(
  on: Evaluation,
  stamper: Stamper,
  { zone, spread, places, field }: { zone: number; spread: Affine; places: readonly Place[]; field: Float64Array },
  take: (cell: number, kPa: number, makeUpM: number) => void,
): void {
  const stamps = places.map((place) => stampOn(on, place, zone, spread));
  for (const stamp of stamps) stamper.raise(stamp, field);
  for (const { rings } of stamps) {
    stamper.overCells(rings, (cell) => {
      const kPa = field[cell];
      field[cell] = 0;
      const makeUpM = kPa > REACHED_KPA ? makeUpIn(on, zone, cell) : null;
      if (makeUpM !== null) take(cell, kPa, makeUpM);
    });
  }
}

/**
 * Pressure of wheels alone on the membrane, in every zone as its own layers spread it.
 * @param on - evaluation [-]
 * @param wheels - vehicles and layers [kN]
 * @param stage - index of the stage whose plant counts, null for traffic on the finished deck [-]
 * @returns greatest mean over each cell; NaN where no wheel comes [kPa]
 * @source contract.md, section 2, Wheels (overlapping wheels add); their enclosing rectangle never exceeds the greatest sum
 */
export function membraneWheelsKPa(on: Evaluation, wheels: Wheels, stage: number | null): Float64Array {
  const { grid } = on.prepared.ground;
  const pressed = new Float64Array(grid.columns * grid.rows);
  const field = new Float64Array(pressed.length);
  const stamper = new Stamper(grid);
  const topsOf = topsInStage(on, wheels.layers, stage);
  for (const [zone, places] of placesByZone(on, wheels, stage)) {
    const { spread } = topsOf(zone)[topsOf(zone).length - 1];
    foldZone(on, stamper, { zone, spread, places, field }, (cell, kPa) => {
      if (kPa > pressed[cell]) pressed[cell] = kPa;
    });
  }
  return pressed.map((kPa) => (kPa > 0 ? kPa : Number.NaN));
}

/** Tops of a zone that spread alike and have a bearing: one field of wheels serves them all. */
interface Alike {
  readonly spread: Affine;
  readonly tops: { readonly above: Affine; readonly bearingKPa: number }[];
}

function bearingTops(tops: readonly LayerTop[], layers: readonly WheelLayer[]): Alike[] {
  const groups: Alike[] = [];
  for (const { layer, spread, above } of tops) {
    const bearingKPa = layer < 0 ? null : layers[layer].bearingKPa;
    if (bearingKPa === null) continue;
    const known = groups.find((one) => one.spread.fixed === spread.fixed && one.spread.perM === spread.perM);
    const group = known ?? { spread, tops: [] };
    if (!known) groups.push(group);
    group.tops.push({ above, bearingKPa });
  }
  return groups;
}

/**
 * How much of what the layers bear is used by wheels and the weight of the layers above, the greatest of all layers.
 * @param on - evaluation [-]
 * @param wheels - vehicles and layers [kN]
 * @param stage - index of the stage whose plant counts, null for traffic on the finished deck [-]
 * @returns share of the bearing, wheels as greatest mean over each cell; NaN where no wheel comes or no layer says what it bears [-]
 * @source contract.md, section 2, Wheels
 */
export function bearingShare(on: Evaluation, wheels: Wheels, stage: number | null): Float64Array {
  const { grid } = on.prepared.ground;
  const share = new Float64Array(grid.columns * grid.rows).fill(Number.NaN);
  const field = new Float64Array(share.length);
  const stamper = new Stamper(grid);
  const topsOf = topsInStage(on, wheels.layers, stage);
  const standsKPa = standingCells(on, stage);
  for (const [zone, places] of placesByZone(on, wheels, stage)) {
    for (const { spread, tops } of zone === BARE ? [] : bearingTops(topsOf(zone), wheels.layers[zone])) {
      foldZone(on, stamper, { zone, spread, places, field }, (cell, kPa, makeUpM) => {
        for (const { above, bearingKPa } of tops) {
          const here = (kPa + at(above, makeUpM) + standsKPa(cell)) / bearingKPa;
          if (!(here <= share[cell])) share[cell] = here;
        }
      });
    }
  }
  return share;
}

/** What stands on the layers, at the centre of a cell [kPa]. */
function standingCells(on: Evaluation, stage: number | null): (cell: number) => number {
  const pieces = standingPieces(on, stage);
  const { grid } = on.prepared.ground;
  return (cell) => {
    if (pieces.length === 0) return 0;
    const [x, y] = cellCentreM(grid, cell);
    return standingKPa(pieces, { x, y, dirX: 1, dirY: 0, alongM: grid.cellM, acrossM: grid.cellM, loadKN: 0 });
  };
}

/** Make-up thickness of a zone in a cell; null where the zone has no part of it [m]. */
function makeUpIn({ field }: Evaluation, zone: number, cell: number): number | null {
  const { owner, mixed, start, entryZone } = field.zones;
  if (owner[cell] === zone) return zone === BARE ? 0 : field.makeUpM[cell];
  if (owner[cell] !== -2) return null;
  if (zone === BARE) return 0;
  const i = firstAtLeast(mixed, cell);
  for (let e = start[i]; e < start[i + 1]; e++) if (entryZone[e] === zone) return field.entryMakeUpM[e];
  return null;
}
