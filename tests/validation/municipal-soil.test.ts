/**
 * Binding text of development plans, Hamburg, on planting over garages below ground (api.hamburg.de, texts of the plans, read): substrate to root
 * in of at least 80 cm; for trees at least 1.0 m over 12 m² each. 12 m² · 1.0 m = 12.0 m³.
 */

import { describe, expect, it } from 'vitest';
import { MUNICIPAL_SOIL } from '../../src/catalogue/rule-limits.ts';
import type { SceneLimits } from '../../src/model/scene-file.ts';
import { buildUp, findingsOf, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const { substrateMm, treeSoilM2, treeSoilMm } = MUNICIPAL_SOIL;

const RULE: SceneLimits = {
  substrateMm: { lawn: substrateMm.value },
  treeSoilMm: treeSoilMm.value,
  treeSoilM3: (treeSoilM2.value * treeSoilMm.value) / 1000,
  // The rule says nothing of subsoil.
  subsoilBelowMm: 3000,
  source: 'binding text of the development plan',
};

/** A planter of 3 m by `lengthM` with one tree in it on a deck of 8 m × 5 m. */
function planter(lengthM: number, soilMm: number, trees = 1) {
  const bed = rect(1, 1, 1 + lengthM, 4);
  const scene = sceneOf({
    deck: { outline: rect(0, 0, 8, 5) },
    limits: RULE,
    buildups: [buildUp('bed', [{ material: 'soil', thicknessMm: soilMm }], { vegetation: { form: 'lawn', kNm2: 0.05 } })],
    zones: [zone('bed', bed, 'bed')],
    objects: Array.from({ length: trees }, (_, i) => ({ kind: 'tree', id: `T${i}`, at: [2 + i / 2, 2], massKg: 900, spreadM: 1 }) as const),
  });
  return findingsOf(read(scene), 'depth.vegetation');
}

describe('trees: 1.0 m over 12 m² each', () => {
  it('3 · 4 = 12 m² at 1.0 m pass', () => {
    expect(planter(4, 1000)).toEqual([]);
  });

  it('11 m² at 1.0 m fail: 11 of 12 m³', () => {
    expect(planter(11 / 3, 1000)).toMatchObject([
      { where: { zone: 'bed', object: 'T0', at: [2, 2] }, value: expect.closeTo(11, 9), limit: 12, unit: 'm³', severity: 'check' },
    ]);
  });

  it('two trees need 24 m²: 3 · 4.5 = 13.5 m² leave each 6.75 m³', () => {
    expect(planter(4.5, 1000, 2).map((finding) => finding.value)).toEqual([expect.closeTo(6.75, 9), expect.closeTo(6.75, 9)]);
  });

  it('0.9 m over 15 m² fail by depth, though they are 13.5 m³', () => {
    expect(planter(5, 900)).toMatchObject([{ value: expect.closeTo(900, 9), limit: 1000, unit: 'mm' }]);
  });
});

describe('planting: 80 cm', () => {
  it('79 cm fail, 80 cm pass', () => {
    expect(planter(5, 790, 0)).toMatchObject([{ where: { zone: 'bed' }, value: expect.closeTo(790, 9), limit: 800, unit: 'mm' }]);
    expect(planter(5, 800, 0)).toEqual([]);
  });

  it('the source told is the one entered', () => {
    expect(planter(5, 790, 0)[0].source).toBe('binding text of the development plan (entered)');
  });
});
