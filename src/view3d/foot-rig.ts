/** First person on the finished surface: keys and buttons go, drags look, a tap goes there. Draws only while something moves. */

import type { PerspectiveCamera, Quaternion, Vector3 } from 'three';
import type { Drive } from '../store/walk.ts';
import { EYE_M, type Foot, heading, placed, type Terrain, walked } from './walker.ts';

export const FOOT_FIELD_DEG = 62;
const SPEED_MPS = 2;
const TURN_DEG_PER_S = 75;
/** One press of a key where pictures must not move. */
const STILL_STEP_M = 0.75;
const STILL_TURN_DEG = 15;
const ENTER_MS = 800;
const LOOK_DEG_PER_PX = 0.16;
const STEEPEST_DEG = 70;
const NEAR_M = 0.1;

interface Entering {
  readonly eye: Vector3;
  readonly turn: Quaternion;
  readonly fieldDeg: number;
  startMs: number | null;
}

export class FootRig {
  foot: Foot | null = null;
  private terrain: Terrain | null = null;
  private goal: readonly [number, number] | null = null;
  private eyeM = 0;
  private lastMs: number | null = null;
  private entering: Entering | null = null;

  /** Steps onto the garden near a place. */
  enter(
    terrain: Terrain,
    from: { readonly at: readonly [number, number]; readonly headingDeg: number },
    camera: PerspectiveCamera,
    flies: boolean,
  ): boolean {
    this.terrain = terrain;
    this.foot = placed(terrain, from.at, from.headingDeg);
    if (this.foot === null) return false;
    this.eyeM = this.foot.zM + EYE_M;
    this.goal = null;
    this.lastMs = null;
    this.entering = flies ? { eye: camera.position.clone(), turn: camera.quaternion.clone(), fieldDeg: camera.fov, startMs: null } : null;
    return true;
  }

  leave(): void {
    this.foot = null;
    this.goal = null;
    this.entering = null;
  }

  /** The ground changed under one's feet. */
  setTerrain(terrain: Terrain): void {
    if (this.foot === null) return;
    this.terrain = terrain;
    this.foot = placed(terrain, [this.foot.x, this.foot.y], this.foot.headingDeg) ?? this.foot;
  }

  /** A press where pictures must not move: one step at once. */
  jump(drive: Drive): void {
    if (this.foot === null || this.terrain === null) return;
    const headingDeg = this.foot.headingDeg + drive.turn * STILL_TURN_DEG;
    const by = heading(headingDeg, drive.ahead * STILL_STEP_M, drive.aside * STILL_STEP_M);
    this.foot = walked(this.terrain, { ...this.foot, headingDeg }, by);
    this.eyeM = this.foot.zM + EYE_M;
  }

  look(rightPx: number, downPx: number): void {
    if (this.foot === null) return;
    this.goal = null;
    const pitchDeg = Math.min(STEEPEST_DEG, Math.max(-STEEPEST_DEG, this.foot.pitchDeg + downPx * LOOK_DEG_PER_PX));
    this.foot = { ...this.foot, headingDeg: this.foot.headingDeg - rightPx * LOOK_DEG_PER_PX, pitchDeg };
  }

  /** Goes to a place, as far as the way there is free. */
  goTo(at: readonly [number, number], flies: boolean): void {
    if (this.foot === null || this.terrain === null) return;
    if (flies) {
      this.goal = at;
      return;
    }
    const way = [at[0] - this.foot.x, at[1] - this.foot.y] as const;
    this.foot = { ...walked(this.terrain, this.foot, way), headingDeg: bearing(way) };
    this.eyeM = this.foot.zM + EYE_M;
  }

  /**
   * Moves on and sets the camera.
   * @returns whether there is more to come
   */
  frame(nowMs: number, drive: Drive, camera: PerspectiveCamera, moves: boolean): boolean {
    if (this.foot === null || this.terrain === null) return false;
    const seconds = Math.min(0.12, this.lastMs === null ? 0.016 : (nowMs - this.lastMs) / 1000);
    const driven = moves && (drive.ahead !== 0 || drive.aside !== 0 || drive.turn !== 0);
    if (driven) this.drive(drive, seconds);
    else if (this.goal !== null) this.approach(this.goal, seconds);
    const ground = this.foot.zM + EYE_M;
    this.eyeM += (ground - this.eyeM) * Math.min(1, seconds * 9);
    if (!moves || Math.abs(ground - this.eyeM) < 0.003) this.eyeM = ground;
    const enters = this.aim(camera, nowMs);
    const more = driven || this.goal !== null || this.eyeM !== ground || enters;
    this.lastMs = more ? nowMs : null;
    return more;
  }

  private drive(drive: Drive, seconds: number): void {
    if (this.foot === null || this.terrain === null) return;
    this.goal = null;
    const headingDeg = this.foot.headingDeg + drive.turn * TURN_DEG_PER_S * seconds;
    const way = SPEED_MPS * seconds;
    this.foot = walked(this.terrain, { ...this.foot, headingDeg }, heading(headingDeg, drive.ahead * way, drive.aside * way));
  }

  private approach(goal: readonly [number, number], seconds: number): void {
    if (this.foot === null || this.terrain === null) return;
    const way = [goal[0] - this.foot.x, goal[1] - this.foot.y] as const;
    const leftM = Math.hypot(...way);
    const stepM = Math.min(leftM, SPEED_MPS * seconds);
    if (leftM < 0.02) {
      this.goal = null;
      return;
    }
    const off = ((bearing(way) - this.foot.headingDeg + 540) % 360) - 180;
    const turned = Math.max(-1, Math.min(1, off / (TURN_DEG_PER_S * seconds))) * TURN_DEG_PER_S * seconds;
    const before = this.foot;
    const after = walked(this.terrain, before, [(way[0] / leftM) * stepM, (way[1] / leftM) * stepM]);
    this.foot = { ...after, headingDeg: before.headingDeg + (leftM > 0.6 ? turned : 0) };
    if (Math.hypot(after.x - before.x, after.y - before.y) < 0.2 * stepM) this.goal = null;
  }

  private aim(camera: PerspectiveCamera, nowMs: number): boolean {
    if (this.foot === null) return false;
    const { x, y, headingDeg, pitchDeg } = this.foot;
    const [h, p] = [(headingDeg * Math.PI) / 180, (pitchDeg * Math.PI) / 180];
    camera.position.set(x, y, this.eyeM);
    camera.up.set(0, 0, 1);
    camera.lookAt(x + Math.sin(h) * Math.cos(p), y + Math.cos(h) * Math.cos(p), this.eyeM + Math.sin(p));
    camera.fov = FOOT_FIELD_DEG;
    camera.near = NEAR_M;
    const enters = this.entering === null ? 1 : this.shareEntered(this.entering, nowMs);
    if (this.entering !== null && enters < 1) {
      const { eye, turn, fieldDeg } = this.entering;
      camera.position.lerpVectors(eye, camera.position.clone(), enters);
      camera.quaternion.slerpQuaternions(turn, camera.quaternion.clone(), enters);
      camera.fov = fieldDeg + (FOOT_FIELD_DEG - fieldDeg) * enters;
    } else this.entering = null;
    camera.updateProjectionMatrix();
    camera.updateMatrixWorld();
    return this.entering !== null;
  }

  private shareEntered(entering: Entering, nowMs: number): number {
    entering.startMs ??= nowMs;
    const share = Math.min(1, Math.max(0, (nowMs - entering.startMs) / ENTER_MS));
    return share * share * (3 - 2 * share);
  }
}

/** Clockwise from +y [°]. */
function bearing([x, y]: readonly [number, number]): number {
  return (Math.atan2(x, y) * 180) / Math.PI;
}
