/** The scene as it is now as a link, whatever its length. */

import { useEffect, useState } from 'react';
import { useScene } from '../use-stores.ts';
import { linkOf } from './scene-link.ts';

/** Null until it is made. */
export function useShareLink(): string | null {
  const sceneText = useScene((state) => state.sceneText);
  const snapshot = useScene((state) => state.snapshot);
  const [link, setLink] = useState<string | null>(null);
  useEffect(() => {
    let gone = false;
    const make = async () => {
      if (snapshot === null) return;
      const { text } = await sceneText('copy');
      if (!gone) setLink(`${location.origin}${location.pathname}${linkOf(text)}`);
    };
    void make();
    return () => {
      gone = true;
    };
  }, [sceneText, snapshot]);
  return link;
}
