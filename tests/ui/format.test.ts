/** Numbers as shown: decimals per unit, units after a narrow no-break space, and what happens next to 100 %. */

import { afterEach, describe, expect, it } from 'vitest';
import {
  cellText,
  dayText,
  formatIn,
  isAtLimit,
  levelText,
  loadText,
  mmText,
  numberText,
  percentText,
  quantityText,
  timeText,
  wholePercent,
} from '../../src/ui/format.ts';

const NARROW = '\u202F';
const MINUS = '\u2212';

describe('quantities', () => {
  it('show kN/m² with two decimals, mm with none, m with three', () => {
    expect(loadText(12.345)).toMatch(/^12\.3[45]\u202FkN\/m²$/);
    expect(loadText(5)).toBe(`5.00${NARROW}kN/m²`);
    expect(mmText(249.6)).toBe(`250${NARROW}mm`);
    expect(quantityText(0.62, 'm')).toBe(`0.620${NARROW}m`);
    expect(quantityText(1234.56, 'm²')).toBe(`1,234.6${NARROW}m²`);
  });

  it('never show a negative zero, and show a true minus', () => {
    expect(numberText(-0.001, 2)).toBe('0.00');
    expect(numberText(-0.35, 2)).toBe(`${MINUS}0.35`);
  });

  it('show levels with their sign', () => {
    expect(levelText(0.62)).toBe(`+0.620${NARROW}m`);
    expect(levelText(-0.779)).toBe(`${MINUS}0.779${NARROW}m`);
    expect(levelText(0)).toBe(`0.000${NARROW}m`);
  });
});

describe('percent', () => {
  it('has one decimal', () => {
    expect(percentText(0.711)).toBe(`71.1${NARROW}%`);
    expect(percentText(1.21)).toBe(`121.0${NARROW}%`);
    expect(cellText(0.5, '-')).toBe(`50.0${NARROW}%`);
  });

  it('says 100.0 % only of what is at the limit', () => {
    expect(percentText(1)).toBe(`100.0${NARROW}%`);
    expect(percentText(1.0004)).toBe(`100.04${NARROW}%`);
    expect(percentText(0.99996)).toBe(`99.996${NARROW}%`);
    expect(percentText(1.001)).toBe(`100.1${NARROW}%`);
  });

  it('takes 1 with the rounding of 32 bits for 1', () => {
    // The next number above 1 in 32 bits is 1 + 2^-23.
    expect(percentText(1 + 2 ** -23)).toBe(`100.0${NARROW}%`);
  });

  it('is whole when read aloud, except where that would hide an excess', () => {
    expect(wholePercent(1.2133)).toBe('121');
    expect(wholePercent(1.004)).toBe('100.40');
    expect(wholePercent(1)).toBe('100');
  });

  it('counts only rounding as at the limit', () => {
    // 0.1 · 3 / 0.3 is not exactly 1 in floating point.
    expect(isAtLimit((0.1 * 3) / 0.3)).toBe(true);
    expect(isAtLimit(1.000001)).toBe(false);
  });
});

describe('days', () => {
  afterEach(() => formatIn('en'));

  it('are told one way in each language, with a time and without', () => {
    const when = new Date(2026, 2, 9, 14, 5);
    expect([dayText('2026-03-09'), timeText(when)]).toEqual(['2026-03-09', '2026-03-09, 14:05']);
    formatIn('de');
    expect([dayText('2026-03-09'), timeText(when)]).toEqual(['09.03.2026', '09.03.2026, 14:05']);
  });
});
