/** What lies behind and under a retaining edge: depth of the build-up its soil belongs to, and the layers its base stands on. */

import type { Evaluation } from './evaluation.ts';
import { fixedThicknessM } from './layers/coefficients.ts';
import { plannedAt } from './probes.ts';

/** Distance between the places looked at along a wall [m]. */
const STEP_M = 0.25;
/** A layer that reaches this little above the base is rounding of the drawing [m]. */
const ROUNDING_M = 0.001;

/** Where a wall stands. */
export interface WallPosition {
  /** Free face of the stem, local [m]. */
  readonly line: Float64Array;
  readonly side: 'left' | 'right';
  /** From the underside of the base slab to the surface of the soil. */
  readonly retainedM: number;
  readonly baseM: number;
  readonly stemM: number;
}

/** One place along a wall, in the middle of its heel. */
export interface WallPlace {
  /** On the free face, local [m]. */
  readonly x: number;
  readonly y: number;
  /** Zone of the soil, -1 for none. */
  readonly zone: number;
  /** Whole build-up there; 0 without a zone [m]. */
  readonly depthM: number;
  /** Indices of the layers under the base, bottom to top. */
  readonly under: readonly number[];
}

/**
 * Places along a retaining edge, as close as the cells usually are.
 * @param on - evaluation [m]
 * @param wall - where it stands [m]
 * @returns places, with the soil behind and the layers below [m]
 * @source contract.md, section 2, Make-up layer
 */
export function wallPlaces(on: Evaluation, wall: WallPosition): WallPlace[] {
  const { line } = wall;
  const places: WallPlace[] = [];
  const behindM = ((wall.stemM + wall.baseM) / 2) * (wall.side === 'left' ? 1 : -1);
  for (let i = 0; i + 3 < line.length; i += 2) {
    const dx = line[i + 2] - line[i];
    const dy = line[i + 3] - line[i + 1];
    const lengthM = Math.hypot(dx, dy);
    const steps = Math.max(1, Math.ceil(lengthM / STEP_M));
    for (let k = 0; k < steps; k++) {
      const share = (k + 0.5) / steps;
      const x = line[i] + share * dx;
      const y = line[i + 1] + share * dy;
      const soilX = x - (dy / lengthM) * behindM;
      const soilY = y + (dx / lengthM) * behindM;
      places.push({ x, y, ...soilAt(on, soilX, soilY, wall.retainedM) });
    }
  }
  return places;
}

function soilAt(on: Evaluation, x: number, y: number, retainedM: number): Pick<WallPlace, 'zone' | 'depthM' | 'under'> {
  const planned = plannedAt(on, x, y, null);
  if (!planned) return { zone: -1, depthM: 0, under: [] };
  const { buildUp } = on.input.zones[planned.zone];
  const depthM = planned.plannedM;
  const makeUpM = depthM - fixedThicknessM(buildUp);
  const undersideM = depthM - retainedM;
  let bottomM = 0;
  const under: number[] = [];
  buildUp.layers.forEach((layer, i) => {
    const topM = bottomM + (layer.rangeM ? makeUpM : layer.thicknessM);
    if (topM <= undersideM + ROUNDING_M || bottomM < undersideM - ROUNDING_M) under.push(i);
    bottomM = topM;
  });
  return { zone: planned.zone, depthM, under };
}
