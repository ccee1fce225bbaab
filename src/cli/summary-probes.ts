/** Depths measured on site against what is planned there. */

import type { Report, ReportProbe } from '../model/report.ts';
import { table } from './text-table.ts';
import type { Writing } from './writing.ts';

/** Lines of the section; empty where nothing was measured. */
export function probeLines(report: Report, to: Writing): string[] {
  if (!report.probes) return [];
  return [
    to.words.probes,
    ...table(
      to.words.probesHead,
      report.probes.map((probe) => probeRow(probe, to)),
      'lllrrrrlrrl',
    ),
    '',
  ];
}

function probeRow(probe: ReportProbe, to: Writing): string[] {
  const { words, fixed, orDash, use } = to;
  const signed = (value: number | null, digits: number) => (value === null ? '-' : `${value > 0 ? '+' : ''}${fixed(value, digits)}`);
  return [
    probe.id,
    probe.zone ?? '-',
    probe.layer ?? words.wholeDepth,
    orDash(probe.plannedMm, 0),
    fixed(probe.measuredMm, 0),
    signed(probe.differenceMm, 0),
    signed(probe.differenceKNm2, 2),
    probe.bay ?? '-',
    orDash(probe.patchKNm2),
    use(probe.utilisation),
    remark(probe, to),
  ];
}

function remark({ plannedMm, layer, countedAs }: ReportProbe, { words }: Writing): string {
  if (plannedMm === null) return layer === null ? words.noZoneThere : words.noLayerThere;
  if (countedAs === null) return words.weighsSame;
  return countedAs === layer ? '' : words.countedAs(countedAs);
}
