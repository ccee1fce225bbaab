/**
 * Pressure of wheels at a depth: every patch has grown by the layers above it and presses evenly. Where patches overlap
 * their pressures add, exactly. The layers under the wheel looked at hold for its neighbours too.
 */

import type { BuildUpInput, Ring } from '../../model/deck-input.ts';
import type { Governs } from '../../model/run.ts';
import type { WheelLayer, WheelPatch } from '../../model/wheel-input.ts';
import type { Affine } from '../layers/coefficients.ts';

/** What lies above a layer's top, or above the membrane, each as fixed part and part per metre of make-up layer. */
export interface LayerTop {
  /** Index in the build-up; -1 is the membrane. */
  readonly layer: number;
  /** Growth of a patch on every side [m]. */
  readonly spread: Affine;
  /** Saturated weight of what lies above [kN/m²]. */
  readonly above: Affine;
  readonly depth: Affine;
}

/** A touch this small is no overlap [m]. */
const TOUCH_M = 1e-7;

/**
 * Growth, weight above and depth at the top of every layer present and at the membrane, from the top down.
 * @param buildUp - layers bottom to top [m]
 * @param layers - how each of them spreads [-]
 * @param present - whether a layer is there, by its index [-]
 * @param vegetation - whether the vegetation load counts [-]
 * @returns tops, the membrane last [m]
 * @source contract.md, section 2, Wheels; an infill's whole weight counts above its element, which is a little too much
 */
export function layerTops(
  buildUp: BuildUpInput,
  layers: readonly WheelLayer[],
  present: (layer: number) => boolean,
  vegetation: boolean,
): LayerTop[] {
  const spread = { fixed: 0, perM: 0 };
  const above = { fixed: vegetation ? buildUp.vegetationKNm2 : 0, perM: 0 };
  const depth = { fixed: 0, perM: 0 };
  const tops: LayerTop[] = [];
  const push = (layer: number) => tops.push({ layer, spread: { ...spread }, above: { ...above }, depth: { ...depth } });
  for (let i = buildUp.layers.length - 1; i >= 0; i--) {
    if (!present(i)) continue;
    push(i);
    const { thicknessM, rangeM, saturatedFixedKNm2, saturatedPerMKNm3 } = buildUp.layers[i];
    const grow = (sum: { fixed: number; perM: number }, perM: number) => {
      if (rangeM) sum.perM += perM;
      else sum.fixed += perM * thicknessM;
    };
    grow(spread, layers[i].dispersal);
    grow(depth, 1);
    grow(above, saturatedPerMKNm3);
    above.fixed += saturatedFixedKNm2;
  }
  push(-1);
  return tops;
}

/**
 * Pressure under one wheel alone.
 * @param wheel - wheel [kN]
 * @param spreadM - growth of its patch on every side [m]
 * @returns pressure [kPa]
 * @source contract.md, section 2, Wheels (prism method: a rectangle that grows with depth)
 */
export function patchKPa(wheel: WheelPatch, spreadM: number): number {
  return wheel.loadKN / ((wheel.alongM + 2 * spreadM) * (wheel.acrossM + 2 * spreadM));
}

/**
 * Outline of a grown patch.
 * @param wheel - wheel [m]
 * @param spreadM - growth on every side [m]
 * @returns ring, counter-clockwise [m]
 * @source none: geometry
 */
export function patchRing(wheel: WheelPatch, spreadM: number): Ring {
  const { x, y, dirX, dirY } = wheel;
  const along = wheel.alongM / 2 + spreadM;
  const across = wheel.acrossM / 2 + spreadM;
  const ring = new Float64Array(8);
  for (let i = 0; i < 4; i++) {
    const a = i === 1 || i === 2 ? along : -along;
    const c = i >= 2 ? across : -across;
    ring[2 * i] = x + a * dirX - c * dirY;
    ring[2 * i + 1] = y + a * dirY + c * dirX;
  }
  return ring;
}

/** Greatest pressure somewhere in a wheel's grown patch. */
export interface PatchPeak {
  readonly kPa: number;
  /** How many wheels press there together. */
  readonly wheels: number;
}

/**
 * Greatest sum of the pressures of all wheels within one wheel's grown patch, exact for patches at any angle: a sum of
 * even pressures is greatest at a corner of a patch or where two outlines cross.
 * @param wheels - all wheels standing [kN]
 * @param index - wheel whose patch is looked at [-]
 * @param spreadM - growth on every side [m]
 * @returns pressure and number of wheels that press together [kPa]
 * @source none: geometry; contract.md, section 2, Wheels (overlapping wheels add)
 */
export function greatestSum(wheels: readonly WheelPatch[], index: number, spreadM: number): PatchPeak {
  const own = wheels[index];
  let near: WheelPatch[] | null = null;
  for (let i = 0; i < wheels.length; i++) {
    if (i === index || !mayMeet(own, wheels[i], spreadM) || !meet(own, wheels[i], spreadM)) continue;
    near ??= [own];
    near.push(wheels[i]);
  }
  const alone = patchKPa(own, spreadM);
  if (!near) return { kPa: alone, wheels: 1 };
  // Shrunk by a hair, so that patches that only touch don't add.
  const shrunkM = spreadM - TOUCH_M;
  const rings = near.map((wheel) => patchRing(wheel, shrunkM));
  const pressures = near.map((wheel) => patchKPa(wheel, spreadM));
  let best: PatchPeak = { kPa: alone, wheels: 1 };
  for (const [x, y] of meetingPoints(rings)) {
    if (!holds(own, shrunkM, x, y)) continue;
    let kPa = 0;
    let count = 0;
    for (let i = 0; i < near.length; i++) {
      if (!holds(near[i], shrunkM, x, y)) continue;
      kPa += pressures[i];
      count++;
    }
    if (kPa > best.kPa) best = { kPa, wheels: count };
  }
  return best;
}

/** Circles around both patches meet. */
function mayMeet(a: WheelPatch, b: WheelPatch, spreadM: number): boolean {
  // Not Math.hypot: this is asked for every pair, layer and position, and that is many times slower.
  const reach =
    (Math.sqrt(a.alongM * a.alongM + a.acrossM * a.acrossM) + Math.sqrt(b.alongM * b.alongM + b.acrossM * b.acrossM)) / 2 +
    2 * Math.SQRT2 * spreadM;
  const dx = a.x - b.x;
  const dy = a.y - b.y;
  return dx * dx + dy * dy < reach * reach;
}

/** Two rectangles overlap unless a side of one of them parts them. */
function meet(a: WheelPatch, b: WheelPatch, spreadM: number): boolean {
  return !parted(a, b, spreadM) && !parted(b, a, spreadM);
}

function parted(a: WheelPatch, b: WheelPatch, spreadM: number): boolean {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const cos = Math.abs(a.dirX * b.dirX + a.dirY * b.dirY);
  const sin = Math.abs(a.dirX * b.dirY - a.dirY * b.dirX);
  const [along, across] = [b.alongM / 2 + spreadM, b.acrossM / 2 + spreadM];
  const reachAlong = a.alongM / 2 + spreadM + along * cos + across * sin;
  const reachAcross = a.acrossM / 2 + spreadM + along * sin + across * cos;
  return (
    Math.abs(dx * a.dirX + dy * a.dirY) >= reachAlong - 2 * TOUCH_M || Math.abs(dy * a.dirX - dx * a.dirY) >= reachAcross - 2 * TOUCH_M
  );
}

function holds(wheel: WheelPatch, spreadM: number, x: number, y: number): boolean {
  const [dx, dy] = [x - wheel.x, y - wheel.y];
  // A corner or crossing worked out in rounded numbers still counts as on its own outline.
  const rounding = 1e-10;
  return (
    Math.abs(dx * wheel.dirX + dy * wheel.dirY) <= wheel.alongM / 2 + spreadM + rounding &&
    Math.abs(dy * wheel.dirX - dx * wheel.dirY) <= wheel.acrossM / 2 + spreadM + rounding
  );
}

/** Corners of all rings and the points where their sides cross. */
function meetingPoints(rings: readonly Ring[]): [number, number][] {
  const points: [number, number][] = [];
  rings.forEach((ring, r) => {
    for (let i = 0; i < 8; i += 2) points.push([ring[i], ring[i + 1]]);
    for (let s = 0; s < r; s++) for (let i = 0; i < 8; i += 2) for (let j = 0; j < 8; j += 2) pushCrossing(points, ring, i, rings[s], j);
  });
  return points;
}

function pushCrossing(points: [number, number][], a: Ring, i: number, b: Ring, j: number): void {
  const rx = a[(i + 2) % 8] - a[i];
  const ry = a[(i + 3) % 8] - a[i + 1];
  const sx = b[(j + 2) % 8] - b[j];
  const sy = b[(j + 3) % 8] - b[j + 1];
  const det = rx * sy - ry * sx;
  // Sides that run alongside have their corners in the list already.
  if (Math.abs(det) < 1e-12) return;
  const [dx, dy] = [b[j] - a[i], b[j + 1] - a[i + 1]];
  const share = (dx * sy - dy * sx) / det;
  const other = (dx * ry - dy * rx) / det;
  if (share >= 0 && share <= 1 && other >= 0 && other <= 1) points.push([a[i] + share * rx, a[i + 1] + share * ry]);
}

/** Wheels whose grown patches hang together, taken as one rectangle around them all. */
export interface MergedPatch {
  readonly kPa: number;
  readonly loadKN: number;
  readonly alongM: number;
  readonly acrossM: number;
  readonly wheels: number;
}

/**
 * The other way to take overlapping wheels: the rectangle around all patches that hang together, in the heading of the
 * wheel looked at, evenly pressed by their summed load. Being the mean over a rectangle that holds every patch whole, it
 * never exceeds the greatest sum anywhere in it; under a light wheel that hangs together with a heavy one it may be more
 * than the sum right there.
 * @param wheels - all wheels standing [kN]
 * @param index - wheel looked at [-]
 * @param spreadM - growth on every side [m]
 * @returns pressure of the rectangle, its load and sides [kPa]
 * @source EN 1991-2:2003, 4.9.1 and AASHTO LRFD 3.6.1.2.6 (from memory): overlapping areas merged
 */
export function mergedPatch(wheels: readonly WheelPatch[], index: number, spreadM: number): MergedPatch {
  const own = wheels[index];
  const together = [own];
  const left = wheels.filter((_, i) => i !== index);
  for (let i = 0; i < together.length; i++) {
    for (let j = left.length - 1; j >= 0; j--) {
      if (meet(together[i], left[j], spreadM)) together.push(...left.splice(j, 1));
    }
  }
  const { dirX, dirY } = own;
  const span = (across: boolean) => {
    let low = Infinity;
    let high = -Infinity;
    for (const wheel of together) {
      const ring = patchRing(wheel, spreadM);
      for (let i = 0; i < 8; i += 2) {
        const value = across ? ring[i + 1] * dirX - ring[i] * dirY : ring[i] * dirX + ring[i + 1] * dirY;
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
    }
    return high - low;
  };
  const [alongM, acrossM] = [span(false), span(true)];
  const loadKN = together.reduce((sum, wheel) => sum + wheel.loadKN, 0);
  return { kPa: loadKN / (alongM * acrossM), loadKN, alongM, acrossM, wheels: together.length };
}

/**
 * The greater of the sum and the enclosing rectangle.
 * @param wheels - all wheels standing [kN]
 * @param index - wheel looked at [-]
 * @param spreadM - growth on every side [m]
 * @returns pressure and which of the two it is [kPa]
 * @source contract.md, section 2, Wheels
 */
export function governingPressure(
  wheels: readonly WheelPatch[],
  index: number,
  spreadM: number,
): { readonly kPa: number; readonly governs: Governs } {
  const sum = greatestSum(wheels, index, spreadM);
  if (sum.wheels === 1) return { kPa: sum.kPa, governs: 'one wheel' };
  const merged = mergedPatch(wheels, index, spreadM);
  if (merged.kPa > sum.kPa * (1 + 1e-9)) return { kPa: merged.kPa, governs: 'enclosing rectangle' };
  return { kPa: sum.kPa, governs: 'sum of wheels' };
}
