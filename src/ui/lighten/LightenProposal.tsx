/** One answer: what it changes zone by zone, what it does to the bays, and the two ways to take it. */

import { useState } from 'react';
import { patchTo, schemeOf, withScheme } from '../../edit/variants.ts';
import type { LightenVariant } from '../../model/lighten.ts';
import { byCases } from '../../model/lighten-cases.ts';
import type { Editing } from '../edit/use-edit.ts';
import { loadNumber, unitText } from '../format.ts';
import { TableHead } from '../parts/TableHead.tsx';
import { t } from '../text/text.ts';
import { useStageNumber } from '../use-stage-name.ts';
import { useScene } from '../use-stores.ts';

export function LightenProposal({ variant, editing }: { readonly variant: LightenVariant; readonly editing: Editing }) {
  const { aim, proven, unmet, zones, savedKN, exchangedM3, costBefore, costAfter, newFindings } = variant;
  const currency = useScene((state) => state.snapshot?.scene.currency ?? '');
  const [kept, setKept] = useState(false);
  const numberOf = useStageNumber();
  const names = zones.map(({ zone }) => zone);
  const scheme = schemeOf(variant.scene);
  const keep = async () => {
    const name = t.lighten.keptAs(aim);
    setKept(await editing.run((scene) => withScheme(scene, { name, scheme }), { act: 'add', part: 'variant', names: [name] }));
  };
  return (
    <section className="lighten-answer" aria-label={t.lighten.aims[aim]}>
      <h2 className="block-title">{t.lighten.answer(aim, savedKN)}</h2>
      {!proven && unmet.length === 0 && <p>{t.lighten.stopped}</p>}
      {unmet.length > 0 && (
        <ul className="variant-changes">
          {byCases(unmet).map((load) => (
            <li key={`${load.bay} ${load.why} ${load.afterKNm2}`}>
              {t.lighten.unmet({ ...load, cases: load.cases.map((one) => ({ ...one, stage: numberOf(one.stage) })) })}
            </li>
          ))}
        </ul>
      )}
      <p>
        {t.lighten.exchanged(exchangedM3)}.{' '}
        {costBefore === null || costAfter === null ? t.lighten.noPrice : `${t.lighten.price(costBefore, costAfter, currency)}.`}
      </p>
      <p className="sheet-buttons">
        <button
          type="button"
          className="button"
          onClick={() => void editing.run(() => patchTo(scheme), { act: 'lighten', part: 'zone', names })}
        >
          {t.lighten.takeOver}
        </button>
        <button type="button" className="button" disabled={kept} onClick={() => void keep()}>
          {t.lighten.keep}
        </button>
        <span role="status">{kept ? t.lighten.kept : ''}</span>
      </p>
      {zones.map(({ zone, newBuildUp, layers, laidIn, savedKN: savedInZone }) => (
        <table key={zone} className="numbers">
          <caption>
            {t.lighten.zone(zone, newBuildUp, savedInZone)}
            {laidIn !== null && <span className="small block">{t.lighten.laidIn(numberOf(laidIn) ?? laidIn)}</span>}
          </caption>
          <TableHead heads={[t.lighten.layer, t.lighten.before, t.lighten.after]} />
          <tbody>
            {layers.map(({ material, name, beforeMm, afterMm }) => (
              <tr key={material}>
                <th scope="row">{name}</th>
                <td>{t.lighten.spread(beforeMm)}</td>
                <td>{t.lighten.spread(afterMm)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ))}
      <LoadTable variant={variant} />
      {newFindings.length > 0 && (
        <details>
          <summary>{t.lighten.newFindings(newFindings.length)}</summary>
          <ul>
            {newFindings.map(({ says }) => (
              <li key={says}>{says}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

function LoadTable({ variant }: { readonly variant: LightenVariant }) {
  const unit = unitText('kN/m²');
  const numberOf = useStageNumber();
  const head = (name: string) => `${name}, ${unit}`;
  return (
    <table className="numbers">
      <caption>{t.lighten.loads}</caption>
      <TableHead heads={[t.lighten.place, head(t.lighten.before), head(t.lighten.after), head(t.lighten.permitted)]} />
      <tbody>
        {variant.bays.map(({ bay, kind, stage, beforeKNm2, afterKNm2, permittedKNm2, binding }) => (
          <tr key={`${bay} ${kind} ${stage}`} className={binding ? 'lighten-binding' : undefined}>
            <th scope="row">
              {t.lighten.loadCase(bay, kind, numberOf(stage))}
              {binding && <span className="small block">{t.lighten.binding}</span>}
            </th>
            <td>{loadNumber(beforeKNm2)}</td>
            <td>{loadNumber(afterKNm2)}</td>
            <td>{loadNumber(permittedKNm2)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
