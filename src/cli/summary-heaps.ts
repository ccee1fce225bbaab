/** The heap board in short: per bay the heights that hold at every stage. */

import type { Report, ReportBay } from '../model/report.ts';
import { table } from './text-table.ts';
import type { Writing } from './writing.ts';

/** Lines of the section, empty where nothing can be heaped; each stage's own heights stand in the report. */
export function heapLines(report: Report, to: Writing): string[] {
  const materials = [...new Set(report.bays.flatMap((bay) => (bay.heapM ?? []).map((heap) => heap.material)))];
  if (materials.length === 0) return [];
  return [
    ...to.words.heaps,
    ...table(
      [...to.words.heapsHead, ...materials, ''],
      report.bays.map((bay) => heapRow(bay, materials, to)),
      `ll${'r'.repeat(materials.length)}l`,
    ),
    '',
  ];
}

function heapRow(bay: ReportBay, materials: readonly string[], { words, fixed }: Writing): string[] {
  const heaps = bay.heapM ?? [];
  if (heaps.length === 0) return [bay.id, '-', ...materials.map(() => '-'), words.noPermitted];
  const heights = materials.map((material) => fixed(Math.min(...heaps.flatMap((h) => (h.material === material ? [h.heightM] : [])))));
  const overKNm2 = Math.max(...heaps.map((heap) => heap.overKNm2));
  const over = overKNm2 > 0 ? [words.alreadyOver(fixed(overKNm2))] : [];
  return [bay.id, tightestStages(bay).join(', '), ...heights, [...over, ...(bay.confirmed ? [] : [words.notConfirmed])].join(', ')];
}

/** Sums of the same loads may differ in their last digits [kN/m²]. */
const SAME_KNM2 = 1e-9;

/** Stages that leave the least room, by what lies there and not by heights, which are rounded; of several all, the earliest first. */
function tightestStages({ stages, heapM = [] }: ReportBay): string[] {
  const heaped = new Set(heapM.map(({ stage }) => stage));
  const rooms = stages.flatMap(({ stage, permittedKNm2, patchKNm2 }) =>
    permittedKNm2 !== null && heaped.has(stage) ? [{ stage, roomKNm2: permittedKNm2 - patchKNm2 }] : [],
  );
  const least = Math.min(...rooms.map(({ roomKNm2 }) => roomKNm2));
  return rooms.filter(({ roomKNm2 }) => roomKNm2 <= least + SAME_KNM2).map(({ stage }) => stage);
}
