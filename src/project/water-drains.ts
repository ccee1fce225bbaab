/** Flow in the drainage of a zone along the longest way the water has run, against what element or fill can carry. */

import type { Evaluation } from '../core/evaluation.ts';
import { darcyLsm, giroudHeadM, mcEnroeHeadM, stripFlowLsm } from '../core/water/drain-flow.ts';
import type { SceneBuildUp, SceneRain } from '../model/scene-file.ts';
import type { WaterCourse } from '../model/water-result.ts';
import type { MaterialOf } from './materials.ts';
import type { ZoneRunoff } from './run-off.ts';
import { type Drain, drainOf } from './water-layers.ts';

export interface DrainFlow {
  readonly drain: Drain;
  readonly flowLsm: number;
  readonly capacityLsm: number;
  /** Greatest height of water in a granular drain; null for an element. */
  readonly head: { readonly mcEnroeM: number; readonly giroudM: number } | null;
  readonly cell: number;
}

interface DrainCase {
  readonly on: Evaluation;
  readonly z: number;
  readonly buildUp: SceneBuildUp;
  readonly runoff: ZoneRunoff;
  readonly rain: SceneRain | undefined;
  readonly course: WaterCourse;
  readonly materialOf: MaterialOf;
}

/** Metres per second of one litre per second and hectare: 0.001 m³ on 10 000 m². */
const MS_PER_LPSHA = 1e-7;

/** Null without rain, without a drain of known capacity, or where the zone has no cells. */
export function drainFlow({ on, z, buildUp, runoff, rain, course, materialOf }: DrainCase): DrainFlow | null {
  const drain = drainOf(buildUp, on.input.zones[z].buildUp, materialOf);
  const { owner } = on.prepared.zoneCells;
  let cell = -1;
  // Cells shared with a neighbour belong to the ways of both: those of the zone alone tell its own.
  for (const one of on.prepared.zones[z].cells) {
    if (owner[one] === z && !(cell >= 0 && course.pathM[cell] >= course.pathM[one])) cell = one;
  }
  if (!rain || !drain || cell < 0) return null;
  const flowLsm = stripFlowLsm(rain.designLpsHa, course.pathM[cell]);
  if (drain.kind === 'element') return { drain, flowLsm, capacityLsm: drain.flowLsm, head: null, cell };
  // The way as long as it would be, were all of it of this zone: the flow at its end is the same.
  const c = runoff.peak.c;
  const layer = {
    inflowMs: rain.designLpsHa * MS_PER_LPSHA * c,
    permeabilityMs: drain.permeabilityMs,
    lengthM: c > 0 ? course.pathM[cell] / c : 0,
    slope: runoff.slope,
  };
  const head = { mcEnroeM: mcEnroeHeadM(layer), giroudM: giroudHeadM(layer) };
  return { drain, flowLsm, capacityLsm: darcyLsm(drain.permeabilityMs, drain.thicknessM, runoff.slope), head, cell };
}
