/** Three plain sentences about the layers under the tapped spot. */

import type { BayVerdict } from '../facts/bay-verdict.ts';
import { type UnderFacts, underFacts } from '../facts/under.ts';
import { Icon } from '../parts/Icon.tsx';
import { walk as t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';

function verdictText({ verdict, permittedKNm2, utilisation }: UnderFacts): string {
  if (permittedKNm2 === null || utilisation === null) return t.under.unknown;
  if (verdict === 'over') return t.under.overHere(permittedKNm2, utilisation);
  return verdict === 'within' ? t.under.within(permittedKNm2, utilisation) : t.under.unconfirmed(permittedKNm2, utilisation);
}

export function UnderPanel({ verdicts }: { readonly verdicts: readonly BayVerdict[] }) {
  const log = useScene((state) => state.coreLog);
  const scene = useScene((state) => state.snapshot?.scene);
  const setWalk = useView((state) => state.setWalk);
  const facts = log && scene ? underFacts(log, scene, verdicts) : null;
  return (
    <section className="walk-under sheet" aria-label={t.under.title} data-testid="under">
      <header>
        <h2>{t.under.title}</h2>
        <button type="button" className="walk-button" onClick={() => setWalk({ lifted: false })}>
          <Icon name="close" />
          {t.under.close}
        </button>
      </header>
      {log === null && <p>{t.under.waiting}</p>}
      {log !== null && facts === null && <p>{t.under.nothing}</p>}
      {facts !== null && (
        <>
          <p>{t.under.purpose(facts)}</p>
          <p>{t.under.roots(facts)}</p>
          <p data-verdict={facts.verdict}>{t.under.sum(t.under.weight(facts.loadKNm2), verdictText(facts))}</p>
          {facts.bayOver && facts.bay !== null && <p data-verdict="over">{t.under.bayOver(facts.bay)}</p>}
          <p className="small">
            {facts.basis !== null && `${t.under.from(facts.basis)} `}
            {t.under.decides}
          </p>
        </>
      )}
    </section>
  );
}
