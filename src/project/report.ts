/** The report of the contract, from one evaluation. */

import type { BayResult, Evaluation, Patch } from '../core/evaluation.ts';
import { findFacts } from '../core/findings.ts';
import { cellCentreM } from '../core/geometry/grid.ts';
import { boundsOf } from '../core/geometry/ring.ts';
import { stageLimitKNm2 } from '../core/judge.ts';
import type { FindingFact, Severity } from '../model/finding.ts';
import type { Report, ReportBay, ReportZone, Spread } from '../model/report.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { columnReport } from './column-shares.ts';
import { wordFinding } from './finding-text.ts';
import { bayHeaps, heapMaterials } from './heaps.ts';
import { KeptParts } from './kept-parts.ts';
import { loadPlanFacts } from './load-plan-facts.ts';
import { materialLookup } from './materials.ts';
import { notChecked } from './not-checked.ts';
import { probePart } from './probes.ts';
import { edgePart } from './resolve-edges.ts';
import { routePart } from './resolve-routes.ts';
import { buildUpFacts } from './resolve-rules.ts';
import { setUpPart } from './resolve-set-up.ts';
import { wallPart } from './resolve-walls.ts';
import { waterPart } from './resolve-water.ts';
import { trafficSteps } from './resolve-wheels.ts';
import { takeOffReport } from './take-off.ts';
import { tolerancePart } from './tolerance.ts';

const ORDER: readonly Severity[] = ['stop', 'check', 'note'];

/** A report with what its findings are worded from, in the same order. */
export interface WordedReport {
  readonly report: Report;
  readonly facts: readonly FindingFact[];
}

/** Report of a scene. */
export function makeReport(scene: SceneFile, on: Evaluation): Report {
  return reportWithFacts(scene, on).report;
}

/** Report of a scene in English, and the facts it was worded from; `kept` are parts of the report before. */
export function reportWithFacts(scene: SceneFile, on: Evaluation, kept = new KeptParts()): WordedReport {
  return allSteps(reportSteps(scene, on, kept));
}

/** The same, with a rest between its parts in which whoever makes it may leave off. */
export function* reportSteps(scene: SceneFile, on: Evaluation, kept: KeptParts): Generator<undefined, WordedReport> {
  const { prepared, totals } = on;
  const materialOf = materialLookup(scene);
  const heaped = heapMaterials(scene, materialOf);
  const edges = edgePart(scene, on, kept);
  yield;
  const probes = probePart(scene, on);
  const tolerance = tolerancePart(scene, on, materialOf);
  yield;
  const walls = wallPart(scene, on, materialOf);
  const routes = routePart(scene, on, kept);
  yield;
  const traffic = yield* trafficSteps(scene, on, materialOf, kept);
  const setUp = setUpPart(scene, on, materialOf, kept);
  yield;
  const water = waterPart(scene, on, materialOf, kept);
  yield;
  const facts = bySeverity([
    ...findFacts(on),
    ...loadPlanFacts(scene, on),
    ...tolerance.facts,
    ...probes.facts,
    ...buildUpFacts(scene, on, materialOf),
    ...edges.facts,
    ...water.facts,
    ...traffic.facts,
    ...walls.facts,
    ...routes.facts,
    ...setUp.facts,
  ]);
  const report: Report = {
    format: 'loamdeck-report',
    version: 1,
    scene: scene.name,
    cellM: on.input.cellM,
    cells: prepared.ground.cellCount,
    deck: {
      areaM2: prepared.ground.areaM2,
      zonedM2: prepared.zoneTiling.coveredM2,
      unzonedM2: prepared.zoneTiling.gapM2,
      overlapM2: prepared.zoneTiling.overlapM2,
      dryKN: totals.dryKN,
      saturatedKN: totals.saturatedKN,
      objectsKN: totals.objectsKN,
    },
    zones: on.input.zones.map((_, z) => zoneReport(on, z)),
    bays: on.input.bays.map((_, b) => ({ ...bayReport(on, b), heapM: bayHeaps(on, b, heaped), ...tolerance.bays[b] })),
    stages: stageReports(on),
    ...columnReport(on),
    ...water.report,
    ...edges.report,
    ...walls.report,
    ...routes.report,
    ...setUp.report,
    ...traffic.report,
    takeoff: takeOffReport(on, materialOf),
    ...probes.report,
    notChecked: notChecked(scene),
    findings: facts.map((fact) => wordFinding(fact, scene)),
  };
  kept.close();
  return { report, facts };
}

/** What steps come to when nobody leaves off. */
export function allSteps<T>(steps: Generator<undefined, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Sorting is stable: within a severity the rules keep their order. */
function bySeverity(facts: FindingFact[]): FindingFact[] {
  return facts.sort((a, b) => ORDER.indexOf(a.severity) - ORDER.indexOf(b.severity));
}

function inMm(spread: Spread): Spread {
  return { min: spread.min * 1000, mean: spread.mean * 1000, max: spread.max * 1000 };
}

function zoneReport(on: Evaluation, z: number): ReportZone {
  const result = on.zones[z];
  return {
    id: on.input.zones[z].id,
    areaM2: result.areaM2,
    depthMm: inMm(result.depthM),
    makeUpMm: result.makeUpM ? inMm(result.makeUpM) : null,
    dryKNm2: result.dryKNm2,
    saturatedKNm2: result.saturatedKNm2,
    heldLm2: result.heldLm2,
    finishedM: result.finishedM,
    shortM2: on.makeUps[z].shortM2,
    overM2: on.makeUps[z].overM2,
  };
}

/** A bay without any deck has no patch; its own middle is given as the place. */
function patchReport(on: Evaluation, b: number, patch: Patch): { patchKNm2: number; patchAt: [number, number] } {
  const box = boundsOf(on.input.bays[b].region.outer);
  const [x, y] = patch.cell < 0 ? [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2] : cellCentreM(on.prepared.ground.grid, patch.cell);
  return { patchKNm2: patch.kNm2, patchAt: [x + on.input.originM[0], y + on.input.originM[1]] };
}

function bayReport(on: Evaluation, b: number): ReportBay {
  const bay = on.input.bays[b];
  const result = on.bays[b];
  return {
    id: bay.id,
    areaM2: result.areaM2,
    permanent: {
      meanKNm2: result.meanKNm2,
      peakKNm2: result.peakKNm2,
      ...patchReport(on, b, result.patch),
      permittedKNm2: bay.permanentKNm2,
      utilisation: result.permanentUtilisation,
    },
    imposed: { maxKNm2: result.imposedKNm2, permittedKNm2: bay.imposedKNm2, utilisation: result.imposedUtilisation },
    ...totalReport(on, b, result),
    stages: result.stages.map((stage, s) => ({
      stage: on.plan.stages[s].id,
      ...patchReport(on, b, stage.patch),
      permittedKNm2: stageLimitKNm2(bay),
      utilisation: stage.utilisation,
    })),
    worstStage: result.worstStage < 0 ? null : on.plan.stages[result.worstStage].id,
    confirmed: bay.confirmed,
  };
}

function totalReport(on: Evaluation, b: number, result: BayResult): Pick<ReportBay, 'total'> {
  const permittedKNm2 = on.input.bays[b].totalKNm2;
  if (permittedKNm2 === null || !result.total) return {};
  return { total: { ...patchReport(on, b, result.total.patch), permittedKNm2, utilisation: result.total.utilisation } };
}

function stageReports(on: Evaluation): Report['stages'] {
  return on.plan.stages.map((stage, s) => {
    let worst = -1;
    const utilisation = (b: number) => on.bays[b].stages[s].utilisation ?? -1;
    on.bays.forEach((_, b) => {
      if (utilisation(b) >= 0 && (worst < 0 || utilisation(b) > utilisation(worst))) worst = b;
    });
    return {
      id: stage.id,
      name: stage.name,
      placedKN: on.placedKN[s],
      worstBay: worst < 0 ? null : on.input.bays[worst].id,
      utilisation: worst < 0 ? null : utilisation(worst),
    };
  });
}
