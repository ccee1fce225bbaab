/** While the model is cut away at an upright plane: which way one looks at the cut, and where it stands. A row above the model, so that the cut stays in sight. */

import { NumberField } from '../parts/NumberField.tsx';
import { Stepper } from '../parts/Stepper.tsx';
import { useSection } from '../section/use-section.ts';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';

const LOOK_DEGS = [0, 90, 180, 270] as const;
const STEP = 0.05;

export function CutStrip() {
  const { on, lookDeg, position } = useView((state) => state.cut);
  const setCut = useView((state) => state.setCut);
  const moveCamera = useView((state) => state.moveCamera);
  const { showOfCut } = useSection();
  // From elsewhere the cut face may look away.
  const look = (deg: number) => {
    setCut({ lookDeg: deg });
    moveCamera({ lookDeg: deg });
  };
  const place = (value: number) => setCut({ position: Math.min(1, Math.max(0, value)) });
  const percent = Math.round(position * 100);
  if (!on) return null;
  return (
    <section className="cut-strip" aria-label={t.tools.cut}>
      <fieldset className="segments">
        <legend>{t.tools.cutLook}</legend>
        {LOOK_DEGS.map((deg) => (
          <label key={deg} className="segment">
            <input type="radio" name="cut-look" checked={lookDeg === deg} onChange={() => look(deg)} />
            <span>{t.tools.looks[deg]}</span>
          </label>
        ))}
      </fieldset>
      <div className="slider-row">
        <Stepper label={t.tools.cutPlace} onLess={() => place(position - STEP)} onMore={() => place(position + STEP)}>
          <input
            type="range"
            aria-label={t.tools.cutPlace}
            aria-valuetext={t.tools.percent(position)}
            min="0"
            max="100"
            step="1"
            value={percent}
            onChange={(event) => place(Number(event.target.value) / 100)}
          />
        </Stepper>
        <NumberField
          label={t.tools.cutPlace}
          value={percent}
          unit="%"
          decimals={0}
          min={0}
          max={100}
          onCommit={(value) => place(value / 100)}
        />
      </div>
      <button type="button" className="button" title={t.section.ofCutTitle} onClick={showOfCut}>
        {t.section.ofCut}
      </button>
    </section>
  );
}
