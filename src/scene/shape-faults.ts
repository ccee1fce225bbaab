/** What is wrong with one shape, found the same way for a file and for a shape being drawn; and its words. */

import type { PointM, PolygonM } from '../model/scene-file.ts';
import type { SceneIssueCode } from './issue-codes.ts';
import type { IssueWords } from './issue-list.ts';
import { MAX_LIST_POINTS } from './limits.ts';
import type { Path } from './path.ts';
import { distinctPoints, enclosesNothing, isFlat, type Ring, type RingEdge, ringOf, type SelfContact, selfContacts } from './ring.ts';
import { type NestingFault, nestingFaults } from './ring-nesting.ts';

/** Places shown for one polygon. */
const MOST_PLACES = 3;
/** Places looked for before choosing the ones shown. */
const MOST_CONTACTS = 12;

export interface ShapeFault {
  readonly code: SceneIssueCode;
  /** From the shape to what is at fault: a hole as `holes` and its index, then the index of a point. */
  readonly hole: number | null;
  readonly point: number | null;
  /** Where it is, if it has a place. */
  readonly at: PointM | null;
  /** Edges that meet, of the outline or of the hole. */
  readonly edges: readonly RingEdge[];
  readonly words: () => IssueWords;
}

/** How a shape and its holes are called in a message, e.g. `zone "Z1"` and `hole 1`. */
export interface ShapeNames {
  readonly name: string;
  readonly hole: (index: number) => string;
}

/**
 * Faults of an area with holes.
 * @param outline - as in the file, open or closed
 * @param holes - the same
 * @param names - for the words
 * @returns faults that a message is made of
 */
export function areaFaults(outline: PolygonM, holes: readonly PolygonM[], names: ShapeNames): readonly ShapeFault[] {
  const points = holes.reduce((sum, hole) => sum + hole.length, outline.length);
  if (points > MAX_LIST_POINTS) return [tooMany(points, names.name)];
  const faults: ShapeFault[] = [];
  const ring = simpleRing(outline, { called: names.name, hole: null }, faults);
  const places = new Map<Ring, number>();
  for (const [i, hole] of holes.entries()) {
    const inner = simpleRing(hole, { called: `${names.hole(i)} of ${names.name}`, hole: i }, faults);
    if (inner !== null) places.set(inner, i);
  }
  if (ring === null) return faults;
  for (const fault of nestingFaults(ring, [...places.keys()], MOST_PLACES)) {
    const hole = places.get(fault.ring);
    const other = places.get(fault.other);
    if (hole !== undefined)
      faults.push(nestingFault(fault, hole, [names.hole(hole), other === undefined ? `the outline of ${names.name}` : names.hole(other)]));
  }
  return faults;
}

/**
 * Faults of a line.
 * @param line - points
 * @param name - for the words
 * @returns faults that a message is made of
 */
export function lineFaults(line: readonly PointM[], name: string): readonly ShapeFault[] {
  if (distinctPoints(line) >= 2) return [];
  const words = () => ({
    got: `${line.length} ${line.length === 1 ? 'point' : 'points'}, fewer than two of them different, for ${name}`,
    expected: 'two or more different points [x, y]',
    mend: 'Add the missing points, or delete the entry.',
  });
  return [{ ...NOWHERE, code: 'LINE_TOO_FEW_POINTS', words }];
}

const NOWHERE = { hole: null, point: null, at: null, edges: [] } as const;

/** Place of a fault in the file. */
export function faultPath({ hole, point }: ShapeFault, outline: Path, holes: Path): Path {
  const path = hole === null ? outline : [...holes, hole];
  return point === null ? path : [...path, point];
}

function tooMany(points: number, name: string): ShapeFault {
  const words = () => ({
    got: `${points} points in ${name}`,
    expected: `at most ${MAX_LIST_POINTS} points in one polygon with its holes`,
    mend: 'Simplify the outline: a point every few centimetres is enough.',
  });
  return { ...NOWHERE, code: 'TOO_MANY_POINTS', words };
}

interface Called {
  readonly called: string;
  readonly hole: number | null;
}

/** The polygon as a ring, or null where it is not a simple one. */
function simpleRing(polygon: PolygonM, { called, hole }: Called, faults: ShapeFault[]): Ring | null {
  if (distinctPoints(polygon) < 3) {
    const words = () => ({
      got: `${polygon.length} ${polygon.length === 1 ? 'point' : 'points'}, fewer than three of them different, for ${called}`,
      expected: 'three or more different points [x, y]',
      mend: 'Add the missing corners, or delete the entry.',
    });
    faults.push({ ...NOWHERE, hole, code: 'POLYGON_TOO_FEW_POINTS', words });
    return null;
  }
  const ring = ringOf(polygon);
  const contacts = isFlat(ring) ? [] : selfContacts(ring, MOST_CONTACTS);
  for (const contact of worth(contacts)) faults.push(selfFault(contact, { called, hole }));
  if (contacts.length > 0) return null;
  if (!isFlat(ring) && !enclosesNothing(ring)) return ring;
  const words = () => ({
    got: `${called} enclosing no area: its points lie on one line or on top of each other`,
    expected: 'an outline that encloses an area',
    mend: 'Check the coordinates; often one number was copied twice.',
  });
  faults.push({ ...NOWHERE, hole, code: 'POLYGON_ZERO_AREA', words });
  return null;
}

/** Crossings, if there are any; else one overlap or touch, since one fault of this kind shows as several. */
function worth(contacts: readonly SelfContact[]): readonly SelfContact[] {
  const crossings = contacts.filter(({ contact }) => contact.kind === 'cross');
  if (crossings.length > 0) return crossings.slice(0, MOST_PLACES);
  const overlap = contacts.find(({ contact }) => contact.kind === 'overlap');
  return overlap === undefined ? contacts.slice(0, 1) : [overlap];
}

function selfFault({ contact, edges }: SelfContact, { called, hole }: Called): ShapeFault {
  const [first, second] = edges;
  const between = `edges [${first.from}]–[${first.to}] and [${second.from}]–[${second.to}]`;
  const place = { hole, point: first.from, at: contact.at, edges };
  if (contact.kind === 'cross') {
    const words = () => ({
      got: `the edge of ${called} crossing itself near ${pointText(contact.at)}, ${between}`,
      expected: 'edges that meet only at their ends, so that area and load can be computed',
      mend: 'Put the corners in their order round the outline, or split the shape there.',
    });
    return { ...place, code: 'POLYGON_CROSSES_ITSELF', words };
  }
  const how = contact.kind === 'overlap' ? 'running over itself' : 'touching itself';
  const words = () => ({
    got: `the edge of ${called} ${how} at ${pointText(contact.at)}, ${between}`,
    expected: 'edges that meet only at the ends of neighbours',
    mend: 'Take out the points that lead back along the edge, or split the shape there.',
  });
  return { ...place, code: 'POLYGON_TOUCHES_ITSELF', words };
}

function nestingFault({ kind, at }: NestingFault, hole: number, [name, other]: readonly [string, string]): ShapeFault {
  const place = pointText(at);
  const base = { hole, point: null, at, edges: [] };
  if (kind === 'crosses') {
    const words = () => ({
      got: `${name} crossing ${other} near ${place}`,
      expected: 'holes and openings wholly inside the outline and apart from each other',
      mend: 'Move its corners inside, or draw the outline around it.',
    });
    return { ...base, code: 'HOLE_CROSSES', words };
  }
  if (kind === 'shares-edge') {
    const words = () => ({
      got: `${name} running along ${other} at ${place}`,
      expected: 'holes and openings that meet the outline or each other at most in single points',
      mend: 'Draw the outline around it, or draw two adjoining holes as one.',
    });
    return { ...base, code: 'HOLE_SHARES_EDGE', words };
  }
  if (kind === 'outside') {
    const words = () => ({
      got: `${name} lying outside ${other}, at ${place}`,
      expected: 'holes and openings inside the outline',
      mend: 'Check its coordinates, or delete it.',
    });
    return { ...base, code: 'HOLE_OUTSIDE', words };
  }
  const words = () => ({
    got: `${name} lying inside ${other}, at ${place}`,
    expected: 'holes and openings apart from each other',
    mend: 'Delete the inner one.',
  });
  return { ...base, code: 'HOLE_OVERLAPS', words };
}

/** A place in file coordinates, as messages write it. */
export function pointText([x, y]: PointM): string {
  return `(${x.toFixed(3)}, ${y.toFixed(3)})`;
}
