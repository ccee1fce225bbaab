/** Values of parts, read and changed: only what is named changes, everything else stays the very same. */

import { describe, expect, it } from 'vitest';
import { partIn, valueAt, withParts, withValue } from '../../src/edit/part-values.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';

const RING = [
  [0, 0],
  [4, 0],
  [4, 4],
] as const;

const SCENE: SceneFile = {
  format: 'loamdeck-scene',
  version: 1,
  name: 'Invented',
  deck: {
    outline: RING,
    levels: {
      spots: [
        [0, 0, 0.1],
        [4, 0, 0.2],
      ],
    },
    bays: [
      { id: 'A1', outline: RING, permanentKNm2: 10, basis: { document: 'load plan' } },
      { id: 'A2', outline: RING },
    ],
  },
  buildups: [],
  zones: [{ id: 'Z1', outline: RING, buildup: 'lawn' }],
  stages: [
    {
      id: 'S1',
      name: 'one',
      plant: [
        {
          vehicle: 'loader',
          route: [
            [0, 0],
            [1, 1],
          ],
        },
      ],
    },
    { id: 'S2', name: 'two', stockpiles: [{ id: 'K1', outline: RING, material: 'sand', heightM: 1 }] },
  ],
};

describe('entries of parts', () => {
  it.each([
    ['bay', 'A2', SCENE.deck.bays[1]],
    ['zone', 'Z1', SCENE.zones[0]],
    ['outline', 'outline', SCENE.deck],
    ['levels', 'spot 1', { levelM: 0.2 }],
    ['stockpile', 'K1', SCENE.stages![1]!.stockpiles![0]],
    ['plant', 'S1 0', SCENE.stages![0]!.plant![0]],
    ['bay', 'A9', null],
  ] as const)('%s %s', (part, id, entry) => {
    expect(partIn(SCENE, { part, id })).toEqual(entry);
  });

  it('many at once, the rest untouched', () => {
    const refs = ['A1', 'A2'].map((id) => ({ part: 'bay', id }) as const);
    const patch = withParts(SCENE, refs, (entry) => withValue(entry, 'basis.revision', 'C'));
    expect(Object.keys(patch)).toEqual(['deck']);
    expect(patch.deck!.bays.map(({ basis }) => basis)).toEqual([{ document: 'load plan', revision: 'C' }, { revision: 'C' }]);
    expect(patch.deck!.levels).toBe(SCENE.deck.levels);
  });

  it('a level, a stockpile, a vehicle', () => {
    expect(withParts(SCENE, [{ part: 'levels', id: 'spot 0' }], (entry) => withValue(entry, 'levelM', 0.5)).deck!.levels!.spots[0]).toEqual(
      [0, 0, 0.5],
    );
    const stages = withParts(SCENE, [{ part: 'stockpile', id: 'K1' }], (entry) => withValue(entry, 'heightM', 2)).stages!;
    expect(stages[0]).toBe(SCENE.stages![0]);
    expect(stages[1]!.stockpiles![0]!.heightM).toBe(2);
  });

  it('nothing changes where the value is the same', () => {
    expect(withParts(SCENE, [{ part: 'bay', id: 'A1' }], (entry) => withValue(entry, 'permanentKNm2', 10))).toEqual({});
  });
});

describe('values within an entry', () => {
  it('are found by their keys, and nothing inherited is', () => {
    expect(valueAt(SCENE.deck.bays[0]!, 'basis.document')).toBe('load plan');
    expect(valueAt(SCENE.deck.bays[1]!, 'basis.document')).toBeUndefined();
    expect(valueAt({}, 'constructor.name')).toBeUndefined();
  });

  it('an emptied entry goes too', () => {
    expect(withValue({ id: 'A1', basis: { document: 'x' } }, 'basis.document', undefined)).toEqual({ id: 'A1' });
  });
});
