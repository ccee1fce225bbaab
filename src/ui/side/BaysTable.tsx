/** Bays, worst first: load of permitted, basis, utilisation in number, bar and words. */

import { useMemo } from 'react';
import { missingBasis } from '../facts/basis.ts';
import { type BayVerdict, bayVerdicts } from '../facts/bay-verdict.ts';
import { judge } from '../facts/utilisation.ts';
import { percentText } from '../format.ts';
import { UtilisationBar } from '../parts/UtilisationBar.tsx';
import { en as t } from '../text/en.ts';
import { useGo } from '../use-go.ts';
import { useScene, useView } from '../use-stores.ts';
import { Headline } from './Headline.tsx';

export function BaysTable() {
  const snapshot = useScene((state) => state.snapshot);
  const verdicts = useMemo(() => (snapshot === null ? [] : bayVerdicts(snapshot.report, snapshot.scene)), [snapshot]);
  if (snapshot === null) return null;
  return (
    <>
      <Headline verdicts={verdicts} />
      {verdicts.length > 0 && (
        <table className="bays">
          <caption className="unseen">{t.bays.caption}</caption>
          <thead>
            <tr>
              <th scope="col">{t.bays.column}</th>
              <th scope="col">{t.bays.load}</th>
              <th scope="col">{t.bays.utilisation}</th>
            </tr>
          </thead>
          <tbody>
            {verdicts.map((verdict) => (
              <BayRow key={verdict.id} verdict={verdict} />
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}

function BayRow({ verdict }: { readonly verdict: BayVerdict }) {
  const { id, governing } = verdict;
  const picked = useView((state) => state.bay === id);
  const go = useGo();
  return (
    <tr className="bay-row" data-picked={picked} data-status={verdict.status} onClick={() => go.toBay(id, governing.at)}>
      <th scope="row">
        <button type="button" className="row-button" aria-pressed={picked} aria-label={t.bays.pick(id)}>
          {id}
        </button>
      </th>
      <td className="bay-load">
        <BayLoad verdict={verdict} />
      </td>
      <td className="bay-utilisation">
        <BayUtilisation verdict={verdict} />
      </td>
    </tr>
  );
}

function BayLoad({ verdict: { governing, basis } }: { readonly verdict: BayVerdict }) {
  const { loadKNm2, permittedKNm2, kind, stage } = governing;
  const missing = missingBasis(basis);
  return (
    <>
      <strong>{permittedKNm2 === null ? t.bays.withoutLimit(loadKNm2) : t.bays.of(loadKNm2, permittedKNm2)}</strong>
      {stage === null ? <span className="small block">{t.bays.governing(kind)}</span> : <StageLink stage={stage} />}
      <span className="small block bay-basis" data-unconfirmed={missing.length > 0}>
        {t.basis.short(basis, missing)}
      </span>
    </>
  );
}

function StageLink({ stage }: { readonly stage: string }) {
  const stages = useScene((state) => state.snapshot?.stages);
  const showStage = useView((state) => state.showStage);
  const index = stages?.findIndex(({ id }) => id === stage) ?? -1;
  const name = stages?.[index]?.name ?? stage;
  if (index < 0) return <span className="small block">{stage}</span>;
  return (
    <button type="button" className="link-button" aria-label={t.bays.showStage(index + 1, name)} onClick={() => showStage(index)}>
      {t.bays.stage(index + 1, name)}
    </button>
  );
}

function BayUtilisation({ verdict: { governing, status, confirmed } }: { readonly verdict: BayVerdict }) {
  const { utilisation, loadKNm2, permittedKNm2 } = governing;
  const sayMargin = permittedKNm2 !== null && utilisation !== null && (status === 'over' || status === 'within');
  return (
    <>
      <strong>{utilisation === null ? '–' : percentText(utilisation)}</strong>
      <UtilisationBar utilisation={utilisation} confirmed={confirmed} />
      <span className="small block bay-words">
        {sayMargin ? t.bays.margin(loadKNm2, permittedKNm2, judge(utilisation)) : t.bays.status(status)}
      </span>
      {status === 'over' && !confirmed && <span className="small block">{t.bays.status('not confirmed')}</span>}
    </>
  );
}
