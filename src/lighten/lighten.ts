/**
 * Lightens zones that are too heavy for their bays. A linear programme proposes, the calculation behind every report
 * judges; places found over their limit become rows of the next programme, until none is left.
 */

import { evaluate } from '../core/evaluate.ts';
import type { Evaluation } from '../core/evaluation.ts';
import {
  LIGHTEN_AIMS,
  LIGHTEN_MEANS,
  type LightenAim,
  type LightenAnswer,
  type LightenLeftOut,
  type LightenObstacle,
  type LightenOptions,
  type LightenPassing,
  type LightenVariant,
} from '../model/lighten.ts';
import type { Report } from '../model/report.ts';
import type { Project } from '../project/evaluate-project.ts';
import { reportWithFacts } from '../project/report.ts';
import { type ResolvedScene, resolveScene } from '../project/resolve-scene.ts';
import { speakProject } from '../project/speak.ts';
import { applyChoices } from './apply.ts';
import { type Candidates, candidatesOf, priceOf } from './candidates.ts';
import { type Ground, groundsOf, type Site, siteOf } from './ground.ts';
import { findObstacles } from './obstacles.ts';
import { restOf, type Trying } from './recipes.ts';
import { aimOf, type Choice, type Cut, solveTasks, type ZoneTask, zoneTask } from './task.ts';
import { cameUp, newFaults, variantOf } from './variant.ts';
import { type BayLimit, cellsOver, greatestOf, isOver, limitsOf, loadAt, positionsOf, windowPart } from './windows.ts';

/** Least thickness of a layer that is added, where none is asked for [mm]. */
const LEAST_LAYER_MM = 50;
/** Rounds of adding windows, and of leaving out what breaks a rule. */
const MOST_ROUNDS = 80;

interface Work {
  readonly site: Site;
  readonly project: Project;
  readonly limits: readonly BayLimit[];
  readonly options: LightenOptions;
  readonly candidates: Candidates;
  readonly banned: Set<string>;
  readonly leftOut: LightenLeftOut[];
  /** Evaluation and scene that trials are made from, used up and written anew. */
  trial: { resolved: ResolvedScene; on: Evaluation } | null;
}

/**
 * Lightens a scene.
 * @param project - the scene, evaluated; it is not changed. Findings and names come in its language
 * @param options - aims, zones, materials and means; everything has a default
 * @returns variants that keep every limit that can be kept, and the limits that can't
 */
export function lighten(project: Project, options: LightenOptions = {}): LightenAnswer {
  const { scene, evaluation, resolved } = project;
  const site = siteOf(scene, evaluation, resolved.materialOf);
  const candidates = candidatesOf(scene, options.fills);
  const work: Work = { site, project, limits: limitsOf(evaluation), options, candidates, banned: new Set(), leftOut: [], trial: null };
  const over = work.limits.filter((limit) => isOver(greatestOf(evaluation, limit).kNm2, limit.permittedKNm2));
  const { asked, passedOver } = askedZones(work, over);
  const obstacles = obstaclesOf(work, over, asked);
  const hopeless = new Set(obstacles.map(keyOf));
  const hopeful = over.filter((limit) => !hopeless.has(keyOf(limit)));
  const grounds = options.zones ? asked : asked.filter((ground) => hopeful.some((limit) => reaches(work, ground, limit)));
  const variants: LightenVariant[] = [];
  const unsolved: { aim: LightenAim; why: 'no common answer' | 'time' | 'no prices' }[] = [];
  for (const aim of grounds.length > 0 ? (options.aims ?? LIGHTEN_AIMS) : []) {
    const found = aim === 'cost' && !hasPrices(work, grounds) ? 'no prices' : solveAim(work, grounds, aim, hopeless);
    if (typeof found === 'string') unsolved.push({ aim, why: found });
    else variants.push(found);
  }
  return {
    over: over.map((limit) => ({ ...told(limit), beforeKNm2: greatestOf(evaluation, limit).kNm2 })),
    zones: grounds.map(({ id }) => id),
    passedOver,
    variants,
    obstacles,
    unsolved,
    leftOut: work.leftOut,
    withoutPrice: [...candidates.lightFills, ...candidates.subsoils].filter((one) => priceOf(one) === null).map(({ id }) => id),
  };
}

const keyOf = ({ bay, kind, stage }: Pick<BayLimit, 'bay' | 'kind' | 'stage'>) => JSON.stringify([bay, kind, stage]);
const told = ({ bay, kind, stage, permittedKNm2 }: BayLimit) => ({ bay, kind, stage, permittedKNm2 });

function reaches({ site }: Work, ground: Ground, limit: BayLimit): boolean {
  const positions = positionsOf(site.on, ground);
  return cellsOver(site.on, limit).some((cell) => windowPart(site.on, ground, positions, cell).share > 0);
}

function askedZones(work: Work, over: readonly BayLimit[]): { asked: Ground[]; passedOver: { zone: string; why: LightenPassing }[] } {
  const { site, options } = work;
  const passedOver: { zone: string; why: LightenPassing }[] = [];
  const asked = groundsOf(site).filter((ground) => {
    const isAsked = options.zones ? options.zones.includes(ground.id) : over.some((limit) => reaches(work, ground, limit));
    if (!isAsked) return false;
    const why = whyNot(ground, work);
    if (why) passedOver.push({ zone: ground.id, why });
    return why === null;
  });
  return { asked, passedOver };
}

function whyNot(ground: Ground, { site, options }: Work): LightenPassing | null {
  if (options.locked?.includes(ground.id)) return 'locked';
  const { shortInsideM2, overInsideM2 } = site.on.makeUps[ground.z];
  if (shortInsideM2 > 1e-6 || overInsideM2 > 1e-6) return 'not within its levels';
  return restOf(ground, site) < 0 ? 'no layer to change' : null;
}

function trying({ candidates, options, banned }: Work, aim: LightenAim): Trying {
  const leastLayerMm = options.leastLayerMm ?? LEAST_LAYER_MM;
  return { candidates, means: options.means ?? LIGHTEN_MEANS, leastLayerMm, byPrice: aim === 'cost', banned };
}

/** Whether anything that may change, and anything that may be brought, has a price. */
function hasPrices({ candidates, site }: Work, grounds: readonly Ground[]): boolean {
  const priced = [...candidates.lightFills, ...candidates.subsoils].some((one) => priceOf(one) !== null);
  return priced && grounds.some((ground) => priceOf(site.materialOf(ground.buildUp.layers[restOf(ground, site)].material)) !== null);
}

function obstaclesOf(work: Work, over: readonly BayLimit[], asked: readonly Ground[]): LightenObstacle[] {
  if (over.length === 0) return [];
  const { site, options } = work;
  const tasks = asked.map((ground) => zoneTask(ground, site, trying(work, 'weight')));
  const locked = groundsOf(site).filter(({ id }) => options.locked?.includes(id));
  const unlocked = () => [
    ...tasks,
    ...locked.filter((ground) => restOf(ground, site) >= 0).map((ground) => zoneTask(ground, site, trying(work, 'weight'))),
  ];
  const { choices } = solveTasks(tasks, (task, r) => aimOf(task, r, 'weight'), [], site);
  const lightest = evaluated(work, tasks, choices).on;
  return findObstacles({ site, over, tasks, unlocked, lightest });
}

/** A scene with some choices, evaluated on top of the trial before. */
function evaluated(work: Work, tasks: readonly ZoneTask[], choices: readonly Choice[]) {
  const scene = choices.length === 0 ? work.project.scene : applyChoices(work.project.scene, tasks, choices);
  const { cellM } = work.project.resolved.input;
  const resolved = resolveScene(scene, { cellM, previous: work.trial?.resolved });
  const on = evaluate(resolved.input, work.trial?.on);
  work.trial = { resolved, on };
  return { scene, resolved, on };
}

/** Told in the language of the project. */
function reportIn({ language }: Project, { scene, resolved, on }: ReturnType<typeof evaluated>): Report {
  return speakProject({ scene, resolved, evaluation: on, ...reportWithFacts(scene, on), language: 'en' }, language).report;
}

/** A limit that can't be kept must not get worse anywhere. */
function mostAt({ site, hopeless, reserved }: Aiming, limit: BayLimit, cell: number): number {
  const before = loadAt(site.on, limit, cell);
  if (hopeless.has(keyOf(limit))) return Math.max(limit.permittedKNm2, before);
  return limit.permittedKNm2 - (limit.kind === 'stage' ? 0 : (reserved.get(limit.bay) ?? 0));
}

/** The search for one aim. */
interface Aiming extends Work {
  readonly hopeless: ReadonlySet<string>;
  /** Kept free in the finished garden for water that stands when an outlet is blocked, by bay [kN/m²]. */
  readonly reserved: Map<string, number>;
}

/** Keeps free what water needs where a proposal would leave it none; false where that is nowhere. */
function reserveForWater({ limits, project, reserved }: Aiming, after: Report): boolean {
  let found = false;
  for (const { rule, severity, unit, value, where } of cameUp(project.report, after)) {
    const permitted = limits.filter(({ bay, kind }) => bay === where.bay && kind !== 'stage').map(({ permittedKNm2 }) => permittedKNm2);
    if (rule !== 'water.pond' || severity !== 'stop' || unit !== '%' || where.bay === undefined || permitted.length === 0) continue;
    const overKNm2 = (value / 100 - 1) * Math.max(...permitted);
    reserved.set(where.bay, (reserved.get(where.bay) ?? 0) + overKNm2 + 1e-6);
    found = true;
  }
  return found;
}

function solveAim(
  work: Work,
  grounds: readonly Ground[],
  aim: LightenAim,
  hopeless: ReadonlySet<string>,
): LightenVariant | 'no common answer' | 'time' {
  const { site } = work;
  const aiming: Aiming = { ...work, hopeless, reserved: new Map() };
  let tasks = grounds.map((ground) => zoneTask(ground, site, trying(work, aim)));
  const cuts = new Map<string, Cut>();
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const solved = solveTasks(tasks, (task, r) => aimOf(task, r, aim), [...cuts.values()], site);
    if (solved.status === 'infeasible') return 'no common answer';
    if (solved.status === 'time') return 'time';
    const next = evaluated(work, tasks, solved.choices);
    if (addCuts(aiming, next.on, cuts)) continue;
    const tested = { ...next, report: reportIn(work.project, next) };
    if (reserveForWater(aiming, tested.report)) {
      cuts.clear();
      continue;
    }
    const faults = newFaults(work.project, tested, tasks, solved.choices);
    if (faults.length === 0) {
      const limits = new Set([...cuts.values()].map(({ limit }) => keyOf(limit)));
      const isBinding = (limit: BayLimit) => limits.has(keyOf(limit));
      return variantOf({
        aim,
        proven: solved.status === 'optimal',
        project: work.project,
        limits: work.limits,
        isBinding,
        tasks,
        choices: solved.choices,
        next: tested,
      });
    }
    for (const fault of faults) {
      work.banned.add(`${fault.zone}|${fault.change}`);
      work.leftOut.push(fault);
    }
    tasks = grounds.map((ground) => zoneTask(ground, site, trying(work, aim)));
  }
  return 'time';
}

/** Rows for the worst place of every limit that the proposal breaks; false where it breaks none. */
function addCuts(aiming: Aiming, next: Evaluation, cuts: Map<string, Cut>): boolean {
  let added = false;
  for (const limit of aiming.limits) {
    let worst = { cell: -1, by: 0 };
    for (const cell of aiming.site.on.prepared.bays.judged[limit.b]) {
      const by = loadAt(next, limit, cell) - mostAt(aiming, limit, cell);
      if (by > Math.max(worst.by, limit.permittedKNm2 * 5e-10)) worst = { cell, by };
    }
    if (worst.cell < 0) continue;
    added = true;
    const key = `${keyOf(limit)} ${worst.cell}`;
    const most = mostAt(aiming, limit, worst.cell);
    // A place that is in already and still over: cells cut by the edge came out otherwise than their row has it.
    const known = cuts.get(key);
    cuts.set(key, { limit, cell: worst.cell, mostKNm2: (known?.mostKNm2 ?? most) - (known ? worst.by + 1e-9 : 0) });
  }
  return added;
}
