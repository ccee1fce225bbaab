/** Reads a number as people type it: decimal comma or point, any spaces, typographic minus. What could mean two numbers is not read but asked back. */

export type NumberRead =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly why: 'empty' | 'not a number' | 'no unit' }
  /** One mark followed by exactly three digits: decimals or thousands? */
  | { readonly ok: false; readonly why: 'ambiguous'; readonly small: string; readonly large: string };

const SPACES = /[\s\u00A0\u2000-\u200A\u202F\u205F]+/g;
const MINUS = /^[\u2212\u2013\u2012\uFE63\uFF0D]/;

const PLAIN = /^\d+(?:[.,]\d+)?$|^[.,]\d+$/;
const AMBIGUOUS = /^([1-9]\d{0,2})[.,](\d{3})$/;
/** Groups of three set apart by spaces, apostrophes, points or commas, all alike, then decimals after another mark. */
const GROUPED = [
  /^\d{1,3}(?: \d{3})+(?:[.,]\d+)?$/,
  /^\d{1,3}(?:['’]\d{3})+(?:[.,]\d+)?$/,
  /^\d{1,3}(?:\.\d{3})+,\d+$/,
  /^\d{1,3}(?:,\d{3})+\.\d+$/,
  /^\d{1,3}(?:\.\d{3}){2,}$/,
  /^\d{1,3}(?:,\d{3}){2,}$/,
];

/** The decimal mark is the last one that stands alone; everything before it only sets digits apart. */
function ungrouped(text: string): string {
  const marks = [...text.matchAll(/[.,]/g)];
  const last = marks.at(-1);
  const alone = last !== undefined && marks.filter(([mark]) => mark === last[0]).length === 1;
  const digits = (part: string) => part.replace(/\D/g, '');
  if (!alone) return digits(text);
  return `${digits(text.slice(0, last.index))}.${digits(text.slice(last.index))}`;
}

/** Reads one typed number. `1.234` and `1,234` are refused as ambiguous; `0.250`, `12,5`, `1 234,5`, `1.234,5` are read. */
export function readNumber(typed: string): NumberRead {
  const text = typed.trim().replace(SPACES, ' ').replace(MINUS, '-');
  if (text === '') return { ok: false, why: 'empty' };
  const sign = /^[-+] ?/.exec(text)?.[0] ?? '';
  const body = text.slice(sign.length);
  const factor = sign.startsWith('-') ? -1 : 1;
  const twofold = AMBIGUOUS.exec(body);
  if (twofold !== null) {
    const minus = factor < 0 ? '-' : '';
    return { ok: false, why: 'ambiguous', small: `${minus}${twofold[1]}.${twofold[2]}0`, large: `${minus}${twofold[1]}${twofold[2]}` };
  }
  if (PLAIN.test(body)) return { ok: true, value: factor * Number(body.replace(',', '.')) };
  if (GROUPED.some((form) => form.test(body))) return { ok: true, value: factor * Number(ungrouped(body)) };
  return { ok: false, why: 'not a number' };
}
