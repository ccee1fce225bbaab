import { describe, expect, it } from 'vitest';
import { wheelEnvelope } from '../../src/core/wheel-envelope.ts';
import { box, buildUp, layer, place, stage, zone } from '../helpers/deck-builder.ts';
import { CART, cartRun, laidLane, PROTECTED } from '../helpers/wheel-builder.ts';

const { lane: LANE, spreads: SPREADS } = PROTECTED;

describe('along a straight line on slabs of 0.1 m at 1:1 and 0.3 m of base course at 1:2', () => {
  const found = wheelEnvelope(laidLane(), cartRun([1, 2, 15, 2]), [SPREADS]);

  it('presses 30 kN on 0.08 m² of the slabs, on 0.4 · 0.6 of the base, on 0.7 · 0.9 of the membrane', () => {
    const [slab, base, sheet] = found.layers;
    expect(slab.wheelsKPa).toBeCloseTo(30 / 0.08, 9);
    expect(slab.kPa).toBeCloseTo(375, 9);
    expect(base.wheelsKPa).toBeCloseTo(30 / (0.4 * 0.6), 9);
    // 0.1 · 25 kN/m³ above
    expect(base.kPa).toBeCloseTo(125 + 2.5, 9);
    expect(base.permittedKPa).toBe(100);
    expect(sheet.kPa).toBeCloseTo(30 / (0.7 * 0.9) + 2.5 + 6, 9);
    expect(sheet.permittedKPa).toBeNull();
    // Wheels alone
    expect(found.membrane?.wheelsKPa).toBeCloseTo(30 / (0.7 * 0.9), 9);
    expect(found.membrane?.governs).toBe('one wheel');
  });

  it('stands with 80 kN at once in either bay of 32 m²', () => {
    expect(found.bays.map(({ bay: b }) => b)).toEqual([0, 1]);
    for (const entry of found.bays) {
      expect(entry.standingKN).toBeCloseTo(80, 9);
      expect(entry.kNm2).toBeCloseTo(2.5, 9);
    }
  });

  it('a dynamic factor multiplies the pressure of wheels, not what stands in a bay, nor the weight above', () => {
    const faster = wheelEnvelope(laidLane(), cartRun([1, 2, 15, 2], { dynamicFactor: 1.4 }), [SPREADS]);
    expect(faster.layers[1].kPa).toBeCloseTo(1.4 * 125 + 2.5, 9);
    expect(faster.bays[0].standingKN).toBeCloseTo(80, 9);
  });

  it('under thin cover the elastic peak is higher: 375 kPa on 0.2 m × 0.4 m, 0.1 m deep', () => {
    // 4 · 375 · I(1, 2) with I(1, 2) = 0.19994107; the other wheel, 1.2 m away, adds less than 1 kPa
    const base = found.layers[1];
    expect(base.elasticKPa).toBeGreaterThan(4 * 375 * 0.19994107);
    expect(base.elasticKPa).toBeLessThan(4 * 375 * 0.19994107 + 1);
    expect(base.elasticKPa).toBeGreaterThan(base.wheelsKPa);
  });
});

it('wheels deep down press together: 1.2 m apart, grown to 1.4 m across', () => {
  const deep = buildUp('deep', [layer('light fill', 1)]);
  const found = wheelEnvelope(laidLane({ zones: [zone('Z', box(0, 0, 16, 4), deep)] }), cartRun([1, 2, 15, 2]), [
    [{ dispersal: 0.5, bearingKPa: null }],
  ]);
  // Patches 1.2 m × 1.4 m: the two rear wheels 2 · 30/1.68; the front ones, 2 m ahead, stay away
  expect(found.membrane?.wheelsKPa).toBeCloseTo(60 / 1.68, 9);
  expect(found.membrane?.governs).toBe('sum of wheels');
});

it('where the make-up layer is thinnest the membrane is pressed most', () => {
  const fill = buildUp('fill', [layer('light fill', 0.3, { rangeM: { min: 0.1, max: 0.9 } })]);
  // Finish 0.2 + 0.025 x: at x = 1 it is 0.225 m, at x = 15 it is 0.575 m
  const finish = { kind: 'plane', x: 0, y: 0, z: 0.2, slopeX: 0.025, slopeY: 0 } as const;
  const on = laidLane({ zones: [zone('Z', box(0, 0, 16, 4), fill, { finish })] });
  const found = wheelEnvelope(on, cartRun([1, 2, 15, 2]), [[{ dispersal: 0.5, bearingKPa: null }]]);
  // Rear axle at x = 1, in the cell with its centre at 1.125: 0.228125 m
  const grown = 0.228125;
  expect(found.membrane?.x).toBeCloseTo(1, 9);
  expect(found.membrane?.wheelsKPa).toBeCloseTo(30 / ((0.2 + grown) * (0.4 + grown)), 9);
});

describe('in a stage', () => {
  const stages = [stage('S1', [place(['protection'])]), stage('S2', [place(['base course'])]), stage('S3', [place(['surfacing'])])];
  const on = laidLane({ stages });

  it('presses on what lies there then', () => {
    const first = wheelEnvelope(on, cartRun([1, 2, 15, 2], { stage: 0 }), [SPREADS]);
    expect(first.layers.map((peak) => peak.layer)).toEqual([0]);
    expect(first.membrane?.wheelsKPa).toBeCloseTo(375, 9);
    const second = wheelEnvelope(on, cartRun([1, 2, 15, 2], { stage: 1 }), [SPREADS]);
    expect(second.layers.map((peak) => peak.layer)).toEqual([1, 0]);
    expect(second.layers[0].kPa).toBeCloseTo(375, 9);
    // 0.3 · 0.5 on every side
    expect(second.membrane?.wheelsKPa).toBeCloseTo(30 / (0.5 * 0.7), 9);
  });
});

describe('lines at the rim', () => {
  it('a line shorter than the wheelbase: every axle travels it, and the bay carries the whole vehicle', () => {
    const found = wheelEnvelope(laidLane(), cartRun([4, 2, 5, 2]), [SPREADS]);
    expect(found.layers[0].wheelsKPa).toBeCloseTo(375, 9);
    expect(found.bays).toHaveLength(1);
    expect(found.bays[0].standingKN).toBeCloseTo(80, 9);
  });

  it('beyond the end of the line nothing is looked at', () => {
    const zones = [zone('Z', box(0, 0, 8, 4), LANE), zone('soft', box(8, 0, 16, 4), LANE)];
    // The front patch ends at 7.6 and has grown to 7.85 on the membrane
    const found = wheelEnvelope(laidLane({ zones }), cartRun([1, 2, 7.5, 2]), [SPREADS, SPREADS]);
    expect(found.layers.every((peak) => peak.zone === 0)).toBe(true);
    expect(found.bays.map((entry) => entry.bay)).toEqual([0]);
  });

  it('off the deck nothing is pressed', () => {
    const found = wheelEnvelope(laidLane(), cartRun([1, 30, 15, 30]), [SPREADS]);
    expect(found).toEqual({ membrane: null, bays: [], layers: [] });
  });

  it('on bare deck the membrane takes the wheel itself', () => {
    const found = wheelEnvelope(laidLane({ zones: [] }), cartRun([1, 2, 15, 2]), []);
    expect(found.membrane?.wheelsKPa).toBeCloseTo(375, 9);
    expect(found.layers).toEqual([]);
  });
});

it('a support of 144 kN presses alone: 800 kPa on 0.18 m², as a square', () => {
  const side = Math.sqrt(0.18);
  const vehicle = { ...CART, pad: { loadKN: 144, sizeM: [side, side] as const } };
  const found = wheelEnvelope(laidLane(), cartRun([1, 2, 15, 2], { vehicle, dynamicFactor: 1.4 }), [SPREADS]);
  // Static, whatever the factor; 0.1 m of slab on every side
  expect(found.layers[0].wheelsKPa).toBeCloseTo(800, 9);
  expect(found.layers[1].wheelsKPa).toBeCloseTo(144 / (side + 0.2) ** 2, 9);
  expect(found.bays[0].standingKN).toBeCloseTo(80, 9);
});

it('finer cells find the same, step by step', () => {
  const on = (cellM: number) => wheelEnvelope(laidLane({ cellM }), cartRun([1, 1, 9, 1, 9, 3]), [SPREADS]).membrane?.wheelsKPa ?? 0;
  const [coarse, fine] = [on(0.25), on(0.05)];
  expect(coarse).toBeGreaterThan(0);
  expect(Math.abs(fine / coarse - 1)).toBeLessThan(1e-9);
});
