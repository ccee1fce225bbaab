/** Build-ups within tolerances, by hand. */

import { describe, expect, it } from 'vitest';
import { stackCoefficients } from '../../../src/core/layers/coefficients.ts';
import { tolerantLoad } from '../../../src/core/loads/tolerance.ts';
import type { LayerInput, ZoneInput } from '../../../src/model/deck-input.ts';
import { box, buildUp, layer, zone } from '../../helpers/deck-builder.ts';

/** 0.3 m at 16 kN/m³, ± 20 mm and ± 5 %. */
const soil = layer('substrate', 0.3, { materialId: 'soil', saturatedPerMKNm3: 16 });
const fill = layer('light fill', 0.2, { materialId: 'fill', saturatedPerMKNm3: 3, rangeM: { min: 0, max: 1 } });
const sheet = layer('filter', 0.001, { materialId: 'soil', saturatedFixedKNm2: 0.1 });
const LEVEL: Partial<ZoneInput> = { finish: { kind: 'plane', x: 0, y: 0, z: 1, slopeX: 0, slopeY: 0 } };

const TOLERANCE: Record<string, { thicknessM: number; density: number }> = {
  soil: { thicknessM: 0.02, density: 0.05 },
  fill: { thicknessM: 0.03, density: 0.1 },
};

function loads(layers: readonly LayerInput[], over: Partial<ZoneInput> = {}, vegetationKNm2 = 0) {
  const on = zone('Z', box(0, 0, 1, 1), buildUp('b', layers, vegetationKNm2), over);
  const planned = stackCoefficients(on.buildUp, () => true, true).saturated;
  const at = (way: 1 | -1) => tolerantLoad(on, planned, (id) => TOLERANCE[id], way);
  return { low: at(-1), high: at(1) };
}
const affine = (fixed: number, perM: number) => ({ fixed: expect.closeTo(fixed, 12), perM: expect.closeTo(perM, 12) });

describe('a layer of fixed thickness', () => {
  it('is thicker and heavier: 16 · 1.05 · 0.32 = 5.376, 16 · 0.95 · 0.28 = 4.256, planned 4.8', () => {
    expect(loads([soil])).toEqual({ low: affine(4.256, 0), high: affine(5.376, 0) });
  });

  it('never gets thinner than nothing', () => {
    const film = layer('substrate', 0.01, { materialId: 'soil', saturatedPerMKNm3: 16 });
    expect(loads([film]).low).toEqual(affine(0, 0));
  });

  it('given by its weight per m² does not vary, nor do plants', () => {
    expect(loads([sheet], {}, 0.2)).toEqual({ low: affine(0.3, 0), high: affine(0.3, 0) });
  });

  it('in voids varies by density there and by thickness above: 16 · 1.05 · (0.04 + 0.01 + 0.02), 16 · 0.95 · 0.04', () => {
    const infill = layer('drainage fill', 0.01, {
      materialId: 'soil',
      saturatedPerMKNm3: 16,
      saturatedFixedKNm2: 16 * 0.04,
      voidVolumeM: 0.04,
    });
    expect(loads([infill])).toEqual({ low: affine(0.608, 0), high: affine(1.176, 0) });
  });
});

describe('a make-up layer', () => {
  it('under a set finish varies by density only: 3 · 1.1 and 3 · 0.9 per metre', () => {
    expect(loads([fill, soil], LEVEL)).toEqual({ low: affine(4.256, 2.7), high: affine(5.376, 3.3) });
  });

  it('at its nominal thickness, as nothing keeps a level, also by thickness: 0.03 · 3.3 and 0.03 · 2.7 more and less', () => {
    expect(loads([fill, soil])).toEqual({ low: affine(4.256 - 0.081, 2.7), high: affine(5.376 + 0.099, 3.3) });
  });
});
