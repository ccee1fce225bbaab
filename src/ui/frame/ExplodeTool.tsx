/** Pulls the layers apart, 0 to 100 %: upright slider, two buttons, a number. */

import { Icon } from '../parts/Icon.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { en as t } from '../text/en.ts';
import { useView } from '../use-stores.ts';

const STEP = 0.1;

export function ExplodeTool() {
  const explode = useView((state) => state.explode);
  const setExplode = useView((state) => state.setExplode);
  const percent = Math.round(explode * 100);
  return (
    <fieldset className="tool-group explode sheet">
      <legend>{t.tools.explode}</legend>
      <button type="button" className="icon-button" aria-label={t.number.more(t.tools.explode)} onClick={() => setExplode(explode + STEP)}>
        <Icon name="plus" />
      </button>
      <input
        type="range"
        className="upright"
        aria-label={t.tools.explode}
        aria-valuetext={t.tools.percent(explode)}
        min="0"
        max="100"
        step="1"
        value={percent}
        onChange={(event) => setExplode(Number(event.target.value) / 100)}
      />
      <button type="button" className="icon-button" aria-label={t.number.less(t.tools.explode)} onClick={() => setExplode(explode - STEP)}>
        <Icon name="minus" />
      </button>
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
