/** The section of sills and upstands. */

import { expect, it } from 'vitest';
import { edgeLines } from '../../src/cli/summary-edges.ts';
import { WRITING } from '../../src/cli/writing.ts';
import type { ReportEdge } from '../../src/model/report.ts';
import type { SceneEdge } from '../../src/model/scene-file.ts';
import { read, sceneOf } from '../helpers/scene-builder.ts';

const line: SceneEdge['line'] = [
  [0, 0],
  [4, 0],
];
const SCENE = sceneOf({
  deck: {
    edges: [
      { id: 'wall', line, kind: 'upstand', membraneTopM: 1 },
      { id: 'far', line, kind: 'upstand', membraneTopM: 1 },
      { id: 'door', line, kind: 'threshold', membraneTopM: 1, drainedChannel: true },
      { id: 'gate', line, kind: 'threshold', membraneTopM: 1 },
    ],
  },
});
const row = (id: string, leastUpstandMm: number | null, requiredMm: number): ReportEdge =>
  leastUpstandMm === null
    ? { id, leastUpstandMm, at: null, zone: null, requiredMm }
    : { id, leastUpstandMm, at: [2, 0], zone: 'Z1', requiredMm };

it('lists sills first, the shortest first, and rounds to the unsafe side', () => {
  const report = {
    ...read(SCENE).report,
    edges: [row('wall', 149.6, 150), row('far', null, 150), row('door', 60, 50), row('gate', 120, 150)],
  };
  const cells = edgeLines(SCENE, report, WRITING.en)
    .slice(1, -1)
    .map((text) => text.trim().split(/ {2,}/));
  expect(cells).toEqual([
    ['edge', 'kind', 'least', 'required', 'spare', 'zone', 'at'],
    ['gate', 'sill, no channel', '120', '150', '-30', 'Z1', '2.00, 0.00'],
    ['door', 'sill, drained', '60', '50', '10', 'Z1', '2.00, 0.00'],
    ['wall', 'upstand', '149', '150', '-1', 'Z1', '2.00, 0.00'],
    ['far', 'upstand', '-', '150', '-', 'none adjoins', '-'],
  ]);
});

it('has no lines where no edges are drawn', () => {
  expect(edgeLines(sceneOf(), read(sceneOf()).report, WRITING.en)).toEqual([]);
});
