/**
 * One option of every menu of a part at the least cost, by the solver: a column per option, one option per menu, a row per limit.
 * Its answers are taken as proposals: limits are summed up anew without tolerance, and that there is no answer is shown by how far the best comes.
 */

import type { Column, Programme, Row, Solver } from './solver.ts';

/** The parts that decide on each other, with the options and limits that still count. */
export interface Part {
  readonly menus: readonly LiveMenu[];
  readonly limits: readonly number[];
  /** Of each limit of the part. */
  readonly most: readonly number[];
}

export interface LiveMenu {
  readonly menu: number;
  readonly options: readonly number[];
  readonly costs: readonly number[];
  /** By limit of the part; null where the menu takes nothing of it. */
  readonly amounts: readonly (readonly number[] | null)[];
}

/** Best picks of a part, as positions in its live options; `proven` where nothing else can be better. */
export interface Found {
  readonly picks: readonly number[] | null;
  readonly proven: boolean;
}

/** Rounding of sums [-]. */
const LIMIT_ROUNDING = 1e-11;
/** The greatest difference in cost becomes this, so that a hundred-millionth of it is still far above the solver's tolerance [-]. */
const COST_SPAN = 1000;
/** More than this share of its room must a limit be broken by, for nothing to keep it; the solver may be wrong below [-]. */
const SURELY_OVER = 1e-6;
/** Proposals that keep a limit only within the solver's tolerance, ruled out one after the other. */
const MOST_COVERS = 50;

/** A limit with its rounding. */
export const allowed = (most: number) => most + LIMIT_ROUNDING * (1 + Math.abs(most));

/** Best picks; without an answer, `proven` says that there is none. */
export function solvePart(solver: Solver, part: Part): Found {
  const covers: Row[] = [];
  for (let round = 0; round <= MOST_COVERS; round++) {
    const found = proposed(solver, part, covers);
    if (found.picks === null) return found;
    const broken = brokenLimit(part, found.picks);
    if (broken < 0) return found;
    covers.push(coverOf(part, broken, found.picks));
  }
  return { picks: null, proven: false };
}

function proposed(solver: Solver, part: Part, covers: readonly Row[]): Found {
  const solution = solver.solve(programmeOf(part, covers));
  if (solution.status !== 'infeasible') {
    return { picks: solution.values && picksOf(part, solution.values), proven: solution.status === 'optimal' };
  }
  // The same with limits that may be broken, by as little as can be: always answered, so that the solver can't be wrong by a hair.
  const nearest = solver.solve(nearestOf(part, covers));
  if (nearest.status === 'infeasible') return { picks: null, proven: true };
  const { values } = nearest;
  const by = values?.at(-1) ?? 0;
  if (values && by <= SURELY_OVER) return { picks: picksOf(part, values), proven: false };
  return { picks: null, proven: nearest.status === 'optimal' };
}

/** Column of the first option of each menu, and the number of columns. */
function firstColumns({ menus }: Part): number[] {
  const first = [0];
  for (const { options } of menus) first.push(first[first.length - 1] + options.length);
  return first;
}

function picksOf(part: Part, values: Float64Array): number[] {
  const first = firstColumns(part);
  return part.menus.map(({ options }, m) => options.reduce((best, _, o) => (values[first[m] + o] > values[first[m] + best] ? o : best), 0));
}

/** Costs and amounts count from the least of each menu, and by the greatest difference there is: all of them come out alike in size. */
function programmeOf(part: Part, covers: readonly Row[]): Programme {
  const first = firstColumns(part);
  const spans = part.menus.map(({ costs }) => greatest(costs) - least(costs));
  const unit = COST_SPAN / (greatest(spans) || 1);
  const columns = part.menus.flatMap(({ costs }) => {
    const from = least(costs);
    return costs.map((cost): Column => ({ cost: (cost - from) * unit, most: 1, whole: true }));
  });
  const oneEach = part.menus.map(({ options }, m): Row => {
    return { factors: options.map((_, o) => [first[m] + o, 1] as const), low: 1, high: 1 };
  });
  return { columns, rows: [...oneEach, ...part.limits.map((_, l) => limitRow(part, l, first)), ...covers] };
}

function limitRow({ menus, most }: Part, l: number, first: readonly number[]): Row {
  const users = menus.flatMap(({ amounts }, m) => {
    const own = amounts[l];
    return own ? [{ own, from: least(own), column: first[m] }] : [];
  });
  const room = allowed(most[l]) - users.reduce((sum, { from }) => sum + from, 0);
  const unit = Math.max(room, ...users.map(({ own, from }) => greatest(own) - from));
  const factors = users.flatMap(({ own, from, column }) => own.map((amount, o) => [column + o, (amount - from) / unit] as const));
  return { factors: factors.filter(([, factor]) => factor > 0), low: -Infinity, high: room / unit };
}

/** Costs nothing but what the limit broken most is broken by, in the unit of its row: the last column. */
function nearestOf(part: Part, covers: readonly Row[]): Programme {
  const { columns, rows } = programmeOf(part, covers);
  const [firstLimit, end] = [part.menus.length, part.menus.length + part.limits.length];
  return {
    columns: [...columns.map((column) => ({ ...column, cost: 0 })), { cost: 1, most: part.menus.length + 1, whole: false }],
    rows: rows.map((row, r) => (r < firstLimit || r >= end ? row : { ...row, factors: [...row.factors, [columns.length, -1] as const] })),
  };
}

function brokenLimit({ menus, most }: Part, picks: readonly number[]): number {
  return most.findIndex((one, l) => menus.reduce((sum, { amounts }, m) => sum + (amounts[l]?.[picks[m]] ?? 0), 0) > allowed(one));
}

/** What breaks a limit breaks it as well with anything that takes as much or more: not all menus may take such. */
function coverOf(part: Part, l: number, picks: readonly number[]): Row {
  const first = firstColumns(part);
  const users = part.menus.flatMap(({ amounts }, m) => {
    const own = amounts[l];
    return own ? [own.flatMap((amount, o) => (amount >= own[picks[m]] ? [[first[m] + o, 1] as const] : []))] : [];
  });
  return { factors: users.flat(), low: -Infinity, high: users.length - 1 };
}

const least = (list: readonly number[]) => list.reduce((min, one) => Math.min(min, one), Infinity);
const greatest = (list: readonly number[]) => list.reduce((max, one) => Math.max(max, one), -Infinity);
