/** The browser asks before a page with unsaved changes is left. */

import { useEffect } from 'react';
import { useScene } from '../use-stores.ts';

export function useLeaveWarning(): void {
  const changed = useScene((state) => state.history.changed);
  useEffect(() => {
    if (!changed) return;
    const ask = (event: BeforeUnloadEvent) => event.preventDefault();
    window.addEventListener('beforeunload', ask);
    return () => window.removeEventListener('beforeunload', ask);
  }, [changed]);
}
