import { describe, expect, it } from 'vitest';
import { vehicleById } from '../../src/catalogue/catalogue.ts';
import { VEHICLES } from '../../src/catalogue/vehicles.ts';

// Laden weights typed here: tonnes × 9.81, category F in kN.
const GROSS_KN: readonly (readonly [id: string, grossKN: number, says: string])[] = [
  ['fire-16t', 156.96, 'model guideline for fire-brigade areas, 16 t [secondary]: 16 · 9.81'],
  ['fire-12t5', 122.625, 'Approved Document B, pump 12.5 t [secondary]: 12.5 · 9.81'],
  ['fire-17t', 166.77, 'Approved Document B, high reach 17 t [secondary]: 17 · 9.81'],
  ['fire-18t-ladder', 176.58, 'Swiss guideline of 2015, class 18 t [secondary]: 18 · 9.81'],
  ['fire-75000lb', 333.730586, 'International Fire Code D102.1 [read]: 75,000 · 0.45359237 · 9.81/1000'],
  ['wheel-loader-2t', 25.506, '(2.0 + 0.6) · 9.81, assumed'],
  ['wheel-loader-5t', 66.708, '(5.0 + 1.8) · 9.81, assumed'],
  ['dumper-1t5', 26.487, '(1.2 + 1.5) · 9.81, assumed'],
  ['mini-excavator-1t8', 17.658, '1.8 · 9.81, assumed'],
  ['pallet-truck', 10.5948, '(1.0 + 0.08) · 9.81, assumed'],
  ['car-f', 30, 'EN 1991-1-1 category F, limit of gross weight [secondary]'],
  ['van-g', 160, 'EN 1991-1-1 category G, limit of gross weight [secondary]'],
];

it('has these vehicles and no id twice', () => {
  expect(VEHICLES.map(({ id }) => id)).toEqual(GROSS_KN.map(([id]) => id));
});

it.each(GROSS_KN)('%s: the axles add up to %d kN', (id, grossKN) => {
  const vehicle = vehicleById.get(id);
  expect(vehicle?.axles.reduce((sum, { loadKN }) => sum + loadKN, 0)).toBeCloseTo(grossKN, 9);
  expect(vehicle?.grossKN).toBeCloseTo(grossKN, 9);
});

// Same guideline: axle 10 t [secondary] = 98.1 kN, 49.05 kN per wheel.
it('the fire appliance presses 49.05 kN through its heaviest wheel', () => {
  const heaviestKN = vehicleById.get('fire-16t')?.axles.map(({ loadKN, wheels }) => loadKN / wheels) ?? [];
  expect(Math.max(...heaviestKN)).toBeCloseTo(49.05, 9);
});

// EN 1991-1-1:2002, 6.3.3.2 and Figure 6.2 [from memory]: wheel 10 kN on 0.1 m × 0.1 m = 1000 kPa.
it('the car of category F presses 1000 kPa under its rear wheels', () => {
  const pressuresKPa =
    vehicleById.get('car-f')?.axles.map(({ loadKN, wheels, contactM: [along, across] }) => loadKN / wheels / (along * across)) ?? [];
  expect(Math.max(...pressuresKPa)).toBeCloseTo(1000, 6);
});

// The same clause [from memory]: wheel 45 kN on 0.2 m × 0.2 m = 1125 kPa.
it('the vehicle of category G presses 1125 kPa under its rear wheels', () => {
  const [, rear] = vehicleById.get('van-g')?.axles ?? [];
  expect(rear.loadKN / rear.wheels / (rear.contactM[0] * rear.contactM[1])).toBeCloseTo(1125, 6);
});

// Swiss guideline of 2015 as a forum quotes it [secondary]: 144 kN at 800 kN/m².
it('the ladder presses 800 kPa under a support of 144 kN', () => {
  const pads = vehicleById.get('fire-18t-ladder')?.pads;
  expect(pads?.loadKN).toBe(144);
  expect(144 / ((pads?.sizeM[0] ?? 0) * (pads?.sizeM[1] ?? 0))).toBeCloseTo(800, 2);
});

describe.each(VEHICLES.map((vehicle) => [vehicle.id, vehicle] as const))('%s', (_id, vehicle) => {
  it('has its axles from the front', () => {
    const at = vehicle.axles.map(({ atM }) => atM);
    expect(at[0]).toBe(0);
    expect(at).toEqual([...at].sort((a, b) => a - b));
  });

  it('keeps its wheels within its width and apart from each other', () => {
    for (const { trackM, wheels, contactM } of vehicle.axles) {
      expect(wheels).toBe(2);
      expect(trackM + contactM[1]).toBeLessThanOrEqual(vehicle.widthM + 1e-9);
      expect(trackM).toBeGreaterThanOrEqual(contactM[1]);
    }
  });

  it('has wheels that carry something on an area', () => {
    for (const { loadKN, contactM } of vehicle.axles) {
      expect(loadKN).toBeGreaterThan(0);
      expect(contactM[0] * contactM[1]).toBeGreaterThan(0);
    }
  });
});
