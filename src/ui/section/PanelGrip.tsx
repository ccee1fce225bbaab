/** Makes the panel higher or lower: by hand or by arrow keys. */

import type { KeyboardEvent, PointerEvent } from 'react';
import { t } from '../text/text.ts';

const LEAST = 20;
const MOST = 85;
const STEP = 5;

interface Props {
  readonly percent: number;
  readonly onChange: (percent: number) => void;
}

export function PanelGrip({ percent, onChange }: Props) {
  const change = (to: number) => onChange(Math.round(Math.min(MOST, Math.max(LEAST, to))));
  const onKeyDown = (event: KeyboardEvent) => {
    const step = { ArrowUp: STEP, ArrowDown: -STEP, Home: MOST, End: -MOST }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    change(percent + step);
  };
  const onPointerMove = (event: PointerEvent<HTMLElement>) => {
    const room = event.currentTarget.parentElement?.parentElement?.getBoundingClientRect();
    if (room === undefined || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
    change((100 * (room.bottom - event.clientY)) / room.height);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a rule cannot be moved
    <div
      className="panel-grip"
      role="separator"
      aria-orientation="horizontal"
      aria-label={t.section.resize}
      aria-valuenow={percent}
      aria-valuemin={LEAST}
      aria-valuemax={MOST}
      tabIndex={0}
      onKeyDown={onKeyDown}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={onPointerMove}
    />
  );
}
