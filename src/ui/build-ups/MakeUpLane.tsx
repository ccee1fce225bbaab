/** Beside the column: how thin and how thick the make-up layer may become, with a handle at each end. */

import { useRef, useState } from 'react';
import { setThicknessOf } from '../../edit/build-ups-layers.ts';
import type { BuildUpView } from '../../model/engine.ts';
import { mmText, numberText } from '../format.ts';
import { useGesture } from '../log/use-gesture.ts';
import { t } from '../text/text.ts';
import type { BuildUpEdits } from './use-build-up.ts';
import { useColumnHandle } from './use-column-handle.ts';

/** Far above any build-up [mm]. */
export const THICKEST_MM = 5000;
/** The number at an upper end has room above it [px]. */
const TOP = 20;

export interface LanePlace {
  readonly x: number;
  /** Underside of the make-up layer. */
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
  readonly pxPerMm: number;
}

interface Props {
  readonly buildUp: BuildUpView;
  readonly index: number;
  readonly place: LanePlace;
  readonly edits: BuildUpEdits;
  readonly onChoose: (index: number) => void;
}

type End = 'min' | 'max';

export function MakeUpLane({ buildUp, index, place, edits, onChoose }: Props) {
  const layer = buildUp.layers[index];
  const rangeMm = layer?.rangeMm;
  const [held, setHeld] = useState<{ readonly end: End; readonly mm: number } | null>(null);
  if (layer === undefined || !rangeMm) return null;
  const { x, bottom, width, height, pxPerMm } = place;
  const shown = { ...rangeMm, ...(held && { [held.end]: held.mm }) };
  const yOf = (mm: number) => Math.max(TOP, bottom - mm * pxPerMm);
  const isCut = bottom - shown.max * pxPerMm < TOP;
  const middle = width / 2;
  const set = (end: End, mm: number, gesture: number) => {
    setHeld({ end, mm });
    const range = { ...rangeMm, nominal: layer.thicknessMm, [end]: mm };
    return edits.layers((given) => setThicknessOf(given, index, range), 'change', layer.name, gesture);
  };
  const end = (which: End) => (
    <RangeHandle
      end={which}
      name={layer.name}
      mm={shown[which]}
      within={which === 'min' ? [0, layer.thicknessMm] : [layer.thicknessMm, THICKEST_MM]}
      y={yOf(shown[which])}
      place={place}
      onSet={(mm, gesture) => set(which, mm, gesture)}
      onDone={() => setHeld(null)}
      onFocus={() => onChoose(index)}
    />
  );
  return (
    <div className="bu-lane" style={{ left: x, width, height }}>
      <svg width={width} height={height} aria-hidden="true">
        <path className="bu-range" d={`M${middle} ${yOf(shown.min)}V${yOf(shown.max) + (isCut ? 14 : 0)}`} />
        {isCut && <path className="bu-range" strokeDasharray="2 3" d={`M${middle} ${yOf(shown.max) + 14}V${yOf(shown.max)}`} />}
        <text x={middle} y={yOf(shown.max) - 9}>
          {numberText(shown.max, 0)}
        </text>
        <text x={middle} y={yOf(shown.min) + 18}>
          {numberText(shown.min, 0)}
        </text>
      </svg>
      {end('max')}
      {end('min')}
    </div>
  );
}

interface HandleProps {
  readonly end: End;
  readonly name: string;
  readonly mm: number;
  readonly within: readonly [minMm: number, maxMm: number];
  readonly y: number;
  readonly place: LanePlace;
  readonly onSet: (mm: number, gesture: number) => Promise<boolean>;
  /** Let go, and the scene has answered: what it says is shown again. */
  readonly onDone: () => void;
  readonly onFocus: () => void;
}

function RangeHandle({ end, name, mm, within: [minMm, maxMm], y, place, onSet, onDone, onFocus }: HandleProps) {
  const gesture = useGesture();
  const waiting = useRef(0);
  const isHeld = useRef(false);
  const answered = () => {
    if (waiting.current === 0 && !isHeld.current) onDone();
  };
  const handlers = useColumnHandle({
    mm,
    minMm,
    maxMm,
    pxPerMm: place.pxPerMm,
    gesture,
    ends: end === 'min' ? { Home: minMm, End: maxMm } : undefined,
    onSet: (to, dragPxPerMm) => {
      isHeld.current = dragPxPerMm !== undefined;
      waiting.current += 1;
      void onSet(to, gesture.now()).finally(() => {
        waiting.current -= 1;
        answered();
      });
    },
    onRelease: () => {
      isHeld.current = false;
      answered();
    },
  });
  return (
    <div
      className="bu-handle"
      data-end={end}
      role="slider"
      tabIndex={0}
      aria-label={t.buildUps.column.limit[end](name)}
      aria-orientation="vertical"
      aria-valuenow={mm}
      aria-valuemin={minMm}
      aria-valuemax={maxMm}
      aria-valuetext={mmText(mm)}
      style={{ left: 0, top: y - place.width / 2, width: place.width, height: place.width }}
      {...handlers}
      onFocus={onFocus}
    >
      <span className="bu-knob" aria-hidden="true" />
    </div>
  );
}
