/** Points and segments made to meet only at points. */

import { expect, it } from 'vitest';
import { arrange } from '../../../src/core/geometry/arrangement.ts';

const pairs = (segments: Uint32Array) =>
  Array.from({ length: segments.length / 2 }, (_, k) => [segments[2 * k], segments[2 * k + 1]].sort((a, b) => a - b).join('–')).sort();

it('merges points nearer than the tolerance and says where each went', () => {
  const made = arrange([0, 0, 1, 0, 0.0005, 0.0005], [], [], 0.001);
  expect([...made.points]).toEqual([0, 0, 1, 0]);
  expect([...made.placed]).toEqual([0, 1, 0]);
});

it('splits crossing segments in their common point, its value linear along the first', () => {
  // (0, 0) – (4, 2), levels 0 to 4, crosses (1, 2) – (1, 0) at (1, 0.5), a quarter along: level 1
  const made = arrange([0, 0, 4, 2, 1, 2, 1, 0], [0, 4, 9, 9], [0, 1, 2, 3], 0.001);
  expect([...made.points].slice(8)).toEqual([1, 0.5]);
  expect(made.values[4]).toBeCloseTo(1, 12);
  expect(pairs(made.segments)).toEqual(['0–4', '1–4', '2–4', '3–4']);
});

it('splits a segment at every point that lies on it, in order', () => {
  const made = arrange([0, 0, 3, 0, 2, 0, 1, 0.0004], [], [0, 1], 0.001);
  expect(pairs(made.segments)).toEqual(['0–3', '1–2', '2–3']);
});

it('drops segments that are doubles, reversed doubles or points', () => {
  const made = arrange([0, 0, 1, 0, 0.0002, 0], [], [0, 1, 1, 0, 0, 2, 2, 1], 0.001);
  expect(pairs(made.segments)).toEqual(['0–1']);
});

it('makes one piece of what two segments along each other have in common', () => {
  // 0 … 3 and 1 … 4 on one line
  const made = arrange([0, 0, 3, 0, 1, 0, 4, 0], [], [0, 1, 2, 3], 0.001);
  expect(pairs(made.segments)).toEqual(['0–2', '1–2', '1–3']);
});

it('tells which points each given segment runs through, in its own direction', () => {
  // Along x from 0 to 3, crossed at 1 and the same again backwards; the last has both ends in one place.
  const made = arrange([0, 0, 3, 0, 1, -1, 1, 1, 3, 0.0002], [], [0, 1, 2, 3, 1, 0, 1, 4], 0.001);
  expect(made.chains).toEqual([[0, 4, 1], [2, 4, 3], [1, 4, 0], [1]]);
});
