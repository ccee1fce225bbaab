/** Entities of an indexed model with their values; whatever is not as expected is `Unreadable`, told once for the element it belongs to. */

import { MAX_DEPTH } from '../limits.ts';
import { placeOfId, type StepFile } from './step-file.ts';
import { BadStep, type Ref, type StepValue, type Typed, valuesAt, type Word } from './step-values.ts';

/** What is damaged, or of no use. */
export class Unreadable extends Error {}

/** What is sound as far as it was read, but beyond this reader: a surface made by other means may still do. */
export class Unsupported extends Unreadable {}

export interface Entity {
  readonly id: number;
  readonly type: string;
  readonly values: readonly StepValue[];
}

export type Xyz = readonly [number, number, number];

const isRef = (value: StepValue | undefined): value is Ref => typeof value === 'object' && value !== null && 'ref' in value;
const isWord = (value: StepValue | undefined): value is Word => typeof value === 'object' && value !== null && 'word' in value;
const isTyped = (value: StepValue | undefined): value is Typed => typeof value === 'object' && value !== null && 'type' in value;
const isList = (value: StepValue | undefined): value is readonly StepValue[] => Array.isArray(value);

/** Coordinates further out are damaged. */
const GREATEST = 1e12;

export class IfcModel {
  readonly file: StepFile;
  readonly #kept = new Map<number, Entity>();

  constructor(file: StepFile) {
    this.file = file;
  }

  idsOf(...types: readonly string[]): readonly number[] {
    return types.flatMap((type) => this.file.byType.get(type) ?? []);
  }

  count(...types: readonly string[]): number {
    return types.reduce((sum, type) => sum + (this.file.byType.get(type)?.length ?? 0), 0);
  }

  entity(id: number): Entity {
    const kept = this.#kept.get(id);
    if (kept !== undefined) return kept;
    const place = placeOfId(this.file, id);
    if (place < 0) throw new Unreadable(`#${id} is missing`);
    const start = this.file.starts[place];
    try {
      const entity = { id, type: typeBefore(this.file.text, start), values: valuesAt(this.file.text, start) };
      if (this.#kept.size > MOST_KEPT) this.#kept.clear();
      this.#kept.set(id, entity);
      return entity;
    } catch (error) {
      if (error instanceof BadStep) throw new Unreadable(`#${id} is out of form`);
      throw error;
    }
  }

  /** The entity a value names; null where it names none. */
  maybe(value: StepValue | undefined): Entity | null {
    return isRef(value) ? this.entity(value.ref) : null;
  }

  to(value: StepValue | undefined): Entity {
    const entity = this.maybe(value);
    if (entity === null) throw new Unreadable('a reference is missing');
    return entity;
  }

  toAll(value: StepValue | undefined): readonly Entity[] {
    return listOf(value).map((one) => this.to(one));
  }

  /** Relations of a type between one and many; those out of form are left out. */
  relations(
    type: string,
    one: number,
    many: number,
  ): readonly { readonly id: number; readonly one: number; readonly many: readonly number[] }[] {
    return this.idsOf(type).flatMap((id) => {
      const values = readOr(() => this.entity(id).values, []);
      const [from, to] = [values[one], values[many]];
      const all = isList(to) ? to : [to];
      return isRef(from) ? [{ id, one: from.ref, many: all.filter(isRef).map(({ ref }) => ref) }] : [];
    });
  }
}

/** What is read, or something else where it cannot be. */
export function readOr<T>(read: () => T, otherwise: T): T {
  try {
    return read();
  } catch (error) {
    if (error instanceof Unreadable) return otherwise;
    throw error;
  }
}

/** What is read, or why it could not be. */
export function tryOr<T>(read: () => T): T | 'unsupported' | 'damaged' {
  try {
    return read();
  } catch (error) {
    if (error instanceof Unsupported) return 'unsupported';
    if (error instanceof Unreadable) return 'damaged';
    throw error;
  }
}

const MOST_KEPT = 50_000;

function typeBefore(text: string, bracket: number): string {
  return /([A-Za-z_]\w*)\s*$/.exec(text.slice(Math.max(0, bracket - 80), bracket))?.[1].toUpperCase() ?? '';
}

export function listOf(value: StepValue | undefined): readonly StepValue[] {
  if (!isList(value)) throw new Unreadable('a list is missing');
  return value;
}

export function numberOf(value: StepValue | undefined): number {
  const inner = isTyped(value) ? value.values[0] : value;
  if (typeof inner !== 'number' || !(Math.abs(inner) <= GREATEST)) throw new Unreadable('a number is missing');
  return inner;
}

/** A length that may not be zero or less. */
export function lengthOf(value: StepValue | undefined): number {
  const number = numberOf(value);
  if (!(number > 0)) throw new Unreadable('a length is not positive');
  return number;
}

export function maybeNumber(value: StepValue | undefined): number | null {
  return value === null || value === undefined ? null : numberOf(value);
}

export function textOf(value: StepValue | undefined): string {
  const inner = isTyped(value) ? value.values[0] : value;
  return typeof inner === 'string' ? inner : '';
}

export function wordOf(value: StepValue | undefined): string {
  return isWord(value) ? value.word : '';
}

export function typedOf(value: StepValue | undefined): Typed | null {
  return isTyped(value) ? value : null;
}

/** Two or three numbers; the third is 0 where it is missing. */
export function tripleOf(value: StepValue | undefined): Xyz {
  const [x, y, z = 0] = listOf(value);
  return [numberOf(x), numberOf(y), numberOf(z)];
}

/** The entity itself, if it is of that type. */
export function ofType(entity: Entity, type: string): Entity {
  if (entity.type !== type) throw new Unreadable(entity.type);
  return entity;
}

export function pointOf(entity: Entity): Xyz {
  return tripleOf(ofType(entity, 'IFCCARTESIANPOINT').values[0]);
}

/** Goes one level deeper; a model that refers to itself ends here. */
export function deeper(depth: number): number {
  if (depth >= MAX_DEPTH) throw new Unreadable('references go round');
  return depth + 1;
}
