/** What the crew must know of a stage: heights of heaps by bay, order of layers, stop points. */

import type { BuildUpView, Snapshot } from '../../model/engine.ts';
import type { StageView } from '../../model/maps.ts';
import { type HeapEntry, heapBoard, heapMaterials } from './heap-board.ts';

export type TalkOf = Pick<Snapshot, 'report' | 'scene' | 'stages' | 'buildUps' | 'runs' | 'materialNames'>;

/** Loose materials of the stage first: those heaped, then those laid in it, then all others. */
export function talkMaterials({ report, scene, stages }: TalkOf, stage: number): string[] {
  const all = heapMaterials(report);
  const { id, lays } = stages[stage] as StageView;
  const heaped = (scene.stages?.find((one) => one.id === id)?.stockpiles ?? []).map(({ material }) => material);
  const wanted = [...heaped, ...lays.map(({ materialId }) => materialId)].filter((material) => all.includes(material));
  return [...new Set([...wanted, ...all])];
}

/** Bays that may have heaps of one height. */
export interface HeightGroup {
  readonly heightM: number;
  readonly bays: readonly string[];
}

export interface TalkHeights {
  /** Lowest first; confirmed bays only. */
  readonly groups: readonly HeightGroup[];
  readonly over: readonly string[];
  /** Nobody confirmed what they carry, or nothing is permitted there. */
  readonly ask: readonly string[];
}

export function talkHeights({ report, scene, stages }: TalkOf, stage: number, material: string): TalkHeights {
  const entries = heapBoard(report, scene, (stages[stage] as StageView).id, material);
  const groups = new Map<number, string[]>();
  for (const { bay, state, confirmed, heightM } of entries) {
    if (state === 'free' && confirmed) groups.set(heightM, [...(groups.get(heightM) ?? []), bay]);
  }
  const named = (holds: (entry: HeapEntry) => boolean) => entries.filter(holds).map(({ bay }) => bay);
  return {
    groups: [...groups].map(([heightM, bays]) => ({ heightM, bays })).sort((a, b) => a.heightM - b.heightM),
    over: named(({ state }) => state === 'over'),
    ask: named(({ state, confirmed }) => state !== 'over' && (!confirmed || state === 'no limit')),
  };
}

export interface TalkLayer {
  readonly layer: BuildUpView['layers'][number];
  readonly today: boolean;
}

/** A build-up that gets a layer in the stage, with what lies by its end, from the bottom up. */
export interface TalkBuildUp {
  readonly id: string;
  readonly name: string;
  /** Names of the zones in which something is laid, each once. */
  readonly zones: readonly string[];
  readonly layers: readonly TalkLayer[];
}

/** Stages place whole layers from the bottom up, so of each build-up the layers up to the last laid today lie there. */
export function talkBuildUps({ buildUps, stages, scene }: TalkOf, stage: number): TalkBuildUp[] {
  const { lays } = stages[stage] as StageView;
  const names = new Map(scene.zones.map(({ id, name }) => [id, name ?? id]));
  return buildUps.flatMap((buildUp): TalkBuildUp[] => {
    const zones = buildUp.zones.filter((zone) => lays.some((lay) => lay.zones.includes(zone)));
    const isToday = (layer: TalkLayer['layer']) =>
      lays.some(({ materialId, role, zones: where }) => {
        return materialId === layer.materialId && role === layer.role && where.some((zone) => zones.includes(zone));
      });
    const top = buildUp.layers.findLastIndex(isToday);
    if (top < 0) return [];
    const layers = buildUp.layers.slice(0, top + 1).map((layer) => ({ layer, today: isToday(layer) }));
    return [{ id: buildUp.id, name: buildUp.name, zones: [...new Set(zones.map((zone) => names.get(zone) ?? zone))], layers }];
  });
}

export interface TalkStop {
  readonly hold: StageView['holdPoints'][number];
  /** Counted from 1; null for the stage itself. */
  readonly fromStage: number | null;
}

/** Stop points of the stage, after those that earlier stages left open. */
export function talkStops({ stages }: Pick<TalkOf, 'stages'>, stage: number): TalkStop[] {
  const earlier = stages
    .slice(0, stage)
    .flatMap(({ holdPoints }, at) => holdPoints.filter(({ on }) => on === '').map((hold) => ({ hold, fromStage: at + 1 })));
  const own = (stages[stage] as StageView).holdPoints.map((hold) => ({ hold, fromStage: null }));
  return [...own, ...earlier.reverse()];
}
