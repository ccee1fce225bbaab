/** A proposal that stood its test, told: what changes where, what it saves and costs; and what is wrong with one that did not. */

import type { Evaluation } from '../core/evaluation.ts';
import { cellAt } from '../core/geometry/grid.ts';
import { isInside } from '../core/geometry/ring.ts';
import type { Finding } from '../model/finding.ts';
import type { Language } from '../model/language.ts';
import type {
  LightenAim,
  LightenBay,
  LightenLayer,
  LightenLeftOut,
  LightenVariant,
  LightenZone,
  ThicknessSpread,
} from '../model/lighten.ts';
import type { Report } from '../model/report.ts';
import type { SceneFile } from '../model/scene-file.ts';
import type { Project } from '../project/evaluate-project.ts';
import { materialLookup } from '../project/materials.ts';
import { laidOf } from '../project/take-off.ts';
import { namesOf } from '../project/words/names.ts';
import { priceOf } from './candidates.ts';
import { changeMm } from './caps.ts';
import type { Choice } from './options.ts';
import type { ZoneTask } from './task.ts';
import type { Work } from './trial.ts';
import { type BayLimit, greatestOf, isOver } from './windows.ts';

const LEVEL_LOST: Readonly<Record<Language, string>> = {
  en: 'The finished level would not be kept.',
  de: 'Die Fertighöhe würde nicht eingehalten.',
};

/** Where a finding stands: the same rule there before is no news. */
const placeOf = ({ rule, severity, where: { zone, bay, stage, object } }: Finding) =>
  JSON.stringify([rule, severity, zone, bay, stage, object]);

const bayRuleOf = ({ rule, where }: Finding) => JSON.stringify([rule, where.bay]);

/** Findings that were not there before. */
export function cameUp(before: Report, after: Report): Finding[] {
  const known = new Set(before.findings.map(placeOf));
  return after.findings.filter((finding) => !known.has(placeOf(finding)));
}

export interface Faults {
  readonly faults: readonly LightenLeftOut[];
  /** Several changes may each be to blame for one of them: all give way, though perhaps one would have done. */
  readonly isShared: boolean;
}

/** Changes that break a rule which held before, each with the rule; loads are held by the programme itself. */
export function newFaults(
  { project, seen }: Pick<Work, 'project' | 'seen'>,
  next: Proposal['next'],
  tasks: readonly ZoneTask[],
  choices: readonly Choice[],
): Faults {
  const changed = tasks.flatMap((task, t): Changed[] => {
    const { changes } = task.recipes[choices[t].recipe];
    return changes.length > 0 ? [{ task, choice: choices[t], changes }] : [];
  });
  const level = changed.map((one) =>
    keepsLevel(project.evaluation, next.on, one.task.ground.z) ? [] : fault(one, 'depth.short', LEVEL_LOST[project.language]),
  );
  const wasOver = new Set(project.report.findings.filter(({ severity }) => severity === 'stop').map(bayRuleOf));
  const found = cameUp(project.report, next.report).filter((finding) => {
    const { rule, severity } = finding;
    // A bay that was over while building still is, where its limit was given up: only the stages are others.
    if (rule === 'load.stage' && wasOver.has(bayRuleOf(finding))) return false;
    return severity === 'stop' || (severity === 'check' && !isNearLimit(rule));
  });
  const wetter = runningOffMore(project.report, next.report);
  const broken = found.map((finding) => {
    const { zone, at } = finding.where;
    const isFlow = finding.rule.startsWith('water.') && finding.rule !== 'water.pond';
    const upstream = isFlow ? changed.filter(({ task }) => wetter.has(task.ground.id)) : [];
    if (upstream.length > 0) return upstream.flatMap((one) => fault({ ...one, changes: thinned(one) }, finding.rule, finding.says));
    const [x0, y0] = project.evaluation.input.originM;
    const holds = ({ ground }: ZoneTask) => at !== undefined && isInside(next.on.input.zones[ground.z].region, at[0] - x0, at[1] - y0);
    // Loads that water adds to are told of the worst bay alone: one that comes up far from every change was only hidden by a worse one.
    const cell = waterCell(finding, next.on);
    const reaches = cell === null ? null : changed.filter(({ task }) => seen(cell).includes(task.ground.z));
    const named = reaches ?? changed.filter(({ task }) => (zone === undefined ? holds(task) : task.ground.id === zone));
    if (reaches?.length === 0) return [];
    // Where nobody can say which change did it, all of them give way.
    return (named.length > 0 ? named : changed).flatMap((one) => fault(one, finding.rule, finding.says));
  });
  const blamed = [...level, ...broken];
  return { faults: blamed.flat(), isShared: blamed.some(({ length }) => length > 1) };
}

/** Cell of the window that is too heavy with water; null for any other finding. */
export function waterCell({ rule, severity, unit, where }: Finding, { input, prepared }: Evaluation): number | null {
  if (rule !== 'water.pond' || severity !== 'stop' || unit !== '%' || !where.at) return null;
  const [x0, y0] = input.originM;
  return cellAt(prepared.ground.grid, where.at[0] - x0, where.at[1] - y0);
}

interface Changed {
  readonly task: ZoneTask;
  readonly choice: Choice;
  readonly changes: readonly string[];
}

/** Zones that let more run off than before: their substrate got thinner. */
function runningOffMore(before: Report, after: Report): Set<string> {
  const was = new Map(before.water?.zones.map(({ id, peak }) => [id, peak.c]));
  const more = after.water?.zones.filter(({ id, peak }) => peak.c > (was.get(id) ?? peak.c)) ?? [];
  return new Set(more.map(({ id }) => id));
}

/** What took substrate away: that it got thinner, or else what came in its place. */
function thinned({ task: { ground, recipes }, choice, changes }: Changed): readonly string[] {
  return changes.includes('substrate') && changeMm(recipes, choice, 'substrate', ground) > 0 ? ['substrate'] : changes;
}

function fault({ task: { ground, recipes }, choice, changes }: Changed, rule: Finding['rule'], says: string): LightenLeftOut[] {
  const brought = changes.filter((change) => change !== 'substrate');
  return (brought.length > 0 ? brought : changes).map((change) => {
    return { zone: ground.id, change, fromMm: changeMm(recipes, choice, change, ground), rule, says };
  });
}

/** To the millimetre, everywhere within the zone. */
function keepsLevel(before: Evaluation, after: Evaluation, z: number): boolean {
  const depth = (on: Evaluation) => {
    const { fixed, perM } = on.stacks[z].depth;
    const made = on.makeUps[z].thicknessM;
    return (i: number) => fixed + perM * made[made.length === 1 ? 0 : i];
  };
  const [was, is] = [depth(before), depth(after)];
  return before.prepared.zones[z].cells.every((_, i) => Math.abs(was(i) - is(i)) <= 0.001 + 1e-9);
}

/** A limit nearly reached, or reached with an outlet blocked: told with the answer, as nothing else was broken. */
function isNearLimit(rule: Finding['rule']): boolean {
  return rule.startsWith('load.') || rule === 'water.pond';
}

export interface Proposal {
  readonly aim: LightenAim;
  readonly proven: boolean;
  readonly unmet: LightenVariant['unmet'];
  readonly project: Project;
  readonly limits: readonly BayLimit[];
  readonly isBinding: (limit: BayLimit) => boolean;
  readonly tasks: readonly ZoneTask[];
  readonly choices: readonly Choice[];
  readonly next: { readonly scene: SceneFile; readonly on: Evaluation; readonly report: Report };
}

/** Tells a proposal. */
export function variantOf({ aim, proven, unmet, project, limits, isBinding, tasks, choices, next }: Proposal): LightenVariant {
  const before = project.evaluation;
  const zones = tasks.flatMap(({ ground: { z }, recipes }, t): LightenZone[] => {
    const { keeps, laid } = recipes[choices[t].recipe];
    return keeps ? [] : [{ ...zoneChange(project, next, z), laidIn: laid ? before.plan.stages[laid.stage].id : null }];
  });
  return {
    aim,
    proven,
    unmet,
    zones,
    bays: baysOf(before, next.on, limits, isBinding),
    savedKN: before.totals.saturatedKN - next.on.totals.saturatedKN,
    exchangedM3: broughtM3(before, next.on),
    ...costs(project, next),
    newFindings: cameUp(project.report, next.report),
    scene: next.scene,
  };
}

function baysOf(before: Evaluation, after: Evaluation, limits: readonly BayLimit[], isBinding: Proposal['isBinding']): LightenBay[] {
  const bays = limits.flatMap((limit): LightenBay[] => {
    const [beforeKNm2, afterKNm2] = [greatestOf(before, limit).kNm2, greatestOf(after, limit).kNm2];
    if (Math.abs(beforeKNm2 - afterKNm2) < 1e-9) return [];
    const { bay, kind, stage, permittedKNm2 } = limit;
    return [{ bay, kind, stage, permittedKNm2, beforeKNm2, afterKNm2, binding: isBinding(limit) }];
  });
  const wasOver = (bay: LightenBay) => (isOver(bay.beforeKNm2, bay.permittedKNm2) ? 0 : 1);
  return bays.sort((a, b) => wasOver(a) - wasOver(b));
}

/** Thickness of each material of a zone. */
function thicknesses(on: Evaluation, z: number): Map<string, ThicknessSpread> {
  const found = new Map<string, ThicknessSpread>();
  for (const { materialId, thicknessM, rangeM } of on.input.zones[z].buildUp.layers) {
    const made = (rangeM && on.zones[z].makeUpM) || { min: thicknessM, mean: thicknessM, max: thicknessM };
    const known = found.get(materialId) ?? { min: 0, mean: 0, max: 0 };
    found.set(materialId, { min: known.min + made.min * 1000, mean: known.mean + made.mean * 1000, max: known.max + made.max * 1000 });
  }
  return found;
}

function zoneChange({ scene, evaluation, language }: Project, next: Proposal['next'], z: number): Omit<LightenZone, 'laidIn'> {
  const [was, is] = [thicknesses(evaluation, z), thicknesses(next.on, z)];
  const materialOf = materialLookup(next.scene);
  const names = namesOf(next.scene, language);
  const layers = [...new Set([...was.keys(), ...is.keys()])].flatMap((material): LightenLayer[] => {
    const [beforeMm, afterMm] = [was.get(material) ?? null, is.get(material) ?? null];
    if (beforeMm && afterMm && Math.abs(beforeMm.mean - afterMm.mean) < 0.01) return [];
    return [{ material, name: names.name(materialOf(material).name), beforeMm, afterMm }];
  });
  return {
    zone: scene.zones[z].id,
    buildUp: scene.zones[z].buildup,
    newBuildUp: next.scene.zones[z].buildup,
    layers,
    savedKN: evaluation.zones[z].saturatedKN - next.on.zones[z].saturatedKN,
  };
}

function volumes(on: Evaluation): Map<string, number> {
  const found = new Map<string, number>();
  for (const { zone, layer, placedM3 } of laidOf(on)) {
    const { materialId, saturatedPerMKNm3 } = on.input.zones[zone].buildUp.layers[layer];
    if (saturatedPerMKNm3 > 0) found.set(materialId, (found.get(materialId) ?? 0) + placedM3);
  }
  return found;
}

function broughtM3(before: Evaluation, after: Evaluation): number {
  const was = volumes(before);
  return [...volumes(after)].reduce((sum, [material, m3]) => sum + Math.max(0, m3 - (was.get(material) ?? 0)), 0);
}

/** Of everything the take-off prices; the materials that change must all have a price. */
function costs({ report, scene }: Project, next: Proposal['next']): Pick<LightenVariant, 'costBefore' | 'costAfter'> {
  const rows = (of: Report) => new Map((of.takeoff ?? []).map((row) => [row.material, row]));
  const [was, is] = [rows(report), rows(next.report)];
  const materialOf = materialLookup(next.scene.materials === scene.materials ? scene : next.scene);
  const moved = [...new Set([...was.keys(), ...is.keys()])].filter(
    (id) => Math.abs((was.get(id)?.placedM3 ?? 0) - (is.get(id)?.placedM3 ?? 0)) > 1e-9,
  );
  if (moved.some((id) => materialOf(id).density !== undefined && priceOf(materialOf(id)) === null))
    return { costBefore: null, costAfter: null };
  const sum = (of: typeof was) => [...of.values()].reduce((total, { price }) => total + (price ?? 0), 0);
  return { costBefore: sum(was), costAfter: sum(is) };
}
