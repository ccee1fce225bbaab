/** What the bay may carry, who says so, and how the picked place stands to it. */

import type { ReactNode } from 'react';
import type { CoreLog } from '../../model/maps.ts';
import { missingBasis } from '../facts/basis.ts';
import { judge } from '../facts/utilisation.ts';
import { loadText, percentText } from '../format.ts';
import { UtilisationBar } from '../parts/UtilisationBar.tsx';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';

/** Utilisation in number, bar and words. */
export function CoreLogVerdict({ log }: { readonly log: CoreLog }) {
  if (log.bay === null) return <p>{t.core.noBay}</p>;
  return log.utilisation === null ? <p>{t.core.noPermitted}</p> : <Utilisation utilisation={log.utilisation} log={log} />;
}

/** The two loads compared, and the basis of the permitted one. */
export function CoreLogFacts({ log }: { readonly log: CoreLog }) {
  if (log.bay === null) return null;
  return (
    <dl className="facts">
      {log.patchKNm2 !== null && <Fact term={t.core.patch}>{loadText(log.patchKNm2)}</Fact>}
      <Fact term={t.core.permitted}>{log.permittedKNm2 === null ? t.core.noPermitted : loadText(log.permittedKNm2)}</Fact>
      {log.permittedBasis !== '' && <Fact term={t.core.limitOf}>{t.core.limitName(log.permittedBasis)}</Fact>}
      <Fact term={t.core.basis}>
        <Basis log={log} />
      </Fact>
    </dl>
  );
}

function Fact({ term, children }: { readonly term: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function Basis({ log }: { readonly log: CoreLog }) {
  const bays = useScene((state) => state.snapshot?.scene.deck.bays);
  const basis = bays?.find((bay) => bay.id === log.bay)?.basis;
  return <span data-unconfirmed={!log.bayConfirmed}>{t.basis.given(basis, missingBasis(basis))}</span>;
}

function Utilisation({ utilisation, log }: { readonly utilisation: number; readonly log: CoreLog }) {
  const judgement = judge(utilisation);
  const { bayConfirmed, patchKNm2, permittedKNm2 } = log;
  const words = judgement === 'over' || bayConfirmed ? t.judgement(judgement) : t.bays.status('not confirmed');
  const margin = patchKNm2 === null || permittedKNm2 === null ? '' : t.core.left(patchKNm2, permittedKNm2, judgement);
  return (
    <p className="verdict-line" data-judgement={bayConfirmed || judgement === 'over' ? judgement : 'not confirmed'}>
      <strong className="verdict-number">{percentText(utilisation)}</strong>
      <UtilisationBar utilisation={utilisation} confirmed={bayConfirmed} />
      <span className="verdict-words">
        {words}
        {judgement === 'over' && `, ${margin}`}
        {judgement === 'within' && bayConfirmed && `, ${margin}`}
      </span>
    </p>
  );
}
