/** The heap board in short: per bay the heights that hold at every stage. */

import type { Report, ReportBay } from '../model/report.ts';
import { fixed, table } from './text-table.ts';

type Heap = NonNullable<ReportBay['heapM']>[number];

/** Lines of the section, empty where nothing can be heaped; each stage's own heights stand in the report. */
export function heapLines(report: Report): string[] {
  const materials = [...new Set(report.bays.flatMap((bay) => (bay.heapM ?? []).map((heap) => heap.material)))];
  if (materials.length === 0) return [];
  return [
    'Heap heights in m that hold at every stage, rounded down to 0.05 m, on top of all that then lies on the worst patch of 1 m × 1 m of the bay',
    '(layers, objects and the stage’s own stockpiles); the material counts wet through. The heights of each stage stand in the report (--json).',
    ...table(
      ['bay', 'tightest stage', ...materials, ''],
      report.bays.map((bay) => heapRow(bay, materials)),
      `ll${'r'.repeat(materials.length)}l`,
    ),
    '',
  ];
}

function heapRow(bay: ReportBay, materials: readonly string[]): string[] {
  const heaps = bay.heapM ?? [];
  if (heaps.length === 0) return [bay.id, '-', ...materials.map(() => '-'), 'no permitted load'];
  const tightest = heaps.reduce((worst, heap) => (isTighter(heap, worst) ? heap : worst));
  const heights = materials.map((material) => fixed(Math.min(...heaps.flatMap((h) => (h.material === material ? [h.heightM] : [])))));
  const over = tightest.overKNm2 > 0 ? [`already over by ${fixed(tightest.overKNm2)} kN/m²`] : [];
  return [bay.id, tightest.stage, ...heights, [...over, ...(bay.confirmed ? [] : ['NOT CONFIRMED'])].join(', ')];
}

function isTighter(a: Heap, b: Heap): boolean {
  return a.overKNm2 > b.overKNm2 || (a.overKNm2 === b.overKNm2 && a.heightM < b.heightM);
}
