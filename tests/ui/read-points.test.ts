/** Points typed by hand: every way people set two numbers apart, and what is asked back. */

import { afterEach, describe, expect, it } from 'vitest';
import type { PointM } from '../../src/model/scene-file.ts';
import { keptPoints, pointsText, readPoints } from '../../src/ui/facts/read-points.ts';
import { speak } from '../../src/ui/text/text.ts';

afterEach(() => speak('en'));

describe('typed points', () => {
  it.each([
    [
      '1; 2\n3,5; 4,25',
      [
        [1, 2],
        [3.5, 4.25],
      ],
    ],
    [
      '1 2\n\n3.5 4.25\n',
      [
        [1, 2],
        [3.5, 4.25],
      ],
    ],
    [
      '1, 2\r\n3,5, 4,25',
      [
        [1, 2],
        [3.5, 4.25],
      ],
    ],
    [
      '1\t2\n392 000,5\t5812000.25',
      [
        [1, 2],
        [392000.5, 5812000.25],
      ],
    ],
    [
      '−1; 2\n-3; 4',
      [
        [-1, 2],
        [-3, 4],
      ],
    ],
  ] as [string, PointM[]][])('%j', (typed, points) => {
    expect(readPoints(typed, 2)).toEqual({ ok: true, points });
  });

  it('are asked back with their line', () => {
    expect(readPoints('1; 2\n3', 2)).toEqual({ ok: false, why: 'two numbers', line: 2 });
    expect(readPoints('1; 2; 3', 1)).toEqual({ ok: false, why: 'two numbers', line: 1 });
    expect(readPoints('1; two', 1)).toMatchObject({ ok: false, why: 'number', line: 1, read: { why: 'not a number' } });
    // Four metres and an eighth, or four thousand?
    expect(readPoints('0; 0\n4,125; 1', 1)).toMatchObject({ ok: false, why: 'number', line: 2, read: { why: 'ambiguous' } });
    expect(readPoints('1; 2', 2)).toEqual({ ok: false, why: 'too few', least: 2 });
  });
});

describe('points in a field', () => {
  const POINTS: PointM[] = [
    [0, 4.125],
    [392000.5, 1 / 3],
    [-2, 1e-6],
  ];

  it('are read back as they are written, in both languages', () => {
    for (const language of ['en', 'de'] as const) {
      speak(language);
      const read = readPoints(pointsText(POINTS), 3);
      expect(read.ok && read.points).toEqual([
        [0, 4.125],
        [392000.5, 0.3333],
        [-2, 0],
      ]);
    }
    expect(pointsText([[0, 4.125]])).toBe('0; 4,1250');
  });

  it('do not move where only others were typed anew', () => {
    const read = readPoints(pointsText(POINTS).replace('-2', '-3'), 3);
    expect(read.ok && keptPoints(read.points, POINTS)).toEqual([POINTS[0], POINTS[1], [-3, 0]]);
  });
});
