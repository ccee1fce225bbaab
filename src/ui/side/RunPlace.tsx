/** Where the chosen vehicle stands on its line: slider, steps, a number; its worst place; driving along. */

import { useId } from 'react';
import type { RunView } from '../../model/run.ts';
import type { WheelStand } from '../../model/wheel-input.ts';
import { Icon } from '../parts/Icon.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { Stepper } from '../parts/Stepper.tsx';
import { t } from '../text/text.ts';
import { useScene, useStores, useView } from '../use-stores.ts';

const STANDS = ['wheels', 'support'] as const satisfies readonly WheelStand['on'][];
const LEAST_STEP_M = 0.05;

interface Props {
  readonly run: RunView;
  readonly onWorst: () => void;
}

export function RunPlace({ run, onWorst }: Props) {
  const { view } = useStores();
  const chosen = useView((state) => state.run);
  const driving = useView((state) => state.driving);
  const still = useView((state) => state.stillMotion);
  const cellM = useScene((state) => state.snapshot?.grid.cellM ?? 0.25);
  if (chosen === null) return null;
  const endM = (chosen.on === 'support' ? run.supportM : run.travelM) ?? run.travelM;
  const { moveRun, setDriving, chooseRun } = view.getState();
  const move = (frontM: number) => {
    setDriving(false);
    moveRun(Math.min(endM, Math.max(0, frontM)));
  };
  const drive = () => {
    // From the end there is nothing left to drive but the whole line from its start.
    if (!driving && chosen.frontM >= endM) moveRun(0);
    setDriving(!driving);
  };
  return (
    <>
      {run.supportM !== null && (
        <Stands
          on={chosen.on}
          onChoose={(on) =>
            chooseRun({ ...chosen, on, frontM: Math.min(chosen.frontM, on === 'support' ? (run.supportM ?? 0) : run.travelM) })
          }
        />
      )}
      <PlaceRow
        label={chosen.on === 'support' ? t.wheels.supportPlace : t.wheels.place}
        frontM={chosen.frontM}
        endM={endM}
        stepM={Math.max(LEAST_STEP_M, cellM)}
        onMove={move}
      />
      <div className="sheet-buttons">
        <button type="button" className="button" disabled={run.worst === null} onClick={onWorst}>
          {t.wheels.worst}
        </button>
        {!still && (
          <button type="button" className="button" aria-pressed={driving} onClick={drive}>
            <Icon name={driving ? 'pause' : 'play'} />
            {driving ? t.wheels.halt : t.wheels.drive}
          </button>
        )}
      </div>
      {run.worst === null && <p className="small">{t.wheels.noWorst}</p>}
    </>
  );
}

interface StandsProps {
  readonly on: WheelStand['on'];
  readonly onChoose: (on: WheelStand['on']) => void;
}

function Stands({ on, onChoose }: StandsProps) {
  const name = useId();
  return (
    <>
      <fieldset className="segments">
        <legend className="unseen">{t.wheels.standTitle}</legend>
        {STANDS.map((one) => (
          <label key={one} className="segment">
            <input type="radio" name={name} checked={on === one} onChange={() => onChoose(one)} />
            <span>{t.wheels.stands[one]}</span>
          </label>
        ))}
      </fieldset>
      {on === 'support' && <p className="small">{t.wheels.supportNote}</p>}
    </>
  );
}

interface RowProps {
  readonly label: string;
  readonly frontM: number;
  readonly endM: number;
  readonly stepM: number;
  readonly onMove: (frontM: number) => void;
}

/** Buttons go to the next whole step; slider and arrow keys by one step. */
function PlaceRow({ label, frontM, endM, stepM, onMove }: RowProps) {
  return (
    <div>
      <p className="small">{label}</p>
      <div className="slider-row">
        <Stepper
          label={label}
          onLess={frontM <= 0 ? null : () => onMove((Math.ceil(frontM / stepM - 1e-6) - 1) * stepM)}
          onMore={frontM >= endM ? null : () => onMove((Math.floor(frontM / stepM + 1e-6) + 1) * stepM)}
        >
          <input
            type="range"
            aria-label={label}
            aria-valuetext={t.wheels.placeText(frontM, endM)}
            min={0}
            max={endM}
            step={stepM}
            value={frontM}
            onChange={(event) => onMove(Number(event.target.value))}
          />
        </Stepper>
        <NumberField label={label} value={frontM} unit="m" decimals={2} min={0} max={endM} onCommit={onMove} />
      </div>
    </div>
  );
}
