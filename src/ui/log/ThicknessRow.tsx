/** One layer's thickness: two buttons, a slider, a field. The model, the maps and all numbers follow. */

import { useState } from 'react';
import type { BuildUpView } from '../../model/engine.ts';
import { mmText } from '../format.ts';
import { partFill } from '../parts/Hatches.tsx';
import { Swatch } from '../parts/Swatch.tsx';
import { t } from '../text/text.ts';
import { ThicknessField } from './ThicknessField.tsx';
import { useThickness } from './use-thickness.ts';

/** Where the slider ends at the least; a thicker layer doubles its own. The field takes more. */
const SLIDER_MM = 600;

interface Props {
  readonly buildUp: string;
  readonly index: number;
  readonly layer: BuildUpView['layers'][number];
}

export function ThicknessRow(props: Props) {
  const { name, role, thicknessMm, rangeMm } = props.layer;
  const thickness = useThickness(props);
  const { shownMm, minMm, hold, gesture } = thickness;
  // The end of the slider stays put while it is dragged.
  const [sliderMm] = useState(rangeMm?.max ?? Math.max(SLIDER_MM, 2 * thicknessMm));
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
      <ThicknessField
        label={label}
        thickness={thickness}
        slider={
          <input
            type="range"
            aria-label={label}
            aria-valuetext={mmText(shownMm)}
            min={minMm}
            max={sliderMm}
            step="1"
            value={shownMm}
            {...gesture.handlers}
            onChange={(event) => hold(Number(event.target.value))}
          />
        }
      />
    </div>
  );
}
