import { describe, expect, it } from 'vitest';
import { vehicleById } from '../../src/catalogue/catalogue.ts';
import { VEHICLES } from '../../src/catalogue/vehicles.ts';

// Laden weights typed here: tonnes × 9.81, category F in kN.
const GROSS_KN: readonly (readonly [id: string, grossKN: number, says: string])[] = [
  ['fire-16t', 156.96, 'model guideline for fire-brigade areas, 16 t [secondary]: 16 · 9.81'],
  ['wheel-loader-2t', 25.506, '(2.0 + 0.6) · 9.81, assumed'],
  ['wheel-loader-5t', 66.708, '(5.0 + 1.8) · 9.81, assumed'],
  ['dumper-1t5', 26.487, '(1.2 + 1.5) · 9.81, assumed'],
  ['mini-excavator-1t8', 17.658, '1.8 · 9.81, assumed'],
  ['pallet-truck', 10.5948, '(1.0 + 0.08) · 9.81, assumed'],
  ['car-f', 30, 'EN 1991-1-1 category F, limit of gross weight [secondary]'],
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
