/** The handle at the top of a layer: dragged, or moved by keys, it sets the layer's thickness to the millimetre. */

import { useEffect, useRef } from 'react';
import type { BuildUpView } from '../../model/engine.ts';
import { mmText } from '../format.ts';
import { useThickness } from '../log/use-thickness.ts';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';
import type { Dragged } from './BuildUpColumn.tsx';
import { useColumnHandle } from './use-column-handle.ts';

interface Props {
  readonly buildUp: string;
  readonly index: number;
  readonly layer: BuildUpView['layers'][number];
  readonly place: { readonly x: number; readonly y: number; readonly size: number };
  readonly pxPerMm: number;
  readonly onDrag: (dragged: Dragged | null) => void;
  readonly onChoose: (index: number) => void;
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
  const waiting = useRef(false);
  const refused = useScene((state) => state.refused);
  // Let go: what is drawn is the scene's again once it has answered.
  // biome-ignore lint/correctness/useExhaustiveDependencies: an answer or a refusal, whatever it is
  useEffect(() => {
    if (!waiting.current || waits()) return;
    waiting.current = false;
    onDrag(null);
  }, [layer.thicknessMm, refused]);
  const handlers = useColumnHandle({
    mm: shownMm,
    minMm,
    maxMm,
    pxPerMm,
    gesture,
    ends: layer.rangeMm === null ? undefined : { Home: minMm, End: maxMm },
    onSet: (mm, dragPxPerMm) => {
      hold(mm);
      if (dragPxPerMm !== undefined) onDrag({ index, mm, pxPerMm: dragPxPerMm });
    },
    onRelease: () => {
      waiting.current = waits();
      if (!waiting.current) onDrag(null);
    },
  });
  return { shownMm, minMm, maxMm, handlers };
}
