/** Numbers as files write them: typographic minus, narrow blanks and apostrophes accepted, the decimal mark known. */

export type DecimalMark = '.' | ',';

const BLANKS = /[\s\u00A0\u2000-\u200A\u202F\u205F]/g;
const MINUS = /^[\u2212\u2013\u2012\uFE63\uFF0D]/;
const PLAIN = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?$/;
const GROUPS = /^[+-]?\d{1,3}(?:['’ ]\d{3})+(?:[.,]\d+)?$/;
/** What could mean two numbers: `1.234`. */
const TWOFOLD = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;

export interface NumberRead {
  readonly value: number;
  /** Written with marks a program would not write. */
  readonly unusual: boolean;
}

/** Reads a number; null where the text is none. */
export function readNumber(text: string, mark: DecimalMark): NumberRead | null {
  if (text.length > 40) return null;
  const trimmed = text.trim();
  const signed = trimmed.replace(MINUS, '-').replace(BLANKS, ' ');
  let digits = signed;
  if (GROUPS.test(digits)) digits = digits.replace(/['’ ]/g, '');
  const other = mark === '.' ? ',' : '.';
  const grouped = new RegExp(`^[+-]?[1-9]\\d{0,2}(?:\\${other}\\d{3})+(?:\\${mark}\\d+)?$`);
  if (digits.includes(other)) {
    if (!grouped.test(digits)) return null;
    digits = digits.replaceAll(other, '');
  }
  if (mark === ',') digits = digits.replace(',', '.');
  if (!PLAIN.test(digits)) return null;
  const value = Number(digits);
  return Number.isFinite(value) ? { value, unusual: signed !== trimmed || /['’ ]/.test(signed) } : null;
}

/** What a text says about the decimal mark; null where it holds no mark or is no number. */
export function markOf(text: string): DecimalMark | 'twofold' | null {
  const digits = text.trim().replace(MINUS, '-').replace(BLANKS, '').replace(/['’]/g, '');
  if (!/^[+-]?[\d.,]+(?:[eE][+-]?\d+)?$/.test(digits) || !/[.,]/.test(digits)) return null;
  if (TWOFOLD.test(digits)) return 'twofold';
  const [points, commas] = ['.', ','].map((mark) => digits.split(mark).length - 1);
  if (points > 1) return commas <= 1 ? ',' : null;
  if (commas > 1) return points <= 1 ? '.' : null;
  if (points === 1 && commas === 1) return digits.indexOf('.') > digits.indexOf(',') ? '.' : ',';
  return points === 1 ? '.' : ',';
}

const LEVEL =
  /^(?:[\p{L}.:=∇▽▼]{0,12}\s*)?((?:[+\-±\u2212\u2013]\s*)?\d{1,4}[.,]\d{1,3}|[+\-±\u2212\u2013]\s*\d{1,4})\s*(?:m|m\s?[üÜ]\.?\s?\p{L}{2,4}\.?)?$/u;

/** A level written as text, e.g. `+35.42`, `35,42 m`, `±0.00`; whole numbers only with their sign. Null where it is none. */
export function levelOfText(text: string): number | null {
  const found = LEVEL.exec(text.trim());
  if (found === null) return null;
  const digits = found[1]
    .replace(/[±+\s]/g, '')
    .replace(/[\u2212\u2013]/, '-')
    .replace(',', '.');
  return Number(digits);
}
