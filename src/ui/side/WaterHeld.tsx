/** Water that the build-ups hold when full, and what is free at a filling chosen here. */

import { useMemo, useState } from 'react';
import type { Report } from '../../model/report.ts';
import { storageAt } from '../facts/water-list.ts';
import { FactTable } from '../parts/FactTable.tsx';
import { Stepper } from '../parts/Stepper.tsx';
import { TableHead } from '../parts/TableHead.tsx';
import { Derived } from '../sheets/Derived.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';

const STEP = 10;
const FIRST = 12;

export function HeldTable({ report }: { readonly report: Report }) {
  const [chosen, setChosen] = useState<number | null>(null);
  const [all, setAll] = useState(false);
  const filled = chosen ?? report.water?.filledPercent ?? null;
  const storage = useMemo(() => storageAt(report, filled), [report, filled]);
  const go = useGo();
  const rows = all ? storage.zones : storage.zones.slice(0, FIRST);
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.water.held}</h2>
      <p className="small">{t.water.heldSays}</p>
      <div className="slider-row">
        <span>{t.water.filling}</span>
        <Stepper
          label={t.water.filling}
          onLess={filled === null || filled <= 0 ? null : () => setChosen(Math.max(0, Math.ceil(filled / STEP - 1) * STEP))}
          onMore={
            filled !== null && filled >= 100
              ? null
              : () => setChosen(filled === null ? 0 : Math.min(100, Math.floor(filled / STEP + 1) * STEP))
          }
        >
          <output className="water-filling" aria-label={t.water.filling}>
            {t.water.fillingShort(filled)}
          </output>
        </Stepper>
      </div>
      <FactTable
        facts={[
          { name: t.water.heldAll, value: t.water.m3(storage.heldM3) },
          { name: t.water.freeAll, value: storage.freeM3 === null ? t.water.freeUnknown : t.water.m3(storage.freeM3) },
        ]}
      />
      <table className="numbers water-zones">
        <caption className="unseen">{t.water.heldCaption}</caption>
        <TableHead heads={[t.water.zone, t.water.heldLm2, t.water.freeLm2, t.water.freeM3]} />
        <tbody>
          {rows.map(({ id, heldLm2, freeLm2, freeM3 }) => (
            <tr key={id}>
              <th scope="row">
                <button type="button" className="row-button" aria-label={t.water.zonePick(id)} onClick={() => go.toZone(id)}>
                  {id}
                </button>
              </th>
              <td>
                <Derived ask={{ kind: 'held', zone: id }}>{t.water.lm2(heldLm2)}</Derived>
              </td>
              <td>{freeLm2 === null ? '–' : t.water.lm2(freeLm2)}</td>
              <td>{freeM3 === null ? '–' : t.water.m3Text(freeM3)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {storage.zones.length > rows.length && (
        <button type="button" className="button" onClick={() => setAll(true)}>
          {t.water.more(storage.zones.length - rows.length)}
        </button>
      )}
    </section>
  );
}
