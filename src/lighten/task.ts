/** The programme of one aim: which recipe each zone takes, in how many steps, under the windows found so far. */

import type { LightenAim, LightenHindrance } from '../model/lighten.ts';
import { priceOf } from './candidates.ts';
import { type DepthRow, depthRows } from './depth-rows.ts';
import type { Ground, Site } from './ground.ts';
import { type Answer, type Programme, type Row, solveProgramme } from './programme.ts';
import { type Recipe, startOthersMm, stepMm } from './recipe.ts';
import { type RecipeLoad, recipeLoads, recipesOf, type Trying } from './recipes.ts';
import { type BayLimit, loadAt, type Positions, positionsOf, type WindowPart, windowPart } from './windows.ts';

/** A zone with all its recipes; the first keeps it as it is. */
export interface ZoneTask {
  readonly ground: Ground;
  readonly positions: Positions;
  readonly recipes: readonly Recipe[];
  readonly loads: readonly (readonly RecipeLoad[])[];
  readonly depths: readonly (readonly DepthRow[])[];
}

/** The same tasks with some rules on depths given up. */
export function withoutRules(tasks: readonly ZoneTask[], family: LightenHindrance): ZoneTask[] {
  return tasks.map((task) => ({ ...task, depths: task.depths.map((rows) => rows.filter((row) => row.family !== family)) }));
}

/** What a zone takes: which of its recipes, and the number of each of its steps. */
export interface Choice {
  readonly recipe: number;
  readonly counts: readonly number[];
}

/** A window that must stay within a load [kN/m²]. */
export interface Cut {
  readonly limit: BayLimit;
  readonly cell: number;
  readonly mostKNm2: number;
}

export function zoneTask(ground: Ground, site: Site, trying: Trying): ZoneTask {
  const recipes = recipesOf(ground, site, trying);
  return {
    ground,
    positions: positionsOf(site.on, ground),
    recipes,
    loads: recipes.map((recipe) => recipeLoads(recipe, ground, site)),
    depths: recipes.map((recipe) => depthRows(recipe, ground, site, recipes[0])),
  };
}

/** An amount affine in a recipe's steps. */
interface Amount {
  readonly fixed: number;
  readonly perStep: readonly number[];
}

/** Load that a zone brings to a window with a recipe [kN/m²]. */
function broughtBy({ loads }: ZoneTask, recipe: number, { share, roomM }: WindowPart, { s }: BayLimit): Amount {
  // Where stages are derived only the finished garden is known.
  const load = loads[recipe][s === null || loads[recipe].length === 1 ? 0 : s + 1];
  return { fixed: share * load.fixedKNm2 + roomM * load.perRoomKNm3, perStep: load.perStepKNm2.map((step) => share * step) };
}

/** Without any cut: what an aim counts. */
export function aimOf(task: ZoneTask, r: number, aim: LightenAim): Amount {
  const { ground, recipes, loads } = task;
  const recipe = recipes[r];
  const { areaM2, roomM3 } = ground;
  if (aim === 'weight') {
    const { fixedKNm2, perRoomKNm3, perStepKNm2 } = loads[r][0];
    return { fixed: areaM2 * fixedKNm2 + roomM3 * perRoomKNm3, perStep: perStepKNm2.map((step) => areaM2 * step) };
  }
  if (aim === 'change') return broughtM3(task, recipe);
  const prices = recipe.layers.map(({ material }) => priceOf(material) ?? { perM2: 0, perM3: 0 });
  const perM3 = (i: number) => prices[i].perM3;
  const rest = perM3(recipe.rest);
  const fixed = recipe.layers.reduce((sum, { startMm }, i) => {
    return sum + areaM2 * prices[i].perM2 + (i === recipe.rest ? 0 : (areaM2 * (perM3(i) - rest) * startMm) / 1000);
  }, roomM3 * rest);
  const perStep = recipe.steps.map(({ moves }) =>
    moves.reduce((sum, { layer, mm }) => sum + (areaM2 * (perM3(layer) - rest) * mm) / 1000, 0),
  );
  return { fixed, perStep };
}

/**
 * Volume of material that was not there before. What was there and shares its place with something new becomes less, and counts nothing;
 * where nothing is new, the layer that gives way takes what a thinner substrate leaves.
 */
function broughtM3({ ground: { areaM2, roomM3 }, recipes: [present] }: ZoneTask, recipe: Recipe): Amount {
  const { layers, rest, steps } = recipe;
  const known = new Set(present.layers.map(({ material }) => material.id));
  const isNew = layers.map(({ material }) => material.density !== undefined && !known.has(material.id));
  const toM3 = (mm: number) => (areaM2 * mm) / 1000;
  const restGains = isNew[rest] || !isNew.includes(true);
  const restM3 = isNew[rest] ? roomM3 - toM3(startOthersMm(recipe)) : 0;
  return {
    fixed: layers.reduce((sum, { startMm }, i) => (i !== rest && isNew[i] ? sum + toM3(startMm) : sum), restM3),
    perStep: steps.map((step) => {
      const brought = step.moves.reduce((sum, { layer, mm }) => (layer !== rest && isNew[layer] ? sum + mm : sum), 0);
      return toM3(brought - (restGains ? stepMm(step) : 0));
    }),
  };
}

/** A change for its own sake costs this much of what the aim counts [-]. */
const TIE = 1e-7;

export interface Solved {
  readonly status: Answer['status'];
  readonly choices: readonly Choice[];
}

/** Columns of a task's recipes in the programme: of each recipe whether it is taken, then its steps. */
export function programmeOf(
  tasks: readonly ZoneTask[],
  objective: (task: ZoneTask, recipe: number) => Amount,
  cuts: readonly Cut[],
  site: Site,
): Programme {
  const columns: { cost: number; high: number }[] = [];
  const rows: Row[] = [];
  const places = tasks.map((task) =>
    task.recipes.map((recipe, r) => {
      const { fixed, perStep } = objective(task, r);
      const kept = objective(task, 0).fixed;
      const first = columns.length;
      // One recipe of a zone is taken, and steps go with theirs: rows hold both.
      columns.push({ cost: fixed - kept + (recipe.keeps ? 0 : TIE * Math.abs(kept)), high: Infinity });
      columns.push(...recipe.steps.map((_, s) => ({ cost: perStep[s], high: Infinity })));
      recipe.steps.forEach(({ from, to }, s) => {
        rows.push({
          entries: [
            [first + 1 + s, 1],
            [first, -to],
          ],
          low: -Infinity,
          high: 0,
        });
        if (from > 0)
          rows.push({
            entries: [
              [first + 1 + s, 1],
              [first, -from],
            ],
            low: 0,
            high: Infinity,
          });
      });
      for (const depth of task.depths[r]) {
        rows.push({ entries: entriesOf(first, depth), low: 0, high: Infinity });
      }
      return first;
    }),
  );
  for (const starts of places) rows.push({ entries: starts.map((first) => [first, 1]), low: 1, high: 1 });
  for (const cut of cuts) rows.push(cutRow(tasks, places, cut, site));
  return { columns, rows };
}

function entriesOf(first: number, { fixed, perStep }: Amount): [number, number][] {
  return [[first, fixed], ...perStep.map((step, s): [number, number] => [first + 1 + s, step])];
}

function cutRow(tasks: readonly ZoneTask[], places: readonly (readonly number[])[], { limit, cell, mostKNm2 }: Cut, site: Site): Row {
  let now = 0;
  const entries = tasks.flatMap((task, t) => {
    const part = windowPart(site.on, task.ground, task.positions, cell);
    if (part.share === 0) return [];
    now += broughtBy(task, 0, part, limit).fixed;
    return task.recipes.flatMap((_, r) => entriesOf(places[t][r], broughtBy(task, r, part, limit)));
  });
  const others = loadAt(site.on, limit, cell) - now;
  return { entries, low: -Infinity, high: mostKNm2 - others };
}

/** The best choices, as the solver gives them. */
export function solveTasks(
  tasks: readonly ZoneTask[],
  objective: (task: ZoneTask, recipe: number) => Amount,
  cuts: readonly Cut[],
  site: Site,
): Solved {
  const answer = solveProgramme(programmeOf(tasks, objective, cuts, site));
  if (!('values' in answer)) return { status: answer.status, choices: [] };
  let column = 0;
  const choices = tasks.map(({ recipes }) => {
    let choice: Choice = { recipe: 0, counts: [] };
    recipes.forEach(({ steps }, r) => {
      if (answer.values[column] === 1) choice = { recipe: r, counts: answer.values.slice(column + 1, column + 1 + steps.length) };
      column += 1 + steps.length;
    });
    return choice;
  });
  return { status: answer.status, choices };
}

/** Load of a window with every zone as light there as it may be, and what of it no zone here brings [kN/m²]. */
export function lightestAt(tasks: readonly ZoneTask[], limit: BayLimit, cell: number, site: Site): { kNm2: number; othersKNm2: number } {
  let others = loadAt(site.on, limit, cell);
  let lightest = 0;
  for (const task of tasks) {
    const part = windowPart(site.on, task.ground, task.positions, cell);
    if (part.share === 0) continue;
    others -= broughtBy(task, 0, part, limit).fixed;
    const brought = (of: ZoneTask, r: number) => broughtBy(of, r, part, limit);
    const [choice] = solveTasks([task], brought, [], site).choices;
    const amount = brought(task, choice?.recipe ?? 0);
    lightest += amount.perStep.reduce((sum, step, s) => sum + step * (choice?.counts[s] ?? 0), amount.fixed);
  }
  return { kNm2: others + lightest, othersKNm2: others };
}
