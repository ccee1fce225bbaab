/** One layer's thickness: two buttons, a slider, a field. The model, the maps and all numbers follow. */

import { useEffect, useState } from 'react';
import type { BuildUpView } from '../../model/engine.ts';
import { partFill } from '../parts/Hatches.tsx';
import { Icon } from '../parts/Icon.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { Swatch } from '../parts/Swatch.tsx';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';
import { useGesture } from './use-gesture.ts';

/** The buttons go to the next full step. */
const STEP_MM = 10;
const LEAST_MM = 1;
/** Where the slider ends at the least; a thicker layer doubles its own. The field takes more. */
const SLIDER_MM = 600;
const GREATEST_MM = 5000;

interface Props {
  readonly buildUp: string;
  readonly index: number;
  readonly layer: BuildUpView['layers'][number];
}

export function ThicknessRow({ buildUp, index, layer }: Props) {
  const setThickness = useScene((state) => state.setThickness);
  const { name, role, thicknessMm, rangeMm } = layer;
  const minMm = rangeMm?.min ?? Math.min(LEAST_MM, thicknessMm);
  const maxMm = rangeMm?.max ?? GREATEST_MM;
  // The end of the slider stays put while it is dragged.
  const [sliderMm] = useState(rangeMm?.max ?? Math.max(SLIDER_MM, 2 * thicknessMm));
  // Shown at once; the answer of the calculation follows.
  const [shownMm, setShownMm] = useState(thicknessMm);
  // A refused change leaves the thickness as it was, and the row must say so.
  const refused = useScene((state) => state.refused);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a refusal puts the row back though the thickness has not changed
  useEffect(() => setShownMm(thicknessMm), [thicknessMm, refused]);
  const gesture = useGesture();
  const set = (valueMm: number) => {
    setShownMm(valueMm);
    setThickness(buildUp, index, valueMm, gesture.now());
  };
  // Buttons and slider stop at the ends of the range; what is typed beyond them is refused by the field with a sentence.
  const step = (valueMm: number) => set(Math.min(maxMm, Math.max(minMm, valueMm)));
  const label = t.thickness.field(name);
  return (
    <div className="thickness-row">
      <p className="thickness-name">
        <Swatch fill={partFill(role)} />
        <span>
          {name}
          {rangeMm !== null && <span className="small block">{t.thickness.nominal(rangeMm.min, rangeMm.max)}</span>}
        </span>
      </p>
      <div className="slider-row">
        <button
          type="button"
          className="icon-button"
          aria-label={t.number.less(label)}
          disabled={shownMm <= minMm}
          onClick={() => step((Math.ceil(shownMm / STEP_MM) - 1) * STEP_MM)}
        >
          <Icon name="minus" />
        </button>
        <input
          type="range"
          aria-label={label}
          aria-valuetext={`${shownMm} mm`}
          min={minMm}
          max={sliderMm}
          step="1"
          value={shownMm}
          {...gesture.handlers}
          onChange={(event) => step(Number(event.target.value))}
        />
        <button
          type="button"
          className="icon-button"
          aria-label={t.number.more(label)}
          disabled={shownMm >= maxMm}
          onClick={() => step((Math.floor(shownMm / STEP_MM) + 1) * STEP_MM)}
        >
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
    </div>
  );
}
