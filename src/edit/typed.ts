/** Coordinates, lengths and angles as people type them. */

import { readNumber } from '../model/parse-number.ts';
import type { PointM } from '../model/scene-file.ts';
import { cosSin } from './quarter-turns.ts';
import type { Refused } from './refusal.ts';

export type Typed =
  /** `12.5; 3.2` */
  | { readonly kind: 'absolute'; readonly at: PointM }
  /** `@2.5; 0` from the point before. */
  | { readonly kind: 'relative'; readonly by: PointM }
  /** `5 < 30` or `@5<30`: length and angle from the point before, counter-clockwise from +x [m] [°]. */
  | { readonly kind: 'polar'; readonly lengthM: number; readonly angleDeg: number }
  /** `5`: along the direction of the pointer [m]. */
  | { readonly kind: 'length'; readonly lengthM: number };

export type TypedRead =
  | { readonly ok: true; readonly typed: Typed }
  | { readonly ok: false; readonly why: 'empty' | 'not understood' }
  /** The text can mean each of these; choosing one means typing it. */
  | { readonly ok: false; readonly why: 'ambiguous'; readonly choices: readonly string[] };

const NOT_UNDERSTOOD: TypedRead = { ok: false, why: 'not understood' };
/** One comma between whole numbers: decimals of one number, or two coordinates. */
const TWOFOLD_COMMA = /^(@?)\s*([+-]?\d+),([+-]?\d+)$/;
const TYPOGRAPHIC_MINUS = /[\u2212\u2013\u2012\uFE63\uFF0D]/g;

/**
 * Reads a typed point or length. Coordinates are set apart by a semicolon, a blank, or a comma with a blank; decimal comma and decimal point are both read.
 * `12,5` alone and `1.234` are asked back.
 * @param text - as typed
 * @returns what it means, or why it means nothing
 */
export function readTyped(text: string): TypedRead {
  const typed = text.trim().replace(TYPOGRAPHIC_MINUS, '-');
  if (typed === '') return { ok: false, why: 'empty' };
  const twofold = TWOFOLD_COMMA.exec(typed);
  if (twofold !== null) return readTwofold(twofold);
  const isRelative = typed.startsWith('@');
  const body = (isRelative ? typed.slice(1) : typed).trim();
  const angle = body.split('<');
  if (angle.length > 2) return NOT_UNDERSTOOD;
  if (angle.length === 2) return readAll(angle, ['', '<'], isRelative, ([lengthM, angleDeg]) => ({ kind: 'polar', lengthM, angleDeg }));
  const parts = partsOf(body);
  if (parts.length === 1 && !isRelative) return readAll(parts, [''], false, ([lengthM]) => ({ kind: 'length', lengthM }));
  if (parts.length !== 2) return NOT_UNDERSTOOD;
  return readAll(parts, ['', '; '], isRelative, ([x, y]) =>
    isRelative ? { kind: 'relative', by: [x, y] } : { kind: 'absolute', at: [x, y] },
  );
}

/** `12,5` is a length or a point, `@2,5` only a point, and `12,-5` too; but `@2,5` may also want its second coordinate. */
function readTwofold([, at, first, second]: RegExpExecArray): TypedRead {
  const point = `${at}${first}; ${second}`;
  if (at === '@' || /^[+-]/.test(second)) return readTyped(point);
  return { ok: false, why: 'ambiguous', choices: [`${first}.${second}${second.length === 3 ? '0' : ''}`, point] };
}

/** Semicolon first; else a comma with a blank; else blanks. */
function partsOf(body: string): readonly string[] {
  if (body.includes(';')) return body.split(';');
  if (/,\s/.test(body)) return body.split(/,\s+/);
  return body.split(/\s+/);
}

/** Reads every part as a number; one that can be two numbers is asked back with the rest as it stands. */
function readAll(
  parts: readonly string[],
  marks: readonly string[],
  isRelative: boolean,
  make: (numbers: readonly number[]) => Typed,
): TypedRead {
  const reads = parts.map(readNumber);
  const at = reads.findIndex((read) => !read.ok && read.why === 'ambiguous');
  const doubtful = reads[at];
  if (doubtful !== undefined && !doubtful.ok && doubtful.why === 'ambiguous') {
    const whole = (choice: string) =>
      `${isRelative ? '@' : ''}${parts.map((part, i) => `${marks[i]}${i === at ? choice : part.trim()}`).join('')}`;
    return { ok: false, why: 'ambiguous', choices: [whole(doubtful.small), whole(doubtful.large)] };
  }
  const numbers = reads.flatMap((read) => (read.ok && Number.isFinite(read.value) ? [read.value] : []));
  return numbers.length === parts.length ? { ok: true, typed: make(numbers) } : NOT_UNDERSTOOD;
}

/**
 * The place a typed entry means.
 * @param typed - from `readTyped`
 * @param from - point before
 * @param towards - the pointer, snapped or not
 * @returns the place, or why there is none
 */
export function typedPoint(typed: Typed, from: PointM | null, towards: PointM | null): { readonly at: PointM } | Refused {
  if (typed.kind === 'absolute') return { at: typed.at };
  if (from === null) return { refused: 'no point before' };
  if (typed.kind === 'relative') return { at: [from[0] + typed.by[0], from[1] + typed.by[1]] };
  const { lengthM } = typed;
  if (!(lengthM > 0)) return { refused: 'length not above 0' };
  const [cos, sin] = typed.kind === 'polar' ? cosSin(typed.angleDeg) : directionOf(from, towards);
  if (Number.isNaN(cos)) return { refused: 'no direction' };
  return { at: [from[0] + lengthM * cos, from[1] + lengthM * sin] };
}

/** Not numbers where there is no direction. */
function directionOf(from: PointM, towards: PointM | null): PointM {
  const [dx, dy] = towards === null ? [0, 0] : [towards[0] - from[0], towards[1] - from[1]];
  const lengthM = Math.hypot(dx, dy);
  return [dx / lengthM, dy / lengthM];
}
