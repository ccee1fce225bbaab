/** Overlay of areas: by hand, against a clipping library that shares no code with ours (clipper2-ts 2.0.1, on a grid of 2 nm), and coordinates that stay. */

import { Clipper, FillRule, type Paths64 } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import { type AreaM, areaM2, overlay } from '../../src/edit/overlay.ts';
import { splitArea } from '../../src/edit/split.ts';
import { shapeFaults } from '../../src/edit/validity.ts';
import type { PointM } from '../../src/model/scene-file.ts';
import { randomFrom, rect } from '../helpers/scene-builder.ts';

const total = (areas: readonly AreaM[]) => areas.reduce((sum, area) => sum + areaM2(area), 0);
const both = ([a, b]: readonly boolean[]) => a && b;
const either = ([a, b]: readonly boolean[]) => a || b;
const less = ([a, b]: readonly boolean[]) => a && !b;
const sound = (areas: readonly AreaM[]) =>
  areas.flatMap(({ outline, holes = [] }) => shapeFaults({ form: 'area', points: outline, holes }, 'en').map(({ issue }) => issue.got));

/** A star round a centre: simple, with as many spikes as wanted. */
function star(random: () => number, [x, y]: PointM, points: number): PointM[] {
  return Array.from({ length: points }, (_, i) => {
    const angle = (2 * Math.PI * (i + 0.2 + 0.6 * random())) / points;
    const radius = 1 + 4 * random();
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

const SCALE = 2 ** 29;
const toInt = ({ outline, holes = [] }: AreaM): Paths64 =>
  [outline, ...holes].map((ring) => ring.map(([x, y]) => ({ x: Math.round(x * SCALE), y: Math.round(y * SCALE) })));
const intArea = (paths: Paths64) => Clipper.areaPaths(paths) / SCALE ** 2;

describe('by hand', () => {
  const A: AreaM = { outline: rect(0, 0, 4, 3) };
  const B: AreaM = { outline: rect(2, 1, 6, 5) };

  it('two rectangles: 2 × 2 common, 12 + 16 - 4 together, 12 - 4 left', () => {
    expect(overlay([A, B], both)).toEqual([
      {
        outline: [
          [4, 3],
          [2, 3],
          [2, 1],
          [4, 1],
        ],
      },
    ]);
    expect(total(overlay([A, B], either))).toBe(24);
    expect(total(overlay([A, B], less))).toBe(8);
  });

  it('a rectangle inside another leaves a hole, and nothing of itself', () => {
    const [frame] = overlay([A, { outline: rect(1, 1, 2, 2) }], less);
    expect(frame?.holes).toHaveLength(1);
    expect(areaM2(frame as AreaM)).toBe(11);
    expect(overlay([{ outline: rect(1, 1, 2, 2) }, A], less)).toEqual([]);
  });

  it('areas that touch in a point stay two, and one that is cut to two lobes at a point falls in two', () => {
    const corner: AreaM = { outline: rect(4, 3, 5, 4) };
    expect(overlay([A, corner], either)).toHaveLength(2);
    // The 6 × 6 square less two that meet in its middle: two lobes of 9.
    const lobes = overlay(
      [{ outline: rect(0, 0, 6, 6) }, { outline: rect(0, 3, 3, 6) }, { outline: rect(3, 0, 6, 3) }],
      ([a, b, c]) => a && !b && !c,
    );
    expect(lobes.map(areaM2)).toEqual([9, 9]);
    expect(sound(lobes)).toEqual([]);
  });

  it('a hole that touches the outline in a point stays a hole', () => {
    const hole: PointM[] = [
      [0, 1],
      [2, 0.5],
      [2, 1.5],
    ];
    const areas = overlay([A, { outline: hole }], less);
    expect(areas.map(({ holes }) => holes?.length)).toEqual([1]);
    expect(total(areas)).toBe(11);
    expect(sound(areas)).toEqual([]);
  });

  it('takes rings either way round and closed, with the first point repeated', () => {
    const turned: AreaM = { outline: [...A.outline].reverse().concat([A.outline[3] as PointM]) };
    expect(total(overlay([turned, B], either))).toBe(24);
  });
});

describe('against the clipping library', () => {
  const random = randomFrom(7);
  const cases = Array.from({ length: 60 }, (): readonly [AreaM, AreaM] => [
    { outline: star(random, [0, 0], 5 + Math.floor(12 * random())) },
    { outline: star(random, [3 * random(), 3 * random()], 5 + Math.floor(12 * random())) },
  ]);

  it.each([
    ['common', both, Clipper.intersect],
    ['together', either, Clipper.union],
    ['left', less, Clipper.difference],
  ] as const)('%s: the same areas of 60 pairs of stars, all sound', (_, wanted, clip) => {
    for (const [a, b] of cases) {
      const areas = overlay([a, b], wanted);
      expect(Math.abs(total(areas) - intArea(clip(toInt(a), toInt(b), FillRule.NonZero)))).toBeLessThan(1e-6);
      expect(sound(areas)).toEqual([]);
    }
  });

  it('vertices keep their very numbers, in national coordinates, too', () => {
    for (const [a, b] of cases.slice(0, 40)) {
      const far = ({ outline }: AreaM): AreaM => ({ outline: outline.map(([x, y]) => [x + 392_000.123, y + 5_812_000.456]) });
      const [one, other] = [far(a), far(b)];
      const cornersOf = (areas: readonly AreaM[]) => areas.flatMap(({ outline, holes = [] }) => [...outline, ...holes.flat()]).map(String);
      const union = new Set(cornersOf(overlay([one, other], either)));
      // What of a corner lies outside the other area is a corner of both: of what is left of its own, and of the union.
      for (const [own, against] of [
        [one, other],
        [other, one],
      ] as const) {
        const left = cornersOf(overlay([own, against], less));
        const outside = own.outline.map(String).filter((point) => left.includes(point));
        expect(outside.length).toBeGreaterThan(0);
        for (const point of outside) expect(union).toContain(point);
      }
    }
  });

  it('is as large in two pieces as in one: 100 areas split by lines and put together again, to 1e-9', () => {
    let divided = 0;
    for (let i = 0; i < 100; i++) {
      const outline = star(random, [50 * random(), 50 * random()], 6 + Math.floor(10 * random()));
      const area: AreaM =
        i % 3 === 0 ? { outline, holes: [star(random, centre(outline), 5).map((p) => shrunk(p, centre(outline)))] } : { outline };
      const [cx, cy] = centre(outline);
      const line: PointM[] = Array.from({ length: 3 }, (_, k) => [cx + (k - 1) * 12 + random(), cy + 4 * (random() - 0.5)]);
      const pieces = splitArea(area, line);
      expect(Math.abs(total(pieces) - areaM2(area))).toBeLessThanOrEqual(1e-9 * areaM2(area));
      expect(sound(pieces)).toEqual([]);
      if (pieces.length > 1) divided++;
      const whole = overlay(pieces, (covered) => covered.includes(true));
      expect(whole).toHaveLength(1);
      expect(Math.abs(total(whole) - areaM2(area))).toBeLessThanOrEqual(1e-9 * areaM2(area));
    }
    expect(divided).toBeGreaterThan(80);
  });
});

const centre = (points: readonly PointM[]): PointM => {
  const sum = points.reduce(([x, y], [px, py]) => [x + px, y + py], [0, 0]);
  return [sum[0] / points.length, sum[1] / points.length];
};
/** Stars reach at least 1 from where they were drawn; a fifth of 0.9 stays inside. */
const shrunk = ([x, y]: PointM, [cx, cy]: PointM): PointM => [cx + (x - cx) * 0.02, cy + (y - cy) * 0.02];
