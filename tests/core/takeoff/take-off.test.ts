/** Layers laid and deliveries, by hand. */

import { describe, expect, it } from 'vitest';
import { deliveriesOf, laidLayers } from '../../../src/core/takeoff/take-off.ts';
import { box, buildUp, layer, zone } from '../../helpers/deck-builder.ts';

describe('laid layers', () => {
  const stack = buildUp('b', [
    layer('drainage element', 0.05),
    layer('drainage fill', 0.01, { voidVolumeM: 0.04 }),
    layer('light fill', 0.2, { rangeM: { min: 0, max: 1 } }),
    layer('substrate', 0.3),
  ]);
  const laid = laidLayers([zone('A', box(0, 0, 1, 1), stack)], [{ areaM2: 20, makeUpM3: 7 }], [Int16Array.of(0, 0, 1, -1)]);

  it('are area times thickness; an infill fills the voids too, a make-up layer has its own volume', () => {
    // 20 · 0.05; 20 · (0.04 + 0.01); 7; 20 · 0.3
    expect(laid.map((one) => one.placedM3)).toEqual([1, 1, 7, 6].map((v) => expect.closeTo(v, 12)));
    expect(laid.map((one) => one.areaM2)).toEqual([20, 20, 20, 20]);
  });

  it('name zone, layer and stage', () => {
    expect(laid.map(({ zone: z, layer: i, stage }) => [z, i, stage])).toEqual([
      [0, 0, 0],
      [0, 1, 0],
      [0, 2, 1],
      [0, 3, -1],
    ]);
  });
});

describe('deliveries', () => {
  const truck = { m3: 25, kg: 24000 };

  it('are whole ones: 46.8 m³ in 25 m³ is 1.87, 7020 kg in 24 t less', () => {
    expect(deliveriesOf(46.8, 7020, truck)).toEqual({ count: 2, by: 'volume' });
  });

  it('go by weight where that fills them first: 20 m³ in 25, 30 t in 24', () => {
    expect(deliveriesOf(20, 30000, truck)).toEqual({ count: 2, by: 'weight' });
  });

  it('that are just full take no further one: 75 m³, and a sum that rounds to 75', () => {
    expect(deliveriesOf(75, 1000, truck)?.count).toBe(3);
    expect(deliveriesOf(75 + 1e-10, 1000, truck)?.count).toBe(3);
    expect(deliveriesOf(75.01, 1000, truck)?.count).toBe(4);
  });

  it('by one measure where only that is known', () => {
    expect(deliveriesOf(null, 30000, truck)).toEqual({ count: 2, by: 'weight' });
    expect(deliveriesOf(30, 99000, { m3: 25 })).toEqual({ count: 2, by: 'volume' });
  });

  it('are unknown without a load size', () => {
    expect(deliveriesOf(30, 99000, undefined)).toBeNull();
    expect(deliveriesOf(null, 99000, { m3: 25 })).toBeNull();
  });

  it('of nothing are none', () => {
    expect(deliveriesOf(0, 0, truck)?.count).toBe(0);
  });
});
