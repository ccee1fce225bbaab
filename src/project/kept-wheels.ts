/** Wheels of one run, walked again only where something under or beside them has changed: zone by zone, as no zone asks for another. */

import type { Evaluation } from '../core/evaluation.ts';
import { boundsOf } from '../core/geometry/ring.ts';
import { axlePath, pointOnPath } from '../core/loads/wheel-path.ts';
import { type StandingPeaks, type StandingRun, standingPeaks } from '../core/set-up-wheels.ts';
import { peaksOf, type RunPeaks } from '../core/wheel-envelope.ts';
import { pressOn } from '../core/wheel-press.ts';
import { wheelStands } from '../core/wheel-stands.ts';
import { lookAround, zonesTouchedFrom } from '../core/wheel-touch.ts';
import type { VehicleInput, WheelLayer, WheelRun } from '../model/wheel-input.ts';
import type { KeptParts } from './kept-parts.ts';

type Layers = readonly (readonly WheelLayer[])[];

/** Distance of the places by which zones near a line are found [m]. */
const STEP_M = 0.5;

/** `wheelEnvelope`, taken over from the report before where it still holds. */
export function keptEnvelope(kept: KeptParts, name: string, on: Evaluation, { run, layers }: { run: WheelRun; layers: Layers }): RunPeaks {
  const path = axlePath(run.route, run.vehicle.radiusM);
  const pieces = Math.max(1, Math.ceil(path.lengthM / STEP_M));
  const places = Float64Array.from(
    Array.from({ length: pieces + 1 }, (_, i) => pointOnPath(path, (i * path.lengthM) / pieces)).flatMap(({ x, y }) => [x, y]),
  );
  const zones = zonesTouchedFrom(lookAround(on, run.vehicle, layers), places, STEP_M + widestM(run.vehicle));
  const shapes = zones.flatMap((z) => [z, on.prepared.zones[z]]);
  const of = JSON.stringify({ ...run, route: [...run.route] });
  const stands = kept.get(`${name} stands`, [of, ...standing(on, run.stage), ...shapes], () => wheelStands(on, run));
  const parts = [-1, ...zones].map((z) => ({ name: `${name} on ${z}`, restsOn: [stands, ...(z < 0 ? [] : zoneParts(on, z, layers))] }));
  const pressed = kept.getAll(parts, (changed) => {
    const wanted = changed.map((i) => [-1, ...zones][i]);
    const found = pressOn(on, { run, layers }, stands, new Set(wanted));
    return wanted.map((z) => found.get(z) ?? null);
  });
  const presses = new Map(pressed.flatMap((held, i) => (held ? [[[-1, ...zones][i], held]] : [])));
  return peaksOf(on, { run, layers }, stands, presses);
}

/** `standingPeaks`, taken over from the report before where it still holds. */
export function keptStanding(kept: KeptParts, on: Evaluation, { run, layers }: { run: StandingRun; layers: Layers }): StandingPeaks {
  const { minX, minY, maxX, maxY } = boundsOf(run.area.outer);
  const places = Float64Array.of((minX + maxX) / 2, (minY + maxY) / 2);
  const marginM = Math.hypot(maxX - minX, maxY - minY) / 2 + widestM(run.vehicle);
  const of = [JSON.stringify(run.vehicle), run.dynamicFactor, run.area.outer.join()];
  const zones = zonesTouchedFrom(lookAround(on, run.vehicle, layers), places, marginM);
  const rests = zones.flatMap((z) => zoneParts(on, z, layers));
  return kept.get(`standing ${run.id}`, [...of, ...standing(on, null), ...rests], () =>
    standingPeaks(on, run, layers, (line) => keptEnvelope(kept, line.id, on, { run: line, layers })),
  );
}

/** Farthest that a wheel stands beside the line of its axle [m]. */
function widestM({ axles }: VehicleInput): number {
  return Math.max(...axles.map(({ wheels, trackM, acrossM }) => trackM + wheels * acrossM));
}

/** Deck, bays and what stands on the layers. */
function standing({ input, prepared, plan }: Evaluation, stage: number | null): unknown[] {
  const stockpiles = stage === null ? null : input.stages?.[stage]?.stockpiles;
  return [prepared.ground, prepared.bays, plan.objectStages.join(), stockpiles, ...input.objects];
}

/** Shape, levels, layers and stages of a zone. */
function zoneParts({ input, prepared, plan, makeUps }: Evaluation, z: number, layers: Layers): unknown[] {
  const stages = `${plan.layerStages[z].join()} ${plan.vegetationStages[z]}`;
  return [z, input.zones[z], prepared.zones[z], makeUps[z], JSON.stringify(layers[z]), stages];
}
