/** From a checked scene file to the core's numbers; the only place where scene and catalogue meet the calculation. */

import type { BayInput, BuildUpInput, DeckInput, FinishInput, StageInput, ZoneInput } from '../model/deck-input.ts';
import type { PointM, SceneBay, SceneBuildUp, SceneFile, SceneFinish, SceneStage, SceneZone } from '../model/scene-file.ts';
import { GRAVITY_MS2 } from '../model/units.ts';
import { placeIndices } from '../scene/place-indices.ts';
import { ContentMemo } from './content-memo.ts';
import { looseKNm3, type MaterialOf, materialLookup } from './materials.ts';
import { resolveBuildUp } from './resolve-layers.ts';
import { localNet, localOrigin, localRegion, localRing, objectInput } from './resolve-shapes.ts';

/** Side of a cell where the scene gives none [m]; contract, section 1. */
export const DEFAULT_CELL_M = 0.25;

export interface ResolvedScene {
  readonly input: DeckInput;
  readonly materialOf: MaterialOf;
  readonly memo: ContentMemo;
}

/**
 * Resolves a scene.
 * @param scene - checked scene file
 * @param options - `cellM` overrides the scene's cell [m]; `previous` lets unchanged parts stay the same objects
 * @returns the core's input
 */
export function resolveScene(
  scene: SceneFile,
  options: { cellM?: number | undefined; previous?: ResolvedScene | undefined } = {},
): ResolvedScene {
  const memo = new ContentMemo(options.previous?.memo);
  const materialOf = materialLookup(scene);
  const { deck } = scene;
  const originM = localOrigin(deck.outline);
  const objects = scene.objects ?? [];
  const zoneIndex = new Map(scene.zones.map((zone, i) => [zone.id, i]));
  const objectIndex = new Map(objects.map((object, i) => [object.id, i]));
  const buildUps = new Map(scene.buildups.map((buildUp) => [buildUp.id, knownBuildUp(buildUp, memo, materialOf)]));
  const input: DeckInput = {
    originM,
    cellM: options.cellM ?? scene.grid?.cellM ?? DEFAULT_CELL_M,
    deck: memo.get('deck', [originM, deck.outline, deck.openings], () => localRegion(deck.outline, deck.openings, originM)),
    levels: deck.levels
      ? memo.get('levels', [originM, deck.levels], () => localNet(deck.levels as NonNullable<typeof deck.levels>, originM))
      : null,
    bays: deck.bays.map((bay) => resolveBay(bay, originM, memo)),
    zones: scene.zones.map((zone) => resolveZone(zone, buildUps, { originM, memo, materialOf })),
    columns: memo.get('columns', [originM, deck.columns], () =>
      (deck.columns ?? []).map(({ id, at: [x, y] }) => ({ id, x: x - originM[0], y: y - originM[1] })),
    ),
    objects: objects.map((object) => memo.get('object', [originM, object], () => objectInput(object, originM))),
    // An empty list gives no order either, so the stages are derived.
    stages: scene.stages?.length
      ? scene.stages.map((stage) => resolveStage(stage, { originM, memo, materialOf, zoneIndex, objectIndex }))
      : null,
  };
  return { input, materialOf, memo };
}

/** Whether the permitted load may count: it is given, and document, revision and date are all there. Contract, section 2, Basis. */
export function isConfirmed(bay: SceneBay): boolean {
  if (bay.permanentKNm2 === undefined && bay.totalKNm2 === undefined) return false;
  const { document, revision, date } = bay.basis ?? {};
  return [document, revision, date].every((text) => text !== undefined && text.trim() !== '');
}

function resolveBay(bay: SceneBay, originM: PointM, memo: ContentMemo): BayInput {
  return {
    id: bay.id,
    region: memo.get('bay', [originM, bay.outline], () => localRegion(bay.outline, undefined, originM)),
    permanentKNm2: bay.permanentKNm2 ?? null,
    imposedKNm2: bay.imposedKNm2 ?? null,
    totalKNm2: bay.totalKNm2 ?? null,
    stageKNm2: bay.stageKNm2 ?? null,
    confirmed: isConfirmed(bay),
  };
}

interface ResolveContext {
  readonly originM: PointM;
  readonly memo: ContentMemo;
  readonly materialOf: MaterialOf;
}

interface KnownBuildUp {
  readonly input: BuildUpInput;
  /** Everything it depends on. */
  readonly content: readonly unknown[];
}

function knownBuildUp(buildUp: SceneBuildUp, memo: ContentMemo, materialOf: MaterialOf): KnownBuildUp {
  const content = [buildUp, ...buildUp.layers.map((layer) => materialOf(layer.material))];
  return { input: memo.get('build-up', content, () => resolveBuildUp(buildUp, materialOf)), content };
}

function resolveZone(zone: SceneZone, buildUps: ReadonlyMap<string, KnownBuildUp>, { originM, memo }: ResolveContext): ZoneInput {
  const buildUp = buildUps.get(zone.buildup);
  if (!buildUp) throw new RangeError(`resolveZone: no build-up "${zone.buildup}"`);
  const region = memo.get('zone region', [originM, zone.outline, zone.holes], () => localRegion(zone.outline, zone.holes, originM));
  const finish = memo.get('finish', [originM, zone.finish], () => resolveFinish(zone.finish ?? { kind: 'build-up' }, originM));
  return memo.get('zone', [originM, zone, ...buildUp.content], () => ({
    id: zone.id,
    region,
    buildUp: buildUp.input,
    imposedKNm2: zone.imposedKNm2 ?? 0,
    finish,
  }));
}

/** Planes: z = z₀ − fall/100 · ((p − at) · (sin b, cos b)), b clockwise from +y. Contract, section 2, Finished level. */
function resolveFinish(finish: SceneFinish, originM: PointM): FinishInput {
  switch (finish.kind) {
    case 'build-up':
      return { kind: 'build-up' };
    case 'level':
      return { kind: 'plane', x: 0, y: 0, z: finish.levelM, slopeX: 0, slopeY: 0 };
    case 'plane': {
      const bearing = (finish.towardsDeg * Math.PI) / 180;
      const fall = finish.fallPercent / 100;
      const [x, y, z] = finish.at;
      return {
        kind: 'plane',
        x: x - originM[0],
        y: y - originM[1],
        z,
        slopeX: -fall * Math.sin(bearing),
        slopeY: -fall * Math.cos(bearing),
      };
    }
    case 'spots':
      return { kind: 'net', net: localNet(finish, originM) };
  }
}

interface StageContext extends ResolveContext {
  readonly zoneIndex: ReadonlyMap<string, number>;
  readonly objectIndex: ReadonlyMap<string, number>;
}

function resolveStage(stage: SceneStage, { originM, memo, materialOf, zoneIndex, objectIndex }: StageContext): StageInput {
  const piles = stage.stockpiles ?? [];
  const materials = piles.map((pile) => materialOf(pile.material));
  return {
    id: stage.id,
    name: stage.name,
    place: (stage.place ?? []).map((place) => placeIndices(place, zoneIndex, objectIndex)),
    stockpiles: memo.get('stockpiles', [originM, piles, materials], () =>
      piles.map((pile, i) => ({
        id: pile.id,
        ring: localRing(pile.outline, originM),
        heightM: pile.heightM,
        kNm2: pile.heightM * looseKNm3(materials[i]),
      })),
    ),
    floodKNm2: ((stage.floodTestMm ?? 0) * GRAVITY_MS2) / 1000,
  };
}
