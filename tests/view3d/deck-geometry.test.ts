/** GPU geometry: ribbons of lines, renewal in place, the mark on a cell. */

import { describe, expect, it } from 'vitest';
import { cellAt, cellCentre, markLines } from '../../src/view3d/cell-mark.ts';
import { emptyGeometry, lineArrays, lineTriangles, renewed, solidArrays } from '../../src/view3d/deck-geometry.ts';
import { smallPicture } from './small-picture.ts';

describe('lines', () => {
  const arrays = lineArrays({
    positions: Float32Array.from([0, 0, 0, 1, 2, 3]),
    parts: Uint16Array.from([4, 5]),
    upper: Uint8Array.from([0, 1]),
  });

  it('become ribbons of four vertices, two at each end, that know the other end', () => {
    expect([...arrays.position.array]).toEqual([0, 0, 0, 0, 0, 0, 1, 2, 3, 1, 2, 3]);
    expect([...arrays.other.array]).toEqual([1, 2, 3, 1, 2, 3, 0, 0, 0, 0, 0, 0]);
    expect([...arrays.part.array]).toEqual([4, 4, 5, 5]);
    expect([...arrays.upper.array]).toEqual([0, 0, 1, 1]);
    expect([...arrays.otherUpper.array]).toEqual([1, 1, 0, 0]);
  });

  it('have a left and a right at each end', () => {
    expect([...arrays.side.array].map(Math.sign)).toEqual([1, -1, 1, -1]);
  });

  it('are two triangles per segment', () => {
    expect([...lineTriangles(2)]).toEqual([0, 1, 2, 2, 1, 3, 4, 5, 6, 6, 5, 7]);
  });
});

describe('renewal', () => {
  const solids = { ...smallPicture().solids, triangles: Uint32Array.from([0, 1, 2]) };

  it('keeps the geometry where only heights changed, and sends only those', () => {
    const first = renewed(emptyGeometry(), solidArrays(solids), solids.triangles);
    const higher = { ...solids, positions: solids.positions.map((at) => at + 1) };
    const second = renewed(first, solidArrays(higher), higher.triangles);
    expect(second).toBe(first);
    expect([...second.getAttribute('position').array]).toEqual([...higher.positions]);
    const version = (name: string) => (second.getAttribute(name) as { version?: number }).version;
    expect(version('position')).toBe(1);
    expect(version('part')).toBe(0);
  });

  it('never writes into the picture it came from', () => {
    const before = [...solids.positions];
    const geometry = renewed(emptyGeometry(), solidArrays(solids), solids.triangles);
    renewed(geometry, solidArrays({ ...solids, positions: solids.positions.map(() => 9) }), solids.triangles);
    expect([...solids.positions]).toEqual(before);
  });

  it('gives the old geometry back where sizes differ', () => {
    const first = renewed(emptyGeometry(), solidArrays(solids), solids.triangles);
    let given = false;
    first.addEventListener('dispose', () => {
      given = true;
    });
    const more = { ...solids, triangles: Uint32Array.from([0, 1, 2, 0, 2, 3]) };
    expect(renewed(first, solidArrays(more), more.triangles)).not.toBe(first);
    expect(given).toBe(true);
  });
});

describe('cells', () => {
  const grid = { columns: 4, rows: 3, cellM: 0.5, x0M: -1, y0M: 2 };

  it('have a centre, and places belong to a cell', () => {
    // Cell 6: column 2, row 1: x = -1 + 2.5 × 0.5, y = 2 + 1.5 × 0.5.
    expect(cellCentre(grid, 6)).toEqual([0.25, 2.75]);
    expect(cellAt(grid, [0.25, 2.75])).toBe(6);
    expect(cellAt(grid, [1.01, 2.75])).toBeNull();
    expect(cellAt(grid, [0.25, 1.99])).toBeNull();
  });

  it('are marked by outline, ticks and a staff on the surface', () => {
    const { positions, parts, upper } = markLines([10, 20], 0.25, { part: 7, zM: 3 }, 1);
    // 4 sides, 4 ticks, 1 staff of two vertices each.
    expect(parts).toHaveLength(18);
    expect(new Set(parts)).toEqual(new Set([7]));
    expect(new Set(upper)).toEqual(new Set([1]));
    const xs = [...positions].filter((_, i) => i % 3 === 0);
    const zs = [...positions].filter((_, i) => i % 3 === 2);
    // Ticks end one metre off the cell's edge; the staff is two metres high.
    expect(Math.min(...xs)).toBe(8.75);
    expect(Math.max(...xs)).toBe(11.25);
    expect([Math.min(...zs), Math.max(...zs)]).toEqual([3, 5]);
  });
});
