/** Longitude and latitude of a small site to metres: radii of curvature of the WGS 84 ellipsoid at its middle. */

/** Semi-major axis [m] and flattening [-] of WGS 84 (NGA.STND.0036). */
const AXIS_M = 6_378_137;
const FLATTENING = 1 / 298.257223563;
const SQUARE = FLATTENING * (2 - FLATTENING);
const RADIANS = Math.PI / 180;

/**
 * Lengths of one degree; off by less than 1 cm within 200 m.
 * @param latitude - of the middle of the site [°]
 * @returns metres east per degree of longitude, metres north per degree of latitude
 */
export function metresPerDegree(latitude: number): { readonly east: number; readonly north: number } {
  const sin = Math.sin(latitude * RADIANS);
  const root = Math.sqrt(1 - SQUARE * sin * sin);
  return {
    east: RADIANS * (AXIS_M / root) * Math.cos(latitude * RADIANS),
    north: RADIANS * ((AXIS_M * (1 - SQUARE)) / root ** 3),
  };
}
