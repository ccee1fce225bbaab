/** Within what range each bay's utilisation lies, given the tolerances. */

import type { Report, ReportBay } from '../model/report.ts';
import { table, use } from './text-table.ts';

/** Lines of the section; empty where the scene gives no tolerances. */
export function toleranceLines(report: Report): string[] {
  const rows = report.bays.flatMap((bay) => (bay.band ? [{ id: bay.id, ...bay.band, planned: plannedUse(bay) }] : []));
  if (rows.length === 0) return [];
  return [
    'Tolerances: use of each bay by the finished garden with every layer as thin and light, and as thick and heavy, as it may come out. A make-up',
    'layer under a set level keeps that level, so only its density varies; weights per m² (sheets, elements, plants) do not.',
    ...table(
      ['bay', 'least', 'planned', 'most', ''],
      rows
        .sort((a, b) => b.high - a.high)
        .map(({ id, low, planned, high }) => [id, use(low), use(planned), use(high), word(planned, high)]),
      'lrrrl',
    ),
    '',
  ];
}

/** Of two limits the one that is used more [-]. */
function plannedUse({ permanent, total }: ReportBay): number {
  return Math.max(permanent.utilisation ?? 0, total?.utilisation ?? 0);
}

function word(planned: number, high: number): string {
  if (planned > 1 + 1e-9) return 'over';
  return high > 1 + 1e-9 ? 'could go over' : '';
}
