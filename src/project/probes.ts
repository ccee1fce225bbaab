/** Depths measured on site, as rows of the report and as findings where they take a bay to or over its limit. */

import type { Evaluation } from '../core/evaluation.ts';
import { severityOf } from '../core/findings.ts';
import { type LimitThere, limitsAt, type PlannedThere, plannedAt } from '../core/probes.ts';
import type { FindingFact } from '../model/finding.ts';
import type { Report, ReportProbe } from '../model/report.ts';
import type { SceneFile, SceneProbe } from '../model/scene-file.ts';
import { metresFromMm, mmFromMetres } from '../model/units.ts';

export interface ProbePart {
  readonly report: Pick<Report, 'probes'>;
  readonly facts: readonly FindingFact[];
}

interface Probed {
  readonly probe: SceneProbe;
  readonly planned: PlannedThere | null;
  /** Of the limits there the one used most. */
  readonly limit: LimitThere | null;
  /** Saturated; null where nothing is planned to compare with, or the layer's weight does not follow its thickness. */
  readonly differenceKNm2: number | null;
}

/** Rows and findings of all probes; nothing where the scene has none. */
export function probePart(scene: SceneFile, on: Evaluation): ProbePart {
  if (!scene.probes?.length) return { report: {}, facts: [] };
  const probed = scene.probes.map((probe) => probedAt(on, probe));
  return { report: { probes: probed.map((one) => probeReport(on, one)) }, facts: probed.flatMap((one) => probeFact(on, one) ?? []) };
}

function probedAt(on: Evaluation, probe: SceneProbe): Probed {
  const x = probe.at[0] - on.input.originM[0];
  const y = probe.at[1] - on.input.originM[1];
  const planned = plannedAt(on, x, y, probe.layer ?? null);
  const counted = planned?.countedAs ?? null;
  const differenceKNm2 = planned && counted ? counted.saturatedPerMKNm3 * (metresFromMm(probe.measuredMm) - planned.plannedM) : null;
  const share = (limit: LimitThere) => (limit.patchKNm2 + (differenceKNm2 ?? 0)) / limit.limitKNm2;
  const limit = limitsAt(on, x, y).reduce<LimitThere | null>((worst, one) => (worst && share(worst) >= share(one) ? worst : one), null);
  return { probe, planned, limit, differenceKNm2 };
}

function probeReport(on: Evaluation, { probe, planned, limit, differenceKNm2 }: Probed): ReportProbe {
  const patchKNm2 = limit && differenceKNm2 !== null ? limit.patchKNm2 + differenceKNm2 : null;
  return {
    id: probe.id,
    at: probe.at,
    zone: planned ? on.input.zones[planned.zone].id : null,
    bay: limit ? on.input.bays[limit.bay].id : null,
    layer: probe.layer ?? null,
    countedAs: planned?.countedAs?.materialId ?? null,
    plannedMm: planned ? mmFromMetres(planned.plannedM) : null,
    measuredMm: probe.measuredMm,
    differenceMm: planned ? probe.measuredMm - mmFromMetres(planned.plannedM) : null,
    differenceKNm2,
    patchKNm2,
    utilisation: limit && patchKNm2 !== null ? patchKNm2 / limit.limitKNm2 : null,
  };
}

/** Only what came out heavier than planned: a bay that is too full by plan is told already. */
function probeFact(on: Evaluation, { probe, planned, limit, differenceKNm2 }: Probed): FindingFact | null {
  if (!planned?.countedAs || !limit || differenceKNm2 === null || differenceKNm2 <= 0) return null;
  const value = limit.patchKNm2 + differenceKNm2;
  const severity = severityOf(value / limit.limitKNm2);
  if (!severity) return null;
  return {
    rule: limit.rule,
    severity,
    where: { zone: on.input.zones[planned.zone].id, bay: on.input.bays[limit.bay].id, at: probe.at },
    value,
    limit: limit.limitKNm2,
    unit: 'kN/m²',
    facts: {
      why: 'probe',
      probe: probe.id,
      measuredMm: probe.measuredMm,
      plannedMm: mmFromMetres(planned.plannedM),
      countedAs: planned.countedAs.name,
      whole: planned.layer ? 0 : 1,
      differenceKNm2,
    },
  };
}
