/** Wheels: what vehicles and machines press on layers and membrane along their lines. */

import type { Report, ReportTraffic } from '../model/report.ts';
import { fixed, orDash, table, use } from './text-table.ts';

/** Lines of the section, in the order of the report; empty where nothing drives. */
export function trafficLines(report: Report): string[] {
  if (!report.traffic?.length) return [];
  return [
    'Wheels (kPa; the layer used most with what lies above it; on the membrane wheels alone, spread and as in an elastic half-space)',
    ...table(
      ['line', 'vehicle', 'stage', 'zone', 'layer', 'most', 'bears', 'use', 'membrane', 'elastic', 'in bays kN/m²', 'permitted'],
      report.traffic.map(row),
      'lllllrrrrrrr',
    ),
    '',
  ];
}

function row(run: ReportTraffic): string[] {
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
