/** Tells the camera controls what to show and how far they may go; moving the camera is theirs. */

import type { CameraControls } from '@react-three/drei';
import { Box3, type PerspectiveCamera, Sphere, Spherical, Vector3 } from 'three';
import type { Picture } from '../model/picture.ts';
import type { ViewStand } from '../model/view-picture.ts';
import type { CameraWish } from '../store/view-store.ts';
import { type Body, bodyBox, bodyOf, cylinderDistanceM, depthRangeM, FIELD_OF_VIEW_DEG, paddings, sphereRadiusM } from './camera-fit.ts';

const RAD = Math.PI / 180;
const HOME = { azimuthDeg: 32, tiltDeg: 34 } as const;
const ASIDE_DEG = 18;
/** A little from below is worth seeing (outlets, columns); more is no view of a deck. */
const LOWEST_TILT_DEG = -20;
/** Below this tilt the ground runs away from the eye: the view then moves up and down, not along it. */
const GROUND_TILT_DEG = 20;
const NEAREST_M = 1.5;
/** The controls come to rest like a spring: 99 % of the way in 3.3 times this, about 0.6 s. */
const SMOOTH_S = 0.18;
/** In the walkthrough people shall see where they are going. */
const SHOW_SMOOTH_S = 0.42;
/** Less than this to go, in radians and metres, is less than a pixel. */
const REST = 0.004;

/** Whole turns for a way as long as the picture is high. */
const TURN_SPEED = 0.5;

/** With this, the model keeps to two fingers some 150 px apart; by themselves the controls go half as far. */
const PINCH_SPEED = 2;

/** The camera as the page gives it. */
export interface Camera {
  readonly controls: CameraControls;
  readonly camera: PerspectiveCamera;
  /** Makes the frames' clock start from now. */
  readonly startClock: () => void;
}

export class CameraRig {
  private readonly controls: CameraControls;
  private readonly camera: PerspectiveCamera;
  private readonly startClock: () => void;
  private picture: Picture | null = null;
  private body: Body = { centre: [0, 0, 0], halfM: [1, 1, 1], radiusM: 1, halfHeightM: 1 };
  private room = new Box3();
  private heightPx = 1;
  /** From eye to target in the last frame. */
  private distanceM = 1;
  /** The wish still shown; it goes along when the model or the window changes its size, until a hand moves the camera. */
  private standing: CameraWish['to'] | null = 'home';
  private standingBefore: CameraWish['to'] | null = null;
  private flying = false;
  private moved = false;
  private rested = false;

  constructor({ controls, camera, startClock }: Camera) {
    this.controls = controls;
    this.camera = camera;
    this.startClock = startClock;
    controls.smoothTime = SMOOTH_S;
    // The model stays under the hand.
    controls.draggingSmoothTime = 0;
    controls.restThreshold = REST;
    controls.azimuthRotateSpeed = TURN_SPEED;
    controls.polarRotateSpeed = TURN_SPEED;
    controls.dollyToCursor = true;
    controls.minDistance = NEAREST_M;
    controls.maxPolarAngle = (90 - LOWEST_TILT_DEG) * RAD;
  }

  /**
   * Follows the hands.
   * @param element - the canvas, within the element that the controls listen on
   * @param invalidate - asks for one more frame
   * @returns stops following
   */
  follow(element: HTMLElement, invalidate: () => void): () => void {
    const { controls } = this;
    const { left: turns, right: moves } = controls.mouseButtons;
    const onControlStart = () => this.grabbed();
    const onControl = () => {
      this.standing = null;
      this.moved = true;
    };
    const onRest = () => {
      this.rested = true;
    };
    // The controls know one speed for wheel and fingers, and no keys held with a button: a trackpad often has no other.
    const onDown = (event: PointerEvent) => {
      controls.dollySpeed = event.pointerType === 'touch' ? PINCH_SPEED : 1;
      controls.mouseButtons.left = event.shiftKey || event.ctrlKey || event.metaKey ? moves : turns;
    };
    controls.addEventListener('controlstart', onControlStart);
    controls.addEventListener('control', onControl);
    controls.addEventListener('rest', onRest);
    controls.addEventListener('sleep', onRest);
    element.addEventListener('pointerdown', onDown);
    // When one of two fingers is lifted, the controls wait for a frame before they follow the other, but ask for none.
    element.addEventListener('pointerup', invalidate);
    return () => {
      controls.removeEventListener('controlstart', onControlStart);
      controls.removeEventListener('control', onControl);
      controls.removeEventListener('rest', onRest);
      controls.removeEventListener('sleep', onRest);
      element.removeEventListener('pointerdown', onDown);
      element.removeEventListener('pointerup', invalidate);
    };
  }

  /** What is drawn now, and how far it is exploded. */
  setModel(picture: Picture, explode: number): void {
    this.picture = picture;
    this.body = bodyOf(picture, explode);
    this.room = bodyBox(this.body);
    // Wider than the model: `settle` brings the target back over the deck, in a way that shows less.
    this.controls.setBoundary(bodyBox(this.body).expandByScalar(sphereRadiusM(this.body)));
    this.fit(this.flying);
  }

  /** The camera itself has its new shape already. */
  setHeight(heightPx: number): void {
    this.heightPx = Math.max(1, heightPx);
    this.fit(this.flying);
  }

  /**
   * Goes where a wish asks to.
   * @param to - the wish
   * @param flies - false to be there at once
   */
  go(to: CameraWish['to'], flies: boolean): void {
    this.standing = to;
    if (flies) this.takeOff();
    this.fit(flies);
    // A rest from before the flight is none of it.
    if (flies) this.rested = false;
  }

  /** Frames come on demand: without this the first one would count all the time that nothing was drawn. */
  private takeOff(): void {
    if (!this.flying) this.startClock();
    this.flying = true;
  }

  private fit(flies: boolean): void {
    const { controls, body, standing } = this;
    if (this.picture === null || standing === null) return;
    controls.maxDistance = 2 * controls.getDistanceToFitSphere(sphereRadiusM(body));
    const [x, y, z] = body.halfM;
    if (standing === 'home' || (typeof standing === 'object' && 'lookDeg' in standing)) {
      // A little aside of the direction asked for, so that a cut face shows its depth.
      const azimuthDeg = standing === 'home' ? HOME.azimuthDeg : standing.lookDeg + ASIDE_DEG;
      this.turn(azimuthDeg, HOME.tiltDeg, flies);
      void controls.moveTo(...body.centre, flies);
      void controls.dollyTo(cylinderDistanceM(body, HOME.tiltDeg, this.camera.aspect), flies);
    } else if (standing === 'plan') {
      this.turn(0, 90, flies);
      void controls.fitToBox(bodyBox(body), flies, paddings(x, y));
    } else if (standing === 'side') {
      this.turn(0, 0, flies);
      void controls.fitToBox(bodyBox(body), flies, paddings(x, z));
    } else if ('eye' in standing) {
      const [eye, target] = [standing.eye, standing.target];
      const look = [target[0] - eye[0], target[1] - eye[1], target[2] - eye[2]] as const;
      const awayM = Math.hypot(...look);
      if (flies) {
        this.turn(Math.atan2(look[0], look[1]) / RAD, -Math.asin(look[2] / awayM) / RAD, true);
        void controls.moveTo(...target, true);
        void controls.dollyTo(awayM, true);
      } else void controls.setLookAt(...eye, ...target, false);
    } else {
      // All floors above a place, however far they are apart.
      const radiusM = Math.max(NEAREST_M, standing.sizeM / 2, body.halfHeightM);
      void controls.fitToSphere(new Sphere(new Vector3(...standing.at, body.centre[2]), radiusM), flies);
    }
    if (!flies) controls.update(0);
  }

  /** The shorter way round, which the controls do not look for. */
  private turn(azimuthDeg: number, tiltDeg: number, flies: boolean): void {
    const { controls } = this;
    const azimuth = -azimuthDeg * RAD;
    const rounds = Math.round((controls.azimuthAngle - azimuth) / (2 * Math.PI));
    void controls.rotateTo(azimuth + rounds * 2 * Math.PI, (90 - tiltDeg) * RAD, flies);
  }

  orbit(byAzimuthDeg: number, byTiltDeg: number, flies: boolean): void {
    this.byKey(flies);
    void this.controls.rotate(-byAzimuthDeg * RAD, -byTiltDeg * RAD, flies);
  }

  /** Moves the model by so many CSS pixels to the right and down. */
  drag(rightPx: number, downPx: number, flies: boolean): void {
    this.byKey(flies);
    const perPx = this.pixelM();
    void this.controls.truck(-rightPx * perPx, -downPx * perPx, flies);
  }

  /** Nearer where the factor is below 1. */
  zoom(factor: number, flies: boolean): void {
    this.byKey(flies);
    void this.controls.dollyTo(this.controls.getSpherical(new Spherical()).radius * factor, flies);
  }

  private byKey(flies: boolean): void {
    this.standing = null;
    if (flies) this.takeOff();
    else this.moved = true;
  }

  /** A hand stops a flight where it is. */
  private grabbed(): void {
    const { controls } = this;
    this.standingBefore = this.standing;
    if (!this.flying) return;
    this.flying = false;
    const eye = controls.getPosition(new Vector3(), false);
    const target = controls.getTarget(new Vector3(), false);
    void controls.setLookAt(eye.x, eye.y, eye.z, target.x, target.y, target.z, false);
  }

  /** The hand only meant to tap: what it moved is put back. */
  tapped(): void {
    this.standing = this.standingBefore;
    this.fit(false);
  }

  /** Ends what the controls have done for the frame about to be drawn. */
  settleFrame(): void {
    if (this.rested) {
      // What is left of the way cannot be seen any more; going it would take as many frames again.
      this.controls.stop();
      this.flying = false;
    }
    if ((this.rested || this.moved) && !this.flying && this.standing === null) this.settle();
    if (this.rested) this.controls.update(0);
    this.rested = false;
    this.moved = false;
    this.distanceM = this.controls.distance;
    const [near, far] = depthRangeM(this.camera.position.toArray(), this.body);
    this.camera.near = near;
    this.camera.far = far;
    this.camera.updateProjectionMatrix();
    this.camera.updateMatrixWorld();
  }

  /**
   * The controls move and zoom in the plane of the picture: their target then floats before or behind the deck, and the
   * view would turn about a point in the air and end its approach there. So it slides along the line of sight to the
   * level of the deck, and back over the deck where it left it. After a zoom the eye stays where it is, so that nothing
   * is seen to move; after a mere move it goes along, as far off as before, like over a drawing on a table.
   */
  private settle(): void {
    const { controls } = this;
    const eye = controls.getPosition(new Vector3());
    const target = controls.getTarget(new Vector3());
    const share = (this.body.centre[2] - eye.z) / (target.z - eye.z);
    const offset = eye.clone().sub(target);
    const zoomed = Math.abs(controls.distance - this.distanceM) > 1e-9 * this.distanceM;
    const steep = controls.polarAngle <= (90 - GROUND_TILT_DEG) * RAD && share * offset.length() >= NEAREST_M;
    const slid = steep ? eye.clone().lerp(target, share) : target.clone();
    const inside = this.room.clampPoint(slid, new Vector3());
    if (inside.distanceTo(target) < 1e-9 * this.body.radiusM) return;
    if (zoomed) eye.add(inside).sub(slid);
    else eye.copy(inside).add(offset);
    void controls.setLookAt(eye.x, eye.y, eye.z, inside.x, inside.y, inside.z, false);
    controls.update(0);
  }

  /** Whether hands move the camera. */
  setEnabled(enabled: boolean): void {
    this.controls.enabled = enabled;
  }

  /** What is looked at in plan, and the way one looks, clockwise from +y. */
  stand(): { readonly at: readonly [number, number]; readonly headingDeg: number } {
    const target = this.controls.getTarget(new Vector3());
    return { at: [target.x, target.y], headingDeg: -this.controls.azimuthAngle / RAD };
  }

  /** Where the eye will be when the flight under way has ended. */
  headedTo(): readonly [number, number, number] {
    return this.controls.getPosition(new Vector3()).toArray();
  }

  /** The same with what is looked at. */
  seen(): ViewStand {
    return { eye: this.headedTo(), target: this.controls.getTarget(new Vector3()).toArray() };
  }

  /** Field of view [°]; slow flights suit wide pictures. */
  setField(fieldDeg: number): void {
    this.controls.smoothTime = fieldDeg === FIELD_OF_VIEW_DEG ? SMOOTH_S : SHOW_SMOOTH_S;
    if (this.camera.fov === fieldDeg) return;
    this.camera.fov = fieldDeg;
    this.camera.updateProjectionMatrix();
  }

  /** Size of a CSS pixel at the distance of what is looked at [m]. */
  pixelM(): number {
    return (this.controls.distance * 2 * Math.tan((this.camera.fov * RAD) / 2)) / this.heightPx;
  }
}
