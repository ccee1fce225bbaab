/** Sections as drawings: areas are thickness times length, worked out by hand; stretches and stations in their places. */

import { describe, expect, it } from 'vitest';
import type { PointM } from '../../src/model/scene-file.ts';
import type { SectionDrawing } from '../../src/model/section-drawing.ts';
import { bay, rect, sceneOf, zone } from '../helpers/scene-builder.ts';
import { areaM2, deckOf, near, section } from './section-cases.ts';

/** The same from the outlines alone, by the sum of trapezoids under their sides. */
function trapezoidsM2(drawing: SectionDrawing, owner: string, layer: number): number {
  let sum = 0;
  for (const { outline } of drawing.pieces.filter((p) => p.owner === owner && p.layer === layer)) {
    outline.forEach(([x, z], i) => {
      const [nextX, nextZ] = outline[(i + 1) % outline.length]!;
      sum += ((x - nextX) * (z + nextZ)) / 2;
    });
  }
  return sum;
}

describe('a flat deck', () => {
  const scene = deckOf({ zones: [zone('Z', rect(0, 0, 4, 3), 'deep')] });
  const drawing = section(scene, [
    [-1, 1.5],
    [6, 1.5],
  ]);

  it('has areas of thickness times length', () => {
    // the deck is 4 m long; slab drawn 0.30 m where the scene gives none
    expect(areaM2(drawing, 'Z', 0)).toBeCloseTo(0.1 * 4, 9);
    expect(areaM2(drawing, 'Z', 1)).toBeCloseTo(0.4 * 4, 9);
    expect(trapezoidsM2(drawing, 'Z', 1)).toBeCloseTo(0.4 * 4, 9);
    expect(areaM2(drawing, '', -1)).toBeCloseTo(0.3 * 4, 9);
    expect(drawing.pieces.find((p) => p.layer === 1)).toMatchObject({ kind: 'substrate', name: 'Soil' });
  });

  it('says where the line leaves the deck', () => {
    expect(drawing.lengthM).toBeCloseTo(7, 12);
    expect(drawing.gaps.map((gap) => [gap.kind, gap.fromM, gap.toM])).toEqual([
      ['outside', ...near(0, 1)],
      ['outside', ...near(5, 7)],
    ]);
    expect(drawing.zones).toEqual([{ zone: 'Z', name: 'Z', fromM: expect.closeTo(1, 6), toM: expect.closeTo(5, 6) }]);
  });

  it('has one station in the middle, layers bottom to top', () => {
    expect(drawing.stations).toHaveLength(1);
    const [station] = drawing.stations;
    expect([station!.alongM, station!.membraneM, station!.finishedM]).toEqual(near(3, 0, 0.5));
    expect(station!.layers.map((l) => [l.name, l.bottomM, l.topM])).toEqual([
      ['Light fill', ...near(0, 0.1)],
      ['Soil', ...near(0.1, 0.5)],
    ]);
  });

  it('gives the loads that the bay permits', () => {
    expect(drawing.bays).toMatchObject([{ bay: 'A1', permanentKNm2: 12, imposedKNm2: 5, totalKNm2: null, confirmed: true }]);
  });

  it('beside the deck is empty', () => {
    const outside = section(scene, [
      [0, 5],
      [4, 5],
    ]);
    expect([outside.pieces, outside.zones, outside.bays, outside.stations]).toEqual([[], [], [], []]);
    expect(outside.gaps).toEqual([{ kind: 'outside', fromM: 0, toM: 4 }]);
  });

  it('of points on one place is empty, not an error', () => {
    const none = section(scene, [
      [1, 1],
      [1, 1],
    ]);
    expect([none.lengthM, none.pieces, none.gaps]).toEqual([0, [], []]);
  });

  it('of a line with a bend is one stretch, as long as its legs within the deck', () => {
    // (1, 1) → (3, 1) → (3, 2.5): 2 + 1.5 m
    const bent = section(scene, [
      [1, 1],
      [3, 1],
      [3, 2.5],
    ]);
    expect(bent.bendsM).toEqual([2]);
    expect(bent.zones.map((z) => [z.fromM, z.toM])).toEqual([near(0, 3.5)]);
    expect(areaM2(bent, 'Z', 1)).toBeCloseTo(0.4 * 3.5, 9);
    expect(bent.pieces.filter((p) => p.layer === 1)).toHaveLength(1);
  });
});

describe('a deck falling 2 % with a make-up layer', () => {
  // Membrane 0.08 at x = 0 to 0.00 at x = 4; finish level 0.50. Sheet 0.01, soil 0.10, so fill 0.31 … 0.39.
  const scene = deckOf({
    deck: {
      levels: {
        spots: [
          [0, 0, 0.08],
          [0, 3, 0.08],
          [4, 0, 0],
          [4, 3, 0],
        ],
      },
    },
    zones: [zone('Z', rect(0, 0, 4, 3), 'make-up', { finish: { kind: 'level', levelM: 0.5 } })],
  });

  it('fills the wedge exactly', () => {
    const drawing = section(scene, [
      [0, 1],
      [4, 1],
    ]);
    expect(areaM2(drawing, 'Z', 0)).toBeCloseTo(0.01 * 4, 9);
    // mean of 0.31 and 0.39 over 4 m
    expect(areaM2(drawing, 'Z', 1)).toBeCloseTo(0.35 * 4, 9);
    expect(areaM2(drawing, 'Z', 2)).toBeCloseTo(0.1 * 4, 9);
    expect(drawing.membrane).toEqual([[near(0, 0.08), near(4, 0)]]);
    expect([drawing.stations[0]!.membraneM, drawing.stations[0]!.finishedM]).toEqual(near(0.04, 0.5));
  });

  it('keeps its levels high above the sea', () => {
    const high = sceneOf({
      ...scene,
      deck: {
        ...scene.deck,
        outline: rect(0, 0, 4, 3),
        levels: {
          spots: [
            [0, 0, 523.08],
            [0, 3, 523.08],
            [4, 0, 523],
            [4, 3, 523],
          ],
        },
        edges: [
          {
            id: 'E',
            kind: 'upstand',
            membraneTopM: 523.7,
            line: [
              [4, 0],
              [4, 3],
            ],
          },
        ],
      },
      zones: [zone('Z', rect(0, 0, 4, 3), 'make-up', { finish: { kind: 'level', levelM: 523.5 } })],
    });
    const drawing = section(high, [
      [0, 1],
      [4, 1],
    ]);
    expect(areaM2(drawing, 'Z', 1)).toBeCloseTo(0.35 * 4, 9);
    expect(drawing.highM).toBeCloseTo(523.7, 4);
    expect(drawing.edges).toEqual([
      {
        id: 'E',
        kind: 'upstand',
        alongM: expect.closeTo(4, 6),
        deckM: expect.closeTo(523, 6),
        membraneTopM: 523.7,
        finishedM: expect.closeTo(523.5, 6),
      },
    ]);
  });
});

describe('zones side by side', () => {
  const scene = deckOf({
    deck: { bays: [bay('W', rect(0, 0, 2, 3)), bay('E', rect(2, 0, 4, 3), { totalKNm2: 9, basis: {} })] },
    zones: [zone('W', rect(0, 0, 2, 3), 'deep'), zone('E', rect(2, 0, 4, 3), 'shallow')],
  });

  it('cut at an angle: lengths by the rule of three', () => {
    // from (0, 0) to (4, 3): 5 m, half of it in each zone
    const drawing = section(scene, [
      [0, 0],
      [4, 3],
    ]);
    expect(drawing.lengthM).toBeCloseTo(5, 12);
    expect(drawing.zones.map((z) => [z.zone, z.fromM, z.toM])).toEqual([
      ['W', ...near(0, 2.5)],
      ['E', ...near(2.5, 5)],
    ]);
    expect(areaM2(drawing, 'W', 1)).toBeCloseTo(0.4 * 2.5, 9);
    expect(areaM2(drawing, 'E', 0)).toBeCloseTo(0.25 * 2.5, 9);
    expect(drawing.bays.map((b) => [b.bay, b.confirmed, b.totalKNm2, b.fromM, b.toM])).toEqual([
      ['W', true, null, ...near(0, 2.5)],
      ['E', false, 9, ...near(2.5, 5)],
    ]);
  });

  it.each([
    { y: [0, 3], left: 'W', layer: 1, thicknessM: 0.4 },
    { y: [3, 0], left: 'E', layer: 0, thicknessM: 0.25 },
  ])('along their common edge: what lies on the left, $left, once', ({ y, left, layer, thicknessM }) => {
    const drawing = section(
      scene,
      y.map((at): PointM => [2, at]),
    );
    expect(drawing.zones.map((z) => [z.zone, z.fromM, z.toM])).toEqual([[left, ...near(0, 3)]]);
    expect(drawing.bays.map((b) => b.bay)).toEqual([left]);
    expect(areaM2(drawing, left, layer)).toBeCloseTo(thicknessM * 3, 9);
    expect(areaM2(drawing, '', -1)).toBeCloseTo(0.3 * 3, 9);
  });

  it('along a common edge that slants', () => {
    // The edge from (1, 0) to (2.2, 3), which rounding keeps from lying exactly on the line through its ends.
    const slanting = deckOf({
      zones: [
        zone(
          'W',
          [
            [0, 0],
            [1, 0],
            [2.2, 3],
            [0, 3],
          ],
          'deep',
        ),
        zone(
          'E',
          [
            [1, 0],
            [4, 0],
            [4, 3],
            [2.2, 3],
          ],
          'shallow',
        ),
      ],
    });
    // from a point a third of the way to one four fifths of the way: 7/15 of √(1.2² + 3²) m
    const at = (share: number): PointM => [1 + 1.2 * share, 3 * share];
    const lengthM = (7 / 15) * Math.hypot(1.2, 3);
    const drawing = section(slanting, [at(1 / 3), at(4 / 5)]);
    expect(drawing.zones.map((z) => [z.zone, z.fromM, z.toM])).toEqual([['W', ...near(0, lengthM)]]);
    expect(areaM2(drawing, 'W', 1)).toBeCloseTo(0.4 * lengthM, 6);
  });
});
