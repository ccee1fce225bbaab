/** Shows a saved view: stage, exploding, map, cut, and the way the camera stands. */

import type { Snapshot } from '../../model/engine.ts';
import type { Point3M, SceneView } from '../../model/scene-file.ts';
import { viewShow } from '../../model/view-show.ts';
import type { ViewStore } from '../../store/view-store.ts';
import { STANDING } from '../../store/walk.ts';
import { cellAt } from '../facts/place.ts';

/** Direction of a cut as seen from the eye, in quarters, clockwise from +y [°]. */
export function lookOf(eye: Point3M, target: Point3M): number {
  const bearing = (Math.atan2(target[0] - eye[0], target[1] - eye[1]) * 180) / Math.PI;
  return (Math.round(bearing / 90) * 90 + 360) % 360;
}

/** Goes to a view; `at` is its place among those of the walkthrough, which means nothing outside of it. */
export function goToView(store: ViewStore, snapshot: Snapshot, view: SceneView, at: number): void {
  const state = store.getState();
  const { originM, datumM, grid, stages } = snapshot;
  const show = viewShow(view.show);
  const local = ([x, y, z]: SceneView['eye']) => [x - originM[0], y - originM[1], z - datumM] as const;
  const [eye, target] = [local(view.eye), local(view.target)];
  const stage = stages.findIndex(({ id }) => id === show.stage);
  state.showStage(stage < 0 ? null : stage);
  state.setExplode(show.explode);
  state.showMap(show.map);
  state.setCut(show.cut === null ? { on: false } : { on: true, lookDeg: lookOf(eye, target), position: show.cut });
  state.pickCell(show.lift ? cellAt(grid, [target[0], target[1]]) : null);
  state.setWalk({ at, onFoot: false, drive: STANDING, bare: false, changing: false, lifted: show.lift, plain: show.plain });
  state.moveCamera({ eye, target });
}
