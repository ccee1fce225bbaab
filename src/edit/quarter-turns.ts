/** Sine and cosine of an angle in degrees, without rounding at quarter turns. */

const QUARTERS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

/**
 * Cosine and sine.
 * @param angleDeg - angle [°]
 * @returns both [-]
 */
export function cosSin(angleDeg: number): readonly [cos: number, sin: number] {
  const quarters = angleDeg / 90;
  const angle = (angleDeg * Math.PI) / 180;
  return Number.isInteger(quarters) ? QUARTERS[((quarters % 4) + 4) % 4] : [Math.cos(angle), Math.sin(angle)];
}
