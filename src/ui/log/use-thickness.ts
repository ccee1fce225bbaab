/** One layer's thickness while it is dragged, stepped or typed: shown at once, set in the scene as one gesture. */

import { useEffect, useRef, useState } from 'react';
import type { BuildUpView } from '../../model/engine.ts';
import { useScene } from '../use-stores.ts';
import { useGesture } from './use-gesture.ts';

/** Buttons go to the next full step. */
const STEP_MM = 10;
const LEAST_MM = 1;
const GREATEST_MM = 5000;

export interface LayerPlace {
  readonly buildUp: string;
  /** Of the layer, from below. */
  readonly index: number;
  readonly layer: Pick<BuildUpView['layers'][number], 'thicknessMm' | 'rangeMm'>;
}

export function useThickness({ buildUp, index, layer: { thicknessMm, rangeMm } }: LayerPlace) {
  const setThickness = useScene((state) => state.setThickness);
  // Shown at once; the answer of the calculation follows, and answers to what was set on the way change nothing.
  const [shownMm, setShownMm] = useState(thicknessMm);
  const wanted = useRef<number | null>(null);
  useEffect(() => {
    if (wanted.current !== null && wanted.current !== thicknessMm) return;
    wanted.current = null;
    setShownMm(thicknessMm);
  }, [thicknessMm]);
  // A refused change leaves the thickness as it was, and undo takes it back, though nobody here set it.
  const refused = useScene((state) => state.refused);
  const travelled = useScene((state) => state.travelled);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the thickness is the scene's again though it may not have changed
  useEffect(() => {
    wanted.current = null;
    setShownMm(thicknessMm);
  }, [refused, travelled]);
  const gesture = useGesture();
  const minMm = rangeMm?.min ?? Math.min(LEAST_MM, thicknessMm);
  const maxMm = rangeMm?.max ?? GREATEST_MM;
  const set = (valueMm: number) => {
    wanted.current = valueMm;
    setShownMm(valueMm);
    setThickness(buildUp, index, valueMm, gesture.now());
  };
  // What is dragged or stepped stops at the ends; what is typed beyond them is refused by the field with a sentence.
  const hold = (valueMm: number) => set(Math.min(maxMm, Math.max(minMm, valueMm)));
  return {
    shownMm,
    minMm,
    maxMm,
    gesture,
    /** What is shown waits for its answer. */
    waits: () => wanted.current !== null,
    set,
    hold,
    less: () => hold((Math.ceil(shownMm / STEP_MM) - 1) * STEP_MM),
    more: () => hold((Math.floor(shownMm / STEP_MM) + 1) * STEP_MM),
  };
}

export type Thickness = ReturnType<typeof useThickness>;
