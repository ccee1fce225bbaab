/** What is wrong with one shape, found the same way for a file and for a shape being drawn; and its words. */

import type { Phrase } from '../model/issue.ts';
import type { PointM, PolygonM } from '../model/scene-file.ts';
import type { SceneIssueCode } from './issue-codes.ts';
import { MAX_LIST_POINTS } from './limits.ts';
import type { Path } from './path.ts';
import { distinctPoints, enclosesNothing, isFlat, type Ring, type RingEdge, ringOf, type SelfContact, selfContacts } from './ring.ts';
import { type NestingFault, nestingFaults } from './ring-nesting.ts';
import { type IssueWords, phrase, worded } from './words/phrase.ts';

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
  readonly name: Phrase;
  readonly hole: (index: number) => Phrase;
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
    const inner = simpleRing(hole, { called: phrase('partOf', { what: names.hole(i), owner: names.name }), hole: i }, faults);
    if (inner !== null) places.set(inner, i);
  }
  if (ring === null) return faults;
  for (const fault of nestingFaults(ring, [...places.keys()], MOST_PLACES)) {
    const hole = places.get(fault.ring);
    const other = places.get(fault.other);
    if (hole !== undefined)
      faults.push(
        nestingFault(fault, hole, {
          name: names.hole(hole),
          other: other === undefined ? phrase('outlineOf', { owner: names.name }) : names.hole(other),
        }),
      );
  }
  return faults;
}

/**
 * Faults of a line.
 * @param line - points
 * @param name - for the words
 * @returns faults that a message is made of
 */
export function lineFaults(line: readonly PointM[], name: Phrase): readonly ShapeFault[] {
  if (distinctPoints(line) >= 2) return [];
  const words = () => worded(phrase('fewerThanTwo', { n: line.length, name }), phrase('twoPoints'), phrase('addPointsOrDrop'));
  return [{ ...NOWHERE, code: 'LINE_TOO_FEW_POINTS', words }];
}

const NOWHERE = { hole: null, point: null, at: null, edges: [] } as const;

/** Place of a fault in the file. */
export function faultPath({ hole, point }: ShapeFault, outline: Path, holes: Path): Path {
  const path = hole === null ? outline : [...holes, hole];
  return point === null ? path : [...path, point];
}

function tooMany(points: number, name: Phrase): ShapeFault {
  const words = () =>
    worded(phrase('pointsIn', { n: points, name }), phrase('pointsInPolygon', { n: MAX_LIST_POINTS }), phrase('simplifyOutline'));
  return { ...NOWHERE, code: 'TOO_MANY_POINTS', words };
}

interface Called {
  readonly called: Phrase;
  readonly hole: number | null;
}

/** The polygon as a ring, or null where it is not a simple one. */
function simpleRing(polygon: PolygonM, { called, hole }: Called, faults: ShapeFault[]): Ring | null {
  if (distinctPoints(polygon) < 3) {
    const words = () =>
      worded(phrase('fewerThanThree', { n: polygon.length, name: called }), phrase('threePoints'), phrase('addCornersOrDrop'));
    faults.push({ ...NOWHERE, hole, code: 'POLYGON_TOO_FEW_POINTS', words });
    return null;
  }
  const ring = ringOf(polygon);
  const contacts = isFlat(ring) ? [] : selfContacts(ring, MOST_CONTACTS);
  for (const contact of worth(contacts)) faults.push(selfFault(contact, { called, hole }));
  if (contacts.length > 0) return null;
  if (!isFlat(ring) && !enclosesNothing(ring)) return ring;
  const words = () => worded(phrase('enclosesNothing', { name: called }), phrase('someArea'), phrase('checkCoordinates'));
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
  const met = {
    name: called,
    at: pointText(contact.at),
    a: `[${first.from}]–[${first.to}]`,
    b: `[${second.from}]–[${second.to}]`,
  };
  const place = { hole, point: first.from, at: contact.at, edges };
  if (contact.kind === 'cross') {
    const words = () => worded(phrase('crossesItself', met), phrase('edgesApart'), phrase('cornersInOrder'));
    return { ...place, code: 'POLYGON_CROSSES_ITSELF', words };
  }
  const words = () =>
    worded(
      phrase(contact.kind === 'overlap' ? 'runsOverItself' : 'touchesItself', met),
      phrase('edgesOfNeighbours'),
      phrase('dropBackPoints'),
    );
  return { ...place, code: 'POLYGON_TOUCHES_ITSELF', words };
}

interface NestedNames {
  readonly name: Phrase;
  readonly other: Phrase;
}

function nestingFault({ kind, at }: NestingFault, hole: number, names: NestedNames): ShapeFault {
  const met = { ...names, at: pointText(at) };
  const base = { hole, point: null, at, edges: [] };
  if (kind === 'crosses')
    return {
      ...base,
      code: 'HOLE_CROSSES',
      words: () => worded(phrase('crossesNear', met), phrase('holesInsideApart'), phrase('moveInside')),
    };
  if (kind === 'shares-edge')
    return {
      ...base,
      code: 'HOLE_SHARES_EDGE',
      words: () => worded(phrase('runsAlong', met), phrase('holesMeetInPoints'), phrase('drawAround')),
    };
  if (kind === 'outside')
    return { ...base, code: 'HOLE_OUTSIDE', words: () => worded(phrase('liesOutside', met), phrase('holesInside'), phrase('checkOrDrop')) };
  return { ...base, code: 'HOLE_OVERLAPS', words: () => worded(phrase('liesInside', met), phrase('holesApart'), phrase('dropInner')) };
}

/** A place in file coordinates, as messages write it. */
export function pointText([x, y]: PointM): string {
  return `(${x.toFixed(3)}, ${y.toFixed(3)})`;
}
