/** What a scene draws besides layers, in local metres. */

import { describe, expect, it } from 'vitest';
import { furnitureOf } from '../../src/project/furniture.ts';
import { rect, sceneOf } from '../helpers/scene-builder.ts';

const SCENE = sceneOf({
  deck: {
    outline: rect(10, 20, 14, 23),
    slabMm: 350,
    columns: [{ id: 'C1', at: [11, 21], sizeM: [0.4, 0.6] }],
    outlets: [{ id: 'O1', at: [12, 22], kind: 'outlet' }],
    edges: [
      {
        id: 'E1',
        line: [
          [10, 20],
          [14, 20],
          [14, 20],
        ],
        kind: 'upstand',
        membraneTopM: 0.3,
      },
    ],
  },
  zones: [],
  objects: [
    { kind: 'block', id: 'P', outline: rect(10, 20, 11, 21), kNm2: 3, heightM: 0.9 },
    { kind: 'tree', id: 'T', at: [13, 22], massKg: 900, spreadM: 3 },
    {
      kind: 'line',
      id: 'W',
      line: [
        [10, 22],
        [12, 22],
      ],
      kNm: 3,
      widthM: 0.4,
    },
  ],
});
const DRAWN = furnitureOf(SCENE, [10, 20]);

describe('furniture', () => {
  it('stands at its place less the origin', () => {
    expect(DRAWN.slabM).toBe(0.35);
    expect(DRAWN.columns).toEqual([{ id: 'C1', x: 1, y: 1, sizeM: [0.4, 0.6] }]);
    expect(DRAWN.outlets).toEqual([{ id: 'O1', x: 2, y: 2 }]);
    expect(DRAWN.edges).toEqual([{ id: 'E1', kind: 'upstand', line: Float64Array.of(0, 0, 4, 0), membraneTopM: 0.3 }]);
  });

  it('names each object by its place in the scene’s list', () => {
    expect(DRAWN.blocks).toEqual([{ object: 0, ring: Float64Array.of(0, 0, 1, 0, 1, 1, 0, 1), heightM: 0.9 }]);
    expect(DRAWN.trees).toEqual([expect.objectContaining({ object: 1, x: 3, y: 2, spreadM: 3 })]);
    expect(DRAWN.lines).toEqual([expect.objectContaining({ object: 2, line: Float64Array.of(0, 2, 2, 2), widthM: 0.4 })]);
  });

  it('draws trees taller than a person and everything with some height', () => {
    const [small] = furnitureOf(sceneOf({ objects: [{ kind: 'tree', id: 'T', at: [1, 1], massKg: 9, spreadM: 0.5 }] }), [0, 0]).trees;
    expect(small.heightM).toBeGreaterThanOrEqual(2);
    expect(DRAWN.lines[0].heightM).toBeGreaterThan(0);
  });

  it('is empty for a bare deck, but for a slab', () => {
    const bare = furnitureOf(sceneOf(), [0, 0]);
    expect(bare.slabM).toBeGreaterThan(0);
    expect([bare.columns, bare.outlets, bare.edges, bare.trees, bare.lines, bare.blocks].flat()).toEqual([]);
  });
});
