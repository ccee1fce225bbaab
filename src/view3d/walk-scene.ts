/** What the walkthrough adds to the view: light and shadow, backdrop, life, the lifted column, and the person on foot. */

import type { PerspectiveCamera, WebGLRenderer } from 'three';
import type { Snapshot } from '../model/engine.ts';
import type { CoreLog } from '../model/maps.ts';
import { PAPER } from '../model/palette.ts';
import type { SceneState } from '../store/scene-store.ts';
import type { ViewState, ViewStore } from '../store/view-store.ts';
import type { Drive } from '../store/walk.ts';
import { Backdrop } from './backdrop.ts';
import type { PictureSize } from './bay-labels.ts';
import { FIELD_OF_VIEW_DEG } from './camera-fit.ts';
import type { CameraRig } from './camera-rig.ts';
import { rgbOf } from './cell-colour.ts';
import { type Column, CoreColumn, columnOf } from './core-column.ts';
import type { DeckModel } from './deck-model.ts';
import { FootRig } from './foot-rig.ts';
import { LifeDrawn } from './life-drawn.ts';
import { lifeMesh, type Standing, standings } from './life-placing.ts';
import type { LayerWords, LiftLabels } from './lift-labels.ts';
import { type Obstacle, obstaclesOf, roundObstacle } from './obstacles.ts';
import { type PartState, partStates } from './part-states.ts';
import { ShadowPace } from './shadow-pace.ts';
import { sunAt } from './sun.ts';
import { SunShadow } from './sun-shadow.ts';
import { surfaceOf } from './top-index.ts';

/** Wider than the drawing's: pictures for people, not for scaling. */
export const WALK_FIELD_DEG = 38;
const RISE_MS = 1100;
/** Tallest thing that is not in the picture: a person, or leaves over a crown [m]. */
const ABOVE_M = 2.5;
/** Columns below the slab end on the ground. */
const BELOW_M = 0.02;

interface WalkEasel {
  readonly gl: WebGLRenderer;
  readonly camera: PerspectiveCamera;
  readonly rig: CameraRig;
}

export class WalkScene {
  readonly foot = new FootRig();
  readonly shadow: SunShadow;
  stands: readonly Standing[] = [];
  column: Column | null = null;
  private readonly model: DeckModel;
  private readonly view: ViewStore;
  private readonly pace = new ShadowPace();
  private readonly backdrop: Backdrop;
  private readonly life: LifeDrawn;
  private readonly core: CoreColumn;
  private words: LayerWords = ({ name, thicknessMm }) => ({ name, size: `${thicknessMm}` });
  private labels: LiftLabels | null = null;
  private lifeOf: Snapshot | null = null;
  private logOf: CoreLog | null = null;
  private riseStartMs: number | null = null;
  private riseWanted = false;
  private drive: Drive | null = null;
  private obstacles: readonly Obstacle[] = [];
  private scenery = '';
  private sceneryCount = 0;
  private last: { states: readonly PartState[]; explode: number } = { states: [], explode: 0 };

  constructor(model: DeckModel, view: ViewStore) {
    this.model = model;
    this.view = view;
    this.backdrop = new Backdrop(model.uniforms);
    this.life = new LifeDrawn(model.uniforms);
    this.core = new CoreColumn(model.uniforms);
    this.shadow = new SunShadow(model, this.life.mesh.geometry);
    for (const { mesh } of [this.backdrop, this.life, this.core]) model.root.add(mesh);
  }

  setWords(words: LayerWords): void {
    this.words = words;
    this.labels?.set(this.column, words);
  }

  setLabels(labels: LiftLabels | null): void {
    this.labels = labels;
  }

  /** Takes over what changed in the stores. */
  follow({ snapshot, coreLog }: SceneState, view: ViewState, states: readonly PartState[], easel: WalkEasel | null): void {
    const { walk } = view;
    const sunny = walk !== null && !walk.plain;
    this.model.setSunny(sunny);
    this.followTheme(view);
    this.backdrop.mesh.visible = sunny;
    const finished = view.stage === null && walk?.bare !== true;
    const living = sunny && walk.life && finished && view.explode === 0 && view.map === null && snapshot !== null;
    if (living && this.lifeOf !== snapshot) this.plant(snapshot);
    this.life.mesh.visible = living;
    if (sunny) this.light(view);
    if (this.last.states !== states || this.last.explode !== view.explode || this.scenery !== `${living}`) {
      this.sceneryCount++;
      this.last = { states, explode: view.explode };
      this.scenery = `${living}`;
    }
    this.followColumn(snapshot, walk?.lifted === true ? coreLog : null, view, easel);
    this.followFoot(snapshot, view, states, easel);
    // A context that comes back has an empty map: it must be drawn anew.
    if (walk === null || view.canvas === 'lost') this.shadow.drop();
  }

  private followTheme({ theme }: ViewState): void {
    const { uniforms } = this.model;
    uniforms.lineScale.value = theme === 'paper' ? 1 : 1.7;
    const [r, g, b] = rgbOf(theme === 'paper' ? PAPER : '#ffffff');
    uniforms.paper.value.set(r / 255, g / 255, b / 255);
  }

  private plant(snapshot: Snapshot): void {
    const { scene, picture, originM } = snapshot;
    const finished = partStates(picture.parts, LOOK_FINISHED);
    this.obstacles = obstaclesOf(scene, originM);
    const garden = { scene, picture, surfaceAt: surfaceOf(picture, finished), obstacles: this.obstacles };
    this.stands = standings(garden);
    this.life.set(lifeMesh(garden, this.stands));
    this.lifeOf = snapshot;
    this.sceneryCount++;
  }

  private light({ walk }: ViewState): void {
    const { uniforms } = this.model;
    const hour = walk?.hour ?? 12;
    const light = sunAt(hour);
    uniforms.sunTowards.value.set(...light.towards);
    uniforms.sunColour.value.set(...light.sun);
    uniforms.skyColour.value.set(...light.sky);
    uniforms.belowColour.value.set(...light.below);
    uniforms.shadowOn.value = walk?.shadow === 'on';
  }

  private followColumn(snapshot: Snapshot | null, log: CoreLog | null, view: ViewState, easel: WalkEasel | null): void {
    if (log === this.logOf) return;
    this.logOf = log;
    this.column = snapshot === null || log === null ? null : columnOf(log, snapshot);
    this.core.set(this.column);
    this.labels?.set(this.column, this.words);
    this.riseWanted = this.column !== null && !view.stillMotion;
    this.riseStartMs = null;
    this.core.rise.value = this.riseWanted ? 0 : 1;
    if (this.column !== null && easel !== null) this.flyTo(this.column, easel);
  }

  /** The whole column fills most of the picture's height, left of its middle: beside it there are words. */
  private flyTo({ at, groundM, topM }: Column, { camera, rig }: WalkEasel): void {
    // A flight may be under way: from where it ends.
    const [eyeX, eyeY] = rig.headedTo();
    const upright = camera.aspect < 0.9;
    const highM = topM - groundM + 0.5;
    const tan = Math.tan((WALK_FIELD_DEG * Math.PI) / 360);
    const offM = Math.max(4, (highM / (upright ? 0.5 : 0.72) / 2 / tan) * (upright ? 1.15 : 1));
    const dx = eyeX - at[0];
    const dy = eyeY - at[1];
    const length = Math.hypot(dx, dy) || 1;
    const [ux, uy] = [dx / length, dy / length];
    const asideM = offM * tan * camera.aspect * (upright ? 0.42 : 0.4);
    const downM = upright ? 0.22 * highM : 0;
    const [mx, my] = [at[0] - uy * asideM, at[1] + ux * asideM];
    const midM = (groundM + topM) / 2 - downM;
    const eye = [mx + ux * offM, my + uy * offM, midM + 0.24 * offM] as const;
    // After this change of the stores is taken over, or the wish would be overruled by the one before.
    queueMicrotask(() => this.view.getState().moveCamera({ eye, target: [mx, my, midM] }));
  }

  private followFoot(snapshot: Snapshot | null, view: ViewState, states: readonly PartState[], easel: WalkEasel | null): void {
    const wanted = view.walk?.onFoot === true && snapshot !== null;
    if (easel === null || !wanted) {
      if (this.foot.foot !== null) this.leaveFoot(easel);
      return;
    }
    const { drive } = view.walk as NonNullable<ViewState['walk']>;
    if (this.foot.foot === null) {
      const terrain = this.terrain(snapshot, states);
      const from = easel.rig.stand();
      easel.rig.setEnabled(false);
      if (!this.foot.enter(terrain, from, easel.camera, !view.stillMotion)) {
        easel.rig.setEnabled(true);
        queueMicrotask(() => this.view.getState().setWalk({ onFoot: false }));
      }
    } else if (drive !== this.drive && view.stillMotion) this.foot.jump(drive);
    this.drive = drive;
  }

  private terrain(snapshot: Snapshot, states: readonly PartState[]) {
    const own = this.obstacles.length > 0 ? this.obstacles : obstaclesOf(snapshot.scene, snapshot.originM);
    const things = this.life.mesh.visible ? this.stands : [];
    const round = things.map(({ kind, spot }) => roundObstacle(spot.x, spot.y, kind === 'person' ? 0.25 : 0.75));
    return { surfaceAt: surfaceOf(snapshot.picture, states), obstacles: [...own, ...round] };
  }

  private leaveFoot(easel: WalkEasel | null): void {
    this.foot.leave();
    easel?.rig.setEnabled(true);
  }

  /**
   * Sets everything for the frame about to be drawn, after the camera of the views.
   * @returns whether there is more to come
   */
  frame(nowMs: number, easel: WalkEasel, size: PictureSize): boolean {
    const { walk, stillMotion } = this.view.getState();
    if (walk === null) return false;
    const more = this.foot.foot !== null && this.foot.frame(nowMs, walk.drive, easel.camera, !stillMotion);
    const rises = this.stepRise(nowMs);
    if (!walk.plain) this.cast(easel, walk.hour, walk.shadow === 'on');
    this.backdrop.follow(easel.camera);
    this.labels?.place(this.column, easel.camera, size);
    if (this.pace.tooSlow && walk.shadow === 'on' && !walk.plain) {
      this.pace.again();
      queueMicrotask(() => this.view.getState().setWalk({ shadow: 'slow' }));
    }
    return more || rises;
  }

  /** Takes note of how long the frame before took, which begins a new one. */
  took(tookMs: number): void {
    const { walk } = this.view.getState();
    this.pace.begin(tookMs, walk !== null && !walk.plain && walk.shadow === 'on');
  }

  private stepRise(nowMs: number): boolean {
    if (!this.riseWanted) return false;
    this.riseStartMs ??= nowMs;
    const share = Math.min(1, (nowMs - this.riseStartMs) / RISE_MS);
    this.core.rise.value = 1 - (1 - share) ** 3;
    this.riseWanted = share < 1;
    return this.riseWanted;
  }

  private cast({ gl }: WalkEasel, hour: number, shadows: boolean): void {
    const snapshot = this.view.getState().walk === null ? null : this.roomOf;
    if (snapshot === null) return;
    const { min, max } = snapshot.picture.boundsM;
    const radiusM = 0.5 * Math.hypot(max[0] - min[0], max[1] - min[1], max[2] - min[2]) + ABOVE_M;
    const centre = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2] as const;
    const warm = (1 - Math.sin((Math.PI * (hour - 5)) / 16)) ** 1.5;
    this.backdrop.setGround(min[2] - BELOW_M, radiusM, warm);
    // Drawn into a lost context it would count as drawn.
    if (!shadows || gl.getContext().isContextLost()) return;
    const arrival = this.model.uniforms.arrival.value;
    const state = `${this.sceneryCount} ${hour} ${arrival.toFixed(3)}`;
    this.shadow.update(gl, { centre, radiusM }, state, this.life.mesh.visible ? this.life.mesh.geometry : null);
  }

  /** Scene drawn now. */
  roomOf: Snapshot | null = null;

  /** Field of view of the camera of the views [°]. */
  fieldDeg(): number {
    return this.view.getState().walk === null ? FIELD_OF_VIEW_DEG : WALK_FIELD_DEG;
  }

  dispose(): void {
    for (const one of [this.backdrop, this.life, this.core]) {
      this.model.root.remove(one.mesh);
      one.dispose();
    }
    this.shadow.dispose();
  }
}

const LOOK_FINISHED = { stage: null, hiddenKinds: new Set<never>(), hiddenZones: new Set<string>(), onlyKind: null, onlyZone: null };
