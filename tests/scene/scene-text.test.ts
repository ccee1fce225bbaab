/** A changed scene in the text it was opened from. */

import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textInStyle } from '../../src/scene/scene-text.ts';

describe('the text of a scene', () => {
  it.each(readdirSync('scenes').filter((name) => name.endsWith('.scene.json')))('%s is the file itself where nothing changed', (name) => {
    const text = readFileSync(`scenes/${name}`, 'utf8');
    expect(textInStyle(text, JSON.parse(text))).toBe(text);
  });

  it('changes the one number and nothing else', () => {
    const text = '\uFEFF{\r\n\t"a" : [ 1,2 , 3.50 ],\r\n\t"b": { "t\\"x": 200 , "u": "\\u00e4" }\r\n}\r\n';
    expect(textInStyle(text, { b: { u: 'ä', 't"x': 250 }, a: [1, 2, 3.5] })).toBe(text.replace('200', '250'));
  });

  it('adds a key behind the others, in the line where they stand', () => {
    expect(textInStyle('{ "layers": [{ "material": "soil" }] }', { layers: [{ thicknessMm: 5, material: 'soil' }] })).toBe(
      '{ "layers": [{ "material": "soil", "thicknessMm": 5 }] }',
    );
  });

  it('drops a key, and prints what stood in several lines in several lines', () => {
    expect(textInStyle('{\n  "a": {\n    "b": 1,\n    "c": 2\n  }\n}\n', { a: { c: 3 } })).toBe('{\n  "a": {\n    "c": 3\n  }\n}\n');
  });

  it('tells a list from an empty one', () => {
    expect(textInStyle('{"a": [], "b": [1]}', { a: [1], b: [] })).toBe('{"a": [1], "b": []}');
  });

  it('reads as the value, whatever text it came from', () => {
    // A key __proto__ is refused when a scene is read.
    const json = fc.jsonValue({ maxDepth: 4 }).filter((value) => !JSON.stringify(value).includes('__proto__'));
    fc.assert(
      fc.property(json, json, fc.integer({ min: 0, max: 4 }), (old, now, indent) => {
        const plain = JSON.parse(JSON.stringify(now));
        expect(JSON.parse(textInStyle(JSON.stringify(old, null, indent), plain))).toEqual(plain);
      }),
      { numRuns: 500 },
    );
  });
});
