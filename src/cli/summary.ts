/** The readable summary of a report: deck, bays worst first, zones, stages, findings. */

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
import { fixed, orDash, table, use } from './text-table.ts';

/**
 * Summary for a terminal.
 * @param scene - the scene, for names and the basis of the loads
 * @param report - its report
 * @returns plain text, lines ended
 */
export function summary(scene: SceneFile, report: Report): string {
  const { deck } = report;
  const lines = [
    `${report.scene}`,
    'Compares entered loads with entered limits. Not a structural check: the structural engineer and local rules decide.',
    '',
    `Deck ${fixed(deck.areaM2, 1)} m², ${fixed(deck.zonedM2, 1)} m² of it with a build-up; ${report.cells} cells of ${report.cellM} m`,
    `Weight ${fixed(deck.dryKN, 0)} kN dry, ${fixed(deck.saturatedKN, 0)} kN saturated, of which objects ${fixed(deck.objectsKN, 0)} kN`,
    '',
    verdict(report),
    ...(report.notChecked.length > 0 ? [`In the file but not checked yet: ${report.notChecked.join('; ')}`] : []),
    '',
    'Bays, worst first (kN/m² on the worst patch of 1 m × 1 m, saturated)',
    ...table(
      ['bay', 'permanent', 'permitted', 'use', 'worst stage', 'there', 'permitted', 'use', 'basis'],
      [...report.bays].sort((a, b) => worstUse(b) - worstUse(a)).map((bay) => bayRow(bay, scene)),
      'lrrrlrrrl',
    ),
    '',
    'Zones (saturated, kN/m²)',
    ...table(
      ['zone', 'area m²', 'depth mm', 'make-up mm', 'least', 'mean', 'most', 'held l/m²'],
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
    'Stages',
    ...table(
      ['', 'stage', 'placed kN', 'worst bay', 'use'],
      report.stages.map((stage, i) => [String(i + 1), stage.name, fixed(stage.placedKN, 0), stage.worstBay ?? '-', use(stage.utilisation)]),
      'rlrlr',
    ),
    '',
    ...edgeLines(scene, report),
    ...waterLines(report),
    ...routeLines(report),
    ...wallLines(report),
    ...trafficLines(report),
    ...heapLines(report),
    ...columnLines(report),
    ...toleranceLines(report),
    ...probeLines(report),
    ...takeOffLines(scene, report),
    ...findingLines(report),
  ];
  return `${lines.join('\n')}\n`;
}

function verdict(report: Report): string {
  const over = report.bays.filter((bay) => worstUse(bay) > 1 + 1e-9).length;
  const open = report.bays.filter((bay) => !bay.confirmed && worstUse(bay) <= 1 + 1e-9).length;
  const within = report.bays.length - over - open;
  const parts = [`${over} over`, `${open} not confirmed`, `${within} within the permitted loads`];
  return `Bays: ${parts.join(', ')}`;
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

function bayRow(bay: ReportBay, scene: SceneFile): string[] {
  const worst = bay.stages.find((stage) => stage.stage === bay.worstStage);
  const permitted =
    bay.permanent.permittedKNm2 === null && bay.total ? `${fixed(bay.total.permittedKNm2)} in all` : orDash(bay.permanent.permittedKNm2);
  const basis = scene.deck.bays.find((entry) => entry.id === bay.id)?.basis;
  return [
    bay.id,
    // Where only a total is permitted, the imposed load is in.
    fixed(bay.permanent.permittedKNm2 === null && bay.total ? bay.total.patchKNm2 : bay.permanent.patchKNm2),
    permitted,
    use(bay.permanent.utilisation ?? bay.total?.utilisation ?? null),
    worst?.stage ?? '-',
    worst ? fixed(worst.patchKNm2) : '-',
    orDash(worst?.permittedKNm2 ?? null),
    use(worst?.utilisation ?? null),
    bay.confirmed ? `${basis?.document}, rev ${basis?.revision}, ${basis?.date}` : 'NOT CONFIRMED',
  ];
}

function findingLines(report: Report): string[] {
  if (report.findings.length === 0) return ['No findings.'];
  const count = (severity: string) => report.findings.filter((finding) => finding.severity === severity).length;
  return [
    `Findings: ${count('stop')} stop, ${count('check')} check, ${count('note')} note`,
    ...report.findings.map((finding) => {
      const place = finding.where.at ? ` [at ${finding.where.at.map((v) => fixed(v)).join(', ')}]` : '';
      return `  ${finding.severity.padEnd(5)} ${finding.rule.padEnd(15)} ${finding.says}${place} (${finding.source})`;
    }),
  ];
}

function range(low: number, high: number): string {
  return fixed(low, 0) === fixed(high, 0) ? fixed(low, 0) : `${fixed(low, 0)}–${fixed(high, 0)}`;
}
