/** Take-off: shares by zone and stage, sums, and the words of a row. */

import { describe, expect, it } from 'vitest';
import type { Report, ReportTakeOff } from '../../src/model/report.ts';
import { shareGroups, takeOffSum } from '../../src/ui/facts/take-off.ts';
import { takeoff } from '../../src/ui/text/en-sheets.ts';

const FLEECE = {
  material: 'fleece',
  areaM2: 100,
  placedM3: 0.4,
  orderM2: 110,
  massKg: 55,
  dryKg: 55,
  deliveries: null,
  deliveryBy: null,
  deliveriesDry: null,
  price: null,
  zones: [
    { id: 'Z2', areaM2: 60, placedM3: 0.24 },
    { id: 'Z1', areaM2: 40, placedM3: 0.16 },
  ],
  stages: [{ id: 'S1', areaM2: 100, placedM3: 0.4 }],
} as const satisfies ReportTakeOff;

const SOIL = {
  material: 'soil',
  areaM2: 40,
  placedM3: 12,
  orderM3: 15,
  massKg: 18_000,
  dryKg: 12_000,
  deliveries: 3,
  deliveryBy: 'weight',
  deliveriesDry: 2,
  price: 900,
  zones: [{ id: 'Z1', areaM2: 40, placedM3: 12 }],
  stages: [{ id: 'S2', areaM2: 40, placedM3: 12 }],
} as const satisfies ReportTakeOff;

const REPORT = {
  zones: [{ id: 'Z1' }, { id: 'Z2' }, { id: 'Z3' }],
  stages: [{ id: 'S1' }, { id: 'S2' }],
  takeoff: [FLEECE, SOIL],
} as unknown as Report;

describe('shares', () => {
  it('of zones, in the order of the zones, none for an empty one', () => {
    expect(shareGroups(REPORT, 'zone')).toEqual([
      {
        id: 'Z1',
        shares: [
          { material: 'fleece', areaM2: 40, placedM3: 0.16 },
          { material: 'soil', areaM2: 40, placedM3: 12 },
        ],
      },
      { id: 'Z2', shares: [{ material: 'fleece', areaM2: 60, placedM3: 0.24 }] },
    ]);
  });

  it('of stages', () => {
    expect(shareGroups(REPORT, 'stage').map(({ id, shares }) => [id, shares.map(({ material }) => material)])).toEqual([
      ['S1', ['fleece']],
      ['S2', ['soil']],
    ]);
  });
});

describe('sums', () => {
  it('add masses and the prices there are', () => {
    expect(takeOffSum([FLEECE, SOIL])).toEqual({ dryKg: 12_055, massKg: 18_055, price: 900, priced: 1 });
  });

  it('have no price where no material has one', () => {
    expect(takeOffSum([FLEECE])).toMatchObject({ price: null, priced: 0 });
  });
});

describe('words', () => {
  it('say what to order: area with laps, or loose volume', () => {
    expect([FLEECE, SOIL].map((row) => `${takeoff.toOrder(row)}, ${takeoff.orderOf(row)}`)).toEqual([
      '110.0\u202Fm², laps included',
      '15.0\u202Fm³, loose',
    ]);
  });

  it('say how many deliveries, what fills them, and if fewer come dry', () => {
    expect(takeoff.deliveries(FLEECE)).toBe('no delivery size given');
    expect(takeoff.deliveries(SOIL)).toBe('3 deliveries, by weight, 2 if dry');
    expect(takeoff.deliveries({ ...SOIL, deliveries: 1, deliveryBy: 'volume', deliveriesDry: 1 })).toBe('1 delivery, by volume');
  });

  it('say of a sum of prices how many materials it covers', () => {
    expect(takeoff.priceSum(900, 'EUR', 1, 2)).toBe('900 EUR for 1 of 2 materials; the others have no price');
    expect(takeoff.priceSum(900, '', 2, 2)).toBe('900');
  });
});
