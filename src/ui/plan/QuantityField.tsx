/** A number that may be left empty or differ between parts: read in the unit shown, asked back where it cannot be meant. */

import { type KeyboardEvent, useEffect, useId, useState } from 'react';
import type { LoadUnit } from '../../model/shown-units.ts';
import { DOUBTFUL_KNM2, type OtherReading, otherReadings, readLoad } from '../facts/load-field.ts';
import { fieldUnit, inField, readField } from '../field-units.ts';
import { loadNumber, numberText, unitText } from '../format.ts';
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
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState('');
  const [doubt, setDoubt] = useState<Doubt | null>(null);
  const id = useId();
  const shownLoad = useView((state) => state.units.load);
  // A value from elsewhere replaces what was typed and its complaint.
  // biome-ignore lint/correctness/useExhaustiveDependencies: runs when the value changes, whatever it is
  useEffect(() => clear(), [value]);
  const clear = () => {
    setTyped(null);
    setProblem('');
    setDoubt(null);
  };
  const shown = value === undefined || value === null ? '' : shownAs(props, value);
  const give = (next: number | undefined) => {
    clear();
    if (next !== value) onCommit(next);
  };
  const commit = () => {
    if (typed === null || doubt !== null) return;
    if (typed === shown || props.takes?.(typed)) return clear();
    if (typed.trim() === '' && props.optional) return give(undefined);
    const judged = judge(typed, props, shownLoad);
    if ('value' in judged) give(judged.value);
    else if ('doubt' in judged) setDoubt(judged.doubt);
    else setProblem(judged.problem);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') commit();
    if (event.key === 'Escape') clear();
  };
  return (
    <span className="number-field pe-quantity">
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        aria-label={label}
        aria-invalid={problem !== '' || doubt !== null}
        aria-describedby={problem === '' ? undefined : `${id}-problem`}
        placeholder={value === null ? t.draw.chosen.mixed : undefined}
        value={typed ?? shown}
        onChange={(event) => {
          setTyped(event.target.value);
          setDoubt(null);
        }}
        onBlur={commit}
        onKeyDown={onKeyDown}
      />
      {unit !== '-' && <span className="unit">{unit === 'kN/m²' ? unitText(unit) : fieldUnit(unit)}</span>}
      {problem !== '' && (
        <span className="field-problem" id={`${id}-problem`} role="alert">
          {problem}
        </span>
      )}
      {doubt !== null && <LoadDoubt doubt={doubt} onGive={give} />}
    </span>
  );
}

type Judged = { readonly value: number } | { readonly doubt: Doubt } | { readonly problem: string };

/** What was typed, as a value in range, or why not. */
function judge(typed: string, props: QuantityProps, shownLoad: LoadUnit): Judged {
  const isLoad = props.unit === 'kN/m²';
  const read = isLoad ? readLoad(typed, shownLoad) : readField(typed, props.unit);
  if (!read.ok) return { problem: t.number.refused(read) };
  const value = 'value' in read ? read.value : read.valueKNm2;
  if (value < props.min || value > props.max) return { problem: rangeText(props) };
  if (!isLoad || value <= DOUBTFUL_KNM2 || 'value' in read) return { value };
  return { doubt: { typed: read.typed, valueKNm2: value, others: otherReadings(value, read.typed) } };
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
    <span className="field-problem pe-doubt" role="alert">
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
