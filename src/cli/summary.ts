/** The readable summary of a report: deck, bays worst first, zones, stages, findings. */

import type { Severity } from '../model/finding.ts';
import type { Language } from '../model/language.ts';
import type { Report, ReportBay } from '../model/report.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { columnLines } from './summary-columns.ts';
import { edgeLines } from './summary-edges.ts';
import { heapLines } from './summary-heaps.ts';
import { probeLines } from './summary-probes.ts';
import { routeLines } from './summary-routes.ts';
import { takeOffLines } from './summary-takeoff.ts';
import { toleranceLines } from './summary-tolerance.ts';
import { trafficLines } from './summary-traffic.ts';
import { wallLines } from './summary-walls.ts';
import { waterLines } from './summary-water.ts';
import { table } from './text-table.ts';
import { WRITING, type Writing } from './writing.ts';

/**
 * Summary for a terminal.
 * @param scene - the scene, for names and the basis of the loads
 * @param report - its report, told in the language
 * @param language - of headings and numbers
 * @returns plain text, lines ended
 */
export function summary(scene: SceneFile, report: Report, language: Language = 'en'): string {
  const to = WRITING[language];
  const { words, fixed, use } = to;
  const { deck } = report;
  const range = (low: number, high: number) => (fixed(low, 0) === fixed(high, 0) ? fixed(low, 0) : `${fixed(low, 0)}–${fixed(high, 0)}`);
  const lines = [
    `${report.scene}`,
    words.notACheck,
    '',
    words.deck(fixed(deck.areaM2, 1), fixed(deck.zonedM2, 1), report.cells, to.plain(report.cellM)),
    words.weight(fixed(deck.dryKN, 0), fixed(deck.saturatedKN, 0), fixed(deck.objectsKN, 0)),
    '',
    verdict(report, to),
    ...(report.notChecked.length > 0 ? [words.notChecked(report.notChecked.join('; '))] : []),
    '',
    words.bays,
    ...table(
      words.baysHead,
      [...report.bays].sort((a, b) => worstUse(b) - worstUse(a)).map((bay) => bayRow(bay, scene, to)),
      'lrrrrrrlrrrl',
    ),
    '',
    words.zones,
    ...table(
      words.zonesHead,
      report.zones.map((zone) => [
        zone.id,
        fixed(zone.areaM2, 1),
        range(zone.depthMm.min, zone.depthMm.max),
        zone.makeUpMm ? range(zone.makeUpMm.min, zone.makeUpMm.max) : '-',
        fixed(zone.saturatedKNm2.min),
        fixed(zone.saturatedKNm2.mean),
        fixed(zone.saturatedKNm2.max),
        fixed(zone.heldLm2.mean, 1),
      ]),
      'lrrrrrrr',
    ),
    '',
    words.stages,
    ...table(
      words.stagesHead,
      report.stages.map((stage, i) => [String(i + 1), stage.name, fixed(stage.placedKN, 0), stage.worstBay ?? '-', use(stage.utilisation)]),
      'rlrlr',
    ),
    '',
    ...edgeLines(scene, report, to),
    ...waterLines(report, to),
    ...routeLines(report, to),
    ...wallLines(report, to),
    ...trafficLines(report, to),
    ...heapLines(report, to),
    ...columnLines(report, to),
    ...toleranceLines(report, to),
    ...probeLines(report, to),
    ...takeOffLines(scene, report, to),
    ...findingLines(report, to),
  ];
  return `${lines.join('\n')}\n`;
}

function verdict(report: Report, { words }: Writing): string {
  const over = report.bays.filter((bay) => worstUse(bay) > 1 + 1e-9).length;
  const open = report.bays.filter((bay) => !bay.confirmed && worstUse(bay) <= 1 + 1e-9).length;
  const within = report.bays.length - over - open;
  return words.verdict(over, open, within);
}

/** Greatest of all utilisations of a bay [-]; -1 where nothing can be compared. */
function worstUse(bay: ReportBay): number {
  return Math.max(
    bay.permanent.utilisation ?? -1,
    bay.imposed.utilisation ?? -1,
    bay.total?.utilisation ?? -1,
    ...bay.stages.map((stage) => stage.utilisation ?? -1),
  );
}

function bayRow(bay: ReportBay, scene: SceneFile, { words, fixed, orDash, use }: Writing): string[] {
  const worst = bay.stages.find((stage) => stage.stage === bay.worstStage);
  const permitted =
    bay.permanent.permittedKNm2 === null && bay.total ? words.inAll(fixed(bay.total.permittedKNm2)) : orDash(bay.permanent.permittedKNm2);
  const basis = scene.deck.bays.find((entry) => entry.id === bay.id)?.basis;
  return [
    bay.id,
    // Where only a total is permitted, the imposed load is in.
    fixed(bay.permanent.permittedKNm2 === null && bay.total ? bay.total.patchKNm2 : bay.permanent.patchKNm2),
    permitted,
    use(bay.permanent.utilisation ?? bay.total?.utilisation ?? null),
    fixed(bay.imposed.maxKNm2),
    orDash(bay.imposed.permittedKNm2),
    use(bay.imposed.utilisation),
    worst?.stage ?? '-',
    worst ? fixed(worst.patchKNm2) : '-',
    orDash(worst?.permittedKNm2 ?? null),
    use(worst?.utilisation ?? null),
    bay.confirmed ? words.basis(`${basis?.document}`, `${basis?.revision}`, `${basis?.date}`) : words.notConfirmed,
  ];
}

function findingLines(report: Report, { words, place }: Writing): string[] {
  if (report.findings.length === 0) return [words.noFindings];
  const count = (severity: Severity) => report.findings.filter((finding) => finding.severity === severity).length;
  const wide = Math.max(...Object.values(words.severity).map(({ length }) => length));
  return [
    words.findings(count('stop'), count('check'), count('note')),
    ...report.findings.map((finding) => {
      const where = finding.where.at ? ` ${words.at(place(finding.where.at))}` : '';
      return `  ${words.severity[finding.severity].padEnd(wide)} ${finding.rule.padEnd(15)} ${finding.says}${where} (${finding.source})`;
    }),
  ];
}
