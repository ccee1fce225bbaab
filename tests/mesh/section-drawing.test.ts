/** Sections as drawings: areas are thickness times length, worked out by hand; stretches, stations, edges and gaps in their places. */

import { describe, expect, it } from 'vitest';
import { sectionSource } from '../../src/export/picture-source.ts';
import { drawSection } from '../../src/mesh/section-drawing.ts';
import type { PointM, SceneFile } from '../../src/model/scene-file.ts';
import type { SectionDrawing } from '../../src/model/section-drawing.ts';
import { bay, buildUp, MAKE_UP, read, rect, type SceneParts, sceneOf, zone } from '../helpers/scene-builder.ts';

/** Two layers of 0.10 and 0.40 m. */
const DEEP = buildUp('deep', [
  { material: 'light', thicknessMm: 100 },
  { material: 'soil', thicknessMm: 400 },
]);
const SHALLOW = buildUp('shallow', [{ material: 'soil', thicknessMm: 250 }]);

const section = (scene: SceneFile, line: PointM[], stage: number | null = null) => drawSection(sectionSource(read(scene)), line, stage);
const deckOf = (parts: SceneParts) => sceneOf({ buildups: [DEEP, SHALLOW, MAKE_UP], ...parts });

/** Area of the pieces of one owner and layer. */
const areaM2 = (drawing: SectionDrawing, owner: string, layer: number) =>
  drawing.pieces.filter((p) => p.owner === owner && p.layer === layer).reduce((sum, p) => sum + p.areaM2, 0);
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
const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 6));

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

describe('what interrupts and what stands', () => {
  const scene = deckOf({
    deck: { openings: [rect(1, 1, 2, 2)], slabMm: 200 },
    zones: [zone('Z', rect(0, 0, 4, 3), 'deep')],
    objects: [
      { kind: 'block', id: 'P', name: 'Planter', outline: rect(2.5, 1, 3.5, 2), kNm2: 3, heightM: 0.6 },
      {
        kind: 'line',
        id: 'L',
        name: 'Edging',
        line: [
          [0, 0.5],
          [4, 0.5],
        ],
        kNm: 2,
        widthM: 0.2,
      },
      { kind: 'tree', id: 'T', at: [3, 2.5], massKg: 500, spreadM: 2 },
    ],
    stages: [
      {
        id: 'S1',
        name: 'Fill',
        place: [{ roles: ['light fill'] }],
        stockpiles: [{ id: 'K', outline: rect(2.2, 0.6, 3.8, 2.4), material: 'soil', heightM: 0.3 }],
      },
      { id: 'S2', name: 'Soil', place: [{ roles: ['substrate'] }, { objects: ['P', 'L', 'T'] }] },
    ],
  });
  const line: PointM[] = [
    [0, 1.5],
    [4, 1.5],
  ];

  it('an opening has no slab and no layers', () => {
    const drawing = section(scene, line);
    expect(drawing.gaps.map((gap) => [gap.kind, gap.fromM, gap.toM])).toEqual([['opening', ...near(1, 2)]]);
    expect(drawing.zones.map((z) => [z.fromM, z.toM])).toEqual([near(0, 1), near(2, 4)]);
    expect(areaM2(drawing, 'Z', 1)).toBeCloseTo(0.4 * 3, 9);
    expect(areaM2(drawing, '', -1)).toBeCloseTo(0.2 * 3, 9);
  });

  it('objects stand on the finished garden with their own section', () => {
    // block: 1 m × 0.6 m on 0.50 m
    const drawing = section(scene, line);
    const block = drawing.pieces.find((p) => p.kind === 'block')!;
    expect([block.owner, block.name, block.areaM2]).toEqual(['P', 'Planter', expect.closeTo(0.6, 5)]);
    expect(Math.min(...block.outline.map(([, z]) => z))).toBeCloseTo(0.5, 5);
    expect(Math.max(...block.outline.map(([, z]) => z))).toBeCloseTo(1.1, 5);
    // the line crosses the edging at right angles here: 0.2 m wide, drawn 0.45 m high
    const across = section(scene, [
      [0.5, 0],
      [0.5, 3],
    ]);
    const edging = across.pieces.find((p) => p.kind === 'line load')!;
    expect(edging.areaM2).toBeCloseTo(0.2 * 0.45, 5);
    expect([edging.outline.map(([at]) => at)].map((at) => [Math.min(...at), Math.max(...at)])[0]).toEqual([
      expect.closeTo(0.4, 5),
      expect.closeTo(0.6, 5),
    ]);
  });

  it('a retaining edge has the area of its stem and base slab', () => {
    const wall = deckOf({
      zones: [zone('Z', rect(0, 0, 4, 3), 'deep')],
      objects: [
        {
          kind: 'retaining',
          id: 'R',
          name: 'Edge of the bed',
          line: [
            [1, 0.2],
            [1, 2.8],
          ],
          side: 'right',
          retainedM: 0.4,
          baseM: 0.45,
          stemM: 0.08,
          slabM: 0.1,
          backfill: { density: 1450, frictionDeg: 30 },
          baseFriction: 0.5,
        },
      ],
    });
    // stem 0.08 · 0.40, slab beyond the stem (0.45 − 0.08) · 0.10, from the face at 1 m under the soil on the right
    const edge = section(wall, line).pieces.find((p) => p.kind === 'retaining')!;
    expect(edge.areaM2).toBeCloseTo(0.032 + 0.037, 5);
    expect(edge.name).toBe('Edge of the bed');
    const alongs = edge.outline.map(([at]) => at);
    expect([Math.min(...alongs), Math.max(...alongs)]).toEqual([expect.closeTo(1, 5), expect.closeTo(1.45, 5)]);
  });

  it('a tree shows where its crown reaches the line, not beyond', () => {
    // it stands 1.0 m from the line y = 1.5 with a crown of 1.0 m, and 0.6 m from y = 1.9
    expect(section(scene, line).trees).toEqual([]);
    const [tree] = section(scene, [
      [0, 1.9],
      [4, 1.9],
    ]).trees;
    expect([tree!.id, tree!.alongM, tree!.groundM, tree!.spreadM]).toEqual(['T', ...near(3, 0.5, 2)]);
  });

  it('a stage has what it has placed, and its heap', () => {
    const first = section(scene, line, 0);
    expect(first.stage).toEqual({ id: 'S1', name: 'Fill' });
    expect([...new Set(first.pieces.map((p) => p.kind))].sort()).toEqual(['light fill', 'slab', 'stockpile']);
    // heap 1.6 m wide at the foot, 0.3 m high, sides 1 : 1: (1.6 + 1.0) / 2 · 0.3
    expect(first.pieces.find((p) => p.kind === 'stockpile')!.areaM2).toBeCloseTo(0.39, 5);
    expect(first.stations[0]!.finishedM).toBeCloseTo(0.1, 9);
    const garden = section(scene, line);
    expect(garden.stage).toBeNull();
    expect(garden.pieces.some((p) => p.kind === 'stockpile')).toBe(false);
  });

  it('is the same at large coordinates', () => {
    const moved = (points: readonly PointM[]) => points.map(([x, y]): PointM => [x + 4_500_000, y + 5_400_000]);
    const far = deckOf({
      deck: { outline: moved(rect(0, 0, 4, 3)), bays: [bay('A', moved(rect(0, 0, 4, 3)))] },
      zones: [zone('Z', moved(rect(0, 0, 4, 3)), 'deep')],
    });
    const drawing = section(
      far,
      moved([
        [0, 0],
        [4, 3],
      ]),
    );
    expect(drawing.line[0]).toEqual([4_500_000, 5_400_000]);
    expect(areaM2(drawing, 'Z', 1)).toBeCloseTo(0.4 * 5, 6);
  });
});
