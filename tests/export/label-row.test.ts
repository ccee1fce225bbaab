/** Labels in a row: worked out by hand. */

import { describe, expect, it } from 'vitest';
import { spreadRow } from '../../src/export/label-row.ts';
import { textWidthMm, wrapped } from '../../src/export/text-width.ts';
import { randomFrom } from '../helpers/scene-builder.ts';

describe('labels in a row', () => {
  it('stay where they want to be if there is room', () => {
    const labels = [
      { wantedMm: 5, widthMm: 10 },
      { wantedMm: 17, widthMm: 10 },
    ];
    expect(spreadRow(labels, 2)).toEqual([5, 17]);
    expect(spreadRow([], 2)).toEqual([]);
  });

  it('share what they have to give way', () => {
    // Two of 10 mm on one place need 12 mm between their middles: each goes 6 aside.
    const two = [0, 0].map((wantedMm) => ({ wantedMm, widthMm: 10 }));
    expect(spreadRow(two, 2)).toEqual([-6, 6]);
    // A third pushed into from the left: wanted 0, 0, 15; middles 12 apart with least squares: mean of (0, 0 − 12, 15 − 24) = −7.
    const three = [0, 0, 15].map((wantedMm) => ({ wantedMm, widthMm: 10 }));
    expect(spreadRow(three, 2)).toEqual([-7, 5, 17]);
  });

  it('never overlap and keep their order, however they are thrown', () => {
    const random = randomFrom(7);
    for (let round = 0; round < 200; round++) {
      const labels = Array.from({ length: 12 }, () => ({ wantedMm: 100 * random(), widthMm: 1 + 30 * random() }));
      labels.sort((p, q) => p.wantedMm - q.wantedMm);
      const middles = spreadRow(labels, 3);
      for (let i = 1; i < labels.length; i++) {
        const space = middles[i] - middles[i - 1] - (labels[i].widthMm + labels[i - 1].widthMm) / 2;
        expect(space).toBeGreaterThan(3 - 1e-9);
      }
    }
  });
});

describe('lines of text', () => {
  it('break between words, and leave a long word whole', () => {
    const lines = wrapped('Gravel strip along the parapet', 30, 2.5);
    expect(lines.join(' ')).toBe('Gravel strip along the parapet');
    for (const line of lines) expect(textWidthMm(line, 2.5)).toBeLessThanOrEqual(30);
    expect(wrapped('Wurzelschutzbahn', 5, 2.5)).toEqual(['Wurzelschutzbahn']);
  });
});
