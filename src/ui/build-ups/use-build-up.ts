/** Edits of one build-up: each is checked like a file and one step of undo; what is refused is told in place. */

import { type BuildUpChange, changeBuildUp, changeLayers } from '../../edit/build-ups.ts';
import { type LayerStep, type Layers, moveLayer, stepLayer } from '../../edit/build-ups-layers.ts';
import { renamed } from '../../edit/references.ts';
import type { BuildUpView } from '../../model/engine.ts';
import type { EditAct } from '../../model/history.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import { type Editing, useEdit } from '../edit/use-edit.ts';

export interface BuildUpEdits extends Pick<Editing, 'issues'> {
  /** Parts of the build-up besides its layers. */
  change(change: BuildUpChange): Promise<boolean>;
  rename(id: string): Promise<boolean>;
  /** Layers made from those there are; `name` is said of the step. */
  layers(make: (layers: Layers) => Layers, act: EditAct, name: string, gesture?: number): Promise<boolean>;
  /** One place up or down. */
  step(index: number, way: 'up' | 'down'): void;
  /** To the place of another layer. */
  move(index: number, place: number): void;
}

export function useBuildUp(scene: SceneFile, buildUp: BuildUpView, onLayer: (index: number) => void): BuildUpEdits {
  const { issues, run } = useEdit();
  const { id, name } = buildUp;
  const nameOf = (index: number) => buildUp.layers[index]?.name ?? '';
  const layers: BuildUpEdits['layers'] = (make, act, layerName, gesture) =>
    run((now) => changeLayers(now, id, make), { act, part: 'layer', names: [layerName] }, gesture);
  /** What is moved stays the chosen one. */
  const moved = async (index: number, make: (given: Layers) => LayerStep) => {
    const given = scene.buildups.find((one) => one.id === id)?.layers ?? [];
    const to = make(given);
    if (to.layers === given) return;
    if (await layers((now) => make(now).layers, 'move', nameOf(index))) onLayer(to.index);
  };
  return {
    issues,
    change: (change) => run((now) => changeBuildUp(now, id, change), { act: 'change', part: 'build-up', names: [name] }),
    rename: (to) => run((now) => renamed(now, 'build-up', id, to), { act: 'rename', part: 'build-up', names: [to] }),
    layers,
    step: (index, way) => void moved(index, (given) => stepLayer(given, index, way)),
    move: (index, place) => void moved(index, (given) => moveLayer(given, index, place)),
  };
}
