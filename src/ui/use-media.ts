/** Media queries as React state, followed live. */

import { useCallback, useSyncExternalStore } from 'react';

export function useMedia(query: string): boolean {
  const subscribe = useCallback(
    (changed: () => void) => {
      const list = window.matchMedia(query);
      list.addEventListener('change', changed);
      return () => list.removeEventListener('change', changed);
    },
    [query],
  );
  return useSyncExternalStore(subscribe, () => window.matchMedia(query).matches);
}

/**
 * split: core log and tabs are two panels · tabs: one panel holds both · phone: one panel holds both and the stages.
 * The same conditions stand in `app.css`.
 */
export type Layout = 'split' | 'tabs' | 'phone';

const PHONE = '(max-width: 700px), (max-height: 480px)';
const TABS = '(max-width: 1100px) and (min-aspect-ratio: 1/1)';

export function useLayout(): Layout {
  const phone = useMedia(PHONE);
  const tabs = useMedia(TABS);
  if (phone) return 'phone';
  return tabs ? 'tabs' : 'split';
}
