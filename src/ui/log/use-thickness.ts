/** One layer's thickness while it is dragged, stepped or typed: shown at once, set in the scene as one gesture. */

import { useEffect, useState } from 'react';
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
  // Shown at once; the answer of the calculation follows.
  const [shownMm, setShownMm] = useState(thicknessMm);
  // A refused change leaves the thickness as it was, and what shows it must say so.
  const refused = useScene((state) => state.refused);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a refusal puts the row back though the thickness has not changed
  useEffect(() => setShownMm(thicknessMm), [thicknessMm, refused]);
  const gesture = useGesture();
  const minMm = rangeMm?.min ?? Math.min(LEAST_MM, thicknessMm);
  const maxMm = rangeMm?.max ?? GREATEST_MM;
  const set = (valueMm: number) => {
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
    set,
    hold,
    less: () => hold((Math.ceil(shownMm / STEP_MM) - 1) * STEP_MM),
    more: () => hold((Math.floor(shownMm / STEP_MM) + 1) * STEP_MM),
  };
}

export type Thickness = ReturnType<typeof useThickness>;
