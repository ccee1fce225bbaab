/** Parts renamed, removed, moved and copied, with all that refers to them; worked by hand. */

import { describe, expect, it } from 'vitest';
import { duplicated, moved, shift, turn } from '../../src/edit/move-parts.ts';
import { patched } from '../../src/edit/point-lists.ts';
import { removed, renamed, usesOf } from '../../src/edit/references.ts';
import { errorsOf, PLAN, withPatch } from '../helpers/full-plan.ts';
import { rect } from '../helpers/scene-builder.ts';

describe('references', () => {
  it('a renamed zone is placed under its new name, a renamed material is used everywhere', () => {
    expect(withPatch(renamed(PLAN, 'zone', 'Z1', 'lawn')).stages?.[0]?.place?.[0]).toEqual({ zones: ['lawn'], roles: ['protection'] });
    const next = withPatch(renamed(PLAN, 'material', 'soil', 'loam'));
    expect([next.buildups[0]?.layers[0]?.material, next.stages?.[0]?.stockpiles?.[0]?.material, next.probes?.[0]?.layer]).toEqual([
      'loam',
      'loam',
      'loam',
    ]);
    expect(errorsOf(next)).toEqual([]);
    expect(renamed(PLAN, 'zone', 'Z9', 'lawn')).toEqual({});
  });

  it.each([
    ['build-up', 'sound'],
    ['vehicle', 'van'],
    ['vehicle', 'loader'],
    ['object', 'P1'],
    ['stage', 'S1'],
    ['bay', 'A1'],
    ['outlet', 'O1'],
    ['stockpile', 'K1'],
  ] as const)('renaming %s %s leaves no loose end', (part, id) => {
    const next = withPatch(renamed(PLAN, part, id, 'other'));
    expect(errorsOf(next)).toEqual([]);
    expect(JSON.stringify(patched(next, renamed(next, part, 'other', id)))).toBe(JSON.stringify(PLAN));
  });

  it('a zone that is removed leaves no stage that would then place all zones', () => {
    const next = withPatch(
      removed(PLAN, [
        { part: 'zone', id: 'Z1' },
        { part: 'zone', id: 'Z2' },
      ]),
    );
    // Of the first entry nothing is left, of the second its tree.
    expect(next.stages?.[0]?.place).toEqual([{ objects: ['T1'] }, { objects: ['P1', 'T1'] }]);
    expect(errorsOf(next)).toEqual([]);
  });

  it('removes by place in the list, all at once', () => {
    const next = withPatch(
      removed(PLAN, [
        { part: 'opening', id: '0' },
        { part: 'levels', id: 'spot 0' },
        { part: 'levels', id: 'spot 1' },
        { part: 'plant', id: 'S1 0' },
        { part: 'object', id: 'T1' },
      ]),
    );
    expect(next.deck.openings).toEqual([rect(3, 1, 4, 2)]);
    expect(next.deck.levels?.spots).toEqual([[0, 10, 0.3]]);
    expect(next.stages?.[0]).not.toHaveProperty('plant');
    expect(next.stages?.[0]?.place?.slice(1)).toEqual([{ zones: ['Z2'], roles: ['substrate'] }, { objects: ['P1'] }]);
    expect(errorsOf(next)).toEqual([]);
  });

  it('the last of an optional list takes the list with it', () => {
    const next = withPatch(
      removed(PLAN, [
        ...[0, 1, 2].map((i) => ({ part: 'levels', id: `spot ${i}` }) as const),
        { part: 'levels', id: 'breakline 0' },
        { part: 'access point', id: 'G1' },
      ]),
    );
    expect(next.deck).not.toHaveProperty('levels');
    expect(next).not.toHaveProperty('accessPoints');
  });

  it('a build-up in use goes, and the check then says who uses it; uses are told before', () => {
    expect(errorsOf(withPatch(removed(PLAN, [{ part: 'build-up', id: 'sound' }])))).toEqual(['UNKNOWN_ID zones[1].buildup']);
    expect(usesOf(PLAN, 'build-up', 'sound')).toEqual([{ part: 'zone', id: 'Z2' }]);
    expect(usesOf(PLAN, 'vehicle', 'van').map(({ part, id }) => `${part} ${id}`)).toEqual(['bay A1', 'route F1', 'set-up area U1']);
    expect(usesOf(PLAN, 'zone', 'Z1')).toEqual([{ part: 'stage', id: 'S1' }]);
  });
});

describe('moved and copied', () => {
  it('a zone moves with its holes and its finish; the level of the finish stays', () => {
    const next = withPatch(
      moved(
        PLAN,
        [
          { part: 'zone', id: 'Z1' },
          { part: 'outlet', id: 'O1' },
        ],
        shift(1, 2),
      ),
    );
    expect(next.zones[0]).toMatchObject({
      outline: rect(1, 2, 11, 12),
      holes: [rect(2, 3, 3, 4), rect(4, 3, 5, 4)],
      finish: { at: [3, 5, 0.5], towardsDeg: 90 },
    });
    expect(next.deck.outlets?.[0]?.at).toEqual([7, 8]);
    expect(next.zones[1]).toBe(PLAN.zones[1]);
  });

  it('a quarter turn about a corner, exact; what falls to the east then falls to the north', () => {
    const next = withPatch(moved(PLAN, [{ part: 'zone', id: 'Z1' }], turn([10, 0], 90)));
    expect(next.zones[0]?.outline).toEqual([
      [10, -10],
      [10, 0],
      [0, 0],
      [0, -10],
    ]);
    expect(next.zones[0]?.finish).toMatchObject({ towardsDeg: 0 });
  });

  it('copies get ids of their own and are placed with the originals; a copied bay brings no limits', () => {
    const { patch, selected } = duplicated(
      PLAN,
      [
        { part: 'zone', id: 'Z1' },
        { part: 'object', id: 'T1' },
        { part: 'bay', id: 'A1' },
        { part: 'plant', id: 'S1 0' },
        { part: 'levels', id: 'spot 0' },
        { part: 'outline', id: 'outline' },
      ],
      shift(0, 1),
    );
    expect(selected.map(({ id }) => id)).toEqual(['Z1-2', 'T1-2', 'A1-2', 'S1 1', 'spot 3']);
    const next = withPatch(patch);
    expect(errorsOf(next)).toEqual([]);
    expect(next.stages?.[0]?.place).toEqual([
      { zones: ['Z1', 'Z1-2'], roles: ['protection'] },
      { zones: ['Z2'], roles: ['substrate'], objects: ['T1', 'T1-2'] },
      { objects: ['P1', 'T1', 'T1-2'] },
    ]);
    expect(next.deck.bays[2]).toEqual({ id: 'A1-2', outline: rect(0, 1, 10, 11) });
    expect(next.deck.levels?.spots[3]).toEqual([0, 1, 0.1]);
    const again = duplicated(next, [{ part: 'zone', id: 'Z1-2' }], shift(0, 1));
    expect(again.selected).toEqual([{ part: 'zone', id: 'Z1-3' }]);
  });
});
