/** One bad input: the file, and what must be said about it. */

import type { Answers, DrawingBox } from '../../../src/model/drawing.ts';

/** Kinds of answers: an issue, a change or note, a question, a finding of the check. */
export interface Expected {
  readonly error?: string;
  readonly warning?: string;
  readonly mend?: string;
  /** Id of a question that must be open, and the guess. */
  readonly asks?: readonly [id: string, guess: string];
  /** Rule of a finding. */
  readonly finding?: string;
  /** Words that stand in what is said. */
  readonly says: readonly string[];
}

export interface BadInput {
  /** Row of the list of bad inputs. */
  readonly row: number;
  readonly what: string;
  readonly by: 'import' | 'check';
  readonly file: () => string | Uint8Array;
  readonly expected: Expected;
  readonly answers?: Answers;
  readonly roles?: Readonly<Record<string, string>>;
  /** Deck that the drawing should fit. */
  readonly around?: DrawingBox;
}

/** Bytes of a text in an 8-bit code page. */
export function bytes8(text: string): Uint8Array {
  return Uint8Array.from(text, (letter) => letter.charCodeAt(0));
}

export function utf16(text: string): Uint8Array {
  const bytes = new Uint8Array(2 + 2 * text.length);
  bytes.set([0xff, 0xfe]);
  for (let i = 0; i < text.length; i++) bytes.set([text.charCodeAt(i) & 0xff, text.charCodeAt(i) >> 8], 2 + 2 * i);
  return bytes;
}
