/** How much room the model takes, and from how far all of it is seen. */

import { Box3, Vector3 } from 'three';
import type { Picture } from '../model/picture.ts';

export type Xyz = readonly [number, number, number];

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

/** Box round everything drawn [m]. */
export function bodyBox({ centre, halfM }: Body): Box3 {
  return new Box3().setFromCenterAndSize(new Vector3(...centre), new Vector3(...halfM).multiplyScalar(2));
}

/** Radius of the sphere round it [m]. */
export function sphereRadiusM(body: Body): number {
  return Math.hypot(body.radiusM, body.halfHeightM);
}

/** A little paper round the model. */
const MARGIN = 1.05;
/** The same paper round a drawing seen straight on: `across` and `up` are half of its size [m]. */
export function paddings(across: number, up: number) {
  const [sideM, endM] = [(MARGIN - 1) * across, (MARGIN - 1) * up];
  return { paddingLeft: sideM, paddingRight: sideM, paddingTop: endM, paddingBottom: endM };
}

/**
 * Distance from which an upright cylinder just fits, so that turning at this tilt never runs out of the picture. A deck
 * is flat: from where its sphere fits, half of the paper would stay empty.
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

/** Near and far plane: as tight round the model as the view allows, so that thin layers do not flicker [m]. */
export function depthRangeM(place: Xyz, body: Body): readonly [number, number] {
  const radius = sphereRadiusM(body) * 1.05;
  const off = Math.hypot(place[0] - body.centre[0], place[1] - body.centre[1], place[2] - body.centre[2]);
  return [Math.max((off + radius) / 2000, off - radius), off + radius];
}
