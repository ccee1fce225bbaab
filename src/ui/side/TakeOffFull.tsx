/** Take-off with a column for every number, as wide as the window. */

import type { ReportTakeOff } from '../../model/report.ts';
import { takeOffSum } from '../facts/take-off.ts';
import { numberText, tonnesText } from '../format.ts';
import { TableHead } from '../parts/TableHead.tsx';
import { Derived } from '../sheets/Derived.tsx';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';

const orNothing = (value: number | null | undefined, decimals: number) =>
  value === null || value === undefined ? '–' : numberText(value, decimals);

export function TakeOffFull({ rows }: { readonly rows: readonly ReportTakeOff[] }) {
  const currency = useScene((state) => state.snapshot?.scene.currency ?? '');
  const names = useScene((state) => state.snapshot?.materialNames);
  const sum = takeOffSum(rows);
  return (
    <div className="wide-table">
      <p className="small">{t.takeoff.says}</p>
      <table className="numbers">
        <TableHead heads={t.takeoff.columns(currency)} />
        <tbody>
          {rows.map((row) => (
            <tr key={row.material}>
              <th scope="row">{names?.get(row.material) ?? row.material}</th>
              <td>{numberText(row.areaM2, 1)}</td>
              <td>{orNothing(row.orderM2, 1)}</td>
              <td>{numberText(row.placedM3, 2)}</td>
              <td>{orNothing(row.orderM3, 1)}</td>
              <td>{tonnesText(row.dryKg)}</td>
              <td>
                <Derived ask={{ kind: 'mass', material: row.material }}>{tonnesText(row.massKg)}</Derived>
              </td>
              <td>{orNothing(row.deliveries, 0)}</td>
              <td>{t.takeoff.governs(row)}</td>
              <td>{orNothing(row.price, 2)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={5}>
              {t.takeoff.sum}
            </th>
            <td>{tonnesText(sum.dryKg)}</td>
            <td>{tonnesText(sum.massKg)}</td>
            <td colSpan={2} />
            <td>{orNothing(sum.price, 2)}</td>
          </tr>
        </tfoot>
      </table>
    </div>
  );
}
