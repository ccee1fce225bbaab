/** Checks polygons and lines: enough points, an area, no crossing, holes inside. */

import type { Phrase } from '../model/issue.ts';
import type { PointM, PolygonM, SceneFile } from '../model/scene-file.ts';
import type { IssueList } from './issue-list.ts';
import { MAX_DECK_SIDE_M, MAX_LIST_POINTS } from './limits.ts';
import { type Path, pathText } from './path.ts';
import { distinctPoints, ringOf } from './ring.ts';
import { areaFaults, faultPath, lineFaults } from './shape-faults.ts';
import { asIs, phrase, worded } from './words/phrase.ts';

interface NamedArea {
  readonly path: Path;
  readonly outline: PolygonM;
  /** As messages call it, e.g. `zone "Z1"`. */
  readonly name: Phrase;
  readonly holes?: { readonly path: Path; readonly rings: readonly PolygonM[]; readonly word: 'opening' | 'hole' };
}

/** Checks all polygons and lines of a scene. */
export function checkShapes(scene: SceneFile, issues: IssueList): void {
  checkDeckSize(scene, issues);
  for (const area of areasOf(scene)) checkArea(area, issues);
  for (const { path, line, name } of linesOf(scene)) {
    for (const fault of lineFaults(line, name)) issues.error(fault.code, path, fault.words);
  }
}

function* areasOf(scene: SceneFile): Generator<NamedArea> {
  const { deck } = scene;
  const openings = { path: ['deck', 'openings'], rings: deck.openings ?? [], word: 'opening' } as const;
  yield { path: ['deck', 'outline'], outline: deck.outline, name: phrase('theDeck'), holes: openings };
  for (const [i, { id, outline }] of deck.bays.entries())
    yield { path: ['deck', 'bays', i, 'outline'], outline, name: phrase('bay', { id }) };
  for (const [i, { id, outline, holes: rings = [] }] of scene.zones.entries())
    yield {
      path: ['zones', i, 'outline'],
      outline,
      name: phrase('zone', { id }),
      holes: { path: ['zones', i, 'holes'], rings, word: 'hole' },
    };
  for (const [i, object] of (scene.objects ?? []).entries()) {
    if (object.kind === 'block')
      yield { path: ['objects', i, 'outline'], outline: object.outline, name: phrase('blockLoad', { id: object.id }) };
  }
  for (const [i, { id, outline }] of (scene.setUpAreas ?? []).entries())
    yield { path: ['setUpAreas', i, 'outline'], outline, name: phrase('setUpArea', { id }) };
  for (const [i, stage] of (scene.stages ?? []).entries()) {
    for (const [j, { id, outline }] of (stage.stockpiles ?? []).entries())
      yield { path: ['stages', i, 'stockpiles', j, 'outline'], outline, name: phrase('stockpile', { id }) };
  }
}

function* linesOf(scene: SceneFile): Generator<{ readonly path: Path; readonly line: readonly PointM[]; readonly name: Phrase }> {
  for (const [i, edge] of (scene.deck.edges ?? []).entries())
    yield { path: ['deck', 'edges', i, 'line'], line: edge.line, name: phrase('edge', { id: edge.id }) };
  for (const [i, object] of (scene.objects ?? []).entries()) {
    if (object.kind === 'line' || object.kind === 'retaining')
      yield {
        path: ['objects', i, 'line'],
        line: object.line,
        name: phrase(object.kind === 'line' ? 'lineLoad' : 'retainingEdge', { id: object.id }),
      };
  }
  for (const [i, traffic] of (scene.traffic ?? []).entries())
    yield { path: ['traffic', i, 'route'], line: traffic.route, name: phrase('traffic', { id: traffic.id }) };
  for (const [i, area] of (scene.setUpAreas ?? []).entries()) {
    const name = phrase('partOf', { what: phrase('building'), owner: phrase('setUpArea', { id: area.id }) });
    if (area.building) yield { path: ['setUpAreas', i, 'building'], line: area.building, name };
  }
  for (const [i, stage] of (scene.stages ?? []).entries()) {
    for (const [j, plant] of (stage.plant ?? []).entries()) {
      yield { path: ['stages', i, 'plant', j, 'route'], line: plant.route, name: phrase('plant', { id: plant.vehicle }) };
    }
  }
}

function checkArea({ path, outline, name, holes }: NamedArea, issues: IssueList): void {
  const faults = areaFaults(outline, holes?.rings ?? [], { name, hole: (i) => phrase(holes?.word ?? 'hole', { n: i + 1 }) });
  for (const fault of faults) issues.error(fault.code, faultPath(fault, path, holes?.path ?? []), fault.words);
}

function checkDeckSize(scene: SceneFile, issues: IssueList): void {
  const path = ['deck', 'outline'];
  const ring = ringOf(scene.deck.outline);
  const [lengthX, lengthY] = [ring.maxX - ring.minX, ring.maxY - ring.minY];
  const size = phrase('deckOf', { a: lengthX.toFixed(2), b: lengthY.toFixed(2) });
  if (lengthX > MAX_DECK_SIDE_M || lengthY > MAX_DECK_SIDE_M) {
    issues.error('DECK_TOO_LARGE', path, () => worded(size, phrase('deckSides', { n: MAX_DECK_SIDE_M }), phrase('millimetresMeant')));
  } else if (lengthX * lengthY < 1 && distinctPoints(scene.deck.outline) > 2) {
    issues.warning('DECK_TINY', path, () => worded(size, phrase('deckArea'), phrase('coordinatesInMetres')));
  }
}

/** Most points in one list, for lists that are not polygons. */
export function tooManyPoints(count: number, path: Path, issues: IssueList): boolean {
  if (count <= MAX_LIST_POINTS) return false;
  issues.error('TOO_MANY_POINTS', path, () =>
    worded(phrase('pointsIn', { n: count, name: asIs(pathText(path)) }), phrase('pointsInList', { n: MAX_LIST_POINTS }), phrase('thinOut')),
  );
  return true;
}
