/** What lies under a pointer on the plan, by hand. */

import { describe, expect, it } from 'vitest';
import type { PointList } from '../../src/edit/point-lists.ts';
import {
  distanceM,
  hitsAt,
  lineLengthM,
  meetable,
  nearestPoint,
  nearestSide,
  nextOf,
  partsWithin,
  ringAreaM2,
} from '../../src/ui/facts/plan-hit.ts';

const square = (x: number, y: number, side: number) =>
  [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ] as const;

const LISTS: readonly PointList[] = [
  { part: 'outline', id: 'outline', form: 'area', points: square(0, 0, 10) },
  { part: 'bay', id: 'A1', form: 'area', points: square(0, 0, 5) },
  { part: 'zone', id: 'Z1', form: 'area', points: square(0, 0, 8) },
  { part: 'zone', id: 'Z1', piece: 0, form: 'area', points: square(6, 6, 1) },
  {
    part: 'edge',
    id: 'E1',
    form: 'line',
    points: [
      [0, 0],
      [10, 0],
    ],
  },
  { part: 'outlet', id: 'O1', form: 'point', points: [[2, 0.1]] },
];

const idsAt = (x: number, y: number) => hitsAt([x, y], LISTS, 0.3).map(({ id }) => id);

describe('under a pointer', () => {
  it('points come before lines, lines before areas, zones before bays, the deck last', () => {
    expect(idsAt(2, 0.2)).toEqual(['O1', 'E1', 'Z1', 'A1', 'outline']);
    expect(idsAt(4, 4)).toEqual(['Z1', 'A1', 'outline']);
    expect(idsAt(9, 9)).toEqual(['outline']);
    expect(idsAt(11, 11)).toEqual([]);
  });

  it('levels of a finish are met while their zone or one of them is chosen', () => {
    const [one, other] = ['Z1 spot 0', 'Z2 spot 0'].map((id): PointList => ({ part: 'finish', id, form: 'point', points: [[4, 4, 0.5]] }));
    const ids = (part: 'zone' | 'finish' | 'bay', id: string) => meetable([...LISTS, one!, other!], [{ part, id }]).map((list) => list.id);
    const all = LISTS.map(({ id }) => id);
    expect(ids('zone', 'Z1')).toEqual([...all, 'Z1 spot 0']);
    expect(ids('finish', 'Z2 breakline 3')).toEqual([...all, 'Z2 spot 0']);
    expect(ids('bay', 'Z1')).toEqual(all);
  });

  it('a hole is no part of its zone', () => {
    expect(idsAt(6.5, 6.5)).toEqual(['outline']);
  });

  it('a second tap chooses what lies below, and the last leads back to the first', () => {
    const hits = hitsAt([4, 4], LISTS, 0.3);
    expect(nextOf(hits, [])?.id).toBe('Z1');
    expect(nextOf(hits, [{ part: 'zone', id: 'Z1' }])?.id).toBe('A1');
    expect(nextOf(hits, [{ part: 'outline', id: 'outline' }])?.id).toBe('Z1');
    expect(nextOf([], [])).toBeNull();
  });
});

describe('in a box', () => {
  const within = (min: readonly [number, number], max: readonly [number, number]) =>
    partsWithin(LISTS, { min, max }).map(({ part, id }) => `${part} ${id}`);

  it('lies what has every point in it, its edge included; the deck never is one of several', () => {
    expect(within([-1, -1], [11, 11])).toEqual(['bay A1', 'zone Z1', 'edge E1', 'outlet O1']);
    // The bay is 5 m wide, the zone 8 m, the edge 10 m.
    expect(within([0, 0], [5, 5])).toEqual(['bay A1', 'outlet O1']);
    expect(within([0, 0], [4.999, 5])).toEqual(['outlet O1']);
  });

  it('lie levels of a finish with their zone, or by themselves where the zone does not', () => {
    const level: PointList = { part: 'finish', id: 'Z1 spot 0', form: 'point', points: [[1, 1, 0.5]] };
    const ids = (side: number) => partsWithin([...LISTS, level], { min: [0, 0], max: [side, side] }).map(({ id }) => id);
    expect(ids(8)).toEqual(['A1', 'Z1', 'O1']);
    expect(ids(3)).toEqual(['O1', 'Z1 spot 0']);
  });

  it('does not lie what only has its hole in it', () => {
    expect(within([5.5, 5.5], [7.5, 7.5])).toEqual([]);
  });
});

describe('points and sides', () => {
  const ring = square(0, 0, 4);
  it('finds the nearest within reach', () => {
    expect(nearestPoint([3.8, 0.1], ring, 0.5)).toBe(1);
    expect(nearestPoint([2, 2], ring, 0.5)).toBeNull();
    // The side from the last point back to the first is only one of an area.
    expect(nearestSide([0.1, 2], { points: ring, form: 'area' }, 0.5)).toBe(3);
    expect(nearestSide([0.1, 2], { points: ring, form: 'line' }, 0.5)).toBeNull();
  });

  it('measures from the end where the foot lies beyond it', () => {
    // 3 to the right of the end and 4 above: 5.
    expect(distanceM([7, 4], [0, 0], [4, 0])).toBe(5);
  });
});

describe('sizes', () => {
  it('area and length, in large coordinates too', () => {
    // 3 m by 3 m is 9 m².
    expect(ringAreaM2(square(3_500_000, 5_800_000, 3))).toBe(9);
    // 3-4-5 triangle: 5 m, then 2 m.
    expect(
      lineLengthM([
        [0, 0],
        [3, 4],
        [5, 4],
      ]),
    ).toBe(7);
  });
});
