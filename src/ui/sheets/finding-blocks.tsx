/** The list of findings on paper, worst first, as the report has them. */

import type { Finding } from '../../model/finding.ts';
import { columnsOf, type SheetBlock } from './paged-sheet.ts';
import type { SheetContext } from './sheet-context.ts';

export function findingBlocks({ snapshot, words }: SheetContext): SheetBlock[] {
  const { findings } = snapshot.report;
  if (findings.length === 0) return [{ key: 'none', node: <p>{words.findings.none}</p> }];
  const count = (severity: Finding['severity']) => findings.filter((one) => one.severity === severity).length;
  return [
    {
      key: 'findings',
      title: words.findings.count(count('stop'), count('check'), count('note')),
      says: words.findings.legend,
      columns: columnsOf(words.findings.head, [[0.9], [5], [2.2], [2.6]]),
      rows: findings.map((finding, i) => ({
        key: `${i}`,
        mark: finding.severity,
        cells: [
          words.findings.severity[finding.severity],
          finding.says,
          whereOf(finding, words.findings),
          finding.source === '' ? finding.rule : `${finding.rule} · ${finding.source}`,
        ],
      })),
    },
  ];
}

function whereOf({ where }: Finding, words: SheetContext['words']['findings']): string {
  const parts = [
    where.bay !== undefined && words.bay(where.bay),
    where.zone !== undefined && words.zone(where.zone),
    where.object !== undefined && words.object(where.object),
    where.stage !== undefined && words.stage(where.stage),
    where.at !== undefined && words.at(...where.at),
  ].filter((part) => part !== false);
  return parts.length === 0 ? words.whole : parts.join(', ');
}
