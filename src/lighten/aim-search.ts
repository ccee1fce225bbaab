/**
 * The search for one aim. A selection under the windows known so far proposes, the calculation behind every report judges; places
 * found over their limit become windows of the next selection, until none is left.
 */

import type { Evaluation } from '../core/evaluation.ts';
import type { LightenAim, LightenLeftOut, LightenUnmet, LightenVariant } from '../model/lighten.ts';
import type { Report } from '../model/report.ts';
import { capKey, changeMm, lower, raise } from './caps.ts';
import type { Choice } from './options.ts';
import { type Cut, type Solved, solveTasks, type ZoneTask } from './task.ts';
import { evaluated, keyOf, reportIn, type Trial, type Work } from './trial.ts';
import { cameUp, newFaults, variantOf, waterCell } from './variant.ts';
import { type BayLimit, greatestOf, isOver, loadAt } from './windows.ts';

/** Rounds of adding windows, and of leaving out what breaks a rule. */
const MOST_ROUNDS = 80;

type Why = LightenUnmet['why'];

interface Aiming extends Work {
  readonly hopeless: ReadonlySet<string>;
  /** Limits that can be kept singly, but that no answer was found for. */
  readonly aside: Map<string, Why>;
  readonly cuts: Map<string, Cut>;
  /** Something was held back that may not be to blame. */
  heldTooMuch: boolean;
}

export interface Aim {
  readonly aim: LightenAim;
  readonly hopeless: ReadonlySet<string>;
  /** Makes the tasks of zones anew, or of those that changed. */
  readonly tasksOf: (before: readonly ZoneTask[], changed: ReadonlySet<string>) => ZoneTask[];
}

/** The answer for an aim, or why there is none. */
export function solveAim(work: Work, { aim, hopeless, tasksOf }: Aim): LightenVariant | Why {
  const aiming: Aiming = { ...work, hopeless, aside: new Map(), cuts: new Map(), heldTooMuch: false };
  let tasks = tasksOf([], new Set());
  let sound: LightenVariant | Why | null = null;
  for (let round = 1; round <= MOST_ROUNDS; round++) {
    const solved = solveOrSetAside(aiming, tasks, aim);
    if (typeof solved === 'string') return sound ?? solved;
    const next = evaluated(work, tasks, solved.choices);
    work.onProgress({ aim, round, baysLeft: baysLeft(aiming, next.on) });
    if (addCuts(aiming, next.on, tasks)) continue;
    const tested = { ...next, report: reportIn(work.project, next) };
    if (reserveForWater(aiming, tested, tasks)) continue;
    const { faults, isShared } = newFaults(work, tested, tasks, solved.choices);
    if (isShared) aiming.heldTooMuch = true;
    if (faults.length === 0) sound = toldAs(aiming, { aim, tasks, solved, tested });
    const tried = settleCaps(work, tasks, solved.choices, faults);
    // A limit may have been given up for a change that was held back too far.
    if (tried.size > 0) aiming.aside.clear();
    if (sound !== null && tried.size === 0) return sound;
    tasks = tasksOf(tasks, tried);
  }
  return sound === null || typeof sound === 'string' ? 'time' : { ...sound, proven: false };
}

/** Takes down what broke a rule and what held; gives the zones that may take less of a change now, or more. */
function settleCaps(
  { caps, leftOut }: Work,
  tasks: readonly ZoneTask[],
  choices: readonly Choice[],
  faults: readonly LightenLeftOut[],
): Set<string> {
  const tried = new Set(faults.map(({ zone }) => zone));
  leftOut.push(...faults);
  tasks.forEach(({ ground, recipes }, t) => {
    const own = faults.filter(({ zone }) => zone === ground.id);
    for (const { change, fromMm } of own) lower(caps, capKey(ground, change), fromMm);
    for (const change of recipes[choices[t].recipe].changes) {
      if (own.some((fault) => fault.change === change)) continue;
      if (raise(caps, capKey(ground, change), changeMm(recipes, choices[t], change, ground))) tried.add(ground.id);
    }
  });
  return tried;
}

/** Bays over a limit that may yet be kept. */
function baysLeft({ limits, hopeless, aside }: Aiming, on: Evaluation): number {
  const open = limits.filter((limit) => !hopeless.has(keyOf(limit)) && !aside.has(keyOf(limit)));
  return new Set(open.filter((limit) => isOver(greatestOf(on, limit).kNm2, limit.permittedKNm2)).map(({ bay }) => bay)).size;
}

/** The best choices; where some limits have none together, the one that is broken most gives way, until the others have. */
function solveOrSetAside(aiming: Aiming, tasks: readonly ZoneTask[], aim: LightenAim): Solved | Why {
  const { site, cuts, aside, hopeless } = aiming;
  for (;;) {
    const solved = solveTasks(tasks, aim, [...cuts.values()], aiming);
    const [failed] = solved.failed;
    if (!failed) return solved;
    const why = failed.why === 'time' ? 'time' : 'no common answer';
    const open = failed.cuts.map(({ limit }) => limit).filter((limit) => !hopeless.has(keyOf(limit)) && !aside.has(keyOf(limit)));
    if (open.length === 0) return why;
    const overBy = (limit: BayLimit) => greatestOf(site.on, limit).kNm2 / limit.permittedKNm2;
    const worst = open.reduce((most, limit) => (overBy(limit) > overBy(most) ? limit : most));
    aside.set(keyOf(worst), why);
    for (const [key, { limit }] of cuts) if (limit === worst) cuts.delete(key);
  }
}

interface Tested {
  readonly aim: LightenAim;
  readonly tasks: readonly ZoneTask[];
  readonly solved: Solved;
  readonly tested: Trial & { readonly report: Report };
}

function toldAs({ aside, cuts, limits, project, heldTooMuch }: Aiming, { aim, tasks, solved, tested }: Tested): LightenVariant | Why {
  const unmet = limits.flatMap((limit): LightenUnmet[] => {
    const why = aside.get(keyOf(limit));
    const { bay, kind, stage, permittedKNm2 } = limit;
    const afterKNm2 = greatestOf(tested.on, limit).kNm2;
    if (why === undefined || !isOver(afterKNm2, permittedKNm2)) return [];
    return [{ bay, kind, stage, permittedKNm2, beforeKNm2: greatestOf(project.evaluation, limit).kNm2, afterKNm2, why }];
  });
  const keepsAll = solved.choices.every(({ recipe }, t) => tasks[t].recipes[recipe].keeps);
  const [first] = unmet;
  if (keepsAll && first) return first.why;
  const shaping = new Set([...cuts.values()].map(({ limit }) => keyOf(limit)));
  const isBinding = (limit: BayLimit) => shaping.has(keyOf(limit));
  const { choices } = solved;
  const proven = solved.proven && unmet.length === 0 && !heldTooMuch;
  return variantOf({ aim, proven, unmet, project, limits, isBinding, tasks, choices, next: tested });
}

/** What a limit lets a cell carry. One that can't be kept must not get worse anywhere. */
function mostOf({ site, hopeless, aside }: Aiming, limit: BayLimit): (cell: number) => number {
  const { permittedKNm2 } = limit;
  const key = keyOf(limit);
  if (!hopeless.has(key) && !aside.has(key)) return () => permittedKNm2;
  return (cell) => Math.max(permittedKNm2, loadAt(site.on, limit, cell));
}

/** Keeps free what water needs where a proposal would leave it none; false where that is nowhere. */
function reserveForWater(
  { limits, project, aside, cuts, seen }: Aiming,
  { on, report }: Tested['tested'],
  tasks: readonly ZoneTask[],
): boolean {
  let found = false;
  for (const finding of cameUp(project.report, report)) {
    const { value, where } = finding;
    const own = limits.filter(({ bay, kind }) => bay === where.bay && kind !== 'stage');
    const cell = waterCell(finding, on);
    if (cell === null || own.length === 0 || own.some((limit) => aside.has(keyOf(limit)))) continue;
    if (!tasks.some(({ ground }) => seen(cell).includes(ground.z))) continue;
    const [limit] = own;
    // Nobody says which limit is meant; imposed loads stay the same, so that one row holds for both.
    const overKNm2 = (value / 100 - 1) * Math.max(...own.map(({ permittedKNm2 }) => permittedKNm2));
    cuts.set(`water ${keyOf(limit)} ${cell}`, { limit, cell, mostKNm2: loadAt(on, limit, cell) - overKNm2 - 1e-6 });
    found = true;
  }
  return found;
}

/** Windows over the worst places of every limit that the proposal breaks, one per zone below; false where it breaks none. */
function addCuts(aiming: Aiming, next: Evaluation, tasks: readonly ZoneTask[]): boolean {
  const { site, limits, cuts } = aiming;
  let added = false;
  for (const limit of limits) {
    const mostAt = mostOf(aiming, limit);
    const rounding = limit.permittedKNm2 * 5e-10;
    if (greatestOf(next, limit).kNm2 - limit.permittedKNm2 <= rounding) continue;
    const worst = new Map<number, { cell: number; by: number }>();
    for (const cell of site.on.prepared.bays.judged[limit.b]) {
      const by = loadAt(next, limit, cell) - mostAt(cell);
      if (!(by > rounding)) continue;
      const zone = tasks.findIndex(({ positions }) => positions.has(cell));
      if (by > (worst.get(zone)?.by ?? 0)) worst.set(zone, { cell, by });
    }
    for (const { cell, by } of worst.values()) {
      added = true;
      const key = `${keyOf(limit)} ${cell}`;
      // A place that is in already and still over: cells cut by the edge came out otherwise than their row has it.
      const known = cuts.get(key);
      cuts.set(key, { limit, cell, mostKNm2: known ? known.mostKNm2 - (by + 1e-9) : mostAt(cell) });
    }
  }
  return added;
}
