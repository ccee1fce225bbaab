/** What a utilisation means in words and classes. */

import { UTILISATION_LIMITS } from '../../model/palette.ts';
import { isAtLimit } from '../format.ts';

export type Judgement = 'over' | 'at limit' | 'within';

/** Exactly at the limit is not over. */
export function judge(utilisation: number): Judgement {
  if (isAtLimit(utilisation)) return 'at limit';
  return utilisation > 1 ? 'over' : 'within';
}

/** Index of the class with fixed limits; a value on a limit belongs to the class below it. */
export function utilisationClass(utilisation: number): number {
  if (isAtLimit(utilisation)) return UTILISATION_LIMITS.indexOf(1);
  const found = UTILISATION_LIMITS.findIndex((limit) => utilisation <= limit);
  return found < 0 ? UTILISATION_LIMITS.length : found;
}

/** Classes above the limit are hatched. */
export function isHatchedClass(index: number): boolean {
  return index > UTILISATION_LIMITS.indexOf(1);
}
