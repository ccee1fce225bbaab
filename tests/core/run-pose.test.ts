import { describe, expect, it } from 'vitest';
import { signedAreaM2 } from '../../src/core/geometry/ring.ts';
import { axlePath, frontPlaces } from '../../src/core/loads/wheel-path.ts';
import { runPose } from '../../src/core/run-pose.ts';
import { wheelEnvelope } from '../../src/core/wheel-envelope.ts';
import type { DeckInput } from '../../src/model/deck-input.ts';
import type { PoseTop } from '../../src/model/run.ts';
import type { VehicleInput, WheelLayer, WheelStand } from '../../src/model/wheel-input.ts';
import { box, buildUp, layer, place, stage, zone } from '../helpers/deck-builder.ts';
import { CART, cartRun, laidLane, PROTECTED } from '../helpers/wheel-builder.ts';

const THIN = buildUp('thin', [layer('base course', 0.1, { saturatedPerMKNm3: 20 })]);
const { lane: LANE, spreads: SPREADS } = PROTECTED;
const THIN_SPREADS: readonly WheelLayer[] = [{ dispersal: 0.5, bearingKPa: 400 }];

const on = (frontM: number): WheelStand => ({ frontM, on: 'wheels' });

describe('a cart on slabs of 0.1 m at 1:1 over 0.3 m of base course at 1:2', () => {
  // Line from x = 1: the front axle at x = 1 + 6.5, the rear one 2 m behind
  const pose = runPose(laidLane(), cartRun([1, 2, 15, 2]), [SPREADS], on(6.5));
  const rearLeft = pose.wheels[2];

  it('stands with its axles where the line says, wheels 0.6 m left and right', () => {
    expect(pose.axles.map(({ x, y, dirX, dirY }) => [x, y, dirX, dirY])).toEqual([
      [7.5, 2, 1, 0],
      [5.5, 2, 1, 0],
    ]);
    expect(pose.wheels.map(({ axle, leftM }) => [axle, Math.round(1e9 * leftM) / 1e9])).toEqual([
      [0, 0.6],
      [0, -0.6],
      [1, 0.6],
      [1, -0.6],
    ]);
    expect([rearLeft.x, rearLeft.y]).toEqual([5.5, 2.6]);
    expect([rearLeft.bays, rearLeft.onLine]).toEqual([['west'], true]);
  });

  it('stands 0.41 m above the membrane and presses every top from there down', () => {
    expect(rearLeft.surfaceM).toBeCloseTo(0.41, 9);
    expect(rearLeft.grounds.length).toBe(1);
    const [slab, base, sheet, membrane] = rearLeft.grounds[0].tops as [PoseTop, PoseTop, PoseTop, PoseTop];
    expect([slab, base, sheet, membrane].map(({ depthM }) => Math.round(depthM * 1e6) / 1e6)).toEqual([0, 0.1, 0.4, 0.41]);
    expect([slab, base, sheet, membrane].map(({ levelM }) => Math.round(levelM * 1e6) / 1e6)).toEqual([0.41, 0.31, 0.01, 0]);
    // 30 kN on 0.2 · 0.4, 0.4 · 0.6, 0.7 · 0.9 and, as the sheet spreads nothing, the same on the membrane
    expect(slab.wheelsKPa).toBeCloseTo(375, 9);
    expect(base.wheelsKPa).toBeCloseTo(125, 9);
    expect(base.aboveKPa).toBeCloseTo(2.5, 9);
    expect(base.kPa).toBeCloseTo(127.5, 9);
    expect(base.permittedKPa).toBe(100);
    expect(sheet.wheelsKPa).toBeCloseTo(30 / 0.63, 9);
    expect(membrane.layer).toBe(-1);
    expect(membrane.permittedKPa).toBeNull();
  });

  it('keeps each wheel’s load on every layer: area of the patch times pressure', () => {
    for (const wheel of pose.wheels) {
      for (const top of wheel.grounds[0].tops) expect(signedAreaM2(top.ring) * top.wheelsKPa).toBeCloseTo(wheel.loadKN, 9);
    }
  });
});

it('before the start of its line a wheel presses but is not looked at beside it', () => {
  const pose = runPose(laidLane(), cartRun([1, 2, 15, 2]), [SPREADS], on(0.5));
  expect(pose.wheels.map((wheel) => wheel.onLine)).toEqual([true, true, false, false]);
  // Rear axle at x = -0.5: off the deck
  expect(pose.wheels[2].surfaceM).toBeNull();
  expect(pose.wheels[2].grounds).toEqual([]);
});

it('in a stage it stands on what lies there then', () => {
  const stages = [stage('S1', [place(['protection'])]), stage('S2', [place(['base course'])]), stage('S3', [place(['surfacing'])])];
  const pose = runPose(laidLane({ stages }), cartRun([1, 2, 15, 2], { stage: 1 }), [SPREADS], on(6));
  expect(pose.wheels[0].surfaceM).toBeCloseTo(0.31, 9);
  expect(pose.wheels[0].grounds[0].tops.map((top) => top.layer)).toEqual([1, 0, -1]);
});

describe('a support', () => {
  const ladder: VehicleInput = { ...CART, pad: { loadKN: 144, sizeM: [0.4, 0.45] } };

  it('presses 144 kN on 0.18 m²', () => {
    const pose = runPose(laidLane(), cartRun([1, 2, 15, 2], { vehicle: ladder }), [SPREADS], { frontM: 3, on: 'support' });
    expect(pose.axles).toEqual([]);
    expect(pose.wheels.map(({ x, y }) => [x, y])).toEqual([[4, 2]]);
    expect(pose.wheels[0].grounds[0].tops[0].wheelsKPa).toBeCloseTo(800, 9);
  });

  it('is refused where the vehicle has none', () => {
    expect(() => runPose(laidLane(), cartRun([1, 2, 15, 2]), [SPREADS], { frontM: 3, on: 'support' })).toThrow(RangeError);
  });
});

describe('over all places the greatest is that of the envelope', () => {
  const cases: readonly [string, Partial<DeckInput>, readonly number[], readonly (readonly WheelLayer[])[]][] = [
    ['straight', {}, [1, 2, 15, 2], [SPREADS]],
    ['round a bend', {}, [1, 1, 12, 1, 12, 3.5], [SPREADS]],
    [
      'with a zone beside that only the patch reaches',
      { zones: [zone('Z', box(0, 0, 16, 2.9), LANE), zone('N', box(0, 2.9, 16, 4), THIN)] },
      [1, 2, 15, 2],
      [SPREADS, THIN_SPREADS],
    ],
  ];

  it.each(cases)('%s', (_, over, route, layers) => {
    const evaluation = laidLane(over);
    const one = cartRun(route);
    const envelope = wheelEnvelope(evaluation, one, layers);
    const greatest = new Map<string, number>();
    let membrane = 0;
    for (const frontM of frontPlaces(axlePath(one.route, CART.radiusM), 2, 0.25)) {
      for (const wheel of runPose(evaluation, one, layers, on(frontM)).wheels.filter(({ onLine }) => onLine)) {
        for (const { zone: id, tops } of wheel.grounds) {
          for (const { layer: l, kPa, wheelsKPa } of tops) {
            if (l < 0) membrane = Math.max(membrane, wheelsKPa);
            else greatest.set(`${id} ${l}`, Math.max(greatest.get(`${id} ${l}`) ?? 0, kPa));
          }
        }
      }
    }
    expect(membrane).toBeCloseTo(envelope.membrane?.wheelsKPa ?? Number.NaN, 9);
    expect(envelope.layers.length).toBeGreaterThan(0);
    for (const peak of envelope.layers) {
      expect(greatest.get(`${evaluation.input.zones[peak.zone].id} ${peak.layer}`)).toBeCloseTo(peak.kPa, 9);
    }
    expect(greatest.size).toBe(envelope.layers.length);
    // The place named with a peak is where it comes about.
    const [worst] = envelope.layers;
    const there = runPose(evaluation, one, layers, worst.stand).wheels.flatMap(({ grounds }) => grounds.flatMap(({ tops }) => tops));
    expect(Math.max(...there.filter(({ layer: l }) => l === worst.layer).map(({ kPa }) => kPa))).toBeCloseTo(worst.kPa, 9);
  });
});
