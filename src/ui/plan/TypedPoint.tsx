/** A point typed instead of pointed at: coordinates, steps, length and angle, or a length along the pointer. */

import { type FormEvent, useId, useState } from 'react';
import { isRefused } from '../../edit/refusal.ts';
import { readTyped, type Typed, typedPoint } from '../../edit/typed.ts';
import type { NumberRead } from '../../model/parse-number.ts';
import { readField } from '../field-units.ts';
import { t } from '../text/text.ts';
import { usePlan, usePlanStore } from './plan-context.ts';
import type { PlanDrawing } from './use-plan-drawing.ts';

const MODES = ['at', 'by', 'polar', 'along'] as const;
type Mode = (typeof MODES)[number];

/** Labels of the one or two fields of a mode. */
const fieldsOfMode = (mode: Mode): readonly string[] => {
  const { typed } = t.draw;
  if (mode === 'at') return [typed.x, typed.y];
  if (mode === 'by') return [typed.dx, typed.dy];
  return mode === 'polar' ? [typed.length, typed.angle] : [typed.length];
};

function typedAs(mode: Mode, [first = 0, second = 0]: readonly number[]): Typed {
  switch (mode) {
    case 'at':
      return { kind: 'absolute', at: [first, second] };
    case 'by':
      return { kind: 'relative', by: [first, second] };
    case 'polar':
      return { kind: 'polar', lengthM: first, angleDeg: second };
    case 'along':
      return { kind: 'length', lengthM: first };
  }
}

/** What stands in the fields; a pair that was pasted into the first one counts as both. */
function readTexts(mode: Mode, texts: readonly string[]): Typed | Extract<NumberRead, { ok: false }> {
  const [first = '', second = ''] = texts;
  const pair = mode === 'at' && second.trim() === '' ? readTyped(first) : null;
  if (pair?.ok && pair.typed.kind === 'absolute') return pair.typed;
  const reads = texts.map((text): NumberRead => readField(text, 'm'));
  const bad = reads.find((read) => !read.ok);
  if (bad !== undefined && !bad.ok) return bad;
  return typedAs(
    mode,
    reads.flatMap((read) => (read.ok ? [read.value] : [])),
  );
}

export function TypedPoint({ drawing }: { readonly drawing: PlanDrawing }) {
  const plan = usePlanStore();
  const points = usePlan((state) => state.points);
  const [mode, setMode] = useState<Mode>('at');
  const [texts, setTexts] = useState<readonly string[]>(['', '']);
  const [problem, setProblem] = useState('');
  const id = useId();
  const labels = fieldsOfMode(mode);
  const set = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const typed = readTexts(mode, texts.slice(0, labels.length));
    if ('why' in typed) {
      setProblem(t.number.refused(typed));
      return;
    }
    const found = typedPoint(typed, points.at(-1) ?? null, plan.getState().aim?.at ?? null);
    if (isRefused(found)) {
      setProblem(t.draw.refused(found.refused));
      return;
    }
    setProblem('');
    setTexts(['', '']);
    drawing.setPoint(found.at);
    event.currentTarget.querySelector('input')?.focus();
  };
  return (
    <form className="pe-typed" aria-label={t.draw.typed.label} onSubmit={set}>
      <label className="unseen" htmlFor={`${id}-mode`}>
        {t.draw.typed.modeLabel}
      </label>
      <select
        id={`${id}-mode`}
        value={mode}
        onChange={(event) => {
          setMode(MODES.find((one) => one === event.target.value) ?? 'at');
          setProblem('');
        }}
      >
        {MODES.map((one) => (
          <option key={one} value={one} disabled={one !== 'at' && points.length === 0}>
            {t.draw.typed.modes[one]}
          </option>
        ))}
      </select>
      {labels.map((label, i) => (
        <label key={label} className="pe-typed-field">
          <span>{label.split(',')[0]}</span>
          <input
            type="text"
            inputMode="decimal"
            autoComplete="off"
            aria-label={label}
            title={label}
            aria-invalid={problem !== ''}
            aria-describedby={problem === '' ? undefined : `${id}-problem`}
            value={texts[i] ?? ''}
            onChange={(event) => setTexts(texts.map((text, k) => (k === i ? event.target.value : text)))}
          />
        </label>
      ))}
      <button type="submit" className="button">
        {t.draw.typed.set}
      </button>
      <span id={`${id}-problem`} className="pe-typed-problem" role="alert">
        {problem}
      </span>
    </form>
  );
}
