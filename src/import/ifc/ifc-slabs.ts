/** Slabs of a model: their bodies with openings, storeys and sizes. */

import type { Gathering } from '../gathering.ts';
import { partOf, type Steps } from '../steps.ts';
import { type Entity, readOr, textOf, tryOr, Unreadable, Unsupported, wordOf } from './ifc-model.ts';
import { type Cut, cutOpenings, type Opening, sizeOfTops } from './ifc-openings.ts';
import { type Relations, relationsOf, type Storey } from './ifc-relations.ts';
import { type Body, bodiesOf, bodyOf, facedBody, hasBody, joined, type SolidOptions } from './ifc-solids.ts';
import { uncovered } from './ifc-stacks.ts';
import { facesOfTriangles, type Mesher, surfacesOf } from './mesher.ts';

export interface SlabOptions extends SolidOptions {
  readonly gather: Gathering;
  readonly mesher: Mesher | null;
  /** Length of the model's unit. */
  readonly metres: number;
}

export interface Slab {
  readonly id: number;
  readonly name: string;
  /** Its type, with the kind that the model gives. */
  readonly kind: string;
  readonly storey: Storey;
  readonly body: Body;
  readonly cut: Cut;
  /** Of its top without openings, in the file's unit. */
  readonly area: number;
  /** Openings that cannot be read. */
  readonly lost: number;
  /** Bodies added to it, which are not read. */
  readonly projections: number;
}

export interface SlabsRead {
  readonly slabs: readonly Slab[];
  /** Slabs whose body could not be laid out. */
  readonly unread: readonly string[];
  /** Slabs of the model that were not looked at. */
  readonly left: number;
}

const TYPES: Readonly<Record<string, string>> = {
  IFCSLAB: 'IfcSlab',
  IFCSLABSTANDARDCASE: 'IfcSlab',
  IFCSLABELEMENTEDCASE: 'IfcSlab',
  IFCROOF: 'IfcRoof',
};
export const SLAB_TYPES: readonly string[] = Object.keys(TYPES);

/** Slabs looked at; far above any deck. */
const MOST_SLABS = 3000;
const STEP = 20;

/** The slabs that have a body. */
export function* readSlabs(options: SlabOptions): Steps<SlabsRead> {
  const { model } = options;
  const relations = relationsOf(model);
  yield 0.05;
  const ids = model.idsOf(...SLAB_TYPES);
  const found: Slab[] = [];
  const [hard, damaged]: [Whole[], Entity[]] = [[], []];
  for (const [i, id] of ids.slice(0, MOST_SLABS).entries()) {
    const product = readOr(() => model.entity(id), null);
    if (product === null) continue;
    const own = hasBody(product, model) ? [product] : partsWithBody(product, relations, options);
    if (own.length === 0) continue;
    const slab = tryOr(() => slabOf(product, own, { options, relations }));
    if (slab === 'damaged') damaged.push(product);
    else if (slab === 'unsupported') hard.push({ product, own });
    else found.push(slab);
    if (i % STEP === 0) yield 0.05 + (0.7 * i) / ids.length;
  }
  const meshed = yield* partOf(meshedSlabs(hard, { options, relations }), 0.75, 1);
  const unread = [...damaged, ...hard.map(({ product }) => product)].filter(({ id }) => !meshed.some((slab) => slab.id === id));
  return {
    slabs: [...found, ...meshed],
    unread: unread.map((product) => nameOf(product, options.gather)),
    left: Math.max(0, ids.length - MOST_SLABS),
  };
}

/** Parts of a slab that has no body of its own; slabs that make a roof stand for themselves. */
function partsWithBody({ id }: Entity, { children }: Relations, { model }: SlabOptions): readonly Entity[] {
  return (children.get(id) ?? []).flatMap((part) => {
    const entity = readOr(() => model.entity(part), null);
    return entity !== null && !(entity.type in TYPES) && hasBody(entity, model) ? [entity] : [];
  });
}

/** A slab with the elements that have its body: itself, or its parts. */
interface Whole {
  readonly product: Entity;
  readonly own: readonly Entity[];
}

interface Among {
  readonly options: SlabOptions;
  readonly relations: Relations;
}

export function nameOf({ id, values }: Entity, gather: Gathering): string {
  return gather.text(textOf(values[2])) || `#${id}`;
}

function slabOf(product: Entity, own: readonly Entity[], among: Among): Slab {
  const bodies = own.flatMap((part) => bodiesOf(part, among.options));
  const body = joined(uncovered(bodies, among.options));
  const { openings, lost } = openingsOf([product, ...own], among);
  if (openings.includes('unsupported')) throw new Unsupported('an opening');
  const read = openings.filter((opening) => opening !== 'unsupported');
  return { ...slabWith(product, body, cutOpenings(body, read, among.options), among), lost };
}

function slabWith(product: Entity, body: Body, cut: Cut, { options, relations }: Among): Omit<Slab, 'lost'> {
  const { gather, chord } = options;
  const { name: storey, id: storeyId } = relations.storeyOf(product.id);
  const given = wordOf(product.values[8]);
  return {
    id: product.id,
    name: nameOf(product, gather),
    kind: [TYPES[product.type], ...(given === '' || given === 'NOTDEFINED' ? [] : [given])].join(' '),
    storey: { id: storeyId, name: gather.text(storey) },
    body,
    cut,
    area: sizeOfTops(cut.tops, chord),
    projections: relations.projections.get(product.id) ?? 0,
  };
}

const OPENINGS = /^IFC(OPENINGELEMENT|OPENINGSTANDARDCASE|VOIDINGFEATURE)$/;

interface Openings {
  readonly openings: readonly (Opening | 'unsupported')[];
  readonly relations: readonly number[];
  /** Openings of what the slab is part of: a library does not cut them out. */
  readonly ofWhole: number;
  /** Openings that cannot be read. */
  readonly lost: number;
}

function openingsOf(products: readonly Entity[], { options, relations }: Among): Openings {
  const own = [...new Set(products.map(({ id }) => id))];
  const wholes = relations.wholesOf(own[0]);
  const all = [...own, ...wholes].flatMap((id) => (relations.voids.get(id) ?? []).map((one) => ({ ...one, ofWhole: wholes.includes(id) })));
  const read = all.map(({ opening, relation, ofWhole }) => {
    const made = tryOr((): Opening => {
      const entity = options.model.entity(opening);
      if (!OPENINGS.test(entity.type)) throw new Unreadable(entity.type);
      return { body: bodyOf(entity, options), recess: wordOf(entity.values[8]) === 'RECESS', ofWhole };
    });
    return { made, relation, ofWhole };
  });
  const sound = read.flatMap(({ made, ...rest }) => (made === 'damaged' ? [] : [{ made, ...rest }]));
  return {
    openings: sound.map(({ made }) => made),
    relations: sound.filter(({ ofWhole }) => !ofWhole).map(({ relation }) => relation),
    ofWhole: sound.filter(({ ofWhole }) => ofWhole).length,
    lost: all.length - sound.length,
  };
}

/** Slabs that are cut by other bodies, bent or swept: made into surfaces by a library, with their openings. */
function* meshedSlabs(wholes: readonly Whole[], among: Among): Steps<readonly Slab[]> {
  const { mesher, model, root, metres, same } = among.options;
  if (mesher === null || wholes.length === 0) return [];
  yield 0.1;
  const cut = wholes.map(({ product, own }) => openingsOf([product, ...own], among));
  const parts = wholes.flatMap(({ own }, i) => own.map(({ id }) => ({ id, relations: cut[i].relations })));
  const surfaces = new Map(surfacesOf(mesher, model, parts).map((numbers, i) => [parts[i].id, numbers]));
  yield 0.8;
  return wholes.flatMap(({ product, own }, i): readonly Slab[] => {
    const { relations, ofWhole } = cut[i];
    const lost = cut[i].lost + ofWhole;
    const slab = readOr(() => {
      const faces = own.flatMap(({ id }) => facesOfTriangles(surfaces.get(id) ?? missing(), root, metres));
      const body = facedBody(faces, same, 'mesh');
      return {
        ...slabWith(
          product,
          body,
          { tops: body.tops, through: 0, meshed: relations.length, recesses: 0, below: 0, beside: 0, chords: 0 },
          among,
        ),
        lost,
      };
    }, null);
    return slab === null ? [] : [slab];
  });
}

/** A slab without one of its parts would be another slab. */
function missing(): never {
  throw new Unreadable('a part without a surface');
}

/** Says which slabs have a body that cannot be laid out. */
export function tellUnread(gather: Gathering, { unread, left }: SlabsRead): void {
  if (unread.length > 0) gather.warning('MODEL_SHAPE', { count: unread.length, sample: unread.slice(0, 3).join(', ') });
  if (left > 0) gather.warning('MODEL_SLABS_LEFT', { count: left, most: MOST_SLABS });
}
