/** What an edit leaves alone is shared between states, down to single entries; what it changes is not. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Session } from '../../src/project/session.ts';
import { sharedContent } from '../../src/project/shared-content.ts';

const copy = <T>(value: T): T => structuredClone(value);

describe('sharedContent', () => {
  const before = {
    zones: [
      { id: 'Z1', outline: [[0, 0] as const, [4, 0] as const, [4, 3] as const], buildup: 'bed' },
      { id: 'Z2', outline: [[4, 0] as const, [8, 0] as const, [8, 3] as const], buildup: 'bed' },
    ],
    name: 'Yard',
  };

  it('gives back what was there where nothing is other', () => {
    expect(sharedContent(before, copy(before))).toBe(before);
  });

  it('keeps every entry but the one that changed, and of that one what did not change', () => {
    const after = copy(before);
    after.zones[1] = { ...after.zones[1]!, buildup: 'path' };
    const shared = sharedContent(before, after);
    expect(shared).toEqual(after);
    expect(shared.zones).not.toBe(before.zones);
    expect(shared.zones[0]).toBe(before.zones[0]);
    expect(shared.zones[1]).not.toBe(before.zones[1]);
    expect(shared.zones[1]!.outline).toBe(before.zones[1]!.outline);
    expect(before.zones[1]!.buildup).toBe('bed');
  });

  it('finds entries by their id where one is put in, taken out or moved', () => {
    const [one, two] = copy(before.zones);
    const inserted = sharedContent(before.zones, [{ ...one!, id: 'Z0' }, two!, one!]);
    expect(inserted.map(({ id }) => id)).toEqual(['Z0', 'Z2', 'Z1']);
    expect(inserted[1]).toBe(before.zones[1]);
    expect(inserted[2]).toBe(before.zones[0]);
    const fewer = sharedContent(before.zones, [one!]);
    expect(fewer).toEqual([one]);
    expect(fewer[0]).toBe(before.zones[0]);
    const [moved] = [sharedContent(before.zones, [two!, one!])];
    expect(moved).toEqual([two, one]);
  });

  it('never takes one value for another that looks like it', () => {
    for (const [old, now] of [
      [0, -0],
      [1, '1'],
      [null, {}],
      [[], {}],
      [{}, []],
      [{ a: 1 }, { a: 1, b: undefined }],
      [[1, 2], [1]],
      [[1], [1, 2]],
      [{ 0: 'a' }, ['a']],
    ]) {
      expect(sharedContent(old, now)).toStrictEqual(now);
      expect(sharedContent({ in: old }, { in: now })).toStrictEqual({ in: now });
    }
    // The order of keys can be seen in the file.
    expect(Object.keys(sharedContent({ a: 1, b: 2 }, { b: 2, a: 1 }))).toEqual(['b', 'a']);
  });
});

it('a moved corner of one zone leaves every other zone of the scene the very same', () => {
  const session = new Session();
  session.open(readFileSync(new URL('../../scenes/terrace.scene.json', import.meta.url), 'utf8'));
  const before = session.opened().scene;
  // As from the page: nothing of it is the worker's own.
  const zones = copy(before.zones).map((zone, i) =>
    i > 0 ? zone : { ...zone, outline: zone.outline.map(([x, y], k) => (k > 0 ? ([x, y] as const) : ([x + 0.001, y] as const))) },
  );
  const { project } = session.edit({ zones }, { kind: 'parts', act: 'move', part: 'zone', names: ['Z1'] });
  const after = project!.scene;
  expect(after.zones[0]!.outline).toEqual(zones[0]!.outline);
  expect(before.zones.length).toBeGreaterThan(1);
  before.zones.slice(1).forEach((zone, i) => {
    expect(after.zones[i + 1]).toBe(zone);
  });
  session.travel('undo');
  expect(session.opened().scene).toBe(before);
});
