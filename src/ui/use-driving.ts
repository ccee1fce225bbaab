/** Drives the chosen vehicle along its line, frame by frame, and stops by itself at the end. */

import { useEffect } from 'react';
import { useScene, useStores, useView } from './use-stores.ts';

const SPEED_MPS = 3;

export function useDriving(): void {
  const { view } = useStores();
  const driving = useView((state) => state.driving);
  const id = useView((state) => state.run?.id ?? null);
  const on = useView((state) => state.run?.on ?? 'wheels');
  const run = useScene((state) => state.snapshot?.runs.find((one) => one.id === id));
  const endM = (on === 'support' ? run?.supportM : run?.travelM) ?? 0;
  useEffect(() => {
    if (!driving) return;
    let before = performance.now();
    let frame = requestAnimationFrame(function next(nowMs) {
      const { run: chosen, moveRun, setDriving } = view.getState();
      if (chosen === null) return setDriving(false);
      const frontM = Math.min(endM, chosen.frontM + (SPEED_MPS * Math.max(0, nowMs - before)) / 1000);
      before = nowMs;
      moveRun(frontM);
      if (frontM >= endM) return setDriving(false);
      frame = requestAnimationFrame(next);
    });
    return () => cancelAnimationFrame(frame);
  }, [driving, view, endM]);
}
