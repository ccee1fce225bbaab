/** How far the exploded view lifts the surfaces of a part: the shader's rule, for what is placed by the processor. */

import type { Picture } from '../model/picture.ts';

/**
 * Lift of a part's upper or lower surface [m].
 * @param picture - picture
 * @param part - index of the part
 * @param upper - its upper surface
 * @param explode - 0 … 1
 * @returns lift [m]
 */
export function liftM(picture: Picture, part: number, upper: boolean, explode: number): number {
  const one = picture.parts[part];
  if (one === undefined) throw new RangeError(`liftM: part must be one of ${picture.parts.length}, got ${part}`);
  return explode * (picture.floorLiftM[one.floor] + (upper ? one.extraTopM : one.extraBottomM));
}
