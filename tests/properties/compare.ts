/** Compares reports and fields number by number. */

import { expect } from 'vitest';
import type { Report } from '../../src/model/report.ts';
import type { Project } from '../../src/project/evaluate-project.ts';

/** Places, texts with places, and which of two equal stages or bays is called the worst: equal values may be reported elsewhere. */
const PLACES = new Set(['at', 'patchAt', 'says', 'worstStage', 'worstBay']);

/** Every value of a report with its path, places left out. */
function values(node: unknown, path: string, out: Map<string, unknown>): Map<string, unknown> {
  if (typeof node === 'object' && node !== null) {
    for (const [key, value] of Object.entries(node)) if (!PLACES.has(key)) values(value, `${path}.${key}`, out);
  } else out.set(path, node);
  return out;
}

/** Findings in an order that does not depend on places. */
function sorted(report: Report): Report {
  const key = ({ rule, where }: Report['findings'][number]) => [rule, where.zone, where.bay, where.stage, where.object].join('|');
  return { ...report, findings: [...report.findings].sort((a, b) => (key(a) < key(b) ? -1 : 1)) };
}

/** The same report to a tolerance, absolute below 1 and relative above. */
export function expectSameReport(actual: Report, expected: Report, tolerance: number): void {
  const [left, right] = [actual, expected].map((report) => values(sorted(report), '', new Map()));
  expect([...left.keys()]).toEqual([...right.keys()]);
  const different = [...right].filter(([path, value]) => !isSame(left.get(path), value, tolerance));
  expect(different.map(([path, value]) => `${path}: ${left.get(path)} instead of ${value}`)).toEqual([]);
}

function isSame(a: unknown, b: unknown, tolerance: number): boolean {
  if (typeof a !== 'number' || typeof b !== 'number') return a === b;
  return Object.is(a, b) || Math.abs(a - b) <= tolerance * Math.max(1, Math.abs(b));
}

/** Greatest difference of two fields; infinite where only one has a value. */
export function fieldDifference(a: ArrayLike<number>, b: ArrayLike<number>, cellOf = (cell: number) => cell): number {
  let worst = a.length === b.length ? 0 : Infinity;
  for (let i = 0; i < a.length; i++) {
    const [left, right] = [a[i], b[cellOf(i)]];
    if (Number.isNaN(left) && Number.isNaN(right)) continue;
    if (left === right) continue;
    const difference = Math.abs(left - right);
    worst = Math.max(worst, Number.isNaN(difference) ? Infinity : difference);
  }
  return worst;
}

/** Every bay's reported place is a cell whose patch is the one reported. */
export function expectPatchesAtTheirPlace({ report, evaluation }: Project): void {
  const { grid } = evaluation.prepared.ground;
  for (const { id, permanent } of report.bays) {
    const [x, y] = permanent.patchAt;
    const column = Math.floor((x - evaluation.input.originM[0] - grid.x0M) / grid.cellM);
    const row = Math.floor((y - evaluation.input.originM[1] - grid.y0M) / grid.cellM);
    const there = evaluation.patchKNm2[row * grid.columns + column];
    expect(Math.abs(there - permanent.patchKNm2), `bay ${id}`).toBeLessThan(1e-9);
  }
}
