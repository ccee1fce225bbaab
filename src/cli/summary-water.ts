/** Water: what is held and flows off, outlets and overflows, ponds, a blocked outlet, drainage flow, uplift. */

import type { Report } from '../model/report.ts';
import type { ReportWater } from '../model/report-water.ts';
import { table } from './text-table.ts';
import type { Writing } from './writing.ts';

/** Lines of the section; empty where the scene draws no outlets and gives no rain. */
export function waterLines(report: Report, to: Writing): string[] {
  const { water, outlets } = report;
  if (!water) return [];
  return [
    ...rainLines(water, report.deck.areaM2, to),
    ...zoneLines(water, to),
    ...(outlets ?? []).flatMap((_, i) => (i === 0 ? outletLines(report, to) : [])),
    ...pondLines(water, to),
    ...blockedLines(water, to),
    ...upliftLines(water, to),
    to.words.noDrainageDesign,
    '',
  ];
}

function rainLines(water: ReportWater, areaM2: number, { words, fixed, orDash }: Writing): string[] {
  const { rain, heldM3, filledPercent, freeM3, meanPeakC, designLps, yearlyM3, table: name, undrainedM2 } = water;
  const [m3, lm2] = [fixed(heldM3, 1), fixed((1000 * heldM3) / areaM2, 1)];
  const held = freeM3 === null ? words.held(m3, lm2) : words.heldFree(m3, lm2, fixed(freeM3, 1), fixed(filledPercent ?? 0, 0));
  const undrained = undrainedM2 > 0.05 ? [`  ${words.undrained(fixed(undrainedM2, 1))}`] : [];
  if (!rain) return [held, `  ${words.noRain}`, ...undrained];
  const year = yearlyM3 === null ? '' : `; ${words.yearly(fixed(yearlyM3, 0), fixed(rain.annualMm ?? 0, 0))}`;
  return [
    held,
    `  ${words.rain(fixed(rain.designLpsHa, 0), fixed(rain.extremeLpsHa, 0), rain.source)}`,
    `  ${words.flow(orDash(designLps), orDash(meanPeakC, 3), name)}${year}`,
    ...undrained,
  ];
}

function zoneLines({ zones }: ReportWater, to: Writing): string[] {
  const { words, fixed, orDash } = to;
  return [
    words.runOff,
    ...table(
      words.runOffHead,
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
        zone.drain ? carries(zone.drain, to) : '-',
      ]),
      'lrrrrlrrlrr',
    ),
    '',
  ];
}

function carries(
  { capacityLsm, headMm, thicknessMm }: NonNullable<ReportWater['zones'][number]['drain']>,
  { words, fixed }: Writing,
): string {
  return headMm === null ? fixed(capacityLsm, 3) : words.carries(fixed(capacityLsm, 3), fixed(headMm, 0), fixed(thicknessMm, 0));
}

function outletLines({ outlets, water }: Report, { words, fixed, orDash, use }: Writing): string[] {
  return [
    words.outlets,
    ...table(
      words.outletsHead,
      (outlets ?? []).map((outlet) => {
        const overflow = water?.overflows.find(({ id }) => id === outlet.id);
        if (!overflow) {
          const { id, kind, catchmentM2, designLps, capacityLps, utilisation } = outlet;
          return [id, words.outletKind[kind], fixed(catchmentM2, 1), orDash(designLps), orDash(capacityLps), use(utilisation), '-', '-'];
        }
        const { id, areaM2, dutyLps, capacityLps, utilisation, invertM, depthMm } = overflow;
        return [
          id,
          words.outletKind[outlet.kind],
          fixed(areaM2, 1),
          orDash(dutyLps),
          orDash(capacityLps),
          use(utilisation),
          orDash(invertM, 3),
          orDash(deep(depthMm), 0),
        ];
      }),
      'llrrrrrr',
    ),
    '',
  ];
}

/** Whole millimetres that the water does not stand above, as in the app. */
const deep = (depthMm: number | null): number | null => (depthMm === null ? null : Math.ceil(depthMm - 1e-6));

/** Deepest first; more are in the JSON report. */
const MOST_PONDS = 8;
/** Shallower ones are rounding of levels [mm]. */
const LEAST_POND_MM = 1;

function pondLines({ ponds }: ReportWater, { words, fixed, orDash, place }: Writing): string[] {
  const told = ponds.filter(({ depthMm }) => depthMm >= LEAST_POND_MM);
  if (told.length === 0) return [];
  return [
    words.ponds(told.length, told.length > MOST_PONDS ? MOST_PONDS : null),
    ...table(
      words.pondsHead,
      told
        .slice(0, MOST_PONDS)
        .map(({ zone, depthMm, areaM2, litres, at }) => [
          zone ?? '-',
          orDash(deep(depthMm), 0),
          fixed(areaM2, 1),
          fixed(litres, 0),
          place(at),
        ]),
      'lrrrl',
    ),
    '',
  ];
}

function blockedLines({ blocked }: ReportWater, { words, fixed, orDash, use }: Writing): string[] {
  if (blocked.length === 0) return [];
  return [
    words.blocked,
    ...table(
      words.blockedHead,
      blocked.map(({ outlet, levelM, depthMm, areaM2, litres, into, bays }) => {
        if (levelM === null) return [outlet, words.noEnd, '-', '-', '-', '-', '-', '-', '-'];
        const worst = [...bays].sort((a, b) => (b.utilisation ?? -1) - (a.utilisation ?? -1))[0];
        return [
          outlet,
          fixed(levelM, 3),
          orDash(deep(depthMm), 0),
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

function upliftLines({ flotation }: ReportWater, { words, fixed, plain }: Writing): string[] {
  if (flotation.zones.length === 0) return [];
  return [
    words.uplift(plain(flotation.upFactor), plain(flotation.downFactor)),
    ...table(
      words.upliftHead,
      flotation.zones.map(({ zone, stage, layer, waterMm, upliftKNm2, holdingKNm2, ratio, ballastKNm2 }) => [
        zone,
        stage ?? words.finished,
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
