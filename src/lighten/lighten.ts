/** Lightens zones that are too heavy for their bays: which zones may change, which limits nothing can keep, and an answer per aim. */

import {
  LIGHTEN_AIMS,
  LIGHTEN_MEANS,
  type LightenAim,
  type LightenAnswer,
  type LightenLeftOut,
  type LightenObstacle,
  type LightenOptions,
  type LightenPassing,
  type LightenProgress,
  type LightenVariant,
} from '../model/lighten.ts';
import type { Project } from '../project/evaluate-project.ts';
import { solveAim } from './aim-search.ts';
import { candidatesOf, priceOf } from './candidates.ts';
import { type Ground, groundsOf, siteOf } from './ground.ts';
import { findObstacles } from './obstacles.ts';
import { restOf, type Trying } from './recipes.ts';
import type { Solver } from './solver.ts';
import { lightestOf, type ZoneTask, zoneTask } from './task.ts';
import { evaluated, keyOf, type Work } from './trial.ts';
import { type BayLimit, cellsOver, greatestOf, isOver, limitsOf, zonesSeen } from './windows.ts';

/** Least thickness of a layer that is added, where none is asked for [mm]. */
const LEAST_LAYER_MM = 50;
/** Zones that bring load to a place where a limit is broken, by limit. */
type Reached = ReadonlyMap<BayLimit, ReadonlySet<number>>;

/**
 * Lightens a scene.
 * @param solver - from `loadSolver`
 * @param project - the scene, evaluated; it is not changed. Findings and names come in its language
 * @param options - aims, zones, materials and means; everything has a default
 * @param onProgress - told after every round
 * @returns variants that keep every limit that can be kept, and the limits that can't
 */
export function lighten(
  solver: Solver,
  project: Project,
  options: LightenOptions = {},
  onProgress: (progress: LightenProgress) => void = () => {},
): LightenAnswer {
  const { scene, evaluation, resolved } = project;
  const site = siteOf(scene, evaluation, resolved.materialOf);
  const candidates = candidatesOf(scene, options.fills);
  const limits = limitsOf(evaluation);
  const seen = zonesSeen(evaluation);
  const work: Work = {
    solver,
    site,
    project,
    limits,
    seen,
    options,
    onProgress,
    candidates,
    caps: new Map(),
    leftOut: [],
    trials: { last: null },
  };
  const over = work.limits.filter((limit) => isOver(greatestOf(evaluation, limit).kNm2, limit.permittedKNm2));
  const reached: Reached = new Map(over.map((limit) => [limit, new Set(cellsOver(evaluation, limit).flatMap(seen))]));
  const { asked, passedOver } = askedZones(work, reached);
  const obstacles = obstaclesOf(work, over, asked);
  const hopeless = new Set(obstacles.map(keyOf));
  const hopeful = over.filter((limit) => !hopeless.has(keyOf(limit)));
  const grounds = options.zones ? asked : asked.filter((ground) => hopeful.some((limit) => reached.get(limit)?.has(ground.z)));
  const variants: LightenVariant[] = [];
  const unsolved: LightenAnswer['unsolved'][number][] = [];
  for (const aim of grounds.length > 0 ? (options.aims ?? LIGHTEN_AIMS) : []) {
    // What breaks a rule in the answer of one aim may keep it in that of another.
    const own: Work = { ...work, caps: new Map() };
    const found =
      aim === 'cost' && !hasPrices(work, grounds) ? 'no prices' : solveAim(own, { aim, hopeless, tasksOf: tasksFor(own, grounds, aim) });
    if (typeof found === 'string') unsolved.push({ aim, why: found });
    else variants.push(found);
  }
  const lent = lentAnswers(variants, unsolved);
  const order = ({ aim }: LightenVariant) => (options.aims ?? LIGHTEN_AIMS).indexOf(aim);
  return {
    over: over.map((limit) => ({ ...told(limit), beforeKNm2: greatestOf(evaluation, limit).kNm2 })),
    zones: grounds.map(({ id }) => id),
    passedOver,
    variants: [...variants, ...lent].map((own) => bestAmong(own, variants)).sort((a, b) => order(a) - order(b)),
    obstacles,
    unsolved: unsolved.filter(({ aim }) => !lent.some((one) => one.aim === aim)),
    leftOut: onlyOnce(work.leftOut),
    withoutPrice: [...candidates.lightFills, ...candidates.subsoils].filter((one) => priceOf(one) === null).map(({ id }) => id),
  };
}

/** What an aim wants little of; null where that is not known. */
const COUNTED: Readonly<Record<LightenAim, (variant: LightenVariant) => number | null>> = {
  cost: ({ costAfter }) => costAfter,
  weight: ({ savedKN }) => -savedKN,
  change: ({ exchangedM3 }) => exchangedM3,
};

/**
 * The answer for an aim, or the answer for another one where that serves this aim better: what held back one search need not
 * have come up in the other.
 * @param own - the answer for the aim
 * @param all - those for all aims, each sound
 * @returns the best of them, which nothing proves to be the best there is unless it is the aim's own
 */
export function bestAmong(own: LightenVariant, all: readonly LightenVariant[]): LightenVariant {
  const counted = COUNTED[own.aim];
  const isBetter = (one: LightenVariant, other: LightenVariant) => {
    const [a, b] = [counted(one), counted(other)];
    if (a === null || b === null) return false;
    return one.unmet.length < other.unmet.length || (one.unmet.length === other.unmet.length && a < b - 1e-6 * Math.max(1, Math.abs(b)));
  };
  const best = all.reduce((most, one) => (isBetter(one, most) ? one : most), own);
  return best === own ? own : { ...best, aim: own.aim, proven: false };
}

/** For aims whose own search came to nothing, where that of another has an answer: it serves them as well, if not at its best. */
export function lentAnswers([first]: readonly LightenVariant[], unsolved: LightenAnswer['unsolved']): LightenVariant[] {
  if (first === undefined) return [];
  return unsolved.flatMap(({ aim, why }) => (why === 'no prices' ? [] : [{ ...first, aim, proven: false }]));
}

/** Each zone and change once, whichever aim came upon it: with the least that broke the rule. */
function onlyOnce(leftOut: readonly LightenLeftOut[]): LightenLeftOut[] {
  const found = new Map<string, LightenLeftOut>();
  for (const one of leftOut) {
    const key = JSON.stringify([one.zone, one.change, one.rule]);
    const known = found.get(key);
    if (known === undefined || one.fromMm < known.fromMm) found.set(key, one);
  }
  return [...found.values()];
}

const told = ({ bay, kind, stage, permittedKNm2 }: BayLimit) => ({ bay, kind, stage, permittedKNm2 });

function askedZones(work: Work, reached: Reached): { asked: Ground[]; passedOver: { zone: string; why: LightenPassing }[] } {
  const { site, options } = work;
  const passedOver: { zone: string; why: LightenPassing }[] = [];
  const asked = groundsOf(site).filter((ground) => {
    const isAsked = options.zones ? options.zones.includes(ground.id) : [...reached.values()].some((zones) => zones.has(ground.z));
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

function trying({ candidates, options, caps }: Work, aim: LightenAim): Trying {
  const leastLayerMm = options.leastLayerMm ?? LEAST_LAYER_MM;
  return { candidates, means: options.means ?? LIGHTEN_MEANS, leastLayerMm, byPrice: aim === 'cost', caps };
}

/** Whether anything that may change, and anything that may be brought, has a price. */
function hasPrices({ candidates, site }: Work, grounds: readonly Ground[]): boolean {
  const priced = [...candidates.lightFills, ...candidates.subsoils].some((one) => priceOf(one) !== null);
  return priced && grounds.some((ground) => priceOf(site.materialOf(ground.buildUp.layers[restOf(ground, site)].material)) !== null);
}

/** Tasks of all zones, or anew of those that changed. */
function tasksFor(work: Work, grounds: readonly Ground[], aim: LightenAim) {
  return (before: readonly ZoneTask[], changed: ReadonlySet<string>) =>
    grounds.map((ground, g) => (changed.has(ground.id) ? undefined : before[g]) ?? zoneTask(ground, work.site, trying(work, aim)));
}

function obstaclesOf(work: Work, over: readonly BayLimit[], asked: readonly Ground[]): LightenObstacle[] {
  if (over.length === 0) return [];
  const { site, options } = work;
  const tasks = asked.map((ground) => zoneTask(ground, site, trying(work, 'weight')));
  const locked = groundsOf(site).filter((ground) => options.locked?.includes(ground.id) && restOf(ground, site) >= 0);
  const unlocked = () => [...tasks, ...locked.map((ground) => zoneTask(ground, site, trying(work, 'weight')))];
  return findObstacles({ site, over, tasks, unlocked, lightest: evaluated(work, tasks, lightestOf(tasks)).on });
}
