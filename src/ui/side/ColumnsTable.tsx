/** What of the permanent load falls to each column: for the engineer's punching check, not a check itself. */

import { GRAVITY_MS2 } from '../../model/units.ts';
import { numberText } from '../format.ts';
import { TableHead } from '../parts/TableHead.tsx';
import { Derived } from '../sheets/Derived.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useScene } from '../use-stores.ts';

const AROUND_M = 8;

export function ColumnsTable() {
  const columns = useScene((state) => state.snapshot?.report.columns);
  const given = useScene((state) => state.snapshot?.scene.deck.columns);
  const go = useGo();
  if (columns === undefined || columns.length === 0) return null;
  const place = (id: string) => {
    const at = given?.find((column) => column.id === id)?.at;
    if (at) go.toPoint(at, AROUND_M);
  };
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.columns.title}</h2>
      <p className="small">{t.columns.says}</p>
      <table className="numbers edges">
        <TableHead heads={[t.columns.column, 'm²', 'kN', 't']} />
        <tbody>
          {columns.map(({ id, shareM2, permanentKN }) => (
            <tr key={id} className="bay-row" onClick={() => place(id)}>
              <th scope="row">
                <button type="button" className="row-button" aria-label={t.columns.pick(id)}>
                  {id}
                </button>
              </th>
              <td>{numberText(shareM2, 1)}</td>
              <td>
                <Derived ask={{ kind: 'column', column: id }}>{numberText(permanentKN, 0)}</Derived>
              </td>
              <td>{numberText(permanentKN / GRAVITY_MS2, 1)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
