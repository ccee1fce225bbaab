/** Runs the view: brings stores, model, camera, hands and labels together, and says when a frame is worth drawing. */

import type { PerspectiveCamera, Scene, WebGLRenderer } from 'three';
import type { SceneStore } from '../store/scene-store.ts';
import type { ViewStore } from '../store/view-store.ts';
import type { BayLabels, PictureSize } from './bay-labels.ts';
import { type Camera, CameraRig } from './camera-rig.ts';
import { cellAt } from './cell-mark.ts';
import { DeckFollower, onEitherChange } from './deck-follower.ts';
import { DeckModel } from './deck-model.ts';
import { DeckPicker } from './deck-picker.ts';
import type { FieldLabel, FieldLabels } from './field-labels.ts';
import { type KeyPress, keyAction } from './key-action.ts';
import { RunOverlay } from './run-overlay.ts';
import { SectionOverlay } from './section-overlay.ts';
import { SiteOverlay } from './site-overlay.ts';
import { takePicture } from './take-picture.ts';
import { type Tap, watchLooks, watchTaps } from './tap-watch.ts';
import { WalkScene } from './walk-scene.ts';
import { WaterOverlay } from './water-overlay.ts';

/** Keys that turn the model in the walkthrough too. */
const SHOW_KEYS: ReadonlySet<string> = new Set(['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', '+', '-', '=', '_']);

/** Reach of a finger [CSS px]. */
const TOUCH_REACH_PX = 22;

/** What the page gives to draw with. */
export interface Easel extends Camera {
  readonly gl: WebGLRenderer;
  readonly sheet: Scene;
  /** Asks for one more frame. */
  readonly invalidate: () => void;
}

/** Labels beside the model and on it. */
export interface DeckLabels {
  readonly bays: BayLabels;
  readonly field: FieldLabels;
}

export class DeckDirector {
  readonly model = new DeckModel();
  readonly follower = new DeckFollower(this.model);
  readonly site = new SiteOverlay(this.model);
  readonly sections = new SectionOverlay(this.model);
  readonly runs = new RunOverlay(this.model);
  readonly water = new WaterOverlay(this.model);
  readonly walk: WalkScene;
  private readonly picker = new DeckPicker(this.model);
  private readonly scene: SceneStore;
  private readonly view: ViewStore;
  private easel: Easel | null = null;
  private rig: CameraRig | null = null;
  private labels: DeckLabels | null = null;
  private joined: { ofWater: readonly FieldLabel[]; ofSite: readonly FieldLabel[]; all: readonly FieldLabel[] } = {
    ofWater: [],
    ofSite: [],
    all: [],
  };
  private wishCount = -1;
  private width = 1;
  private height = 1;

  constructor(scene: SceneStore, view: ViewStore) {
    this.scene = scene;
    this.view = view;
    this.walk = new WalkScene(this.model, view);
  }

  /** Starts to follow; the returned function stops. */
  start(easel: Easel, labels: DeckLabels): () => void {
    const rig = new CameraRig(easel);
    this.easel = easel;
    this.rig = rig;
    this.labels = labels;
    this.wishCount = -1;
    const { domElement } = easel.gl;
    rig.setHeight(this.height);
    const stops = [
      rig.follow(domElement, easel.invalidate),
      watchTaps(domElement, (tap) => this.tap(tap)),
      watchLooks(domElement, (rightPx, downPx) => this.look(rightPx, downPx)),
      onEitherChange(this.scene, this.view, () => this.changed()),
    ];
    this.view.getState().setTakePicture((widthPx, heightPx) => takePicture(this, easel, widthPx, heightPx));
    this.view.getState().setStand(() => rig.seen());
    this.changed();
    return () => {
      this.view.getState().setTakePicture(null);
      this.view.getState().setStand(null);
      for (const stop of stops) stop();
      this.easel = null;
      this.rig = null;
    };
  }

  /** Words have changed: what shows them is made anew. */
  reword(): void {
    if (this.easel !== null) this.changed();
  }

  private changed(): void {
    const scene = this.scene.getState();
    const view = this.view.getState();
    this.follower.follow(scene, view);
    this.site.follow(scene, view, this.follower.states);
    this.sections.follow(scene, view, this.follower.states);
    this.runs.follow(scene, view, this.follower.states);
    this.water.follow(scene, view);
    this.walk.roomOf = scene.snapshot;
    this.rig?.setField(this.walk.fieldDeg());
    this.walk.follow(scene, view, this.follower.states, this.walkEasel());
    if (scene.snapshot !== null && this.rig !== null) {
      this.rig.setModel(scene.snapshot.picture, view.explode);
      if (view.camera.count !== this.wishCount) {
        const first = this.wishCount < 0;
        this.rig.go(view.camera.to, !first && !view.stillMotion);
        this.wishCount = view.camera.count;
      }
    }
    this.easel?.invalidate();
  }

  resize(width: number, height: number): void {
    this.width = width;
    this.height = height;
    this.rig?.setHeight(height);
    this.easel?.invalidate();
  }

  /** A key pressed while the view has the focus; true where it did something. */
  key(press: KeyPress): boolean {
    const action = keyAction(press);
    const { walk } = this.view.getState();
    // In the walkthrough other keys step through the views, and on foot all of them go.
    if (action === null || walk?.onFoot === true || (walk !== null && !SHOW_KEYS.has(press.key))) return false;
    const flies = !this.view.getState().stillMotion;
    if (action.kind === 'orbit') this.rig?.orbit(action.azimuthDeg, action.tiltDeg, flies);
    if (action.kind === 'drag') this.rig?.drag(action.rightPx, action.downPx, flies);
    if (action.kind === 'zoom') this.rig?.zoom(action.factor, flies);
    if (action.kind === 'go') this.view.getState().moveCamera(action.to);
    if (action.kind === 'drop') {
      this.view.getState().pickCell(null);
      this.view.getState().pickBay(null);
    }
    this.easel?.invalidate();
    return true;
  }

  private tap({ x, y, touch }: Tap): void {
    const { easel } = this;
    const { snapshot } = this.follower;
    if (easel === null || snapshot === null) return;
    const at = { x, y, width: this.width, height: this.height };
    const place = this.picker.placeAt(easel.gl, easel.camera, at, touch ? TOUCH_REACH_PX : 0);
    this.rig?.tapped();
    if (place === null) return;
    const cell = cellAt(snapshot.grid, place);
    if (cell === null) return;
    const { walk, stillMotion, sectionPoints, drawSection } = this.view.getState();
    if (sectionPoints !== null) {
      drawSection([...sectionPoints, onFile(place, snapshot.originM)]);
      return;
    }
    if (walk?.onFoot === true) {
      this.walk.foot.goTo(place, !stillMotion);
      easel.invalidate();
      return;
    }
    this.view.getState().pickCell(cell);
    this.view.getState().setWalk({ lifted: true });
  }

  /** A drag on foot. */
  private look(rightPx: number, downPx: number): void {
    if (this.walk.foot.foot === null) return;
    this.walk.foot.look(rightPx, downPx);
    this.easel?.invalidate();
  }

  private walkEasel() {
    const { easel, rig } = this;
    return easel === null || rig === null ? null : { gl: easel.gl, camera: easel.camera, rig };
  }

  /**
   * Sets everything for the frame about to be drawn.
   * @param nowMs - time of the frame
   */
  frame(nowMs: number): void {
    const { easel, rig } = this;
    if (easel === null || rig === null) return;
    // A canvas has whole pixels, rounded down. Where its size is set, the renderer rounds what it draws on to the nearest,
    // and a row would be cut off; where a target is set, it rounds down.
    easel.gl.setRenderTarget(null);
    const arrives = this.follower.step(nowMs);
    const rises = this.water.step(nowMs);
    if (this.walk.foot.foot === null) rig.settleFrame();
    const walks = this.walk.frame(nowMs, { gl: easel.gl, camera: easel.camera, rig }, this.size);
    const { uniforms } = this.model;
    uniforms.pixelPerDepth.value = (2 * Math.tan((easel.camera.fov * Math.PI) / 360)) / this.height;
    uniforms.targetPixelM.value = rig.pixelM();
    uniforms.dotsPerPixel.value = easel.gl.getPixelRatio();
    uniforms.pictureSize.value.set(this.width, this.height);
    const view = this.view.getState();
    this.follower.markCell(view.walk === null ? view.cell : null, rig.pixelM());
    const { snapshot, states } = this.follower;
    if (snapshot !== null && this.labels !== null) {
      this.labels.bays.update({ snapshot, states }, view, easel.camera, this.size);
      this.placeFieldLabels(this.labels.field, easel.camera);
    }
    if (arrives || rises || walks) easel.invalidate();
  }

  /** Water first: where two labels would cover each other, the first stays. */
  private placeFieldLabels(labels: FieldLabels, camera: PerspectiveCamera): void {
    const [ofWater, ofSite] = [this.water.labels, this.site.labels];
    if (this.joined.ofWater !== ofWater || this.joined.ofSite !== ofSite) {
      this.joined = { ofWater, ofSite, all: [...ofWater, ...ofSite] };
    }
    labels.setLabels(this.joined.all);
    labels.update(camera, this.size);
  }

  get size(): PictureSize {
    return { width: this.width, height: this.height };
  }

  dispose(): void {
    this.site.dispose();
    this.sections.dispose();
    this.runs.dispose();
    this.water.dispose();
    this.walk.dispose();
    this.model.dispose();
    this.picker.dispose();
  }
}

/** A place on the model in coordinates of the file, to the centimetre [m]. */
function onFile([x, y]: readonly [number, number], [originX, originY]: readonly [number, number]): readonly [number, number] {
  return [Math.round((x + originX) * 100) / 100, Math.round((y + originY) * 100) / 100];
}
