/** A model in the text form of ISO 10303-21, indexed: where each entity stands and of what type it is. Nothing is parsed before it is asked for. */

import { StopReading } from '../gathering.ts';
import { issueOf } from '../issue-of.ts';
import { MAX_MODEL_ENTITIES } from '../limits.ts';
import type { Steps } from '../steps.ts';

export interface StepFile {
  readonly text: string;
  /** Ids in ascending order. */
  readonly ids: Float64Array;
  /** Where the type of each begins in the text, in the same order. */
  readonly starts: Float64Array;
  /** Ids by type, in capitals as the file writes them. */
  readonly byType: ReadonlyMap<string, readonly number[]>;
  /** Lines that are no entities, outside the header. */
  readonly damaged: number;
  /** Where the text breaks off; null where it is whole. */
  readonly cutAt: number | null;
}

const STEP = 20_000;
const HEAD = /#(\d{1,15})\s*=\s*([A-Za-z_]\w*)?\s*\(/y;

/** Indexes a text. */
export function* indexStep(text: string): Steps<StepFile> {
  const scan = new StepScan(text);
  for (let count = 0; scan.next(); count++) if (count % STEP === 0) yield scan.at / text.length;
  return scan.file();
}

class StepScan {
  at: number;
  readonly #text: string;
  readonly #byType = new Map<string, number[]>();
  readonly #ids: number[] = [];
  readonly #starts: number[] = [];
  #ascending = true;
  #damaged = 0;
  #cutAt: number | null = null;
  #quote: number;
  #comment: number;

  constructor(text: string) {
    this.#text = text;
    const data = /\bDATA\s*(?:\([^;]*\))?\s*;/.exec(text.slice(0, 200_000));
    this.at = data === null ? text.length : data.index + data[0].length;
    if (data === null) this.#cutAt = text.length;
    this.#quote = text.indexOf("'", this.at);
    this.#comment = text.indexOf('/*', this.at);
  }

  /** Goes over one entity; false at the end of the data. */
  next(): boolean {
    const text = this.#text;
    this.#skipBlanks();
    if (this.at >= text.length) {
      this.#cutAt ??= text.length;
      return false;
    }
    if (text.startsWith('ENDSEC', this.at)) return false;
    HEAD.lastIndex = this.at;
    const head = HEAD.exec(text);
    const end = this.#endOf(this.at);
    if (end < 0) {
      this.#cutAt = this.at;
      return false;
    }
    if (head === null) this.#damaged += 1;
    else this.#keep(Number(head[1]), (head[2] ?? '').toUpperCase(), this.at + head[0].length - 1);
    this.at = end + 1;
    return true;
  }

  #keep(id: number, type: string, start: number): void {
    if (this.#ids.length >= MAX_MODEL_ENTITIES) {
      throw new StopReading(issueOf('error', 'TOO_MANY_ENTITIES', { most: MAX_MODEL_ENTITIES }));
    }
    this.#ascending &&= this.#ids.length === 0 || id > this.#ids[this.#ids.length - 1];
    this.#ids.push(id);
    this.#starts.push(start);
    const list = this.#byType.get(type);
    if (list === undefined) this.#byType.set(type, [id]);
    else list.push(id);
  }

  #skipBlanks(): void {
    const text = this.#text;
    for (;;) {
      while (this.at < text.length && text.charCodeAt(this.at) <= 32) this.at += 1;
      if (!text.startsWith('/*', this.at)) return;
      const end = text.indexOf('*/', this.at + 2);
      this.at = end < 0 ? text.length : end + 2;
    }
  }

  /** The semicolon that ends what begins here, outside texts and comments; -1 where there is none. */
  #endOf(from: number): number {
    const text = this.#text;
    let at = from;
    for (;;) {
      const end = text.indexOf(';', at);
      if (end < 0) return -1;
      if (this.#quote >= 0 && this.#quote < at) this.#quote = text.indexOf("'", at);
      if (this.#comment >= 0 && this.#comment < at) this.#comment = text.indexOf('/*', at);
      const [quote, comment] = [this.#quote < 0 ? Infinity : this.#quote, this.#comment < 0 ? Infinity : this.#comment];
      if (quote > end && comment > end) return end;
      const close = quote < comment ? text.indexOf("'", quote + 1) : text.indexOf('*/', comment + 2);
      if (close < 0) return -1;
      at = close + 1;
    }
  }

  file(): StepFile {
    let [ids, starts] = [Float64Array.from(this.#ids), Float64Array.from(this.#starts)];
    if (!this.#ascending) {
      const order = Uint32Array.from(ids, (_, i) => i).sort((a, b) => this.#ids[a] - this.#ids[b]);
      ids = ids.map((_, i) => this.#ids[order[i]]);
      starts = starts.map((_, i) => this.#starts[order[i]]);
    }
    return { text: this.#text, ids, starts, byType: this.#byType, damaged: this.#damaged, cutAt: this.#cutAt };
  }
}

/** Where an entity stands in the lists; -1 where the file has none of this id. */
export function placeOfId({ ids }: StepFile, id: number): number {
  let [low, high] = [0, ids.length - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    if (ids[middle] === id) return middle;
    if (ids[middle] < id) low = middle + 1;
    else high = middle - 1;
  }
  return -1;
}
