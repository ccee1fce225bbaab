/** Lanes and set-up areas for fire appliances, and ground that can't be reached in its stage. */

import type { Report, ReportSetUpArea } from '../model/report.ts';
import { fixed, orDash, table } from './text-table.ts';

/** Lines of all sections; empty where the scene has neither lanes, set-up areas nor access points. */
export function routeLines(report: Report): string[] {
  return [...laneLines(report), ...setUpLines(report), ...reachLines(report)];
}

function laneLines({ routes }: Report): string[] {
  if (!routes) return [];
  return [
    'Lanes for fire appliances, as drawn (the fire authority decides)',
    ...table(
      ['lane', 'rule', 'width m', 'asked for', 'least outer radius', 'steepest %', 'step mm'],
      routes.map((route) => [
        route.id,
        route.table,
        orDash(route.widthM),
        fixed(route.requiredM),
        route.leastOuterM === null ? 'straight' : fixed(route.leastOuterM),
        orDash(route.steepestPercent),
        orDash(route.stepMm, 0),
      ]),
      'llrrrrr',
    ),
    '',
  ];
}

function setUpLines({ setUpAreas }: Report): string[] {
  if (!setUpAreas) return [];
  return [
    'Set-up and movement areas (the fire authority decides); pressures of one wheel or support on the membrane',
    ...table(
      ['area', 'kind', 'rule', 'vehicle', 'm × m', 'fits', 'asked for', 'steepest %', 'step mm', 'wheels kPa', 'support kPa', 'bays'],
      setUpAreas.map((area) => [
        area.id,
        area.kind,
        area.table ?? 'none',
        area.vehicle,
        `${fixed(area.widthM)} × ${fixed(area.lengthM)}`,
        inside(area),
        area.requiredM ? `${fixed(area.requiredM.widthM)} × ${fixed(area.requiredM.lengthM)}` : '-',
        orDash(area.steepestPercent),
        orDash(area.stepMm, 0),
        orDash(area.wheelsMembraneKPa, 0),
        orDash(area.supportMembraneKPa, 0),
        area.bays.map(({ bay }) => bay).join(', ') || '-',
      ]),
      'llllrrrrrrrl',
    ),
    '',
  ];
}

/** What fits into an area of the length asked for. */
function inside({ insideWidthM, requiredM }: ReportSetUpArea): string {
  if (insideWidthM === null || !requiredM) return '-';
  return insideWidthM === 0 ? 'too short' : `${fixed(insideWidthM)} × ${fixed(requiredM.lengthM)}`;
}

function reachLines({ reach }: Report): string[] {
  if (!reach) return [];
  return [
    'Reach when the stage begins: over ground that bears plant, by crane or hose; how wide a way is does not count',
    ...table(
      ['stage', 'zones', 'area m²', 'not reached m²'],
      reach.map((row) => [row.stage, String(row.zones), fixed(row.areaM2, 1), fixed(row.unreachedM2, 1)]),
      'lrrr',
    ),
    '',
  ];
}
