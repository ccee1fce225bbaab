/** Lists of names for a message, shortened where they are long. */

import type { Names } from './phrase-values.ts';

const MOST = 24;
const SHOWN = 20;

interface Shown {
  readonly list: string;
  /** Names left out. */
  readonly more: number;
}

function shown(names: Names): Shown {
  const some = names.length > MOST ? names.slice(0, SHOWN) : names;
  return { list: some.join(', '), more: names.length - some.length };
}

/** E.g. `a, b, c and 12 more`. */
export function namesEn(names: Names): string {
  const { list, more } = shown(names);
  if (names.length === 0) return 'none';
  return more === 0 ? list : `${list} and ${more} more`;
}

export function namesDe(names: Names): string {
  const { list, more } = shown(names);
  if (names.length === 0) return 'keine';
  return more === 0 ? list : `${list} und ${more} weitere`;
}
