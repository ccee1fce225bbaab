/**
 * One option of every menu at the least cost, within limits that menus share: the best, or with a word that the solver was stopped.
 * Options that can't be part of an answer go first; what then shares no limit is decided apart, each part by the solver.
 */

import { allowed, type LiveMenu, type Part, solvePart } from './part-programme.ts';
import type { Solver } from './solver.ts';

/** What every option of a menu takes of a limit. */
export interface Use {
  readonly limit: number;
  readonly amounts: Float64Array;
}

export interface Menu {
  readonly costs: Float64Array;
  /** At most one per limit. */
  readonly uses: readonly Use[];
}

export interface Selected {
  /** One option per menu; the first where its part has no answer. */
  readonly picks: readonly number[];
  readonly cost: number;
  /** False where the solver was stopped before it had shown that nothing is better. */
  readonly proven: boolean;
  /** Limits that no answer was found to keep together; empty where all are kept. */
  readonly failed: readonly { readonly limits: readonly number[]; readonly why: 'infeasible' | 'time' }[];
}

/** The best option of every menu. */
export function select(solver: Solver, menus: readonly Menu[], most: readonly number[]): Selected {
  const failed: { limits: readonly number[]; why: 'infeasible' | 'time' }[] = [];
  const live = menus.map(({ costs }) => [...costs.keys()]);
  const empty = dropImpossible(menus, most, live);
  const picks = menus.map(() => 0);
  let proven = true;
  if (empty) return { picks, cost: costOf(menus, picks), proven, failed: [{ limits: empty, why: 'infeasible' }] };
  for (const part of partsOf(menus, most, live)) {
    const found = part.limits.length === 0 ? { picks: part.menus.map(() => 0), proven: true } : solvePart(solver, part);
    if (found.picks === null) failed.push({ limits: part.limits, why: found.proven ? 'infeasible' : 'time' });
    for (const [m, pick] of found.picks?.entries() ?? []) picks[part.menus[m].menu] = part.menus[m].options[pick];
    if (!found.proven) proven = false;
  }
  return { picks, cost: costOf(menus, picks), proven, failed };
}

const costOf = (menus: readonly Menu[], picks: readonly number[]) => menus.reduce((sum, { costs }, m) => sum + costs[picks[m]], 0);

function usersOf(menus: readonly Menu[], limits: number): { menu: number; use: Use }[][] {
  const users = Array.from({ length: limits }, (): { menu: number; use: Use }[] => []);
  menus.forEach(({ uses }, menu) => {
    for (const use of uses) users[use.limit].push({ menu, use });
  });
  return users;
}

/** Options that break a limit even beside the least of all others; gives the limits of a menu that has none left. */
function dropImpossible(menus: readonly Menu[], most: readonly number[], live: number[][]): number[] | null {
  const users = usersOf(menus, most.length);
  const droppers = menus.map(() => new Set<number>());
  const waiting = new Set(users.keys());
  for (const limit of waiting) {
    waiting.delete(limit);
    const least = users[limit].map(({ menu, use }) => live[menu].reduce((min, o) => Math.min(min, use.amounts[o]), Infinity));
    const sum = least.reduce((total, one) => total + one, 0);
    if (least.length === 0 && allowed(most[limit]) < 0) return [limit];
    for (const [u, { menu, use }] of users[limit].entries()) {
      const room = allowed(most[limit]) - (sum - least[u]);
      const kept = live[menu].filter((o) => use.amounts[o] <= room);
      if (kept.length === live[menu].length) continue;
      droppers[menu].add(limit);
      if (kept.length === 0) return [...new Set(users[limit].flatMap((user) => [...droppers[user.menu]]))];
      live[menu] = kept;
      for (const { limit: other } of menus[menu].uses) if (other !== limit) waiting.add(other);
    }
  }
  return null;
}

/** Menus that share a limit which not every choice keeps, together. */
function partsOf(menus: readonly Menu[], most: readonly number[], live: readonly number[][]): Part[] {
  const users = usersOf(menus, most.length);
  const greatest = ({ menu, use }: { menu: number; use: Use }) => live[menu].reduce((max, o) => Math.max(max, use.amounts[o]), -Infinity);
  const active = [...users.keys()].filter((l) => users[l].reduce((sum, user) => sum + greatest(user), 0) > allowed(most[l]));
  const root = [...menus.keys()];
  const rootOf = (m: number): number => (root[m] === m ? m : rootOf(root[m]));
  for (const l of active) for (const { menu } of users[l]) root[rootOf(menu)] = rootOf(users[l][0].menu);
  const together = new Map<number, number[]>();
  for (const m of menus.keys()) together.set(rootOf(m), [...(together.get(rootOf(m)) ?? []), m]);
  return [...together].map(([first, members]): Part => {
    const limits = active.filter((l) => rootOf(users[l][0].menu) === first);
    return { limits, most: limits.map((l) => most[l]), menus: members.map((menu) => undominated(menu, menus[menu], limits, live[menu])) };
  });
}

/** Options of which none is dearer and takes more of every limit than another, cheapest first. */
function undominated(menu: number, { costs, uses }: Menu, limits: readonly number[], live: readonly number[]): LiveMenu {
  const amountsOf = limits.map((l) => uses.find(({ limit }) => limit === l)?.amounts ?? null);
  const counted = amountsOf.filter((amounts) => amounts !== null);
  const rows = bestRows(live, [costs, ...counted]);
  return {
    menu,
    options: rows,
    costs: rows.map((o) => costs[o]),
    amounts: amountsOf.map((amounts) => amounts && rows.map((o) => amounts[o])),
  };
}

/** Of some rows of columns those that no other is at most equal to throughout, by the first column; of equal ones the first. */
export function bestRows(rows: readonly number[], columns: readonly ArrayLike<number>[]): number[] {
  const order = [...rows].sort((a, b) => {
    const differs = columns.find((column) => column[a] !== column[b]);
    return differs ? differs[a] - differs[b] : a - b;
  });
  const kept: number[] = [];
  for (const row of order) {
    // Neighbours in order are alike: what beats a row most often stands near the end.
    const at = kept.findLastIndex((other) => columns.every((column) => column[other] <= column[row]));
    if (at < 0) kept.push(row);
  }
  return kept;
}
