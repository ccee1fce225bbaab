/** A cart and the lane it drives on, small enough to be worked by hand. */

import { evaluate } from '../../src/core/evaluate.ts';
import type { DeckInput } from '../../src/model/deck-input.ts';
import type { VehicleInput, WheelLayer, WheelRun } from '../../src/model/wheel-input.ts';
import { bay, box, buildUp, deck, layer, zone } from './deck-builder.ts';

/** Front axle 20 kN, rear axle 60 kN 2 m behind; patches 0.2 m × 0.4 m, 1.2 m apart. */
export const CART: VehicleInput = {
  id: 'cart',
  name: 'Cart',
  axles: [
    { atM: 0, loadKN: 20, wheels: 2, trackM: 1.2, alongM: 0.2, acrossM: 0.4 },
    { atM: 2, loadKN: 60, wheels: 2, trackM: 1.2, alongM: 0.2, acrossM: 0.4 },
  ],
  pad: null,
  radiusM: 4,
};

/** The cart along a line, in the finished garden. */
export function cartRun(route: readonly number[], over: Partial<WheelRun> = {}): WheelRun {
  return { id: 'F', vehicle: CART, route: Float64Array.from(route), stage: null, dynamicFactor: 1, ...over };
}

const COURSES = [layer('base course', 0.3, { saturatedPerMKNm3: 20 }), layer('surfacing', 0.1, { saturatedPerMKNm3: 25 })];
const COURSE_SPREADS: readonly WheelLayer[] = [
  { dispersal: 0.5, bearingKPa: 100 },
  { dispersal: 1, bearingKPa: 1000 },
];

/** Base course and surfacing, and how wheels spread through them from below. */
export const COURSES_ONLY = { lane: buildUp('lane', COURSES), spreads: COURSE_SPREADS } as const;

/** The same on a protection layer that spreads nothing. */
export const PROTECTED = {
  lane: buildUp('lane', [layer('protection', 0.01, { saturatedFixedKNm2: 0.05 }), ...COURSES]),
  spreads: [{ dispersal: 0, bearingKPa: null }, ...COURSE_SPREADS] as readonly WheelLayer[],
} as const;

/** The lane laid on 16 m × 4 m in cells of 0.25 m, over two bays of 8 m. */
export function laidLane(over: Partial<DeckInput> = {}) {
  return evaluate(
    deck({
      cellM: 0.25,
      deck: box(0, 0, 16, 4),
      bays: [bay('west', box(0, 0, 8, 4)), bay('east', box(8, 0, 16, 4))],
      zones: [zone('Z', box(0, 0, 16, 4), PROTECTED.lane)],
      ...over,
    }),
  );
}
