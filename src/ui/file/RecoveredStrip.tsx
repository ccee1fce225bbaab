/** Offers work that a closed tab left unsaved; opens nothing by itself. */

import { t } from '../text/text.ts';
import type { Autosave } from './use-autosave.ts';

export function RecoveredStrip({ autosave }: { readonly autosave: Autosave }) {
  const { offered, openState, discard } = autosave;
  if (offered === null) return null;
  return (
    <section className="recovered sheet" aria-label={t.file.recovered}>
      <p role="status">{t.file.offer(offered.name, t.file.time(new Date(offered.at)))}</p>
      <button type="button" className="button" onClick={() => void openState(offered)}>
        {t.file.openIt}
      </button>
      <button type="button" className="button" onClick={() => void discard(offered)}>
        {t.file.leaveIt}
      </button>
    </section>
  );
}
