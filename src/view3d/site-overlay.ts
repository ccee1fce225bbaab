/** The site plan over the model while a stage is shown, and the names of a map's classes on it. */

import { Vector4 } from 'three';
import type { Snapshot } from '../model/engine.ts';
import type { CellMap, MapKind } from '../model/maps.ts';
import { ACCENT, INK, PAPER } from '../model/palette.ts';
import type { SceneAccessPoint, SceneSetUpArea } from '../model/scene-file.ts';
import type { SceneState } from '../store/scene-store.ts';
import type { ViewState } from '../store/view-store.ts';
import { rgbOf } from './cell-colour.ts';
import { classPlaces } from './class-places.ts';
import { lineMaterial } from './deck-materials.ts';
import type { DeckModel } from './deck-model.ts';
import { Drawn } from './drawn.ts';
import type { FieldLabel } from './field-labels.ts';
import { liftM } from './lift.ts';
import type { PartState } from './part-states.ts';
import { type AreaLabel, type PostHead, siteLines } from './site-lines.ts';
import { topAt } from './top-at.ts';

/** Words on a post and on an area: its id and what it is. */
export interface SiteWords {
  readonly post: (point: SceneAccessPoint) => string;
  readonly area: (area: SceneSetUpArea) => string;
  /** Of a class of a map; null for one that needs none. */
  readonly mapClass: (kind: MapKind, id: string) => string | null;
}

/** Drawn with nothing of it, instead of the index of a stage. */
const OFF = -1;
/** Edges one can fall from. */
const WARNING = '#A5371B';

export class SiteOverlay {
  private readonly model: DeckModel;
  private readonly halo: Drawn;
  private readonly band: Drawn;
  private readonly ways: Drawn;
  private readonly reach: Drawn;
  private readonly posts: Drawn;
  private readonly areas: Drawn;
  private words: SiteWords = { post: ({ id }) => id, area: ({ id }) => id, mapClass: (_, id) => id };
  private areaLabels: readonly AreaLabel[] = [];
  private heads: readonly PostHead[] = [];
  /** The same array as long as nothing changes. */
  labels: readonly FieldLabel[] = [];
  private shown: { snapshot: Snapshot; states: readonly PartState[]; stage: number | null; map: CellMap | null; explode: number } | null =
    null;

  constructor(model: DeckModel) {
    this.model = model;
    const made = (order: number, hex: string, widthPx: number, lying = true) => {
      const [red, green, blue] = rgbOf(hex);
      const tone = new Vector4(red / 255, green / 255, blue / 255, 1);
      const one = new Drawn(lineMaterial(model.uniforms, { widthPx, tone, lying }), null, order);
      one.setVisible(false);
      model.root.add(one.mesh);
      return one;
    };
    this.halo = made(8, PAPER, 5);
    this.band = made(9, WARNING, 2.2);
    this.ways = made(10, INK, 1.6);
    this.reach = made(11, ACCENT, 1.8);
    this.posts = made(12, ACCENT, 3, false);
    this.areas = made(11, ACCENT, 2.2);
  }

  setWords(words: SiteWords): void {
    this.words = words;
    this.shown = null;
  }

  /** Takes over what changed in the stores; `states` are those of the picture as it is drawn. */
  follow({ snapshot, cellMap }: SceneState, { stage, sitePlan, explode }: ViewState, states: readonly PartState[]): void {
    if (snapshot === null) return;
    const wanted = { snapshot, states, stage: sitePlan ? stage : OFF, map: namesToShow(cellMap), explode };
    const { shown } = this;
    if (
      shown?.snapshot === snapshot &&
      shown.states === states &&
      shown.stage === wanted.stage &&
      shown.map === wanted.map &&
      shown.explode === explode
    )
      return;
    const sameLines = shown?.snapshot === snapshot && shown.states === states && shown.stage === wanted.stage;
    if (!sameLines) this.draw(snapshot, states, wanted.stage);
    this.shown = wanted;
    this.labels = [...this.postLabels(snapshot, explode), ...this.classLabels(wanted)];
  }

  private draw(snapshot: Snapshot, states: readonly PartState[], stage: number | null): void {
    const lines = stage === OFF ? null : siteLines(snapshot, states, stage);
    this.heads = lines?.heads ?? [];
    this.areaLabels = lines?.areaLabels ?? [];
    for (const [drawn, of] of [
      [this.halo, lines?.band],
      [this.band, lines?.band],
      [this.ways, lines?.ways],
      [this.reach, lines?.reach],
      [this.posts, lines?.posts],
      [this.areas, lines?.areas],
    ] as const) {
      drawn.setVisible(of !== undefined && of.parts.length > 0);
      if (of !== undefined && of.parts.length > 0) drawn.setLines(of);
    }
  }

  private postLabels({ picture }: Snapshot, explode: number): FieldLabel[] {
    const lift = (part: number) => liftM(picture, part, true, explode);
    return [
      ...this.heads.map(({ point, at, part }): FieldLabel => ({ text: this.words.post(point), at, liftM: lift(part), kind: 'post' })),
      ...this.areaLabels.map(({ area, at, part }): FieldLabel => ({ text: this.words.area(area), at, liftM: lift(part), kind: 'class' })),
    ];
  }

  private classLabels({ snapshot, states, map, explode }: NonNullable<SiteOverlay['shown']>): FieldLabel[] {
    if (map === null) return [];
    return classPlaces(map, snapshot.grid).flatMap(({ index, at }): FieldLabel[] => {
      const top = topAt(snapshot.picture, states, ...at);
      if (top === null) return [];
      const text = this.words.mapClass(map.kind, map.names?.[index] ?? '');
      return text === null ? [] : [{ text, at: [...at, top.zM], liftM: liftM(snapshot.picture, top.part, true, explode), kind: 'class' }];
    });
  }

  /** Without their labels, which lie beside the canvas, posts are but sticks: none while a picture is drawn; the returned function brings them back. */
  hidePosts(): () => void {
    const { visible } = this.posts.mesh;
    this.posts.setVisible(false);
    return () => this.posts.setVisible(visible);
  }

  dispose(): void {
    for (const one of [this.halo, this.band, this.ways, this.reach, this.posts, this.areas]) {
      this.model.root.remove(one.mesh);
      one.dispose();
    }
  }
}

/** Classes of reach speak for themselves; others, like the ground of each outlet, are named on it. */
function namesToShow(map: CellMap | null): CellMap | null {
  return map?.names && map.kind !== 'reach' ? map : null;
}
