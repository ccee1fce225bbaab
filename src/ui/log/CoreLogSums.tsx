/** Weight of the picked place line by line; the lines add up to the total below them. */

import { useMemo } from 'react';
import type { CoreLog } from '../../model/maps.ts';
import { type LogRow, type LogSum, logSum } from '../facts/log-rows.ts';
import { loadNumber, thicknessText } from '../format.ts';
import { partFill } from '../parts/Hatches.tsx';
import { Swatch } from '../parts/Swatch.tsx';
import { Derived } from '../sheets/Derived.tsx';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';

export function CoreLogSums({ log }: { readonly log: CoreLog }) {
  const sum = useMemo(() => logSum(log), [log]);
  const shares = useMemo(() => new Map(log.layers.map((layer) => [layer.zone, layer.share])), [log]);
  return (
    <section className="sums">
      <h3 className="block-title">{t.core.sumTitle}</h3>
      <table className="numbers">
        <thead>
          <tr>
            <th scope="col">{t.core.layer}</th>
            <th scope="col">{t.core.mm}</th>
            <th scope="col">{t.core.dry}</th>
            <th scope="col">
              {t.core.saturated} <span className="small">{t.core.unit}</span>
            </th>
          </tr>
        </thead>
        <Rows sum={sum} shares={shares} />
        <Total sum={sum} log={log} />
      </table>
      <p className="small">{t.core.rounding}</p>
    </section>
  );
}

function Rows({ sum, shares }: { readonly sum: LogSum; readonly shares: ReadonlyMap<string, number> }) {
  const zones = useScene((state) => state.snapshot?.scene.zones);
  let zone: string | null = null;
  const isZoned = (row: LogRow) => row.other === null && row.zone !== null;
  return (
    <tbody>
      {sum.rows.flatMap((row) => {
        const lines = [<SumRow key={row.key} row={row} />];
        if (!isZoned(row) || row.zone === zone || row.zone === null) return lines;
        zone = row.zone;
        const name = zones?.find((one) => one.id === zone)?.name ?? zone;
        return [
          <tr key={`zone ${zone}`} className="sum-zone">
            <th scope="rowgroup" colSpan={4}>
              {t.core.zone(name)}
              {shares.size > 1 && <span className="small"> {t.core.share(shares.get(zone) ?? 0)}</span>}
            </th>
          </tr>,
          ...lines,
        ];
      })}
    </tbody>
  );
}

function SumRow({ row }: { readonly row: LogRow }) {
  const name = row.other === null ? row.name : t.core.other(row.other, row.name);
  return (
    <tr data-placed={row.saturatedKNm2 !== null}>
      <th scope="row">
        <span className="sum-name">
          <Swatch fill={partFill(row.kind)} />
          <span>{name}</span>
        </span>
      </th>
      <td>{row.thicknessMm === null ? '' : thicknessText(row.thicknessMm)}</td>
      {row.dryKNm2 === null || row.saturatedKNm2 === null ? (
        <td colSpan={2}>{t.core.notYet}</td>
      ) : (
        <>
          <td>{loadNumber(row.dryKNm2)}</td>
          <td>{loadNumber(row.saturatedKNm2)}</td>
        </>
      )}
    </tr>
  );
}

function Total({ sum, log: { cell, stage } }: { readonly sum: LogSum; readonly log: CoreLog }) {
  return (
    <tfoot>
      {sum.unexplainedKNm2 !== 0 && (
        <tr>
          <th scope="row" colSpan={3}>
            {t.core.unexplained}
          </th>
          <td>{loadNumber(sum.unexplainedKNm2)}</td>
        </tr>
      )}
      <tr className="sum-total">
        <th scope="row">{t.core.total}</th>
        <td />
        <td>
          <Derived ask={{ kind: 'core log', cell, stage, state: 'dry' }}>{loadNumber(sum.dryKNm2)}</Derived>
        </td>
        <td data-testid="core-total">
          <Derived ask={{ kind: 'core log', cell, stage, state: 'saturated' }}>{loadNumber(sum.saturatedKNm2)}</Derived>
        </td>
      </tr>
    </tfoot>
  );
}
