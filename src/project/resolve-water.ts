/** Water in the report and in the findings. */

import { RUNOFF_TABLE_NAMES } from '../catalogue/runoff-tables.ts';
import type { Evaluation } from '../core/evaluation.ts';
import { designFlowLps, freeStorageLm2, meanC, overflowDutyLps, yearlyRunoffM3 } from '../core/water/runoff.ts';
import type { UpliftAt } from '../core/zone-uplift.ts';
import type { FindingFact } from '../model/finding.ts';
import type { Report } from '../model/report.ts';
import type {
  ReportBlocked,
  ReportOutlet,
  ReportOverflow,
  ReportPond,
  ReportUplift,
  ReportWater,
  ReportWaterZone,
} from '../model/report-water.ts';
import { type AnnualC, type PeakC, peakC } from '../model/runoff.ts';
import type { SceneFile } from '../model/scene-file.ts';
import type { BlockedOutlet, Catchment, Pond } from '../model/water-result.ts';
import type { KeptParts } from './kept-parts.ts';
import type { MaterialOf } from './materials.ts';
import { type Coefficient, runoffTable } from './run-off.ts';
import { waterFacts } from './water-facts.ts';
import { greater, placeOf, sinkName, zoneAt } from './water-places.ts';
import { type Emergency, type WaterStudy, waterStudy } from './water-study.ts';

export interface WaterPart {
  readonly report: Pick<Report, 'outlets' | 'water'>;
  readonly facts: readonly FindingFact[];
}

/** Nothing where a scene draws neither outlets nor rain. */
export function waterPart(scene: SceneFile, on: Evaluation, materialOf: MaterialOf, kept: KeptParts): WaterPart {
  const study = waterStudy(scene, on, materialOf, kept);
  if (!study) return { report: {}, facts: [] };
  const outlets = outletReports(scene, study);
  const water = waterReport({ scene, on, kept }, study);
  return {
    report: { ...(outlets.length > 0 ? { outlets } : {}), water },
    facts: waterFacts({ scene, on, study, outlets, water, kept }),
  };
}

interface Reported {
  readonly scene: SceneFile;
  readonly on: Evaluation;
  readonly kept: KeptParts;
}

const NO_CATCHMENT: Catchment = { areaM2: 0, effectiveM2: 0 };

function outletReports({ rain }: SceneFile, { course }: WaterStudy): ReportOutlet[] {
  return course.site.outlets.map(({ id, kind, lps }, o) => {
    const { areaM2, effectiveM2 } = course.catchments[o] ?? NO_CATCHMENT;
    // What stands nowhere or has no level is not counted: 0 % of its capacity would read as enough.
    const designLps = rain && course.outletCells[o] >= 0 ? flowLps(rain.designLpsHa, { areaM2, effectiveM2 }) : null;
    const utilisation = designLps === null || lps === null ? null : designLps / lps;
    return { id, kind, catchmentM2: areaM2, effectiveM2, designLps, capacityLps: lps, utilisation };
  });
}

/** Mean coefficient of a catchment; shares of flow are split, so their sum may miss 1 by rounding. */
function meanPeak({ areaM2, effectiveM2 }: Catchment) {
  return peakC(areaM2 > 0 ? Math.min(1, effectiveM2 / areaM2) : 0);
}

function flowLps(rainLpsHa: number, catchment: Catchment): number {
  return designFlowLps(rainLpsHa, meanPeak(catchment), catchment.areaM2);
}

function waterReport({ scene, on, kept }: Reported, study: WaterStudy): ReportWater {
  const { rain } = scene;
  const zones = scene.zones.map((_, z) => zoneReport(scene, on, study, z));
  const parts = study.runoffs.map(({ peak, annual }, z) => ({ peak: peak.c, annual: annual.c, areaM2: on.zones[z].areaM2 }));
  const all = [...parts, { peak: study.bare.peak.c, annual: study.bare.annual.c, areaM2: on.prepared.zoneTiling.gapM2 }];
  const meanPeakC = meanC(all.map(({ peak, areaM2 }) => ({ c: peak, areaM2 })));
  const meanAnnualC = meanC(all.map(({ annual, areaM2 }) => ({ c: annual, areaM2 })));
  const areaM2 = all.reduce((sum, part) => sum + part.areaM2, 0);
  const heldM3 = zones.reduce((sum, zone) => sum + zone.heldM3, 0);
  const filledPercent = rain?.filledPercent ?? null;
  return {
    table: RUNOFF_TABLE_NAMES[runoffTable(scene)],
    rain: rain
      ? {
          designLpsHa: rain.designLpsHa,
          extremeLpsHa: rain.extremeLpsHa,
          annualMm: rain.annualMm ?? null,
          source: rain.source?.trim() || 'scene file, no source given',
        }
      : null,
    heldM3,
    filledPercent,
    freeM3: filledPercent === null ? null : freeStorageLm2(heldM3, filledPercent),
    meanPeakC,
    meanAnnualC,
    designLps: rain && meanPeakC !== null ? designFlowLps(rain.designLpsHa, meanPeakC, areaM2) : null,
    yearlyM3: rain?.annualMm !== undefined && meanAnnualC !== null ? yearlyRunoffM3(rain.annualMm, meanAnnualC, areaM2) : null,
    undrainedM2: study.course.noWayOut.areaM2,
    zones,
    overflows: overflowReports({ scene, on, kept }, study),
    ponds: study.course.ponds.map((pond) => pondReport(on, pond)),
    blocked: study.blocked.flatMap((blocked) => (blocked ? [blockedReport(on, study, blocked)] : [])),
    flotation: {
      upFactor: study.factors.upFactor.value,
      downFactor: study.factors.downFactor.value,
      zones: study.uplifts.flatMap(({ finished, building }, z) =>
        [finished, building].flatMap((uplift) => (uplift ? [upliftReport(on, z, uplift)] : [])),
      ),
    },
  };
}

function zoneReport({ rain }: SceneFile, on: Evaluation, study: WaterStudy, z: number): ReportWaterZone {
  const { peak, annual } = study.runoffs[z];
  const { areaM2, heldLm2 } = on.zones[z];
  const drain = study.drains[z];
  return {
    id: on.input.zones[z].id,
    peak: coefficientReport(peak),
    annual: coefficientReport(annual),
    heldM3: (heldLm2.mean * areaM2) / 1000,
    freeLm2: rain?.filledPercent === undefined ? null : freeStorageLm2(heldLm2.mean, rain.filledPercent),
    designLps: rain ? designFlowLps(rain.designLpsHa, peak.c, areaM2) : null,
    yearlyM3: rain?.annualMm === undefined ? null : yearlyRunoffM3(rain.annualMm, annual.c, areaM2),
    drain: drain && {
      material: drain.drain.material,
      flowLsm: drain.flowLsm,
      capacityLsm: drain.capacityLsm,
      at: placeOf(on, drain.cell),
      headMm: drain.head && 1000 * drain.head.mcEnroeM,
      secondHeadMm: drain.head && 1000 * drain.head.giroudM,
      thicknessMm: 1000 * drain.drain.thicknessM,
    },
  };
}

function coefficientReport({ c, row, source }: Coefficient<PeakC | AnnualC>): ReportWaterZone['peak'] {
  return { c, row, source };
}

function overflowReports({ scene: { rain }, on, kept }: Reported, { emergency, course }: WaterStudy): ReportOverflow[] {
  const deepestM = kept.get('deepest', [emergency, on.prepared.deckLevelsM], () => deepestBySink(on, emergency));
  return emergency.site.outlets.map(({ id, lps, invertM }, v) => {
    const catchment = emergency.catchments[v] ?? NO_CATCHMENT;
    const counted = rain && emergency.outletCells[v] >= 0;
    const dutyLps = counted ? overflowDutyLps(rain.extremeLpsHa, rain.designLpsHa, meanPeak(catchment), catchment.areaM2) : null;
    return {
      id,
      invertM,
      areaM2: catchment.areaM2,
      dutyLps,
      capacityLps: lps,
      utilisation: dutyLps === null || lps === null ? null : dutyLps / lps,
      depthMm: course.faults[course.site.outlets.findIndex((one) => one.id === id)] ? null : 1000 * deepestM[v],
    };
  });
}

function deepestBySink({ prepared }: Evaluation, { site, sinkAt, filledM }: Emergency): Float64Array {
  const deepestM = new Float64Array(site.outlets.length);
  for (let cell = 0; cell < sinkAt.length; cell++) {
    const sink = sinkAt[cell];
    if (sink < 0 || sink >= deepestM.length) continue;
    const depthM = filledM[cell] - prepared.deckLevelsM[cell];
    if (depthM > deepestM[sink]) deepestM[sink] = depthM;
  }
  return deepestM;
}

function pondReport(on: Evaluation, { cell, levelM, depthM, areaM2, litres, bareLitres }: Pond): ReportPond {
  return { at: placeOf(on, cell), zone: zoneAt(on, cell), levelM, depthMm: 1000 * depthM, areaM2, litres, bareLitres };
}

function blockedReport(on: Evaluation, { course }: WaterStudy, { outlet, levelM, into, water }: BlockedOutlet): ReportBlocked {
  return {
    outlet: course.site.outlets[outlet].id,
    levelM,
    depthMm: water ? 1000 * water.mostM : null,
    areaM2: water?.areaM2 ?? null,
    litres: water?.litres ?? null,
    into: sinkName(course, into),
    bays: (water?.bays ?? []).map((wet) => ({
      bay: on.input.bays[wet.bay].id,
      waterKNm2: wet.waterMeanKNm2,
      patchKNm2: wet.patchKNm2,
      at: placeOf(on, wet.patchCell),
      utilisation: greater(wet.permanentUtilisation, wet.totalUtilisation),
    })),
  };
}

function upliftReport(on: Evaluation, z: number, uplift: UpliftAt): ReportUplift {
  const { buildUp, id } = on.input.zones[z];
  return {
    zone: id,
    stage: uplift.stage === null ? null : on.plan.stages[uplift.stage].id,
    layer: buildUp.layers[uplift.layer].materialId,
    displaces: uplift.displaces,
    waterMm: 1000 * uplift.waterM,
    upliftKNm2: uplift.upliftKNm2,
    holdingKNm2: uplift.holdingKNm2,
    ratio: uplift.ratio,
    ballastKNm2: uplift.ballastKNm2,
    at: placeOf(on, uplift.cell),
  };
}
