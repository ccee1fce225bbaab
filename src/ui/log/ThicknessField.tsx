/** A thickness between its two buttons, with a slider where there is room: core log, column and table set it by the same parts. */

import type { ReactNode } from 'react';
import { Icon } from '../parts/Icon.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { t } from '../text/text.ts';
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
      <button type="button" className="icon-button" aria-label={t.number.less(label)} disabled={shownMm <= minMm} onClick={less}>
        <Icon name="minus" />
      </button>
      {slider}
      <button type="button" className="icon-button" aria-label={t.number.more(label)} disabled={shownMm >= maxMm} onClick={more}>
        <Icon name="plus" />
      </button>
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
