/** Which kept state is offered on a start. */

import { describe, expect, it } from 'vitest';
import type { KeptState } from '../../src/model/kept-state.ts';
import { leftUnsaved } from '../../src/ui/file/kept-states.ts';

const state = (id: number, session: string, unsaved: boolean): KeptState => ({
  id,
  session,
  at: id,
  name: 'A',
  fileName: 'a',
  text: '{}',
  unsaved,
});
const none = new Set<string>();

describe('the state offered', () => {
  it('is the newest of a run that left it unsaved', () => {
    expect(leftUnsaved([state(3, 'a', true), state(2, 'a', true), state(1, 'b', true)], none)?.id).toBe(3);
  });

  it('is none of a run that saved in the end', () => {
    expect(leftUnsaved([state(3, 'a', false), state(2, 'a', true)], none)).toBeNull();
  });

  it('is an older run’s where the newest has saved', () => {
    expect(leftUnsaved([state(3, 'a', false), state(2, 'b', true), state(1, 'a', true)], none)?.id).toBe(2);
  });

  it('is none of a tab that is still open', () => {
    expect(leftUnsaved([state(2, 'a', true), state(1, 'b', true)], new Set(['a']))?.id).toBe(1);
    expect(leftUnsaved([], none)).toBeNull();
  });
});
