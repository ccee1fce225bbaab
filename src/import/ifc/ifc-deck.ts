/** Which slab is the deck: asked where there are several; its outline with openings, and the levels of its top. */

import type { Choice } from '../../model/drawing.ts';
import { choiceOf, type Gathering } from '../gathering.ts';
import type { RawPath } from '../raw-shapes.ts';
import type { Loop } from './ifc-curves.ts';
import type { Xyz } from './ifc-model.ts';
import { unitedTops } from './ifc-openings.ts';
import type { Slab, SlabOptions } from './ifc-slabs.ts';
import { type Body, joined, type TopFace } from './ifc-solids.ts';
import { uncovered } from './ifc-stacks.ts';
import { hasStep, INSIDE_M, insideOf } from './ifc-steps.ts';

export const OUTLINE_LAYER = 'IfcSlab';
export const LEVELS_LAYER = 'IfcSlab z';

export interface Deck {
  readonly slabs: readonly Slab[];
  readonly tops: readonly TopFace[];
  /** Points and lines that give the levels of the top. */
  readonly spots: readonly Xyz[];
  readonly lines: readonly (readonly Xyz[])[];
  readonly low: number;
  readonly high: number;
}

/** Choices on the check page. */
const MOST_OFFERED = 30;

/** Asks which slab is the deck, or the slabs of which storey together. */
export function chooseDeck(slabs: readonly Slab[], options: SlabOptions): Deck {
  const { gather } = options;
  const sorted = [...slabs].sort((a, b) => b.area - a.area);
  const storeys = storeysOf(sorted);
  const choices: Choice[] = [
    ...sorted.slice(0, MOST_OFFERED).map((slab) => slabChoice(slab, options)),
    ...[...storeys].slice(0, MOST_OFFERED).map(([key, own]) => storeyChoice(key, own, options)),
  ];
  const byKey = new Map<string, readonly Slab[]>([...sorted.map((slab) => [String(slab.id), [slab]] as const), ...storeys]);
  const taken = gather.ask({
    id: 'slab',
    code: 'SLAB',
    values: { count: slabs.length, offered: Math.min(slabs.length, MOST_OFFERED) },
    choices,
    guess: String(sorted[0].id),
    certain: slabs.length === 1,
    free: (answer) => byKey.has(answer),
  });
  return deckOf(byKey.get(taken) ?? [sorted[0]], options);
}

/** Storeys with more than one slab. */
function storeysOf(slabs: readonly Slab[]): ReadonlyMap<string, readonly Slab[]> {
  const all = new Map<string, readonly Slab[]>();
  for (const slab of slabs) {
    const key = `storey-${slab.storey.id}`;
    if (slab.storey.id > 0) all.set(key, [...(all.get(key) ?? []), slab]);
  }
  return new Map([...all].filter(([, own]) => own.length > 1));
}

function levelsOf(slabs: readonly Slab[], metres: number): { readonly fromM: number; readonly toM: number } {
  const levels = slabs.flatMap(({ body }) => body.spots.map(([, , z]) => z));
  return { fromM: least(levels) * metres, toM: -least(levels.map((z) => -z)) * metres };
}

const least = (values: readonly number[]) => values.reduce((low, value) => Math.min(low, value), Infinity);
const areaM2 = (slabs: readonly Slab[], metres: number) => slabs.reduce((sum, { area }) => sum + area, 0) * metres * metres;

function slabChoice(slab: Slab, { metres }: SlabOptions): Choice {
  const { id, name, kind, storey } = slab;
  return choiceOf(String(id), 'SLAB', { name, kind, storey: storey.name, areaM2: areaM2([slab], metres), ...levelsOf([slab], metres) });
}

function storeyChoice(key: string, slabs: readonly Slab[], { metres }: SlabOptions): Choice {
  return choiceOf(key, 'SLAB_STOREY', {
    count: slabs.length,
    storey: slabs[0].storey.name,
    areaM2: areaM2(slabs, metres),
    ...levelsOf(slabs, metres),
  });
}

function deckOf(slabs: readonly Slab[], options: SlabOptions): Deck {
  const bodies = slabs.map((slab) => slab.body);
  const body = joined(uncovered(bodies, options));
  const tops = slabs.flatMap(({ cut }) => cut.tops);
  const cutChords = slabs.reduce((sum, { cut }) => sum + cut.chords, 0);
  const whole = slabs.length === 1 ? { tops, chords: 0 } : unitedTops(tops, options);
  if (body.covered > 0) options.gather.mend('PARTS_COVERED', { count: body.covered }, LEVELS_LAYER);
  tellDeck(slabs, whole.tops.length, cutChords + whole.chords, options);
  return { slabs, tops: whole.tops, ...levelsOfTop(body, options), low: body.low, high: body.high };
}

/** Where parts of the top lie side by side at other levels, each gives its levels a little inside its edge. */
function levelsOfTop({ spots, folds, rings }: Body, { gather, metres }: SlabOptions): Pick<Deck, 'spots' | 'lines'> {
  if (!hasStep(spots, metres)) return { spots, lines: folds };
  gather.mend('STEPS_KEPT', { count: rings.length, insideMm: 1000 * INSIDE_M }, LEVELS_LAYER);
  const key = (point: Xyz) => point.join(' ');
  const onEdge = new Set(rings.flatMap((ring) => ring.map(key)));
  return {
    spots: spots.filter((spot) => !onEdge.has(key(spot))),
    lines: [...folds, ...rings.map((ring) => insideOf(ring, INSIDE_M / metres))],
  };
}

function tellDeck(slabs: readonly Slab[], areas: number, chords: number, { gather, metres, chord }: SlabOptions): void {
  const sum = (count: (slab: Slab) => number) => slabs.reduce((all, slab) => all + count(slab), 0);
  const name = slabs
    .map((slab) => slab.name)
    .join(', ')
    .slice(0, 120);
  const ways = new Set(slabs.map(({ body }) => body.way));
  const way = ways.has('mesh') ? 'mesh' : ways.has('faces') ? 'faces' : 'profile';
  gather.mend('SLAB_READ', { name, way, ...levelsOf(slabs, metres) }, OUTLINE_LAYER);
  if (slabs.length > 1) gather.mend('SLABS_UNITED', { count: slabs.length, areas }, OUTLINE_LAYER);
  const [through, recesses, below, beside] = (['through', 'recesses', 'below', 'beside'] as const).map((way) => sum(({ cut }) => cut[way]));
  if (through > 0) gather.mend('SLAB_OPENINGS', { through }, OUTLINE_LAYER);
  const meshed = sum(({ cut }) => cut.meshed);
  if (meshed > 0) gather.mend('OPENINGS_MESHED', { count: meshed }, OUTLINE_LAYER);
  if (recesses + below > 0) gather.mend('OPENINGS_LEFT', { recesses, below }, OUTLINE_LAYER);
  const projections = sum((slab) => slab.projections);
  if (projections > 0) gather.warning('MODEL_PROJECTIONS', { count: projections, name });
  if (beside > 0) gather.warning('OPENINGS_BESIDE', { count: beside, name });
  const lost = sum((slab) => slab.lost);
  if (lost > 0) gather.warning('MODEL_OPENINGS', { count: lost, name });
  if (chords > 0) gather.mend('CURVES_TO_CHORDS', { count: chords, errorMm: 1000 * chord * metres }, OUTLINE_LAYER);
}

/** Hands over outlines with their openings, levels at their corners, edges at which the slope changes. */
export function addDeck({ slabs, tops, spots, lines }: Deck, gather: Gathering): void {
  const { name } = slabs[0];
  for (const { outer, holes } of tops) gather.add({ ...pathOf(outer, name), holes: holes.map((hole) => pathOf(hole, name)) });
  for (const _ of slabs) gather.used(OUTLINE_LAYER, 'IfcSlab');
  for (const [x, y, z] of spots) gather.add({ kind: 'point', layer: LEVELS_LAYER, x, y, z });
  for (const _ of spots) gather.used(LEVELS_LAYER, 'corner of the slab');
  for (const line of lines) gather.add(levelPath(line));
  for (const _ of lines) gather.used(LEVELS_LAYER, 'edge on the top');
}

function pathOf({ points, curves }: Loop, name: string): RawPath {
  const bent = curves.size === 0 ? null : curves;
  return { kind: 'path', layer: OUTLINE_LAYER, closed: true, points: [...points], levels: null, curves: bent, loose: false, name };
}

function levelPath(line: readonly Xyz[]): RawPath {
  const points: number[] = [];
  for (const [x, y] of line) points.push(x, y);
  return { kind: 'path', layer: LEVELS_LAYER, closed: false, points, levels: line.map(([, , z]) => z), curves: null, loose: false };
}
