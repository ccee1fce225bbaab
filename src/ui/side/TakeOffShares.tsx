/** What of each material lies in each zone, or is laid in each stage. */

import { useMemo } from 'react';
import type { Report } from '../../model/report.ts';
import { type Grouping, type ShareGroup, shareGroups } from '../facts/take-off.ts';
import { numberText } from '../format.ts';
import { TableHead } from '../parts/TableHead.tsx';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';

type By = Exclude<Grouping, 'material'>;

interface Props {
  readonly report: Report;
  readonly by: By;
}

/** Few groups stand open; of many one opens those one needs. */
const OPEN_AT_MOST = 6;

export function TakeOffShares({ report, by }: Props) {
  const groups = useMemo(() => shareGroups(report, by), [report, by]);
  return (
    <div className="share-groups">
      {groups.map((group) => (
        <details key={`${by} ${group.id}`} open={groups.length <= OPEN_AT_MOST}>
          <summary>
            <GroupName id={group.id} by={by} />
          </summary>
          <ShareTable group={group} />
        </details>
      ))}
    </div>
  );
}

function GroupName({ id, by }: { readonly id: string; readonly by: By }) {
  const zone = useScene((state) => state.snapshot?.scene.zones.find((one) => one.id === id)?.name ?? id);
  const index = useScene((state) => state.snapshot?.stages.findIndex((stage) => stage.id === id) ?? -1);
  const stage = useScene((state) => state.snapshot?.stages[index]?.name ?? '');
  return by === 'zone' ? zone : t.legend.stage(index + 1, stage);
}

function ShareTable({ group }: { readonly group: ShareGroup }) {
  const names = useScene((state) => state.snapshot?.materialNames);
  return (
    <table className="numbers">
      <TableHead heads={[t.takeoff.material, t.takeoff.areaHead, t.takeoff.placedHead]} />
      <tbody>
        {group.shares.map(({ material, areaM2, placedM3 }) => (
          <tr key={material}>
            <th scope="row">{names?.get(material) ?? material}</th>
            <td>{numberText(areaM2, 1)}</td>
            <td>{numberText(placedM3, 2)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
