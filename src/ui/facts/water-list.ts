/** Water as lists: outlets with what comes to them, what one blocked outlet does, storage, ponds, uplift. */

import type { Finding } from '../../model/finding.ts';
import type { Report, ReportBay } from '../../model/report.ts';
import type { ReportBlocked, ReportOutlet, ReportOverflow, ReportPond, ReportUplift, ReportWater } from '../../model/report-water.ts';
import type { PointM, SceneFile } from '../../model/scene-file.ts';
import { judge } from './utilisation.ts';

export interface ListedOutlet extends ReportOutlet {
  readonly at: PointM | null;
  /** It can be blocked: an outlet that stands on the deck. */
  readonly blockable: boolean;
}

export interface ListedOverflow extends ReportOverflow {
  readonly at: PointM | null;
}

const placeIn = (scene: SceneFile, id: string): PointM | null => scene.deck.outlets?.find((outlet) => outlet.id === id)?.at ?? null;

/** Most used first; those without a capacity before them, since nobody can say whether they do. */
function byUse(a: { readonly utilisation: number | null }, b: { readonly utilisation: number | null }): number {
  return (b.utilisation ?? Infinity) - (a.utilisation ?? Infinity) || 0;
}

/** Outlets, most used first. */
export function listOutlets({ outlets = [], water }: Pick<Report, 'outlets' | 'water'>, scene: SceneFile): ListedOutlet[] {
  return outlets
    .filter(({ kind }) => kind === 'outlet')
    .map((outlet) => ({
      ...outlet,
      at: placeIn(scene, outlet.id),
      blockable: water?.blocked.some((one) => one.outlet === outlet.id) ?? false,
    }))
    .sort(byUse);
}

/** Overflows, most used first. */
export function listOverflows({ water }: Pick<Report, 'water'>, scene: SceneFile): ListedOverflow[] {
  return (water?.overflows ?? []).map((overflow) => ({ ...overflow, at: placeIn(scene, overflow.id) })).sort(byUse);
}

export type WetStatus = 'over by water' | 'over anyway' | 'not confirmed' | 'no limit' | 'within';

export interface ListedWetBay {
  readonly bay: string;
  readonly waterKNm2: number;
  readonly patchKNm2: number;
  readonly at: readonly [number, number];
  /** Without the water; null where no limit is given. */
  readonly before: number | null;
  readonly utilisation: number | null;
  readonly status: WetStatus;
}

const ORDER: readonly WetStatus[] = ['over by water', 'over anyway', 'no limit', 'not confirmed', 'within'];

/** Bays with water, worst first. */
export function listWetBays(blocked: ReportBlocked, bays: readonly ReportBay[]): ListedWetBay[] {
  const listed = blocked.bays.map((wet): ListedWetBay => {
    const bay = bays.find(({ id }) => id === wet.bay);
    const before = bay ? dryUse(bay) : null;
    return { ...wet, before, status: statusOf(wet.utilisation, before, bay?.confirmed ?? false) };
  });
  const use = ({ utilisation }: ListedWetBay) => utilisation ?? Infinity;
  return listed.sort((a, b) => ORDER.indexOf(a.status) - ORDER.indexOf(b.status) || use(b) - use(a) || 0);
}

function dryUse({ permanent, total }: ReportBay): number | null {
  const uses = [permanent.utilisation, total?.utilisation ?? null].filter((use) => use !== null);
  return uses.length === 0 ? null : Math.max(...uses);
}

function statusOf(utilisation: number | null, before: number | null, confirmed: boolean): WetStatus {
  if (utilisation === null) return 'no limit';
  if (judge(utilisation) === 'over') return before !== null && judge(before) === 'over' ? 'over anyway' : 'over by water';
  return confirmed ? 'within' : 'not confirmed';
}

export type BlockedVerdict = WetStatus | 'unbounded' | 'dry';

/** What is to be said of a blocked outlet: the worst of its bays. */
export function blockedVerdict(blocked: ReportBlocked, wet: readonly ListedWetBay[]): BlockedVerdict {
  if (blocked.levelM === null) return 'unbounded';
  return wet[0]?.status ?? 'dry';
}

/** How deep rising water stands when it is held at part of its way, and where that is [m]. */
export function heldLevelM({ levelM, depthMm }: ReportBlocked, heldMm: number | null): number | null {
  return levelM === null || depthMm === null ? null : levelM - (depthMm - (heldMm ?? depthMm)) / 1000;
}

export interface ListedStorage {
  readonly id: string;
  readonly heldM3: number;
  /** Mean over the zone. */
  readonly heldLm2: number;
  /** Null where no filling is given. */
  readonly freeM3: number | null;
  readonly freeLm2: number | null;
}

export interface Storage {
  readonly zones: readonly ListedStorage[];
  readonly heldM3: number;
  readonly freeM3: number | null;
}

/** Water that all zones can hold, and what is left of it at a filling [%]; nothing is said to be free where nobody gave one. */
export function storageAt(report: Pick<Report, 'zones'>, filledPercent: number | null): Storage {
  const free = (held: number) => (filledPercent === null ? null : held * (1 - filledPercent / 100));
  const zones = report.zones
    .map(({ id, areaM2, heldLm2 }): ListedStorage => {
      const heldM3 = (heldLm2.mean * areaM2) / 1000;
      return { id, heldM3, heldLm2: heldLm2.mean, freeM3: free(heldM3), freeLm2: free(heldLm2.mean) };
    })
    .sort((a, b) => b.heldM3 - a.heldM3);
  const heldM3 = zones.reduce((sum, zone) => sum + zone.heldM3, 0);
  return { zones, heldM3, freeM3: free(heldM3) };
}

export interface ListedPond extends ReportPond {
  /** Deeper than is let pass. */
  readonly deep: boolean;
}

/** Ponds, deepest first. */
export function listPonds({ water, findings }: Pick<Report, 'water' | 'findings'>): ListedPond[] {
  const isFound = ({ depthMm, at }: ReportPond) =>
    findings.some(
      (finding: Finding) => finding.rule === 'water.pond' && finding.value === depthMm && finding.where.at?.every((m, i) => m === at[i]),
    );
  return (water?.ponds ?? []).map((pond) => ({ ...pond, deep: isFound(pond) }));
}

export type ListedDrain = NonNullable<ReportWater['zones'][number]['drain']> & {
  readonly zone: string;
  /** It can't take what comes. */
  readonly over: boolean;
  readonly share: number;
};

/** Drainage layers, most used first: of a fill by the height of its water, of an element by its flow. */
export function listDrains({ zones }: Pick<ReportWater, 'zones'>): ListedDrain[] {
  return zones
    .flatMap(({ id, drain }): ListedDrain[] => {
      if (!drain) return [];
      const share =
        drain.headMm === null ? drain.flowLsm / drain.capacityLsm : Math.max(drain.headMm, drain.secondHeadMm ?? 0) / drain.thicknessMm;
      return [{ ...drain, zone: id, share, over: judge(share) === 'over' }];
    })
    .sort((a, b) => b.share - a.share);
}

/** Light layers under water, nearest to floating first. */
export function listUplifts({ flotation }: Pick<ReportWater, 'flotation'>): ReportUplift[] {
  return [...flotation.zones].sort((a, b) => a.ratio - b.ratio);
}
