/** What interrupts a section and what stands in it: openings, objects, retaining edges, trees, stages, heaps. */

import { describe, expect, it } from 'vitest';
import type { PointM } from '../../src/model/scene-file.ts';
import { bay, rect, zone } from '../helpers/scene-builder.ts';
import { areaM2, deckOf, near, section } from './section-cases.ts';

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

  it('says which sizes the scene does not give', () => {
    // a slab and a block with heights; walls and trees have none in a scene
    expect(section(scene, line).drawnOnly).toEqual([]);
    const trees = section(scene, [
      [0.5, 0],
      [0.5, 1.9],
      [4, 1.9],
    ]);
    expect(trees.drawnOnly).toEqual(['wall height', 'tree height']);
    const bare = deckOf({
      zones: [zone('Z', rect(0, 0, 4, 3), 'deep')],
      objects: [{ kind: 'block', id: 'P', outline: rect(2.5, 1, 3.5, 2), kNm2: 3 }],
    });
    expect(section(bare, line).drawnOnly).toEqual(['slab thickness', 'block height']);
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
