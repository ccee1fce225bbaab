/** Numbers as the command line writes them. */

import { describe, expect, it } from 'vitest';
import { WRITING } from '../../src/cli/writing.ts';

describe('a number that rounds to nothing', () => {
  it('has no sign', () => {
    expect([WRITING.en.fixed(-0.001), WRITING.de.fixed(-0.0049), WRITING.de.fixed(-0.4, 0), WRITING.en.fixed(-0)]).toEqual([
      '0.00',
      '0,00',
      '0',
      '0.00',
    ]);
  });

  it('any other keeps it', () => {
    expect([WRITING.en.fixed(-0.005, 3), WRITING.de.fixed(-10)]).toEqual(['-0.005', '-10,00']);
  });
});
