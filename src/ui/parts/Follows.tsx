/** Says beside numbers of the report that they are still those of the state before, while something is dragged. */

import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';

export function Follows({ what }: { readonly what: 'tables' | 'map' | 'section' }) {
  const behind = useScene((state) => state.behind);
  if (behind === null || (what === 'map' && behind === 'tables')) return null;
  return <span className="follows">{t.app.follows[what]}</span>;
}
