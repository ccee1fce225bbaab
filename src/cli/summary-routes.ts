/** Lanes and set-up areas for fire appliances, and ground that can't be reached in its stage. */

import type { Report, ReportSetUpArea } from '../model/report.ts';
import { table } from './text-table.ts';
import type { Writing } from './writing.ts';

/** Lines of all sections; empty where the scene has neither lanes, set-up areas nor access points. */
export function routeLines(report: Report, to: Writing): string[] {
  return [...laneLines(report, to), ...setUpLines(report, to), ...reachLines(report, to)];
}

function laneLines({ routes }: Report, { words, fixed, orDash }: Writing): string[] {
  if (!routes) return [];
  return [
    words.lanes,
    ...table(
      words.lanesHead,
      routes.map((route) => [
        route.id,
        route.table,
        orDash(route.widthM),
        fixed(route.requiredM),
        route.leastOuterM === null ? words.straight : fixed(route.leastOuterM),
        orDash(route.steepestPercent),
        orDash(route.stepMm, 0),
      ]),
      'llrrrrr',
    ),
    '',
  ];
}

function setUpLines({ setUpAreas }: Report, to: Writing): string[] {
  if (!setUpAreas) return [];
  const { words, fixed, orDash } = to;
  return [
    words.setUps,
    ...table(
      words.setUpsHead,
      setUpAreas.map((area) => [
        area.id,
        words.setUpKind[area.kind],
        area.table ?? words.noRule,
        area.vehicle,
        `${fixed(area.widthM)} × ${fixed(area.lengthM)}`,
        inside(area, to),
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
function inside({ insideWidthM, requiredM }: ReportSetUpArea, { words, fixed }: Writing): string {
  if (insideWidthM === null || !requiredM) return '-';
  return insideWidthM === 0 ? words.tooShort : `${fixed(insideWidthM)} × ${fixed(requiredM.lengthM)}`;
}

function reachLines({ reach }: Report, { words, fixed }: Writing): string[] {
  if (!reach) return [];
  return [
    words.reach,
    ...table(
      words.reachHead,
      reach.map((row) => [row.stage, String(row.zones), fixed(row.areaM2, 1), fixed(row.unreachedM2, 1)]),
      'lrrr',
    ),
    '',
  ];
}
