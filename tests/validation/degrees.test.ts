/**
 * Lengths of a degree on the WGS 84 ellipsoid.
 * Encyclopaedia article "Geographic coordinate system", section "Length of a degree" (copy read at wiki.niidae.com): a degree of
 * latitude is 111132.92 − 559.82 cos 2φ + 1.175 cos 4φ − 0.0023 cos 6φ metres, its coefficients rounded:
 * a millionth is allowed, 0.2 mm in 200 m.
 * Drawing "WGS84 angle to distance conversion" (page of the file read): at 48°, 74.63 km and 111.2 km.
 * Question-and-answer page at answers.com on degrees: 110574 m and 111320 m at the equator, 111694 m at the pole.
 */

import { describe, expect, it } from 'vitest';
import { metresPerDegree } from '../../src/import/degrees.ts';
import { readText } from '../import/reading.ts';

describe('lengths of a degree', () => {
  it.each([0, 15, 30, 45, 52.5, 60, 75, 90])('of latitude at %d°: the series, to a millionth', (latitude) => {
    const angle = (latitude * Math.PI) / 180;
    const series = 111132.92 - 559.82 * Math.cos(2 * angle) + 1.175 * Math.cos(4 * angle) - 0.0023 * Math.cos(6 * angle);
    expect(Math.abs(metresPerDegree(latitude).north - series)).toBeLessThan(1e-6 * series);
  });

  it('printed values', () => {
    expect(Math.round(metresPerDegree(0).north)).toBe(110574);
    // 6378137 · π / 180 = 111319.49, printed as 111320.
    expect(Math.abs(metresPerDegree(0).east - 111320)).toBeLessThan(1);
    expect(Math.round(metresPerDegree(90).north)).toBe(111694);
    expect((metresPerDegree(48).east / 1000).toFixed(2)).toBe('74.63');
    expect((metresPerDegree(48).north / 1000).toFixed(1)).toBe('111.2');
  });
});

describe('a site in degrees', () => {
  it('0.0006° by 0.0005° at 48° are 44.78 m by 55.6 m: 0.0006 · 74.63 km, 0.0005 · 111.2 km', () => {
    const [x, y] = [11.5, 47.99975];
    const ring = [
      [x, y],
      [x + 0.0006, y],
      [x + 0.0006, y + 0.0005],
      [x, y + 0.0005],
      [x, y],
    ];
    const { box } = readText(JSON.stringify({ type: 'Polygon', coordinates: [ring] }), { unit: 'degrees' });
    expect((box?.maxX ?? 0) - (box?.minX ?? 0)).toBeCloseTo(44.78, 1);
    expect((box?.maxY ?? 0) - (box?.minY ?? 0)).toBeCloseTo(55.6, 1);
  });
});
