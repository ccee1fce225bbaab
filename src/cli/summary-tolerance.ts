/** Within what range each bay's utilisation lies, given the tolerances. */

import type { Report, ReportBay } from '../model/report.ts';
import { table } from './text-table.ts';
import type { Writing } from './writing.ts';

/** Lines of the section; empty where the scene gives no tolerances. */
export function toleranceLines(report: Report, { words, use }: Writing): string[] {
  const rows = report.bays.flatMap((bay) =>
    bay.band ? [{ id: bay.id, confirmed: bay.confirmed, ...bay.band, planned: plannedUse(bay) }] : [],
  );
  if (rows.length === 0) return [];
  const word = (planned: number, high: number) => (planned > 1 + 1e-9 ? words.over : high > 1 + 1e-9 ? words.couldGoOver : '');
  return [
    ...words.tolerances,
    ...table(
      words.tolerancesHead,
      rows
        .sort((a, b) => b.high - a.high)
        .map(({ id, confirmed, low, planned, high }) => {
          const said = [word(planned, high), confirmed ? '' : words.notConfirmed].filter((one) => one !== '');
          return [id, use(low), use(planned), use(high), said.join(', ')];
        }),
      'lrrrl',
    ),
    '',
  ];
}

/** Of two limits the one that is used more [-]. */
function plannedUse({ permanent, total }: ReportBay): number {
  return Math.max(permanent.utilisation ?? 0, total?.utilisation ?? 0);
}
