/** The standard views and how far off the camera stands for them. */

import type { Picture } from '../model/picture.ts';
import type { CameraWish } from '../store/view-store.ts';
import type { CameraPose, PoseLimits, Xyz } from './camera-pose.ts';

/** Narrow, so that the picture is close to a parallel projection. */
export const FIELD_OF_VIEW_DEG = 24;

/** Upright cylinder. */
export interface Cylinder {
  /** In plan [m]. */
  readonly radiusM: number;
  readonly halfHeightM: number;
}

/** Cylinder round everything drawn. */
export interface Body extends Cylinder {
  readonly centre: Xyz;
  /** Half of its extent along x, y and z [m]. */
  readonly halfM: Xyz;
}

const HOME = { azimuthDeg: 32, tiltDeg: 34 } as const;
const PLAN = { azimuthDeg: 0, tiltDeg: 90 } as const;
const SIDE = { azimuthDeg: 0, tiltDeg: 3 } as const;

/** Greatest lift of any surface at an amount of explode [m]. */
function greatestLiftM(picture: Picture, explode: number): number {
  return picture.parts.reduce((most, part) => Math.max(most, explode * (picture.floorLiftM[part.floor] + part.extraTopM)), 0);
}

/** Round everything drawn. */
export function bodyOf(picture: Picture, explode: number): Body {
  const { min, max } = picture.boundsM;
  const top = max[2] + greatestLiftM(picture, explode);
  const halfM: Xyz = [(max[0] - min[0]) / 2, (max[1] - min[1]) / 2, (top - min[2]) / 2];
  return {
    centre: [min[0] + halfM[0], min[1] + halfM[1], min[2] + halfM[2]],
    halfM,
    radiusM: Math.max(1, Math.hypot(halfM[0], halfM[1])),
    halfHeightM: halfM[2],
  };
}

/** Radius of the sphere round it [m]. */
export function sphereRadiusM(body: Body): number {
  return Math.hypot(body.radiusM, body.halfHeightM);
}

/** A little paper round the model. */
const MARGIN = 1.05;
/** A drawing seen straight on has labels at its sides. */
const LABEL_ROOM = 1.12;

/**
 * Distance from which a sphere just fits the narrower side of the picture [m].
 * @param radiusM - its radius
 * @param aspect - width / height of the picture
 */
export function fitDistanceM(radiusM: number, aspect: number): number {
  const half = Math.tan((FIELD_OF_VIEW_DEG * Math.PI) / 360);
  return radiusM / Math.sin(Math.atan(half * Math.min(1, aspect)));
}

/**
 * Distance from which an upright cylinder just fits, so that turning at this tilt never runs out of the picture. A deck
 * is flat: its sphere would leave half of the paper empty.
 * @param size - radius in plan and half height [m]
 * @param tiltDeg - tilt of the view
 * @param aspect - width / height of the picture
 */
export function cylinderDistanceM(size: Cylinder, tiltDeg: number, aspect: number): number {
  const tanY = Math.tan((FIELD_OF_VIEW_DEG * Math.PI) / 360);
  const t = (tiltDeg * Math.PI) / 180;
  const across = size.radiusM / Math.sin(Math.atan(tanY * aspect));
  const upright = [-1, 1].flatMap((near) =>
    [-1, 1].map((high) => {
      const [along, up] = [near * size.radiusM, high * size.halfHeightM];
      return Math.abs(along * Math.sin(t) + up * Math.cos(t)) / tanY - (along * Math.cos(t) - up * Math.sin(t));
    }),
  );
  return MARGIN * Math.max(across, ...upright);
}

/** Distance from which a box just fits, seen along one of its axes: `axes` are those across, up and away. */
function boxDistanceM(halfM: Xyz, axes: readonly [0 | 1 | 2, 0 | 1 | 2, 0 | 1 | 2], aspect: number): number {
  const tanY = Math.tan((FIELD_OF_VIEW_DEG * Math.PI) / 360);
  const [across, up, away] = axes.map((axis) => halfM[axis]);
  return away + MARGIN * Math.max((LABEL_ROOM * across) / (tanY * aspect), up / tanY);
}

/** Pose that a camera wish asks for. */
export function wishedPose(to: CameraWish['to'], body: Body, aspect: number, now: CameraPose | null): CameraPose {
  if (to === 'home') return { target: body.centre, distanceM: cylinderDistanceM(body, HOME.tiltDeg, aspect), ...HOME };
  if (to === 'plan') return { target: body.centre, distanceM: boxDistanceM(body.halfM, [0, 1, 2], aspect), ...PLAN };
  if (to === 'side') return { target: body.centre, distanceM: boxDistanceM(body.halfM, [0, 2, 1], aspect), ...SIDE };
  const direction = now === null ? HOME : { azimuthDeg: now.azimuthDeg, tiltDeg: now.tiltDeg };
  const distanceM = fitDistanceM(Math.max(1, to.sizeM / 2), aspect);
  return { target: [to.at[0], to.at[1], body.centre[2]], distanceM, ...direction };
}

/** Limits within which the model stays in sight. */
export function poseLimits(picture: Picture, body: Body, aspect: number): PoseLimits {
  const { min, max } = picture.boundsM;
  const top = body.centre[2] + body.halfHeightM;
  return { min, max: [max[0], max[1], top], nearestM: 1.5, farthestM: 2 * fitDistanceM(sphereRadiusM(body), aspect) };
}

/** Near and far plane: as tight round the model as the view allows, so that thin layers do not flicker [m]. */
export function depthRangeM(place: Xyz, body: Body): readonly [number, number] {
  const radius = sphereRadiusM(body) * 1.05;
  const off = Math.hypot(place[0] - body.centre[0], place[1] - body.centre[1], place[2] - body.centre[2]);
  return [Math.max((off + radius) / 2000, off - radius), off + radius];
}
