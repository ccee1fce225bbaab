/** Sills and upstands: how high the membrane ends above the finish, in millimetres. */

import type { Report } from '../model/report.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { table } from './text-table.ts';
import type { Writing } from './writing.ts';

/** Lines of the section, sills first, shortest first; empty where the scene draws no edges. */
export function edgeLines(scene: SceneFile, report: Report, { words, fixed, place }: Writing): string[] {
  if (!report.edges) return [];
  const drawn = new Map((scene.deck.edges ?? []).map((edge) => [edge.id, edge]));
  const isSill = (id: string) => drawn.get(id)?.kind === 'threshold';
  const spareMm = ({ leastUpstandMm, requiredMm }: (typeof rows)[number]) => (leastUpstandMm ?? Infinity) - requiredMm;
  const rows = report.edges;
  // Rounded down, so that 49.6 of 50 mm never reads as 50.
  const wholeMm = (value: number) => fixed(Math.floor(value + 1e-6), 0);
  const sorted = [...rows].sort((a, b) => Number(isSill(b.id)) - Number(isSill(a.id)) || spareMm(a) - spareMm(b));
  return [
    words.edges,
    ...table(
      words.edgesHead,
      sorted.map((edge) => {
        const kind = isSill(edge.id) ? words.sill(drawn.get(edge.id)?.drainedChannel === true) : words.upstand;
        if (edge.leastUpstandMm === null) return [edge.id, kind, '-', fixed(edge.requiredMm, 0), '-', words.noneAdjoins, '-'];
        return [
          edge.id,
          kind,
          wholeMm(edge.leastUpstandMm),
          fixed(edge.requiredMm, 0),
          wholeMm(edge.leastUpstandMm - edge.requiredMm),
          edge.zone ?? '-',
          place(edge.at ?? []),
        ];
      }),
      'llrrrll',
    ),
    '',
  ];
}
