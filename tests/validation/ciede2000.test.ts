/**
 * Source: Sharma, Wu, Dalal, "The CIEDE2000 color-difference formula: Implementation notes, supplementary test data, and
 * mathematical observations", Color Research and Application 30 (2005) 21-30, Table 1. Grade: secondary (rows as several
 * open colour tools print them, alike; the paper itself not opened). Read 2026-11-25.
 * WCAG 2.2: contrast of black on white is 21 : 1 by its definition.
 */

import { expect, it } from 'vitest';
import { contrast, difference2000, type Lab, lab, linear } from '../helpers/colour-vision.ts';

/** Rows that reach each branch: blue turn, no hue, hues across 0°, large steps, dark. L, a, b, L, a, b, printed ΔE. */
const ROWS: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425],
  [50, 3.1571, -77.2803, 50, 0, -82.7485, 2.8615],
  [50, -1.3802, -84.2814, 50, 0, -82.7485, 1.0],
  [50, 0, 0, 50, -1, 2, 2.3669],
  [50, -1, 2, 50, 0, 0, 2.3669],
  [50, 2.49, -0.001, 50, -2.49, 0.0009, 7.1792],
  [50, 2.49, -0.001, 50, -2.49, 0.0011, 7.2195],
  [50, -0.001, 2.49, 50, 0.0009, -2.49, 4.8045],
  [50, -0.001, 2.49, 50, 0.0011, -2.49, 4.7461],
  [50, 2.5, 0, 50, 0, -2.5, 4.3065],
  [50, 2.5, 0, 73, 25, -18, 27.1492],
  [50, 2.5, 0, 61, -5, 29, 22.8977],
  [50, 2.5, 0, 56, -27, -3, 31.903],
  [50, 2.5, 0, 58, 24, 15, 19.4535],
  [50, 2.5, 0, 50, 3.1736, 0.5854, 1.0],
  [60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644],
  [63.0109, -31.0961, -5.8663, 62.8187, -29.7946, -4.0864, 1.263],
  [61.2901, 3.7196, -5.3901, 61.4292, 2.248, -4.962, 1.8731],
  [35.0831, -44.1164, 3.7933, 35.0232, -40.0716, 1.5901, 1.8645],
  [22.7233, 20.0904, -46.694, 23.0331, 14.973, -42.5619, 2.0373],
  [36.4612, 47.858, 18.3852, 36.2715, 50.5065, 21.2231, 1.4146],
  [90.8027, -2.0831, 1.441, 91.1528, -1.6435, 0.0447, 1.4441],
  [6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377],
  [2.0776, 0.0795, -1.135, 0.9033, -0.0636, -0.5514, 0.9082],
];

it.each(ROWS)('L %d a %d b %d against L %d a %d b %d: %d', (...row) => {
  const [one, other] = [row.slice(0, 3), row.slice(3, 6)] as unknown as [Lab, Lab];
  const printed = row[6];
  expect(difference2000(one, other)).toBeCloseTo(printed, 4);
  expect(difference2000(other, one)).toBeCloseTo(printed, 4);
});

it('white and black, and the contrast between them', () => {
  // By definition of CIELAB and of WCAG's ratio.
  const white = lab(linear('#FFFFFF'));
  expect(white[0]).toBeCloseTo(100, 3);
  expect(Math.hypot(white[1], white[2])).toBeLessThan(0.05);
  expect(lab(linear('#000000'))[0]).toBeCloseTo(0, 9);
  expect(contrast('#FFFFFF', '#000000')).toBeCloseTo(21, 9);
});
