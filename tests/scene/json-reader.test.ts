/** Our JSON reader agrees with the platform's on every text, and knows where things stand. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineOfOffset } from '../../src/scene/json-problem.ts';
import { type JsonReading, readJson } from '../../src/scene/json-reader.ts';

const SEED = 20260309;

function read(text: string): JsonReading {
  const reading = readJson(text);
  if ('problem' in reading) throw new Error(`${reading.problem.code}: ${reading.problem.got}`);
  return reading;
}

describe(`agreement with the platform's parser (seed ${SEED})`, () => {
  it('on random values, compact and indented', () => {
    const anyJson = fc.jsonValue({ maxDepth: 6, stringUnit: 'binary' });
    fc.assert(
      fc.property(anyJson, fc.constantFrom(0, 1, '\t'), (value, indent) => {
        const text = JSON.stringify(value, null, indent);
        // JSON.parse keeps a key named __proto__ as an own key; ours refuses it.
        fc.pre(!text.includes('"__proto__"'));
        expect(read(text).value).toEqual(JSON.parse(text));
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  it('on random garbage made of JSON’s own marks: both accept or both refuse', () => {
    const marks = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"',
      '"a"',
      '\\',
      '\\n',
      '\\u0041',
      '0',
      '1',
      '-',
      '.',
      'e',
      '+',
      'true',
      'null',
      ' ',
      '\n',
      '\t',
      '\u007f',
      '\u0085',
      '\u0000',
    );
    fc.assert(
      fc.property(fc.array(marks, { maxLength: 9 }), (parts) => {
        const text = parts.join('');
        let theirs: { readonly value: unknown } | null = null;
        try {
          theirs = { value: JSON.parse(text) };
        } catch {
          // refused
        }
        const ours = readJson(text);
        expect('problem' in ours ? null : { value: ours.value }).toEqual(theirs);
      }),
      { seed: SEED, numRuns: 5000 },
    );
  });

  it('on awkward numbers and texts', () => {
    for (const text of [
      '-0',
      '1E+2',
      '1e-7',
      '0.1',
      '12345678901234567890',
      '1e999',
      '"\\ud83c\\udf33 \\u00e9 \\/ \\""',
      '"\ud800"',
      '""',
      '[]',
      '{}',
      '[[[]]]',
      ' [ 1 , { } ] ',
    ]) {
      expect(read(text).value, text).toEqual(JSON.parse(text));
    }
  });
});

describe('places', () => {
  const text = '{\n "a": [\n  1,\n  {"b":\n   [[1, 2],\n    [3, 4]]}\n ],\n "7": 0,\n "5": 1\n}';
  const lineOf = (...path: (string | number)[]) => lineOfOffset(text, read(text).offsetOf(path));

  it('of keys and items, counted from line 1', () => {
    expect(lineOf()).toBe(1);
    expect(lineOf('a')).toBe(2);
    expect(lineOf('a', 0)).toBe(3);
    expect(lineOf('a', 1, 'b')).toBe(4);
    expect(lineOf('a', 1, 'b', 0)).toBe(5);
    expect(lineOf('a', 1, 'b', 1)).toBe(6);
    // Keys that look like numbers, which the platform would put first.
    expect(lineOf('7')).toBe(8);
    expect(lineOf('5')).toBe(9);
  });

  it('of what is missing: where it should have stood', () => {
    expect(lineOf('a', 1, 'c', 'd')).toBe(4);
    expect(lineOf('a', 1, 'b', 1, 0)).toBe(6);
    expect(lineOf('x')).toBe(1);
  });

  it('of keys that repeat, however deep', () => {
    const { repeated } = read('{"a": {"b": 1, "c": 2, "b": 3}, "x": [{"y": 1, "y": 2}]}');
    expect(repeated.map(({ path }) => path)).toEqual([
      ['a', 'b'],
      ['x', 0, 'y'],
    ]);
    expect(read('{"a": 1, "\\u0061": 2}').repeated).toHaveLength(1);
  });
});

it('reads a large list in one go, without stack or time trouble', () => {
  const text = `[${'[1.25,2.5],'.repeat(200_000)}[0,0]]`;
  expect((read(text).value as unknown[]).length).toBe(200_001);
});
