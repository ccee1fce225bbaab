/** Which parts are drawn at which stage, which arrive, which lie on top. Expected values: the table in `small-picture.ts`. */

import { describe, expect, it } from 'vitest';
import type { PartKind } from '../../src/model/picture.ts';
import { isPlaced, type Look, partStates } from '../../src/view3d/part-states.ts';
import { PARTS, part } from './small-picture.ts';

const EVERYTHING: Look = { stage: null, hiddenKinds: new Set(), hiddenZones: new Set(), onlyKind: null, onlyZone: null };
const look = (change: Partial<Look>): Look => ({ ...EVERYTHING, ...change });
const shown = (change: Partial<Look>) =>
  partStates(PARTS, look(change))
    .map((state, i) => (state.shown ? PARTS[i].kind : null))
    .filter((kind) => kind !== null);
const tops = (change: Partial<Look>) =>
  partStates(PARTS, look(change))
    .map((state, i) => (state.top ? PARTS[i].kind : null))
    .filter((kind) => kind !== null);

describe('stages', () => {
  it('shows in the finished garden all that stays, and no stockpile', () => {
    expect(shown({})).toEqual(['slab', 'drainage element', 'substrate', 'tree crown']);
  });

  it.each([
    [0, ['slab']],
    [1, ['slab', 'drainage element', 'stockpile']],
    [2, ['slab', 'drainage element', 'substrate', 'stockpile']],
    [3, ['slab', 'drainage element', 'substrate', 'tree crown']],
  ])('shows at stage %i what is placed and not yet taken away', (stage, kinds) => {
    expect(shown({ stage })).toEqual(kinds);
  });

  it('takes a part away after its last stage', () => {
    const flood = part({ kind: 'flood water', stageFrom: 2, stageTo: 2 });
    expect([1, 2, 3, null].map((stage) => isPlaced(flood, stage))).toEqual([false, true, false, false]);
  });
});

describe('hiding and picking out', () => {
  it('hides a kind', () => {
    expect(shown({ hiddenKinds: new Set<PartKind>(['substrate', 'tree crown']) })).toEqual(['slab', 'drainage element']);
  });

  it('hides a zone, and leaves what belongs to others', () => {
    expect(shown({ hiddenZones: new Set(['Z1']) })).toEqual(['slab', 'tree crown']);
  });

  it('picks out one kind, and keeps the slab under it', () => {
    expect(shown({ onlyKind: 'drainage element' })).toEqual(['slab', 'drainage element']);
  });

  it('picks out one zone, and keeps the slab under it', () => {
    expect(shown({ onlyZone: 'Z1' })).toEqual(['slab', 'drainage element', 'substrate']);
  });

  it('hides the slab only when asked to', () => {
    expect(shown({ hiddenKinds: new Set<PartKind>(['slab']), onlyKind: 'substrate' })).toEqual(['substrate']);
  });
});

describe('what lies on top', () => {
  it('is the topmost shown layer of a zone, and the bare slab', () => {
    expect(tops({})).toEqual(['slab', 'substrate']);
    expect(tops({ stage: 1 })).toEqual(['slab', 'drainage element']);
    expect(tops({ hiddenKinds: new Set<PartKind>(['substrate']) })).toEqual(['slab', 'drainage element']);
  });
});

describe('what arrives', () => {
  const arriving = (change: Partial<Look>, parts = PARTS) => partStates(parts, look(change)).map((state) => state.arriving);

  it('is what the shown stage brings', () => {
    expect(arriving({ stage: 2 })).toEqual([0, 0, 1, 0, 0]);
    expect(arriving({})).toEqual([0, 0, 0, 0, 0]);
  });

  it('comes the later the higher its floor, equal floors together', () => {
    const parts = [7, 2, 7, 4].map((floor) => part({ kind: 'filter', owner: `Z${floor}`, layer: 0, floor, stageFrom: 0 }));
    expect(arriving({ stage: 0 }, parts)).toEqual([3, 1, 3, 2]);
  });

  it('is nothing that is hidden', () => {
    expect(arriving({ stage: 2, hiddenZones: new Set(['Z1']) })).toEqual([0, 0, 0, 0, 0]);
  });
});
