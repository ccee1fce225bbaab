/** A zone drawn as two pieces weighs what the zone weighs: no sum, bay mean or patch may notice a line between equal build-ups. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PointM, SceneFile, SceneZone } from '../../src/model/scene-file.ts';
import { randomFrom, read, zone } from '../helpers/scene-builder.ts';
import { fieldDifference } from './compare.ts';
import { AREA_M2, gardenScene } from './random-scene.ts';

const SEED = 1973;

/** Part of a convex polygon on the left of the line from a to b; what is cut lies on the line as well as numbers allow. */
function leftOf(polygon: readonly PointM[], a: PointM, b: PointM): PointM[] {
  const side = ([x, y]: PointM) => (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]);
  return polygon.flatMap((p, i): PointM[] => {
    const q = polygon[(i + 1) % polygon.length];
    const [sp, sq] = [side(p), side(q)];
    const kept: PointM[] = sp >= 0 ? [p] : [];
    if (sp >= 0 === sq >= 0) return kept;
    const t = sp / (sp - sq);
    kept.push([p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])]);
    return kept;
  });
}

function areaM2(polygon: readonly PointM[]): number {
  return polygon.reduce((sum, [x, y], i) => {
    const [nx, ny] = polygon[(i + 1) % polygon.length];
    return sum + (x * ny - nx * y) / 2;
  }, 0);
}

/** Convex polygon inside the deck, clear of its opening's middle line: corners on an ellipse. */
function convexZone(random: () => number): PointM[] {
  const corners = 3 + Math.floor(random() * 9);
  return Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * (i + 0.8 * random())) / corners;
    return [6 + 5.5 * Math.cos(angle), 4.5 + 4 * Math.sin(angle)];
  });
}

/** Compares everything that does not go zone by zone. */
function expectSameDeck(scene: SceneFile, split: SceneFile, parts: readonly string[], whole: string): void {
  const [a, b] = [read(scene), read(split)];
  const near = (left: number, right: number) => expect(Math.abs(left - right)).toBeLessThan(1e-9 * Math.max(1, Math.abs(right)));
  for (const key of ['areaM2', 'zonedM2', 'unzonedM2', 'dryKN', 'saturatedKN', 'objectsKN'] as const)
    near(b.report.deck[key], a.report.deck[key]);
  a.report.bays.forEach((bay, i) => {
    const other = b.report.bays[i];
    for (const key of ['meanKNm2', 'peakKNm2', 'patchKNm2'] as const) near(other.permanent[key], bay.permanent[key]);
    near(other.imposed.maxKNm2, bay.imposed.maxKNm2);
    bay.stages.forEach((stage, s) => {
      near(other.stages[s].patchKNm2, stage.patchKNm2);
    });
    if (bay.total) near(other.total?.patchKNm2 ?? Number.NaN, bay.total.patchKNm2);
  });
  a.report.stages.forEach((stage, s) => {
    near(b.report.stages[s].placedKN, stage.placedKN);
  });
  expect(fieldDifference(b.evaluation.patchKNm2, a.evaluation.patchKNm2)).toBeLessThan(1e-9);
  const entry = a.report.zones.find(({ id }) => id === whole);
  if (!entry) throw new Error(`no zone ${whole}`);
  const pieces = b.report.zones.filter(({ id }) => parts.includes(id));
  const sum = (of: (piece: (typeof pieces)[number]) => number) => pieces.reduce((total, piece) => total + of(piece), 0);
  near(
    sum((piece) => piece.areaM2),
    entry.areaM2,
  );
  for (const key of ['depthMm', 'dryKNm2', 'saturatedKNm2', 'heldLm2', 'finishedM'] as const) {
    near(
      sum((piece) => piece.areaM2 * piece[key].mean),
      entry.areaM2 * entry[key].mean,
    );
    near(Math.min(...pieces.map((piece) => piece[key].min)), entry[key].min);
    near(Math.max(...pieces.map((piece) => piece[key].max)), entry[key].max);
  }
  near(
    sum((piece) => piece.shortM2),
    entry.shortM2,
  );
}

describe(`a zone split in two (seed ${SEED})`, () => {
  const finishes: SceneZone['finish'][] = [
    undefined,
    { kind: 'level', levelM: 0.5 },
    { kind: 'level', levelM: 0.25 },
    { kind: 'plane', at: [6, 4, 0.6], fallPercent: 3, towardsDeg: 37 },
  ];
  const seeds = fc.integer({ min: 0, max: 1e6 });

  it('along any line through a convex zone, with sloping make-up and without', () => {
    let split = 0;
    fc.assert(
      fc.property(seeds, fc.constantFrom(...finishes), (seed, finish) => {
        const random = randomFrom(seed);
        const scene = gardenScene(seed % 17);
        const outline = convexZone(random);
        const point = (): PointM => [1 + 10 * random(), 1 + 7 * random()];
        const [a, b] = [point(), point()];
        const [left, right] = [leftOf(outline, a, b), leftOf(outline, b, a)];
        if (left.length < 3 || right.length < 3 || areaM2(left) < 1e-3 || areaM2(right) < 1e-3) return;
        split++;
        const more = finish ? { finish, imposedKNm2: 3 } : { imposedKNm2: 3 };
        const withZones = (zones: SceneZone[]) => ({ ...scene, zones });
        expectSameDeck(
          withZones([zone('Z', outline, 'make-up', more)]),
          withZones([zone('L', left, 'make-up', more), zone('R', right, 'make-up', more)]),
          ['L', 'R'],
          'Z',
        );
      }),
      { seed: SEED, numRuns: 40 },
    );
    expect(split).toBeGreaterThan(20);
  });

  it('along a wiggly line, beside wiggly neighbours', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const random = randomFrom(seed);
        const scene = gardenScene(seed);
        const [west, middle, east] = scene.zones;
        // East runs down its common line with Middle and then round the corners (12, 0) and (12, 9).
        const line = east.outline.slice(0, -2);
        const at = 1 + Math.floor(random() * (line.length - 2));
        const y = Math.round(1000 * line[at][1]) / 1000;
        const cut: PointM[] = [
          [10, Math.min(8.9, y + 0.6 * random())],
          [11, Math.max(0.1, y - 0.6 * random())],
          [12, y],
        ];
        const north = { ...east, id: 'North', outline: [...line.slice(0, at + 1), ...cut, [12, 9]] as PointM[] };
        const south = { ...east, id: 'South', outline: [...[...cut].reverse(), ...line.slice(at), [12, 0]] as PointM[] };
        const split = { ...scene, zones: [west, middle, north, south] };
        expectSameDeck(scene, split, ['North', 'South'], 'East');
        expect(read(split).report.deck.zonedM2).toBeCloseTo(AREA_M2, 9);
      }),
      { seed: SEED, numRuns: 15 },
    );
  });
});
