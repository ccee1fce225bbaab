/** Layers over a plan net: volumes by hand, held make-up layers, and nets of awkward outlines. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { regionAreaM2 } from '../../src/core/geometry/ring.ts';
import { netSurface } from '../../src/core/levels/net.ts';
import { levelSurface, type PlaneSurface, type Surface } from '../../src/core/levels/surface.ts';
import { type PlanNet, planNet } from '../../src/mesh/plan-net.ts';
import { greatestThicknessM, sheetPrism, zonePrism } from '../../src/mesh/prism.ts';
import type { LayerInput, Region } from '../../src/model/deck-input.ts';
import {
  box,
  expectClosed,
  hole,
  layer,
  layerVolumeM3,
  planAreaM2,
  region,
  ring,
  solidsOf,
  trianglesOf,
  volumeM3,
} from './solid-checks.ts';

const DECK = region(box(0, 0, 60, 40), hole(20, 10, 26, 14));
const LEVEL = levelSurface(0);

function netOf(zone: Region, deck = DECK, surfaces: { deck: Surface; finish: Surface | null } = { deck: LEVEL, finish: null }): PlanNet {
  const answer = planNet(zone, deck, surfaces);
  if (answer.net === null) throw new Error(answer.why);
  return answer.net;
}

function expectSolid(net: PlanNet, layers: readonly LayerInput[], volumes: readonly number[]): void {
  const prism = zonePrism(net, layers);
  const { solids } = solidsOf(prism);
  volumes.forEach((volume, k) => {
    expect(layerVolumeM3(prism, k)).toBeCloseTo(volume, 9);
    const faces = trianglesOf(solids, k);
    if (volume === 0) expect(faces).toEqual([]);
    else {
      expectClosed(faces);
      // Positions are single precision: 4 µm at 60 m, over a surface of some hundred m².
      expect(Math.abs(volumeM3(faces) - volume)).toBeLessThan(1e-3);
    }
  });
}

describe('flat zones: volume is area times thickness', () => {
  const LAWN = [layer('protection', 0.004), layer('drainage element', 0.06), layer('drainage fill', 0), layer('substrate', 0.25)];
  it.each([
    // by hand: 10 × 8 = 80 m²
    ['lawn', region(box(2, 2, 12, 10)), 80],
    // by hand: 10 × 8 − 6 × 5 = 50 m²
    ['L-shape', region(ring([2, 2], [12, 2], [12, 5], [6, 5], [6, 10], [2, 10])), 50],
    // by hand: 80 − 2 × 3 = 74 m²
    ['zone with a hole', region(box(2, 2, 12, 10), hole(5, 4, 7, 7)), 74],
    // by hand: 10 × 8 − the opening's 6 × 4 = 56 m²
    ['zone over an opening', region(box(18, 8, 28, 16)), 56],
    // by hand: the deck ends at x = 60 and y = 40, so 5 × 5 = 25 m²
    ['zone cut by the deck edge', region(box(55, 35, 70, 45)), 25],
    // by hand: the hole's left half lies over the opening: 80 m² zone 16…26 × 8…16, hole 18…22 × 11…13, opening 20…26 × 10…14
    // → 80 − 4 × 2 − 6 × 4 + 2 × 2 = 52 m²
    ['hole across an opening', region(box(16, 8, 26, 16), hole(18, 11, 22, 13)), 52],
  ])('%s', (_, zone, area) => {
    expectSolid(
      netOf(zone),
      LAWN,
      LAWN.map((one) => area * one.thicknessM),
    );
  });

  it('a deck edge that cuts a zone in two leaves both pieces', () => {
    // by hand: U-shaped deck, zone across its two legs: 2 × (3 × 4) = 24 m²
    const deck = region(ring([0, 0], [9, 0], [9, 9], [6, 9], [6, 3], [3, 3], [3, 9], [0, 9]));
    expectSolid(netOf(region(box(-1, 4, 10, 8)), deck), [layer('substrate', 0.5)], [12]);
  });

  it('says why there is no net', () => {
    expect(planNet(region(box(70, 0, 80, 5)), DECK, { deck: LEVEL, finish: null })).toEqual({
      net: null,
      why: 'no part of it lies on the deck',
    });
  });

  it('the slab hangs below the membrane, openings left out', () => {
    // by hand: (60 × 40 − 6 × 4) × 0.35 = 831.6 m³
    const prism = sheetPrism(netOf(DECK), -0.35, 0);
    expect(layerVolumeM3(prism, 0)).toBeCloseTo(831.6, 9);
    expect([...new Set(prism.heights)].sort()).toEqual([-0.35, 0]);
  });
});

describe('falls', () => {
  const plane = (slopeX: number, slopeY = 0, z = 0): PlaneSurface => ({ kind: 'plane', x: 0, y: 0, z, slopeX, slopeY });

  it('wedge under a level finish: mean room times area', () => {
    // by hand: deck rises 2 % over x 0…10, finish 0.60: make-up from 0.60 − 0.10 = 0.50 to 0.30, mean 0.40; 10 × 5 × 0.40 = 20 m³
    const net = netOf(region(box(0, 0, 10, 5)), DECK, { deck: plane(0.02), finish: levelSurface(0.6) });
    expectSolid(net, [layer('protection', 0.02), layer('light fill', 0.2, { min: 0.05, max: 1 }), layer('substrate', 0.08)], [1, 20, 4]);
  });

  it('valley with a breakline: the net follows it exactly', () => {
    // Valley along x = 6 at 0.00, rising to 0.12 at x = 0 and to 0.08 at x = 10.
    const deck = netSurface(
      {
        spots: Float64Array.from([0, 0, 0.12, 0, 5, 0.12, 10, 0, 0.08, 10, 5, 0.08]),
        breaklines: [Float64Array.from([6, 0, 0, 6, 5, 0])],
      },
      100,
    );
    const net = netOf(region(box(0, 0, 10, 5)), DECK, { deck, finish: levelSurface(0.5) });
    // by hand: mean level 0.06 over 6 m and 0.04 over 4 m → (0.36 + 0.16)/10 = 0.052; fill 0.5 − 0.052 − 0.1 = 0.348; × 50 = 17.4 m³
    expectSolid(net, [layer('light fill', 0.2, { min: 0, max: 1 }), layer('substrate', 0.1)], [17.4, 5]);
    // by hand: a plane net over each side of the valley: all vertices on its three lines x = 0, 6, 10
    expect([...new Set([...net.plan].filter((_, i) => i % 2 === 0))].sort((p, q) => p - q)).toEqual([0, 6, 10]);
  });

  it('a finish with its own breakline and a deck with another', () => {
    // Deck: roof ridge along y = 2 at 0.04, 0 at y = 0 and y = 4. Finish: ridge along x = 4 at 0.48, 0.40 at x = 0 and x = 8.
    const deck = netSurface(
      { spots: Float64Array.from([0, 0, 0, 8, 0, 0, 0, 4, 0, 8, 4, 0]), breaklines: [Float64Array.from([0, 2, 0.04, 8, 2, 0.04])] },
      50,
    );
    const finish = netSurface(
      {
        spots: Float64Array.from([0, 0, 0.4, 8, 0, 0.4, 0, 4, 0.4, 8, 4, 0.4]),
        breaklines: [Float64Array.from([4, 0, 0.48, 4, 4, 0.48])],
      },
      50,
    );
    // by hand: means 0.02 and 0.44, so 0.42 × 32 m² = 13.44 m³
    expectSolid(netOf(region(box(0, 0, 8, 4)), DECK, { deck, finish }), [layer('substrate', 0.3, { min: 0, max: 1 })], [13.44]);
  });

  it('without a range the finish changes nothing, without a finish the range changes nothing', () => {
    const zone = region(box(0, 0, 10, 5));
    // by hand: 50 × 0.3 = 15 m³, both times
    expectSolid(netOf(zone, DECK, { deck: plane(0.02), finish: levelSurface(0.6) }), [layer('substrate', 0.3)], [15]);
    expectSolid(netOf(zone, DECK, { deck: plane(0.02), finish: null }), [layer('substrate', 0.3, { min: 0.4, max: 0.5 })], [15]);
  });
});

describe('make-up layer held to its range', () => {
  const deck: PlaneSurface = { kind: 'plane', x: 0, y: 0, z: 0, slopeX: 0.05, slopeY: 0 };
  const zone = region(box(0, 0, 10, 4));

  it('held at both ends', () => {
    // Room x → 0.55 − 0.05 x − 0.05 = 0.50 − 0.05 x, from 0.50 to 0.00. Range 0.10 … 0.40: held at 0.40 for x < 2, at 0.10 for x > 8.
    // by hand: 2 × 0.40 + 6 × 0.25 + 2 × 0.10 = 2.50 m² × 4 m = 10 m³
    const net = netOf(zone, DECK, { deck, finish: levelSurface(0.55) });
    const layers = [layer('light fill', 0.2, { min: 0.1, max: 0.4 }), layer('substrate', 0.05)];
    expectSolid(net, layers, [10, 2]);
    const prism = zonePrism(net, layers);
    const lines = [...new Set([...prism.plan].filter((_, i) => i % 2 === 0).map((x) => Math.round(x * 1e9) / 1e9))];
    expect(lines.sort((p, q) => p - q)).toEqual([0, 2, 8, 10]);
    expect(greatestThicknessM(prism, 0)).toBeCloseTo(0.4, 12);
  });

  it('running out to nothing: the solid ends at the line and stays closed', () => {
    // Room 0.30 − 0.05 x: nothing left from x = 6 on. by hand: 6 × 0.15 × 4 = 3.6 m³
    expectSolid(netOf(zone, DECK, { deck, finish: levelSurface(0.3) }), [layer('light fill', 0.2, { min: 0, max: 1 })], [3.6]);
  });

  it('no room anywhere: no solid, the layers above lie on the one below', () => {
    const net = netOf(zone, DECK, { deck, finish: levelSurface(-1) });
    expectSolid(net, [layer('protection', 0.01), layer('light fill', 0.2, { min: 0, max: 1 }), layer('substrate', 0.1)], [0.4, 0, 4]);
  });
});

describe('awkward outlines', () => {
  it('a neighbour with a vertex in the middle of the shared edge: both areas are whole', () => {
    // by hand: 4 × 6 = 24 m² left; right of it two zones of 4 × 2.123 and 4 × 3.877
    const left = netOf(region(box(30, 20, 34, 26)));
    const lower = netOf(region(ring([34, 20], [38, 20], [38, 22.123], [34, 22.123])));
    const upper = netOf(region(ring([34, 22.123], [38, 22.123], [38, 26], [34, 26])));
    expect(planAreaM2(left)).toBeCloseTo(24, 12);
    expect(planAreaM2(lower) + planAreaM2(upper)).toBeCloseTo(24, 12);
  });

  it('a deck vertex within a nanometre of the zone edge', () => {
    const deck = region(ring([0, 0], [5 + 1e-10, 0], [5, 5], [5 - 1e-10, 10], [0, 10]));
    const net = netOf(region(box(0, 0, 5, 10)), deck);
    expect(planAreaM2(net)).toBeCloseTo(50, 8);
    expectClosed(trianglesOf(solidsOf(zonePrism(net, [layer('substrate', 0.3)])).solids, 0));
  });

  it('a zone and a deck that share slanting edges, vertices rounded to millimetres', () => {
    // The zone's corner (3.333, 1.111) lies 0.1 mm off the deck's edge from (0, 0) to (10, 3.333).
    const deck = region(ring([0, 0], [10, 3.333], [10, 12], [0, 12]));
    const zone = region(ring([0, 0], [3.333, 1.111], [10, 3.333], [10, 8], [0, 8]));
    // by hand: deck below y = 8: 80 − 10 × 3.333 / 2 = 63.335 m²; the corner stands 1.111 − 1.1108889 = 0.1111 mm above the
    // edge and takes 10 × 0.0001111 / 2 = 0.00056 m² away
    const net = netOf(zone, deck);
    expect(planAreaM2(net)).toBeCloseTo(63.335 - 0.00055, 4);
    expectClosed(trianglesOf(solidsOf(zonePrism(net, [layer('substrate', 0.3)])).solids, 0));
  });

  it('a sliver of 4 m by 1 µm', () => {
    const net = netOf(region(box(1, 1, 5, 1 + 1e-6)));
    expect(planAreaM2(net) / 4e-6).toBeCloseTo(1, 6);
  });

  it('millimetres after the shift of a national grid', () => {
    // Coordinates of a grid in the millions, less an origin in whole metres: binary fractions with noise in the 9th decimal.
    const shift = (e: number, n: number): [number, number] => [e - 4_500_000, n - 5_300_000];
    const outer = ring(
      shift(4_500_123.437, 5_300_087.211),
      shift(4_500_133.437, 5_300_087.211),
      shift(4_500_133.437, 5_300_095.211),
      shift(4_500_123.437, 5_300_095.211),
    );
    const deck = region(
      ring(shift(4_500_100, 5_300_050), shift(4_500_133.437, 5_300_050), shift(4_500_133.437, 5_300_120), shift(4_500_100, 5_300_120)),
    );
    const prism = zonePrism(netOf(region(outer), deck), [layer('substrate', 0.4)]);
    // by hand: 10 × 8 × 0.4 = 32 m³; a coordinate in the millions is good to 1e-9 m, so 80 m² within 36 m of outline to some 2e-8 m²
    expect(layerVolumeM3(prism, 0)).toBeCloseTo(32, 7);
    expectClosed(trianglesOf(solidsOf(prism).solids, 0));
  });

  it('random star-shaped outlines with a hole, over a folded deck (seed 7)', () => {
    const deck = netSurface(
      {
        spots: Float64Array.from([-30, -30, 0.3, 30, -30, 0.2, 30, 30, 0.3, -30, 30, 0.1]),
        breaklines: [Float64Array.from([-30, 3, 0, 30, -2, 0]), Float64Array.from([-4, -30, 0.1, 6, 30, 0.15])],
      },
      100,
    );
    const reaches = fc.array(fc.double({ min: 2, max: 20, noNaN: true }), { minLength: 3, maxLength: 40 });
    fc.assert(
      fc.property(reaches, fc.double({ min: 0, max: 6, noNaN: true }), (reach, turn) => {
        const at = (i: number, r: number): [number, number] => {
          const angle = turn + (2 * Math.PI * i) / reach.length;
          return [r * Math.cos(angle), r * Math.sin(angle)];
        };
        const outer = ring(...reach.map((r, i) => at(i, r)));
        const inner = ring(...reach.map((r, i) => at(i, 0.3 * r)).reverse());
        const zone = region(outer, inner);
        const net = netOf(zone, region(box(-40, -40, 40, 40)), { deck, finish: null });
        const prism = zonePrism(net, [layer('substrate', 0.37)]);
        const wanted = regionAreaM2(zone) * 0.37;
        expect(Math.abs(layerVolumeM3(prism, 0) - wanted)).toBeLessThan(1e-9 * wanted);
        expectClosed(trianglesOf(solidsOf(prism).solids, 0));
      }),
      { seed: 7, numRuns: 150 },
    );
  });
});
