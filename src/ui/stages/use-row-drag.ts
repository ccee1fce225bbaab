/** Dragging a row of a table or list by its handle: where it would go, and where it was let go; at its ends the list scrolls. */

import { type PointerEvent, useEffect, useRef, useState } from 'react';
import { edgeScrollPx } from '../facts/edge-scroll.ts';

export interface RowDrag {
  /** Row taken and row it would go to; null while nothing is dragged. */
  readonly drop: { readonly from: number; readonly to: number } | null;
  handle(index: number): {
    onPointerDown(event: PointerEvent<HTMLElement>): void;
    onPointerMove(event: PointerEvent<HTMLElement>): void;
    onPointerUp(): void;
    onPointerCancel(): void;
  };
}

export function useRowDrag(onDrop: (from: number, to: number) => void): RowDrag {
  const [drop, setDrop] = useState<RowDrag['drop']>(null);
  const rows = useRef<readonly Element[]>([]);
  const atPx = useRef(0);
  const frame = useRef(0);
  const aim = () => {
    const found = rows.current.findIndex((row) => atPx.current < row.getBoundingClientRect().bottom);
    const to = found < 0 ? rows.current.length - 1 : found;
    setDrop((now) => (now === null || now.to === to ? now : { from: now.from, to }));
  };
  const scroll = () => {
    if (scrolledAt(rows.current[0], atPx.current)) aim();
    frame.current = requestAnimationFrame(scroll);
  };
  const end = (): void => {
    cancelAnimationFrame(frame.current);
    setDrop(null);
  };
  useEffect(() => () => cancelAnimationFrame(frame.current), []);
  const handle: RowDrag['handle'] = (from) => ({
    onPointerDown: (event) => {
      if (event.button !== 0) return;
      event.preventDefault();
      event.currentTarget.setPointerCapture(event.pointerId);
      rows.current = [...(event.currentTarget.closest('tbody, ol')?.children ?? [])];
      atPx.current = event.clientY;
      setDrop({ from, to: from });
    },
    onPointerMove: ({ clientY }) => {
      if (drop === null) return;
      atPx.current = clientY;
      aim();
      // Held still at an end, the list goes on scrolling.
      cancelAnimationFrame(frame.current);
      frame.current = requestAnimationFrame(scroll);
    },
    onPointerUp: () => {
      if (drop !== null && drop.to !== drop.from) onDrop(drop.from, drop.to);
      end();
    },
    onPointerCancel: end,
  });
  return { drop, handle };
}

/** Scrolls the innermost list around a row that still can; whether anything moved. */
function scrolledAt(row: Element | undefined, atPx: number): boolean {
  for (let outer = row?.parentElement ?? null; outer !== null; outer = outer.parentElement) {
    if (outer.scrollHeight <= outer.clientHeight || !/auto|scroll/.test(getComputedStyle(outer).overflowY)) continue;
    const { top, bottom } = outer.getBoundingClientRect();
    const before = outer.scrollTop;
    outer.scrollTop += edgeScrollPx(atPx, { top: Math.max(0, top), bottom: Math.min(window.innerHeight, bottom) });
    if (outer.scrollTop !== before) return true;
  }
  return false;
}
