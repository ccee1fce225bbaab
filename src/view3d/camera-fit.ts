/** The standard views and how far off the camera stands for them. */

import type { Picture } from '../model/picture.ts';
import type { CameraWish } from '../store/view-store.ts';
import { type CameraPose, cameraAxes, type PoseLimits, type Xyz } from './camera-pose.ts';

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

/** Parts of the picture that something lies over, from its edges [CSS px]. */
export interface Covered {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The free part of the picture, in tangents of angles from the way the camera looks. */
export interface Paper {
  /** Half its width and height. */
  readonly tanX: number;
  readonly tanY: number;
  /** Where its middle lies, to the right and up. */
  readonly offX: number;
  readonly offY: number;
}

const HALF_VIEW = Math.tan((FIELD_OF_VIEW_DEG * Math.PI) / 360);
/** What lies over more than this is not kept clear of: the model would become too small. */
const MOST_COVERED = 0.5;

/** Free part of a picture [CSS px]. */
export function paperOf(width: number, height: number, covered: Covered): Paper {
  const across = covered.left + covered.right > MOST_COVERED * width ? [0, 0] : [covered.left, covered.right];
  const upright = covered.top + covered.bottom > MOST_COVERED * height ? [0, 0] : [covered.top, covered.bottom];
  const perPx = HALF_VIEW / (height / 2);
  return {
    tanX: ((width - across[0] - across[1]) / 2) * perPx,
    tanY: ((height - upright[0] - upright[1]) / 2) * perPx,
    offX: ((across[0] - across[1]) / 2) * perPx,
    offY: ((upright[1] - upright[0]) / 2) * perPx,
  };
}

/** A little paper round the model. */
const MARGIN = 1.05;
/** A drawing seen straight on has labels at its sides. */
const LABEL_ROOM = 1.12;

/** Distance from which a sphere just fits the narrower side of the paper [m]. */
export function fitDistanceM(radiusM: number, paper: Paper): number {
  return radiusM / Math.sin(Math.atan(Math.min(paper.tanX, paper.tanY)));
}

/**
 * Distance from which an upright cylinder just fits, so that turning at this tilt never runs out of the picture. A deck
 * is flat: its sphere would leave half of the paper empty.
 */
function cylinderDistanceM(size: Cylinder, tiltDeg: number, paper: Paper): number {
  const t = (tiltDeg * Math.PI) / 180;
  const across = size.radiusM / Math.sin(Math.atan(paper.tanX));
  const upright = [-1, 1].flatMap((near) =>
    [-1, 1].map((high) => {
      const [along, up] = [near * size.radiusM, high * size.halfHeightM];
      return Math.abs(along * Math.sin(t) + up * Math.cos(t)) / paper.tanY - (along * Math.cos(t) - up * Math.sin(t));
    }),
  );
  return MARGIN * Math.max(across, ...upright);
}

/** Distance from which a box just fits, seen along one of its axes: `axes` are those across, up and away. */
function boxDistanceM(halfM: Xyz, axes: readonly [0 | 1 | 2, 0 | 1 | 2, 0 | 1 | 2], paper: Paper): number {
  const [across, up, away] = axes.map((axis) => halfM[axis]);
  return away + MARGIN * Math.max((LABEL_ROOM * across) / paper.tanX, up / paper.tanY);
}

/** Pose that a camera wish asks for: what it names in the middle of the paper. */
export function wishedPose(to: CameraWish['to'], body: Body, paper: Paper, now: CameraPose | null): CameraPose {
  const pose = posed(to, body, paper, now);
  const { right, up } = cameraAxes(pose);
  const shifted = (axis: 0 | 1 | 2) => pose.target[axis] - pose.distanceM * (right[axis] * paper.offX + up[axis] * paper.offY);
  return { ...pose, target: [shifted(0), shifted(1), shifted(2)] };
}

function posed(to: CameraWish['to'], body: Body, paper: Paper, now: CameraPose | null): CameraPose {
  if (to === 'home') return { target: body.centre, distanceM: cylinderDistanceM(body, HOME.tiltDeg, paper), ...HOME };
  if (to === 'plan') return { target: body.centre, distanceM: boxDistanceM(body.halfM, [0, 1, 2], paper), ...PLAN };
  if (to === 'side') return { target: body.centre, distanceM: boxDistanceM(body.halfM, [0, 2, 1], paper), ...SIDE };
  const direction = now === null ? HOME : { azimuthDeg: now.azimuthDeg, tiltDeg: now.tiltDeg };
  const distanceM = fitDistanceM(Math.max(1, to.sizeM / 2), paper);
  return { target: [to.at[0], to.at[1], body.centre[2]], distanceM, ...direction };
}

/** Limits within which the model stays in sight; half of it may go out of the picture. */
export function poseLimits(body: Body, paper: Paper): PoseLimits {
  const radiusM = sphereRadiusM(body);
  const limit = (sign: number) => body.halfM.map((half, axis) => body.centre[axis] + sign * (half + radiusM / 2));
  return {
    min: limit(-1) as [number, number, number],
    max: limit(1) as [number, number, number],
    nearestM: 1.5,
    farthestM: 2 * fitDistanceM(radiusM, paper),
  };
}

/** Near and far plane: as tight round the model as the view allows, so that thin layers do not flicker [m]. */
export function depthRangeM(place: Xyz, body: Body): readonly [number, number] {
  const radius = sphereRadiusM(body) * 1.05;
  const off = Math.hypot(place[0] - body.centre[0], place[1] - body.centre[1], place[2] - body.centre[2]);
  return [Math.max((off + radius) / 2000, off - radius), off + radius];
}
