/** Bays, worst first: load of permitted, basis, utilisation in number, bar and words. */

import { useMemo } from 'react';
import { missingBasis } from '../facts/basis.ts';
import { askOf, type BayVerdict, bayVerdicts } from '../facts/bay-verdict.ts';
import { judge } from '../facts/utilisation.ts';
import { percentText } from '../format.ts';
import { UtilisationBar } from '../parts/UtilisationBar.tsx';
import { Derived } from '../sheets/Derived.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useScene, useView } from '../use-stores.ts';
import { Headline } from './Headline.tsx';

/** A longer id goes on in the next line. */
const MOST_LETTERS = 9;
/** Width of a letter of Barlow Condensed at the size of the ids. */
const LETTER_PX = 8.5;

export function BaysTable() {
  const snapshot = useScene((state) => state.snapshot);
  const verdicts = useMemo(() => (snapshot === null ? [] : bayVerdicts(snapshot.report, snapshot.scene)), [snapshot]);
  if (snapshot === null) return null;
  const longest = Math.min(MOST_LETTERS, Math.max(2, ...verdicts.map(({ id }) => id.length)));
  return (
    <>
      <Headline verdicts={verdicts} />
      {verdicts.length > 0 && (
        <table className="bays">
          <colgroup>
            <col style={{ width: `${longest * LETTER_PX + 20}px` }} />
            <col />
            <col className="bay-bar-column" />
          </colgroup>
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
  const showStage = useView((state) => state.showStage);
  const stage = useStage(governing.stage);
  // What is shown then is what the row speaks of: its stage, or the finished garden.
  const onGo = () => {
    showStage(stage?.index ?? null);
    go.toBay(id, governing.at);
  };
  return (
    <tr className="bay-row" data-picked={picked} data-status={verdict.status} onClick={onGo}>
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

function BayLoad({ verdict: { id, governing, basis } }: { readonly verdict: BayVerdict }) {
  const { loadKNm2, permittedKNm2, kind, stage } = governing;
  const missing = missingBasis(basis);
  const found = useStage(stage);
  return (
    <>
      <Derived ask={askOf('load', id, governing)}>
        <strong>{permittedKNm2 === null ? t.bays.withoutLimit(loadKNm2) : t.bays.of(loadKNm2, permittedKNm2)}</strong>
      </Derived>
      <span className="small block">{found === null ? t.bays.governing(kind) : t.bays.stage(found.index + 1, found.name)}</span>
      <span className="small block bay-basis">
        <span data-unconfirmed={missing.length > 0}>{t.basis.short(basis, missing)}</span>
      </span>
    </>
  );
}

/** Number and name of a stage; null for a stage that the scene does not have. */
function useStage(id: string | null): { readonly index: number; readonly name: string } | null {
  const stages = useScene((state) => state.snapshot?.stages);
  const index = stages?.findIndex((stage) => stage.id === id) ?? -1;
  return index < 0 ? null : { index, name: stages?.[index]?.name ?? '' };
}

function BayUtilisation({ verdict: { id, governing, status, confirmed, band } }: { readonly verdict: BayVerdict }) {
  const { utilisation, loadKNm2, permittedKNm2 } = governing;
  const ofGarden = governing.kind === 'permanent' || governing.kind === 'total';
  const sayMargin = permittedKNm2 !== null && utilisation !== null && (status === 'over' || status === 'within');
  return (
    <>
      {utilisation === null ? (
        <strong>–</strong>
      ) : (
        <Derived ask={askOf('utilisation', id, governing)}>
          <strong>{percentText(utilisation)}</strong>
        </Derived>
      )}
      <UtilisationBar utilisation={utilisation} confirmed={confirmed} band={ofGarden ? band : undefined} />
      <span className="small block bay-words bay-margin">
        {sayMargin ? t.bays.margin(loadKNm2, permittedKNm2, judge(utilisation)) : t.bays.status(status)}
      </span>
      {band && <span className="small block bay-words">{t.bays.band(band.low, band.high, ofGarden)}</span>}
      {band && band.high > 1 && status !== 'over' && <span className="bay-band-over">{t.bays.bandOver}</span>}
      {status === 'over' && !confirmed && <span className="small block">{t.bays.status('not confirmed')}</span>}
    </>
  );
}
