/** Retaining edges: thrust, ratios and pressure under the base, per metre. */

import type { Report, ReportWall } from '../model/report.ts';
import { table } from './text-table.ts';
import type { Writing } from './writing.ts';

/** Lines of the section in the order of the file; empty where the scene has none. */
export function wallLines(report: Report, to: Writing): string[] {
  if (!report.walls) return [];
  return [
    ...to.words.walls,
    ...table(
      to.words.wallsHead,
      report.walls.map((wall) => wallRow(wall, to)),
      'lrrrrrrrrrrl',
    ),
    '',
  ];
}

function wallRow(wall: ReportWall, { words, fixed, orDash }: Writing): string[] {
  // Down, so that 1.497 never reads as 1.50.
  const rounded = (ratio: number) => fixed(Math.floor(100 * ratio + 1e-6) / 100);
  const cases = [wall.bare, wall.loaded];
  const least = (key: 'slidingRatio' | 'overturningRatio') => Math.min(...cases.map((one) => one[key]));
  const away = cases.map((one) => one.eccentricityM).sort((a, b) => Math.abs(b) - Math.abs(a))[0];
  const pressures = cases.map((one) => one.pressure?.maxKPa);
  const most = pressures.includes(undefined) ? words.fallsOver : fixed(Math.max(...pressures.map(Number)), 1);
  return [
    wall.id,
    fixed(wall.ownKNm),
    fixed(wall.active, 3),
    fixed(wall.surchargeKNm2),
    fixed(wall.thrustKNm),
    rounded(least('slidingRatio')),
    rounded(least('overturningRatio')),
    fixed(away, 3),
    fixed(wall.middleThirdM, 3),
    most,
    orDash(wall.permittedKPa),
    wall.standsOn ?? words.notKnown,
  ];
}
