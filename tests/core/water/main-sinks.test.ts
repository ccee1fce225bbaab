/** The coloured areas against the geometry of planes and ridges. */

import { describe, expect, it } from 'vitest';
import { flood } from '../../../src/core/water/flood.ts';
import { flowOf } from '../../../src/core/water/flow.ts';
import { mainSinks } from '../../../src/core/water/main-sinks.ts';
import { fieldOf, rimOutlets } from './terrains.ts';

const N = 200;

describe('main sinks', () => {
  // A square that falls to its lower side, turned by a towards the right: the water of the triangle above the line from the lower
  // right corner, as steep as the fall, meets the right side first.
  it.each([5, 10, 20, 30, 40])('on a plane turned by %s° are parted along the fall', (degrees) => {
    const a = (degrees * Math.PI) / 180;
    const field = fieldOf([N, N], 0.25, (x, y) => 0.02 * (y * Math.cos(a) - x * Math.sin(a)));
    const exits = rimOutlets(field, (column, row) => (column === N - 1 && row > 0 && row < N - 1 ? 1 : 0));
    const flooded = flood(field.terrain, exits);
    const sinks = mainSinks(flowOf(field.terrain, flooded), flooded);
    let wrong = 0;
    for (let row = 1; row < N - 1; row++) {
      for (let column = 1; column < N - 1; column++) {
        // Distances from the corner where the gutters meet.
        const left = N - 1.5 - column;
        const up = row - 0.5;
        const toRight = left < up * Math.tan(a);
        if (sinks[field.at(column, row)] !== (toRight ? 1 : 0)) wrong++;
      }
    }
    // Of about 200 cells along the line, at most two beside each are on the wrong side.
    expect(wrong).toBeLessThan(2 * N);
    expect(wrong / N ** 2).toBeLessThan(0.01);
  });

  it('are none where nothing is reached', () => {
    const field = fieldOf([3, 3], 1, () => 0);
    const flooded = flood(field.terrain, []);
    expect(mainSinks(flowOf(field.terrain, flooded), flooded).every((sink) => sink === -1)).toBe(true);
  });
});
