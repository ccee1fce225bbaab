/** A number that may be left empty or differ between parts: read in the unit shown, asked back where it cannot be meant. */

import type { LoadUnit } from '../../model/shown-units.ts';
import { DOUBTFUL_KNM2, type OtherReading, otherReadings, readLoad } from '../facts/load-field.ts';
import { fieldUnit, inField, readField } from '../field-units.ts';
import { loadNumber, numberText, unitText } from '../format.ts';
import { FieldProblem } from '../parts/FieldProblem.tsx';
import { useTyped } from '../parts/use-typed.ts';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';

export interface QuantityProps {
  readonly label: string;
  /** Undefined for empty, null where parts differ. */
  readonly value: number | undefined | null;
  /** `kN/m²` is shown and read in the unit chosen for loads. */
  readonly unit: string;
  readonly decimals: number;
  readonly min: number;
  readonly max: number;
  readonly optional?: boolean;
  readonly onCommit: (value: number | undefined) => void;
  /** Read first; true where it took the text as something else, such as two loads at once. */
  readonly takes?: (typed: string) => boolean;
}

/** Greatest load a scene can have, far above any [kN/m²]. */
export const MOST_LOAD_KNM2 = 10_000;

interface Doubt {
  readonly typed: number;
  readonly valueKNm2: number;
  readonly others: readonly OtherReading[];
}

export function QuantityField(props: QuantityProps) {
  const { label, value, unit, onCommit } = props;
  const shownLoad = useView((state) => state.units.load);
  const give = (next: number | undefined) => {
    if (next !== value) onCommit(next);
  };
  const { problem, problemId, reset, input } = useTyped<string | Doubt>({
    shown: value === undefined || value === null ? '' : shownAs(props, value),
    take: (typed) => {
      if (props.takes?.(typed)) return null;
      const judged = typed.trim() === '' && props.optional ? { value: undefined } : judge(typed, props, shownLoad);
      if ('problem' in judged) return judged.problem;
      give(judged.value);
      return null;
    },
  });
  const giveMeant = (meant: number) => {
    reset();
    give(meant);
  };
  return (
    <span className="number-field pe-quantity">
      <input type="text" inputMode="decimal" aria-label={label} placeholder={value === null ? t.draw.chosen.mixed : undefined} {...input} />
      {unit !== '-' && <span className="unit">{unit === 'kN/m²' ? unitText(unit) : fieldUnit(unit)}</span>}
      <FieldProblem id={problemId}>
        {problem === null || typeof problem === 'string' ? problem : <LoadDoubt doubt={problem} onGive={giveMeant} />}
      </FieldProblem>
    </span>
  );
}

type Judged = { readonly value: number } | { readonly problem: string | Doubt };

/** What was typed, as a value in range, or why not. */
function judge(typed: string, props: QuantityProps, shownLoad: LoadUnit): Judged {
  const isLoad = props.unit === 'kN/m²';
  const read = isLoad ? readLoad(typed, shownLoad) : readField(typed, props.unit);
  if (!read.ok) return { problem: t.number.refused(read) };
  const value = 'value' in read ? read.value : read.valueKNm2;
  if (value < props.min || value > props.max) return { problem: rangeText(props) };
  if (!isLoad || value <= DOUBTFUL_KNM2 || 'value' in read) return { value };
  return { problem: { typed: read.typed, valueKNm2: value, others: otherReadings(value, read.typed) } };
}

function shownAs({ unit, decimals }: QuantityProps, value: number): string {
  if (unit === 'kN/m²') return loadNumber(value);
  return unit === 'mm' ? inField(value, unit, decimals) : trimmed(value, decimals);
}

/** No more decimals than the value has. */
function trimmed(value: number, decimals: number): string {
  const needed = Array.from({ length: decimals + 1 }, (_, i) => i).find((i) => Math.abs(value - Number(value.toFixed(i))) < 1e-9);
  return numberText(value, needed ?? decimals);
}

function rangeText({ min, max, unit, decimals }: QuantityProps): string {
  const isLoad = unit === 'kN/m²';
  const [from, to] = [min, max].map((limit) => (isLoad ? loadNumber(limit) : numberText(limit, Number.isInteger(limit) ? 0 : decimals)));
  return t.number.outOfRange(from ?? '', to ?? '', isLoad ? unitText(unit) : unit === '-' ? '' : unit);
}

/** 1500 was meant in kilograms, or it was meant. */
function LoadDoubt({ doubt, onGive }: { readonly doubt: Doubt; readonly onGive: (value: number) => void }) {
  const { typed, valueKNm2, others } = doubt;
  const figures = numberText(typed, Number.isInteger(typed) ? 0 : 2);
  return (
    <span className="pe-doubt">
      {t.draw.load.doubt(`${numberText(valueKNm2, Number.isInteger(valueKNm2) ? 0 : 1)} kN/m²`)}
      {others.map((other) => (
        <button
          key={other.unit}
          type="button"
          className="button"
          onMouseDown={(event) => event.preventDefault()}
          onClick={() => onGive(other.valueKNm2)}
        >
          {t.draw.load.meant(`${figures} ${other.unit}`, other.valueKNm2)}
        </button>
      ))}
      <button type="button" className="button" onMouseDown={(event) => event.preventDefault()} onClick={() => onGive(valueKNm2)}>
        {t.draw.load.keep}
      </button>
    </span>
  );
}
