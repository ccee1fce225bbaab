/** One gesture from press to release of a slider: all between is one step of undo. */

import { type KeyboardEvent, useMemo, useRef } from 'react';
import { useScene } from '../use-stores.ts';

export function useGesture() {
  const newGesture = useScene((state) => state.newGesture);
  const held = useRef<number | null>(null);
  return useMemo(() => {
    const begin = () => {
      held.current = newGesture();
    };
    const end = () => {
      held.current = null;
    };
    return {
      /** The gesture under way, or a new one of its own. */
      now: () => held.current ?? newGesture(),
      handlers: {
        onPointerDown: begin,
        onPointerUp: end,
        onPointerCancel: end,
        onKeyDown: (event: KeyboardEvent) => !event.repeat && begin(),
        onKeyUp: end,
        onBlur: end,
      },
    };
  }, [newGesture]);
}
