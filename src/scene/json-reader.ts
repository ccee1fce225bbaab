/**
 * Reads JSON text and remembers where each key stands. The platform's own parser gives neither: it keeps the last of
 * two equal keys without a word, and says little about where a text breaks.
 */

import { explainBreak, type JsonProblem, type Wanted } from './json-problem.ts';
import { MAX_DEPTH } from './limits.ts';
import type { Path } from './path.ts';

/** Offset of each key of an object or of each item of a list. */
type Places = Map<string, number> | number[];

export interface RepeatedKey {
  readonly path: Path;
  readonly firstOffset: number;
}

export interface JsonReading {
  readonly value: unknown;
  /** Keys standing twice in one object. */
  readonly repeated: readonly RepeatedKey[];
  /** Places of keys named `__proto__`, which are never stored. */
  readonly refused: readonly Path[];
  /** Offset of a place; of the nearest enclosing one where the place itself is missing. */
  offsetOf(path: Path): number;
}

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const PLAIN_TEXT = /[^"\\\p{Cc}]*/uy;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const LITERALS: readonly (readonly [string, unknown])[] = [
  ['true', true],
  ['false', false],
  ['null', null],
];

/**
 * Reads JSON text.
 * @param text - the text, with or without a byte-order mark
 * @returns the value and its places, or what breaks the text
 */
export function readJson(text: string): JsonReading | { readonly problem: JsonProblem } {
  const reader = new JsonReader(text);
  try {
    const value = reader.readAll();
    return { value, repeated: reader.repeated, refused: reader.refused, offsetOf: (path) => reader.offsetOf(value, path) };
  } catch (stop) {
    if (stop instanceof BrokenOff) return { problem: stop.problem };
    throw stop;
  }
}

/** Leaves the nested reading at the place where the text breaks; never leaves this file. */
class BrokenOff extends Error {
  readonly problem: JsonProblem;
  constructor(problem: JsonProblem) {
    super(problem.code);
    this.problem = problem;
  }
}

class JsonReader {
  readonly repeated: RepeatedKey[] = [];
  readonly refused: Path[] = [];
  readonly #text: string;
  readonly #path: (string | number)[] = [];
  readonly #places = new Map<object, Places>();
  #at: number;
  #start = 0;

  constructor(text: string) {
    this.#text = text;
    this.#at = text.startsWith('\uFEFF') ? 1 : 0;
  }

  readAll(): unknown {
    this.#skipSpace();
    this.#start = this.#at;
    const value = this.#value();
    this.#skipSpace();
    if (this.#at < this.#text.length) this.#breakOff('end');
    return value;
  }

  offsetOf(root: unknown, path: Path): number {
    let value = root;
    let offset = this.#start;
    for (const step of path) {
      if (typeof value !== 'object' || value === null) break;
      const places = this.#places.get(value);
      const next = places instanceof Map ? places.get(String(step)) : places?.[Number(step)];
      if (next === undefined) break;
      offset = next;
      value = (value as Record<string | number, unknown>)[step];
    }
    return offset;
  }

  #breakOff(wanted: Wanted): never {
    throw new BrokenOff(explainBreak({ text: this.#text, at: this.#at, path: this.#path, wanted }));
  }

  #skipSpace(): void {
    for (;;) {
      const code = this.#text.charCodeAt(this.#at);
      if (code !== 32 && code !== 10 && code !== 13 && code !== 9) return;
      this.#at += 1;
    }
  }

  #value(): unknown {
    const first = this.#text[this.#at];
    if (first === '{') return this.#object();
    if (first === '[') return this.#list();
    if (first === '"') return this.#string();
    for (const [word, value] of LITERALS) {
      if (this.#text.startsWith(word, this.#at)) {
        this.#at += word.length;
        return value;
      }
    }
    const digits = this.#match(NUMBER);
    if (digits === null) return this.#breakOff('value');
    return Number(digits);
  }

  #match(pattern: RegExp): string | null {
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text);
    if (found === null) return null;
    this.#at += found[0].length;
    return found[0];
  }

  #string(): string {
    const start = this.#at;
    this.#at += 1;
    let plain = true;
    for (;;) {
      this.#match(PLAIN_TEXT);
      const next = this.#text[this.#at];
      if (next === '"') break;
      if (next !== undefined && next > '\u001f' && next !== '\\') {
        this.#at += 1; // DEL and C1 controls, which JSON allows
        continue;
      }
      if (next !== '\\' || this.#match(ESCAPE) === null) this.#breakOff('string');
      plain = false;
    }
    this.#at += 1;
    return plain ? this.#text.slice(start + 1, this.#at - 1) : (JSON.parse(this.#text.slice(start, this.#at)) as string);
  }

  #enter(): void {
    if (this.#path.length >= MAX_DEPTH) this.#breakOff('depth');
    this.#at += 1;
    this.#skipSpace();
  }

  #list(): unknown[] {
    this.#enter();
    const items: unknown[] = [];
    const offsets: number[] = [];
    let onlyNumbers = true;
    if (this.#text[this.#at] === ']') {
      this.#at += 1;
      return items;
    }
    for (;;) {
      this.#path.push(items.length);
      offsets.push(this.#at);
      const item = this.#value();
      items.push(item);
      onlyNumbers &&= typeof item === 'number';
      this.#path.pop();
      if (this.#closes(']', 'list-end')) break;
    }
    // Points are many and short: the place of the whole point is near enough.
    if (!onlyNumbers) this.#places.set(items, offsets);
    return items;
  }

  #object(): Record<string, unknown> {
    this.#enter();
    const fields: Record<string, unknown> = {};
    const places = new Map<string, number>();
    this.#places.set(fields, places);
    if (this.#text[this.#at] === '}') {
      this.#at += 1;
      return fields;
    }
    for (;;) {
      if (this.#text[this.#at] !== '"') this.#breakOff('key');
      const keyAt = this.#at;
      const key = this.#string();
      this.#skipSpace();
      if (this.#text[this.#at] !== ':') this.#breakOff('colon');
      this.#at += 1;
      this.#skipSpace();
      this.#path.push(key);
      const firstOffset = places.get(key);
      if (firstOffset !== undefined) this.repeated.push({ path: [...this.#path], firstOffset });
      places.set(key, keyAt);
      const value = this.#value();
      if (key === '__proto__') this.refused.push([...this.#path]);
      else fields[key] = value;
      this.#path.pop();
      if (this.#closes('}', 'object-end')) break;
    }
    return fields;
  }

  /** After an entry: true at the closing bracket, false after a comma. */
  #closes(bracket: string, wanted: Wanted): boolean {
    this.#skipSpace();
    const next = this.#text[this.#at];
    if (next === bracket) {
      this.#at += 1;
      return true;
    }
    if (next !== ',') this.#breakOff(wanted);
    this.#at += 1;
    this.#skipSpace();
    return false;
  }
}
