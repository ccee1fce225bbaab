/** A load plan that is entered is kept in the history, once per edition, whatever the order of typing. */

import { describe, expect, it } from 'vitest';
import { type PlanNote, withPlanNote } from '../../src/edit/load-plan.ts';
import { withParts, withValue } from '../../src/edit/part-values.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { editionsInHistory } from '../../src/scene/load-plan-editions.ts';
import { bay, rect, sceneOf } from '../helpers/scene-builder.ts';

const note = (on: string): PlanNote => ({
  on,
  says: ({ document, revision, date }, bays) =>
    `${document}: revision ${revision}${date === null ? '' : ` of ${date}`} entered for ${bays}.`,
});
const START = sceneOf({ deck: { bays: [bay('A1', rect(0, 0, 2, 3)), bay('A2', rect(2, 0, 4, 3))] } });

/** Types one value of the basis into bays. */
function typed(scene: SceneFile, ids: readonly string[], [key, value]: readonly [string, string], on = '2026-11-05'): SceneFile {
  const refs = ids.map((id) => ({ part: 'bay', id }) as const);
  const patch = withPlanNote(
    scene,
    withParts(scene, refs, (entry) => withValue(entry, `basis.${key}`, value === '' ? undefined : value)),
    note(on),
  );
  return Object.fromEntries(Object.entries({ ...scene, ...patch }).filter(([, one]) => one !== null)) as unknown as SceneFile;
}

const said = (scene: SceneFile) => scene.history?.map(({ on, says }) => `${on} ${says}`) ?? [];

describe('withPlanNote', () => {
  it('tells an edition once for all its bays, typed field by field', () => {
    const first = typed(typed(START, ['A1'], ['revision', 'C']), ['A1'], ['date', '2026-11-02']);
    expect(said(first)).toEqual(['2026-11-05 load plan: revision C of 2026-11-02 entered for A1.']);
    const both = typed(typed(first, ['A2'], ['revision', 'C']), ['A2'], ['date', '2026-11-02']);
    expect(said(both)).toEqual(['2026-11-05 load plan: revision C of 2026-11-02 entered for A1, A2.']);
    expect(editionsInHistory(both, 'load plan')).toEqual([{ revision: 'C', date: '2026-11-02' }]);
  });

  it('tells a slip that is mended the same day as what it was mended to', () => {
    const slip = typed(START, ['A1', 'A2'], ['revision', 'D']);
    expect(said(typed(slip, ['A1', 'A2'], ['revision', 'C']))).toEqual([
      '2026-11-05 load plan: revision C of 2026-01-05 entered for A1, A2.',
    ]);
  });

  it('keeps what was entered on other days', () => {
    const earlier = typed(START, ['A1'], ['revision', 'B'], '2026-06-01');
    expect(said(typed(earlier, ['A1'], ['revision', 'C']))).toEqual([
      '2026-06-01 load plan: revision B of 2026-01-05 entered for A1.',
      '2026-11-05 load plan: revision C of 2026-01-05 entered for A1.',
    ]);
  });

  it('leaves a sentence out while document or revision is missing, and takes it back', () => {
    const bare = sceneOf({ deck: { bays: [{ ...bay('A1', rect(0, 0, 4, 3)), basis: {} }] } });
    const named = typed(bare, ['A1'], ['document', 'LP-01']);
    expect(said(named)).toEqual([]);
    const whole = typed(named, ['A1'], ['revision', 'A']);
    expect(said(whole)).toEqual(['2026-11-05 LP-01: revision A entered for A1.']);
    expect('history' in typed(whole, ['A1'], ['revision', ''])).toBe(false);
  });

  it('says nothing of a bay that comes of another', () => {
    const patch = { deck: { ...START.deck, bays: [...START.deck.bays, bay('A3', rect(0, 0, 1, 1))] } };
    expect(withPlanNote(START, patch, note('2026-11-05'))).toBe(patch);
  });

  it('says nothing of other changes', () => {
    const patch = withParts(START, [{ part: 'bay', id: 'A1' }], (entry) => withValue(entry, 'permanentKNm2', 10));
    expect(withPlanNote(START, patch, note('2026-11-05'))).toBe(patch);
    expect(said(typed(START, ['A1'], ['by', 'structural engineer']))).toEqual([]);
  });
});
