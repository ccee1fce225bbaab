/** Dragging a row of a table or list by its handle: where it would go, and where it was let go. */

import { type PointerEvent, useRef, useState } from 'react';

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
  const end = (): void => setDrop(null);
  const handle: RowDrag['handle'] = (from) => ({
    onPointerDown: (event) => {
      if (event.button !== 0) return;
      event.preventDefault();
      event.currentTarget.setPointerCapture(event.pointerId);
      rows.current = [...(event.currentTarget.closest('tbody, ol')?.children ?? [])];
      setDrop({ from, to: from });
    },
    onPointerMove: ({ clientY }) => {
      if (drop === null) return;
      const boxes = rows.current.map((row) => row.getBoundingClientRect());
      const found = boxes.findIndex(({ bottom }) => clientY < bottom);
      const to = found < 0 ? boxes.length - 1 : found;
      if (to !== drop.to) setDrop({ from: drop.from, to });
    },
    onPointerUp: () => {
      if (drop !== null && drop.to !== drop.from) onDrop(drop.from, drop.to);
      end();
    },
    onPointerCancel: end,
  });
  return { drop, handle };
}
