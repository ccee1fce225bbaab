/** Who says that the deck carries it: the one sentence, the bays that break it, and the frame that never goes away. */

import type { BayStatus, BayVerdict } from '../facts/bay-verdict.ts';
import { headlineOf } from '../facts/headline.ts';
import { walk as t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';

export function WalkSafety({ verdicts }: { readonly verdicts: readonly BayVerdict[] }) {
  const headline = headlineOf(verdicts);
  const findings = useScene((state) => state.snapshot?.report.findings);
  const stops = findings?.filter(({ severity, rule }) => severity === 'stop' && !rule.startsWith('load.')).length ?? 0;
  const of = (status: BayStatus) => verdicts.filter((one) => one.status === status).map(({ id }) => id);
  const [over, unsure, unlimited] = [of('over'), of('not confirmed'), of('no limit')];
  return (
    <div className="walk-safety" data-testid="walk-safety" data-kind={headline.kind}>
      {headline.kind === 'no bays' && <p className="walk-verdict">{t.noBays}</p>}
      {headline.kind === 'all within' && <p className="walk-verdict">{t.allWithin(headline.bases)}</p>}
      {headline.kind === 'counts' && (
        <p className="walk-verdict">
          {t.notAll(headline.count.within, headline.count.all)}
          {over.length > 0 && ` ${t.over(over)}`}
          {unsure.length > 0 && ` ${t.unsure(unsure)}`}
          {unlimited.length > 0 && ` ${t.unlimited(unlimited)}`}
        </p>
      )}
      <p className="walk-frame">
        {stops > 0 && `${t.otherStops(stops)} `}
        {t.frame}
      </p>
    </div>
  );
}
