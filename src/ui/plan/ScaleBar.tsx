/** Scaling the picture below the plan: two of its points, and how far they are apart in truth. */

import { type FormEvent, useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { isRefused } from '../../edit/refusal.ts';
import { pixelOfPlan, placedByDistance } from '../../edit/underlay.ts';
import { readField } from '../field-units.ts';
import { t } from '../text/text.ts';
import { usePlan } from './plan-context.ts';

export function ScaleBar() {
  const { points, underlay, setUnderlay, choose } = usePlan(
    useShallow(({ points, underlay, setUnderlay, choose }) => ({ points, underlay, setUnderlay, choose })),
  );
  const [typed, setTyped] = useState('');
  const [problem, setProblem] = useState('');
  const words = t.draw.underlay;
  const [first, second] = points;
  const apply = (event: FormEvent) => {
    event.preventDefault();
    const read = readField(typed, 'm');
    if (!read.ok) return setProblem(t.number.refused(read));
    if (underlay === null || first === undefined || second === undefined) return;
    const place = placedByDistance([pixelOfPlan(underlay.place, first), pixelOfPlan(underlay.place, second)], read.value, underlay.place);
    if (isRefused(place)) return setProblem(t.draw.refused(place.refused));
    setUnderlay({ ...underlay, place });
    choose();
  };
  return (
    <form className="pe-sheets pe-bar-drawing" onSubmit={apply}>
      <h3 className="panel-title">{words.scale}</h3>
      <p>{words.scaleHow}</p>
      <label className="pe-typed-field">
        <span>{words.distance} [m]</span>
        <input type="text" inputMode="decimal" autoComplete="off" value={typed} onChange={({ target }) => setTyped(target.value)} />
      </label>
      <div className="pe-actions">
        <button type="submit" className="button button-main" disabled={second === undefined}>
          {words.apply}
        </button>
        <button type="button" className="button" onClick={choose}>
          {t.draw.drawing.cancel}
        </button>
      </div>
      <span className="pe-typed-problem" role="alert">
        {problem}
      </span>
    </form>
  );
}
