/** Load by column, in tonnes as people on site think of it. */

import type { Report } from '../model/report.ts';
import { GRAVITY_MS2 } from '../model/units.ts';
import { fixed, table } from './text-table.ts';

/** Lines of the section, heaviest column first; empty where the scene draws no columns. */
export function columnLines(report: Report): string[] {
  if (!report.columns) return [];
  return [
    'Columns: permanent load, saturated, of the deck area nearest to each, heaviest first. Walls under the deck are not known here. This is',
    'no support reaction and no check: whether a column punches through the slab is for the structural engineer to say.',
    ...table(
      ['column', 'share m²', 'kN', 't'],
      [...report.columns]
        .sort((a, b) => b.permanentKN - a.permanentKN)
        .map(({ id, shareM2, permanentKN }) => [id, fixed(shareM2, 1), fixed(permanentKN, 0), fixed(permanentKN / GRAVITY_MS2, 1)]),
      'lrrr',
    ),
    '',
  ];
}
