/** How a vehicle stands on the drawn surface: its body pitched after its axles, every axle tilted after its wheels. */

import { Vector3 } from 'three';
import type { Picture } from '../model/picture.ts';
import type { PoseWheel, RunPose } from '../model/run.ts';
import { liftM } from './lift.ts';
import type { Frame } from './vehicle-drawn.ts';

/** What heights are read from. */
export interface Drawing {
  readonly picture: Picture;
  readonly datumM: number;
  readonly explode: number;
}

/** Part of a layer of a zone, or the slab for the membrane and bare deck; -1 where it is not drawn. */
export function partOf({ parts }: Pick<Picture, 'parts'>, zone: string | null, layer: number): number {
  if (zone === null || layer < 0) return parts.findIndex((part) => part.kind === 'slab');
  return parts.findIndex((part) => part.owner === zone && part.layer === layer);
}

/** Where a wheel stands in the picture; null off the deck [m]. */
export function wheelTopM({ picture, datumM, explode }: Drawing, wheel: PoseWheel): number | null {
  if (wheel.surfaceM === null) return null;
  const under = wheel.grounds.find((ground) => !ground.beside);
  const part = partOf(picture, under?.zone ?? null, under?.tops[0]?.layer ?? -1);
  return wheel.surfaceM - datumM + (part < 0 ? 0 : liftM(picture, part, true, explode));
}

/**
 * Frames of body and axles; of a support its one frame.
 * @param pose - vehicle at a place
 * @param drawing - what heights are read from
 * @returns frames; none where nothing of it stands on the deck
 */
export function standingFrames(pose: RunPose, drawing: Drawing): readonly Frame[] {
  const tops = pose.wheels.map((wheel) => wheelTopM(drawing, wheel));
  if (tops.every((top) => top === null)) return [];
  if (pose.axles.length === 0) return pose.wheels.map((wheel, w) => level(wheel, tops[w] ?? 0));
  const stands = pose.axles.map((_, a) => axleStand(pose.wheels, tops, a));
  const known = stands.flatMap((stand, a) => (stand ? [{ a, ...stand }] : []));
  // An axle beyond the deck is taken as level with the nearest one on it.
  const standOf = (a: number) => known.reduce((best, one) => (Math.abs(one.a - a) < Math.abs(best.a - a) ? one : best));
  const axles = pose.axles.map((axle, a) => tilted(axle, standOf(a)));
  return [bodyFrame(axles), ...axles];
}

interface AxleStand {
  readonly zM: number;
  /** Rise to the left per metre. */
  readonly rise: number;
}

function axleStand(wheels: readonly PoseWheel[], tops: readonly (number | null)[], axle: number): AxleStand | null {
  const known = wheels.flatMap((wheel, w) => {
    const zM = tops[w];
    return wheel.axle === axle && zM !== null && zM !== undefined ? [{ leftM: wheel.leftM, zM }] : [];
  });
  if (known.length === 0) return null;
  const mean = (of: (one: (typeof known)[number]) => number) => known.reduce((sum, one) => sum + of(one), 0) / known.length;
  const [leftM, zM] = [mean((one) => one.leftM), mean((one) => one.zM)];
  const spread = mean((one) => (one.leftM - leftM) ** 2);
  // Wheels on two floors of the exploded view do not tip the vehicle over.
  const rise = spread > 0 ? Math.max(-0.2, Math.min(0.2, mean((one) => (one.leftM - leftM) * (one.zM - zM)) / spread)) : 0;
  return { zM: zM - rise * leftM, rise };
}

type Heading = RunPose['axles'][number];

function level({ x, y, dirX, dirY }: Heading, zM: number): Frame {
  return tilted({ x, y, dirX, dirY }, { zM, rise: 0 });
}

function tilted({ x, y, dirX, dirY }: Heading, { zM, rise }: AxleStand): Frame {
  const ahead = new Vector3(dirX, dirY, 0);
  const left = new Vector3(-dirY, dirX, rise).normalize();
  return { origin: new Vector3(x, y, zM), ahead, left, up: new Vector3().crossVectors(ahead, left) };
}

/** From the last axle to the front one, tilted as these are on the mean. */
function bodyFrame(axles: readonly Frame[]): Frame {
  const front = axles[0] as Frame;
  const rear = axles.at(-1) as Frame;
  if (axles.length === 1) return front;
  const ahead = front.origin.clone().sub(rear.origin).normalize();
  const left = front.left.clone().add(rear.left);
  left.addScaledVector(ahead, -left.dot(ahead)).normalize();
  return { origin: front.origin, ahead, left, up: new Vector3().crossVectors(ahead, left) };
}
