/** Keeps the model in step with both stores: what changed there, and only that, is changed on the GPU. */

import { sectionFaces } from '../mesh/section.ts';
import type { Snapshot } from '../model/engine.ts';
import type { CellMap } from '../model/maps.ts';
import type { SceneState, SceneStore } from '../store/scene-store.ts';
import type { Cut, ViewState, ViewStore } from '../store/view-store.ts';
import { cellCentre, markLines } from './cell-mark.ts';
import { cutPlane } from './cut-plane.ts';
import type { DeckModel } from './deck-model.ts';
import { fallArrows } from './fall-arrows.ts';
import { plantedZones } from './life-placing.ts';
import { type PartState, partStates } from './part-states.ts';
import { topAt } from './top-at.ts';

const ARRIVAL_MS = 900;
/** When stages follow one another by themselves. */
const QUICK_ARRIVAL_MS = 240;
/** Before the first stage. */
const BARE = -1;
/** Ticks of the mark are at least this long on the screen [CSS px]. */
const TICK_PX = 9;

/** What was last put into the model. */
interface Shown {
  snapshot: Snapshot | null;
  look: (Pick<ViewState, 'stage' | 'hiddenKinds' | 'hiddenZones' | 'onlyKind' | 'onlyZone'> & { readonly bare: boolean }) | null;
  cut: Cut | null;
  cellMap: CellMap | null;
  mapOn: ViewState['mapOn'] | null;
  mark: string;
}

export class DeckFollower {
  private readonly model: DeckModel;
  private readonly shown: Shown = { snapshot: null, look: null, cut: null, cellMap: null, mapOn: null, mark: '' };
  private arrivalStartMs: number | null = null;
  private arrivalMs = ARRIVAL_MS;
  states: readonly PartState[] = [];

  constructor(model: DeckModel) {
    this.model = model;
  }

  /** Takes over what changed in the stores. */
  follow(scene: SceneState, view: ViewState): void {
    const { snapshot } = scene;
    if (snapshot === null) return;
    // A report that follows an edit comes with the picture that is there already.
    const fresh = snapshot.picture !== this.shown.snapshot?.picture;
    if (fresh) {
      this.model.setPicture(snapshot.picture);
      this.model.setGreen(plantedZones(snapshot.scene));
      this.model.setGrid(snapshot.grid, snapshot.bayAt);
      this.shown.mark = '';
    }
    if (fresh || this.looksElse(view)) this.setLook(snapshot, view);
    if (fresh || this.shown.cellMap !== scene.cellMap || this.shown.mapOn !== view.mapOn) this.setMap(snapshot, scene, view);
    if (fresh || this.shown.cut !== view.cut) this.setCut(snapshot, view.cut);
    this.model.uniforms.explode.value = view.explode;
    this.model.setPickedBay(view.bay === null ? -1 : snapshot.report.bays.findIndex((bay) => bay.id === view.bay));
    this.shown.snapshot = snapshot;
  }

  private looksElse(view: ViewState): boolean {
    const { look } = this.shown;
    return (
      look === null ||
      look.stage !== view.stage ||
      look.bare !== isBare(view) ||
      look.hiddenKinds !== view.hiddenKinds ||
      look.hiddenZones !== view.hiddenZones ||
      look.onlyKind !== view.onlyKind ||
      look.onlyZone !== view.onlyZone
    );
  }

  private setLook(snapshot: Snapshot, view: ViewState): void {
    const before = this.shown.look?.stage ?? null;
    this.states = partStates(snapshot.picture.parts, isBare(view) ? { ...view, stage: BARE } : view);
    this.arrivalMs = view.walk?.changing === true ? QUICK_ARRIVAL_MS : ARRIVAL_MS;
    this.model.setStates(snapshot.picture, this.states);
    if (view.stage !== (this.shown.look?.stage ?? null)) this.startArrival(before, view);
    this.shown.look = { ...view, bare: isBare(view) };
    this.shown.mark = '';
  }

  /** Going back in time, or with still motion, what the stage brings is there at once. */
  private startArrival(before: number | null, view: ViewState): void {
    const onwards = view.stage !== null && (before === null || before < view.stage);
    const moves = onwards && !view.stillMotion && this.states.some((state) => state.arriving > 0);
    this.arrivalStartMs = moves ? performance.now() : null;
    this.model.uniforms.arrival.value = moves ? 0 : 1;
  }

  private setMap(snapshot: Snapshot, scene: SceneState, view: ViewState): void {
    const map = scene.cellMap;
    this.model.setMap(map, view.mapOn, snapshot.grid);
    // On the slab they lie under whatever hides it, as the map does.
    const picture =
      view.mapOn === 'slab'
        ? { ...snapshot.picture, prisms: snapshot.picture.prisms.filter((prism) => prism.owner === '') }
        : snapshot.picture;
    this.model.setArrows(map?.directionDeg ? fallArrows(map, snapshot.grid, picture, this.states) : null);
    this.shown.cellMap = scene.cellMap;
    this.shown.mapOn = view.mapOn;
  }

  private setCut(snapshot: Snapshot, cut: Cut): void {
    this.shown.cut = cut;
    if (!cut.on) {
      this.model.setCut(null, null);
      return;
    }
    const { picture } = snapshot;
    const plane = cutPlane(picture.boundsM, cut);
    // The section's plane has what stays on the left of its direction: ahead of the viewer.
    const faces = sectionFaces([...picture.prisms, ...picture.wallPrisms], {
      x: plane.x,
      y: plane.y,
      dirX: plane.lookY,
      dirY: -plane.lookX,
    });
    this.model.setCut(plane, faces);
  }

  /**
   * Goes on with what moves by itself.
   * @param nowMs - time of the frame
   * @returns whether there is more to come
   */
  step(nowMs: number): boolean {
    if (this.arrivalStartMs === null) return false;
    const share = Math.min(1, Math.max(0, (nowMs - this.arrivalStartMs) / this.arrivalMs));
    this.model.uniforms.arrival.value = share;
    if (share === 1) this.arrivalStartMs = null;
    return share < 1;
  }

  /** Puts the mark on the picked cell, in a size that can be seen from where the camera is. */
  markCell(cell: number | null, pixelM: number): void {
    const { snapshot } = this.shown;
    if (snapshot === null || cell === null) {
      if (this.shown.mark !== 'none') this.model.setMark(null);
      this.shown.mark = 'none';
      return;
    }
    const { grid, picture } = snapshot;
    // In steps, so that the mark is not built anew in every frame of a zoom.
    const size = Math.ceil(Math.log2(pixelM * TICK_PX) * 4);
    const wanted = `${cell} ${size}`;
    if (wanted === this.shown.mark) return;
    const at = cellCentre(grid, cell);
    const top = topAt(picture, this.states, at[0], at[1]);
    this.model.setMark(top && markLines(at, grid.cellM / 2, top, Math.max(0.6 * grid.cellM, 2 ** (size / 4))));
    this.shown.mark = wanted;
  }

  get snapshot(): Snapshot | null {
    return this.shown.snapshot;
  }
}

function isBare(view: ViewState): boolean {
  return view.walk?.bare === true;
}

/** Calls back on every change in either store. */
export function onEitherChange(scene: SceneStore, view: ViewStore, changed: () => void): () => void {
  const stops = [scene.subscribe(changed), view.subscribe(changed)];
  return () => {
    for (const stop of stops) stop();
  };
}
