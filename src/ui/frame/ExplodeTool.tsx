/** Pulls the layers apart, 0 to 100 %: slider, two buttons, a number. */

import { NumberField } from '../parts/NumberField.tsx';
import { Stepper } from '../parts/Stepper.tsx';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';

const STEP = 0.1;

/** `lying`: from left to right below the model instead of upright beside it. */
export function ExplodeTool({ lying }: { readonly lying: boolean }) {
  const explode = useView((state) => state.explode);
  const setExplode = useView((state) => state.setExplode);
  const percent = Math.round(explode * 100);
  return (
    <fieldset className={lying ? 'explode explode-lying' : 'explode explode-upright tool-group sheet'}>
      <legend>{t.tools.explode}</legend>
      <Stepper label={t.tools.explode} upright={!lying} onLess={() => setExplode(explode - STEP)} onMore={() => setExplode(explode + STEP)}>
        <input
          type="range"
          aria-label={t.tools.explode}
          aria-valuetext={t.tools.percent(explode)}
          min="0"
          max="100"
          step="1"
          value={percent}
          onChange={(event) => setExplode(Number(event.target.value) / 100)}
        />
      </Stepper>
      <NumberField
        label={t.tools.explodeField}
        value={percent}
        unit="%"
        decimals={0}
        min={0}
        max={100}
        onCommit={(value) => setExplode(value / 100)}
      />
    </fieldset>
  );
}
