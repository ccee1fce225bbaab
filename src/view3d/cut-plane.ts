/** The vertical plane of the cut-away, from what the user chose. */

import type { Picture } from '../model/picture.ts';
import type { Cut } from '../store/view-store.ts';

export interface CutPlane {
  /** A point of the plane, local [m]. */
  readonly x: number;
  readonly y: number;
  /** Unit direction one looks at it; what lies before the plane in this direction is taken away. */
  readonly lookX: number;
  readonly lookY: number;
  /** Distance of the plane from the origin along the look [m]. */
  readonly offsetM: number;
}

/** Plane of a cut across the bounds of the picture. */
export function cutPlane(bounds: Picture['boundsM'], cut: Cut): CutPlane {
  const angle = (cut.lookDeg * Math.PI) / 180;
  const [lookX, lookY] = [Math.sin(angle), Math.cos(angle)];
  const corners = [bounds.min, bounds.max].flatMap((a) => [bounds.min, bounds.max].map((b) => a[0] * lookX + b[1] * lookY));
  const [from, to] = [Math.min(...corners), Math.max(...corners)];
  const offsetM = from + (to - from) * cut.position;
  const centreOff = offsetM - ((bounds.min[0] + bounds.max[0]) / 2) * lookX - ((bounds.min[1] + bounds.max[1]) / 2) * lookY;
  const x = (bounds.min[0] + bounds.max[0]) / 2 + centreOff * lookX;
  const y = (bounds.min[1] + bounds.max[1]) / 2 + centreOff * lookY;
  return { x, y, lookX, lookY, offsetM };
}
