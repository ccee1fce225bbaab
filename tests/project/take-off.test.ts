/** The take-off of a small scene, by hand; the figures of check-values are in tests/validation/bulking.test.ts. */

import { describe, expect, it } from 'vitest';
import type { SceneMaterial } from '../../src/model/scene-file.ts';
import { buildUp, MAKE_UP, MATERIALS, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const close = (value: number) => expect.closeTo(value, 9);
const truck = { unit: 'truck', m3: 1, kg: 2000 };

/** Sheet in rolls with 10 % of laps, soil with a lorry and a price. */
const OWN: SceneMaterial[] = MATERIALS.map((material) => {
  if (material.id === 'sheet') return { ...material, lapPercent: 10, price: { per: 'm2', amount: 2 } } as const;
  if (material.id === 'soil') return { ...material, delivery: truck, price: { per: 'm3', amount: 50 } } as const;
  return material;
});

/** A: 2 m × 3 m, fill of 390 mm under a level of 0.5. B: 2 m × 3 m, element filled with soil, then 100 mm of it. */
const SCENE = sceneOf({
  materials: OWN,
  buildups: [
    MAKE_UP,
    buildUp('filled', [
      { material: 'element' },
      { material: 'soil', infill: true, thicknessMm: 10 },
      { material: 'soil', thicknessMm: 100 },
    ]),
  ],
  zones: [zone('A', rect(0, 0, 2, 3), 'make-up', { finish: { kind: 'level', levelM: 0.5 } }), zone('B', rect(2, 0, 4, 3), 'filled')],
  stages: [
    { id: 'S1', name: 'Below', place: [{ roles: ['protection', 'drainage element', 'light fill'] }] },
    { id: 'S2', name: 'Above', place: [{ zones: ['B'], roles: ['substrate'] }] },
  ],
});
const { takeoff } = read(SCENE).report;
const row = (material: string) => takeoff!.find((entry) => entry.material === material)!;

describe('take-off', () => {
  it('has a row per material, bottom to top', () => {
    expect(takeoff!.map((entry) => entry.material)).toEqual(['sheet', 'element', 'light', 'soil']);
  });

  it('sheets: 6 m², ordered with laps 6.6 m², delivered dry, 2 per m² ordered', () => {
    expect(row('sheet')).toEqual({
      material: 'sheet',
      areaM2: close(6),
      // 10 mm thick
      placedM3: close(0.06),
      orderM2: close(6.6),
      massKg: close(6.6),
      dryKg: close(6.6),
      deliveries: null,
      deliveryBy: null,
      deliveriesDry: null,
      price: close(13.2),
      zones: [{ id: 'A', areaM2: close(6), placedM3: close(0.06) }],
      stages: [{ id: 'S1', areaM2: close(6), placedM3: close(0.06) }],
    });
  });

  it('make-up layer: 6 m² · 0.39 = 2.34 m³, loose 2.925; 200 and 300 kg/m³; no price given', () => {
    expect(row('light')).toMatchObject({
      placedM3: close(2.34),
      orderM3: close(2.925),
      dryKg: close(468),
      massKg: close(702),
      price: null,
    });
    expect('orderM2' in row('light')).toBe(false);
  });

  it('a material laid twice is summed, voids of the element included', () => {
    // A 6 · 0.1; B 6 · (0.04 + 0.01) + 6 · 0.1: 0.6 + 0.3 + 0.6 = 1.5 m³, loose 1.8, 1500 and 2250 kg
    expect(row('soil')).toEqual({
      material: 'soil',
      // A 6, B twice 6
      areaM2: close(18),
      placedM3: close(1.5),
      orderM3: close(1.8),
      dryKg: close(1500),
      massKg: close(2250),
      // 1.8 loads of 1 m³, 1.1 of 2 t
      deliveries: 2,
      deliveryBy: 'volume',
      deliveriesDry: 2,
      // 1.8 · 50
      price: close(90),
      zones: [
        { id: 'A', areaM2: close(6), placedM3: close(0.6) },
        { id: 'B', areaM2: close(12), placedM3: close(0.9) },
      ],
      // Zone A's soil is in no stage, which `stage.left` tells.
      stages: [{ id: 'S2', areaM2: close(12), placedM3: close(0.9) }],
    });
  });
});

describe('prices and loads', () => {
  const soil = (over: Partial<SceneMaterial>) => {
    const materials = MATERIALS.map((material) => (material.id === 'soil' ? { ...material, ...over } : material));
    return read(sceneOf({ materials })).report.takeoff![0];
  };

  it('per m² laid, and per tonne as delivered at most: 12 m² · 0.1 · 1.5 t/m³ = 1.8 t', () => {
    expect(soil({ price: { per: 'm2', amount: 3 } }).price).toBeCloseTo(36, 9);
    expect(soil({ price: { per: 't', amount: 20 } }).price).toBeCloseTo(36, 9);
  });

  it('by weight wet through 2 of 1 t, 1.2 t dry also 2; of 1.5 t 2 and 1', () => {
    expect(soil({ delivery: { unit: 'truck', kg: 1000 } })).toMatchObject({ deliveries: 2, deliveryBy: 'weight', deliveriesDry: 2 });
    expect(soil({ delivery: { unit: 'truck', kg: 1500 } })).toMatchObject({ deliveries: 2, deliveryBy: 'weight', deliveriesDry: 1 });
  });

  it('turf counts as wet as it may come: 12 m² · 1.05 of 15 dry and 25 saturated', () => {
    const turf: SceneMaterial = { id: 'turf', name: 'Turf', role: 'vegetation', areal: { dry: 15, saturated: 25 }, lapPercent: 5 };
    const scene = sceneOf({
      materials: [...MATERIALS, turf],
      buildups: [buildUp('t', [{ material: 'turf', thicknessMm: 20 }])],
      zones: [zone('Z1', rect(0, 0, 4, 3), 't')],
    });
    expect(read(scene).report.takeoff![0]).toMatchObject({ orderM2: close(12.6), dryKg: close(189), massKg: close(315) });
  });
});
