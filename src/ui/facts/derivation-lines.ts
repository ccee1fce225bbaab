/** A derivation as lines to read and print: each formula with its numbers; and worked out again from those numbers alone. */

import type { Term, TermOperation } from '../../model/derivation.ts';

/** A term without terms of its own, or a formula made of its terms. */
export interface DerivationLine {
  readonly term: Term;
  readonly depth: number;
}

/** Top down: a number, then what it is made of. */
export function derivationLines(term: Term, depth = 0): DerivationLine[] {
  const below = 'does' in term.how ? term.how.terms : [];
  return [{ term, depth }, ...below.flatMap((one) => derivationLines(one, depth + 1))];
}

const SIGNS: Readonly<Record<Exclude<TermOperation, 'whole steps'>, string>> = {
  sum: ' + ',
  difference: ' \u2212 ',
  product: ' · ',
  quotient: ' / ',
};

/** The numbers of a formula with its signs; `steps` stands between a value and the step it is rounded down to. */
export function formulaText({ how }: Term, exact: (value: number) => string, steps: string): string {
  if (!('does' in how)) return '';
  const numbers = how.terms.map((one) => exact(one.value));
  return numbers.join(how.does === 'whole steps' ? ` ${steps} ` : SIGNS[how.does]);
}

/** What a printed number says, with decimal comma or point. */
export function printedValue(text: string): number {
  return Number(text.replace('\u2212', '-').replace(',', '.'));
}

/** Printed numbers have seven digits. */
const PRINTED = 1e-6;

/** Worked out again from the inputs as printed. */
export function recomputed(term: Term, read: (value: number) => number): number {
  const { how } = term;
  if (!('does' in how)) return read(term.value);
  const [first = 0, ...others] = how.terms.map((one) => recomputed(one, read));
  switch (how.does) {
    case 'sum':
      return others.reduce((sum, one) => sum + one, first);
    case 'difference':
      return others.reduce((left, one) => left - one, first);
    case 'product':
      return others.reduce((product, one) => product * one, first);
    case 'quotient':
      return others.reduce((left, one) => left / one, first);
    case 'whole steps':
      return Math.floor(first / (others[0] ?? 1) + PRINTED) * (others[0] ?? 1);
  }
}
