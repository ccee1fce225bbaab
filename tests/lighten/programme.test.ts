/** The solver against another one and against all combinations, on random small programmes in whole numbers. */

import fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { type Programme, solveProgramme } from '../../src/lighten/programme.ts';

/** In the text form that most solvers read. */
function lpText({ columns, rows }: Programme): string {
  const sum = (entries: readonly (readonly [number, number])[]) =>
    entries.map(([column, value]) => `${value < 0 ? '-' : '+'} ${Math.abs(value)} x${column}`).join(' ');
  const bounds = rows.flatMap(({ entries, low, high }, r) => [
    ...(Number.isFinite(low) ? [` l${r}: ${sum(entries)} >= ${low}`] : []),
    ...(Number.isFinite(high) ? [` h${r}: ${sum(entries)} <= ${high}`] : []),
  ]);
  return [
    'Minimize',
    ` cost: ${sum(columns.map(({ cost }, c) => [c, cost] as const))}`,
    'Subject To',
    ...bounds,
    'Bounds',
    ...columns.map(({ high }, c) => ` 0 <= x${c} <= ${high}`),
    'General',
    ` ${columns.map((_, c) => `x${c}`).join(' ')}`,
    'End',
  ].join('\n');
}

/** Least cost over every combination; null where none fits. */
function tried({ columns, rows }: Programme): number | null {
  let best: number | null = null;
  const values = columns.map(() => 0);
  const next = (column: number): void => {
    if (column < columns.length) {
      for (values[column] = 0; values[column] <= columns[column].high; values[column]++) next(column + 1);
      return;
    }
    const fits = rows.every(({ entries, low, high }) => {
      const sum = entries.reduce((total, [c, value]) => total + value * values[c], 0);
      return sum >= low - 1e-9 && sum <= high + 1e-9;
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
    columns: fc.array(fc.record({ cost: whole(-9, 9), high: whole(1, 6) }), { minLength: width, maxLength: width }),
    rows: fc.array(
      fc
        .tuple(fc.array(whole(-5, 5), { minLength: width, maxLength: width }), whole(-12, 12), fc.boolean())
        .map(([list, bound, isLow]) => ({
          entries: list.map((value, c): [number, number] => [c, value]),
          low: isLow ? bound : -Infinity,
          high: isLow ? Infinity : bound,
        })),
      { minLength: 1, maxLength: 4 },
    ),
  }),
);

describe('solveProgramme', () => {
  it('finds what trying all combinations finds, and what another solver finds', async () => {
    const highs = await loadHighs();
    fc.assert(
      fc.property(programmes, (programme) => {
        const best = tried(programme);
        const answer = solveProgramme(programme);
        const other = highs.solve(lpText(programme));
        if (best === null) {
          expect(answer.status).toBe('infeasible');
          expect(other.Status).toBe('Infeasible');
          return;
        }
        expect('cost' in answer ? answer.cost : answer.status).toBeCloseTo(best, 6);
        expect(other.ObjectiveValue).toBeCloseTo(best, 6);
      }),
      { numRuns: 150 },
    );
  });
});
