/** A search finds what holds all of its words. */

import { expect, it } from 'vitest';
import { holdsWords } from '../../src/ui/facts/search.ts';

it('asks for every word, in any order, large or small', () => {
  const text = 'Z4 Lawn west Roof garden';
  for (const search of ['', '  ', 'lawn', 'WEST lawn', 'z4', 'gard  roof ']) expect(holdsWords(text, search)).toBe(true);
  for (const search of ['z5', 'lawn east', 'lawnwest']) expect(holdsWords(text, search)).toBe(false);
});
