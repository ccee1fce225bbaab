/** Checks polygons and lines: enough points, an area, no crossing, holes inside. */

import type { PointM, PolygonM, SceneFile } from '../model/scene-file.ts';
import type { IssueList } from './issue-list.ts';
import { MAX_DECK_SIDE_M, MAX_LIST_POINTS } from './limits.ts';
import { type Path, pathText } from './path.ts';
import { distinctPoints, ringOf } from './ring.ts';
import { areaFaults, faultPath, lineFaults } from './shape-faults.ts';

interface NamedArea {
  readonly path: Path;
  readonly outline: PolygonM;
  /** As in a message, e.g. `zone "Z1"`. */
  readonly name: string;
  readonly holes?: { readonly path: Path; readonly rings: readonly PolygonM[]; readonly word: string };
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
  const openings = { path: ['deck', 'openings'], rings: deck.openings ?? [], word: 'opening' };
  yield { path: ['deck', 'outline'], outline: deck.outline, name: 'the deck', holes: openings };
  for (const [i, { id, outline }] of deck.bays.entries()) yield { path: ['deck', 'bays', i, 'outline'], outline, name: `bay "${id}"` };
  for (const [i, { id, outline, holes: rings = [] }] of scene.zones.entries())
    yield {
      path: ['zones', i, 'outline'],
      outline,
      name: `zone "${id}"`,
      holes: { path: ['zones', i, 'holes'], rings, word: 'hole' },
    };
  for (const [i, object] of (scene.objects ?? []).entries()) {
    if (object.kind === 'block') yield { path: ['objects', i, 'outline'], outline: object.outline, name: `block "${object.id}"` };
  }
  for (const [i, { id, outline }] of (scene.setUpAreas ?? []).entries())
    yield { path: ['setUpAreas', i, 'outline'], outline, name: `set-up area "${id}"` };
  for (const [i, stage] of (scene.stages ?? []).entries()) {
    for (const [j, { id, outline }] of (stage.stockpiles ?? []).entries())
      yield { path: ['stages', i, 'stockpiles', j, 'outline'], outline, name: `stockpile "${id}"` };
  }
}

function* linesOf(scene: SceneFile): Generator<{ readonly path: Path; readonly line: readonly PointM[]; readonly name: string }> {
  for (const [i, edge] of (scene.deck.edges ?? []).entries())
    yield { path: ['deck', 'edges', i, 'line'], line: edge.line, name: `edge "${edge.id}"` };
  for (const [i, object] of (scene.objects ?? []).entries()) {
    if (object.kind === 'line' || object.kind === 'retaining')
      yield {
        path: ['objects', i, 'line'],
        line: object.line,
        name: `${object.kind === 'line' ? 'line' : 'retaining edge'} "${object.id}"`,
      };
  }
  for (const [i, traffic] of (scene.traffic ?? []).entries())
    yield { path: ['traffic', i, 'route'], line: traffic.route, name: `traffic "${traffic.id}"` };
  for (const [i, area] of (scene.setUpAreas ?? []).entries()) {
    if (area.building) yield { path: ['setUpAreas', i, 'building'], line: area.building, name: `building of set-up area "${area.id}"` };
  }
  for (const [i, stage] of (scene.stages ?? []).entries()) {
    for (const [j, plant] of (stage.plant ?? []).entries()) {
      yield { path: ['stages', i, 'plant', j, 'route'], line: plant.route, name: `plant "${plant.vehicle}"` };
    }
  }
}

function checkArea({ path, outline, name, holes }: NamedArea, issues: IssueList): void {
  const faults = areaFaults(outline, holes?.rings ?? [], { name, hole: (i) => `${holes?.word ?? 'hole'} ${i + 1}` });
  for (const fault of faults) issues.error(fault.code, faultPath(fault, path, holes?.path ?? []), fault.words);
}

function checkDeckSize(scene: SceneFile, issues: IssueList): void {
  const path = ['deck', 'outline'];
  const ring = ringOf(scene.deck.outline);
  const [lengthX, lengthY] = [ring.maxX - ring.minX, ring.maxY - ring.minY];
  const size = `a deck of ${lengthX.toFixed(2)} × ${lengthY.toFixed(2)} m`;
  if (lengthX > MAX_DECK_SIDE_M || lengthY > MAX_DECK_SIDE_M) {
    issues.error('DECK_TOO_LARGE', path, () => ({
      got: size,
      expected: `sides of at most ${MAX_DECK_SIDE_M} m, in metres`,
      mend: 'Were millimetres meant? Divide them by 1000. Else one point lies far from the rest.',
    }));
  } else if (lengthX * lengthY < 1 && distinctPoints(scene.deck.outline) > 2) {
    issues.warning('DECK_TINY', path, () => ({
      got: size,
      expected: 'a deck of at least one square metre',
      mend: 'Coordinates are metres, neither kilometres nor degrees; check them.',
    }));
  }
}

/** Most points in one list, for lists that are not polygons. */
export function tooManyPoints(count: number, path: Path, issues: IssueList): boolean {
  if (count <= MAX_LIST_POINTS) return false;
  issues.error('TOO_MANY_POINTS', path, () => ({
    got: `${count} points in ${pathText(path)}`,
    expected: `at most ${MAX_LIST_POINTS} points in one list`,
    mend: 'Thin them out.',
  }));
  return true;
}
