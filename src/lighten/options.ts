/** Every way to build one zone up that keeps its depths: recipe and thicknesses, without those that another beats in every respect. */

import type { DepthRow } from './depth-rows.ts';
import type { Ground } from './ground.ts';
import type { Recipe } from './recipe.ts';
import type { RecipeLoad } from './recipes.ts';
import { bestRows } from './selection.ts';

/** An amount affine in a recipe's steps. */
export interface Amount {
  readonly fixed: number;
  readonly perStep: readonly number[];
}

/** What an aim counts: affine in the steps, or any other way. */
export type Cost = Amount | ((counts: readonly number[]) => number);

/** What a zone takes: which of its recipes, and the number of each of its steps. */
export interface Choice {
  readonly recipe: number;
  readonly counts: readonly number[];
}

/** What options are made of: recipes of a zone with their loads and the rules on depths. */
export interface OptionSource {
  readonly ground: Ground;
  readonly recipes: readonly Recipe[];
  readonly loads: readonly (readonly RecipeLoad[])[];
  readonly depths: readonly (readonly DepthRow[])[];
}

/** An amount after so many steps. */
export function amountAfter({ fixed, perStep }: Amount, counts: readonly number[]): number {
  let value = fixed;
  for (let s = 0; s < perStep.length; s++) value += perStep[s] * counts[s];
  return value;
}

export function costAfter(cost: Cost, counts: readonly number[]): number {
  return typeof cost === 'function' ? cost(counts) : amountAfter(cost, counts);
}

/**
 * Options worth a place in the search, cheapest first. A zone's load in any window lies between those where its room is least and
 * where it is greatest: what is no better at either, in any stage, nor in what the aim counts, is never needed.
 * @param objective - what the aim counts, by recipe; null where only loads count
 */
export function optionsOf(source: OptionSource, objective: ((recipe: number) => Cost) | null): Choice[] {
  const columns = loadColumns(source);
  const all: Choice[] = [];
  const values: number[][] = [...columns, ...(objective ? [objective] : [])].map(() => []);
  source.recipes.forEach((recipe, r) => {
    const amounts = [...(objective ? [objective(r)] : []), ...columns.map((column) => column(r))];
    const counted = countsOf(recipe, source.depths[r], amounts);
    const measures = amounts.map((amount) => counted.map((counts) => costAfter(amount, counts)));
    for (const row of bestRows([...counted.keys()], measures)) {
      all.push({ recipe: r, counts: counted[row] });
      measures.forEach((measure, i) => {
        values[i].push(measure[row]);
      });
    }
  });
  return bestRows([...all.keys()], values).map((row) => all[row]);
}

type Column = (recipe: number) => Amount;

/** Load where the room is least and where it is greatest, of the finished garden and of every stage that is other. */
function loadColumns({ ground: { leastRoomM, greatestRoomM }, recipes, loads }: OptionSource): Column[] {
  const rooms = leastRoomM === greatestRoomM ? [leastRoomM] : [leastRoomM, greatestRoomM];
  const found = new Map<string, Column>();
  const stages = Math.min(...loads.map((list) => list.length));
  for (let k = 0; k < (recipes.length === 0 ? 0 : stages); k++) {
    for (const roomM of rooms) {
      const column = (r: number): Amount => {
        const { fixedKNm2, perRoomKNm3, perStepKNm2 } = loads[r][k];
        return { fixed: fixedKNm2 + perRoomKNm3 * roomM, perStep: perStepKNm2 };
      };
      const key = JSON.stringify(recipes.map((_, r) => column(r)));
      if (!found.has(key)) found.set(key, column);
    }
  }
  return [...found.values()];
}

/** Numbers of steps that keep the rows on depths; a step that makes everything less, or nothing less, is taken as far as it goes. */
function countsOf({ steps }: Recipe, depths: readonly DepthRow[], amounts: readonly Cost[]): number[][] {
  const ways = (s: number) => amounts.map((amount) => (typeof amount === 'function' ? Number.NaN : amount.perStep[s]));
  const isOneWay = (s: number) => ways(s).every((way) => way <= 0) || ways(s).every((way) => way >= 0);
  const last = Math.max(0, [...steps.keys()].find(isOneWay) ?? steps.length - 1);
  const order = [...[...steps.keys()].filter((s) => s !== last), last];
  const found: number[][] = [];
  const counts = steps.map(() => 0);
  const fits = () => depths.every((row) => amountAfter(row, counts) >= 0);
  const fill = (i: number): void => {
    const s = order[i];
    const { from, to } = steps[s];
    if (i < order.length - 1) {
      for (counts[s] = from; counts[s] <= to; counts[s]++) fill(i + 1);
      return;
    }
    // Rows are linear: what fits lies in one stretch, and only its end counts where the way is one.
    const down = isOneWay(s) && ways(s).some((way) => way < 0);
    for (let n = 0; n <= to - from; n++) {
      counts[s] = down ? to - n : from + n;
      if (!fits()) continue;
      found.push([...counts]);
      if (isOneWay(s)) return;
    }
  };
  if (steps.length > 0) fill(0);
  else if (fits()) found.push([]);
  return found;
}
