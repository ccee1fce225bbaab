/** Where the focus goes when a control worked by keys goes away with what it did: into the nearest part of the page that is still there. */

import { type RefObject, useEffect } from 'react';

const CONTROLS = 'button:not(:disabled, [tabindex="-1"]), input:not(:disabled), select, textarea, summary';

export function useKeptFocus(page: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const root = page.current;
    if (root === null) return;
    /** The control that has the focus, then all that it lies in. */
    let path: Element[] = [];
    const onFocus = ({ target }: FocusEvent) => {
      path = [];
      // A pointer needs no focus, and on a phone it would bring up the keyboard.
      if (!(target instanceof Element) || !target.matches(':focus-visible')) return;
      for (let at: Element | null = target; at !== null && root.contains(at); at = at.parentElement) path.push(at);
    };
    const watch = new MutationObserver(() => {
      if (path[0] === undefined || path[0].isConnected || document.activeElement !== document.body) return;
      const part = path.find((one) => one.isConnected && one.querySelector(CONTROLS) !== null);
      part?.querySelector<HTMLElement>(CONTROLS)?.focus();
    });
    root.addEventListener('focusin', onFocus);
    watch.observe(root, { childList: true, subtree: true });
    return () => {
      root.removeEventListener('focusin', onFocus);
      watch.disconnect();
    };
  }, [page]);
}
