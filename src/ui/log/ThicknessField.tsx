/** A thickness between its two buttons, with a slider where there is room: core log, column and table set it by the same parts. */

import type { ReactNode } from 'react';
import { NumberField } from '../parts/NumberField.tsx';
import { Stepper } from '../parts/Stepper.tsx';
import type { Thickness } from './use-thickness.ts';

interface Props {
  readonly label: string;
  readonly thickness: Thickness;
  /** Between the buttons. */
  readonly slider?: ReactNode;
}

export function ThicknessField({ label, thickness, slider }: Props) {
  const { shownMm, minMm, maxMm, less, more, set } = thickness;
  return (
    <div className="slider-row">
      <Stepper label={label} onLess={shownMm <= minMm ? null : less} onMore={shownMm >= maxMm ? null : more}>
        {slider}
      </Stepper>
      <NumberField
        label={label}
        value={shownMm}
        unit="mm"
        decimals={Number.isInteger(shownMm) ? 0 : 1}
        min={minMm}
        max={maxMm}
        onCommit={set}
      />
    </div>
  );
}
