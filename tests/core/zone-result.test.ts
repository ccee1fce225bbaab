/** Spreads and weights of one zone: means by the exact shares. */

import { expect, it } from 'vitest';
import { stackCoefficients } from '../../src/core/layers/coefficients.ts';
import type { MakeUp } from '../../src/core/layers/make-up.ts';
import { zoneResult } from '../../src/core/zone-result.ts';
import { box, buildUp, layer, zone } from '../helpers/deck-builder.ts';

const FILL = layer('light fill', 0.2, { rangeM: { min: 0, max: 1 }, dryPerMKNm3: 2, saturatedPerMKNm3: 4, heldPerMLm2: 100 });
const SOIL = layer('substrate', 0.3, { dryFixedKNm2: 3, saturatedFixedKNm2: 5, heldFixedLm2: 120 });
const NOT_HELD_BACK = {
  shortM2: 0,
  shortInsideM2: 0,
  shortMostM: 0,
  shortCell: -1,
  overM2: 0,
  overInsideM2: 0,
  overMostM: 0,
  overCell: -1,
};
const thick = (...t: number[]): MakeUp => ({ thicknessM: Float64Array.from(t), ...NOT_HELD_BACK });

/** Cells 2, 0 and 1, the last only a quarter covered; cells of 0.5 m. */
const LAID = { cells: Int32Array.of(2, 0, 1), shares: Float64Array.of(1, 1, 0.25), areaM2: 2.25 * 0.25, outsideM2: 0 };
const DECK_M = Float64Array.of(0.1, 0.4, 0);

it('weighs each cell by its share', () => {
  const of = zone('Z', box(0, 0, 1, 1), buildUp('b', [FILL, SOIL]));
  const result = zoneResult(
    LAID,
    stackCoefficients(of.buildUp, () => true, true),
    thick(0.2, 0.4, 0.8),
    of,
    DECK_M,
    0.5,
  );
  // Make-up: (0.2 + 0.4 + 0.25 · 0.8)/2.25 = 0.8/2.25
  const mean = 0.8 / 2.25;
  expect(result.makeUpM).toEqual({ min: 0.2, mean: expect.closeTo(mean, 12), max: 0.8 });
  expect(result.depthM).toEqual({ min: 0.5, mean: expect.closeTo(0.3 + mean, 12), max: expect.closeTo(1.1, 12) });
  expect(result.dryKNm2.mean).toBeCloseTo(3 + 2 * mean, 12);
  expect(result.saturatedKNm2).toEqual({
    min: expect.closeTo(5.8, 12),
    mean: expect.closeTo(5 + 4 * mean, 12),
    max: expect.closeTo(8.2, 12),
  });
  expect(result.heldLm2.max).toBeCloseTo(200, 12);
  // Finished: 0 + 0.3 + 0.2 = 0.5; 0.1 + 0.3 + 0.4 = 0.8; 0.4 + 0.3 + 0.8 = 1.5; mean (0.5 + 0.8 + 0.375)/2.25
  expect(result.finishedM).toEqual({ min: expect.closeTo(0.5, 12), mean: expect.closeTo(1.675 / 2.25, 12), max: expect.closeTo(1.5, 12) });
  // Volume: 0.8 cells of 0.25 m²
  expect(result.makeUpM3).toBeCloseTo(0.2, 12);
  // 5 · 0.5625 + 4 · 0.2; 3 · 0.5625 + 2 · 0.2
  expect(result.saturatedKN).toBeCloseTo(3.6125, 12);
  expect(result.dryKN).toBeCloseTo(2.0875, 12);
});

it('without a make-up layer has none', () => {
  const of = zone('Z', box(0, 0, 1, 1), buildUp('b', [SOIL]));
  const result = zoneResult(
    LAID,
    stackCoefficients(of.buildUp, () => true, true),
    thick(0),
    of,
    DECK_M,
    0.5,
  );
  expect(result.makeUpM).toBeNull();
  expect(result.saturatedKNm2).toEqual({ min: 5, mean: 5, max: 5 });
  // 5 · 0.5625
  expect(result.saturatedKN).toBeCloseTo(2.8125, 12);
});

it('beyond the deck carries nothing, and no infinities', () => {
  const of = zone('Z', box(9, 9, 10, 10), buildUp('b', [FILL, SOIL]));
  const laid = { cells: new Int32Array(0), shares: new Float64Array(0), areaM2: 0, outsideM2: 1 };
  const result = zoneResult(
    laid,
    stackCoefficients(of.buildUp, () => true, true),
    thick(),
    of,
    DECK_M,
    0.5,
  );
  expect(result.areaM2).toBe(0);
  const none = { min: 0, mean: 0, max: 0 };
  expect([result.depthM, result.makeUpM, result.saturatedKNm2, result.finishedM]).toEqual([none, none, none, none]);
  expect(result.saturatedKN).toBe(0);
});
