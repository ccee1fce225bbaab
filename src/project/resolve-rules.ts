/** What the build-up rules look at, from scene, catalogue and evaluation: layers as they come out, wheels, trees, limits. */

import { vehicleById } from '../catalogue/catalogue.ts';
import { DEFAULT_LIMITS } from '../catalogue/rule-limits.ts';
import type { Evaluation } from '../core/evaluation.ts';
import { commonAreaM2 } from '../core/geometry/common-area.ts';
import { areaInConvexM2 } from '../core/geometry/convex-clip.ts';
import { cellAt } from '../core/geometry/grid.ts';
import { isInside } from '../core/geometry/ring.ts';
import { findBuildUpFacts } from '../core/rules/build-up-rules.ts';
import type { LayerInput, Ring } from '../model/deck-input.ts';
import type { FindingFact } from '../model/finding.ts';
import type { LayerFacts, Limit, RuleLimits, TreeFacts, ZoneFacts } from '../model/rule-input.ts';
import type { SceneFile, SceneLayer, SceneLimits, SceneObject, SceneZone } from '../model/scene-file.ts';
import type { MaterialOf } from './materials.ts';
import { lineStrips, localLine, localRegion } from './resolve-shapes.ts';

/** Wheels that only graze a zone, by rounding of the drawing, don't make it a road [m²]. */
const GRAZED_M2 = 0.05;

/** What the build-up rules find in a scene. */
export function buildUpFacts(scene: SceneFile, on: Evaluation, materialOf: MaterialOf): FindingFact[] {
  const site = { limits: ruleLimits(scene.limits), rootResistant: scene.deck.rootResistant ?? null };
  return findBuildUpFacts(zoneFacts(scene, on, materialOf), treeFacts(scene, on), site);
}

/** The starting values, replaced where the scene gives its own. */
export function ruleLimits(own: SceneLimits = {}): RuleLimits {
  const entered = (value: number): Limit => ({
    value,
    source: { document: own.source?.trim() || 'value in the scene file, no source given', grade: 'entered' },
  });
  const limit = (key: Exclude<keyof RuleLimits, 'substrateMm'>) => {
    const value = own[key];
    return value === undefined ? DEFAULT_LIMITS[key] : entered(value);
  };
  const depths = Object.entries(own.substrateMm ?? {}).map(([form, value]): [string, Limit] => [form, entered(value)]);
  return {
    substrateMm: new Map([...DEFAULT_LIMITS.substrateMm, ...depths]),
    treeSoilM3: limit('treeSoilM3'),
    treeSoilMm: limit('treeSoilMm'),
    subsoilBelowMm: limit('subsoilBelowMm'),
    baseCourseMm: limit('baseCourseMm'),
    liftMm: limit('liftMm'),
    upstandMm: limit('upstandMm'),
    sillMm: limit('sillMm'),
    stripM: limit('stripM'),
    fallPercent: limit('fallPercent'),
    pondMm: limit('pondMm'),
    slidingRatio: limit('slidingRatio'),
    overturningRatio: limit('overturningRatio'),
  };
}

/** Zones as the rules see them; one that lies beyond the deck altogether carries nothing and is left out. */
export function zoneFacts(scene: SceneFile, on: Evaluation, materialOf: MaterialOf): ZoneFacts[] {
  const lanes = trafficLanes(scene, on.input.originM);
  const areas = (scene.setUpAreas ?? []).map(({ outline }) => localRegion(outline, undefined, on.input.originM));
  const buildUps = new Map(scene.buildups.map((buildUp) => [buildUp.id, buildUp]));
  return scene.zones.flatMap((zone, z): ZoneFacts[] => {
    if (on.zones[z].areaM2 === 0) return [];
    const { region } = on.input.zones[z];
    const lanesM2 = lanes.reduce((sum, lane) => sum + areaInConvexM2(region, Array.from(lane)), 0);
    const crossedM2 = lanesM2 + areas.reduce((sum, area) => sum + commonAreaM2([region, area]), 0);
    return [
      {
        id: zone.id,
        vegetationForm: buildUps.get(zone.buildup)?.vegetation?.form ?? null,
        trafficked: crossedM2 > GRAZED_M2,
        layers: layerFacts(buildUps.get(zone.buildup)?.layers ?? [], on.input.zones[z].buildUp.layers, on.zones[z].makeUpM, materialOf),
      },
    ];
  });
}

/** Layers as the rules see them: as drawn, as resolved, and the thickness the make-up layer comes out with. */
export function layerFacts(
  layers: readonly SceneLayer[],
  resolved: readonly LayerInput[],
  makeUpM: Evaluation['zones'][number]['makeUpM'],
  materialOf: MaterialOf,
): LayerFacts[] {
  return layers.map((layer, i) => {
    const { name, role, voidLm2, retentionLm2, mineral } = materialOf(layer.material);
    const { thicknessM, rangeM } = resolved[i];
    const made = rangeM ? makeUpM : null;
    return {
      name,
      role,
      orientation: layer.orientation ?? null,
      infill: layer.infill ?? false,
      voidLm2: voidLm2 ?? 0,
      retentionLm2: retentionLm2 ?? 0,
      mineral: mineral ?? false,
      leastM: made?.min ?? thicknessM,
      greatestM: made?.max ?? thicknessM,
    };
  });
}

/** Strips the vehicles need along their routes: the width drawn, or else the vehicle's own. */
function trafficLanes(scene: SceneFile, originM: readonly [number, number]): Ring[] {
  const own = new Map((scene.vehicles ?? []).map((vehicle) => [vehicle.id, vehicle]));
  return (scene.traffic ?? []).flatMap(({ vehicle, route, widthM }) => {
    const strip = widthM ?? (own.get(vehicle) ?? vehicleById.get(vehicle))?.widthM;
    if (strip === undefined) throw new RangeError(`trafficLanes: no vehicle "${vehicle}" in catalogue or scene`);
    return lineStrips(localLine(route, originM), strip);
  });
}

type SceneTree = Extract<SceneObject, { kind: 'tree' }>;

/** Trees and the substrate of the zone they stand in; trees of one zone share its soil. */
export function treeFacts(scene: SceneFile, on: Evaluation): TreeFacts[] {
  const [x0, y0] = on.input.originM;
  const standing = (scene.objects ?? [])
    .filter((object): object is SceneTree => object.kind === 'tree')
    .map((tree) => ({ tree, z: on.input.zones.findIndex(({ region }) => isInside(region, tree.at[0] - x0, tree.at[1] - y0)) }));
  return standing.map(({ tree: { id, at }, z }): TreeFacts => {
    if (z < 0) return { id, at, zone: null, soilM: 0, shareM3: 0, sharedBy: 1 };
    const sharedBy = standing.filter((other) => other.z === z).length;
    return {
      id,
      at,
      zone: (scene.zones[z] as SceneZone).id,
      soilM: soilAtM(on, z, cellAt(on.prepared.ground.grid, at[0] - x0, at[1] - y0)),
      shareM3: soilM3(on, z) / sharedBy,
      sharedBy,
    };
  });
}

function soilM3(on: Evaluation, z: number): number {
  const { areaM2, makeUpM3 } = on.zones[z];
  return on.input.zones[z].buildUp.layers.reduce((sum, { role, rangeM, thicknessM }) => {
    if (role !== 'substrate') return sum;
    return sum + (rangeM ? makeUpM3 : thicknessM * areaM2);
  }, 0);
}

/** None where the place lies over an opening or beyond the deck. */
function soilAtM(on: Evaluation, z: number, cell: number): number {
  const position = on.prepared.zones[z].cells.indexOf(cell);
  if (position < 0) return 0;
  const made = on.makeUps[z].thicknessM;
  const makeUpM = made[made.length === 1 ? 0 : position];
  return on.input.zones[z].buildUp.layers.reduce((sum, { role, rangeM, thicknessM }) => {
    return role === 'substrate' ? sum + (rangeM ? makeUpM : thicknessM) : sum;
  }, 0);
}
