/** Where the sun stands at an hour of an invented fair day, and what light it gives. North is +y. */

/** Red, green and blue as shown on the screen, 1 for the full colour. */
export type Rgb = readonly [number, number, number];

export interface SunLight {
  /** To the sun, length 1. */
  readonly towards: readonly [number, number, number];
  readonly sun: Rgb;
  readonly sky: Rgb;
  /** Light that comes back from below. */
  readonly below: Rgb;
}

const RISE = 5;
const SET = 21;
/** Highest at noon [°]; a summer day at middle latitudes. */
const HIGHEST_DEG = 58;
const LOWEST_DEG = 9;

const NOON_SUN: Rgb = [0.5, 0.475, 0.42];
const LOW_SUN: Rgb = [0.62, 0.43, 0.27];

const mix = (a: number, b: number, share: number): number => a + (b - a) * share;

/**
 * Light at an hour.
 * @param hour - 6 … 20
 * @returns direction and colours
 */
export function sunAt(hour: number): SunLight {
  const course = Math.min(1, Math.max(0, (hour - RISE) / (SET - RISE)));
  const up = Math.sin(Math.PI * course);
  const height = (Math.max(LOWEST_DEG, HIGHEST_DEG * up) * Math.PI) / 180;
  // From the north-east over the south to the north-west.
  const bearing = ((60 + 240 * course) * Math.PI) / 180;
  const low = (1 - up) ** 1.5;
  const [r, g, b] = NOON_SUN.map((value, i) => mix(value, LOW_SUN[i], low));
  return {
    towards: [Math.cos(height) * Math.sin(bearing), Math.cos(height) * Math.cos(bearing), Math.sin(height)],
    sun: [r, g, b],
    sky: [mix(0.6, 0.56, low), mix(0.62, 0.55, low), mix(0.66, 0.58, low)],
    below: [mix(0.44, 0.4, low), mix(0.42, 0.37, low), mix(0.39, 0.34, low)],
  };
}
