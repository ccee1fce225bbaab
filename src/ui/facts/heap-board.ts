/** How high one loose material may be heaped, bay by bay, at one stage. */

import type { StageView } from '../../model/maps.ts';
import type { Report, ReportBay } from '../../model/report.ts';
import type { SceneBasis, SceneFile } from '../../model/scene-file.ts';

/** free: a height is left · over: more lies there than may · no limit: nothing is permitted, so nothing can be said. */
export type HeapState = 'free' | 'over' | 'no limit';

export interface HeapEntry {
  readonly bay: string;
  readonly state: HeapState;
  readonly heightM: number;
  readonly overKNm2: number;
  readonly confirmed: boolean;
  /** While building. */
  readonly permittedKNm2: number | null;
  readonly basis: SceneBasis | undefined;
}

/** Loose heaps on decks are usually kept lower; common practice, no rule [m]. */
const USUAL_M = 2;

/** Whether some height is more than is usual. */
export const isUnusual = (entries: readonly { readonly heightM: number }[]): boolean => entries.some(({ heightM }) => heightM > USUAL_M);

/** Heaps belong to a stage: for the finished garden the last one is shown. Null without stages. */
export function heapStage(stages: readonly StageView[], shown: number | null): number | null {
  if (stages.length === 0) return null;
  return Math.min(shown ?? stages.length - 1, stages.length - 1);
}

/** Ids of the loose materials, in the order of the report. */
export function heapMaterials(report: Report): string[] {
  return [...new Set(report.bays.flatMap((bay) => (bay.heapM ?? []).map(({ material }) => material)))];
}

/** All bays in the order of their names. */
export function heapBoard(report: Report, scene: SceneFile, stage: string, material: string): HeapEntry[] {
  const given = new Map(scene.deck.bays.map((bay) => [bay.id, bay]));
  const entries = report.bays.map((bay) => heapEntry(bay, given.get(bay.id)?.basis, stage, material));
  return entries.sort((a, b) => a.bay.localeCompare(b.bay, 'en', { numeric: true }));
}

function heapEntry(bay: ReportBay, basis: SceneBasis | undefined, stage: string, material: string): HeapEntry {
  const found = bay.heapM?.find((one) => one.stage === stage && one.material === material);
  const permittedKNm2 = bay.stages.find((one) => one.stage === stage)?.permittedKNm2 ?? null;
  const { heightM = 0, overKNm2 = 0 } = found ?? {};
  const state = found === undefined ? 'no limit' : overKNm2 > 0 ? 'over' : 'free';
  return { bay: bay.id, state, heightM, overKNm2, confirmed: bay.confirmed, permittedKNm2, basis };
}
