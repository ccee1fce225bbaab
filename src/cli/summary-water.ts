/** Water: what is held and flows off, outlets and overflows, ponds, a blocked outlet, drainage flow, uplift. */

import type { Report } from '../model/report.ts';
import type { ReportWater } from '../model/report-water.ts';
import { fixed, orDash, table, use } from './text-table.ts';

/** Lines of the section; empty where the scene draws no outlets and gives no rain. */
export function waterLines(report: Report): string[] {
  const { water, outlets } = report;
  if (!water) return [];
  return [
    ...rainLines(water, report.deck.areaM2),
    ...zoneLines(water),
    ...(outlets ?? []).flatMap((_, i) => (i === 0 ? outletLines(report) : [])),
    ...pondLines(water),
    ...blockedLines(water),
    ...upliftLines(water),
    'No drainage design: the drainage engineer and the local code decide.',
    '',
  ];
}

function rainLines(water: ReportWater, areaM2: number): string[] {
  const { rain, heldM3, filledPercent, freeM3, meanPeakC, designLps, yearlyM3, table: name, undrainedM2 } = water;
  const free = freeM3 === null ? '' : `; ${fixed(freeM3, 1)} m³ of it free when ${fixed(filledPercent ?? 0, 0)} % full`;
  const held = `Water: ${fixed(heldM3, 1)} m³ held when full, ${fixed((1000 * heldM3) / areaM2, 1)} l/m² of deck${free}`;
  const undrained = undrainedM2 > 0.05 ? [`  ${fixed(undrainedM2, 1)} m² of deck drain to no outlet`] : [];
  if (!rain) return [held, '  No rain in the scene: catchments are told, flows are not', ...undrained];
  const year = yearlyM3 === null ? '' : `; ${fixed(yearlyM3, 0)} m³ a year off ${fixed(rain.annualMm ?? 0, 0)} mm (annual coefficients)`;
  return [
    held,
    `  Rain ${fixed(rain.designLpsHa, 0)} l/(s·ha), extreme ${fixed(rain.extremeLpsHa, 0)} l/(s·ha) (${rain.source})`,
    `  ${orDash(designLps)} l/s in the design rain, mean peak coefficient ${orDash(meanPeakC, 3)} (${name})${year}`,
    ...undrained,
  ];
}

function zoneLines({ zones }: ReportWater): string[] {
  return [
    'Run-off of the zones (held m³; peak coefficient and its row; flow in the drainage l/(s·m) at the end of the longest way, and what it carries)',
    ...table(
      ['zone', 'held', 'free l/m²', 'peak C', 'l/s', 'row', 'annual C', 'm³/year', 'drainage', 'flow', 'carries'],
      zones.map((zone) => [
        zone.id,
        fixed(zone.heldM3, 2),
        orDash(zone.freeLm2, 1),
        fixed(zone.peak.c),
        orDash(zone.designLps),
        zone.peak.row ?? zone.peak.source,
        fixed(zone.annual.c),
        orDash(zone.yearlyM3, 1),
        zone.drain?.material ?? '-',
        zone.drain ? fixed(zone.drain.flowLsm, 3) : '-',
        zone.drain ? carries(zone.drain) : '-',
      ]),
      'lrrrrlrrlrr',
    ),
    '',
  ];
}

function carries({ capacityLsm, headMm, thicknessMm }: NonNullable<ReportWater['zones'][number]['drain']>): string {
  return headMm === null ? fixed(capacityLsm, 3) : `${fixed(capacityLsm, 3)}, head ${fixed(headMm, 0)} of ${fixed(thicknessMm, 0)} mm`;
}

function outletLines({ outlets, water }: Report): string[] {
  return [
    'Outlets and overflows (design rain with all at work; overflows: extreme rain less design flow, with the outlets blocked)',
    ...table(
      ['', 'kind', 'area m²', 'l/s', 'takes', 'use', 'runs at m', 'water mm'],
      (outlets ?? []).map((outlet) => {
        const overflow = water?.overflows.find(({ id }) => id === outlet.id);
        if (!overflow) {
          const { id, kind, catchmentM2, designLps, capacityLps, utilisation } = outlet;
          return [id, kind, fixed(catchmentM2, 1), orDash(designLps), orDash(capacityLps), use(utilisation), '-', '-'];
        }
        const { id, areaM2, dutyLps, capacityLps, utilisation, invertM, depthMm } = overflow;
        return [
          id,
          outlet.kind,
          fixed(areaM2, 1),
          orDash(dutyLps),
          orDash(capacityLps),
          use(utilisation),
          orDash(invertM, 3),
          orDash(depthMm, 0),
        ];
      }),
      'llrrrrrr',
    ),
    '',
  ];
}

/** Deepest first; more are in the JSON report. */
const MOST_PONDS = 8;
/** Shallower ones are rounding of levels [mm]. */
const LEAST_POND_MM = 1;

function pondLines({ ponds }: ReportWater): string[] {
  const told = ponds.filter(({ depthMm }) => depthMm >= LEAST_POND_MM);
  if (told.length === 0) return [];
  return [
    `Ponds where the deck has no fall to an outlet (${told.length}${told.length > MOST_PONDS ? `, the deepest ${MOST_PONDS}` : ''})`,
    ...table(
      ['zone', 'depth mm', 'area m²', 'litres', 'at'],
      told
        .slice(0, MOST_PONDS)
        .map(({ zone, depthMm, areaM2, litres, at }) => [
          zone ?? '-',
          fixed(depthMm, 0),
          fixed(areaM2, 1),
          fixed(litres, 0),
          at.map((v) => fixed(v)).join(', '),
        ]),
      'lrrrl',
    ),
    '',
  ];
}

function blockedLines({ blocked }: ReportWater): string[] {
  if (blocked.length === 0) return [];
  return [
    'One outlet blocked, the others at work (saturated garden and water, worst patch of 1 m × 1 m)',
    ...table(
      ['outlet', 'to level m', 'depth mm', 'area m²', 'm³', 'then into', 'worst bay', 'kN/m²', 'use'],
      blocked.map(({ outlet, levelM, depthMm, areaM2, litres, into, bays }) => {
        if (levelM === null) return [outlet, 'no end', '-', '-', '-', '-', '-', '-', '-'];
        const worst = [...bays].sort((a, b) => (b.utilisation ?? -1) - (a.utilisation ?? -1))[0];
        return [
          outlet,
          fixed(levelM, 3),
          orDash(depthMm, 0),
          orDash(areaM2, 1),
          litres === null ? '-' : fixed(litres / 1000, 1),
          into ?? '-',
          worst?.bay ?? '-',
          worst ? fixed(worst.patchKNm2) : '-',
          use(worst?.utilisation ?? null),
        ];
      }),
      'lrrrrllrr',
    ),
    '',
  ];
}

function upliftLines({ flotation }: ReportWater): string[] {
  if (flotation.zones.length === 0) return [];
  return [
    `Uplift of light layers (kN/m², dry; factors ${flotation.upFactor} up, ${flotation.downFactor} down; at least 1 holds)`,
    ...table(
      ['zone', 'stage', 'layer', 'water mm', 'lifts', 'holds', 'ratio', 'missing'],
      flotation.zones.map(({ zone, stage, layer, waterMm, upliftKNm2, holdingKNm2, ratio, ballastKNm2 }) => [
        zone,
        stage ?? 'finished',
        layer,
        fixed(waterMm, 0),
        fixed(upliftKNm2),
        fixed(holdingKNm2),
        // Down, so that 0.997 never reads as 1.00.
        fixed(Math.floor(100 * ratio + 1e-6) / 100),
        fixed(ballastKNm2),
      ]),
      'lllrrrrr',
    ),
    '',
  ];
}
