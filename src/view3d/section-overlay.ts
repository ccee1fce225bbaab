/** The line of a section on the model: the one shown, or the points taken so far. */

import { Vector4 } from 'three';
import type { Snapshot } from '../model/engine.ts';
import type { EdgeLines } from '../model/picture.ts';
import type { PointM } from '../model/scene-file.ts';
import type { SceneState } from '../store/scene-store.ts';
import type { ViewState } from '../store/view-store.ts';
import { rgbOf } from './cell-colour.ts';
import { lineMaterial } from './deck-materials.ts';
import type { DeckModel } from './deck-model.ts';
import { Drawn } from './drawn.ts';
import type { PartState } from './part-states.ts';
import { draped } from './site-lines.ts';
import { surfaceOf } from './top-index.ts';

const LINE = '#93451F';
/** Arms of the cross on a point, as a share of the longer side of the deck. */
const CROSS_SHARE = 0.012;

export class SectionOverlay {
  private readonly model: DeckModel;
  private readonly lines: Drawn;
  private shown: { snapshot: Snapshot; states: readonly PartState[]; points: readonly PointM[] | null } | null = null;

  constructor(model: DeckModel) {
    this.model = model;
    const [red, green, blue] = rgbOf(LINE);
    this.lines = new Drawn(
      lineMaterial(model.uniforms, { widthPx: 3, tone: new Vector4(red / 255, green / 255, blue / 255, 1), lying: true }),
      null,
      13,
    );
    this.lines.setVisible(false);
    model.root.add(this.lines.mesh);
  }

  /** Takes over what changed in the stores. */
  follow({ snapshot }: SceneState, { section, sectionPoints }: ViewState, states: readonly PartState[]): void {
    if (snapshot === null) return;
    const points = sectionPoints ?? section?.line ?? null;
    const { shown } = this;
    if (shown?.snapshot === snapshot && shown.states === states && shown.points === points) return;
    this.shown = { snapshot, states, points };
    const lines = points === null || points.length === 0 ? null : sectionLines(snapshot, states, points);
    const drawn = lines !== null && lines.parts.length > 0;
    this.lines.setVisible(drawn);
    if (drawn) this.lines.setLines(lines);
  }

  dispose(): void {
    this.model.root.remove(this.lines.mesh);
    this.lines.dispose();
  }
}

function sectionLines({ picture, originM }: Snapshot, states: readonly PartState[], points: readonly PointM[]): EdgeLines {
  const { min, max } = picture.boundsM;
  const armM = CROSS_SHARE * Math.max(max[0] - min[0], max[1] - min[1]);
  const local = points.map(([x, y]) => [x - originM[0], y - originM[1]] as const);
  const crosses = local.flatMap(([x, y]) => [
    [x - armM, y - armM, x + armM, y + armM] as const,
    [x - armM, y + armM, x + armM, y - armM] as const,
  ]);
  const legs = local.slice(1).map((to, i) => [...(local[i] as readonly [number, number]), ...to] as const);
  return draped([...legs, ...crosses], surfaceOf(picture, states));
}
