/** Depths measured on site against what is planned there. */

import type { Report, ReportProbe } from '../model/report.ts';
import { fixed, orDash, table, use } from './text-table.ts';

/** Lines of the section; empty where nothing was measured. */
export function probeLines(report: Report): string[] {
  if (!report.probes) return [];
  return [
    'As laid: depths measured, the difference as load wet through, and the use of the bay if the whole square metre there is so',
    ...table(
      ['probe', 'zone', 'layer', 'planned mm', 'measured', 'difference', 'kN/m²', 'bay', 'then kN/m²', 'use', ''],
      report.probes.map(probeRow),
      'lllrrrrlrrl',
    ),
    '',
  ];
}

function probeRow(probe: ReportProbe): string[] {
  return [
    probe.id,
    probe.zone ?? '-',
    probe.layer ?? 'whole',
    orDash(probe.plannedMm, 0),
    fixed(probe.measuredMm, 0),
    signed(probe.differenceMm, 0),
    signed(probe.differenceKNm2, 2),
    probe.bay ?? '-',
    orDash(probe.patchKNm2),
    use(probe.utilisation),
    remark(probe),
  ];
}

function remark({ plannedMm, layer, countedAs }: ReportProbe): string {
  if (plannedMm === null) return layer === null ? 'no zone there' : 'no zone with such a layer there';
  if (countedAs === null) return 'weighs the same at any thickness';
  return countedAs === layer ? '' : `counted as ${countedAs}`;
}

function signed(value: number | null, digits: number): string {
  return value === null ? '-' : `${value > 0 ? '+' : ''}${fixed(value, digits)}`;
}
