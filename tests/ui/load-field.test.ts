/** Loads as people type them, by hand; 9.81 m/s² as everywhere. */

import { describe, expect, it } from 'vitest';
import { otherReadings, readLoad } from '../../src/ui/facts/load-field.ts';

const readingOf = (typed: string, shown: Parameters<typeof readLoad>[1] = 'kN/m²') => {
  const read = readLoad(typed, shown);
  return read.ok ? read.valueKNm2 : read.why;
};

describe('a typed load', () => {
  it.each([
    ['12', 12],
    ['12,5', 12.5],
    ['12.5 kN/m²', 12.5],
    ['12,5 kN/m2', 12.5],
    ['12.5 kPa', 12.5],
    // 1000 kg · 9.81 m/s² = 9.81 kN
    ['1000 kg/m²', 9.81],
    ['1 t/m2', 9.81],
    ['1,5 t / m²', 14.715],
    // 100 lb/ft² = 100 · 0.45359237 · 9.80665 / 0.09290304 N/m² = 4.78803 kN/m²
    ['100 psf', 4.78802589804],
  ])('%s', (typed, valueKNm2) => {
    expect(readingOf(typed)).toBeCloseTo(valueKNm2 as number, 9);
  });

  it('is in the unit shown where it has none', () => {
    expect(readingOf('1000', 'kg/m²')).toBeCloseTo(9.81, 9);
    expect(readingOf('12 kN/m²', 'kg/m²')).toBe(12);
  });

  it('is refused where it is no number or could be two', () => {
    expect(readingOf('')).toBe('empty');
    expect(readingOf('12 apples')).toBe('not a number');
    expect(readingOf('1.500')).toBe('ambiguous');
  });
});

describe('a load too large to be true', () => {
  it('was meant in kilograms', () => {
    // 1500 kg/m² · 9.81 / 1000 = 14.715 kN/m²; 1500 psf would be 71.8 kN/m², as doubtful as before
    expect(otherReadings(1500, 1500)).toEqual([{ unit: 'kg/m²', valueKNm2: 14.715 }]);
  });

  it('is asked both ways where both could be', () => {
    // 250 kg/m² = 2.4525; 250 psf = 250 · 0.0478802589804 = 11.970064745
    expect(otherReadings(250, 250).map(({ unit }) => unit)).toEqual(['kg/m²', 'psf']);
  });

  it('loads that decks carry are never asked about', () => {
    expect(otherReadings(33, 33)).toEqual([]);
    expect(otherReadings(60, 60)).toEqual([]);
  });
});
