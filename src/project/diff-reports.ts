/** What two reports tell of the same bays and zones, where they differ. */

import type { Report, ReportBay, ReportZone } from '../model/report.ts';
import type { BeforeAfter, ReportChange } from '../model/scene-change.ts';

/** Differences below this are rounding. */
const ROUNDING = 1e-9;

/** Compares by id; an item that only one report has stands against null. */
export function diffReports(a: Report, b: Report): ReportChange {
  const isOther = ({ before, after }: BeforeAfter) =>
    before === null || after === null ? before !== after : Math.abs(before - after) > ROUNDING;
  const bays = pairs(a.bays, b.bays).map(([id, was, is]) => ({
    id,
    utilisation: { before: finished(was), after: finished(is) },
    worstStageUtilisation: { before: worst(was), after: worst(is) },
  }));
  const zones = pairs<ReportZone>(a.zones, b.zones).map(([id, was, is]) => ({
    id,
    meanDepthMm: { before: was?.depthMm.mean ?? null, after: is?.depthMm.mean ?? null },
    greatestKNm2: { before: was?.saturatedKNm2.max ?? null, after: is?.saturatedKNm2.max ?? null },
  }));
  return {
    bays: bays.filter((bay) => isOther(bay.utilisation) || isOther(bay.worstStageUtilisation)),
    zones: zones.filter((zone) => isOther(zone.meanDepthMm) || isOther(zone.greatestKNm2)),
    saturatedKN: { before: a.deck.saturatedKN, after: b.deck.saturatedKN },
  };
}

function pairs<T extends { readonly id: string }>(a: readonly T[], b: readonly T[]): [string, T | undefined, T | undefined][] {
  const [was, is] = [new Map(a.map((one) => [one.id, one])), new Map(b.map((one) => [one.id, one]))];
  return [...new Set([...was.keys(), ...is.keys()])].map((id) => [id, was.get(id), is.get(id)]);
}

/** Of a total the greater of the two. */
function finished(bay: ReportBay | undefined): number | null {
  const values = [bay?.permanent.utilisation, bay?.total?.utilisation].filter(
    (value): value is number => value !== null && value !== undefined,
  );
  return values.length === 0 ? null : Math.max(...values);
}

function worst(bay: ReportBay | undefined): number | null {
  const values = (bay?.stages ?? []).flatMap(({ utilisation }) => (utilisation === null ? [] : [utilisation]));
  return values.length === 0 ? null : Math.max(...values);
}
