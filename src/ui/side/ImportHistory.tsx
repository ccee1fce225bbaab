/** How the scene came from drawings: what was read, asked and mended, as it stands in the scene. */

import { dayText, timeText } from '../format.ts';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';

export function ImportHistory() {
  const history = useScene((state) => state.snapshot?.scene.history);
  if (history === undefined || history.length === 0) return null;
  return (
    <section className="sheet-part">
      <h2 className="block-title">
        {t.imports.history}
        <span className="small">{t.imports.historySays}</span>
      </h2>
      <ol className="import-history">
        {history.map(({ on, says }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a list that only grows; two entries may read alike
          <li key={i}>
            {on !== undefined && on !== history[i - 1]?.on && (
              <time className="small block" dateTime={on}>
                {whenText(on)}
              </time>
            )}
            {says}
          </li>
        ))}
      </ol>
    </section>
  );
}

/** A day alone has no time, and other programs may write dates otherwise: those stand as they are. */
function whenText(on: string): string {
  const when = new Date(on);
  return !on.includes('T') || Number.isNaN(when.getTime()) ? dayText(on) : timeText(when);
}
