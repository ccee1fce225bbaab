/** Which edition of a load plan is the earlier one, and what the sentences of a history say of it. */

import { describe, expect, it } from 'vitest';
import { type Edition, editionOf, editionsInHistory, isEarlier } from '../../src/scene/load-plan-editions.ts';
import { bay, rect, sceneOf } from '../helpers/scene-builder.ts';

const of = (revision: string | null, date: string | null = null): Edition => ({ revision, date });

describe('isEarlier', () => {
  it.each<[Edition, Edition, boolean]>([
    [of('B'), of('C'), true],
    [of('C'), of('B'), false],
    [of('Z'), of('AA'), true],
    [of('9'), of('10'), true],
    [of('P9'), of('P10'), true],
    // Preliminary and construction issues: no order is known between them.
    [of('P3'), of('C1'), false],
    [of('B'), of('2'), false],
    [of('B', '2026-03-03'), of('B', '2026-05-09'), true],
    [of(null, '2026-03-03'), of('C', '2026-05-09'), true],
    [of('B', '2026-05-09'), of('C', '2026-03-03'), true],
    // The later revision bears the earlier date: one of the two is wrong, so each is doubted.
    [of('C', '2026-03-03'), of('B', '2026-05-09'), true],
    [of('C', '2026-03-03'), of('C', '2026-03-03'), false],
    [of('as built'), of('final'), false],
  ])('%j before %j: %s', (one, other, expected) => expect(isEarlier(one, other)).toBe(expected));
});

describe('what a scene knows', () => {
  it('a basis with a revision or a date that sorts', () => {
    expect(editionOf({ revision: ' C ', date: '9.3.2026' })).toEqual({ revision: 'C', date: null });
    expect(editionOf({ document: 'load plan', revision: ' ' })).toBeNull();
    expect(editionOf(undefined)).toBeNull();
  });

  it.each([
    ['Load plan revision C of 2026-11-02 entered for A1, A2', of('C', '2026-11-02')],
    ['load plan: Index D vom 2026-12-01 eingetragen für A1', of('D', '2026-12-01')],
    ['The engineer sent Load plan Rev. 12', of('12')],
    ['Lastenplan rev D entered', of('D')],
  ])('a sentence: %s', (says, edition) => {
    expect(editionsInHistory(sceneOf({ history: [{ says }] }), 'load plan')).toEqual([edition]);
  });

  it.each(['Drawing revision C read', 'Load plan revision of the bays', 'Load plan entered'])('not in: %s', (says) => {
    expect(editionsInHistory(sceneOf({ history: [{ says }] }), 'load plan')).toEqual([]);
  });

  it('of several documents only the one that is named', () => {
    const bays = ['LP-01', 'LP-02'].map((document, i) => ({
      ...bay(`A${i}`, rect(2 * i, 0, 2 * i + 2, 3)),
      basis: { document, revision: 'A', date: '2026-01-05' },
    }));
    const scene = sceneOf({ deck: { bays }, history: [{ says: 'Load plan revision C entered' }, { says: 'LP-01 revision B entered' }] });
    expect(editionsInHistory(scene, 'LP-01')).toEqual([of('B')]);
    expect(editionsInHistory(scene, 'LP-02')).toEqual([]);
  });
});
