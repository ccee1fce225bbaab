/**
 * The greatest that wheels bring along a line: on every layer's top and the membrane, per zone and bay, on the layers that
 * lie there then. Point loads stay apart from the area loads of the deck: nothing here is added to a cell.
 */

import type { WheelLayer, WheelRun } from '../model/wheel-input.ts';
import type { Evaluation } from './evaluation.ts';
import { cellAt } from './geometry/grid.ts';
import { isInside } from './geometry/ring.ts';
import type { Affine } from './layers/coefficients.ts';
import { firstAtLeast } from './loads/field.ts';
import { underWheelsKPa } from './loads/newmark.ts';
import { axlePath, frontPlaces, pointOnPath, type StandingWheel, wheelsAt } from './loads/wheel-path.ts';
import { type Governs, governingPressure, type LayerTop, layerTops } from './loads/wheel-stress.ts';

/** Greatest pressure of wheels on one surface, and where. */
export interface WheelPeak {
  /** Wheels alone [kPa]. */
  readonly wheelsKPa: number;
  readonly governs: Governs;
  /** At the same place in an elastic half-space: the greatest under the middles of wheels and halfway between two [kPa]. */
  readonly elasticKPa: number;
  /** Place of the wheel, local [m]. */
  readonly x: number;
  readonly y: number;
}

export interface LayerPeak extends WheelPeak {
  readonly zone: number;
  readonly layer: number;
  /** Saturated weight of what lies above [kPa]. */
  readonly aboveKPa: number;
  /** Wheels and weight together [kPa]. */
  readonly kPa: number;
  readonly permittedKPa: number | null;
}

export interface BayTraffic {
  readonly bay: number;
  /** Greatest pressure of a wheel in it on the membrane. */
  readonly membrane: WheelPeak;
  /** Greatest load of the wheels that stand in it at once, static [kN]. */
  readonly standingKN: number;
  /** That load over the bay's area [kN/m²]. */
  readonly kNm2: number;
}

export interface RunPeaks {
  /** Null where no wheel stands on the deck. */
  readonly membrane: WheelPeak | null;
  readonly bays: readonly BayTraffic[];
  /** By zone, top layer first. */
  readonly layers: readonly LayerPeak[];
}

interface Mark {
  readonly kPa: number;
  readonly aboveKPa: number;
  readonly top: LayerTop;
  readonly spreadM: number;
  readonly depthM: number;
  readonly index: number;
  readonly wheels: readonly StandingWheel[];
}

interface BayMark {
  mark: Mark | null;
  standingKN: number;
}

interface Ground {
  readonly zone: number;
  readonly makeUpM: number;
}

interface Walk {
  readonly on: Evaluation;
  readonly run: WheelRun;
  readonly layers: readonly (readonly WheelLayer[])[];
  readonly tops: Map<number, readonly LayerTop[]>;
  /** Per zone, per top. */
  readonly marks: Map<number, (Mark | null)[]>;
  readonly bays: Map<number, BayMark>;
  membrane: Mark | null;
}

const BARE: readonly LayerTop[] = [
  { layer: -1, spread: { fixed: 0, perM: 0 }, above: { fixed: 0, perM: 0 }, depth: { fixed: 0, perM: 0 } },
];

/**
 * Walks a vehicle along its line, in steps of at most one cell, and keeps the greatest. The line is travelled by every axle;
 * wheels before its start or beyond its end press along with the others, but what lies under them is not looked at.
 * A vehicle with supports is also taken to set one down anywhere on the line.
 * @param on - evaluation, for the layers and bays [-]
 * @param run - vehicle, line and stage [m]
 * @param layers - per zone how its layers spread and bear [kPa]
 * @returns greatest pressures [kPa] and loads standing in bays [kN]
 * @source contract.md, section 2, Wheels
 */
export function wheelEnvelope(on: Evaluation, run: WheelRun, layers: readonly (readonly WheelLayer[])[]): RunPeaks {
  const walk: Walk = { on, run, layers, tops: new Map(), marks: new Map(), bays: new Map(), membrane: null };
  const { vehicle } = run;
  const path = axlePath(run.route, vehicle.radiusM);
  const { cellM } = on.input;
  const standings: StandingWheel[][] = [];
  const lastM = Math.max(...vehicle.axles.map((axle) => axle.atM));
  for (const frontM of frontPlaces(path, lastM, cellM)) {
    const wheels = wheelsAt(path, vehicle, frontM, run.dynamicFactor);
    standings.push(wheels);
    lookAt(walk, wheels);
  }
  // Only bays that the line itself enters; there the whole vehicle counts.
  for (const wheels of standings) countStanding(walk, wheels);
  const { pad } = vehicle;
  if (pad) {
    const [alongM, acrossM] = pad.sizeM;
    for (const placeM of frontPlaces(path, 0, cellM)) {
      lookAt(walk, [{ ...pointOnPath(path, placeM), alongM, acrossM, loadKN: pad.loadKN, onLine: true }]);
    }
  }
  return peaksOf(walk);
}

function lookAt(walk: Walk, wheels: readonly StandingWheel[]): void {
  wheels.forEach((wheel, index) => {
    if (!wheel.onLine) return;
    const ground = groundAt(walk.on, wheel.x, wheel.y);
    if (!ground) return;
    const tops = topsOf(walk, ground.zone);
    const marks = marksOf(walk, ground.zone, tops.length);
    // Under a sheet nothing has spread further than on it.
    let spreadM = Number.NaN;
    let kPa = Number.NaN;
    tops.forEach((top, t) => {
      const hereM = at(top.spread, ground.makeUpM);
      if (hereM !== spreadM) kPa = governingPressure(wheels, index, hereM).kPa;
      spreadM = hereM;
      const aboveKPa = at(top.above, ground.makeUpM);
      const kept = marks[t];
      const onMembrane = top.layer < 0;
      if (!onMembrane && kept && kPa + aboveKPa <= kept.kPa + kept.aboveKPa) return;
      const mark: Mark = { kPa, aboveKPa, top, spreadM, depthM: at(top.depth, ground.makeUpM), index, wheels };
      if (onMembrane) markMembrane(walk, mark, baysAt(walk.on, wheel.x, wheel.y));
      else marks[t] = mark;
    });
  });
}

function markMembrane(walk: Walk, mark: Mark, bays: readonly number[]): void {
  if (!walk.membrane || mark.kPa > walk.membrane.kPa) walk.membrane = mark;
  for (const bay of bays) {
    const entry = walk.bays.get(bay) ?? { mark: null, standingKN: 0 };
    walk.bays.set(bay, entry);
    if (!entry.mark || mark.kPa > entry.mark.kPa) entry.mark = mark;
  }
}

/** Static, whatever the dynamic factor. */
function countStanding({ on, run, bays }: Walk, wheels: readonly StandingWheel[]): void {
  const sums = new Map<number, number>();
  for (const { x, y, loadKN } of wheels) {
    if (cellAt(on.prepared.ground.grid, x, y) < 0) continue;
    for (const bay of baysAt(on, x, y)) sums.set(bay, (sums.get(bay) ?? 0) + loadKN / run.dynamicFactor);
  }
  for (const [bay, kN] of sums) {
    const entry = bays.get(bay);
    if (entry && kN > entry.standingKN) entry.standingKN = kN;
  }
}

function at({ fixed, perM }: Affine, makeUpM: number): number {
  return fixed + perM * makeUpM;
}

/** Zone (-1 on bare deck) and make-up thickness at a place; null off the deck. */
function groundAt({ input, prepared, field }: Evaluation, x: number, y: number): Ground | null {
  const cell = cellAt(prepared.ground.grid, x, y);
  if (cell < 0) return null;
  if (prepared.ground.deckShare[cell] < 1 && !isInside(input.deck, x, y)) return null;
  const { owner, mixed, start, entryZone } = prepared.zoneCells;
  if (owner[cell] >= 0) return { zone: owner[cell], makeUpM: field.makeUpM[cell] };
  if (owner[cell] === -2) {
    const i = firstAtLeast(mixed, cell);
    for (let e = start[i]; e < start[i + 1]; e++) {
      if (isInside(input.zones[entryZone[e]].region, x, y)) return { zone: entryZone[e], makeUpM: field.entryMakeUpM[e] };
    }
  }
  return { zone: -1, makeUpM: 0 };
}

function baysAt({ input, prepared }: Evaluation, x: number, y: number): readonly number[] {
  const cell = cellAt(prepared.ground.grid, x, y);
  if (cell < 0) return [];
  const sole = prepared.bays.sole[cell];
  if (sole === -1) return [];
  if (prepared.ground.deckShare[cell] < 1 && !isInside(input.deck, x, y)) return [];
  if (sole >= 0) return [sole];
  const shared = prepared.bays.shared.get(cell) ?? [];
  return shared.filter(({ bay }) => isInside(input.bays[bay].region, x, y)).map(({ bay }) => bay);
}

function topsOf({ on, run, layers, tops }: Walk, zone: number): readonly LayerTop[] {
  if (zone < 0) return BARE;
  const known = tops.get(zone);
  if (known) return known;
  const { stage } = run;
  const { layerStages, vegetationStages } = on.plan;
  const placed = (stageOf: number) => stage === null || (stageOf >= 0 && stageOf <= stage);
  const found = layerTops(
    on.input.zones[zone].buildUp,
    layers[zone],
    (layer) => placed(layerStages[zone][layer]),
    placed(vegetationStages[zone]),
  );
  tops.set(zone, found);
  return found;
}

function marksOf({ marks }: Walk, zone: number, count: number): (Mark | null)[] {
  const known = marks.get(zone);
  if (known) return known;
  const fresh = new Array<Mark | null>(count).fill(null);
  marks.set(zone, fresh);
  return fresh;
}

function peakOf({ wheels, index, spreadM, depthM }: Mark): WheelPeak {
  const { kPa, governs } = governingPressure(wheels, index, spreadM);
  const own = wheels[index];
  const halfway = wheels.map(({ x, y }) => [(x + own.x) / 2, (y + own.y) / 2] as const);
  const elasticKPa = Math.max(...halfway.map(([x, y]) => underWheelsKPa(wheels, x, y, depthM)));
  return { wheelsKPa: kPa, governs, elasticKPa, x: own.x, y: own.y };
}

function peaksOf({ on, layers, marks, bays, membrane }: Walk): RunPeaks {
  const zones = [...marks.keys()].filter((zone) => zone >= 0).sort((a, b) => a - b);
  return {
    membrane: membrane ? peakOf(membrane) : null,
    bays: [...bays.entries()]
      .sort(([a], [b]) => a - b)
      .flatMap(([bay, { mark, standingKN }]) => {
        const { areaM2 } = on.bays[bay];
        return mark ? [{ bay, membrane: peakOf(mark), standingKN, kNm2: standingKN / areaM2 }] : [];
      }),
    layers: zones.flatMap((zone) =>
      (marks.get(zone) ?? []).flatMap((mark) => {
        if (!mark || mark.top.layer < 0) return [];
        const peak = peakOf(mark);
        const { layer } = mark.top;
        const { aboveKPa } = mark;
        return [{ ...peak, zone, layer, aboveKPa, kPa: peak.wheelsKPa + aboveKPa, permittedKPa: layers[zone][layer].bearingKPa }];
      }),
    ),
  };
}
