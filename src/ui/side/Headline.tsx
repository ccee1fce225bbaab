/** The one sentence about all bays. */

import type { BayVerdict } from '../facts/bay-verdict.ts';
import { type Headline as HeadlineFacts, headlineOf } from '../facts/headline.ts';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';

/** The headline in words, without what is added below it. */
export function headlineText(headline: HeadlineFacts): string {
  if (headline.kind === 'no bays') return t.bays.none;
  return headline.kind === 'all within' ? t.bays.allWithin(headline.bays, headline.bases) : t.bays.counts(headline.count);
}

export function Headline({ verdicts }: { readonly verdicts: readonly BayVerdict[] }) {
  const headline = headlineOf(verdicts);
  const findings = useScene((state) => state.snapshot?.report.findings);
  // Bays may carry their loads and the garden still must not be built so.
  const otherStops = findings?.filter(({ severity, rule }) => severity === 'stop' && !rule.startsWith('load.')).length ?? 0;
  const unchecked = useScene((state) => state.snapshot?.report.notChecked);
  return (
    <div className="headline" data-kind={headline.kind} data-testid="headline">
      <p className="headline-main">{headlineText(headline)}</p>
      {headline.kind === 'no bays' && <p className="small">{t.bays.noneAdd}</p>}
      {headline.kind === 'all within' && <p className="small">{t.bays.allWithinAdd}</p>}
      {otherStops > 0 && <p className="small">{t.bays.otherStops(otherStops)}</p>}
      {unchecked !== undefined && unchecked.length > 0 && <p className="small">{t.bays.notChecked(unchecked)}</p>}
      {headline.kind === 'counts' && headline.count.overUnconfirmed > 0 && (
        <p className="small">{t.bays.overUnconfirmed(headline.count.overUnconfirmed)}</p>
      )}
    </div>
  );
}
