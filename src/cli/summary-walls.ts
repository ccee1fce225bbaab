/** Retaining edges: thrust, ratios and pressure under the base, per metre. */

import type { Report, ReportWall } from '../model/report.ts';
import { fixed, orDash, table } from './text-table.ts';

/** Lines of the section in the order of the file; empty where the scene has none. */
export function wallLines(report: Report): string[] {
  if (!report.walls) return [];
  return [
    'Retaining edges: L-shapes per metre, drained soil, characteristic values, worse of live load behind the wall and also on its heel.',
    'No proof: the structural engineer proves the wall. Load on the deck is stem and base slab; the soil on it is counted with its zone.',
    ...table(
      [
        'edge',
        'own kN/m',
        'Ka',
        'live kN/m²',
        'thrust kN/m',
        'sliding',
        'overturning',
        'off centre m',
        'a sixth m',
        'most kPa',
        'bears kPa',
        'on',
      ],
      report.walls.map(wallRow),
      'lrrrrrrrrrrl',
    ),
    '',
  ];
}

function wallRow(wall: ReportWall): string[] {
  const cases = [wall.bare, wall.loaded];
  const least = (key: 'slidingRatio' | 'overturningRatio') => Math.min(...cases.map((one) => one[key]));
  const away = cases.map((one) => one.eccentricityM).sort((a, b) => Math.abs(b) - Math.abs(a))[0];
  const pressures = cases.map((one) => one.pressure?.maxKPa);
  const most = pressures.includes(undefined) ? 'falls over' : fixed(Math.max(...pressures.map(Number)), 1);
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
    wall.standsOn ?? 'not known',
  ];
}

/** Down, so that 1.497 never reads as 1.50. */
const rounded = (ratio: number) => fixed(Math.floor(100 * ratio + 1e-6) / 100);
