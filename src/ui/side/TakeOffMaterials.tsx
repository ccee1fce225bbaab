/** Take-off in a narrow column: per material what is laid, ordered, weighed and delivered. */

import type { ReportTakeOff } from '../../model/report.ts';
import { takeOffSum } from '../facts/take-off.ts';
import { tonnesText } from '../format.ts';
import { Derived } from '../sheets/Derived.tsx';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';

export function TakeOffMaterials({ rows }: { readonly rows: readonly ReportTakeOff[] }) {
  const currency = useScene((state) => state.snapshot?.scene.currency ?? '');
  const sum = takeOffSum(rows);
  return (
    <table className="numbers take-off" data-testid="take-off">
      <caption className="unseen">{t.takeoff.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{t.takeoff.material}</th>
          <th scope="col">{t.takeoff.order}</th>
          <th scope="col">{t.takeoff.tonnes}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <MaterialRow key={row.material} row={row} currency={currency} />
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row" colSpan={2}>
            {t.takeoff.sum}
            {sum.price !== null && <span className="small block">{t.takeoff.priceSum(sum.price, currency, sum.priced, rows.length)}</span>}
          </th>
          <td>
            {tonnesText(sum.dryKg)}
            <span className="block">{tonnesText(sum.massKg)}</span>
          </td>
        </tr>
      </tfoot>
    </table>
  );
}

function MaterialRow({ row, currency }: { readonly row: ReportTakeOff; readonly currency: string }) {
  const name = useScene((state) => state.snapshot?.materialNames.get(row.material) ?? row.material);
  const { areaM2, placedM3, dryKg, massKg, price } = row;
  return (
    <tr>
      <th scope="row">
        {name}
        <span className="small block">{t.takeoff.laid(areaM2, placedM3)}</span>
        <span className="small block">{t.takeoff.deliveries(row)}</span>
      </th>
      <td>
        <strong>{t.takeoff.toOrder(row)}</strong>
        <span className="small block">{t.takeoff.orderOf(row)}</span>
        {price !== null && <span className="small block">{t.takeoff.price(price, currency)}</span>}
      </td>
      <td>
        {tonnesText(dryKg)}
        <span className="block">
          <Derived ask={{ kind: 'mass', material: row.material }}>{tonnesText(massKg)}</Derived>
        </span>
      </td>
    </tr>
  );
}
