/** The take-off as people read it: by material, or the shares of each zone or stage. */

import type { Report, ReportTakeOff, TakeOffShare } from '../../model/report.ts';

export const GROUPINGS = ['material', 'zone', 'stage'] as const;
export type Grouping = (typeof GROUPINGS)[number];

export interface ShareGroup {
  /** Id of the zone or stage. */
  readonly id: string;
  readonly shares: readonly (Omit<TakeOffShare, 'id'> & { readonly material: string })[];
}

/** What lies in each zone, or is laid in each stage, in the order of the report; nothing for those without a layer. */
export function shareGroups(report: Report, by: Exclude<Grouping, 'material'>): ShareGroup[] {
  const ids = by === 'zone' ? report.zones.map(({ id }) => id) : report.stages.map(({ id }) => id);
  const sharesOf = (row: ReportTakeOff) => (by === 'zone' ? row.zones : row.stages);
  const groups = new Map(ids.map((id): [string, ShareGroup['shares'][number][]] => [id, []]));
  for (const row of report.takeoff ?? []) {
    for (const { id, areaM2, placedM3 } of sharesOf(row)) groups.get(id)?.push({ material: row.material, areaM2, placedM3 });
  }
  return [...groups].filter(([, shares]) => shares.length > 0).map(([id, shares]) => ({ id, shares }));
}

export interface TakeOffSum {
  readonly dryKg: number;
  readonly massKg: number;
  /** Of those with a price, `priced` of them; null where none has one. */
  readonly price: number | null;
  readonly priced: number;
}

/** What can be added up over materials: masses and prices. Areas and volumes of different materials say nothing together. */
export function takeOffSum(rows: readonly ReportTakeOff[]): TakeOffSum {
  const priced = rows.filter(({ price }) => price !== null);
  const add = (of: (row: ReportTakeOff) => number) => rows.reduce((sum, row) => sum + of(row), 0);
  return {
    dryKg: add(({ dryKg }) => dryKg),
    massKg: add(({ massKg }) => massKg),
    price: priced.length === 0 ? null : add(({ price }) => price ?? 0),
    priced: priced.length,
  };
}
