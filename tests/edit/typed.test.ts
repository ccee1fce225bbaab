/** Typed points, lengths, angles and axes; by hand. */

import { describe, expect, it } from 'vitest';
import { axisText, readAxisText } from '../../src/edit/axis-text.ts';
import { readTyped, type Typed, typedPoint } from '../../src/edit/typed.ts';
import { angleDeg, edgeLengthM, withAngle, withEdgeLength } from '../../src/edit/typed-shape.ts';
import type { PointM } from '../../src/model/scene-file.ts';
import { rect } from '../helpers/scene-builder.ts';

const absolute = (x: number, y: number): Typed => ({ kind: 'absolute', at: [x, y] });
const relative = (x: number, y: number): Typed => ({ kind: 'relative', by: [x, y] });

describe('read', () => {
  it.each<readonly [string, Typed]>([
    ['12.5; 3.2', absolute(12.5, 3.2)],
    ['12,5;3,2', absolute(12.5, 3.2)],
    ['12,5 3,2', absolute(12.5, 3.2)],
    ['12.5, 3.2', absolute(12.5, 3.2)],
    ['12.5 -3.2', absolute(12.5, -3.2)],
    ['\u22124;0', absolute(-4, 0)],
    ['392000.25; 5812000.5', absolute(392000.25, 5812000.5)],
    ['@2.5;0', relative(2.5, 0)],
    ['@ 2,5 ; -1', relative(2.5, -1)],
    ['@2,5', relative(2, 5)],
    ['5<30', { kind: 'polar', lengthM: 5, angleDeg: 30 }],
    ['@5,25 < -90', { kind: 'polar', lengthM: 5.25, angleDeg: -90 }],
    ['5.25', { kind: 'length', lengthM: 5.25 }],
    ['5', { kind: 'length', lengthM: 5 }],
  ])('%s', (text, typed) => expect(readTyped(text)).toEqual({ ok: true, typed }));

  it.each([
    ['12,5', ['12.5', '12; 5']],
    ['1.234', ['1.2340', '1234']],
    ['1.234; 5', ['1.2340; 5', '1234; 5']],
    ['@1,5; 2.345', ['@1,5; 2.3450', '@1,5; 2345']],
    ['2.345 < 30', ['2.3450<30', '2345<30']],
  ])('%s is asked back, and every answer is read', (text, choices) => {
    expect(readTyped(text)).toEqual({ ok: false, why: 'ambiguous', choices });
    for (const choice of choices) expect(readTyped(choice).ok).toBe(true);
  });

  it.each(['abc', '1;2;3', '@5', '5<', '<30', '1<2<3', '5m', '1e999; 0', ';', '@'])('%s is not understood', (text) =>
    expect(readTyped(text)).toEqual({ ok: false, why: 'not understood' }),
  );

  it('nothing typed is nothing', () => expect(readTyped('  ')).toEqual({ ok: false, why: 'empty' }));
});

describe('the place meant', () => {
  it('absolute, relative, by length and angle, along the pointer', () => {
    expect(typedPoint(absolute(1, 2), null, null)).toEqual({ at: [1, 2] });
    expect(typedPoint(relative(1, 2), [10, 10], null)).toEqual({ at: [11, 12] });
    expect(typedPoint({ kind: 'polar', lengthM: 5, angleDeg: 90 }, [1, 1], null)).toEqual({ at: [1, 6] });
    // Towards (4, 5) from (1, 1) is 3 to 4 to 5.
    expect(typedPoint({ kind: 'length', lengthM: 10 }, [1, 1], [4, 5])).toEqual({ at: [7, 9] });
  });

  it('says what is missing', () => {
    expect(typedPoint(relative(1, 2), null, null)).toEqual({ refused: 'no point before' });
    expect(typedPoint({ kind: 'length', lengthM: 2 }, [1, 1], [1, 1])).toEqual({ refused: 'no direction' });
    expect(typedPoint({ kind: 'length', lengthM: 0 }, [1, 1], [2, 1])).toEqual({ refused: 'length not above 0' });
  });
});

describe('length and angle of a shape', () => {
  const box = { points: rect(0, 0, 4, 3), closed: true };

  it('a side of 4 m set to 6 m: one corner, or the whole next side; from either end', () => {
    expect(withEdgeLength(box, 0, 6, { fixedEnd: 'first', carry: 'corner' })).toEqual([
      [0, 0],
      [6, 0],
      [4, 3],
      [0, 3],
    ]);
    expect(withEdgeLength(box, 0, 6, { fixedEnd: 'first', carry: 'side' })).toEqual(rect(0, 0, 6, 3));
    expect(withEdgeLength(box, 0, 6, { fixedEnd: 'second', carry: 'side' })).toEqual(rect(-2, 0, 4, 3));
    // The last edge leads from (0, 3) back to (0, 0).
    expect(withEdgeLength(box, 3, 5, { fixedEnd: 'first', carry: 'side' })).toEqual(rect(0, -2, 4, 3));
  });

  it('a line keeps its other points and levels', () =>
    expect(
      withEdgeLength(
        {
          points: [
            [0, 0, 1],
            [3, 4, 2],
          ],
          closed: false,
        },
        0,
        10,
        { fixedEnd: 'first', carry: 'side' },
      ),
    ).toEqual([
      [0, 0, 1],
      [6, 8, 2],
    ]));

  it('refuses lengths that are none, and edges that are not there', () => {
    expect(withEdgeLength(box, 0, 0, { fixedEnd: 'first', carry: 'side' })).toEqual({ refused: 'length not above 0' });
    expect(withEdgeLength({ ...box, closed: false }, 3, 1, { fixedEnd: 'first', carry: 'side' })).toEqual({ refused: 'no such part' });
    expect(
      withEdgeLength(
        {
          points: [
            [1, 1],
            [1, 1],
          ],
          closed: false,
        },
        0,
        1,
        { fixedEnd: 'first', carry: 'side' },
      ),
    ).toEqual({ refused: 'same point' });
  });

  it('angles inside, whichever way round: 90° in a box, 270° in a notch, 45° in half a square', () => {
    expect(angleDeg(box, 0)).toBeCloseTo(90, 9);
    expect(angleDeg({ ...box, points: [...box.points].reverse() }, 2)).toBeCloseTo(90, 9);
    expect(
      angleDeg(
        {
          points: [
            [0, 0],
            [4, 0],
            [4, 4],
            [2, 4],
            [2, 2],
            [0, 2],
          ],
          closed: true,
        },
        4,
      ),
    ).toBeCloseTo(270, 9);
    expect(
      angleDeg(
        {
          points: [
            [0, 0],
            [4, 0],
            [4, 4],
          ],
          closed: true,
        },
        0,
      ),
    ).toBeCloseTo(45, 9);
    expect(
      angleDeg(
        {
          points: [
            [0, 0],
            [4, 0],
            [4, 4],
          ],
          closed: false,
        },
        0,
      ),
    ).toBe(null);
    expect(edgeLengthM(box, 3)).toBe(3);
  });

  it.each([false, true])('an angle set is the angle read, lengths stay (turned round: %s)', (turned) => {
    const points: PointM[] = turned ? [...rect(0, 0, 4, 3)].reverse() : rect(0, 0, 4, 3);
    for (const turns of ['before', 'after'] as const) {
      const to = withAngle({ points, closed: true }, 1, 60, turns);
      if ('refused' in to) return expect.fail(to.refused);
      expect(angleDeg({ points: to, closed: true }, 1)).toBeCloseTo(60, 9);
      for (const edge of [0, 1])
        expect(edgeLengthM({ points: to, closed: true }, edge)).toBeCloseTo(edgeLengthM({ points, closed: true }, edge), 9);
    }
  });
});

describe('axes', () => {
  it.each([
    ['5 x 6.00; 2 x 7.50', [6, 6, 6, 6, 6, 7.5, 7.5]],
    ['6 6 6 7.5', [6, 6, 6, 7.5]],
    ['3 × 6,00 + 7,50', [6, 6, 6, 7.5]],
    ['6, 6, 7,5', [6, 6, 7.5]],
    ['2*5,4 / 3', [5.4, 5.4, 3]],
    ['6m; 7m', [6, 7]],
  ])('%s', (text, stepsM) => expect(readAxisText(text)).toEqual({ ok: true, stepsM }));

  it('asks back what means two things, and names what it does not read', () => {
    expect(readAxisText('6; 2 x 7.250')).toEqual({ ok: false, why: 'ambiguous', piece: '2x7.250', choices: ['2 x 7.2500', '2 x 7250'] });
    expect(readAxisText('6,6,6')).toEqual({ ok: false, why: 'ambiguous', piece: '6,6,6', choices: ['6 6 6'] });
    expect(readAxisText('6; x; 7')).toEqual({ ok: false, why: 'not understood', piece: 'x' });
    expect(readAxisText('6; -7')).toEqual({ ok: false, why: 'not above 0', piece: '-7' });
    expect(readAxisText('99999 x 1')).toEqual({ ok: false, why: 'too many', piece: '99999x1' });
    expect(readAxisText(' ')).toEqual({ ok: false, why: 'empty', piece: '' });
  });

  it('writes what it reads back', () => {
    expect(axisText([6, 6, 6, 6, 6, 7.5, 7.5], '.')).toBe('5 x 6.00; 2 x 7.50');
    expect(axisText([6.125, 0.3333333], ',')).toBe('6,1250; 0,3333333');
    for (const mark of ['.', ','] as const)
      for (const stepsM of [[6, 6, 7.125], [5.4], [0.05, 12, 12.3456]])
        expect(readAxisText(axisText(stepsM, mark))).toEqual({ ok: true, stepsM });
  });
});
