/** Sections: area is thickness times length, gaps stay gaps, faces look at the viewer. */

import { describe, expect, it } from 'vitest';
import { netSurface } from '../../src/core/levels/net.ts';
import { levelSurface, type Surface } from '../../src/core/levels/surface.ts';
import { planNet } from '../../src/mesh/plan-net.ts';
import { zonePrism } from '../../src/mesh/prism.ts';
import { type SectionPlane, type SectionRun, sectionFaces, sectionProfile } from '../../src/mesh/section.ts';
import type { LayerInput, Region } from '../../src/model/deck-input.ts';
import { box, hole, layer, region, trianglesOf, worstNormalDeg } from './solid-checks.ts';

function prismOf(zone: Region, layers: readonly LayerInput[], surfaces: { deck: Surface; finish: Surface | null }) {
  const { net } = planNet(zone, zone, surfaces);
  return { ...zonePrism(net!, layers), owner: 'Z', parts: layers.map((_, k) => k) };
}

const FLAT = { deck: levelSurface(0.2), finish: null };
const LAYERS = [layer('drainage element', 0.06), layer('drainage fill', 0), layer('substrate', 0.3)];
const WITH_HOLE = region(box(0, 0, 10, 6), hole(4, 2, 7, 5));
/** 3-4-5 triangle, so that lengths are whole. */
const SLANTING: SectionPlane = { x: 0, y: 0, dirX: 0.8, dirY: 0.6 };

function areaM2(runs: readonly SectionRun[], k: number): number {
  let sum = 0;
  for (const { alongM, heightsM } of runs) {
    const t = (i: number) => heightsM[k + 1]![i]! - heightsM[k]![i]!;
    for (let i = 0; i + 1 < alongM.length; i++) sum += ((t(i) + t(i + 1)) / 2) * (alongM[i + 1]! - alongM[i]!);
  }
  return sum;
}

describe('profile', () => {
  it('flat layers over a hole: two stretches, thickness times length', () => {
    const runs = sectionProfile(prismOf(WITH_HOLE, LAYERS, FLAT), { x: 1, y: 3, dirX: 1, dirY: 0 });
    // by hand: x 0…4 and 7…10, measured from x = 1
    expect(runs.map((run) => [run.alongM[0], run.alongM.at(-1)])).toEqual([
      [-1, 3],
      [6, 9],
    ]);
    expect(areaM2(runs, 0)).toBeCloseTo(7 * 0.06, 12);
    expect(areaM2(runs, 1)).toBe(0);
    expect(areaM2(runs, 2)).toBeCloseTo(7 * 0.3, 12);
    expect(runs[0]!.heightsM.map((h) => h[0])).toEqual([0.2, 0.26, 0.26, 0.56].map((z) => expect.closeTo(z, 12)));
  });

  it('a slanting plane', () => {
    // by hand: y = 0.75 x through the box: enters at the corner (0, 0), leaves at y = 6, x = 8: 10 m long. The hole 4…7 × 2…5:
    // in at (4, 3), out at (6.667, 5): 2.667 / 0.8 = 3.333 m. Left: 6.667 m
    const runs = sectionProfile(prismOf(WITH_HOLE, LAYERS, FLAT), SLANTING);
    expect(runs).toHaveLength(2);
    expect(areaM2(runs, 2)).toBeCloseTo((10 - 10 / 3) * 0.3, 9);
  });

  it('is exact on falls: a held make-up layer and a breakline', () => {
    // Valley along x = 5 at 0.00, 0.20 at both ends; finish 0.30; fill held to 0.15 … 1.
    const deck = netSurface(
      { spots: Float64Array.from([0, 0, 0.2, 10, 0, 0.2, 0, 4, 0.2, 10, 4, 0.2]), breaklines: [Float64Array.from([5, 0, 0, 5, 4, 0])] },
      50,
    );
    const prism = prismOf(region(box(0, 0, 10, 4)), [layer('light fill', 0.2, { min: 0.15, max: 1 })], { deck, finish: levelSurface(0.3) });
    const runs = sectionProfile(prism, { x: 0, y: 1, dirX: 1, dirY: 0 });
    // by hand: room 0.10 + 0.04 x up to x = 5; held at 0.15 up to x = 1.25. Half: 1.25 × 0.15 + 3.75 × (0.15 + 0.30)/2 = 1.03125
    expect(areaM2(runs, 0)).toBeCloseTo(2.0625, 9);
    expect(runs).toHaveLength(1);
  });

  it('along an edge of the region the layers beyond are cut, those before are not', () => {
    const prism = prismOf(region(box(0, 0, 10, 6)), LAYERS, FLAT);
    // The viewer stands on the right, so north of a plane heading east is beyond it.
    expect(areaM2(sectionProfile(prism, { x: 0, y: 0, dirX: 1, dirY: 0 }), 2)).toBeCloseTo(3, 12);
    expect(sectionProfile(prism, { x: 0, y: 6, dirX: 1, dirY: 0 })).toEqual([]);
    expect(sectionProfile(prism, { x: 0, y: 8, dirX: 1, dirY: 0 })).toEqual([]);
  });
});

describe('faces', () => {
  const { faces, outlines } = sectionFaces([prismOf(WITH_HOLE, LAYERS, FLAT)], SLANTING);

  it('cover each layer once and face the viewer on the right', () => {
    expect(worstNormalDeg(faces)).toBeLessThan(0.5);
    // by hand: right of (0.8, 0.6) is (0.6, −0.8), × 127
    expect([...faces.normals.slice(0, 4)]).toEqual([76, -102, 0, 0]);
    const area = (part: number) =>
      trianglesOf(faces, part).reduce((sum, c) => {
        const along = (i: number) => 0.8 * c[3 * i]! + 0.6 * c[3 * i + 1]!;
        const [u, v] = [along(1) - along(0), along(2) - along(0)];
        return sum + (u * (c[8]! - c[2]!) - v * (c[5]! - c[2]!)) / 2;
      }, 0);
    expect(area(0)).toBeCloseTo((10 - 10 / 3) * 0.06, 5);
    expect(area(1)).toBe(0);
    expect(area(2)).toBeCloseTo((10 - 10 / 3) * 0.3, 5);
  });

  it('are outlined', () => {
    let length = 0;
    for (let v = 0; v < outlines.parts.length; v += 2) {
      if (outlines.parts[v] !== 2) continue;
      length += Math.hypot(...[0, 1, 2].map((axis) => outlines.positions[3 * v + 3 + axis]! - outlines.positions[3 * v + axis]!));
    }
    // by hand: two pieces, 6.667 m below and above, two uprights of 0.3 m each
    expect(length).toBeCloseTo(2 * (10 - 10 / 3) + 4 * 0.3, 4);
  });
});
