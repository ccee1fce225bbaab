/** Permitted loads as a load plan writes them: "A1-A5, B2" and "12/5". */

import type { LoadUnit } from '../../model/shown-units.ts';
import { readLoad } from './load-field.ts';

export interface BayNames {
  readonly ids: readonly string[];
  /** Names that no bay has. */
  readonly missing: readonly string[];
}

const EVERY: ReadonlySet<string> = new Set(['all', 'alle', '*']);
const RANGE = /^(.*?)(\d+)\s*(?:-|–|bis|to|…|\.\.)\s*(\D*)(\d+)$/i;

/**
 * Bays that a text names. "A1-A5" counts up the number behind a common beginning; a bay of that very name comes first.
 * @param text - as typed
 * @param bays - ids of all bays
 */
export function readBayNames(text: string, bays: readonly string[]): BayNames {
  const found = new Set<string>();
  const missing: string[] = [];
  const known = new Map(bays.map((id) => [id.toLowerCase(), id]));
  for (const piece of text.split(/[,;\s]+(?![-–])(?<![-–]\s)/).filter((one) => one !== '')) {
    if (EVERY.has(piece.toLowerCase())) {
      for (const id of bays) found.add(id);
      continue;
    }
    for (const name of namesOf(piece, known)) {
      const id = known.get(name.toLowerCase());
      if (id === undefined) missing.push(name);
      else found.add(id);
    }
  }
  return { ids: bays.filter((id) => found.has(id)), missing };
}

/** Far more bays than a deck has. */
const LONGEST_RANGE = 1000;

function namesOf(piece: string, known: ReadonlyMap<string, string>): readonly string[] {
  const match = RANGE.exec(piece);
  if (known.has(piece.toLowerCase()) || match === null) return [piece];
  const [, begin = '', from = '', again = '', to = ''] = match;
  const count = Number(to) - Number(from);
  if ((again !== '' && again.toLowerCase() !== begin.toLowerCase()) || count < 0 || count > LONGEST_RANGE) return [piece];
  return Array.from({ length: count + 1 }, (_, i) => `${begin}${Number(from) + i}`);
}

export type BayLoads = { readonly permanentKNm2: number; readonly imposedKNm2: number } | { readonly totalKNm2: number };

/**
 * Loads as "12/5" (permanent / imposed) or one number for both together.
 * @param text - as typed, with or without a unit behind it
 * @param unit - unit of numbers without one
 * @returns loads, each with the number as typed; null where it is neither
 */
export function readBayLoads(text: string, unit: LoadUnit): { readonly loads: BayLoads; readonly typed: readonly number[] } | null {
  // A unit may have a stroke of its own: kN/m².
  const written = /(?:kn|kg|t|lb)\s*\/\s*(?:m²|m2|qm|ft²|ft2)\s*$|kpa\s*$|psf\s*$/i.exec(text)?.[0] ?? '';
  const figures = text.slice(0, text.length - written.length).split(/[/+|]/);
  const reads = figures.map((one) => readLoad(`${one.trim()} ${written}`, unit));
  const [first, second, ...more] = reads.flatMap((read) => (read.ok ? [read] : []));
  if (first === undefined || reads.some((read) => !read.ok) || more.length > 0) return null;
  if (second === undefined) return { loads: { totalKNm2: first.valueKNm2 }, typed: [first.typed] };
  return { loads: { permanentKNm2: first.valueKNm2, imposedKNm2: second.valueKNm2 }, typed: [first.typed, second.typed] };
}
