/** Lanes, machines and access points of a scene in local metres, and what their rules find. */

import { vehicleById } from '../catalogue/catalogue.ts';
import { fireTable } from '../catalogue/fire-access.ts';
import type { Evaluation } from '../core/evaluation.ts';
import { type LaneResult, laneFacts, laneResults, plantFacts, reachResult } from '../core/route-facts.ts';
import type { ZoneReach } from '../core/stages/reach.ts';
import type { Ring } from '../model/deck-input.ts';
import type { FindingFact } from '../model/finding.ts';
import type { FireTableId } from '../model/fire-access.ts';
import type { Report, ReportReach, ReportRoute } from '../model/report.ts';
import type { AccessInput, LaneInput, PlantInput } from '../model/route-input.ts';
import type { PointM, SceneFile, SceneVehicle } from '../model/scene-file.ts';
import { sourceLine } from '../model/source.ts';
import { planText, siteAlong } from './kept-ground.ts';
import type { KeptParts } from './kept-parts.ts';
import { obstaclesOf } from './obstacles.ts';
import { localLine, localRing, objectInput } from './resolve-shapes.ts';

/** The German table, unless the scene chooses another. */
export const DEFAULT_FIRE_TABLE: FireTableId = 'de-mrflfw';

type Moving = Pick<SceneVehicle, 'name' | 'widthM' | 'axles'>;

export interface RoutePart {
  readonly facts: readonly FindingFact[];
  readonly report: Pick<Report, 'routes' | 'reach'>;
}

/** Lanes, machines and reach of one evaluation. */
export function routePart(scene: SceneFile, on: Evaluation, kept: KeptParts): RoutePart {
  const { originM } = on.input;
  const { deck, objects, traffic, limits, vehicles, stages, accessPoints } = scene;
  const drawn = kept.get('lanes', [...originM, deck, objects, traffic, limits, vehicles], () => lanesOf(scene, originM));
  const laned = drawn.map((lane) =>
    kept.get(`lane ${lane.id}`, [lane, ...siteAlong(on, lane.line)], () => {
      const [result] = laneResults(on, [lane]);
      return { result, facts: laneFacts(on, [result]) };
    }),
  );
  const lanes = laned.map(({ result }) => result);
  const laid = [on.prepared, planText(on)];
  const plants = kept.get('plant', [...laid, stages, vehicles], () => plantFacts(on, plantsOf(scene, originM)));
  const reach = kept.get('reach', [...laid, accessPoints], () => reachResult(on, accessOf(scene, originM)));
  return {
    facts: [...laned.flatMap(({ facts }) => facts), ...plants, ...reach.facts],
    report: {
      ...(lanes.length > 0 ? { routes: lanes.map(routeReport) } : {}),
      ...(reach.reaches.length > 0 ? { reach: reachReport(on, reach.reaches) } : {}),
    },
  };
}

/** Lanes that fire appliances drive, by the table chosen; none where no table is to be used. */
export function lanesOf(scene: SceneFile, originM: PointM): LaneInput[] {
  // A lane may lead over the edge of the deck, where an upstand is left out or ramped: only what stands on it is in its way.
  const obstacles = obstaclesOf(scene, originM).filter(({ rings }) => rings.length > 0);
  const bounds = laneBounds(scene, originM);
  const vehicleOf = vehicleLookup(scene);
  return (scene.traffic ?? []).flatMap(({ id, vehicle, route, widthM }): LaneInput[] => {
    if (!vehicle.startsWith('fire-')) return [];
    const { widthM: vehicleWidthM, axles } = vehicleOf(vehicle);
    const grossKN = axles.reduce((sum, axle) => sum + axle.loadKN, 0);
    const table = fireTable(scene.limits?.fireTable ?? DEFAULT_FIRE_TABLE, grossKN);
    return table ? [{ id, line: localLine(route, originM), widthM: widthM ?? null, vehicleWidthM, table, bounds, obstacles }] : [];
  });
}

/** What may bound a lane: upstands, openings, walls, blocks and retaining edges. Trees stand apart from one another. */
function laneBounds(scene: SceneFile, originM: PointM): Float64Array[] {
  const closed = (ring: Ring) => Float64Array.of(...ring, ring[0], ring[1]);
  const objects = (scene.objects ?? []).flatMap((object): Float64Array[] => {
    if (object.kind === 'tree') return [];
    if (object.kind === 'retaining') return [localLine(object.line, originM)];
    return objectInput(object, originM).pieces.map(({ ring }) => closed(ring));
  });
  const upstands = (scene.deck.edges ?? []).filter(({ kind }) => kind === 'upstand').map(({ line }) => localLine(line, originM));
  const openings = (scene.deck.openings ?? []).map((outline) => closed(localRing(outline, originM)));
  return [...objects, ...upstands, ...openings];
}

/** Machines of all stages, in the order of the file. */
export function plantsOf(scene: SceneFile, originM: PointM): PlantInput[] {
  const vehicleOf = vehicleLookup(scene);
  return (scene.stages ?? []).flatMap(({ plant }, stage) =>
    (plant ?? []).map(({ vehicle, route }): PlantInput => {
      const { name, widthM } = vehicleOf(vehicle);
      return { stage, vehicle: name, line: localLine(route, originM), widthM };
    }),
  );
}

/** Access points in local coordinates. */
export function accessOf(scene: SceneFile, originM: PointM): AccessInput[] {
  return (scene.accessPoints ?? []).map(({ id, at, kind, reachM }) => ({
    id,
    kind,
    x: at[0] - originM[0],
    y: at[1] - originM[1],
    reachM: reachM ?? null,
  }));
}

function vehicleLookup(scene: SceneFile): (id: string) => Moving {
  const own = new Map((scene.vehicles ?? []).map((vehicle) => [vehicle.id, vehicle]));
  return (id) => {
    const vehicle = own.get(id) ?? vehicleById.get(id);
    if (!vehicle) throw new RangeError(`vehicleLookup: no vehicle "${id}" in catalogue or scene`);
    return vehicle;
  };
}

function routeReport({ lane, widest, requiredM, tightest, profile, bounded }: LaneResult): ReportRoute {
  return {
    id: lane.id,
    table: lane.table.id,
    country: lane.table.country,
    ruleName: lane.table.name,
    source: sourceLine(widest && lane.table.bends ? lane.table.bends.source : lane.table.straightM.source),
    widthM: lane.widthM,
    requiredM,
    leastOuterM: tightest ? tightest.outerM : null,
    steepestPercent: profile.steepest ? profile.steepest.percent : null,
    stepMm: profile.step ? 1000 * profile.step.heightM : null,
    ...(bounded ? { bounded: { lengthM: bounded.lengthM, clearM: bounded.clearM } } : {}),
  };
}

/** One row per stage that has something to bring. */
function reachReport(on: Evaluation, reaches: readonly ZoneReach[]): ReportReach[] {
  return on.plan.stages.flatMap(({ id }, s): ReportReach[] => {
    const of = reaches.filter(({ stage }) => stage === s);
    if (of.length === 0) return [];
    const sum = (value: (one: ZoneReach) => number) => of.reduce((all, one) => all + value(one), 0);
    return [{ stage: id, zones: of.length, areaM2: sum((one) => one.areaM2), unreachedM2: sum((one) => one.unreachedM2) }];
  });
}
