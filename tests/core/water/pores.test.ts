/** Water in the pores of a build-up, by hand. */

import { describe, expect, it } from 'vitest';
import { poreColumn, waterInPoresM } from '../../../src/core/water/pores.ts';
import { buildUp, layer } from '../../helpers/deck-builder.ts';

const GARDEN = buildUp('garden', [
  layer('drainage element', 0.06),
  layer('light fill', 0.2, { rangeM: { min: 0.1, max: 0.5 } }),
  layer('substrate', 0.25),
]);
const COLUMN = poreColumn(GARDEN, [0.8, 0.4, 0.1]);

describe('water in pores', () => {
  it.each([
    ['nothing', 0, 0],
    // 0.8 · 0.03
    ['half the element', 0.03, 0.024],
    // 0.8 · 0.06
    ['to the top of the element', 0.06, 0.048],
    // 0.048 + 0.4 · 0.3 of the 0.3 m that the make-up layer is here
    ['to the top of the fill', 0.36, 0.168],
    // 0.168 + 0.1 · 0.25
    ['to the finished level', 0.61, 0.193],
    // 0.193 + 0.1
    ['0.1 m above it', 0.71, 0.293],
  ])('%s', (_, depthM, waterM) => {
    expect(waterInPoresM(COLUMN, 0.3, depthM)).toBeCloseTo(waterM, 12);
  });

  it('refuses shares that are not of its layers, or no shares', () => {
    expect(() => poreColumn(GARDEN, [0.8, 0.4])).toThrow(RangeError);
    expect(() => poreColumn(GARDEN, [0.8, 0.4, 1.2])).toThrow(RangeError);
    expect(() => poreColumn(GARDEN, [0.8, Number.NaN, 0.1])).toThrow(RangeError);
  });
});
