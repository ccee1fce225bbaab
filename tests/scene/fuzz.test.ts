/** Damaged scenes: whatever happens to the text, there is a scene or an error, soon and without a throw. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { issueLine } from '../../src/model/issue.ts';
import { parseScene, type SceneReading } from '../../src/scene/parse-scene.ts';
import { fullScene, type Json, KNOWN } from './scenes.ts';

const SEED = 4711;
const TEXT = JSON.stringify(fullScene(), null, 1);

function expectAnswer(reading: SceneReading): void {
  const errors = reading.issues.filter(({ level }) => level === 'error');
  expect(reading.scene === null).toBe(errors.length > 0);
  expect(reading.issues.length).toBeLessThanOrEqual(51);
  for (const issue of reading.issues) expect(issueLine(issue).length).toBeLessThan(2000);
}

const position = fc.integer({ min: 0, max: TEXT.length });
const scrap = fc.oneof(
  fc.string({ maxLength: 4, unit: 'binary' }),
  fc.constantFrom('{', '}', '[', ']', ',', ':', '"', '\\', '-', '.', '0', 'e9', 'NaN', '\n', '//', '__proto__'),
);

describe(`damaged text (seed ${SEED})`, () => {
  it('cut anywhere', () => {
    for (let length = 0; length < TEXT.length; length += 7) {
      const { scene, issues } = parseScene(TEXT.slice(0, length), KNOWN);
      expect(scene).toBeNull();
      expect(issues[0]?.code).toBe(length === 0 ? 'FILE_EMPTY' : 'JSON_TRUNCATED');
    }
  });

  it('deleted, doubled, replaced and inserted pieces', () => {
    const damage = fc.record({ at: position, length: fc.nat(12), scrap, how: fc.constantFrom('delete', 'double', 'replace', 'insert') });
    fc.assert(
      fc.property(fc.array(damage, { minLength: 1, maxLength: 4 }), (damages) => {
        let text = TEXT;
        for (const { at, length, scrap: put, how } of damages) {
          const [before, piece, after] = [text.slice(0, at), text.slice(at, at + length), text.slice(at + length)];
          text = before + { delete: '', double: piece + piece, replace: put, insert: put + piece }[how] + after;
        }
        expectAnswer(parseScene(text, KNOWN));
      }),
      { seed: SEED, numRuns: 1500 },
    );
  });

  it('any text at all', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60, unit: 'binary' }), (text) => {
        expectAnswer(parseScene(text, KNOWN));
        expectAnswer(parseScene(`{"format":"loamdeck-scene","version":1,${text}`, KNOWN));
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });
});

/** Every place in a value. */
function placesIn(value: Json, path: readonly (string | number)[] = []): (string | number)[][] {
  if (typeof value !== 'object' || value === null) return [[...path]];
  const keys = Array.isArray(value) ? value.map((_, i) => i) : Object.keys(value);
  return [[...path], ...keys.flatMap((key) => placesIn(value[key], [...path, key]))];
}

function put(root: Json, path: readonly (string | number)[], value: unknown): Json {
  if (path.length === 0) return value;
  let holder = root;
  for (const step of path.slice(0, -1)) {
    holder = holder[step];
    if (typeof holder !== 'object' || holder === null) return root;
  }
  holder[path.at(-1) as string] = value;
  return root;
}

describe(`changed values (seed ${SEED})`, () => {
  const places = placesIn(fullScene()).filter((path) => path.length > 0 && path[0] !== 'format' && path[0] !== 'version');
  const number = fc.oneof(
    fc.double({ noNaN: true }),
    fc.constantFrom(0, -0, -1, 1e-300, 1e300, -1e300, Number.MAX_VALUE, 5e-324, 1e15, 0.1),
  );
  const odd = fc.oneof(
    number,
    fc.jsonValue({ maxDepth: 3 }),
    fc.constantFrom(null, true, [], {}, '', '0,8', '1.234,5', 'Z1', '__proto__', 'constructor'),
  );

  it('one to three values replaced by anything', () => {
    const change = fc.record({ path: fc.constantFrom(...places), value: odd });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
        const scene = changes.reduce((root, { path, value }) => put(root, path, structuredClone(value)), fullScene());
        expectAnswer(parseScene(JSON.stringify(scene), KNOWN));
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });

  it('every number replaced by any number', () => {
    const numbers = places.filter((path) => typeof path.reduce((value: Json, step) => value[step], fullScene()) === 'number');
    fc.assert(
      fc.property(fc.array(number, { minLength: numbers.length, maxLength: numbers.length }), (values) => {
        const scene = numbers.reduce((root, path, i) => put(root, path, values[i]), fullScene());
        expectAnswer(parseScene(JSON.stringify(scene), KNOWN));
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});

describe('texts made to take long', () => {
  const within = (milliseconds: number, text: string): SceneReading => {
    // Of this process only: other tests run beside it.
    const start = process.cpuUsage();
    const reading = parseScene(text, KNOWN);
    const { user, system } = process.cpuUsage(start);
    expect((user + system) / 1000).toBeLessThan(milliseconds);
    expectAnswer(reading);
    return reading;
  };
  const withOutline = (outline: unknown): string => JSON.stringify({ ...fullScene(), deck: { outline, bays: [] } });

  it('a comb of 20 000 points whose edges all overlap in x', () => {
    // Long teeth lying one above the other: each edge's box meets the next ones' only.
    const outline = Array.from({ length: 19_998 }, (_, i) => [i % 4 < 2 ? i % 4 : 3 - (i % 4), i / 10]);
    within(8000, withOutline([...outline, [5, 2000], [5, 0]]));
  });

  it('a star in which every edge crosses every other', () => {
    const points = 9_999;
    const outline = Array.from({ length: points }, (_, i) => [
      100 * Math.cos((2 * Math.PI * i * 4999) / points),
      100 * Math.sin((2 * Math.PI * i * 4999) / points),
    ]);
    const { issues } = within(8000, withOutline(outline));
    expect(issues.every(({ code }) => code === 'POLYGON_CROSSES_ITSELF' || code === 'UNKNOWN_ID')).toBe(true);
  });

  it('100 000 zones with wrong references and long ids', () => {
    const zones = Array.from({ length: 100_000 }, (_, i) => ({
      id: `zone ${i} `.repeat(4),
      buildup: `nearly ${i}`,
      outline: [
        [0, 0],
        [1, 0],
        [1, 1],
      ],
    }));
    within(15_000, JSON.stringify({ ...fullScene(), stages: [], zones }));
  });

  it('a text of one bracket, a million times', () => {
    expect(within(2000, '['.repeat(1_000_000)).issues[0]?.code).toBe('JSON_TOO_DEEP');
    within(2000, `{"a":"${'\\'.repeat(1_000_000)}`);
    within(2000, `{"a":${'9'.repeat(1_000_000)}}`);
    within(2000, `{"format":"${'x'.repeat(1_000_000)}"}`);
  });
});
