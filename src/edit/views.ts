/** Saved views: kept, renamed, put in another order, taken out. */

import type { ScenePatch } from '../model/history.ts';
import type { Point3M, SceneFile, SceneView } from '../model/scene-file.ts';
import type { ViewStand } from '../model/view-picture.ts';
import type { ViewShow } from '../model/view-show.ts';
import { nextId } from './next-id.ts';

export const nextViewId = (views: readonly SceneView[]): string =>
  nextId(
    'V',
    views.map(({ id }) => id),
  );

/** Where local coordinates begin, and the level that is height 0 in them [m]. */
export interface LocalDatum {
  readonly originM: readonly [number, number];
  readonly datumM: number;
}

/**
 * Where one stands and what is shown, as a scene keeps it: to the centimetre, in coordinates of the file; what is as usual is not named.
 * @param stand - eye and target, local [m]
 * @param show - what is shown besides
 * @param datum - of the local coordinates
 */
export function viewFrom(stand: ViewStand, show: ViewShow, { originM, datumM }: LocalDatum): Pick<SceneView, 'eye' | 'target' | 'show'> {
  const cm = (valueM: number) => Math.round(valueM * 100) / 100;
  const inFile = ([x, y, z]: Point3M): Point3M => [cm(x + originM[0]), cm(y + originM[1]), cm(z + datumM)];
  const { stage, explode, map, cut, lift, plain } = show;
  const named = {
    ...(stage === null ? {} : { stage }),
    ...(explode > 0 ? { explode: cm(explode) } : {}),
    ...(map === null ? {} : { map }),
    ...(cut === null ? {} : { cut: Math.round(cut * 1000) / 1000 }),
    ...(lift ? { lift } : {}),
    ...(plain ? { plain } : {}),
  };
  const place = { eye: inFile(stand.eye), target: inFile(stand.target) };
  return Object.keys(named).length > 0 ? { ...place, show: named } : place;
}

/**
 * Adds a view.
 * @param scene - scene
 * @param view - all of it
 * @param at - its place in the order, from 0
 * @param made - views shown so far where the scene has none: they are kept too, or they would be gone with the first of its own
 */
export function keepView({ views = [] }: SceneFile, view: SceneView, at: number, made: readonly SceneView[] = []): ScenePatch {
  return { views: (views.length > 0 ? views : made).toSpliced(at, 0, view) };
}

/**
 * Moves a view to another place in the order.
 * @param scene - scene
 * @param id - view
 * @param to - its new place, from 0
 */
export function moveView({ views = [] }: SceneFile, id: string, to: number): ScenePatch {
  const moved = views.find((view) => view.id === id);
  return moved ? { views: views.filter((view) => view !== moved).toSpliced(to, 0, moved) } : {};
}

/**
 * Takes a view out. After the last one, the walkthrough makes its own again.
 * @param scene - scene
 * @param id - view
 */
export function removeView({ views = [] }: SceneFile, id: string): ScenePatch {
  const left = views.filter((view) => view.id !== id);
  return { views: left.length > 0 ? left : null };
}

/** New values of a view; an empty caption takes it out. */
export type ViewChange = Partial<Omit<SceneView, 'id'>>;

/**
 * Changes a view.
 * @param scene - scene
 * @param id - view
 * @param to - name, caption, or where one stands with what is shown (`show` absent: nothing besides the usual)
 */
export function changeView({ views = [] }: SceneFile, id: string, to: ViewChange): ScenePatch {
  const changed = (view: SceneView): SceneView => {
    const { show: before, says: said, ...rest } = { ...view, ...to };
    const show = 'eye' in to ? to.show : before;
    return { ...rest, ...(said ? { says: said } : {}), ...(show ? { show } : {}) };
  };
  return { views: views.map((view) => (view.id === id ? changed(view) : view)) };
}
