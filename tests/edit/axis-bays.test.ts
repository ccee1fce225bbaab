/** Bays from axes: a plain grid, an L-shaped deck, a turned grid, an edge beyond the axes; by hand. */

import { describe, expect, it } from 'vitest';
import { baysFromAxes } from '../../src/edit/axis-bays.ts';
import { axisGridOf } from '../../src/import/axis-grid.ts';
import type { PointM } from '../../src/model/scene-file.ts';
import { readProject } from '../../src/project/evaluate-project.ts';
import { rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

const areas = (bays: ReturnType<typeof baysFromAxes>) => Object.fromEntries(bays.map(({ id, areaM2 }) => [id, Number(areaM2.toFixed(9))]));

describe('bays', () => {
  it('two fields of 8 m and 6 m by 7.5 m and 5 m', () => {
    const bays = baysFromAxes({ at: [0, 0], turnDeg: 0, alongM: [8, 6], acrossM: [7.5, 5] }, rect(0, 0, 14, 12.5));
    expect(areas(bays)).toEqual({ A1: 60, A2: 40, B1: 45, B2: 30 });
    expect(bays[0]?.outline.map(([x, y]) => `${x} ${y}`).sort()).toEqual(['0 0', '0 7.5', '8 0', '8 7.5']);
  });

  it('the deck sticks out beyond the outer axes: the outermost fields reach its edge', () => {
    const bays = baysFromAxes({ at: [0.3, 0.3], turnDeg: 0, alongM: [8, 8], acrossM: [5] }, rect(0, 0, 16.6, 5.6));
    expect(areas(bays)).toEqual({ A1: 46.48, B1: 46.48 });
  });

  it('an L-shaped deck has no bays where there is no deck', () => {
    const outline: PointM[] = [
      [0, 0],
      [20, 0],
      [20, 5],
      [10, 5],
      [10, 15],
      [0, 15],
    ];
    expect(areas(baysFromAxes({ at: [0, 0], turnDeg: 0, alongM: [10, 10], acrossM: [5, 10] }, outline))).toEqual({
      A1: 50,
      A2: 100,
      B1: 50,
    });
  });

  it('a U-shaped deck: a field in two pieces, the larger first', () => {
    const outline: PointM[] = [
      [0, 0],
      [30, 0],
      [30, 10],
      [20, 10],
      [20, 4],
      [12, 4],
      [12, 10],
      [0, 10],
    ];
    const bays = baysFromAxes({ at: [0, 0], turnDeg: 0, alongM: [30], acrossM: [4, 6] }, outline);
    expect(areas(bays)).toEqual({ A1: 120, A2: 72, 'A2-2': 60 });
  });

  it('in national coordinates and turned by 30°: the same areas', () => {
    const [cos, sin] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    const place = ([x, y]: PointM): PointM => [392_000 + cos * x - sin * y, 5_812_000 + sin * x + cos * y];
    const bays = baysFromAxes({ at: place([0, 0]), turnDeg: 30, alongM: [8, 6], acrossM: [7.5, 5] }, rect(0, 0, 14, 12.5).map(place));
    // Coordinates of seven digits keep a nanometre: areas to 1e-6.
    for (const [id, areaM2] of Object.entries({ A1: 60, A2: 40, B1: 45, B2: 30 })) expect(areas(bays)[id]).toBeCloseTo(areaM2, 6);
  });

  it('turned bays cover the deck: no gap and no overlap is found', () => {
    const outline: PointM[] = [
      [0, 0],
      [31, 3],
      [29, 22],
      [14, 26],
      [-3, 15],
    ];
    const bays = baysFromAxes({ at: [1, 1], turnDeg: 12, alongM: [7.2, 7.2, 7.2, 7.2], acrossM: [6.4, 6.4, 6.4] }, outline);
    const deck = {
      outline,
      bays: bays.map((bay) => ({
        id: bay.id,
        outline: bay.outline,
        permanentKNm2: 10,
        basis: { document: 'd', revision: 'A', date: '2026-01-01' },
      })),
    };
    const { project, issues } = readProject(
      JSON.stringify(sceneOf({ deck, buildups: [SOIL_100], zones: [zone('Z1', outline, 'soil-100')] })),
    );
    expect(issues).toEqual([]);
    expect(project?.report.findings.map(({ rule }) => rule).filter((rule) => rule.startsWith('bay.'))).toEqual([]);
    // Four by three fields, each of them once in an outline that bends one way only.
    expect(bays).toHaveLength(12);
  });

  it('refuses distances that are none', () => {
    expect(() => baysFromAxes({ at: [0, 0], turnDeg: 0, alongM: [8, 0], acrossM: [5] }, rect(0, 0, 14, 5))).toThrow(/above 0, found 0/);
  });
});

describe('axes as drawn', () => {
  const line = (x0: number, y0: number, x1: number, y1: number): PointM[] => [
    [x0, y0],
    [x1, y1],
  ];

  it('a grid, whatever the order and direction of its lines', () => {
    const lines = [
      line(14, -2, 14, 15),
      line(0, 15, 0, -2),
      line(8, -2, 8, 15),
      line(-2, 0, 16, 0),
      line(16, 12.5, -2, 12.5),
      line(-2, 7.5, 16, 7.5),
    ];
    expect(axisGridOf(lines)).toEqual({ at: [0, 0], turnDeg: 0, alongM: [8, 6], acrossM: [7.5, 5] });
  });

  it('turned by 30°', () => {
    const [cos, sin] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    const lines = [line(0, -1, 0, 6), line(8, -1, 8, 6), line(-1, 0, 9, 0), line(-1, 5, 9, 5)].map((points) =>
      points.map(([x, y]): PointM => [100 + cos * x - sin * y, 50 + sin * x + cos * y]),
    );
    const grid = axisGridOf(lines);
    expect(grid?.turnDeg).toBeCloseTo(30, 9);
    expect(grid?.at[0]).toBeCloseTo(100, 9);
    expect(grid?.at[1]).toBeCloseTo(50, 9);
    expect([grid?.alongM, grid?.acrossM]).toEqual([[8], [5]]);
  });

  it('axes at other angles make no grid', () => {
    expect(axisGridOf([line(0, 0, 10, 0), line(0, 5, 10, 5), line(0, 0, 3, 10), line(5, 0, 8, 10)])).toBeNull();
    expect(axisGridOf([line(0, 0, 10, 0), line(0, 5, 10, 5)])).toBeNull();
  });
});
