/** The solver against all combinations, on random small programmes in whole numbers: a solver before it had 8 of 329 wrong. */

import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Programme } from '../../src/lighten/solver.ts';
import { SOLVER } from '../helpers/lightened.ts';

/** Least cost over every combination; null where none fits. */
function tried({ columns, rows }: Programme): number | null {
  let best: number | null = null;
  const values = columns.map(() => 0);
  const next = (column: number): void => {
    if (column < columns.length) {
      for (values[column] = 0; values[column] <= columns[column].most; values[column]++) next(column + 1);
      return;
    }
    const fits = rows.every(({ factors, low, high }) => {
      const sum = factors.reduce((total, [c, value]) => total + value * values[c], 0);
      return sum >= low && sum <= high;
    });
    const cost = columns.reduce((total, one, c) => total + one.cost * values[c], 0);
    if (fits && (best === null || cost < best)) best = cost;
  };
  next(0);
  return best;
}

const whole = (min: number, max: number) => fc.integer({ min, max });

const programmes = whole(1, 4).chain((width) =>
  fc.record({
    columns: fc.array(fc.record({ cost: whole(-9, 9), most: whole(1, 6), whole: fc.constant(true) }), {
      minLength: width,
      maxLength: width,
    }),
    rows: fc.array(
      fc
        .tuple(fc.array(whole(-5, 5), { minLength: width, maxLength: width }), whole(-12, 12), fc.boolean())
        .map(([list, bound, isLow]) => ({
          factors: list.map((value, c): [number, number] => [c, value]),
          low: isLow ? bound : -Infinity,
          high: isLow ? Infinity : bound,
        })),
      { minLength: 1, maxLength: 4 },
    ),
  }),
);

it('finds the least cost of all combinations, or that there is none', () => {
  const met = { answers: 0, none: 0 };
  fc.assert(
    fc.property(programmes, (programme) => {
      const best = tried(programme);
      const answer = SOLVER.solve(programme);
      if (best === null) {
        met.none++;
        expect(answer.status).toBe('infeasible');
        return;
      }
      met.answers++;
      if (answer.status !== 'optimal') throw new Error(`${answer.status} for ${JSON.stringify(programme)}`);
      const cost = programme.columns.reduce((sum, one, c) => sum + one.cost * answer.values[c], 0);
      expect(cost).toBeCloseTo(best, 6);
      for (const { factors, low, high } of programme.rows) {
        const sum = factors.reduce((total, [c, value]) => total + value * answer.values[c], 0);
        expect(sum).toBeGreaterThanOrEqual(low - 1e-6);
        expect(sum).toBeLessThanOrEqual(high + 1e-6);
      }
    }),
    { numRuns: 329, seed: 329 },
  );
  expect(Math.min(met.answers, met.none)).toBeGreaterThan(30);
});

it('takes columns that are no whole numbers', () => {
  // Least x + y with 2x + y at least 3, x whole: x = 2 costs 2, x = 1 with y = 1 costs 2 as well; y costs 1.5 here, so x = 2 it is.
  const programme: Programme = {
    columns: [
      { cost: 1, most: 5, whole: true },
      { cost: 1.5, most: 5, whole: false },
    ],
    rows: [
      {
        factors: [
          [0, 2],
          [1, 1],
        ],
        low: 3,
        high: Infinity,
      },
    ],
  };
  expect(SOLVER.solve(programme)).toEqual({ status: 'optimal', values: Float64Array.of(2, 0) });
  // At 0.25 the half that x leaves open is cheaper: x = 0 and y = 3.
  const cheap = { ...programme, columns: programme.columns.map((one) => (one.whole ? one : { ...one, cost: 0.25 })) };
  expect(SOLVER.solve(cheap)).toEqual({ status: 'optimal', values: Float64Array.of(0, 3) });
});
