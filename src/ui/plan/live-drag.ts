/** While something is dragged, the scene follows where it is evaluated quickly: all that is sent is one step of undo. */

import { patched } from '../../edit/point-lists.ts';
import type { SnapIndex } from '../../edit/snap.ts';
import type { ScenePatch } from '../../model/history.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import type { Drag } from '../facts/plan-drag.ts';
import type { Stores } from '../use-stores.ts';
import { firstFault } from './shape-problem.ts';
import type { Step } from './use-plan-edits.ts';

/** Where the last evaluation took longer, the scene only follows when the drag ends [ms]. */
const QUICK_MS = 150;
/** Opening calculates everything: an edit of what was opened within this time is worth a try [ms]. */
const QUICKLY_OPENED_MS = 1500;

/** What is held, and everything as it was when it was taken hold of. */
export interface HeldDrag {
  readonly drag: Drag;
  readonly from: SceneFile;
  /** What is dragged does not catch itself where it has come to. */
  readonly index: SnapIndex;
  readonly step: Step;
  readonly live: LiveDrag;
}

export interface LiveDrag {
  readonly gesture: number;
  /** The scene follows with the next frame; shapes that cannot stand are left out. False where it only follows once the drag ends. */
  follow(patch: ScenePatch): boolean;
  /** Nothing is sent by itself any more. */
  stop(): void;
  /** The patch of the end for a scene that has followed, without anything else that was sent in between; null for any other scene. */
  last(patch: ScenePatch, scene: SceneFile): ScenePatch | null;
  /** As it was when the drag began. */
  takeBack(): void;
  /** Whether the scene is the one of the beginning or came from this drag. */
  isOwn(scene: SceneFile | undefined): boolean;
}

export function liveDrag({ scene: store, view }: Stores, from: SceneFile, step: Step): LiveDrag {
  const gesture = store.getState().newGesture();
  const sent = new Set<keyof SceneFile>();
  let own: SceneFile | undefined = from;
  let runs = false;
  let frame = 0;
  let wanted: ScenePatch = {};
  let asked = false;
  // What only an earlier patch of the gesture changed goes back to what it was.
  const whole = (patch: ScenePatch): ScenePatch => ({
    ...Object.fromEntries([...sent].map((key) => [key, from[key] ?? null])),
    ...patch,
  });
  const send = async (patch: ScenePatch) => {
    asked = true;
    let ran = false;
    const make = (scene: SceneFile): ScenePatch => {
      // An edit that still waited when the drag began came first: this drag began from another scene.
      if (scene !== own) return {};
      [ran, runs] = [true, true];
      for (const key of Object.keys(patch)) sent.add(key as keyof SceneFile);
      return whole(patch);
    };
    await store.getState().edit(make, { kind: 'parts', ...step }, gesture);
    if (!ran) return;
    runs = false;
    own = store.getState().snapshot?.scene;
  };
  const isQuick = () => {
    const { snapshot, history } = store.getState();
    return snapshot !== null && snapshot.evaluatedMs < (history.undo === null ? QUICKLY_OPENED_MS : QUICK_MS);
  };
  const onFrame = () => {
    frame = 0;
    if (isQuick() && firstFault(from, patched(from, wanted), view.getState().language) === null) void send(wanted);
  };
  const stop = () => {
    cancelAnimationFrame(frame);
    frame = 0;
  };
  return {
    gesture,
    stop,
    follow(patch) {
      wanted = patch;
      if (frame === 0) frame = requestAnimationFrame(onFrame);
      return isQuick();
    },
    last: (patch, scene) => (sent.size > 0 && scene === own ? whole(patch) : null),
    takeBack() {
      stop();
      if (asked) void send({});
    },
    isOwn: (scene) => runs || scene === own,
  };
}
