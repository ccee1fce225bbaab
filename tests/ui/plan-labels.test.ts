/** Names on the plan: none hides another, and what is missed most comes first. */

import { describe, expect, it } from 'vitest';
import { planLabels } from '../../src/ui/facts/plan-labels.ts';
import { bay, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const SCENE = sceneOf({
  deck: {
    outline: rect(0, 0, 10, 10),
    bays: [bay('A1', rect(0, 0, 10, 10))],
    outlets: [{ id: 'O1', at: [6, 4], kind: 'outlet' }],
  },
  zones: [zone('Z1', rect(0, 0, 10, 10), 'sound', { name: 'A lawn with a name' })],
});
const words = { carries: () => '12', level: String };
const labelsAt = (scale: number, hidden: readonly 'zone'[] = []) =>
  planLabels({
    scene: SCENE,
    stage: undefined,
    hidden: new Set(hidden),
    frame: { scale, originM: [0, 0], viewBox: '' },
    words,
  }).map(({ lines }) => lines.join(' '));

describe('names', () => {
  it('are all there where there is room', () => {
    // 100 px per metre: the outlet lies 100 px beside and below the middle, where the zone's name stands.
    expect(labelsAt(100)).toEqual(['A lawn with a name', 'A1 12', 'O1']);
  });

  it('give way: the outlet to the zone on it, the whole name to the id, all to too small a deck', () => {
    // 15 px per metre: 18 letters of 6.2 px reach 55.8 px to the right of the middle; the outlet's name begins 15 + 9 px beside it, 5 px lower.
    expect(labelsAt(15)).toEqual(['A lawn with a name', 'A1 12']);
    // 8 px per metre: 80 px are less than 111.6 px.
    expect(labelsAt(8)).toEqual(['Z1', 'A1 12']);
    expect(labelsAt(1)).toEqual([]);
  });

  it('of hidden sheets are hidden, and make room', () => {
    expect(labelsAt(15, ['zone'])).toEqual(['A1 12', 'O1']);
  });
});
