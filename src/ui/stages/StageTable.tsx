/** Stages in their order as a table: number and name, worst bay, findings. What can be done with a row is given by whoever shows it. */

import type { ReactNode } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import type { StageView } from '../../model/maps.ts';
import { countFindings, findingsIn } from '../facts/stage-list.ts';
import { stageWorst } from '../facts/stage-worst.ts';
import { judge } from '../facts/utilisation.ts';
import { TableHead } from '../parts/TableHead.tsx';
import { UtilisationBar } from '../parts/UtilisationBar.tsx';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';

interface Props {
  readonly snapshot: Snapshot;
  /** First cell of a row. */
  readonly name: (stage: StageView, index: number) => ReactNode;
  /** Row that a dragged one would go to, and the one dragged. */
  readonly drop?: { readonly from: number; readonly to: number } | null;
}

export function StageTable({ snapshot: { stages, report }, name, drop = null }: Props) {
  const at = useView((state) => state.stage);
  const { list } = t.stageEditor;
  return (
    <table className="numbers stage-table">
      <caption className="unseen">{list.caption}</caption>
      <TableHead heads={[list.stage, list.worst, list.findings]} />
      <tbody>
        {stages.map((stage, index) => (
          <tr key={stage.id} data-picked={index === at} data-dragged={drop?.from === index} data-drop={dropOf(drop, index)}>
            <th scope="row">{name(stage, index)}</th>
            <WorstCell worst={stageWorst(report, stage.id)} />
            <td>
              <Findings counts={countFindings(findingsIn(report.findings, stage.id))} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** On which side of a row the dragged one would go. */
function dropOf(drop: Props['drop'], index: number): 'before' | 'after' | undefined {
  if (!drop || drop.to !== index || drop.from === index) return undefined;
  return drop.to < drop.from ? 'before' : 'after';
}

function WorstCell({ worst }: { readonly worst: ReturnType<typeof stageWorst> }) {
  const { list } = t.stageEditor;
  if (worst === null) return <td>{list.noWorst}</td>;
  const { utilisation, bay, confirmed } = worst;
  const over = judge(utilisation) === 'over';
  return (
    <td data-over={over}>
      <span className="stage-worst">
        <UtilisationBar utilisation={utilisation} confirmed={confirmed} />
        {list.worstOf(bay, utilisation)}
      </span>
      {over && <span className="small block stage-over">{list.over}</span>}
      {!over && !confirmed && <span className="small block">{list.unconfirmed}</span>}
    </td>
  );
}

function Findings({ counts: { stop, check, note } }: { readonly counts: ReturnType<typeof countFindings> }) {
  const { list } = t.stageEditor;
  const says = list.counts(stop, check, note);
  return <span data-stop={stop > 0}>{says === '' ? list.none : says}</span>;
}
