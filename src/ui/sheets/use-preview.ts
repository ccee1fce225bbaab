/** How large the pages of a print sheet are drawn on the screen: as wide as the desk they lie on, or as large as on paper. */

import { type RefObject, useRef, useState } from 'react';
import { useWidth } from '../use-width.ts';
import type { PaperSize } from './paged-sheet.ts';

const PX_PER_MM = 96 / 25.4;
/** Left and right of a page [px]. */
const BESIDE_PX = 32;

export interface Preview {
  readonly desk: RefObject<HTMLElement | null>;
  readonly zoom: number;
  /** Pages are wider than the desk. */
  readonly isReduced: boolean;
  readonly isActual: boolean;
  readonly setActual: (actual: boolean) => void;
}

export function usePreview({ widthMm }: PaperSize): Preview {
  const desk = useRef<HTMLElement>(null);
  const [isActual, setActual] = useState(false);
  const fitting = (useWidth(desk) - BESIDE_PX) / (widthMm * PX_PER_MM);
  // The width is not known yet while the page is first drawn.
  const zoom = fitting > 0 && fitting < 1 && !isActual ? fitting : 1;
  return { desk, zoom, isReduced: fitting < 1, isActual, setActual };
}
