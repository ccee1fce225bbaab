/** Files that stop in the middle. */

import { choiceOf, type Gathering } from './gathering.ts';

/**
 * Asks whether the part before the break is to be used; until then it is an error.
 * @param gather - is asked
 * @param count - entries that were read whole
 * @param where - place of the break
 * @returns whether to use the part
 */
export function tellCut(gather: Gathering, count: number, where: { readonly unit: 'line' | 'byte'; readonly at: number }): boolean {
  const choices = [choiceOf('stop', 'CUT_STOP', {}), choiceOf('use', 'CUT_USE', {})];
  const taken = count === 0 ? 'stop' : gather.ask({ id: 'truncated', code: 'TRUNCATED', values: { count }, choices, guess: 'stop' });
  if (taken === 'use') {
    gather.mend('FEATURES_CUT', { count });
    return true;
  }
  gather.error('FILE_TRUNCATED', { ...where, count });
  return false;
}
