/** What a pointer catches: vertex before edge, edge before guides, guides before the grid; exact; fast. */

import { describe, expect, it } from 'vitest';
import { type PlanShape, planShapes } from '../../src/edit/plan-shapes.ts';
import { patched } from '../../src/edit/point-lists.ts';
import { withVertexInserted } from '../../src/edit/shared-vertices.ts';
import { bothIndexes, type SnapAsk, snapIndex, snapIndexOfLines, snapped } from '../../src/edit/snap.ts';
import type { PointM } from '../../src/model/scene-file.ts';
import { randomFrom, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const SCENE = sceneOf({
  deck: { outline: rect(0, 0, 10, 8), outlets: [{ id: 'O1', at: [7.013, 5.021], kind: 'outlet' }] },
  zones: [zone('Z1', rect(0, 0, 4, 8), 'soil-100'), zone('Z2', rect(4, 0, 10, 8), 'soil-100')],
});
const INDEX = snapIndex(planShapes(SCENE));
const GRID = { stepM: 0.5, at: [0, 0], turnDeg: 0 } as const;
const near = (at: PointM, more: Partial<SnapAsk> = {}) => snapped(INDEX, { at, toleranceM: 0.2, ...more });

describe('what is caught', () => {
  it('a vertex before the edges that meet there, with its very coordinates and all parts that have it', () => {
    const caught = near([4.1, 0.05], { grid: GRID });
    expect(caught).toMatchObject({ at: [4, 0], kind: 'vertex', edges: [] });
    expect(caught.vertices.map(({ part, id }) => `${part} ${id}`).sort()).toEqual(['zone Z1', 'zone Z2']);
  });

  it('a place: an outlet', () => expect(near([7.1, 5])).toMatchObject({ at: [7.013, 5.021], kind: 'vertex' }));

  it('corners and edges of lines under the plan, too; a place among them', () => {
    const both = bothIndexes(
      INDEX,
      snapIndexOfLines([
        [
          [2.123, 5.3],
          [3.1, 5.3],
        ],
        [[8.25, 2.75]],
      ]),
    );
    const caught = (at: PointM) => snapped(both, { at, toleranceM: 0.2 });
    expect(caught([2.2, 5.2])).toMatchObject({ at: [2.123, 5.3], kind: 'vertex' });
    expect(caught([2.5, 5.4])).toMatchObject({ at: [2.5, 5.3], kind: 'edge' });
    expect(caught([8.3, 2.8])).toMatchObject({ at: [8.25, 2.75], kind: 'vertex' });
    // The scene catches as before.
    expect(caught([4.1, 0.05])).toMatchObject({ at: [4, 0], kind: 'vertex' });
  });

  it('an edge of both zones before the grid; the point lies on it', () => {
    const caught = near([4.11, 3.27], { grid: { ...GRID, stepM: 0.01 } });
    expect(caught).toMatchObject({ at: [4, 3.27], kind: 'edge' });
    expect(caught.edges.map(({ id }) => id).sort()).toEqual(['Z1', 'Z2']);
  });

  it('a right angle onto the edge before any other of its points', () =>
    expect(near([4.1, 3.15], { from: [2, 3.02] })).toMatchObject({ at: [4, 3.02], kind: 'foot' }));

  it('a right angle to the edge drawn before, from the point before', () => {
    // From (5, 2) a line of 45° was drawn to (6, 3); square to it lies (7, 2).
    const caught = near([7.05, 2.02], {
      from: [6, 3],
      guides: [
        [
          [5, 2],
          [6, 3],
        ],
      ],
    });
    expect(caught.kind).toBe('right angle');
    expect(caught.at[0]).toBeCloseTo(6 + 1.015, 9);
    expect(caught.at[1]).toBeCloseTo(3 - 1.015, 9);
  });

  it('parallel to an edge picked, and along the axes of the plan', () => {
    expect(
      near([7.1, 6.55], {
        from: [6, 6],
        guides: [
          [
            [0, 0],
            [2, 1],
          ],
        ],
      }).kind,
    ).toBe('parallel');
    expect(near([8, 6.1], { from: [6, 6] })).toMatchObject({ at: [8, 6], kind: 'parallel' });
  });

  it('the fourth corner of a rectangle: square to the edge before, above the first corner', () => {
    const drawn: PointM[] = [
      [5, 1],
      [8, 1],
      [8, 3.3],
    ];
    expect(
      near([5.12, 3.21], {
        from: [8, 3.3],
        drawn,
        guides: [
          [
            [8, 1],
            [8, 3.3],
          ],
        ],
      }),
    ).toMatchObject({ at: [5, 3.3], kind: 'right angle' });
  });

  it('where a guide meets an edge, on the edge', () =>
    expect(
      near([4.1, 5.45], {
        from: [6, 3.5],
        guides: [
          [
            [7, 2.5],
            [6, 3.5],
          ],
        ],
      }),
    ).toMatchObject({ at: [4, 5.5], kind: 'edge' }));

  it('a crossing of two edges', () => {
    const shapes: PlanShape[] = [
      {
        part: 'route',
        id: 'F1',
        form: 'line',
        points: [
          [0, 0],
          [4, 4],
        ],
      },
      {
        part: 'route',
        id: 'F2',
        form: 'line',
        points: [
          [0, 4],
          [4, 0],
        ],
      },
    ];
    expect(snapped(snapIndex(shapes), { at: [2.1, 1.95], toleranceM: 0.2 })).toMatchObject({ at: [2, 2], kind: 'crossing' });
  });

  it('the grid where nothing else is near, told without crumbs: 0.1 + 0.2 is 0.3', () => {
    expect(near([6.04, 3.96], { grid: GRID })).toMatchObject({ at: [6, 4], kind: 'grid' });
    expect(near([6.3 + 0.004, 2.9], { grid: { ...GRID, stepM: 0.1 } }).at).toEqual([6.3, 2.9]);
  });

  it('nothing: the pointer itself', () =>
    expect(near([6.24, 3.77])).toEqual({ at: [6.24, 3.77], kind: null, vertices: [], edges: [], guide: null }));

  it('neither what is being moved nor kinds switched off', () => {
    expect(near([4.1, 0.05], { moving: [[4, 0]] })).toMatchObject({ at: [4.1, 0], kind: 'edge' });
    expect(near([4.1, 0.05], { off: new Set(['vertex', 'crossing', 'edge', 'foot']) }).kind).toBe(null);
  });
});

describe('exact', () => {
  it('a point caught on a slanting edge becomes the same vertex in every part along it', () => {
    const slanting: PointM[] = [
      [0, 0],
      [7, 3],
      [0, 3],
    ];
    const other: PointM[] = [
      [0, 0],
      [7, 0],
      [7, 3],
    ];
    const scene = sceneOf({
      deck: { outline: rect(0, 0, 7, 3) },
      zones: [zone('Z1', slanting, 'soil-100'), zone('Z2', other, 'soil-100')],
    });
    const { at, edges } = snapped(snapIndex(planShapes(scene)), { at: [3.3, 1.5], toleranceM: 0.2 });
    expect(edges).toHaveLength(2);
    const next = patched(scene, withVertexInserted(scene, at));
    expect(next.zones.map(({ outline }) => outline)).toEqual([
      [[0, 0], at, [7, 3], [0, 3]],
      [[0, 0], [7, 0], [7, 3], at],
    ]);
    expect(next.deck).toBe(scene.deck);
  });
});

describe('fast', () => {
  it('less than a millisecond among 10 000 edges (median of 500), near and far', () => {
    const random = randomFrom(3);
    const shapes = Array.from({ length: 2500 }, (_, i): PlanShape => {
      const [x, y] = [200 * random(), 200 * random()];
      return { part: 'zone', id: `Z${i}`, form: 'area', points: rect(x, y, x + 1 + 3 * random(), y + 1 + 3 * random()) };
    });
    const index = snapIndex(shapes);
    expect(index.edges).toBe(10_000);
    for (const toleranceM of [0.05, 1]) {
      const times = Array.from({ length: 500 }, () => {
        const at: PointM = [200 * random(), 200 * random()];
        const begun = performance.now();
        snapped(index, { at, toleranceM, from: [100, 100], grid: GRID });
        return performance.now() - begun;
      }).sort((a, b) => a - b);
      expect(times[250]).toBeLessThan(1);
    }
  });
});
