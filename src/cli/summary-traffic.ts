/** Wheels: what vehicles and machines press on layers and membrane along their lines. */

import type { Report, ReportTraffic } from '../model/report.ts';
import { table } from './text-table.ts';
import type { Writing } from './writing.ts';

/** Lines of the section, in the order of the report; empty where nothing drives. */
export function trafficLines(report: Report, to: Writing): string[] {
  if (!report.traffic?.length) return [];
  return [
    to.words.wheels,
    ...table(
      to.words.wheelsHead,
      report.traffic.map((run) => row(run, to)),
      'lllllrrrrrrr',
    ),
    '',
  ];
}

function row(run: ReportTraffic, { fixed, orDash, use }: Writing): string[] {
  const layer = mostUsed(run.layers);
  const bay = mostUsed(run.bays);
  return [
    run.id,
    run.vehicle,
    run.stage ?? '-',
    layer?.zone ?? '-',
    layer?.layer ?? '-',
    orDash(layer?.maxKPa ?? null, 0),
    orDash(layer?.permittedKPa ?? null, 0),
    use(layer?.utilisation ?? null),
    orDash(run.maxMembraneKPa, 0),
    orDash(run.elasticMembraneKPa, 0),
    bay ? `${bay.bay} ${fixed(bay.kNm2)}` : '-',
    orDash(bay?.permittedKNm2 ?? null),
  ];
}

function mostUsed<T extends { readonly utilisation: number | null }>(entries: readonly T[]): T | undefined {
  return entries.reduce<T | undefined>(
    (most, one) => (most && (most.utilisation ?? -1) >= (one.utilisation ?? -1) ? most : one),
    undefined,
  );
}
