/** Typed numbers: what is read, what is refused, what is asked back. Expected values follow from how people write numbers. */

import { describe, expect, it } from 'vitest';
import { readNumber } from '../../src/model/parse-number.ts';

describe('readNumber reads', () => {
  it.each([
    ['250', 250],
    ['12,5', 12.5],
    ['12.5', 12.5],
    [' 12.5 ', 12.5],
    ['+4', 4],
    ['-0.35', -0.35],
    ['\u22120,35', -0.35],
    ['\u2013 0,35', -0.35],
    ['.5', 0.5],
    [',5', 0.5],
    ['0.250', 0.25],
    ['0,250', 0.25],
    ['1.2345', 1.2345],
    ['1234.567', 1234.567],
    ['1 234,5', 1234.5],
    ['1\u202F234,5', 1234.5],
    ['1\u00A0234', 1234],
    ["1'234.5", 1234.5],
    ['1’234.5', 1234.5],
    ['1.234,5', 1234.5],
    ['1,234.5', 1234.5],
    ['1.234.567,891', 1234567.891],
    ['1.234.567', 1234567],
    ['1,234,567', 1234567],
  ])('%s as %d', (typed, value) => {
    expect(readNumber(typed)).toEqual({ ok: true, value });
  });
});

describe('readNumber asks back what could be decimals or thousands', () => {
  it.each([
    ['1.234', '1.2340', '1234'],
    ['1,234', '1.2340', '1234'],
    ['12.500', '12.5000', '12500'],
    ['-1.234', '-1.2340', '-1234'],
  ])('%s', (typed, small, large) => {
    expect(readNumber(typed)).toEqual({ ok: false, why: 'ambiguous', small, large });
    // Both proposals are then read as what they say.
    expect(readNumber(small)).toEqual({ ok: true, value: Number(small) });
    expect(readNumber(large)).toEqual({ ok: true, value: Number(large) });
  });
});

describe('readNumber refuses', () => {
  it.each([
    ['1e9'],
    ['Infinity'],
    ['NaN'],
    ['12 5'],
    ['1,234,5'],
    ['1.234.5'],
    ['12mm'],
    ['--3'],
    ['1.2.3'],
    ["1'23"],
    ['0x10'],
    ['-'],
    ['.'],
  ])('%s', (typed) => {
    expect(readNumber(typed)).toEqual({ ok: false, why: 'not a number' });
  });

  it.each([[''], ['   '], ['\u202F']])('nothing typed: "%s"', (typed) => {
    expect(readNumber(typed)).toEqual({ ok: false, why: 'empty' });
  });
});
