/** Checks polygons and lines: enough points, an area, no crossing, holes inside. */

import type { PointM, PolygonM, SceneFile } from '../model/scene-file.ts';
import type { IssueList } from './issue-list.ts';
import { MAX_DECK_SIDE_M, MAX_LIST_POINTS } from './limits.ts';
import { type Path, pathText } from './path.ts';
import { distinctPoints, enclosesNothing, isFlat, type Ring, ringOf, type SelfContact, selfContacts } from './ring.ts';
import { type NestingFault, nestingFaults } from './ring-nesting.ts';

/** Places shown for one polygon. */
const MOST_PLACES = 3;
/** Places looked for before choosing the ones shown. */
const MOST_CONTACTS = 12;

interface NamedPolygon {
  readonly path: Path;
  readonly polygon: PolygonM;
  /** As in a message, e.g. `zone "Z1"`. */
  readonly name: string;
}

interface NamedRegion extends NamedPolygon {
  readonly holes: readonly NamedPolygon[];
}

/** Checks all polygons and lines of a scene. */
export function checkShapes(scene: SceneFile, issues: IssueList): void {
  checkDeckSize(scene, issues);
  for (const region of regionsOf(scene)) checkRegion(region, issues);
  for (const { path, line, name } of linesOf(scene)) {
    if (distinctPoints(line) >= 2) continue;
    issues.error('LINE_TOO_FEW_POINTS', path, () => ({
      got: `${line.length} ${line.length === 1 ? 'point' : 'points'}, fewer than two of them different, for ${name}`,
      expected: 'two or more different points [x, y]',
      mend: 'Add the missing points, or delete the entry.',
    }));
  }
}

function* regionsOf(scene: SceneFile): Generator<NamedRegion> {
  const { deck } = scene;
  yield {
    path: ['deck', 'outline'],
    polygon: deck.outline,
    name: 'the deck',
    holes: holesOf(['deck', 'openings'], deck.openings, 'opening'),
  };
  for (const [i, bay] of deck.bays.entries())
    yield { path: ['deck', 'bays', i, 'outline'], polygon: bay.outline, name: `bay "${bay.id}"`, holes: [] };
  for (const [i, zone] of scene.zones.entries()) {
    yield {
      path: ['zones', i, 'outline'],
      polygon: zone.outline,
      name: `zone "${zone.id}"`,
      holes: holesOf(['zones', i, 'holes'], zone.holes, 'hole'),
    };
  }
  for (const [i, object] of (scene.objects ?? []).entries()) {
    if (object.kind === 'block')
      yield { path: ['objects', i, 'outline'], polygon: object.outline, name: `block "${object.id}"`, holes: [] };
  }
  for (const [i, area] of (scene.setUpAreas ?? []).entries())
    yield { path: ['setUpAreas', i, 'outline'], polygon: area.outline, name: `set-up area "${area.id}"`, holes: [] };
  for (const [i, stage] of (scene.stages ?? []).entries()) {
    for (const [j, pile] of (stage.stockpiles ?? []).entries()) {
      yield { path: ['stages', i, 'stockpiles', j, 'outline'], polygon: pile.outline, name: `stockpile "${pile.id}"`, holes: [] };
    }
  }
}

function holesOf(path: Path, holes: readonly PolygonM[] | undefined, word: string): readonly NamedPolygon[] {
  return (holes ?? []).map((polygon, i) => ({ path: [...path, i], polygon, name: `${word} ${i + 1}` }));
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

function checkRegion(region: NamedRegion, issues: IssueList): void {
  const points = [region, ...region.holes].reduce((sum, { polygon }) => sum + polygon.length, 0);
  if (points > MAX_LIST_POINTS) {
    issues.error('TOO_MANY_POINTS', region.path, () => ({
      got: `${points} points in ${region.name}`,
      expected: `at most ${MAX_LIST_POINTS} points in one polygon with its holes`,
      mend: 'Simplify the outline: a point every few centimetres is enough.',
    }));
    return;
  }
  const outline = simpleRing(region, issues);
  const places = new Map<Ring, NamedPolygon>();
  for (const hole of region.holes) {
    const ring = simpleRing(hole, issues, region.name);
    if (ring !== null) places.set(ring, hole);
  }
  if (outline === null) return;
  for (const fault of nestingFaults(outline, [...places.keys()], MOST_PLACES)) {
    const hole = places.get(fault.ring);
    if (hole !== undefined) reportNesting(fault, hole, places.get(fault.other)?.name ?? `the outline of ${region.name}`, issues);
  }
}

/** The polygon as a ring, or null where it is not a simple one. */
function simpleRing({ path, polygon, name }: NamedPolygon, issues: IssueList, owner?: string): Ring | null {
  const called = owner === undefined ? name : `${name} of ${owner}`;
  if (distinctPoints(polygon) < 3) {
    issues.error('POLYGON_TOO_FEW_POINTS', path, () => ({
      got: `${polygon.length} ${polygon.length === 1 ? 'point' : 'points'}, fewer than three of them different, for ${called}`,
      expected: 'three or more different points [x, y]',
      mend: 'Add the missing corners, or delete the entry.',
    }));
    return null;
  }
  const ring = ringOf(polygon);
  const contacts = isFlat(ring) ? [] : selfContacts(ring, MOST_CONTACTS);
  for (const contact of worth(contacts)) reportSelfContact(contact, path, called, issues);
  if (contacts.length > 0) return null;
  if (!isFlat(ring) && !enclosesNothing(ring)) return ring;
  issues.error('POLYGON_ZERO_AREA', path, () => ({
    got: `${called} enclosing no area: its points lie on one line or on top of each other`,
    expected: 'an outline that encloses an area',
    mend: 'Check the coordinates; often one number was copied twice.',
  }));
  return null;
}

/** Crossings, if there are any; else one overlap or touch, since one fault of this kind shows as several. */
function worth(contacts: readonly SelfContact[]): readonly SelfContact[] {
  const crossings = contacts.filter(({ contact }) => contact.kind === 'cross');
  if (crossings.length > 0) return crossings.slice(0, MOST_PLACES);
  const overlap = contacts.find(({ contact }) => contact.kind === 'overlap');
  return overlap === undefined ? contacts.slice(0, 1) : [overlap];
}

function reportSelfContact({ contact, edges }: SelfContact, path: Path, name: string, issues: IssueList): void {
  const [first, second] = edges;
  const between = `edges [${first.from}]–[${first.to}] and [${second.from}]–[${second.to}]`;
  if (contact.kind === 'cross') {
    issues.error('POLYGON_CROSSES_ITSELF', [...path, first.from], () => ({
      got: `the edge of ${name} crossing itself near ${pointText(contact.at)}, ${between}`,
      expected: 'edges that meet only at their ends, so that area and load can be computed',
      mend: 'Put the corners in their order round the outline, or split the shape there.',
    }));
    return;
  }
  const how = contact.kind === 'overlap' ? 'running over itself' : 'touching itself';
  issues.error('POLYGON_TOUCHES_ITSELF', [...path, first.from], () => ({
    got: `the edge of ${name} ${how} at ${pointText(contact.at)}, ${between}`,
    expected: 'edges that meet only at the ends of neighbours',
    mend: 'Take out the points that lead back along the edge, or split the shape there.',
  }));
}

function reportNesting({ kind, at }: NestingFault, { path, name }: NamedPolygon, other: string, issues: IssueList): void {
  const place = pointText(at);
  if (kind === 'crosses') {
    issues.error('HOLE_CROSSES', path, () => ({
      got: `${name} crossing ${other} near ${place}`,
      expected: 'holes and openings wholly inside the outline and apart from each other',
      mend: 'Move its corners inside, or draw the outline around it.',
    }));
  } else if (kind === 'shares-edge') {
    issues.error('HOLE_SHARES_EDGE', path, () => ({
      got: `${name} running along ${other} at ${place}`,
      expected: 'holes and openings that meet the outline or each other at most in single points',
      mend: 'Draw the outline around it, or draw two adjoining holes as one.',
    }));
  } else if (kind === 'outside') {
    issues.error('HOLE_OUTSIDE', path, () => ({
      got: `${name} lying outside ${other}, at ${place}`,
      expected: 'holes and openings inside the outline',
      mend: 'Check its coordinates, or delete it.',
    }));
  } else {
    issues.error('HOLE_OVERLAPS', path, () => ({
      got: `${name} lying inside ${other}, at ${place}`,
      expected: 'holes and openings apart from each other',
      mend: 'Delete the inner one.',
    }));
  }
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

/** A place in file coordinates, as messages write it. */
export function pointText([x, y]: PointM): string {
  return `(${x.toFixed(3)}, ${y.toFixed(3)})`;
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
