/** A handle on the column: dragged, or moved by keys, it sets a thickness to the millimetre, each press to release one step of undo. */

import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { useGesture } from '../log/use-gesture.ts';

const PAGE_MM = 10;

interface Ask {
  readonly mm: number;
  readonly minMm: number;
  readonly maxMm: number;
  readonly pxPerMm: number;
  readonly gesture: ReturnType<typeof useGesture>;
  /** Where Home and End lead; absent where there are no ends that anyone wants. */
  readonly ends?: { readonly Home: number; readonly End: number } | undefined;
  /** `pxPerMm`: of the drag, which keeps the scale it began with; absent for keys. */
  readonly onSet: (mm: number, pxPerMm?: number) => void;
  readonly onRelease: () => void;
}

interface Start {
  readonly clientY: number;
  readonly mm: number;
  readonly pxPerMm: number;
}

export function useColumnHandle({ mm, minMm, maxMm, pxPerMm, gesture, ends, onSet, onRelease }: Ask) {
  const start = useRef<Start | null>(null);
  const held = (wanted: number) => Math.min(maxMm, Math.max(minMm, wanted));
  const release = () => {
    gesture.handlers.onPointerUp();
    start.current = null;
    onRelease();
  };
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      gesture.handlers.onPointerDown();
      start.current = { clientY: event.clientY, mm, pxPerMm };
    },
    onPointerMove: (event: PointerEvent) => {
      const from = start.current;
      if (from === null || from.pxPerMm <= 0) return;
      const to = held(Math.round(from.mm + (from.clientY - event.clientY) / from.pxPerMm));
      if (to !== mm) onSet(to, from.pxPerMm);
    },
    onPointerUp: release,
    onPointerCancel: release,
    onKeyDown: (event: KeyboardEvent) => {
      const to = stepTo(event.key, mm) ?? ends?.[event.key as 'Home' | 'End'];
      if (to === undefined) return;
      event.preventDefault();
      gesture.handlers.onKeyDown(event);
      onSet(held(to));
    },
    onKeyUp: gesture.handlers.onKeyUp,
    onBlur: gesture.handlers.onBlur,
  };
}

/** Arrows go by a millimetre, page keys further. */
function stepTo(key: string, mm: number): number | undefined {
  const steps: Readonly<Record<string, number>> = {
    ArrowUp: mm + 1,
    ArrowRight: mm + 1,
    ArrowDown: mm - 1,
    ArrowLeft: mm - 1,
    PageUp: mm + PAGE_MM,
    PageDown: mm - PAGE_MM,
  };
  return steps[key];
}
