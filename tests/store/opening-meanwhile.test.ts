/** What is edited while another scene is being opened was meant for the scene before. */

import { describe, expect, it, vi } from 'vitest';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { createSceneStore } from '../../src/store/scene-store.ts';
import { createViewStore } from '../../src/store/view-store.ts';
import { handEngine, opened, refusal } from './fake-engine.ts';

const PART = { kind: 'parts', act: 'change', part: 'zone', names: ['Z1'] } as const;

async function withOpening() {
  const hand = handEngine();
  const scene = createSceneStore(hand.engine, createViewStore());
  void scene.getState().openText('a.scene.json', 'text of a');
  await hand.calls[0].answer(opened('A'));
  hand.calls.length = 0;
  void scene.getState().openText('b.scene.json', 'text of b');
  return { hand, now: () => scene.getState() };
}

describe('an edit made while another scene is opened', () => {
  it('does not reach the scene that opens', async () => {
    const { hand, now } = await withOpening();
    const make = vi.fn((scene: SceneFile) => ({ zones: scene.zones }));
    const done = now().edit(make, PART, 1);
    now().setThickness('lawn', 2, 210, 2);
    await hand.named('open')[0].answer(opened('B'));
    expect(await done).toEqual([]);
    expect([make.mock.calls.length, hand.named('edit').length, hand.named('setThickness').length]).toEqual([0, 0, 0]);
    expect(now().snapshot?.scene.name).toBe('B');
  });

  it('is done after all where the other cannot be opened', async () => {
    const { hand, now } = await withOpening();
    now().setThickness('lawn', 2, 210, 2);
    expect(hand.named('setThickness')).toHaveLength(0);
    await hand.named('open')[0].answer(refusal);
    expect(hand.named('setThickness').map(({ args }) => args[2])).toEqual([210]);
    await hand.named('setThickness')[0].answer(opened('A'));
    expect(now().snapshot?.scene.name).toBe('A');
  });

  it('runs as ever once both of two openings are over', async () => {
    const { hand, now } = await withOpening();
    void now().openText('c.scene.json', 'text of c');
    await hand.named('open')[0].answer(opened('B'));
    now().setThickness('lawn', 2, 210, 2);
    await hand.named('open')[1].answer(opened('C'));
    expect(hand.named('setThickness')).toHaveLength(0);
    now().setThickness('lawn', 2, 220, 3);
    expect(hand.named('setThickness').map(({ args }) => args[2])).toEqual([220]);
  });
});
