/** The open scene in step with an engine that answers when it likes. */

import { describe, expect, it } from 'vitest';
import type { SceneEdit } from '../../src/model/history.ts';
import type { CellMap, CoreLog } from '../../src/model/maps.ts';
import { createSceneStore } from '../../src/store/scene-store.ts';
import { createViewStore } from '../../src/store/view-store.ts';
import { handEngine, ISSUE, opened, refusal } from './fake-engine.ts';

function setUp() {
  const view = createViewStore();
  const hand = handEngine();
  const scene = createSceneStore(hand.engine, view);
  const name = () => scene.getState().snapshot?.scene.name;
  return { view, hand, now: () => scene.getState(), act: scene.getState(), look: view.getState(), name };
}

/** With scene "A" open, nothing picked, no map. */
async function withScene() {
  const made = setUp();
  void made.act.openText('a.scene.json', 'text of a');
  await made.hand.calls[0].answer(opened('A'));
  made.hand.calls.length = 0;
  return made;
}

const map = (kind: string) => ({ kind }) as CellMap;
const log = (cell: number) => ({ cell }) as CoreLog;

describe('opening', () => {
  it('passes from empty over working to ready', async () => {
    const { act, hand, now, name } = setUp();
    expect(now().status).toBe('empty');
    void act.openText('a.scene.json', 'text of a');
    expect([now().status, hand.calls[0].name, hand.calls[0].args]).toEqual(['working', 'open', ['text of a']]);
    await hand.calls[0].answer(opened('A', [ISSUE]));
    expect([now().status, now().fileName, name(), now().warnings, now().refused]).toEqual(['ready', 'a.scene.json', 'A', [ISSUE], null]);
  });

  it('resets the view', async () => {
    const { act, hand, look, view } = await withScene();
    look.showStage(2);
    look.pickCell(5);
    void act.openText('b.scene.json', '');
    await hand.named('open')[0].answer(opened('B'));
    expect([view.getState().stage, view.getState().cell]).toEqual([null, null]);
  });

  it('refused keeps the scene before and says why', async () => {
    const { act, hand, now, name } = await withScene();
    void act.openText('bad.json', '{');
    await hand.calls[0].answer(refusal);
    expect([now().status, name(), now().fileName]).toEqual(['ready', 'A', 'a.scene.json']);
    expect(now().refused).toEqual({ fileName: 'bad.json', issues: [ISSUE], ofEdit: false });
    act.dismissRefusal();
    expect(now().refused).toBeNull();
  });

  it('refused with nothing open is empty again', async () => {
    const { act, hand, now } = setUp();
    void act.openText('bad.json', '{');
    await hand.calls[0].answer(refusal);
    expect([now().status, now().snapshot]).toEqual(['empty', null]);
  });
});

describe('maps and logs', () => {
  it('are asked for as the view changes', async () => {
    const { hand, look, now } = await withScene();
    look.showMap('load');
    expect(hand.named('map').map((call) => call.args)).toEqual([['load', null]]);
    await hand.named('map')[0].answer(map('load'));
    expect(now().cellMap?.kind).toBe('load');
    look.pickCell(7);
    expect(hand.named('coreLog').map((call) => call.args)).toEqual([[7, null]]);
    await hand.named('coreLog')[0].answer(log(7));
    look.showStage(1);
    expect(hand.named('map')[1].args).toEqual(['load', 1]);
    expect(hand.named('coreLog')[1].args).toEqual([7, 1]);
  });

  it('that come late are dropped', async () => {
    const { hand, look, now } = await withScene();
    look.showMap('load');
    look.showMap('depth');
    look.pickCell(1);
    look.pickCell(2);
    const [load, depth] = hand.named('map');
    const [one, two] = hand.named('coreLog');
    await depth.answer(map('depth'));
    await load.answer(map('load'));
    await two.answer(log(2));
    await one.answer(log(1));
    expect([now().cellMap?.kind, now().coreLog?.cell]).toEqual(['depth', 2]);
  });

  it('are gone when they are put away, though an answer was on its way', async () => {
    const { hand, look, now } = await withScene();
    look.showMap('load');
    look.pickCell(1);
    look.showMap(null);
    look.pickCell(null);
    await hand.named('map')[0].answer(map('load'));
    await hand.named('coreLog')[0].answer(log(1));
    expect([now().cellMap, now().coreLog]).toEqual([null, null]);
  });

  it('of the scene before do not show in the next', async () => {
    const { act, hand, look, now } = await withScene();
    look.showMap('load');
    const late = hand.named('map')[0];
    void act.openText('b', '');
    await hand.named('open')[0].answer(opened('B'));
    await late.answer(map('load'));
    expect(now().cellMap).toBeNull();
  });

  it('are not asked for without a scene', () => {
    const { hand, look } = setUp();
    look.showMap('load');
    look.pickCell(3);
    expect(hand.calls).toEqual([]);
  });
});

describe('editing a thickness', () => {
  it('brings the new snapshot, map and log', async () => {
    const { act, hand, look, name, now } = await withScene();
    look.showMap('load');
    await hand.named('map')[0].answer(map('load'));
    act.setThickness('lawn', 2, 250, 1);
    expect(hand.named('setThickness')[0].args).toEqual(['lawn', 2, 250, { gesture: 1, map: { kind: 'load', stage: null } }]);
    await hand.named('setThickness')[0].answer(opened('A with 250', [ISSUE]));
    expect([name(), now().warnings]).toEqual(['A with 250', [ISSUE]]);
    expect(hand.named('map')).toHaveLength(2);
  });

  it('runs one at a time and, of those that wait, only the latest', async () => {
    const { act, hand, name } = await withScene();
    for (const thicknessMm of [210, 220, 230, 240]) act.setThickness('lawn', 2, thicknessMm, 1);
    expect(hand.named('setThickness').map((call) => call.args[2])).toEqual([210]);
    await hand.named('setThickness')[0].answer(opened('210'));
    expect(hand.named('setThickness').map((call) => call.args[2])).toEqual([210, 240]);
    await hand.named('setThickness')[1].answer(opened('240'));
    expect(name()).toBe('240');
    act.setThickness('lawn', 2, 250, 1);
    expect(hand.named('setThickness')).toHaveLength(3);
  });

  it('refused keeps the scene and says why', async () => {
    const { act, hand, name, now } = await withScene();
    act.setThickness('lawn', 2, -1, 1);
    await hand.named('setThickness')[0].answer(refusal);
    expect([name(), now().refused]).toEqual(['A', { fileName: 'a.scene.json', issues: [ISSUE], ofEdit: true }]);
    act.setThickness('lawn', 2, 200, 1);
    expect(hand.named('setThickness')).toHaveLength(2);
  });

  it('of one layer does not swallow that of another made meanwhile', async () => {
    const { act, hand } = await withScene();
    act.setThickness('lawn', 2, 11, 1);
    act.setThickness('lawn', 2, 33, 1);
    act.setThickness('lawn', 4, 222, 1);
    for (let k = 0; k < 3; k++) await hand.named('setThickness')[k].answer(opened(`edit ${k}`));
    expect(hand.named('setThickness').map((call) => call.args.slice(1, 3))).toEqual([
      [2, 11],
      [2, 33],
      [4, 222],
    ]);
  });

  it('that still waits is not made in a scene opened meanwhile', async () => {
    const { act, hand, name } = await withScene();
    act.setThickness('lawn', 2, 210, 1);
    act.setThickness('lawn', 2, 220, 1);
    void act.openText('b.scene.json', '');
    // The worker answers in the order it was asked.
    await hand.named('setThickness')[0].answer(opened('A with 210'));
    await hand.named('open')[0].answer(opened('B'));
    expect(hand.named('setThickness').map((call) => call.args[2])).toEqual([210]);
    expect(name()).toBe('B');
  });
});

describe('undo and redo', () => {
  const EDIT: SceneEdit = { kind: 'thickness', buildUp: 'lawn', layer: 2, fromMm: 200, toMm: 250 };
  const after = opened('A with 250', [], { undo: EDIT, redo: null, changed: true });
  const back = opened('A', [], { undo: null, redo: EDIT, changed: false });

  it('say what was undone until something else is done, and whether anything is unsaved', async () => {
    const { act, hand, look, now } = await withScene();
    act.setThickness('lawn', 2, 250, act.newGesture());
    await hand.named('setThickness')[0].answer(after);
    expect([now().history.changed, now().travelled]).toEqual([true, null]);
    act.travel('undo');
    await hand.named('travel')[0].answer(back);
    expect([now().history.changed, now().travelled]).toEqual([false, { way: 'undo', edit: EDIT }]);
    look.pickCell(3);
    expect(now().travelled).toBeNull();
  });

  it('ask for nothing where there is no step', async () => {
    const { act, hand } = await withScene();
    act.travel('undo');
    act.travel('redo');
    await Promise.resolve();
    expect(hand.named('travel')).toHaveLength(0);
  });

  it('come after the edits that wait, and a later edit of the layer comes after them', async () => {
    const { act, hand } = await withScene();
    act.setThickness('lawn', 2, 210, 1);
    act.setThickness('lawn', 2, 220, 1);
    act.travel('undo');
    act.setThickness('lawn', 2, 230, 2);
    await hand.named('setThickness')[0].answer(after);
    await hand.named('setThickness')[1].answer(after);
    await hand.named('travel')[0].answer(back);
    const order = hand.calls.filter(({ name }) => name === 'setThickness' || name === 'travel').map(({ args }) => args.at(-2) ?? args[0]);
    expect(order).toEqual([210, 220, 'undo', 230]);
  });
});
