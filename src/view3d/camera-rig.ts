/** The camera in use: follows wishes by flying, hands by moving at once, and stays within its limits. */

import { Matrix4, type PerspectiveCamera, Vector3 } from 'three';
import type { Picture } from '../model/picture.ts';
import type { CameraWish } from '../store/view-store.ts';
import { type Body, bodyOf, depthRangeM, FIELD_OF_VIEW_DEG, poseLimits, wishedPose } from './camera-fit.ts';
import { between, type CameraPose, cameraAxes, cameraPlace, eased, limited, orbited, panned, type Xyz, zoomed } from './camera-pose.ts';

const FLIGHT_MS = 600;
const HALF_VIEW = Math.tan((FIELD_OF_VIEW_DEG * Math.PI) / 360);

interface Flight {
  readonly from: CameraPose;
  readonly to: CameraPose;
  readonly startMs: number;
}

export class CameraRig {
  private pose: CameraPose | null = null;
  private flight: Flight | null = null;
  private picture: Picture | null = null;
  private body: Body = { centre: [0, 0, 0], halfM: [1, 1, 1], radiusM: 1, halfHeightM: 1 };
  private aspect = 1;
  private heightPx = 1;
  /** The standard view still shown; it goes along when the model or the window changes its size. */
  private standing: 'home' | 'plan' | 'side' | null = 'home';

  /** What is drawn now, and how far it is exploded. */
  setModel(picture: Picture, explode: number): void {
    this.picture = picture;
    this.body = bodyOf(picture, explode);
    this.settle();
  }

  setSize(widthPx: number, heightPx: number): void {
    this.aspect = widthPx / Math.max(1, heightPx);
    this.heightPx = Math.max(1, heightPx);
    this.settle();
  }

  private settle(): void {
    if (this.picture === null) return;
    if (this.standing === null && this.pose !== null) return;
    const goal = wishedPose(this.standing ?? 'home', this.body, this.aspect, null);
    if (this.flight === null) this.pose = goal;
    else this.flight = { ...this.flight, to: goal };
  }

  /**
   * Goes where a wish asks to.
   * @param to - the wish
   * @param nowMs - time the flight starts; null to be there at once
   */
  go(to: CameraWish['to'], nowMs: number | null): void {
    this.standing = typeof to === 'string' ? to : null;
    if (this.picture === null) return;
    const goal = limited(wishedPose(to, this.body, this.aspect, this.pose), this.limits(this.picture));
    this.flight = nowMs === null || this.pose === null ? null : { from: this.pose, to: goal, startMs: nowMs };
    if (this.flight === null) this.pose = goal;
  }

  /** Goes on with a flight; true while there is more to come. */
  step(nowMs: number): boolean {
    if (this.flight === null) return false;
    const share = Math.min(1, Math.max(0, (nowMs - this.flight.startMs) / FLIGHT_MS));
    this.pose = between(this.flight.from, this.flight.to, eased(share));
    if (share === 1) this.flight = null;
    return this.flight !== null;
  }

  orbit(byAzimuthDeg: number, byTiltDeg: number): void {
    this.move((pose) => orbited(pose, byAzimuthDeg, byTiltDeg));
  }

  /** Drags the model by so many CSS pixels to the right and down. */
  drag(rightPx: number, downPx: number): void {
    const perPx = this.pixelM();
    this.move((pose) => panned(pose, -rightPx * perPx, downPx * perPx));
  }

  /**
   * Zooms about a point of the picture.
   * @param factor - below 1 is nearer
   * @param x - from the middle of the picture, -1 … 1
   * @param y - the same, up
   */
  zoom(factor: number, x: number, y: number): void {
    const { picture, pose } = this;
    if (picture === null || pose === null) return;
    const { nearestM, farthestM } = this.limits(picture);
    // What the limit does not let through must not move the target either.
    const allowed = Math.min(farthestM / pose.distanceM, Math.max(nearestM / pose.distanceM, factor));
    const about = this.placeUnder(pose, x, y);
    this.move((before) => zoomed(before, allowed, about));
  }

  private move(change: (pose: CameraPose) => CameraPose): void {
    if (this.pose === null || this.picture === null) return;
    this.flight = null;
    this.standing = null;
    this.pose = limited(change(this.pose), this.limits(this.picture));
  }

  private limits(picture: Picture) {
    return poseLimits(picture, this.body, this.aspect);
  }

  /** Point on the level of the target under a point of the picture; on the plane across the view where that is too far off. */
  private placeUnder(pose: CameraPose, x: number, y: number): Xyz {
    const { right, up, forward } = cameraAxes(pose);
    const eye = cameraPlace(pose);
    const ray = [0, 1, 2].map((i) => forward[i] + right[i] * x * HALF_VIEW * this.aspect + up[i] * y * HALF_VIEW);
    const toLevel = (pose.target[2] - eye[2]) / ray[2];
    const off = toLevel > 0.3 * pose.distanceM && toLevel < 2 * pose.distanceM ? toLevel : pose.distanceM;
    return [eye[0] + ray[0] * off, eye[1] + ray[1] * off, eye[2] + ray[2] * off];
  }

  /** Size of a CSS pixel at the distance of what is looked at [m]. */
  pixelM(): number {
    return ((this.pose?.distanceM ?? 1) * 2 * HALF_VIEW) / this.heightPx;
  }

  /** Puts the camera where the pose says. */
  apply(camera: PerspectiveCamera): void {
    if (this.pose === null) return;
    const { right, up, forward } = cameraAxes(this.pose);
    const place = cameraPlace(this.pose);
    camera.position.set(...place);
    const axes = new Matrix4().makeBasis(new Vector3(...right), new Vector3(...up), new Vector3(...forward).negate());
    camera.quaternion.setFromRotationMatrix(axes);
    const [near, far] = depthRangeM(place, this.body);
    camera.near = near;
    camera.far = far;
    camera.fov = FIELD_OF_VIEW_DEG;
    camera.aspect = this.aspect;
    camera.updateProjectionMatrix();
    camera.updateMatrixWorld();
  }
}
