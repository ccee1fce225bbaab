/** A derivation as it is printed: its numbers alone give the value again, in either language. */

import { describe, expect, it } from 'vitest';
import type { Term } from '../../src/model/derivation.ts';
import { derive } from '../../src/project/derivation.ts';
import { derivationLines, formulaText, printedValue, recomputed } from '../../src/ui/facts/derivation-lines.ts';
import { numbersIn } from '../../src/ui/facts/number-in.ts';
import { ON_SOUND, read, sceneOf } from '../helpers/scene-builder.ts';

describe.each(['en', 'de'] as const)('printed in %s', (language) => {
  const { exact } = numbersIn(language);
  const read7 = (value: number) => printedValue(exact(value));

  it('reads its own numbers back', () => {
    for (const value of [0, 1, -2.5, 1234.5, 1234567, 0.00981, 12.182725]) expect(read7(value)).toBeCloseTo(value, 5);
  });

  it('works out a mean from the printed inputs', () => {
    const project = read(sceneOf(ON_SOUND));
    const term = derive(project, { kind: 'mean', bay: 'A1' })!;
    // By hand: 176 kg/m² · 0.00981 = 1.72656
    expect(recomputed(term, read7)).toBeCloseTo(1.72656, 6);
    expect(derivationLines(term).length).toBeGreaterThan(8);
  });

  it('writes a formula with its numbers', () => {
    const given = (value: number): Term => ({ name: 'weight', unit: 'kN', value, how: { source: { from: 'scene' } } });
    const term: Term = { name: 'mean load', unit: 'kN/m²', value: 1.5, how: { does: 'quotient', terms: [given(3.75), given(2.5)] } };
    expect(formulaText(term, exact, 'steps')).toBe(language === 'en' ? '3.75 / 2.5' : '3,75 / 2,5');
  });
});
