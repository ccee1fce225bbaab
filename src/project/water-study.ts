/** All that is worked out about water on a scene, once per evaluation: run-off, ways of the water, blocked outlets, uplift. */

import { UPLIFT_FACTORS } from '../catalogue/rule-limits.ts';
import type { Evaluation } from '../core/evaluation.ts';
import type { PreparedDeck } from '../core/prepare.ts';
import {
  type DrainedWater,
  drainedWater,
  type RoutedWater,
  refillCourse,
  waterCourse,
  waterPools,
  waterRoutes,
} from '../core/water-course.ts';
import { type ZoneUplift, zoneUplift } from '../core/zone-uplift.ts';
import type { Limit } from '../model/rule-input.ts';
import type { PointM, SceneBuildUp, SceneFile, SceneFlotation } from '../model/scene-file.ts';
import type { WaterOutlet, WaterSite } from '../model/water-input.ts';
import { type BlockedOutlet, NO_WAY_OUT } from '../model/water-result.ts';
import { KeptParts } from './kept-parts.ts';
import { keptBlocked } from './kept-water.ts';
import type { MaterialOf } from './materials.ts';
import { localLine } from './resolve-shapes.ts';
import { bareRunoff, type ZoneRunoff, zoneRunoffs } from './run-off.ts';
import { type DrainFlow, drainFlow } from './water-drains.ts';
import { freePores, upliftLayers } from './water-layers.ts';

/** Overflows alone at work. */
export type Emergency = DrainedWater;

export interface WaterStudy {
  readonly runoffs: readonly ZoneRunoff[];
  readonly bare: Omit<ZoneRunoff, 'slope'>;
  /** All outlets at work. */
  readonly course: RoutedWater;
  /** Overflows alone: what they are to carry, and how high water stands until they run. */
  readonly emergency: Emergency;
  /** Per outlet: with it closed; null for overflows and what is left out. */
  readonly blocked: readonly (BlockedOutlet | null)[];
  readonly drains: readonly (DrainFlow | null)[];
  readonly uplifts: readonly ZoneUplift[];
  /** Zones with light layers where nothing says how high water can stand. */
  readonly upliftUnknown: readonly number[];
  readonly factors: Readonly<Record<'upFactor' | 'downFactor', Limit>>;
}

/** The report and the maps of one evaluation ask for the same. */
const studies = new WeakMap<Evaluation, { readonly scene: SceneFile; readonly study: WaterStudy | null }>();

/** Water of a scene, worked out once per evaluation; null where it draws neither outlets nor rain, nor says where water stands. */
export function waterStudy(scene: SceneFile, on: Evaluation, materialOf: MaterialOf, kept = new KeptParts()): WaterStudy | null {
  const known = studies.get(on);
  if (known?.scene === scene) return known.study;
  const study = studied(scene, on, { materialOf, kept });
  studies.set(on, { scene, study });
  return study;
}

function studied(scene: SceneFile, on: Evaluation, { materialOf, kept }: { materialOf: MaterialOf; kept: KeptParts }): WaterStudy | null {
  if (!scene.rain && !scene.deck.outlets?.length && !scene.flotation) return null;
  const buildUps = buildUpsOf(scene);
  const runoffs = zoneRunoffs(scene, on, materialOf, kept);
  const bare = bareRunoff(scene);
  const outlets = waterOutlets(scene, on.input.originM);
  const site: WaterSite = {
    outlets,
    spills: (scene.deck.edges ?? []).map(({ id, line, membraneTopM }) => ({ id, line: localLine(line, on.input.originM), membraneTopM })),
    zones: buildUps.map((buildUp, z) => ({
      peakC: runoffs[z].peak.c,
      freePores: freePores(buildUp, on.input.zones[z].buildUp, materialOf),
    })),
    bareC: bare.peak.c,
  };
  const { course, emergency } = routed(on, site, kept);
  const factors = upliftFactors(scene.flotation);
  const layers = buildUps.map((buildUp) => upliftLayers(buildUp, materialOf));
  const standing = {
    levelM: standingLevel(scene, on, emergency),
    factors: { up: factors.upFactor.value, down: factors.downFactor.value },
  };
  return {
    runoffs,
    bare,
    course,
    emergency,
    blocked: outlets.map(({ kind }, o) => (kind === 'outlet' && course.outletCells[o] >= 0 ? keptBlocked(kept, on, course, o) : null)),
    drains: buildUps.map((buildUp, z) => drainFlow({ on, z, buildUp, runoff: runoffs[z], rain: scene.rain, course, materialOf, kept })),
    uplifts: layers.map((ofZone, z) => {
      const { input, prepared, makeUps, plan } = on;
      const laid = [
        input.zones[z],
        prepared.zones[z],
        makeUps[z],
        prepared.deckLevelsM,
        plan.layerStages[z].join(),
        JSON.stringify(ofZone),
      ];
      return kept.get(`uplift ${z}`, [...laid, scene.flotation, emergency], () => zoneUplift(on, z, ofZone, standing));
    }),
    upliftUnknown: unknownWater(scene, on, emergency).filter((z) => layers[z].some(({ light }) => light)),
    factors,
  };
}

interface Routed {
  readonly course: RoutedWater;
  readonly emergency: Emergency;
}

/** Water by the deck it was routed on: a thicker layer leaves it as it is. */
const known = new WeakMap<PreparedDeck, Routed & { readonly key: string }>();

/** Where zones have other shapes or coefficients, the routes are still the same: they rest on the deck alone. */
function routed(on: Evaluation, site: WaterSite, kept: KeptParts): Routed {
  const { outlets, spills, zones, bareC } = site;
  const edges = spills.map(({ id, line, membraneTopM }) => [id, [...line], membraneTopM]);
  const overflows = { ...site, outlets: outlets.filter(({ kind }) => kind === 'overflow') };
  // Asked for by every report, or one that does not need them would drop them.
  const { deckLevelsM, deckSurface, ground } = on.prepared;
  const deck = [ground, deckLevelsM, deckSurface, JSON.stringify([outlets, edges])];
  const routes = kept.get('routes', deck, () => waterRoutes(on, site));
  const pools = kept.get('pools', [routes], () => waterPools(routes));
  const overflowRoutes = kept.get('overflow routes', deck, () => waterRoutes(on, overflows));
  const key = JSON.stringify([outlets, edges, zones.map(({ peakC }) => peakC), bareC]);
  const before = known.get(on.prepared);
  if (before?.key === key) return { course: refillCourse(on, before.course, site), emergency: before.emergency };
  const course = waterCourse(on, site, routes, pools);
  const emergency = drainedWater(on, overflows, overflowRoutes);
  known.set(on.prepared, { key, course, emergency });
  return { course, emergency };
}

function buildUpsOf(scene: SceneFile): SceneBuildUp[] {
  const byId = new Map(scene.buildups.map((buildUp) => [buildUp.id, buildUp]));
  return scene.zones.map(({ buildup }) => {
    const found = byId.get(buildup);
    if (!found) throw new RangeError(`waterStudy: no build-up "${buildup}"`);
    return found;
  });
}

function waterOutlets({ deck }: SceneFile, originM: PointM): WaterOutlet[] {
  return (deck.outlets ?? []).map(({ id, kind, at, lps, invertM }) => ({
    id,
    kind,
    x: at[0] - originM[0],
    y: at[1] - originM[1],
    lps: lps ?? null,
    invertM: invertM ?? null,
  }));
}

function upliftFactors(own: SceneFlotation | undefined): WaterStudy['factors'] {
  const entered = (value: number): Limit => ({
    value,
    source: { document: own?.source?.trim() || 'value in the scene file, no source given', grade: 'entered' },
  });
  return {
    upFactor: own?.upFactor === undefined ? UPLIFT_FACTORS.upFactor : entered(own.upFactor),
    downFactor: own?.downFactor === undefined ? UPLIFT_FACTORS.downFactor : entered(own.downFactor),
  };
}

/** Zones with deck that no overflow and no edge relieves. */
function unknownWater({ flotation, zones }: SceneFile, on: Evaluation, { sinkAt }: Emergency): number[] {
  if (flotation?.waterLevelM !== undefined) return [];
  return [...zones.keys()].filter((z) => on.prepared.zones[z].cells.some((cell) => sinkAt[cell] === NO_WAY_OUT));
}

/** The level the scene gives, or that at which the overflows begin to run; not known where nothing lets the water out. */
function standingLevel({ flotation }: SceneFile, on: Evaluation, { filledM, sinkAt }: Emergency): (cell: number) => number {
  const given = flotation?.waterLevelM;
  if (given !== undefined) return () => given;
  return (cell) => (sinkAt[cell] < 0 ? on.prepared.deckLevelsM[cell] : filledM[cell]);
}
