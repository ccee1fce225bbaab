/** Opens the scene of the address, on a start and when another link is put into the address bar. */

import { useEffect } from 'react';
import { t } from '../text/text.ts';
import type { Opening } from '../use-open-scene.ts';
import { useStores } from '../use-stores.ts';
import { isLink, readLink } from './scene-link.ts';

export function useLink({ refuse }: Opening): void {
  const { scene } = useStores();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the way to refuse is another function each time, but does the same
  useEffect(() => {
    const open = () => {
      if (!isLink(location.hash)) return;
      const read = readLink(location.hash);
      if (read.ok) void scene.getState().openText(t.file.fromLink, read.text);
      else refuse(read.why === 'incomplete' ? t.file.incomplete(read.arrived, read.sent) : t.file.badLink(read.why));
    };
    open();
    window.addEventListener('hashchange', open);
    return () => window.removeEventListener('hashchange', open);
  }, [scene]);
}
