/** A stage or a map that an edit takes away is left: what it showed was of the scene before. */

import { describe, expect, it } from 'vitest';
import type { OpenAnswer, Snapshot } from '../../src/model/engine.ts';
import { NO_HISTORY } from '../../src/model/history.ts';
import type { CellMap, MapKind } from '../../src/model/maps.ts';
import { createSceneStore } from '../../src/store/scene-store.ts';
import { createViewStore } from '../../src/store/view-store.ts';
import { handEngine } from './fake-engine.ts';

const PART = { kind: 'parts', act: 'remove', part: 'stage', names: ['S'] } as const;

function scene(stages: number, hasWater: boolean): OpenAnswer {
  const report = hasWater ? { water: {} } : {};
  return {
    ok: true,
    snapshot: { scene: {}, stages: Array(stages).fill({}), report, history: NO_HISTORY } as unknown as Snapshot,
    warnings: [],
  };
}

async function withScene(map: MapKind) {
  const view = createViewStore();
  const hand = handEngine();
  const store = createSceneStore(hand.engine, view);
  void store.getState().openText('a.scene.json', 'text');
  await hand.calls[0].answer(scene(3, true));
  view.getState().showStage(2);
  view.getState().showMap(map);
  for (const { answer } of [...hand.named('map')]) await answer({ kind: map, stage: 2 } as CellMap);
  hand.calls.length = 0;
  void store.getState().edit(() => ({}), PART);
  return { view, hand, store };
}

describe('an edit that takes away', () => {
  it('the stage shown: the finished garden is shown, and its map', async () => {
    const { view, hand } = await withScene('load');
    await hand.named('edit')[0].answer(scene(2, true));
    expect(view.getState().stage).toBe(null);
    expect(new Set(hand.named('map').map(({ args }) => args[1]))).toEqual(new Set([null]));
  });

  it('the water of a map: no map is shown, and none asked for', async () => {
    const { view, hand, store } = await withScene('flow');
    await hand.named('edit')[0].answer(scene(3, false));
    expect([view.getState().map, store.getState().cellMap, hand.named('map').length]).toEqual([null, null, 0]);
  });

  it('nothing: stage and map stay', async () => {
    const { view, hand } = await withScene('flow');
    await hand.named('edit')[0].answer(scene(3, true));
    expect([view.getState().stage, view.getState().map]).toEqual([2, 'flow']);
  });
});
