/** The handle at the top of a layer: dragged, or moved by keys, it sets the layer's thickness to the millimetre. */

import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import type { BuildUpView } from '../../model/engine.ts';
import { mmText } from '../format.ts';
import { useThickness } from '../log/use-thickness.ts';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';
import type { Dragged } from './BuildUpColumn.tsx';

const PAGE_MM = 10;

interface Props {
  readonly buildUp: string;
  readonly index: number;
  readonly layer: BuildUpView['layers'][number];
  readonly place: { readonly x: number; readonly y: number; readonly size: number };
  readonly pxPerMm: number;
  readonly onDrag: (dragged: Dragged | null) => void;
  readonly onChoose: (index: number) => void;
}

interface Start {
  readonly clientY: number;
  readonly mm: number;
  readonly pxPerMm: number;
}

export function LayerHandle(props: Props) {
  const { index, layer, place, onChoose } = props;
  const { shownMm, minMm, maxMm, handlers } = useHandle(props);
  return (
    <div
      className="bu-handle"
      role="slider"
      tabIndex={0}
      aria-label={t.buildUps.column.handle(layer.name)}
      aria-orientation="vertical"
      aria-valuenow={shownMm}
      aria-valuemin={minMm}
      aria-valuemax={maxMm}
      aria-valuetext={mmText(shownMm)}
      style={{ left: place.x, top: place.y - place.size / 2, width: place.size, height: place.size }}
      {...handlers}
      onFocus={() => onChoose(index)}
    >
      <span className="bu-knob" aria-hidden="true" />
    </div>
  );
}

/** Pointer and keys on the handle, each press to release one step of undo. */
function useHandle({ buildUp, index, layer, pxPerMm, onDrag }: Props) {
  const { shownMm, minMm, maxMm, gesture, hold, waits } = useThickness({ buildUp, index, layer });
  const start = useRef<Start | null>(null);
  const waiting = useRef(false);
  const refused = useScene((state) => state.refused);
  // Let go: what is drawn is the scene's again once it has answered.
  // biome-ignore lint/correctness/useExhaustiveDependencies: an answer or a refusal, whatever it is
  useEffect(() => {
    if (!waiting.current || waits()) return;
    waiting.current = false;
    onDrag(null);
  }, [layer.thicknessMm, refused]);
  const release = () => {
    gesture.handlers.onPointerUp();
    start.current = null;
    waiting.current = waits();
    if (!waiting.current) onDrag(null);
  };
  const handlers = {
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      gesture.handlers.onPointerDown();
      start.current = { clientY: event.clientY, mm: shownMm, pxPerMm };
    },
    onPointerMove: (event: PointerEvent) => {
      const from = start.current;
      if (from === null || from.pxPerMm <= 0) return;
      const wanted = Math.round(from.mm + (from.clientY - event.clientY) / from.pxPerMm);
      const mm = Math.min(maxMm, Math.max(minMm, wanted));
      if (mm === shownMm) return;
      hold(mm);
      onDrag({ index, mm, pxPerMm: from.pxPerMm });
    },
    onPointerUp: release,
    onPointerCancel: release,
    onKeyDown: (event: KeyboardEvent) => {
      const toMm = stepTo(event.key, shownMm) ?? (layer.rangeMm === null ? undefined : { Home: minMm, End: maxMm }[event.key]);
      if (toMm === undefined) return;
      event.preventDefault();
      gesture.handlers.onKeyDown(event);
      hold(toMm);
    },
    onKeyUp: gesture.handlers.onKeyUp,
    onBlur: gesture.handlers.onBlur,
  };
  return { shownMm, minMm, maxMm, handlers };
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
