/** Files that stop in the middle. */

import type { Gathering } from './gathering.ts';

/**
 * Asks whether the part before the break is to be used; until then it is an error.
 * @param gather - is asked
 * @param count - entries that were read whole
 * @param where - place of the break, in words
 * @returns whether to use the part
 */
export function tellCut(gather: Gathering, count: number, where: string): boolean {
  const choices = [
    { value: 'stop', says: 'No, I will get the whole file.' },
    { value: 'use', says: 'Yes, use the part that was read.' },
  ];
  const taken = count === 0 ? 'stop' : gather.ask({ id: 'truncated', code: 'TRUNCATED', values: { count }, choices, guess: 'stop' });
  if (taken === 'use') {
    gather.mend('FEATURES_CUT', { count });
    return true;
  }
  gather.error('FILE_TRUNCATED', {
    got: `the end of the file at ${where}, after ${count} ${count === 1 ? 'entry' : 'entries'}`,
    expected: 'a file that is closed at its end',
    mend: 'It was probably not saved or sent completely. Save or send it again, or use the part that was read.',
  });
  return false;
}
