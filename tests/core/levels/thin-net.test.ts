/** Thinning of levels, held against the net itself: every left-out spot is looked up, triangle by triangle. */

import { describe, expect, it } from 'vitest';
import { netSurface } from '../../../src/core/levels/net.ts';
import { surfaceLevelM } from '../../../src/core/levels/surface.ts';
import { type ThinnedNet, thinNet } from '../../../src/core/levels/thin-net.ts';
import type { LevelNet } from '../../../src/model/deck-input.ts';

type Height = (x: number, y: number) => number;

/** Levels every `stepM` over a rectangle, to the millimetre. */
function gridOf(widthM: number, depthM: number, stepM: number, height: Height): Float64Array {
  const spots: number[] = [];
  for (let i = 0; i * stepM <= widthM + 1e-9; i++) {
    for (let k = 0; k * stepM <= depthM + 1e-9; k++) {
      const [x, y] = [i * stepM, k * stepM];
      spots.push(x, y, Math.round(1000 * height(x, y)) / 1000);
    }
  }
  return Float64Array.from(spots);
}

function thinned(net: LevelNet, tolerancesM: readonly number[], most = 20_000): readonly ThinnedNet[] {
  const steps = thinNet(net, tolerancesM, most);
  let last = 0;
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    expect(step.value).toBeGreaterThanOrEqual(last);
    expect(step.value).toBeLessThanOrEqual(1);
    last = step.value;
  }
}

/** Greatest distance of a spot from the net through those kept, each spot looked up in all triangles. */
function greatestByBruteForce({ spots, breaklines }: LevelNet, kept: Uint32Array): number {
  const picked = Float64Array.from([...kept].flatMap((i) => [...spots.subarray(3 * i, 3 * i + 3)]));
  const surface = netSurface({ spots: picked, breaklines }, 100);
  let greatest = 0;
  for (let i = 0; i < spots.length; i += 3) {
    greatest = Math.max(greatest, Math.abs(spots[i + 2]! - surfaceLevelM(surface, spots[i]!, spots[i + 1]!)));
  }
  return greatest;
}

/** Hills of 30 cm and a fall of 2 %. */
const HILLS: Height = (x, y) => 0.3 * Math.sin(x / 3) * Math.cos(y / 2.5) + 0.02 * x;
/** A step of 12 cm along x = 5: level left of it, level right of it. */
const STEP: Height = (x) => (x < 5 ? 1 : 1.12);

describe('thinNet', () => {
  it('keeps the four corners of a plane', () => {
    // 0.05 x + 0.1 y is whole millimetres at steps of 20 cm, so nothing is rounded: any three corners give the plane.
    const spots = gridOf(20, 12, 0.2, (x, y) => 0.05 * x + 0.1 * y);
    const [found] = thinned({ spots, breaklines: [] }, [0.002]);
    expect(spots.length / 3).toBe(101 * 61);
    expect([...found!.kept].map((i) => [spots[3 * i], spots[3 * i + 1]])).toEqual([
      [0, 0],
      [0, 12],
      [20, 0],
      [20, 12],
    ]);
    expect(found!.greatestM).toBeLessThan(1e-9);
  });

  it('stays within every tolerance, and tells the greatest deviation there is', () => {
    const net = { spots: gridOf(15, 10, 0.25, HILLS), breaklines: [] };
    const tolerancesM = [0.05, 0.02, 0.01, 0.005, 0.002];
    const found = thinned(net, tolerancesM);
    expect(found.map(({ toleranceM }) => toleranceM)).toEqual(tolerancesM);
    for (const { toleranceM, kept, greatestM } of found) {
      const brute = greatestByBruteForce(net, kept);
      expect(brute).toBeLessThanOrEqual(toleranceM + 1e-9);
      expect(greatestM).toBeCloseTo(brute, 9);
      expect([...kept]).toEqual([...new Set(kept)].sort((a, b) => a - b));
    }
    const counts = found.map(({ kept }) => kept.length);
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
    // Triangles of an even grid of step s are at most s²/8 (|fxx| + 2 |fxy| + |fyy|) off: 1.4² / 8 × (0.033 + 0.08 + 0.048) = 0.04 m.
    // So 12 × 9 points, 1.4 m apart, are within 5 cm; what is chosen point by point needs no more.
    expect(counts[0]).toBeLessThan(12 * 9);
  });

  it('spots scattered at random, some at places that were kept already', () => {
    let seed = 7;
    const random = () => {
      seed = (seed * 16807) % 2147483647;
      return seed / 2147483647;
    };
    const spots = new Float64Array(12_000);
    for (let i = 0; i < spots.length; i += 3) {
      const [x, y] = [Math.round(1e4 * random()) / 1e3, Math.round(8e3 * random()) / 1e3];
      spots.set([x, y, HILLS(x, y)], i);
    }
    // The last fifty lie where the first fifty do, 30 cm higher: of spots at one place the first counts, so these are never left out.
    const doubled = Float64Array.from([...spots, ...spots.slice(0, 150).map((value, i) => (i % 3 === 2 ? value + 0.3 : value))]);
    const [found] = thinned({ spots: doubled, breaklines: [] }, [0.005]);
    const kept = new Set(found!.kept);
    for (let i = 4000; i < 4050; i++) expect(kept.has(i)).toBe(true);
    const surface = netSurface(
      { spots: Float64Array.from([...kept].flatMap((i) => [...doubled.subarray(3 * i, 3 * i + 3)])), breaklines: [] },
      100,
    );
    for (let i = 0; i < 4000; i++) {
      if (kept.has(i)) continue;
      expect(Math.abs(spots[3 * i + 2]! - surfaceLevelM(surface, spots[3 * i]!, spots[3 * i + 1]!))).toBeLessThanOrEqual(0.005 + 1e-9);
    }
    expect(kept.size).toBeLessThan(2000);
  });

  it('counts breaklines as they are calculated with', () => {
    const edge = (x: number, z: number) => Float64Array.from([x, 0, z, x, 8, z]);
    const spots = gridOf(10, 8, 0.2, STEP);
    const withEdges = { spots, breaklines: [edge(4.8, 1), edge(5, 1.12)] };
    const [found] = thinned(withEdges, [0.002]);
    expect(greatestByBruteForce(withEdges, found!.kept)).toBeLessThanOrEqual(0.002 + 1e-9);
    // Two plates with both their edges drawn: the corners do.
    expect(found!.kept.length).toBeLessThanOrEqual(8);
    const [without] = thinned({ spots, breaklines: [] }, [0.002]);
    expect(greatestByBruteForce({ spots, breaklines: [] }, without!.kept)).toBeLessThanOrEqual(0.002 + 1e-9);
  });

  it('gives no result where more would have to be kept than allowed', () => {
    // Every second spot 10 cm up: nothing can be left out within 2 mm.
    const rough = { spots: gridOf(5, 5, 0.2, (x, y) => (Math.round(5 * x + 5 * y) % 2) / 10), breaklines: [] };
    expect(thinned(rough, [0.002], 400)).toEqual([]);
    // 26 × 26 = 676 spots: all of them are within any tolerance.
    const [all] = thinned(rough, [0.002], 676);
    expect(greatestByBruteForce(rough, all!.kept)).toBeLessThanOrEqual(0.002 + 1e-9);
    const coarse = thinned(rough, [0.2, 0.002], 400);
    expect(coarse.map(({ toleranceM }) => toleranceM)).toEqual([0.2]);
  });

  it('spots on one line, and all at one place', () => {
    const line = Float64Array.from(Array.from({ length: 300 }, (_, i) => [i / 10, i / 10, i < 150 ? 0 : (i - 150) / 100]).flat());
    const [found] = thinned({ spots: line, breaklines: [] }, [0.005]);
    const surface = netSurface(
      { spots: Float64Array.from([...found!.kept].flatMap((i) => [...line.subarray(3 * i, 3 * i + 3)])), breaklines: [] },
      100,
    );
    for (let i = 0; i < 300; i++)
      expect(Math.abs(line[3 * i + 2]! - surfaceLevelM(surface, i / 10, i / 10))).toBeLessThanOrEqual(0.005 + 1e-9);
    expect(found!.kept.length).toBeLessThan(10);
    const place = Float64Array.from(Array.from({ length: 30 }, () => [2, 3, 1]).flat());
    expect(thinned({ spots: place, breaklines: [] }, [0.005])).toEqual([]);
  });
});
