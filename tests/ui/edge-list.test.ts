/** Edges as a table: sills first, what lacks most first. */

import { expect, it } from 'vitest';
import type { ReportEdge } from '../../src/model/report.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { listEdges } from '../../src/ui/facts/edge-list.ts';

const edge = (id: string, leastUpstandMm: number | null, requiredMm: number) =>
  ({ id, leastUpstandMm, requiredMm, at: null, zone: null }) as ReportEdge;

const SCENE = {
  deck: {
    edges: [
      { id: 'wall', kind: 'upstand' },
      { id: 'low wall', kind: 'upstand' },
      { id: 'alone', kind: 'upstand' },
      { id: 'door', kind: 'threshold', drainedChannel: true },
      { id: 'low door', kind: 'threshold', drainedChannel: true },
      { id: 'old door', kind: 'threshold' },
    ],
  },
} as unknown as SceneFile;

const EDGES = [
  edge('wall', 150, 150),
  edge('alone', null, 150),
  edge('low wall', 149.5, 150),
  edge('door', 50, 50),
  edge('low door', 20, 50),
  edge('old door', 70, 150),
];

it('sills come before upstands, and within each what lacks most', () => {
  expect(listEdges(EDGES, SCENE).map(({ id }) => id)).toEqual(['old door', 'low door', 'door', 'low wall', 'wall', 'alone']);
});

it('what is missing is required less least; nothing where it is met or nothing adjoins', () => {
  const missing = new Map(listEdges(EDGES, SCENE).map(({ id, missingMm }) => [id, missingMm]));
  expect([...missing]).toEqual([
    ['old door', 80],
    ['low door', 30],
    ['door', 0],
    ['low wall', 0.5],
    ['wall', 0],
    ['alone', 0],
  ]);
});

it('a height that misses its limit by rounding alone is enough', () => {
  expect(listEdges([edge('wall', 150 - 1e-9, 150)], SCENE)[0]?.missingMm).toBe(0);
});
