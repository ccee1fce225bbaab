/** From the place of an issue in the file to a place on the plan. */

import { describe, expect, it } from 'vitest';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { placeOfIssue, stepsOf } from '../../src/ui/facts/plan-place.ts';

const SCENE = {
  deck: {
    outline: [
      [1, 2],
      [3, 4],
      [5, 6],
    ],
    bays: [],
    outlets: [{ id: 'O1', at: [7, 8] }],
  },
  zones: [
    {
      id: 'Z1',
      buildup: 'lawn',
      outline: [
        [10, 11],
        [12, 13],
      ],
    },
  ],
} as unknown as SceneFile;

const placeOf = (path: string) => placeOfIssue(SCENE, { code: 'X', level: 'error', path, got: '', expected: '', mend: '' });

describe('path', () => {
  it('is taken apart as issues write it', () => {
    expect(stepsOf('zones[3].outline[2]')).toEqual(['zones', 3, 'outline', 2]);
    expect(stepsOf('')).toEqual([]);
  });
});

describe('place', () => {
  it.each([
    ['zones[0].outline[1]', [12, 13]],
    ['zones[0].buildup', [10, 11]],
    ['deck.outlets[0].lps', [7, 8]],
    ['deck.outline[2]', [5, 6]],
    ['zones', null],
    ['zones[7].outline', null],
    ['', null],
  ] as const)('%s', (path, at) => {
    expect(placeOf(path)).toEqual(at);
  });
});
