/** A vehicle at one place of its line: where its wheels stand and what they press on every layer under them, as the envelope reckons. */

import type { PoseGround, PoseTop, PoseWheel, RunPose } from '../model/run.ts';
import type { WheelLayer, WheelRun, WheelStand } from '../model/wheel-input.ts';
import type { Evaluation } from './evaluation.ts';
import { surfaceLevelM } from './levels/surface.ts';
import { elasticPeakKPa } from './loads/newmark.ts';
import { axlePath, pointOnPath, type StandingWheel, supportAt, wheelsAt } from './loads/wheel-path.ts';
import { governingPressure, type LayerTop, patchRing } from './loads/wheel-stress.ts';
import { at, type Ground, groundAt, topsInStage } from './wheel-ground.ts';
import { type Around, baysTouched, groundsBeside, lookAround, standingKPa, standingPieces, touches } from './wheel-touch.ts';

interface Posing {
  readonly on: Evaluation;
  readonly layers: readonly (readonly WheelLayer[])[];
  readonly topsOf: (zone: number) => readonly LayerTop[];
  readonly standing: ReturnType<typeof standingPieces>;
  readonly around: Around;
  readonly wheels: readonly StandingWheel[];
}

/**
 * Everything under the wheels at one place.
 * @param on - evaluation, for the layers and bays [-]
 * @param run - vehicle, line and stage [m]
 * @param layers - per zone how its layers spread and bear [kPa]
 * @param stand - place along the line, on wheels or with a support set down [m]
 * @returns wheels with levels [m] and pressures [kPa]
 * @throws RangeError if a support is asked for that the vehicle has not
 * @source contract.md, section 2, Wheels
 */
export function runPose(on: Evaluation, run: WheelRun, layers: readonly (readonly WheelLayer[])[], stand: WheelStand): RunPose {
  const { vehicle, stage } = run;
  const path = axlePath(run.route, vehicle.radiusM);
  const wheels = standingAt(path, run, stand);
  const posing: Posing = {
    on,
    layers,
    topsOf: topsInStage(on, layers, stage),
    standing: standingPieces(on, stage),
    around: lookAround(on, vehicle, layers),
    wheels,
  };
  const axleOf = stand.on === 'support' ? [0] : vehicle.axles.flatMap((axle, a) => new Array<number>(axle.wheels).fill(a));
  const axles = stand.on === 'support' ? [] : vehicle.axles.map(({ atM }) => pointOnPath(path, stand.frontM - atM));
  return {
    run: run.id,
    stage,
    ...stand,
    wheels: wheels.map((wheel, index): PoseWheel => {
      const axle = axles[axleOf[index]] ?? wheel;
      const leftM = (wheel.y - axle.y) * axle.dirX - (wheel.x - axle.x) * axle.dirY;
      return { ...wheel, axle: axleOf[index], leftM, ...underWheel(posing, index) };
    }),
    axles,
  };
}

function standingAt(path: ReturnType<typeof axlePath>, run: WheelRun, { frontM, on }: WheelStand): readonly StandingWheel[] {
  if (on === 'wheels') return wheelsAt(path, run.vehicle, frontM, run.dynamicFactor);
  if (!run.vehicle.pad) throw new RangeError(`runPose: vehicle "${run.vehicle.id}" has no supports`);
  return [supportAt(path, run.vehicle.pad, frontM)];
}

function underWheel(posing: Posing, index: number): Pick<PoseWheel, 'bays' | 'surfaceM' | 'grounds'> {
  const { on, topsOf, wheels, around } = posing;
  const wheel = wheels[index];
  const under = groundAt(on, wheel.x, wheel.y);
  const beside = wheel.onLine ? groundsBeside(around, wheel, under ? under.zone : -2) : [];
  const tops = under ? topsOf(under.zone) : [];
  return {
    bays: baysTouched(around, wheel).map((bay) => on.input.bays[bay].id),
    surfaceM: under && surfaceLevelM(on.prepared.deckSurface, wheel.x, wheel.y) + at(tops[tops.length - 1].depth, under.makeUpM),
    grounds: [
      ...(under ? [poseGround(posing, index, under, false)] : []),
      ...beside.map((ground) => poseGround(posing, index, ground, true)).filter((ground) => ground.tops.length > 0),
    ],
  };
}

function poseGround(posing: Posing, index: number, ground: Ground, beside: boolean): PoseGround {
  const { on, topsOf, wheels, standing } = posing;
  const tops = topsOf(ground.zone);
  const membraneM = surfaceLevelM(on.prepared.deckSurface, wheels[index].x, wheels[index].y);
  const surfaceM = membraneM + at(tops[tops.length - 1].depth, ground.makeUpM);
  const standsKPa = standingKPa(standing, wheels[index]);
  return {
    zone: ground.zone < 0 ? null : on.input.zones[ground.zone].id,
    beside,
    tops: tops.flatMap((top): PoseTop[] => {
      const spreadM = at(top.spread, ground.makeUpM);
      const pressing = pressingOn(posing, index, { zone: ground.zone, spreadM, beside });
      if (pressing.length === 0) return [];
      const depthM = at(top.depth, ground.makeUpM);
      const { kPa: wheelsKPa, governs } = governingPressure(pressing, pressing.indexOf(wheels[index]), spreadM);
      const aboveKPa = at(top.above, ground.makeUpM) + standsKPa;
      return [
        {
          ...layerOf(posing, ground.zone, top.layer),
          depthM,
          spreadM,
          levelM: surfaceM - depthM,
          ring: patchRing(wheels[index], spreadM),
          wheelsKPa,
          governs,
          aboveKPa,
          kPa: wheelsKPa + aboveKPa,
          elasticKPa: elasticPeakKPa(wheels, index, depthM),
        },
      ];
    }),
  };
}

interface OnTop {
  readonly zone: number;
  readonly spreadM: number;
  readonly beside: boolean;
}

/** On ground beside the wheel only those wheels press whose patch laps onto it; none where its own does not. */
function pressingOn({ on, wheels }: Posing, index: number, { zone, spreadM, beside }: OnTop): readonly StandingWheel[] {
  if (!beside) return wheels;
  const { region } = on.input.zones[zone];
  return touches(region, wheels[index], spreadM) ? wheels.filter((wheel) => touches(region, wheel, spreadM)) : [];
}

function layerOf({ on, layers }: Posing, zone: number, layer: number): Pick<PoseTop, 'layer' | 'materialId' | 'name' | 'permittedKPa'> {
  if (layer < 0) return { layer, materialId: '', name: '', permittedKPa: null };
  const { materialId, name } = on.input.zones[zone].buildUp.layers[layer];
  return { layer, materialId, name, permittedKPa: layers[zone][layer].bearingKPa };
}
