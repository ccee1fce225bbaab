/** The standard views and how far off the camera stands for them. */

import type { Picture } from '../model/picture.ts';
import type { CameraWish } from '../store/view-store.ts';
import type { CameraPose, PoseLimits, Xyz } from './camera-pose.ts';

/** Narrow, so that the picture is close to a parallel projection. */
export const FIELD_OF_VIEW_DEG = 24;

export interface Sphere {
  readonly centre: Xyz;
  readonly radiusM: number;
}

const HOME = { azimuthDeg: 32, tiltDeg: 34 } as const;
const PLAN = { azimuthDeg: 0, tiltDeg: 90 } as const;
const SIDE = { azimuthDeg: 0, tiltDeg: 3 } as const;

/** Greatest lift of any surface at an amount of explode [m]. */
function greatestLiftM(picture: Picture, explode: number): number {
  return picture.parts.reduce((most, part) => Math.max(most, explode * (picture.floorLiftM[part.floor] + part.extraTopM)), 0);
}

/** Sphere round everything drawn; a sphere fits from every side alike. */
export function boundingSphere(picture: Picture, explode: number): Sphere {
  const { min, max } = picture.boundsM;
  const top = max[2] + greatestLiftM(picture, explode);
  const centre: Xyz = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + top) / 2];
  return { centre, radiusM: Math.max(1, Math.hypot(max[0] - min[0], max[1] - min[1], top - min[2]) / 2) };
}

/**
 * Distance from which a sphere just fits the narrower side of the picture [m].
 * @param radiusM - its radius
 * @param aspect - width / height of the picture
 */
export function fitDistanceM(radiusM: number, aspect: number): number {
  const half = Math.tan((FIELD_OF_VIEW_DEG * Math.PI) / 360);
  return radiusM / Math.sin(Math.atan(half * Math.min(1, aspect)));
}

/** Pose that a camera wish asks for. */
export function wishedPose(to: CameraWish['to'], sphere: Sphere, aspect: number, now: CameraPose | null): CameraPose {
  const whole = { target: sphere.centre, distanceM: fitDistanceM(sphere.radiusM, aspect) };
  if (to === 'home') return { ...whole, ...HOME };
  if (to === 'plan') return { ...whole, ...PLAN };
  if (to === 'side') return { ...whole, ...SIDE };
  const direction = now === null ? HOME : { azimuthDeg: now.azimuthDeg, tiltDeg: now.tiltDeg };
  const distanceM = fitDistanceM(Math.max(1, to.sizeM / 2), aspect);
  return { target: [to.at[0], to.at[1], sphere.centre[2]], distanceM, ...direction };
}

/** Limits within which the model stays in sight. */
export function poseLimits(picture: Picture, sphere: Sphere, aspect: number): PoseLimits {
  const { min, max } = picture.boundsM;
  const top = sphere.centre[2] * 2 - min[2];
  return { min, max: [max[0], max[1], top], nearestM: 1.5, farthestM: 3 * fitDistanceM(sphere.radiusM, aspect) };
}

/** Near and far plane: as tight round the sphere as the view allows, so that thin layers do not flicker [m]. */
export function depthRangeM(place: Xyz, sphere: Sphere): readonly [number, number] {
  const off = Math.hypot(place[0] - sphere.centre[0], place[1] - sphere.centre[1], place[2] - sphere.centre[2]);
  const far = off + sphere.radiusM * 1.05;
  return [Math.max(far / 2000, off - sphere.radiusM * 1.05), far];
}
