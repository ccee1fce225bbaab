/** The heap board in short: per bay the heights that hold at every stage. */

import type { Report, ReportBay } from '../model/report.ts';
import { table } from './text-table.ts';
import type { Writing } from './writing.ts';

type Heap = NonNullable<ReportBay['heapM']>[number];

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
  const tightest = heaps.reduce((worst, heap) => (isTighter(heap, worst) ? heap : worst));
  const heights = materials.map((material) => fixed(Math.min(...heaps.flatMap((h) => (h.material === material ? [h.heightM] : [])))));
  const over = tightest.overKNm2 > 0 ? [words.alreadyOver(fixed(tightest.overKNm2))] : [];
  return [bay.id, tightest.stage, ...heights, [...over, ...(bay.confirmed ? [] : [words.notConfirmed])].join(', ')];
}

function isTighter(a: Heap, b: Heap): boolean {
  return a.overKNm2 > b.overKNm2 || (a.overKNm2 === b.overKNm2 && a.heightM < b.heightM);
}
