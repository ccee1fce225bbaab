/** Saved views: coordinates of the file by hand, order, and what happens to views that were only made. */

import { describe, expect, it } from 'vitest';
import { changeView, keepView, moveView, nextViewId, removeView, viewFrom } from '../../src/edit/views.ts';
import type { SceneView } from '../../src/model/scene-file.ts';
import { viewShow } from '../../src/model/view-show.ts';
import { sceneOf } from '../helpers/scene-builder.ts';

const view = (id: string, more: Partial<SceneView> = {}): SceneView => ({ id, name: id, eye: [0, 0, 9], target: [0, 0, 0], ...more });
const SCENE = sceneOf({ views: [view('V1', { says: 'First.', show: { stage: 'S1' } }), view('V2'), view('V7')] });
const ids = ({ views }: { readonly views?: readonly SceneView[] | null }) => views?.map(({ id }) => id);

describe('a view', () => {
  const STAND = { eye: [1.234, -2, 3.456], target: [0.5, 0.25, -0.004] } as const;
  const DATUM = { originM: [392_000, 5_812_000], datumM: 34.5 } as const;

  it('is kept in coordinates of the file, to the centimetre, without what is as usual', () => {
    expect(viewFrom(STAND, viewShow(), DATUM)).toEqual({ eye: [392001.23, 5811998, 37.96], target: [392000.5, 5812000.25, 34.5] });
  });

  it('is kept with what is shown, as it is read again', () => {
    const show = { stage: 'S2', explode: 0.333, map: 'load', cut: 0.12345, lift: true, plain: true } as const;
    const kept = viewFrom(STAND, show, DATUM);
    expect(kept.show).toEqual({ stage: 'S2', explode: 0.33, map: 'load', cut: 0.123, lift: true, plain: true });
    expect(viewShow(kept.show)).toEqual({ ...show, explode: 0.33, cut: 0.123 });
  });
});

describe('the list', () => {
  it('takes a view in, moves it, takes it out', () => {
    expect(nextViewId(SCENE.views ?? [])).toBe('V8');
    expect(ids(keepView(SCENE, view('V8'), 1))).toEqual(['V1', 'V8', 'V2', 'V7']);
    expect(ids(moveView(SCENE, 'V1', 2))).toEqual(['V2', 'V7', 'V1']);
    expect(ids(removeView(SCENE, 'V2'))).toEqual(['V1', 'V7']);
    expect(removeView(sceneOf({ views: [view('V1')] }), 'V1')).toEqual({ views: null });
  });

  it('keeps views that were only made with the first of its own, and never again', () => {
    const made = [view('overview'), view('lane')];
    expect(ids(keepView(sceneOf(), view('V1'), 1, made))).toEqual(['overview', 'V1', 'lane']);
    expect(ids(keepView(SCENE, view('V8'), 3, made))).toEqual(['V1', 'V2', 'V7', 'V8']);
  });

  it('changes name, caption or the way it is seen, each by itself', () => {
    const first = (to: Parameters<typeof changeView>[2]) => changeView(SCENE, 'V1', to).views?.[0];
    expect(first({ name: 'New' })).toEqual({ ...SCENE.views?.[0], name: 'New' });
    expect(first({ says: '' })).toEqual({ id: 'V1', name: 'V1', eye: [0, 0, 9], target: [0, 0, 0], show: { stage: 'S1' } });
    // Seen anew in the finished garden: the stage of before is gone.
    expect(first({ eye: [1, 1, 1], target: [0, 0, 0] })).toEqual({
      id: 'V1',
      name: 'V1',
      says: 'First.',
      eye: [1, 1, 1],
      target: [0, 0, 0],
    });
    expect(changeView(SCENE, 'V1', { name: 'New' }).views?.[1]).toBe(SCENE.views?.[1]);
  });
});
