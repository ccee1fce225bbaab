/** Flow in the drainage of a zone along the longest way the water has run, against what element or fill can carry. */

import type { Evaluation } from '../core/evaluation.ts';
import { darcyLsm, giroudHeadM, mcEnroeHeadM, stripFlowLsm } from '../core/water/drain-flow.ts';
import type { SceneBuildUp, SceneRain } from '../model/scene-file.ts';
import type { WaterCourse } from '../model/water-result.ts';
import type { KeptParts } from './kept-parts.ts';
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
  readonly kept: KeptParts;
}

/** Metres per second of one litre per second and hectare: 0.001 m³ on 10 000 m². */
const MS_PER_LPSHA = 1e-7;

/** Null without rain, without a drain of known capacity, or where no water of the zone finds a way out. */
export function drainFlow({ on, z, buildUp, runoff, rain, course, materialOf, kept }: DrainCase): DrainFlow | null {
  const drain = drainOf(buildUp, on.input.zones[z].buildUp, materialOf);
  const { zones, zoneCells } = on.prepared;
  const cell = kept.get(`longest way ${z}`, [course.pathM, zones[z], zoneCells], () => endOfLongestWay(on, z, course));
  if (!rain || !drain || cell < 0) return null;
  const flowLsm = stripFlowLsm(rain.designLpsHa, course.pathM[cell]);
  if (drain.kind === 'element') return { drain, flowLsm, capacityLsm: drain.flowLsm, head: null, cell };
  // The way as long as it would be, were all of it of this zone: the flow at its end is the same.
  // Where nothing runs off the zone itself, what comes from beyond it counts as rain on a way without soil.
  const c = runoff.peak.c > 0 ? runoff.peak.c : 1;
  const layer = {
    inflowMs: rain.designLpsHa * MS_PER_LPSHA * c,
    permeabilityMs: drain.permeabilityMs,
    lengthM: course.pathM[cell] / c,
    slope: runoff.slope,
  };
  const head = { mcEnroeM: mcEnroeHeadM(layer), giroudM: giroudHeadM(layer) };
  return { drain, flowLsm, capacityLsm: darcyLsm(drain.permeabilityMs, drain.thicknessM, runoff.slope), head, cell };
}

/**
 * Cells shared with a neighbour belong to the ways of both: those of the zone alone tell its own, and the shared ones only where a
 * zone is too narrow to have any. Where water finds no way out there is no flow to tell.
 */
function endOfLongestWay(on: Evaluation, z: number, { pathM }: WaterCourse): number {
  const { owner } = on.prepared.zoneCells;
  const longest = (of: (cell: number) => boolean) => {
    let end = -1;
    for (const cell of on.prepared.zones[z].cells) {
      if (!Number.isNaN(pathM[cell]) && of(cell) && !(end >= 0 && pathM[end] >= pathM[cell])) end = cell;
    }
    return end;
  };
  const own = longest((cell) => owner[cell] === z);
  return own >= 0 ? own : longest(() => true);
}
