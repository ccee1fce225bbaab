/** A number typed by hand: decimal comma or point, taken over on Enter or when leaving; says what is wrong instead of guessing. */

import { type KeyboardEvent, useEffect, useId, useState } from 'react';
import type { NumberRead } from '../../model/parse-number.ts';
import { fieldUnit, inField, readField } from '../field-units.ts';
import { t } from '../text/text.ts';

interface Props {
  readonly label: string;
  /** Null for an empty field. */
  readonly value: number | null;
  readonly unit: string;
  readonly decimals: number;
  readonly min: number;
  readonly max: number;
  readonly onCommit: (value: number) => void;
  /** Called for a field that was emptied; without it a number is asked for. */
  readonly onClear?: () => void;
}

function complaint(read: NumberRead, { min, max, unit, decimals }: Props): string {
  if (!read.ok) return t.number.refused(read);
  if (read.value >= min && read.value <= max) return '';
  const [from, to] = [min, max].map((limit) => inField(limit, unit, Number.isInteger(limit) ? 0 : decimals));
  return t.number.outOfRange(from ?? '', to ?? '', fieldUnit(unit));
}

export function NumberField(props: Props) {
  const { label, value, unit, decimals, onCommit, onClear } = props;
  const shown = value === null ? '' : inField(value, unit, decimals);
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState('');
  const id = useId();
  // A new value from elsewhere (slider, stepper, another scene) replaces what was typed and its complaint.
  // biome-ignore lint/correctness/useExhaustiveDependencies: runs when the value changes, whatever it is
  useEffect(() => {
    setTyped(null);
    setProblem('');
  }, [value]);
  const commit = () => {
    if (typed === null) return;
    // Left as it was shown: rounded for reading, nothing was typed.
    if (typed === shown) {
      setTyped(null);
      return;
    }
    if (typed.trim() === '' && onClear) {
      setTyped(null);
      setProblem('');
      onClear();
      return;
    }
    const read = readField(typed, unit);
    const why = complaint(read, props);
    setProblem(why);
    if (why !== '' || !read.ok) return;
    setTyped(null);
    if (read.value !== value) onCommit(read.value);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') commit();
    if (event.key === 'Escape') {
      setTyped(null);
      setProblem('');
    }
  };
  return (
    <span className="number-field">
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        aria-label={label}
        aria-invalid={problem !== ''}
        aria-describedby={problem === '' ? undefined : `${id}-problem`}
        value={typed ?? shown}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={commit}
        onKeyDown={onKeyDown}
      />
      <span className="unit">{fieldUnit(unit)}</span>
      {problem !== '' && (
        <span className="field-problem" id={`${id}-problem`} role="alert">
          {problem}
        </span>
      )}
    </span>
  );
}
