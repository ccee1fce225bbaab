/** Ctrl or Cmd with Z, Shift+Z and Y anywhere but where a text is typed: there they belong to the text. */

import { useEffect } from 'react';
import { useStores } from '../use-stores.ts';

export type UndoKey = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>;

export function wayOf({ key, ctrlKey, metaKey, shiftKey, altKey }: UndoKey): 'undo' | 'redo' | null {
  if (ctrlKey === metaKey || altKey) return null;
  const letter = key.toLowerCase();
  if (letter === 'z') return shiftKey ? 'redo' : 'undo';
  return letter === 'y' && !shiftKey ? 'redo' : null;
}

const TYPED = 'textarea, select, [contenteditable], input:not([type=range]):not([type=checkbox]):not([type=radio])';

export function useUndoKeys(): void {
  const { scene } = useStores();
  useEffect(() => {
    const down = (event: KeyboardEvent) => {
      const way = wayOf(event);
      if (way === null || (event.target instanceof Element && event.target.closest(`${TYPED}, dialog`))) return;
      event.preventDefault();
      scene.getState().travel(way);
    };
    window.addEventListener('keydown', down);
    return () => window.removeEventListener('keydown', down);
  }, [scene]);
}
