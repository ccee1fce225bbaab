/** Plays the stages, one after another, and stops by itself at the finished garden. */

import { useEffect } from 'react';
import { useScene, useStores, useView } from './use-stores.ts';

const STAGE_MS = 1600;

export function usePlaying(): void {
  const { view } = useStores();
  const playing = useView((state) => state.playing);
  const count = useScene((state) => state.snapshot?.stages.length ?? 0);
  useEffect(() => {
    if (!playing) return;
    const timer = setInterval(() => {
      view.getState().stepStage(1, count);
      if (view.getState().stage === null) view.getState().setPlaying(false);
    }, STAGE_MS);
    return () => clearInterval(timer);
  }, [playing, view, count]);
}
