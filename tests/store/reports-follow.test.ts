/** While something is dragged, map and model come first and the report after them: which state is shown, and when it says so. */

import { afterEach, describe, expect, it, vi } from 'vitest';
import type { EditAnswer, Preview, Spoken } from '../../src/model/engine.ts';
import type { CellMap, MapKind } from '../../src/model/maps.ts';
import type { Report } from '../../src/model/report.ts';
import { createSceneStore } from '../../src/store/scene-store.ts';
import { createViewStore } from '../../src/store/view-store.ts';
import { handEngine, ISSUE, opened, refusal } from './fake-engine.ts';

const map = (kind: MapKind, stage: number | null = null) => ({ kind, stage }) as CellMap;

function preview(name: string, brought: CellMap | null = null): EditAnswer {
  return { ok: true, preview: { scene: { name }, map: brought, history: { undo: null, redo: null } } as unknown as Preview, warnings: [] };
}

const spoken = (name: string) => ({ report: { scene: name } as Report, warnings: [ISSUE] }) as unknown as Spoken;

async function withScene(shown: MapKind | null = null) {
  const view = createViewStore();
  const hand = handEngine();
  const scene = createSceneStore(hand.engine, view);
  void scene.getState().openText('a.scene.json', 'text of a');
  await hand.calls[0].answer(opened('A'));
  view.getState().showMap(shown);
  if (shown !== null) await hand.named('map')[0].answer(map(shown));
  hand.calls.length = 0;
  const now = () => scene.getState();
  return {
    hand,
    now,
    view,
    drag: (thicknessMm: number) => now().setThickness('lawn', 2, thicknessMm, 1),
    sizes: () => hand.named('setThickness').map(({ args }) => args[2]),
    /** Scene and report shown, and what is said to be of a state before. */
    shown: () => [now().snapshot?.scene.name, now().snapshot?.report?.scene, now().behind],
  };
}

afterEach(() => vi.restoreAllMocks());

describe('a drag', () => {
  it('shows map and model at once, says that the tables are of the state before, and then brings them', async () => {
    const { hand, now, drag, shown } = await withScene('load');
    drag(210);
    const brought = map('load');
    await hand.named('setThickness')[0].answer(preview('210', brought));
    expect([...shown(), now().cellMap === brought]).toEqual(['210', undefined, 'tables', true]);
    expect(hand.named('finish').map(({ args }) => args)).toEqual([[true]]);
    await hand.named('finish')[0].answer(spoken('210'));
    expect([...shown(), now().warnings]).toEqual(['210', '210', null, [ISSUE]]);
    // It came with the edit.
    expect(hand.named('map')).toHaveLength(0);
  });

  it('brings a map that rests on the report with the report, and says so until then', async () => {
    const { hand, now, drag, shown } = await withScene('flow');
    drag(210);
    await hand.named('setThickness')[0].answer(preview('210'));
    expect(shown()[2]).toBe('tables and map');
    await hand.named('finish')[0].answer(spoken('210'));
    const brought = map('flow');
    await hand.named('map')[0].answer(brought);
    expect([shown()[2], now().cellMap === brought]).toEqual([null, true]);
  });

  it('does not take a map for another that was chosen meanwhile', async () => {
    const { hand, now, view, drag } = await withScene('load');
    drag(210);
    view.getState().showMap('depth');
    await hand.named('setThickness')[0].answer(preview('210', map('load')));
    await hand.named('map')[0].answer(map('depth'));
    expect(now().cellMap?.kind).toBe('depth');
  });

  it('goes on while the report is made: the next state does not wait, and only the last has a report', async () => {
    const { hand, drag, sizes, shown } = await withScene();
    drag(210);
    await hand.named('setThickness')[0].answer(preview('210'));
    drag(220);
    expect(sizes()).toEqual([210, 220]);
    // Overtaken.
    await hand.named('finish')[0].answer(null);
    expect(shown()).toEqual(['210', undefined, 'tables']);
    await hand.named('setThickness')[1].answer(preview('220'));
    await hand.named('finish')[1].answer(spoken('220'));
    expect(shown()).toEqual(['220', '220', null]);
  });

  it('asks for no report while states still wait', async () => {
    const { hand, drag, sizes } = await withScene();
    for (const thicknessMm of [210, 220, 230]) drag(thicknessMm);
    await hand.named('setThickness')[0].answer(preview('210'));
    expect([sizes(), hand.named('finish').length]).toEqual([[210, 230], 0]);
  });

  it('that never rests has its tables now and then, and the next state waits for those', async () => {
    const { hand, drag, sizes, shown } = await withScene();
    const clock = vi.spyOn(performance, 'now').mockReturnValue(0);
    drag(210);
    drag(220);
    await hand.named('setThickness')[0].answer(preview('210'));
    drag(230);
    clock.mockReturnValue(1000);
    await hand.named('setThickness')[1].answer(preview('220'));
    drag(240);
    expect([sizes(), hand.named('finish').map(({ args }) => args)]).toEqual([[210, 220], [[false]]]);
    await hand.named('finish')[0].answer(spoken('220'));
    expect([sizes(), shown()]).toEqual([
      [210, 220, 240],
      ['220', '220', null],
    ]);
  });

  it('refused at its end still has the report of the state before that', async () => {
    const { hand, drag, shown } = await withScene();
    drag(210);
    await hand.named('setThickness')[0].answer(preview('210'));
    drag(-1);
    await hand.named('finish')[0].answer(null);
    await hand.named('setThickness')[1].answer(refusal);
    await hand.named('finish')[1].answer(spoken('210'));
    expect(shown()).toEqual(['210', '210', null]);
  });

  it('whose report cannot be made goes on saying that the tables are older', async () => {
    const { hand, now, drag, shown } = await withScene();
    drag(210);
    await hand.named('setThickness')[0].answer(preview('210'));
    await hand.named('finish')[0].fail(new Error('no report'));
    expect([shown()[2], now().refused?.issues[0].code]).toEqual(['tables', 'PROGRAM_FAULT']);
  });
});
