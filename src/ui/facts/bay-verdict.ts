/** One judgement per bay from everything the report compares in it, and the count that heads the list. */

import type { LoadAsk } from '../../model/derivation.ts';
import type { Report, ReportBay } from '../../model/report.ts';
import type { SceneBasis, SceneFile } from '../../model/scene-file.ts';
import { judge } from './utilisation.ts';

/** One comparison of a load with a permitted load. */
export interface BayCase {
  readonly kind: 'permanent' | 'imposed' | 'total' | 'stage';
  /** Id of the stage, for kind `stage`. */
  readonly stage: string | null;
  readonly loadKNm2: number;
  readonly permittedKNm2: number | null;
  readonly utilisation: number | null;
  /** File coordinates [m]; null where the load is the same all over. */
  readonly at: readonly [number, number] | null;
}

/** Over the limit is told even when unconfirmed; within is only said of confirmed bays in which every load is compared. */
export type BayStatus = 'over' | 'not confirmed' | 'no limit' | 'at limit' | 'within';

export interface BayVerdict {
  readonly id: string;
  readonly status: BayStatus;
  readonly confirmed: boolean;
  /** Case with the greatest utilisation; without any permitted load, the greatest load. */
  readonly governing: BayCase;
  readonly basis: SceneBasis | undefined;
  /** Utilisation of the finished garden with all tolerances for and against it. */
  readonly band: ReportBay['band'];
}

/** Every comparison of a bay. */
function bayCases(bay: ReportBay): BayCase[] {
  const { permanent, imposed, total } = bay;
  const cases: BayCase[] = [
    {
      kind: 'permanent',
      stage: null,
      loadKNm2: permanent.patchKNm2,
      permittedKNm2: permanent.permittedKNm2,
      utilisation: permanent.utilisation,
      at: permanent.patchAt,
    },
    {
      kind: 'imposed',
      stage: null,
      loadKNm2: imposed.maxKNm2,
      permittedKNm2: imposed.permittedKNm2,
      utilisation: imposed.utilisation,
      at: null,
    },
  ];
  if (total) {
    cases.push({
      kind: 'total',
      stage: null,
      loadKNm2: total.patchKNm2,
      permittedKNm2: total.permittedKNm2,
      utilisation: total.utilisation,
      at: total.patchAt,
    });
  }
  for (const one of bay.stages) {
    cases.push({
      kind: 'stage',
      stage: one.stage,
      loadKNm2: one.patchKNm2,
      permittedKNm2: one.permittedKNm2,
      utilisation: one.utilisation,
      at: one.patchAt,
    });
  }
  return cases;
}

/** How its load or its utilisation comes about. */
export function askOf(kind: LoadAsk['kind'], bay: string, { kind: of, stage }: BayCase): LoadAsk {
  return { kind, bay, stage, of: of === 'imposed' || of === 'total' ? of : undefined };
}

function governingOf(cases: readonly BayCase[]): BayCase {
  return cases.reduce((worst, one) => {
    const rise = (one.utilisation ?? -1) - (worst.utilisation ?? -1);
    return rise > 0 || (rise === 0 && one.utilisation === null && one.loadKNm2 > worst.loadKNm2) ? one : worst;
  });
}

/** Some load stands in the bay for which no permitted load is given. */
function lacksLimit(bay: ReportBay, cases: readonly BayCase[]): boolean {
  if (bay.total) return false;
  return cases.some((one) => one.utilisation === null && (one.kind !== 'imposed' || one.loadKNm2 > 0));
}

function statusOf(bay: ReportBay, cases: readonly BayCase[]): BayStatus {
  const { utilisation } = governingOf(cases);
  const judgement = utilisation === null ? null : judge(utilisation);
  if (judgement === 'over') return 'over';
  if (!bay.confirmed) return 'not confirmed';
  if (judgement === null || lacksLimit(bay, cases)) return 'no limit';
  return judgement;
}

const ORDER: readonly BayStatus[] = ['over', 'not confirmed', 'no limit', 'at limit', 'within'];

/** All bays, worst first. */
export function bayVerdicts(report: Report, scene: SceneFile): BayVerdict[] {
  const given = new Map(scene.deck.bays.map((bay) => [bay.id, bay]));
  const verdicts = report.bays.map((bay): BayVerdict => {
    const cases = bayCases(bay);
    const { confirmed, id } = bay;
    return { id, status: statusOf(bay, cases), confirmed, governing: governingOf(cases), basis: given.get(id)?.basis, band: bay.band };
  });
  return verdicts.sort(
    (a, b) =>
      ORDER.indexOf(a.status) - ORDER.indexOf(b.status) ||
      (b.governing.utilisation ?? -1) - (a.governing.utilisation ?? -1) ||
      a.id.localeCompare(b.id, 'en', { numeric: true }),
  );
}

/** How many bays stand where; the groups do not overlap. `overUnconfirmed` are among `over`. */
export interface BayCount {
  readonly all: number;
  readonly over: number;
  readonly overUnconfirmed: number;
  readonly notConfirmed: number;
  readonly noLimit: number;
  /** Within or exactly at the limit. */
  readonly within: number;
}

export function countBays(verdicts: readonly BayVerdict[]): BayCount {
  const count = (holds: (verdict: BayVerdict) => boolean) => verdicts.filter(holds).length;
  return {
    all: verdicts.length,
    over: count(({ status }) => status === 'over'),
    overUnconfirmed: count(({ status, confirmed }) => status === 'over' && !confirmed),
    notConfirmed: count(({ status }) => status === 'not confirmed'),
    noLimit: count(({ status }) => status === 'no limit'),
    within: count(({ status }) => status === 'within' || status === 'at limit'),
  };
}
