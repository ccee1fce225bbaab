/** The choice of one option per menu against all combinations, and what is made of a solver that is out by a hair or stops. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestRows, type Menu, select as selectWith } from '../../src/lighten/selection.ts';
import { loadSolver, type Solver } from '../../src/lighten/solver.ts';
import { SOLVER } from '../helpers/lightened.ts';

const select = (menus: readonly Menu[], most: readonly number[], solver: Solver = SOLVER) => selectWith(solver, menus, most);

interface Case {
  readonly most: readonly number[];
  /** Per menu, per option: cost, and what it takes of each limit; null where the menu takes nothing of it. */
  readonly menus: readonly (readonly (readonly [cost: number, takes: readonly (number | null)[]])[])[];
}

const menusOf = ({ menus, most }: Case): Menu[] =>
  menus.map((options) => ({
    costs: Float64Array.from(options, ([cost]) => cost),
    uses: most.flatMap((_, limit) => {
      const takes = options.map(([, of]) => of[limit]);
      return takes.includes(null) ? [] : [{ limit, amounts: Float64Array.from(takes, (one) => one ?? 0) }];
    }),
  }));

/** Least cost over every combination; null where none keeps all limits. */
function tried({ menus, most }: Case): number | null {
  let best: number | null = null;
  const next = (m: number, cost: number, left: readonly number[]): void => {
    if (m === menus.length) {
      if (left.every((one) => one >= 0) && (best === null || cost < best)) best = cost;
      return;
    }
    for (const [own, takes] of menus[m]) {
      next(
        m + 1,
        cost + own,
        left.map((one, l) => one - (takes[l] ?? 0)),
      );
    }
  };
  next(0, 0, most);
  return best;
}

const whole = (min: number, max: number) => fc.integer({ min, max });

/** Some menus take nothing of some limits, so that parts fall apart. */
const cases = fc.tuple(whole(1, 5), whole(1, 3)).chain(([width, limits]) =>
  fc.record({
    most: fc.array(whole(0, 14), { minLength: limits, maxLength: limits }),
    menus: fc.array(
      fc
        .tuple(
          fc.array(fc.boolean(), { minLength: limits, maxLength: limits }),
          fc.array(fc.tuple(whole(-9, 9), fc.array(whole(-2, 9), { minLength: limits, maxLength: limits })), {
            minLength: 1,
            maxLength: 6,
          }),
        )
        .map(([isUsed, options]) => options.map(([cost, takes]) => [cost, takes.map((one, l) => (isUsed[l] ? one : null))] as const)),
      { minLength: width, maxLength: width },
    ),
  }),
);

describe('select', () => {
  it('finds what trying all combinations finds', () => {
    const met = { answers: 0, none: 0 };
    fc.assert(
      fc.property(cases, (one) => {
        const best = tried(one);
        const { picks, cost, proven, failed } = select(menusOf(one), one.most);
        expect(proven).toBe(true);
        if (best === null) {
          met.none++;
          expect(failed.length).toBeGreaterThan(0);
          return;
        }
        met.answers++;
        expect(failed).toEqual([]);
        expect(cost).toBeCloseTo(best, 9);
        expect(picks.reduce((sum, pick, m) => sum + one.menus[m][pick][0], 0)).toBeCloseTo(best, 9);
        one.most.forEach((most, l) => {
          expect(picks.reduce((sum, pick, m) => sum + (one.menus[m][pick][1][l] ?? 0), 0)).toBeLessThanOrEqual(most);
        });
      }),
      { numRuns: 150 },
    );
    expect(Math.min(met.answers, met.none)).toBeGreaterThan(10);
  });

  it('decides parts apart: one without an answer is named by its own limits', () => {
    // The first two share limit 0 and take at least 2 + 2 of 5; the third takes 4 of 3 whatever it does.
    const menus = menusOf({
      most: [5, 3],
      menus: [
        [
          [0, [3, null]],
          [1, [2, null]],
        ],
        [
          [0, [3, null]],
          [2, [2, null]],
        ],
        [[0, [null, 4]]],
      ],
    });
    expect(select(menus, [5, 3]).failed).toEqual([{ limits: [1], why: 'infeasible' }]);
    expect(select(menus, [5, 4])).toEqual({ picks: [1, 0, 0], cost: 1, proven: true, failed: [] });
  });

  it('keeps sums of fractions that are just the limit, and no more', () => {
    // 0.1 + 0.2 is a little above 0.3 to a computer; 0.3000001 is above it to anyone.
    const menusOf2 = (second: number) =>
      menusOf({
        most: [0.3],
        menus: [
          [
            [0, [0.1]],
            [5, [0]],
          ],
          [
            [0, [second]],
            [7, [0]],
          ],
        ],
      });
    expect(select(menusOf2(0.2), [0.3])).toMatchObject({ picks: [0, 0], proven: true });
    expect(select(menusOf2(0.2000001), [0.3])).toMatchObject({ picks: [1, 0], proven: true });
  });

  it.each([
    ['tons and cents', 1e6, 1e-3],
    ['hairs and fortunes', 1e-5, 1e7],
  ])('whatever their sizes: %s', (_, amount, money) => {
    // Of 3 menus, 2 can do without their cheap option: the dearest to give up is kept.
    const takes = [5, 4, 3];
    const saves = [10, 9, 4];
    const menus = takes.map((one, m): Menu => {
      return { costs: Float64Array.of(0, saves[m] * money), uses: [{ limit: 0, amounts: Float64Array.of(one * amount, 0) }] };
    });
    // Room for 8 of 12: 4 must go. The 5 costs 10, the 4 costs 9, the 3 alone is too little: the 4.
    expect(select(menus, [8 * amount])).toMatchObject({ picks: [0, 1, 0], proven: true });
    // Room for 7: the 5 (10) goes, or 4 and 3 (13).
    expect(select(menus, [7 * amount])).toMatchObject({ picks: [1, 0, 0], proven: true });
  });

  /** Amounts from a seed, so many and so unlike that only few sums are alike. */
  const unlike = (menus: number, options: number) =>
    Array.from({ length: menus }, (_, m) => Float64Array.from({ length: options }, (__, o) => Math.sqrt(2 + 7 * m + 11 * o) % 1));

  it('says so where it stopped: what is best of many unlike is not shown within its nodes', async () => {
    // Each worth what it takes: which sum comes nearest below the bound is a matter of trying.
    const amounts = unlike(24, 6);
    const menus = amounts.map((list): Menu => ({ costs: list.map((one) => -one), uses: [{ limit: 0, amounts: list }] }));
    const few = await loadSolver(1);
    const { picks, proven, failed } = select(menus, [9.123456], few);
    const taken = picks.reduce((sum, pick, m) => sum + amounts[m][pick], 0);
    expect(failed).toEqual([]);
    expect(taken).toBeLessThanOrEqual(9.123456 + 1e-9);
    expect(taken).toBeGreaterThan(9.123456 * 0.99);
    expect(proven).toBe(false);
    expect(select(menus, [9.123456], few).picks).toEqual(picks);
    const none = await loadSolver(0);
    expect(select(menus, [9.123456], none).failed).toEqual([{ limits: [0], why: 'time' }]);
  });

  describe('a solver that is out by a hair', () => {
    // Options of 3 and 2, twice, within 5: one of the two must take the 2, which costs 1 in the first and 2 in the second.
    const tight: Case = {
      most: [5],
      menus: [
        [
          [0, [3]],
          [1, [2]],
        ],
        [
          [0, [3]],
          [2, [2]],
        ],
      ],
    };

    it('and proposes what breaks a limit is asked again without it', () => {
      // Limits widened for the solver alone, by more than they are broken by.
      const lax: Solver = {
        solve: ({ columns, rows }) =>
          SOLVER.solve({
            columns,
            rows: rows.map((row) => (row.low === -Infinity && row.high < 2 && row.high !== 1 ? { ...row, high: row.high * 9 } : row)),
          }),
      };
      expect(select(menusOf(tight), tight.most, lax)).toMatchObject({ picks: [1, 0], cost: 1, failed: [] });
    });

    it('and finds no answer is not believed: by how little the best breaks a limit is asked for', () => {
      let asked = 0;
      const blind: Solver = { solve: (programme) => (asked++ === 0 ? { status: 'infeasible' } : SOLVER.solve(programme)) };
      const { picks, failed, proven } = select(menusOf(tight), tight.most, blind);
      expect(failed).toEqual([]);
      expect(picks.reduce((sum, pick, m) => sum + (tight.menus[m][pick][1][0] ?? 0), 0)).toBeLessThanOrEqual(5);
      expect([asked, proven]).toEqual([2, false]);
    });
  });
});

describe('bestRows', () => {
  it('keeps what no other row is at most equal to throughout, and of equal rows the first', () => {
    const columns = [
      [1, 2, 2, 3, 1],
      [5, 4, 6, 4, 5],
    ];
    // 2 is beaten by 0 and 1, 3 by 1; 4 is 0 again.
    expect(bestRows([0, 1, 2, 3, 4], columns)).toEqual([0, 1]);
  });
});
