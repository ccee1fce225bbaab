/** Runs the view: brings stores, model, camera, hands and labels together, and says when a frame is worth drawing. */

import type { PerspectiveCamera, Scene, WebGLRenderer } from 'three';
import type { SceneStore } from '../store/scene-store.ts';
import type { ViewStore } from '../store/view-store.ts';
import type { BayLabels, PictureSize } from './bay-labels.ts';
import { FIELD_OF_VIEW_DEG } from './camera-fit.ts';
import { CameraRig } from './camera-rig.ts';
import { cellAt } from './cell-mark.ts';
import { DeckFollower, onEitherChange } from './deck-follower.ts';
import { DeckModel } from './deck-model.ts';
import { DeckPicker } from './deck-picker.ts';
import { type KeyPress, keyAction } from './key-action.ts';
import { listenToPointers } from './pointer-input.ts';

/** Reach of a finger [CSS px]. */
const TOUCH_REACH_PX = 22;

/** What the page gives to draw with. */
export interface Easel {
  readonly gl: WebGLRenderer;
  readonly camera: PerspectiveCamera;
  readonly sheet: Scene;
  /** Asks for one more frame. */
  readonly invalidate: () => void;
}

export class DeckDirector {
  readonly model = new DeckModel();
  readonly rig = new CameraRig();
  readonly follower = new DeckFollower(this.model);
  private readonly picker = new DeckPicker(this.model);
  private readonly scene: SceneStore;
  private readonly view: ViewStore;
  private easel: Easel | null = null;
  private labels: BayLabels | null = null;
  private wishCount = -1;
  private width = 1;
  private height = 1;

  constructor(scene: SceneStore, view: ViewStore) {
    this.scene = scene;
    this.view = view;
  }

  /** Starts to follow; the returned function stops. */
  start(easel: Easel, labels: BayLabels): () => void {
    this.easel = easel;
    this.labels = labels;
    const stops = [
      onEitherChange(this.scene, this.view, () => this.changed()),
      listenToPointers(easel.gl.domElement, {
        orbit: (azimuth, tilt) => this.by(() => this.rig.orbit(azimuth, tilt)),
        drag: (right, down) => this.by(() => this.rig.drag(right, down)),
        zoom: (factor, x, y) => this.by(() => this.rig.zoom(factor, x, y)),
        tap: (x, y, touch) => this.tap(x, y, touch),
      }),
    ];
    this.changed();
    return () => {
      for (const stop of stops) stop();
      this.easel = null;
    };
  }

  private by(move: () => void): void {
    move();
    this.easel?.invalidate();
  }

  private changed(): void {
    const scene = this.scene.getState();
    const view = this.view.getState();
    this.follower.follow(scene, view);
    if (scene.snapshot !== null) {
      this.rig.setModel(scene.snapshot.picture, view.explode);
      if (view.camera.count !== this.wishCount) {
        const first = this.wishCount < 0;
        this.rig.go(view.camera.to, first || view.stillMotion ? null : performance.now());
        this.wishCount = view.camera.count;
      }
    }
    this.easel?.invalidate();
  }

  resize(width: number, height: number): void {
    this.width = width;
    this.height = height;
    this.rig.setSize(width, height);
    this.easel?.invalidate();
  }

  /** A key pressed while the view has the focus; true where it did something. */
  key(press: KeyPress): boolean {
    const action = keyAction(press);
    if (action === null) return false;
    if (action.kind === 'orbit') this.by(() => this.rig.orbit(action.azimuthDeg, action.tiltDeg));
    if (action.kind === 'drag') this.by(() => this.rig.drag(action.rightPx, action.downPx));
    if (action.kind === 'zoom') this.by(() => this.rig.zoom(action.factor, 0, 0));
    if (action.kind === 'go') this.view.getState().moveCamera(action.to);
    if (action.kind === 'drop') {
      this.view.getState().pickCell(null);
      this.view.getState().pickBay(null);
    }
    return true;
  }

  private tap(x: number, y: number, touch: boolean): void {
    const { easel } = this;
    const { snapshot } = this.follower;
    if (easel === null || snapshot === null) return;
    const at = { x, y, width: this.width, height: this.height };
    const place = this.picker.placeAt(easel.gl, easel.camera, at, touch ? TOUCH_REACH_PX : 0);
    if (place === null) return;
    const cell = cellAt(snapshot.grid, place);
    if (cell !== null) this.view.getState().pickCell(cell);
  }

  /**
   * Sets everything for the frame about to be drawn.
   * @param nowMs - time of the frame
   */
  frame(nowMs: number): void {
    const { easel } = this;
    if (easel === null) return;
    const more = [this.rig.step(nowMs), this.follower.step(nowMs)].includes(true);
    this.rig.apply(easel.camera);
    const { uniforms } = this.model;
    uniforms.pixelPerDepth.value = (2 * Math.tan((FIELD_OF_VIEW_DEG * Math.PI) / 360)) / this.height;
    uniforms.targetPixelM.value = this.rig.pixelM();
    uniforms.dotsPerPixel.value = easel.gl.getPixelRatio();
    uniforms.pictureSize.value.set(this.width, this.height);
    const view = this.view.getState();
    this.follower.markCell(view.cell, this.rig.pixelM());
    const { snapshot, states } = this.follower;
    if (snapshot !== null) this.labels?.update({ snapshot, states }, view, easel.camera, this.size);
    if (more) easel.invalidate();
  }

  get size(): PictureSize {
    return { width: this.width, height: this.height };
  }

  dispose(): void {
    this.model.dispose();
    this.picker.dispose();
  }
}
