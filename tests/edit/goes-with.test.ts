/** Moving a zone's edge takes its neighbour and the edging along, and leaves the engineer's bays and the deck where they are. */

import { describe, expect, it } from 'vitest';
import { goesWith, limitedTo } from '../../src/edit/goes-with.ts';
import { patched } from '../../src/edit/point-lists.ts';
import { movedEdge, withVertexInserted } from '../../src/edit/shared-vertices.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';

/** Two zones side by side on a deck of 10 m × 4 m, a bay as large as the left one, an edging between them. */
const SCENE: SceneFile = {
  format: 'loamdeck-scene',
  version: 1,
  name: 'Invented',
  deck: {
    outline: [
      [0, 0],
      [10, 0],
      [10, 4],
      [0, 4],
    ],
    bays: [
      {
        id: 'A1',
        outline: [
          [0, 0],
          [5, 0],
          [5, 4],
          [0, 4],
        ],
      },
    ],
  },
  buildups: [],
  zones: [
    {
      id: 'Z1',
      buildup: 'lawn',
      outline: [
        [0, 0],
        [5, 0],
        [5, 4],
        [0, 4],
      ],
    },
    {
      id: 'Z2',
      buildup: 'lawn',
      outline: [
        [5, 0],
        [10, 0],
        [10, 4],
        [5, 4],
      ],
    },
  ],
  objects: [
    {
      kind: 'line',
      id: 'W1',
      line: [
        [5, 0],
        [5, 4],
      ],
      kNm: 1,
      widthM: 0.1,
    },
  ],
};

const EDGE = { a: [5, 0], b: [5, 4] } as const;

describe('a common edge', () => {
  // To the left of the way up is towards smaller x: 1 m there.
  const patch = limitedTo(SCENE, movedEdge(SCENE, EDGE, 1), ({ part }) => goesWith('zone').includes(part));
  const next = patched(SCENE, patch);

  it('moves in both zones and the edging on it', () => {
    expect(next.zones.map(({ outline }) => outline)).toEqual([
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [0, 4],
      ],
      [
        [4, 0],
        [10, 0],
        [10, 4],
        [4, 4],
      ],
    ]);
    expect(next.objects?.[0]).toMatchObject({
      line: [
        [4, 0],
        [4, 4],
      ],
    });
  });

  it('stays in the bay and the deck, which are the very same as before', () => {
    expect(next.deck).toBe(SCENE.deck);
    expect(Object.keys(patch).sort()).toEqual(['objects', 'zones']);
  });
});

describe('a point put into edges', () => {
  it('is put only where it may', () => {
    const patch = limitedTo(SCENE, withVertexInserted(SCENE, [2, 0]), ({ part }) => part === 'zone');
    expect(Object.keys(patch)).toEqual(['zones']);
    expect(patch.zones?.[0]?.outline).toHaveLength(5);
    expect(patch.zones?.[1]).toBe(SCENE.zones[1]);
  });
});

describe('places', () => {
  it('stay the very same objects where a corner beside them is moved: trees, and levels of a finish', () => {
    const tree = { kind: 'tree', id: 'T1', at: [8, 2], massKg: 900, spreadM: 2 } as const;
    const finish = { kind: 'spots', spots: [[8, 3, 0.5]] } as const;
    const scene: SceneFile = { ...SCENE, objects: [tree], zones: SCENE.zones.map((zone) => ({ ...zone, finish })) };
    const patch = limitedTo(scene, movedEdge(scene, EDGE, 1), ({ part }) => goesWith('zone').includes(part));
    expect(Object.keys(patch)).toEqual(['zones']);
    expect(patch.zones?.map((zone) => zone.finish === finish)).toEqual([true, true]);
  });
});

describe('the deck', () => {
  it('takes along all that lies on its edge, a bay only bays', () => {
    expect(goesWith('outline')).toContain('bay');
    expect(goesWith('bay')).toEqual(['bay']);
    expect(goesWith('outlet')).toEqual(['outlet']);
  });
});
