/** Columns under the deck: where they stand and how large they are. */

import type { PointM } from '../../model/scene-file.ts';
import { pointInRing, ringOf } from '../../scene/ring.ts';
import type { Gathering } from '../gathering.ts';
import type { Steps } from '../steps.ts';
import type { Deck } from './ifc-deck.ts';
import { type Entity, readOr, textOf, tryOr, Unreadable } from './ifc-model.ts';
import type { SlabOptions } from './ifc-slabs.ts';
import { type Body, bodyOf, laidOut } from './ifc-solids.ts';
import { facesOfTriangles, surfacesOf } from './mesher.ts';

export const COLUMNS_LAYER = 'IfcColumn';
const TYPES = ['IFCCOLUMN', 'IFCCOLUMNSTANDARDCASE'] as const;

interface Column {
  readonly at: PointM;
  readonly size: readonly [number, number];
  readonly turn: number;
  readonly boxed: boolean;
  readonly low: number;
  readonly high: number;
  readonly name: string;
}

/** A column may end so far below the slab, at a beam or a head [m]. */
const HEAD_M = 1;
const STEP = 200;

/** Reads those that carry or pass the deck; the others are counted. */
export function* readColumns(deck: Deck, options: SlabOptions): Steps<void> {
  const { gather, model } = options;
  const ids = model.idsOf(...TYPES);
  const columns: Column[] = [];
  const hard: Entity[] = [];
  for (const [i, id] of ids.entries()) {
    const entity = readOr(() => model.entity(id), null);
    if (entity === null) continue;
    const column = tryOr(() => columnOf(entity, bodyOf(entity, { ...options, uncut: true }), gather));
    if (column === 'unsupported') hard.push(entity);
    else if (column !== 'damaged') columns.push(column);
    if (i % STEP === 0) yield (0.8 * i) / ids.length;
  }
  columns.push(...meshedColumns(hard, options));
  const unread = ids.length - columns.length;
  for (let i = 0; i < unread; i++) gather.ignored(COLUMNS_LAYER, 'IfcColumn', 'damaged');
  const under = columns.filter((column) => carries(column, deck, options.metres));
  for (let i = under.length; i < columns.length; i++) gather.ignored(COLUMNS_LAYER, 'IfcColumn', 'not under the slab');
  for (const column of under) addColumn(column, gather);
  tellColumns(under, gather);
}

/** Names made by drawing programs are long and say the type; the tag is shorter. */
function nameOf({ values }: Entity, gather: Gathering): string {
  const given = gather.text(textOf(values[2]));
  return given.length <= LONGEST_NAME ? given : gather.text(textOf(values[7]));
}

function columnOf(product: Entity, { standing, tops, low, high }: Body, gather: Gathering): Column {
  const rest = { low, high, name: nameOf(product, gather) };
  if (standing !== null) return { ...standing, ...rest };
  const corners = tops.flatMap(({ outer }) => laidOut(outer, (high - low) / 1000));
  return { ...boxOf(corners), ...rest };
}

const LONGEST_NAME = 24;

function boxOf(corners: readonly PointM[]): Pick<Column, 'at' | 'size' | 'turn' | 'boxed'> {
  if (corners.length === 0) throw new Unreadable('no corners');
  const extent = (axis: 0 | 1) =>
    corners.reduce(([low, high], point) => [Math.min(low, point[axis]), Math.max(high, point[axis])], [Infinity, -Infinity]);
  const [[minX, maxX], [minY, maxY]] = [extent(0), extent(1)];
  return { at: [(minX + maxX) / 2, (minY + maxY) / 2], size: [maxX - minX, maxY - minY], turn: 0, boxed: true };
}

function meshedColumns(products: readonly Entity[], { mesher, model, gather, root, metres }: SlabOptions): readonly Column[] {
  if (mesher === null || products.length === 0) return [];
  const surfaces = surfacesOf(
    mesher,
    model,
    products.map(({ id }) => ({ id, relations: [] })),
  );
  return surfaces.flatMap((numbers, i) => {
    if (numbers === null) return [];
    const corners = facesOfTriangles(numbers, root, metres).flatMap(({ outer }) => outer);
    const levels = corners.map(([, , z]) => z);
    const [low, high] = [levels.reduce((a, b) => Math.min(a, b)), levels.reduce((a, b) => Math.max(a, b))];
    return [{ ...boxOf(corners.map(([x, y]): PointM => [x, y])), low, high, name: nameOf(products[i], gather) }];
  });
}

/** Stands below the top and reaches the slab or nearly so, within its outline. */
function carries({ at, size, low, high }: Column, { tops, low: bottom, high: top }: Deck, metres: number): boolean {
  if (!(low < top - 0.01 / metres && high > bottom - HEAD_M / metres)) return false;
  const half = [size[0] / 2, size[1] / 2];
  const touches: readonly PointM[] = [
    at,
    ...[-1, 1].flatMap((i) => [-1, 1].map((j): PointM => [at[0] + i * half[0], at[1] + j * half[1]])),
  ];
  return tops.some(({ outer }) => {
    const ring = ringOf(laidOut(outer, 0.05 / metres));
    return touches.some((point) => pointInRing(point, ring) >= 0);
  });
}

/** Columns of a scene lie parallel to its axes: one that stands turned keeps its place and size. */
function addColumn({ at: [x, y], size, turn, name }: Column, gather: Gathering): void {
  const quarter = Math.round(turn / (Math.PI / 2)) % 2 !== 0;
  const [width, depth] = quarter ? [size[1] / 2, size[0] / 2] : [size[0] / 2, size[1] / 2];
  const points = [x - width, y - depth, x + width, y - depth, x + width, y + depth, x - width, y + depth];
  const named = name === '' ? {} : { name };
  gather.add({ kind: 'path', layer: COLUMNS_LAYER, closed: true, points, levels: null, curves: null, loose: false, ...named });
  gather.used(COLUMNS_LAYER, 'IfcColumn');
}

/** Less than this is no turn [rad]. */
const LEAST_TURN = Math.PI / 1800;

function tellColumns(columns: readonly Column[], gather: Gathering): void {
  const off = ({ turn }: Column) => Math.abs(turn - (Math.PI / 2) * Math.round(turn / (Math.PI / 2)));
  const turned = columns.filter((column) => off(column) > LEAST_TURN);
  const mostDeg = turned.reduce((most, column) => Math.max(most, (off(column) * 180) / Math.PI), 0);
  if (turned.length > 0) gather.mend('COLUMNS_TURNED', { count: turned.length, mostDeg }, COLUMNS_LAYER);
  const boxed = columns.filter((column) => column.boxed).length;
  if (boxed > 0) gather.mend('COLUMNS_BOXED', { count: boxed }, COLUMNS_LAYER);
}
