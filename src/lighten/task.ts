/** What one aim asks for: which recipe each zone takes, in how many steps, under the windows found so far. */

import type { LightenAim, LightenHindrance } from '../model/lighten.ts';
import { priceOf } from './candidates.ts';
import { capRows } from './caps.ts';
import { depthRows } from './depth-rows.ts';
import type { Ground, Site } from './ground.ts';
import { type Amount, amountAfter, type Choice, type Cost, costAfter, type OptionSource, optionsOf } from './options.ts';
import { type Recipe, type Step, startOthersMm, stepMm } from './recipe.ts';
import { recipeLoads, recipesOf, type Trying } from './recipes.ts';
import { type Menu, select } from './selection.ts';
import type { Solver } from './solver.ts';
import { type BayLimit, loadAt, type Positions, positionsOf, type WindowPart, windowPart } from './windows.ts';

/** A zone with all its recipes; the first keeps it as it is. */
export interface ZoneTask extends OptionSource {
  readonly positions: Positions;
}

/** The same tasks with some rules on depths given up. */
export function withoutRules(tasks: readonly ZoneTask[], family: LightenHindrance): ZoneTask[] {
  return tasks.map((task) => ({ ...task, depths: task.depths.map((rows) => rows.filter((row) => row.family !== family)) }));
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
    depths: recipes.map((recipe) => [...depthRows(recipe, ground, site, recipes[0]), ...capRows(recipe, ground, trying.caps)]),
  };
}

/** Load that a zone brings to a window with a recipe [kN/m²]. */
function broughtBy({ loads }: ZoneTask, recipe: number, { share, roomM }: WindowPart, { s }: BayLimit): Amount {
  // Where stages are derived only the finished garden is known.
  const load = loads[recipe][s === null || loads[recipe].length === 1 ? 0 : s + 1];
  return { fixed: share * load.fixedKNm2 + roomM * load.perRoomKNm3, perStep: load.perStepKNm2.map((step) => share * step) };
}

/** A change for its own sake costs this much of what the aim counts [-]. */
const TIE = 1e-7;

/** What the aims of weight and price count. */
function affineAim({ ground, recipes, loads }: ZoneTask, r: number, aim: 'cost' | 'weight'): Amount {
  const recipe = recipes[r];
  const { areaM2, roomM3 } = ground;
  if (aim === 'weight') {
    const { fixedKNm2, perRoomKNm3, perStepKNm2 } = loads[r][0];
    return { fixed: areaM2 * fixedKNm2 + roomM3 * perRoomKNm3, perStep: perStepKNm2.map((step) => areaM2 * step) };
  }
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

/** Volume of each loose material in a zone, by the steps of a recipe [m³]. */
function volumesOf({ areaM2, roomM3 }: Ground, recipe: Recipe): Map<string, Amount> {
  const { layers, rest, steps } = recipe;
  const toM3 = (mm: number) => (areaM2 * mm) / 1000;
  const found = new Map<string, Amount>();
  layers.forEach(({ material, startMm }, i) => {
    if (material.density === undefined) return;
    const known = found.get(material.id) ?? { fixed: 0, perStep: steps.map(() => 0) };
    const own = i === rest ? roomM3 - toM3(startOthersMm(recipe)) : toM3(startMm);
    const grown = (step: Step) =>
      i === rest ? -stepMm(step) : step.moves.reduce((sum, { layer, mm }) => (layer === i ? sum + mm : sum), 0);
    found.set(material.id, { fixed: known.fixed + own, perStep: known.perStep.map((one, s) => one + toM3(grown(steps[s]))) });
  });
  return found;
}

/** Volume brought that was not there before, material by material: what becomes less counts next to nothing. */
function broughtM3({ ground, recipes }: ZoneTask, r: number): (counts: readonly number[]) => number {
  const before = volumesOf(ground, recipes[0]);
  const after = volumesOf(ground, recipes[r]);
  const more = [...new Set([...before.keys(), ...after.keys()])].map((material): Amount => {
    const { fixed, perStep } = after.get(material) ?? { fixed: 0, perStep: [] };
    return { fixed: fixed - (before.get(material)?.fixed ?? 0), perStep };
  });
  const counted = (m3: number) => Math.max(0, m3) + TIE * Math.abs(m3);
  return (counts) => more.reduce((sum, amount) => sum + counted(amountAfter(amount, counts)), 0);
}

/** What an aim counts above what there is now. */
function aboveKept(task: ZoneTask, r: number, aim: LightenAim): Cost {
  const { keeps } = task.recipes[r];
  if (aim === 'change') return broughtM3(task, r);
  const { fixed, perStep } = affineAim(task, r, aim);
  const kept = affineAim(task, 0, aim).fixed;
  return { fixed: fixed - kept + (keeps ? 0 : TIE * Math.abs(kept)), perStep };
}

/** An option with what the aim counts of it. */
interface Priced {
  readonly options: readonly Choice[];
  readonly costs: Float64Array;
  /** What the options bring to a window, by cut; null where the window does not reach the zone. */
  readonly brought: WeakMap<Cut, { readonly now: number; readonly amounts: Float64Array } | null>;
}

const pricedOf = new WeakMap<ZoneTask, Map<LightenAim, Priced>>();

/** The options of a zone, worked out once per task and aim. */
function priced(task: ZoneTask, aim: LightenAim): Priced {
  const known = pricedOf.get(task) ?? new Map<LightenAim, Priced>();
  pricedOf.set(task, known);
  const found = known.get(aim);
  if (found) return found;
  const objective = task.recipes.map((_, r) => aboveKept(task, r, aim));
  const options = optionsOf(task, (r) => objective[r]);
  const costs = Float64Array.from(options, ({ recipe, counts }) => costAfter(objective[recipe], counts));
  const made = { options, costs, brought: new WeakMap() };
  known.set(aim, made);
  return made;
}

function broughtTo(task: ZoneTask, { options, brought }: Priced, cut: Cut, site: Site) {
  const known = brought.get(cut);
  if (known !== undefined) return known;
  const part = windowPart(site.on, task.ground, task.positions, cut.cell);
  const byRecipe = task.recipes.map((_, r) => broughtBy(task, r, part, cut.limit));
  const amounts = () => Float64Array.from(options, ({ recipe, counts }) => amountAfter(byRecipe[recipe], counts));
  const made = part.share === 0 ? null : { now: byRecipe[0].fixed, amounts: amounts() };
  brought.set(cut, made);
  return made;
}

export interface Solved {
  readonly choices: readonly Choice[];
  readonly proven: boolean;
  /** Cuts that no answer was found to keep together. */
  readonly failed: readonly { readonly cuts: readonly Cut[]; readonly why: 'infeasible' | 'time' }[];
}

/** The best choices under some cuts. */
export function solveTasks(
  tasks: readonly ZoneTask[],
  aim: LightenAim,
  cuts: readonly Cut[],
  { site, solver }: { readonly site: Site; readonly solver: Solver },
): Solved {
  const all = tasks.map((task) => priced(task, aim));
  const most = cuts.map(({ limit, cell, mostKNm2 }) => mostKNm2 - loadAt(site.on, limit, cell));
  const menus = all.map((one, t): Menu => {
    const uses = cuts.flatMap((cut, limit) => {
      const brought = broughtTo(tasks[t], one, cut, site);
      if (brought === null) return [];
      most[limit] += brought.now;
      return [{ limit, amounts: brought.amounts }];
    });
    return { costs: one.costs, uses };
  });
  const { picks, proven, failed } = select(solver, menus, most);
  return {
    choices: picks.map((pick, t) => all[t].options[pick]),
    proven,
    failed: failed.map(({ limits, why }) => ({ cuts: limits.map((limit) => cuts[limit]), why })),
  };
}

/** Every zone at its least weight. */
export function lightestOf(tasks: readonly ZoneTask[]): Choice[] {
  return tasks.map((task) => priced(task, 'weight').options[0]);
}

const lightOptions = new WeakMap<ZoneTask, readonly Choice[]>();

/** Load of a window with every zone as light there as it may be, and what of it no zone here brings [kN/m²]. */
export function lightestAt(tasks: readonly ZoneTask[], limit: BayLimit, cell: number, site: Site): { kNm2: number; othersKNm2: number } {
  let others = loadAt(site.on, limit, cell);
  let lightest = 0;
  for (const task of tasks) {
    const part = windowPart(site.on, task.ground, task.positions, cell);
    if (part.share === 0) continue;
    const amounts = task.recipes.map((_, r) => broughtBy(task, r, part, limit));
    others -= amounts[0].fixed;
    const options = lightOptions.get(task) ?? optionsOf(task, null);
    lightOptions.set(task, options);
    lightest += options.reduce((least, { recipe, counts }) => Math.min(least, amountAfter(amounts[recipe], counts)), Infinity);
  }
  return { kNm2: others + lightest, othersKNm2: others };
}
