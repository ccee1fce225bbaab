/** Labels beside the model: rows, order, room. Places by hand in a picture of 600 × 400 px. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexHull, extent, type LabelBox, labelPlaces, rowsFor } from '../../src/view3d/label-layout.ts';

const label = (x: number, y: number): LabelBox => ({ anchor: { x, y }, width: 60, height: 16 });
const diamond = [
  { x: 300, y: 100 },
  { x: 450, y: 200 },
  { x: 300, y: 300 },
  { x: 150, y: 200 },
];
const room = { width: 600, height: 400, outline: diamond };

describe('outline', () => {
  it('drops points inside', () => {
    expect(convexHull([...diamond, { x: 300, y: 200 }, { x: 310, y: 190 }])).toHaveLength(4);
  });

  it('is measured between two heights', () => {
    // The left side runs from (150, 200) to (300, 100): at y = 150 it is at x = 225.
    expect(extent(diamond, 150, 150)).toEqual([225, 375]);
    expect(extent(diamond, 150, 250)).toEqual([150, 450]);
    expect(extent(diamond, 310, 330)).toBeNull();
  });
});

describe('rows', () => {
  it('keep the order and the shortest way', () => {
    // 12 and 18 px share the rows at 0, 20, 40: by squares 12 -> 0 and 18 -> 20 (148) beats 12 -> 20 and 18 -> 40 (548).
    expect(rowsFor([12, 18], [0, 20, 40])).toEqual([0, 1]);
    expect(rowsFor([28], [0, 20, 40])).toEqual([1]);
    expect(rowsFor([38, 39], [0, 20, 40])).toEqual([1, 2]);
  });

  it('leave labels out when there are too few', () => {
    const rows = rowsFor([0, 10, 20], [5, 25]);
    expect(rows.filter((row) => row >= 0)).toEqual([0, 1]);
    expect(rowsFor([10], [])).toEqual([-1]);
  });
});

describe('labels', () => {
  it('stand on the side of what they name', () => {
    const [left, right] = labelPlaces([label(200, 200), label(400, 200)], room);
    expect(left?.side).toBe('left');
    expect(right?.side).toBe('right');
  });

  it('are left out when the model leaves no room, or what they name is out of sight', () => {
    const wide = { ...room, outline: [0, 600].flatMap((x) => [0, 400].map((y) => ({ x, y }))) };
    expect(labelPlaces([label(200, 200)], wide)).toEqual([null]);
    expect(labelPlaces([label(-5, 200)], room)).toEqual([null]);
  });

  it('never touch the model, the edge, or each other', () => {
    const anchors = fc.array(fc.tuple(fc.integer({ min: 160, max: 440 }), fc.integer({ min: 110, max: 290 })), { maxLength: 30 });
    fc.assert(
      fc.property(anchors, (all) => {
        const boxes = all.map(([x, y]) => label(x, y));
        const placed = labelPlaces(boxes, room).filter((place) => place !== null);
        for (const { x, y } of placed) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x + 60).toBeLessThanOrEqual(600);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y + 16).toBeLessThanOrEqual(400);
          const span = extent(diamond, y, y + 16);
          if (span !== null) expect(x + 60 <= span[0] || x >= span[1]).toBe(true);
        }
        placed.forEach((a, i) => {
          for (const b of placed.slice(i + 1)) expect(a.side !== b.side || Math.abs(a.y - b.y) >= 16).toBe(true);
        });
      }),
    );
  });
});
