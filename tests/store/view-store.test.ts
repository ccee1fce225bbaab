/** How the user looks at the scene: every action of the view store. */

import { describe, expect, it } from 'vitest';
import { createViewStore } from '../../src/store/view-store.ts';

const start = () => {
  const store = createViewStore();
  return { now: () => store.getState(), act: store.getState() };
};

describe('stages', () => {
  it('begin with the finished garden', () => {
    expect(start().now().stage).toBeNull();
  });

  it('step back from the finished garden to the last, and on from the last to the garden', () => {
    const { now, act } = start();
    const shown = [-1, -1, -1, -1, 1, 1, 1, 1].map((step) => {
      act.stepStage(step, 3);
      return now().stage;
    });
    expect(shown).toEqual([2, 1, 0, 0, 1, 2, null, null]);
  });

  it('of a scene without any stay at the finished garden', () => {
    const { now, act } = start();
    act.stepStage(-1, 0);
    expect(now().stage).toBeNull();
  });

  it('are chosen and played', () => {
    const { now, act } = start();
    act.showStage(4);
    act.setPlaying(true);
    expect([now().stage, now().playing]).toEqual([4, true]);
  });
});

describe('looking', () => {
  it.each([
    [0.3, 0.3],
    [-1, 0],
    [7, 1],
  ])('explode %f is held to 0 … 1: %f', (given, kept) => {
    const { now, act } = start();
    act.setExplode(given);
    expect(now().explode).toBe(kept);
  });

  it('maps, on top or on the slab', () => {
    const { now, act } = start();
    act.showMap('depth');
    act.setMapOn('slab');
    expect([now().map, now().mapOn]).toEqual(['depth', 'slab']);
    act.showMap(null);
    expect(now().map).toBeNull();
  });

  it('a cut changes one thing at a time', () => {
    const { now, act } = start();
    act.setCut({ on: true });
    act.setCut({ position: 0.2 });
    expect(now().cut).toEqual({ on: true, lookDeg: 0, position: 0.2 });
  });

  it('hidden kinds and zones come and go, in new sets each time', () => {
    const { now, act } = start();
    const before = now().hiddenKinds;
    act.toggleKind('substrate');
    act.toggleKind('filter');
    act.toggleZone('Z1');
    expect([[...now().hiddenKinds], [...now().hiddenZones]]).toEqual([['substrate', 'filter'], ['Z1']]);
    act.toggleKind('substrate');
    expect([...now().hiddenKinds]).toEqual(['filter']);
    expect(before.size).toBe(0);
    act.isolateKind('filter');
    act.isolateZone('Z2');
    expect([now().onlyKind, now().onlyZone]).toEqual(['filter', 'Z2']);
    act.showAll();
    expect([now().hiddenKinds.size, now().hiddenZones.size, now().onlyKind, now().onlyZone]).toEqual([0, 0, null, null]);
  });

  it('cells and bays are picked', () => {
    const { now, act } = start();
    act.pickCell(12);
    act.pickBay('A1');
    expect([now().cell, now().bay]).toEqual([12, 'A1']);
  });

  it('the same wish to the camera counts twice', () => {
    const { now, act } = start();
    act.moveCamera('plan');
    const first = now().camera;
    act.moveCamera('plan');
    expect(now().camera).toEqual({ count: first.count + 1, to: 'plan' });
  });
});

it('reset brings the start back, keeps canvas and motion, and sends the camera home', () => {
  const { now, act } = start();
  const first = { ...now() };
  act.showStage(2);
  act.setPlaying(true);
  act.setExplode(0.5);
  act.showMap('load');
  act.setMapOn('slab');
  act.toggleKind('slab');
  act.toggleZone('Z');
  act.isolateKind('slab');
  act.isolateZone('Z');
  act.setCut({ on: true, position: 0.1, lookDeg: 90 });
  act.pickCell(3);
  act.pickBay('A');
  act.setStillMotion(true);
  act.setCanvas('ready');
  act.reset();
  expect({ ...now() }).toEqual({ ...first, stillMotion: true, canvas: 'ready', camera: { count: first.camera.count + 1, to: 'home' } });
});
