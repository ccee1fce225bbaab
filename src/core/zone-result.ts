/** Depth, loads, water held and finished levels of one zone, weighted by the exact area of each cell's share. */

import type { ZoneInput } from '../model/deck-input.ts';
import type { Spread, ZoneResult } from './evaluation.ts';
import type { RegionCells } from './geometry/region-cells.ts';
import { type Affine, makeUpLayer, type StackCoefficients } from './layers/coefficients.ts';
import type { MakeUp } from './layers/make-up.ts';

/**
 * Sums up a zone.
 * @param laid - the zone's cells [-]
 * @param stack - coefficients of the finished build-up [kN/m²]
 * @param makeUp - make-up thickness per cell [m]
 * @param zone - the zone, for whether it has a make-up layer [-]
 * @param deckLevelsM - level of the membrane at each cell's centre [m]
 * @param cellM - side of a cell [m]
 * @returns least, mean and greatest values [m], [kN/m²], [l/m²], and weights [kN]
 * @source contract.md, section 4 (means are integrals over the covered shares)
 */
export function zoneResult(
  laid: RegionCells,
  stack: StackCoefficients,
  makeUp: MakeUp,
  zone: ZoneInput,
  deckLevelsM: Float64Array,
  cellM: number,
): ZoneResult {
  const t = makeUp.thicknessM;
  const single = t.length === 1;
  const { fixed, perM } = stack.depth;
  let shareSum = 0;
  let makeUpSum = 0;
  let finishedSum = 0;
  let least = Infinity;
  let most = -Infinity;
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < laid.cells.length; i++) {
    const m = t[single ? 0 : i];
    const share = laid.shares[i];
    const finished = deckLevelsM[laid.cells[i]] + fixed + perM * m;
    shareSum += share;
    makeUpSum += share * m;
    finishedSum += share * finished;
    if (m < least) least = m;
    if (m > most) most = m;
    if (finished < low) low = finished;
    if (finished > high) high = finished;
  }
  if (laid.cells.length === 0) return emptyZone(makeUpLayer(zone.buildUp) >= 0);
  const mean = single ? t[0] : makeUpSum / shareSum;
  const spread = (of: Affine): Spread => ({
    min: of.fixed + of.perM * least,
    mean: of.fixed + of.perM * mean,
    max: of.fixed + of.perM * most,
  });
  const makeUpM3 = single ? t[0] * laid.areaM2 : makeUpSum * cellM * cellM;
  return {
    areaM2: laid.areaM2,
    depthM: spread(stack.depth),
    makeUpM: makeUpLayer(zone.buildUp) >= 0 ? { min: least, mean, max: most } : null,
    makeUpM3,
    dryKNm2: spread(stack.dry),
    saturatedKNm2: spread(stack.saturated),
    heldLm2: spread(stack.held),
    finishedM: { min: low, mean: finishedSum / shareSum, max: high },
    dryKN: stack.dry.fixed * laid.areaM2 + stack.dry.perM * makeUpM3,
    saturatedKN: stack.saturated.fixed * laid.areaM2 + stack.saturated.perM * makeUpM3,
  };
}

/** A zone that lies beyond the deck altogether (told as `zone.outside`) carries nothing. */
function emptyZone(hasMakeUp: boolean): ZoneResult {
  const none: Spread = { min: 0, mean: 0, max: 0 };
  return {
    areaM2: 0,
    depthM: none,
    makeUpM: hasMakeUp ? none : null,
    makeUpM3: 0,
    dryKNm2: none,
    saturatedKNm2: none,
    heldLm2: none,
    finishedM: none,
    dryKN: 0,
    saturatedKN: 0,
  };
}
