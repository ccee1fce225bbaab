/** Areas cut in two along a drawn line. */

import type { ScenePatch } from '../model/history.ts';
import type { PointM, SceneFile } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import { areaIn, withPieces } from './area-parts.ts';
import type { AreaM } from './overlay.ts';
import { enclosed, type HalfEdge, type PlanarEdge, planarOf } from './planar.ts';
import { patchOf } from './point-lists.ts';
import { isRefused, type Refused } from './refusal.ts';

export interface SplitParts {
  readonly patch: ScenePatch;
  /** The pieces, largest first; the largest keeps the id. */
  readonly selected: readonly Selected[];
}

/**
 * Cuts a zone, a bay or another area along a drawn line. The pieces have the very same new vertices, which neighbours get as well. Holes stay on their side or
 * are cut. Pieces keep build-up, finish and use, or permitted loads and basis, as they lie where the whole one lay; stages that placed the whole place all its pieces.
 * @param scene - the scene
 * @param selected - the area
 * @param line - drawn line, from edge to edge or beyond; a closed one cuts a piece out of a zone
 * @returns what changes, or why it cannot be
 */
export function split(scene: SceneFile, selected: Selected, line: readonly PointM[]): SplitParts | Refused {
  if (selected.part === 'outline' || selected.part === 'opening') return { refused: 'wrong kind' };
  const area = areaIn(scene, selected);
  if (area === null) return { refused: 'no such part' };
  const pieces = splitArea(area, line);
  if (pieces.length < 2) return { refused: 'line does not divide' };
  const result = withPieces(scene, selected, pieces);
  return isRefused(result) ? result : { patch: patchOf(scene, result.scene), selected: result.selected };
}

/**
 * Pieces of an area along a line. What of the line leads nowhere cuts nothing.
 * @param area - area with holes
 * @param line - drawn line
 * @returns pieces, largest first; one where the line does not divide it
 */
export function splitArea(area: AreaM, line: readonly PointM[]): readonly AreaM[] {
  const { points, edges } = planarOf([area], [line]);
  const boundary = edges.filter(({ left, right }) => left[0] !== right[0]);
  const inside = edges.filter(({ left, right, onLine }) => onLine && left[0] && right[0]);
  const halfEdges = boundary.map(({ a, b, left }): HalfEdge => (left[0] ? [a, b] : [b, a]));
  for (const { a, b } of withoutLooseEnds(inside, boundary)) halfEdges.push([a, b], [b, a]);
  return enclosed(points, halfEdges);
}

/** Takes edges off whose one end meets nothing else, until there are none. */
function withoutLooseEnds(lines: readonly PlanarEdge[], others: readonly PlanarEdge[]): readonly PlanarEdge[] {
  const met = new Map<number, number>();
  for (const { a, b } of [...lines, ...others]) for (const end of [a, b]) met.set(end, (met.get(end) ?? 0) + 1);
  const kept = lines.filter(({ a, b }) => (met.get(a) ?? 0) > 1 && (met.get(b) ?? 0) > 1);
  return kept.length === lines.length ? lines : withoutLooseEnds(kept, others);
}
