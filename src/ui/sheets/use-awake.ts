/** Keeps the screen on while something is shown to the crew, where the browser can. */

import { useEffect, useState } from 'react';

/** True while the screen is kept on. */
export function useAwake(): boolean {
  const [awake, setAwake] = useState(false);
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let left = false;
    const ask = async () => {
      // Only a page that is seen may ask; the lock is gone whenever it was hidden.
      if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
      try {
        const found = await navigator.wakeLock.request('screen');
        if (left) return void found.release();
        lock = found;
        setAwake(true);
        found.addEventListener('release', () => setAwake(false));
      } catch {
        // Refused, as with a low battery: the talk goes on without.
      }
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      left = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, []);
  return awake;
}
