/** What of the deck's permanent load is nearest to each column. */

import type { Evaluation } from '../core/evaluation.ts';
import { columnShares } from '../core/loads/columns.ts';
import type { Report } from '../model/report.ts';

/** Shares in the order of the scene; nothing where it draws no columns. */
export function columnReport({ input, prepared, stacks, makeUps }: Evaluation): Pick<Report, 'columns'> {
  if (!prepared.columns || !input.columns) return {};
  const laid = prepared.zones.map((cells, z) => ({ laid: cells, stack: stacks[z], makeUpM: makeUps[z].thicknessM }));
  const shares = columnShares(prepared.columns, laid, input.cellM);
  return { columns: input.columns.map(({ id }, c) => ({ id, ...shares[c] })) };
}
