/** The pairs of code and value that a DXF text is made of, and one entity's pairs together. */

/** A number that is none, or too large to be a place. */
export class BadNumber extends Error {
  readonly found: string;
  constructor(found: string) {
    super(found);
    this.found = found;
  }
}

const GREATEST = 1e12;

function toNumber(value: string): number {
  const number = Number(value);
  if (value.trim() === '' || !(Math.abs(number) <= GREATEST)) throw new BadNumber(value.trim().slice(0, 40));
  return number;
}

/** Walks through a text pair by pair. */
export class TagReader {
  code = -1;
  value = '';
  /** Line of the code, from 1. */
  line = -1;
  /** The text ended without its closing EOF. */
  cut = false;
  /** Line that should hold a code and does not. */
  damagedLine: string | null = null;
  readonly #text: string;
  #at = 0;

  constructor(text: string) {
    this.#text = text;
  }

  /** Share of the text read, 0 to 1. */
  get share(): number {
    return this.#at / this.#text.length;
  }

  /** Next pair; false at EOF, where the text is cut off or breaks. */
  next(): boolean {
    const codeText = this.#nextLine();
    this.line += 2;
    if (codeText === null || (codeText.trim() === '' && this.#at >= this.#text.length)) {
      this.cut = true;
      return false;
    }
    const code = Number(codeText);
    if (codeText.trim() === '' || !Number.isInteger(code)) {
      this.damagedLine = codeText.trim().slice(0, 40);
      return false;
    }
    const value = this.#nextLine();
    if (value === null) {
      this.cut = true;
      return false;
    }
    this.code = code;
    // Blanks may belong to a text; nowhere else do they mean anything.
    this.value = code === 0 ? value.trim().toUpperCase() : code === 1 || code === 3 ? value : value.trim();
    return !(code === 0 && this.value === 'EOF');
  }

  #nextLine(): string | null {
    if (this.#at >= this.#text.length) return null;
    const found = this.#text.indexOf('\n', this.#at);
    const end = found === -1 ? this.#text.length : found;
    const line = this.#text.slice(this.#at, this.#text[end - 1] === '\r' && end > this.#at ? end - 1 : end);
    this.#at = end + 1;
    return line;
  }
}

/** One entity with its pairs in order. */
export class Entity {
  readonly type: string;
  readonly line: number;
  readonly codes: number[] = [];
  readonly values: string[] = [];

  constructor(type: string, line: number) {
    this.type = type;
    this.line = line;
  }

  push(code: number, value: string): void {
    this.codes.push(code);
    this.values.push(value);
  }

  text(code: number, otherwise = ''): string {
    const at = this.codes.indexOf(code);
    return at === -1 ? otherwise : this.values[at];
  }

  number(code: number, otherwise = 0): number {
    const at = this.codes.indexOf(code);
    return at === -1 ? otherwise : toNumber(this.values[at]);
  }

  /** All values of a code, in order. */
  numbers(code: number): number[] {
    const found: number[] = [];
    for (let i = 0; i < this.codes.length; i++) if (this.codes[i] === code) found.push(toNumber(this.values[i]));
    return found;
  }

  texts(code: number): string[] {
    return this.values.filter((_, i) => this.codes[i] === code);
  }

  numberAt(index: number): number {
    return toNumber(this.values[index] ?? '');
  }

  has(code: number): boolean {
    return this.codes.includes(code);
  }
}
