/**
 * One option of every menu at the least cost, within limits that menus share: exact, or with a word that it was stopped. Options
 * that can't be part of an answer go first; what then shares no limit is decided apart; the rest is searched between a bound from
 * prices on the limits (Lagrange) and the best answer so far. Counts steps and not time, so that it answers alike everywhere.
 */

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
  /** False where a search was stopped before it had shown that nothing is better. */
  readonly proven: boolean;
  /** Limits that no answer was found to keep together; empty where all are kept. */
  readonly failed: readonly { readonly limits: readonly number[]; readonly why: 'infeasible' | 'time' }[];
}

/** A search is content with this part of its cost after the first share of its steps [-]. */
const GAP = 0.01;
const FIRST_STEPS = 150_000;
const MOST_STEPS = 2_000_000;
const PRICE_ROUNDS = 200;

/** Rounding: amounts of a limit, costs of an answer [-]. */
const LIMIT_ROUNDING = 1e-11;
const COST_ROUNDING = 1e-10;

/** The parts that decide on each other, with the options and limits that still count. */
interface Part {
  readonly menus: readonly LiveMenu[];
  readonly limits: readonly number[];
  /** Of each limit of the part. */
  readonly most: readonly number[];
}

interface LiveMenu {
  readonly menu: number;
  readonly options: readonly number[];
  readonly costs: readonly number[];
  /** By limit of the part; null where the menu takes nothing of it. */
  readonly amounts: readonly (readonly number[] | null)[];
}

/** The best option of every menu. */
export function select(menus: readonly Menu[], most: readonly number[]): Selected {
  const failed: { limits: readonly number[]; why: 'infeasible' | 'time' }[] = [];
  const live = menus.map(({ costs }) => [...costs.keys()]);
  const empty = dropImpossible(menus, most, live);
  const picks = menus.map(() => 0);
  let proven = true;
  if (empty) return { picks, cost: costOf(menus, picks), proven, failed: [{ limits: empty, why: 'infeasible' }] };
  for (const part of partsOf(menus, most, live)) {
    const found = searchPart(part);
    if (found.picks === null) failed.push({ limits: part.limits, why: found.done ? 'infeasible' : 'time' });
    for (const [m, pick] of found.picks?.entries() ?? []) picks[part.menus[m].menu] = part.menus[m].options[pick];
    if (!found.done) proven = false;
  }
  return { picks, cost: costOf(menus, picks), proven, failed };
}

const costOf = (menus: readonly Menu[], picks: readonly number[]) => menus.reduce((sum, { costs }, m) => sum + costs[picks[m]], 0);
const allowed = (most: number) => most + LIMIT_ROUNDING * (1 + Math.abs(most));

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
    const ordered = inOrder(members, menus, limits);
    return { limits, most: limits.map((l) => most[l]), menus: ordered.map((menu) => undominated(menu, menus[menu], limits, live[menu])) };
  });
}

/** Each menu beside those it shares limits with, so that limits are decided early. */
function inOrder(members: readonly number[], menus: readonly Menu[], limits: readonly number[]): number[] {
  const active = new Set(limits);
  const limitsOf = new Map(members.map((m) => [m, menus[m].uses.map(({ limit }) => limit).filter((l) => active.has(l))]));
  const left = [...members];
  const touched = new Set<number>();
  const ordered: number[] = [];
  while (left.length > 0) {
    const known = (m: number) => (limitsOf.get(m) ?? []).filter((l) => touched.has(l)).length;
    const open = (m: number) => (limitsOf.get(m) ?? []).length - known(m);
    const next = left.reduce((best, m) => (known(m) > known(best) || (known(m) === known(best) && open(m) < open(best)) ? m : best));
    left.splice(left.indexOf(next), 1);
    ordered.push(next);
    for (const l of limitsOf.get(next) ?? []) touched.add(l);
  }
  return ordered;
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

/** Best picks of a part, as positions in its live options; `done` where nothing is left to search. */
interface Found {
  readonly picks: readonly number[] | null;
  readonly done: boolean;
}

function searchPart(part: Part): Found {
  if (part.limits.length === 0) return { picks: part.menus.map(() => 0), done: true };
  const search = new Search(part);
  return search.run();
}

/** Branch and bound over one part. */
class Search {
  readonly #part: Part;
  /** Price of each limit. */
  #prices: number[];
  #bound = -Infinity;
  #best: { cost: number; picks: number[] } | null = null;
  #steps = 0;
  #options: Ranked[] = [];

  constructor(part: Part) {
    this.#part = part;
    this.#prices = part.limits.map(() => 0);
  }

  run(): Found {
    this.#findPrices();
    for (const steps of [FIRST_STEPS, MOST_STEPS]) {
      this.#rank();
      this.#steps = steps;
      if (this.#descend(0, this.#bound, this.#part.most.slice())) return { picks: this.#best?.picks ?? null, done: true };
      if (this.#best && this.#best.cost - this.#bound <= GAP * Math.abs(this.#best.cost)) break;
    }
    return { picks: this.#best?.picks ?? null, done: false };
  }

  /** Prices on the limits whose bound is high, by subgradients; answers found by the way are kept. */
  #findPrices(): void {
    const { menus, most } = this.#part;
    let prices = this.#prices.slice();
    let pace = 1;
    let since = 0;
    const dearest = menus.reduce((sum, { costs }) => sum + Math.max(...costs.slice(-1)), 0);
    for (let round = 0; round < PRICE_ROUNDS; round++) {
      const { bound, over } = this.#priced(prices);
      if (bound > this.#bound) {
        this.#bound = bound;
        this.#prices = prices;
        since = 0;
      } else if (++since > 8) {
        pace /= 2;
        since = 0;
      }
      if (round % 20 === 0) this.#dive();
      const aim = this.#best?.cost ?? dearest;
      const length = over.reduce((sum, one) => sum + one * one, 0);
      if (length === 0 || aim - this.#bound <= COST_ROUNDING * Math.abs(aim)) break;
      const step = (pace * (aim - bound)) / length;
      prices = most.map((_, l) => Math.max(0, prices[l] + step * over[l]));
    }
    this.#dive();
  }

  /** The least cost with prices in place of limits, and by how much it takes more than each. */
  #priced(prices: readonly number[]): { bound: number; over: number[] } {
    const { menus, most } = this.#part;
    const over = most.map((one) => -one);
    let bound = -most.reduce((sum, one, l) => sum + one * prices[l], 0);
    for (const menu of menus) {
      const priced = pricedCosts(menu, prices);
      const best = priced.reduce((at, cost, o) => (cost < priced[at] ? o : at), 0);
      bound += priced[best];
      menu.amounts.forEach((amounts, l) => {
        over[l] += amounts?.[best] ?? 0;
      });
    }
    return { bound, over };
  }

  /** An answer by taking in turn what is best by price and still leaves the others room. */
  #dive(): void {
    this.#rank();
    this.#steps = this.#part.menus.length * 40;
    this.#descend(0, this.#bound, this.#part.most.slice());
  }

  /** Options by what they cost above the bound, without those that can't better the best; and what those behind take least and most. */
  #rank(): void {
    const { menus, most } = this.#part;
    const ceiling = this.#best ? this.#worthBelow() - this.#bound : Infinity;
    const ranked = menus.map((menu) => {
      const priced = pricedCosts(menu, this.#prices);
      const least = priced.reduce((min, cost) => Math.min(min, cost), Infinity);
      const order = [...priced.keys()].filter((o) => priced[o] - least < ceiling).sort((a, b) => priced[a] - priced[b] || a - b);
      return { order, above: order.map((o) => priced[o] - least) };
    });
    let [least, greatest] = [most.map(() => 0), most.map(() => 0)];
    this.#options = new Array<Ranked>(menus.length);
    for (let m = menus.length - 1; m >= 0; m--) {
      const { order, above } = ranked[m];
      this.#options[m] = { order, above, leastBehind: least, greatestBehind: greatest };
      const amounts = menus[m].amounts;
      least = least.map((sum, l) => sum + order.reduce((min, o) => Math.min(min, amounts[l]?.[o] ?? 0), Infinity));
      greatest = greatest.map((sum, l) => sum + order.reduce((max, o) => Math.max(max, amounts[l]?.[o] ?? 0), -Infinity));
    }
  }

  #worthBelow(): number {
    const best = this.#best?.cost ?? Infinity;
    return best === Infinity ? best : best - COST_ROUNDING * Math.max(1, Math.abs(best));
  }

  readonly #picks: number[] = [];

  /** Tries the options of a menu; false where the steps ran out. */
  #descend(m: number, bound: number, left: readonly number[]): boolean {
    const { menus, most } = this.#part;
    if (m === menus.length) {
      const cost = menus.reduce((sum, { costs }, i) => sum + costs[this.#picks[i]], 0);
      if (cost < this.#worthBelow()) this.#best = { cost, picks: this.#picks.slice() };
      return true;
    }
    const { order, above, leastBehind, greatestBehind } = this.#options[m];
    const { amounts } = menus[m];
    for (let i = 0; i < order.length; i++) {
      if (bound + above[i] >= this.#worthBelow()) return true;
      if (--this.#steps < 0) return false;
      const next = left.slice();
      let unused = 0;
      let fits = true;
      for (let l = 0; l < next.length && fits; l++) {
        next[l] -= amounts[l]?.[order[i]] ?? 0;
        fits = leastBehind[l] <= next[l] + LIMIT_ROUNDING * (1 + Math.abs(most[l]));
        // What a limit keeps free whatever comes was paid for in the bound.
        unused += this.#prices[l] * Math.max(0, next[l] - greatestBehind[l]);
      }
      if (!fits || bound + above[i] + unused >= this.#worthBelow()) continue;
      this.#picks[m] = order[i];
      if (!this.#descend(m + 1, bound + above[i], next)) return false;
    }
    return true;
  }
}

interface Ranked {
  readonly order: readonly number[];
  readonly above: readonly number[];
  readonly leastBehind: readonly number[];
  readonly greatestBehind: readonly number[];
}

function pricedCosts({ costs, amounts }: LiveMenu, prices: readonly number[]): number[] {
  const priced = costs.slice();
  amounts.forEach((column, l) => {
    if (column === null || prices[l] === 0) return;
    for (let o = 0; o < priced.length; o++) priced[o] += prices[l] * column[o];
  });
  return priced;
}
