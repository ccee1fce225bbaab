/** Shapes in local metres, and footprints of objects with their exact areas. */

import { describe, expect, it } from 'vitest';
import { signedAreaM2 } from '../../src/core/geometry/ring.ts';
import { localLine, localNet, localOrigin, localRegion, localRing, objectInput } from '../../src/project/resolve-shapes.ts';
import { rect } from '../helpers/scene-builder.ts';

describe('rings', () => {
  it('start from whole metres at or below the outline', () => {
    expect(
      localOrigin([
        [512_345.678, -3.2],
        [512_400, 8],
        [512_350, 9],
      ]),
    ).toEqual([512_345, -4]);
  });

  it('are open, without repeated points, and run counter-clockwise', () => {
    const closed = localRing(
      [
        [10, 20],
        [10, 20],
        [10, 22],
        [13, 22],
        [13, 20],
        [10, 20],
      ],
      [10, 20],
    );
    expect(closed).toHaveLength(8);
    expect(signedAreaM2(closed)).toBe(6);
    expect(localRing(rect(0, 0, 1, 1), [0, 0], false)).toHaveLength(8);
    expect(signedAreaM2(localRing(rect(0, 0, 1, 1), [0, 0], false))).toBe(-1);
  });

  it('of holes run the other way', () => {
    const region = localRegion(rect(0, 0, 4, 4), [rect(1, 1, 2, 3)], [0, 0]);
    expect([signedAreaM2(region.outer), signedAreaM2(region.holes[0])]).toEqual([16, -2]);
  });

  it('keep the area of a national-grid polygon', () => {
    // 3 m × 2 m at 5.8 million: coordinates are good to 1e-9
    const x = 512_345.678;
    const y = 5_812_345.678;
    expect(signedAreaM2(localRing(rect(x, y, x + 3, y + 2), [512_345, 5_812_345]))).toBeCloseTo(6, 7);
  });
});

it('lines drop repeated points, nets keep their levels', () => {
  expect([
    ...localLine(
      [
        [1, 1],
        [1, 1],
        [2, 3],
      ],
      [1, 1],
    ),
  ]).toEqual([0, 0, 1, 2]);
  const net = localNet(
    {
      spots: [[11, 21, -0.5]],
      breaklines: [
        [
          [10, 20, 1],
          [12, 20, 2],
        ],
      ],
    },
    [10, 20],
  );
  expect([...net.spots]).toEqual([1, 1, -0.5]);
  expect([...net.breaklines[0]]).toEqual([0, 0, 1, 2, 0, 2]);
});

describe('objects', () => {
  it('a tree stands on a disc of its spread: exact area, total massKg · g', () => {
    const tree = objectInput({ kind: 'tree', id: 'T', at: [11, 22], massKg: 2000, spreadM: 3 }, [10, 20]);
    const [{ ring, kNm2 }] = tree.pieces;
    const areaM2 = (Math.PI * 9) / 4;
    expect(signedAreaM2(ring)).toBeCloseTo(areaM2, 12);
    // 2000 · 9.81 / 1000
    expect(kNm2 * signedAreaM2(ring)).toBeCloseTo(19.62, 12);
    for (let i = 0; i < ring.length; i += 2) {
      // Within a millimetre of the circle
      expect(Math.abs(Math.hypot(ring[i] - 1, ring[i + 1] - 2) - 1.5)).toBeLessThan(0.001);
    }
  });

  it('a line is one strip per segment: 3 kN/m over 0.5 m are 6 kN/m², length · load holds', () => {
    // 3-4-5: (0, 0) – (3, 4) is 5 m, then 2 m along x
    const line = objectInput(
      {
        kind: 'line',
        id: 'W',
        line: [
          [0, 0],
          [3, 4],
          [5, 4],
        ],
        kNm: 3,
        widthM: 0.5,
      },
      [0, 0],
    );
    expect(line.pieces.map((piece) => piece.kNm2)).toEqual([6, 6]);
    const areas = line.pieces.map((piece) => signedAreaM2(piece.ring));
    expect(areas).toEqual([expect.closeTo(2.5, 12), expect.closeTo(1, 12)]);
    // (5 + 2) m · 3 kN/m
    expect(areas.reduce((sum, area, i) => sum + area * line.pieces[i].kNm2, 0)).toBeCloseTo(21, 12);
    // 0.25 m to both sides of the second segment
    expect([...line.pieces[1].ring]).toEqual([3, 3.75, 5, 3.75, 5, 4.25, 3, 4.25].map((v) => expect.closeTo(v, 12)));
  });

  it('a retaining edge brings stem and base slab alone, on the side of the soil', () => {
    const edge = {
      kind: 'retaining',
      id: 'R',
      line: [
        [1, 1],
        [4, 1],
        [4, 3],
      ],
      retainedM: 1,
      baseM: 0.8,
      stemM: 0.1,
      slabM: 0.1,
      backfill: { density: 1500, frictionDeg: 30 },
      baseFriction: 0.5,
    } as const;
    const left = objectInput({ ...edge, side: 'left' }, [1, 1]);
    // (0.1 · 0.9 + 0.8 · 0.1) m² · 2500 kg/m³ = 425 kg/m on 0.8 m
    expect(left.kind).toBe('retaining');
    expect(left.pieces.map((piece) => piece.kNm2)).toEqual([expect.closeTo(5.2115625, 12), expect.closeTo(5.2115625, 12)]);
    // Left of the way to the east is north, left of the way to the north is west
    expect([...left.pieces[0].ring]).toEqual([0, 0, 3, 0, 3, 0.8, 0, 0.8].map((v) => expect.closeTo(v, 12)));
    const second = [...left.pieces[1].ring];
    expect([Math.min(second[0], second[4]), Math.max(second[0], second[4])]).toEqual([expect.closeTo(2.2, 12), expect.closeTo(3, 12)]);
    const right = objectInput({ ...edge, side: 'right', wallDensity: 2000 }, [1, 1]);
    const y = [...right.pieces[0].ring].filter((_, i) => i % 2 === 1);
    expect([Math.min(...y), Math.max(...y)]).toEqual([expect.closeTo(-0.8, 12), 0]);
    // 0.17 m² · 2000 kg/m³ = 340 kg/m; rings run counter-clockwise on either side: 3 · 0.8 and 2 · 0.8 m²
    expect(right.pieces[0].kNm2 * 0.8).toBeCloseTo(3.3354, 12);
    for (const { pieces } of [left, right])
      expect(pieces.map(({ ring }) => signedAreaM2(ring))).toEqual([expect.closeTo(2.4, 12), expect.closeTo(1.6, 12)]);
  });

  it('a block stands on its outline', () => {
    const block = objectInput({ kind: 'block', id: 'P', outline: rect(10, 20, 12, 21), kNm2: 8 }, [10, 20]);
    expect(block.pieces).toHaveLength(1);
    expect([signedAreaM2(block.pieces[0].ring), block.pieces[0].kNm2]).toEqual([2, 8]);
  });
});
