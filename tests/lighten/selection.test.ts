/** The search for one option per menu against another solver and against all combinations, on random small cases in whole numbers. */

import fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { bestRows, type Menu, select } from '../../src/lighten/selection.ts';

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

/** In the text form that most solvers read. */
function lpText({ menus, most }: Case): string {
  const name = (m: number, o: number) => `x${m}_${o}`;
  const sum = (of: (m: number, o: number) => number) =>
    menus.flatMap((options, m) => options.map((_, o) => `${of(m, o) < 0 ? '-' : '+'} ${Math.abs(of(m, o))} ${name(m, o)}`)).join(' ');
  return [
    'Minimize',
    ` cost: ${sum((m, o) => menus[m][o][0])}`,
    'Subject To',
    ...menus.map((options, m) => ` m${m}: ${options.map((_, o) => name(m, o)).join(' + ')} = 1`),
    ...most.map((one, l) => ` l${l}: ${sum((m, o) => menus[m][o][1][l] ?? 0)} <= ${one}`),
    'Binary',
    ` ${menus.flatMap((options, m) => options.map((_, o) => name(m, o))).join(' ')}`,
    'End',
  ].join('\n');
}

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
  it('finds what trying all combinations finds, and what another solver finds', async () => {
    const highs = await loadHighs();
    const met = { answers: 0, none: 0 };
    fc.assert(
      fc.property(cases, (one) => {
        const best = tried(one);
        const { picks, cost, proven, failed } = select(menusOf(one), one.most);
        const other = highs.solve(lpText(one));
        expect(proven).toBe(true);
        if (best === null) {
          met.none++;
          expect(failed.length).toBeGreaterThan(0);
          expect(other.Status).toBe('Infeasible');
          return;
        }
        met.answers++;
        expect(failed).toEqual([]);
        expect(cost).toBeCloseTo(best, 9);
        expect(other.ObjectiveValue).toBeCloseTo(best, 6);
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

  it('says so where it stopped: what is best of many unlike is not shown within its steps', () => {
    // Fractions of roots, each worth what it takes: which sum comes nearest below the bound is a matter of trying.
    const amounts = Array.from({ length: 24 }, (_, m) => Float64Array.from({ length: 6 }, (__, o) => Math.sqrt(2 + 7 * m + 11 * o) % 1));
    const menus = amounts.map((list): Menu => ({ costs: list.map((one) => -one), uses: [{ limit: 0, amounts: list }] }));
    const { picks, proven, failed } = select(menus, [9.123456]);
    const taken = picks.reduce((sum, pick, m) => sum + amounts[m][pick], 0);
    expect(failed).toEqual([]);
    expect(taken).toBeLessThanOrEqual(9.123456 + 1e-9);
    // Within the gap that it is content with.
    expect(taken).toBeGreaterThan(9.123456 * 0.99);
    expect(proven).toBe(false);
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
