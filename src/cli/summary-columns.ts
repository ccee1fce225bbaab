/** Load by column, in tonnes as people on site think of it. */

import type { Report } from '../model/report.ts';
import { GRAVITY_MS2 } from '../model/units.ts';
import { table } from './text-table.ts';
import type { Writing } from './writing.ts';

/** Lines of the section, heaviest column first; empty where the scene draws no columns. */
export function columnLines(report: Report, { words, fixed }: Writing): string[] {
  if (!report.columns) return [];
  return [
    ...words.columns,
    ...table(
      words.columnsHead,
      [...report.columns]
        .sort((a, b) => b.permanentKN - a.permanentKN)
        .map(({ id, shareM2, permanentKN }) => [id, fixed(shareM2, 1), fixed(permanentKN, 0), fixed(permanentKN / GRAVITY_MS2, 1)]),
      'lrrr',
    ),
    '',
  ];
}
