/** Vehicles that stand on their lines, in step with an engine that answers when it likes. */

import { describe, expect, it } from 'vitest';
import type { OpenAnswer, Snapshot } from '../../src/model/engine.ts';
import type { RunPose, RunView } from '../../src/model/run.ts';
import type { WheelStand } from '../../src/model/wheel-input.ts';
import { createSceneStore } from '../../src/store/scene-store.ts';
import { createViewStore } from '../../src/store/view-store.ts';
import { handEngine } from './fake-engine.ts';

/** A lorry for the garden, 40 m to go, and two loaders in stage 1, 20 and 30 m. */
const RUNS = [
  { id: 'F1', stage: null, travelM: 40 },
  { id: 'L1', stage: 1, travelM: 20 },
  { id: 'L2', stage: 1, travelM: 30 },
] as unknown as readonly RunView[];
const answerOf = (name: string): OpenAnswer => ({
  ok: true,
  snapshot: { scene: { name }, runs: RUNS } as unknown as Snapshot,
  warnings: [],
});
const pose = (run: string, frontM: number, on: WheelStand['on'] = 'wheels') => ({ run, frontM, on }) as RunPose;

async function withScene() {
  const view = createViewStore();
  const hand = handEngine();
  const scene = createSceneStore(hand.engine, view);
  void scene.getState().openText('a', 'a');
  await hand.calls[0].answer(answerOf('A'));
  hand.calls.length = 0;
  const standing = () => scene.getState().poses.map(({ run, frontM }) => `${run} ${frontM}`);
  return { hand, scene, standing, look: view.getState(), view };
}

describe('the chosen vehicle', () => {
  it('is asked for where it stands, and anew where it moves to', async () => {
    const { hand, look, standing } = await withScene();
    look.chooseRun({ id: 'F1', frontM: 5, on: 'wheels' });
    expect(hand.calls[0].args).toEqual(['F1', { frontM: 5, on: 'wheels' }]);
    await hand.calls[0].answer(pose('F1', 5));
    expect(standing()).toEqual(['F1 5']);
    look.moveRun(6);
    expect(hand.calls[1].args).toEqual(['F1', { frontM: 6, on: 'wheels' }]);
  });

  it('an answer that comes after it has moved on is dropped', async () => {
    const { hand, look, standing } = await withScene();
    look.chooseRun({ id: 'F1', frontM: 5, on: 'wheels' });
    look.moveRun(6);
    await hand.calls[1].answer(pose('F1', 6));
    await hand.calls[0].answer(pose('F1', 5));
    expect(standing()).toEqual(['F1 6']);
  });

  it('is gone when none is chosen, and when another scene opens', async () => {
    const { hand, look, scene, standing, view } = await withScene();
    look.chooseRun({ id: 'F1', frontM: 5, on: 'wheels' });
    await hand.calls[0].answer(pose('F1', 5));
    look.chooseRun(null);
    await Promise.resolve();
    await new Promise((done) => setTimeout(done));
    expect(standing()).toEqual([]);
    look.chooseRun({ id: 'F1', frontM: 5, on: 'wheels' });
    void scene.getState().openText('b', 'b');
    await hand.named('open')[0].answer(answerOf('B'));
    expect([view.getState().run, standing()]).toEqual([null, []]);
  });

  it('another wheel or layer chosen is for this vehicle alone', async () => {
    const { look, view } = await withScene();
    look.chooseRun({ id: 'F1', frontM: 5, on: 'wheels' });
    look.chooseWheel(2);
    look.chooseFoot({ materialId: 'gravel', nth: 1 });
    look.moveRun(7);
    expect([view.getState().wheel, view.getState().foot.materialId]).toEqual([2, 'gravel']);
    look.chooseRun({ id: 'L1', frontM: 0, on: 'wheels' });
    expect([view.getState().wheel, view.getState().foot]).toEqual([null, { materialId: '', nth: 0 }]);
  });

  it('is asked for again after an edit, which changes what it presses', async () => {
    const { hand, look, scene } = await withScene();
    look.chooseRun({ id: 'F1', frontM: 5, on: 'wheels' });
    await hand.calls[0].answer(pose('F1', 5));
    scene.getState().setThickness('lawn', 0, 200);
    await hand.named('setThickness')[0].answer(answerOf('A'));
    expect(hand.named('runAt').length).toBe(2);
  });
});

describe('machines of the stage shown', () => {
  it('stand halfway along their lines; one that is chosen stands where it was put', async () => {
    const { hand, look, standing } = await withScene();
    look.showStage(1);
    expect(hand.calls.map(({ args }) => args)).toEqual([
      ['L1', { frontM: 10, on: 'wheels' }],
      ['L2', { frontM: 15, on: 'wheels' }],
    ]);
    await hand.calls[0].answer(pose('L1', 10));
    await hand.calls[1].answer(pose('L2', 15));
    expect(standing()).toEqual(['L1 10', 'L2 15']);
    look.chooseRun({ id: 'L2', frontM: 3, on: 'wheels' });
    // L1 stands there already
    expect(hand.calls.slice(2).map(({ args }) => args[0])).toEqual(['L2']);
    await hand.calls[2].answer(pose('L2', 3));
    expect(standing()).toEqual(['L2 3', 'L1 10']);
  });

  it('none stands in the finished garden by itself', async () => {
    const { hand, look } = await withScene();
    look.showStage(0);
    look.showStage(null);
    expect(hand.named('runAt')).toEqual([]);
  });
});
