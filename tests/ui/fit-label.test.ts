/** Words in a bay stay inside it and off its openings. */

import { describe, expect, it } from 'vitest';
import { fitText } from '../../src/ui/facts/fit-label.ts';
import { rect } from '../helpers/scene-builder.ts';

const SIZES = { most: 4, least: 1 };

describe('room for words', () => {
  it('takes the middle where nothing is in the way', () => {
    expect(fitText(rect(0, 0, 20, 10), [], { width: 2, height: 1 }, SIZES)).toEqual({ at: [10, 5], letters: 4 });
  });

  it('keeps off an opening in the middle', () => {
    const found = fitText(rect(0, 0, 20, 10), [rect(8, 3, 12, 7)], { width: 1.5, height: 1 }, SIZES)!;
    const [x, y] = found.at;
    const [halfX, halfY] = [(1.5 * found.letters) / 2, found.letters / 2];
    const clear = x + halfX <= 8 || x - halfX >= 12 || y + halfY <= 3 || y - halfY >= 7;
    expect(clear).toBe(true);
    expect(x - halfX >= 0 && x + halfX <= 20 && y - halfY >= 0 && y + halfY <= 10).toBe(true);
  });

  it('makes letters smaller before it gives up, and gives up where they would be too small', () => {
    // A box of 3 × 1 letters in 6 m fits up to size 2
    const found = fitText(rect(0, 0, 6, 10), [], { width: 3, height: 1 }, SIZES)!;
    expect(found.letters).toBeLessThanOrEqual(2);
    expect(found.letters).toBeGreaterThan(1.6);
    expect(fitText(rect(0, 0, 2, 10), [], { width: 3, height: 1 }, SIZES)).toBeNull();
  });
});
