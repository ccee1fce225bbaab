/** Values of one entity in the text form of ISO 10303-21. */

/** Another entity. */
export interface Ref {
  readonly ref: number;
}
/** A word between points, `T` or `METRE`. */
export interface Word {
  readonly word: string;
}
/** A value of a named type, as `IFCLENGTHMEASURE(0.3)`. */
export interface Typed {
  readonly type: string;
  readonly values: readonly StepValue[];
}
/** `null` where nothing is given (`$`) or the value follows from others (`*`). */
export type StepValue = null | number | string | Ref | Word | Typed | readonly StepValue[];

/** A value out of form. */
export class BadStep extends Error {}

const MAX_DEPTH = 32;
const BLANK = /(?:\s+|\/\*[\s\S]*?\*\/)*/y;
const NUMBER = /[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const REF = /#(\d{1,15})/y;
const WORD = /\.([A-Za-z_]\w*)\./y;
const NAME = /[A-Za-z_]\w*/y;
const TEXT = /'((?:[^']|'')*)'/y;
const BINARY = /"[0-9A-Fa-f]*"/y;

/** Reads the values between the bracket that opens at `start` and its partner. */
export function valuesAt(text: string, start: number): readonly StepValue[] {
  return new Reader(text, start).list(0);
}

/** The same, with where it ends. */
export function spanAt(text: string, start: number): { readonly values: readonly StepValue[]; readonly end: number } {
  const reader = new Reader(text, start);
  return { values: reader.list(0), end: reader.at };
}

class Reader {
  readonly #text: string;
  at: number;

  constructor(text: string, at: number) {
    this.#text = text;
    this.at = at;
  }

  #match(pattern: RegExp): RegExpExecArray | null {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.#text);
    if (found !== null) this.at += found[0].length;
    return found;
  }

  list(depth: number): readonly StepValue[] {
    if (depth > MAX_DEPTH || this.#text[this.at] !== '(') throw new BadStep();
    this.at += 1;
    const values: StepValue[] = [];
    this.#match(BLANK);
    if (this.#text[this.at] === ')') {
      this.at += 1;
      return values;
    }
    for (;;) {
      values.push(this.#value(depth));
      this.#match(BLANK);
      const mark = this.#text[this.at];
      this.at += 1;
      if (mark === ')') return values;
      if (mark !== ',') throw new BadStep();
    }
  }

  #value(depth: number): StepValue {
    this.#match(BLANK);
    const first = this.#text[this.at];
    if (first === '(') return this.list(depth + 1);
    if (first === '$' || first === '*') {
      this.at += 1;
      return null;
    }
    if (first === "'") {
      const found = this.#match(TEXT);
      if (found !== null) return decodeStep(found[1]);
    }
    const ref = this.#match(REF);
    if (ref !== null) return { ref: Number(ref[1]) };
    const word = this.#match(WORD);
    if (word !== null) return { word: word[1].toUpperCase() };
    const number = this.#match(NUMBER);
    if (number !== null) return Number(number[0]);
    const binary = this.#match(BINARY);
    if (binary !== null) return binary[0];
    const name = this.#match(NAME);
    if (name === null) throw new BadStep();
    this.#match(BLANK);
    return { type: name[0].toUpperCase(), values: this.list(depth + 1) };
  }
}

const fromHex = (hex: string, digits: number): string =>
  (hex.match(new RegExp(`.{${digits}}`, 'g')) ?? [])
    .map((one) => Number.parseInt(one, 16))
    .map((code) => (code <= 0x10ffff ? String.fromCodePoint(code) : '\uFFFD'))
    .join('');

/** Letters beyond ASCII are written as numbers. */
export function decodeStep(raw: string): string {
  const text = raw.replaceAll("''", "'");
  if (!text.includes('\\')) return text;
  return text
    .replace(/\\X2\\((?:[0-9A-Fa-f]{4})*)\\X0\\/g, (_, hex: string) => utf16(hex))
    .replace(/\\X4\\((?:[0-9A-Fa-f]{8})*)\\X0\\/g, (_, hex: string) => fromHex(hex, 8))
    .replace(/\\X\\([0-9A-Fa-f]{2})/g, (_, hex: string) => fromHex(hex, 2))
    .replace(/\\S\\(.)/g, (_, letter: string) => String.fromCharCode(letter.charCodeAt(0) + 128))
    .replace(/\\P[A-I]\\/g, '')
    .replaceAll('\\\\', '\\');
}

/** Pairs of surrogates stand as two numbers. */
function utf16(hex: string): string {
  return String.fromCharCode(...(hex.match(/.{4}/g) ?? []).map((one) => Number.parseInt(one, 16)));
}
