/** The window of 1 m × 1 m on grids it does not fit: cells of 0.3 m, cells larger than it, deck edges, bays without a cell's centre. */

import { describe, expect, it } from 'vitest';
import type { PointM } from '../../src/model/scene-file.ts';
import type { Project } from '../../src/project/evaluate-project.ts';
import { bay, byId, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

/** Patch of the finished garden centred on the cell under a point. */
function patchAt(project: Project, x: number, y: number): number {
  const { grid } = project.evaluation.prepared.ground;
  const [originX, originY] = project.evaluation.input.originM;
  const column = Math.floor((x - originX - grid.x0M) / grid.cellM);
  const row = Math.floor((y - originY - grid.y0M) / grid.cellM);
  return project.evaluation.patchKNm2[row * grid.columns + column];
}

/** A bare deck of 6 m × 6 m with one block. */
function blockOn(outline: readonly PointM[], kNm2: number, cellM: number): Project {
  return read(sceneOf({ deck: { outline: rect(0, 0, 6, 6) }, zones: [], objects: [{ kind: 'block', id: 'P1', outline, kNm2 }] }), cellM);
}

describe('cells of 0.3 m: the window is 3⅓ cells wide', () => {
  it('a strip one cell wide', () => {
    // Strip 3.0 … 3.3 under 10 kN/m²; the window reaches 0.5 m each side of a cell's centre.
    const project = blockOn(rect(3, 0, 3.3, 6), 10, 0.3);
    expect(patchAt(project, 3.15, 3.15)).toBeCloseTo(3, 9); // by hand: 0.3 m · 10
    expect(patchAt(project, 3.45, 3.15)).toBeCloseTo(3, 9); // window from 2.95
    expect(patchAt(project, 3.75, 3.15)).toBeCloseTo(0.5, 9); // window from 3.25: 0.05 m · 10
    expect(patchAt(project, 4.05, 3.15)).toBe(0); // window from 3.55
    expect(patchAt(project, 2.55, 3.15)).toBeCloseTo(0.5, 9); // window to 3.05
    expect(project.report.bays[0].permanent.patchKNm2).toBeCloseTo(3, 9);
  });

  it('one cell: all of it in nine windows, a sixth and a thirty-sixth beyond', () => {
    const project = blockOn(rect(3, 3, 3.3, 3.3), 20, 0.3);
    expect(patchAt(project, 3.15, 3.15)).toBeCloseTo(1.8, 9); // by hand: 0.09 m² · 20
    expect(patchAt(project, 3.45, 2.85)).toBeCloseTo(1.8, 9);
    expect(patchAt(project, 3.75, 3.15)).toBeCloseTo(0.3, 9); // by hand: 0.05 · 0.3 · 20
    expect(patchAt(project, 3.75, 3.75)).toBeCloseTo(0.05, 9); // by hand: 0.05 · 0.05 · 20
    expect(patchAt(project, 4.05, 3.15)).toBe(0);
  });

  it('at the deck edge the window counts deck only', () => {
    // Strip along the left edge, 0.3 m wide, 10 kN/m². by hand: centred at 0.15 m the window holds 0.65 m of deck: 0.3 · 10 / 0.65
    const project = blockOn(rect(0, 0, 0.3, 6), 10, 0.3);
    expect(patchAt(project, 0.15, 3.15)).toBeCloseTo(3 / 0.65, 9);
    expect(patchAt(project, 0.45, 3.15)).toBeCloseTo(3 / 0.95, 9);
    expect(patchAt(project, 0.75, 3.15)).toBeCloseTo(0.5, 9);
    // In the corner too: the load is the same share of the deck along the edge.
    expect(patchAt(project, 0.15, 0.15)).toBeCloseTo(3 / 0.65, 9);
  });
});

describe('an even load has the same patch everywhere, whatever the cells', () => {
  it.each([0.05, 0.1, 0.25, 0.3, 0.4, 0.5, 0.7, 1, 1.3, 2])('cells of %f m', (cellM) => {
    const outline: PointM[] = [
      [0, 0],
      [5.9, 0.31],
      [5.2, 4.77],
      [0.4, 4.1],
    ];
    const opening = rect(2.13, 1.77, 3.49, 2.9);
    const project = read(sceneOf({ deck: { outline, openings: [opening] } }), cellM);
    const { permanent } = project.report.bays[0];
    expect(permanent.patchKNm2).toBeCloseTo(1.4715, 9);
    expect(permanent.peakKNm2).toBeCloseTo(1.4715, 9);
    expect(permanent.meanKNm2).toBeCloseTo(1.4715, 9);
    for (const patch of project.evaluation.patchKNm2) if (!Number.isNaN(patch)) expect(patch).toBeCloseTo(1.4715, 9);
  });
});

describe('whole and half cells', () => {
  it.each([
    [1, 5], // by hand: the window is the cell: half of it under 10
    [0.5, 5], // by hand: window 2 cells wide, one whole and two halves, a strip of 0.5 m
    [0.25, 5],
    [0.125, 5],
  ])('cells of %f m, strip of 0.5 m', (cellM, patchKNm2) => {
    const project = blockOn(rect(3, 0, 3.5, 6), 10, cellM);
    expect(project.report.bays[0].permanent.patchKNm2).toBeCloseTo(patchKNm2, 9);
  });

  it('cells of 2 m: the window lies inside one cell and sees the mean of that cell', () => {
    const project = blockOn(rect(2, 2, 3, 3), 10, 2);
    expect(patchAt(project, 3, 3)).toBeCloseTo(2.5, 9); // by hand: 1 m² of 4 m²
    expect(patchAt(project, 1, 1)).toBe(0);
    expect(project.report.deck.objectsKN).toBeCloseTo(10, 9);
  });

  it('cells of 0.7 m: 1 m is one cell and 0.15 m of each neighbour', () => {
    const project = blockOn(rect(2.8, 0, 3.5, 6), 10, 0.7);
    expect(patchAt(project, 3.15, 3.15)).toBeCloseTo(7, 9); // by hand: 0.7 m · 10
    expect(patchAt(project, 3.85, 3.15)).toBeCloseTo(1.5, 9); // by hand: 0.15 m · 10
    expect(patchAt(project, 4.55, 3.15)).toBe(0);
  });
});

describe('bays', () => {
  it('a bay too narrow for any cell’s centre is judged all the same', () => {
    // Bay of 0.1 m between x = 2.90 and 3.00: the centres of cells of 0.25 m lie at 2.875 and 3.125.
    const outline = rect(0, 0, 6, 4);
    const bays = [
      bay('West', rect(0, 0, 2.9, 4)),
      bay('Narrow', rect(2.9, 0, 3, 4), { permanentKNm2: 1, imposedKNm2: 5 }),
      bay('East', rect(3, 0, 6, 4)),
    ];
    const project = read(sceneOf({ deck: { outline, bays }, zones: [zone('Z1', outline, 'soil-100')] }));
    const { areaM2, permanent, stages } = byId(project.report.bays, 'Narrow');
    expect(areaM2).toBeCloseTo(0.4, 9);
    expect(permanent.meanKNm2).toBeCloseTo(1.4715, 9);
    // 1.4715 on a limit of 1: a bay that is over must never pass for want of a centre.
    expect(permanent.patchKNm2).toBeCloseTo(1.4715, 9);
    expect(permanent.utilisation).toBeCloseTo(1.4715, 9);
    expect(stages.at(-1)?.utilisation).toBeCloseTo(1.4715, 9);
    expect(
      project.report.findings.some(
        ({ rule, severity, where }) => rule === 'load.permanent' && severity === 'stop' && where.bay === 'Narrow',
      ),
    ).toBe(true);
    expect(permanent.patchAt.every(Number.isFinite)).toBe(true);
  });

  it('a window sees across the line between two bays', () => {
    // Block of 1 m × 1 m at the line x = 3, wholly in the east bay; windows centred in the west bay see almost half of it.
    const bays = [bay('West', rect(0, 0, 3, 6)), bay('East', rect(3, 0, 6, 6))];
    const objects = [{ kind: 'block' as const, id: 'P1', outline: rect(3, 2, 4, 3), kNm2: 10 }];
    const project = read(sceneOf({ deck: { outline: rect(0, 0, 6, 6), bays }, zones: [], objects }), 0.25);
    expect(byId(project.report.bays, 'West').permanent.meanKNm2).toBe(0);
    // by hand: centred at x = 2.875 the window reaches 0.375 m over the block; of its height, centred at y = 2.375 or 2.625, 0.875 m.
    expect(byId(project.report.bays, 'West').permanent.patchKNm2).toBeCloseTo(3.28125, 9);
    expect(byId(project.report.bays, 'East').permanent.patchKNm2).toBeCloseTo(7.65625, 9); // by hand: 0.875 · 0.875 · 10
  });
});
