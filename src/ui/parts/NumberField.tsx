/** A number typed by hand: decimal comma or point; says what is wrong instead of guessing. */

import type { NumberRead } from '../../model/parse-number.ts';
import { fieldUnit, inField, readField } from '../field-units.ts';
import { t } from '../text/text.ts';
import { FieldProblem } from './FieldProblem.tsx';
import { useTyped } from './use-typed.ts';

export interface NumberFieldProps {
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

function complaint(read: NumberRead, { min, max, unit, decimals }: NumberFieldProps): string | null {
  if (!read.ok) return t.number.refused(read);
  if (read.value >= min && read.value <= max) return null;
  const [from, to] = [min, max].map((limit) => inField(limit, unit, Number.isInteger(limit) ? 0 : decimals));
  return t.number.outOfRange(from ?? '', to ?? '', fieldUnit(unit));
}

export function NumberField(props: NumberFieldProps) {
  const { label, value, unit, decimals, onCommit, onClear } = props;
  const { problem, problemId, input } = useTyped({
    shown: value === null ? '' : inField(value, unit, decimals),
    take: (typed) => {
      if (typed.trim() === '' && onClear) {
        onClear();
        return null;
      }
      const read = readField(typed, unit);
      const why = complaint(read, props);
      if (why === null && read.ok && read.value !== value) onCommit(read.value);
      return why;
    },
  });
  return (
    <span className="number-field">
      <input type="text" inputMode="decimal" aria-label={label} {...input} />
      <span className="unit">{fieldUnit(unit)}</span>
      <FieldProblem id={problemId}>{problem}</FieldProblem>
    </span>
  );
}
