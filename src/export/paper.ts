/** From the model to the paper: metres along and upwards become millimetres, y downwards. */

import type { Point } from './sheet.ts';

export interface Paper {
  readonly scale: number;
  /** Heights are drawn this many times as large as lengths. */
  readonly exaggeration: number;
  readonly at: (xM: number, yM: number) => Point;
  readonly lengthMm: (lengthM: number) => number;
  readonly heightMm: (heightM: number) => number;
}

/**
 * A paper at a scale.
 * @param scale - 50 for 1:50
 * @param exaggeration - of heights, 1 for none
 */
export function paperAt(scale: number, exaggeration = 1): Paper {
  const lengthMm = (lengthM: number) => (1000 * lengthM) / scale;
  const heightMm = (heightM: number) => (1000 * heightM * exaggeration) / scale;
  return { scale, exaggeration, lengthMm, heightMm, at: (xM, yM) => [lengthMm(xM), -heightMm(yM)] };
}
