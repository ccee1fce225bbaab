/** The take-off in short: one row per material. */

import type { Report, ReportTakeOff } from '../model/report.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { table } from './text-table.ts';
import type { Writing } from './writing.ts';

/** Lines of the section. */
export function takeOffLines(scene: SceneFile, report: Report, to: Writing): string[] {
  if (!report.takeoff?.length) return [];
  const priced = report.takeoff.some((row) => row.price !== null);
  return [
    ...to.words.takeOff,
    ...table(
      [...to.words.takeOffHead, ...(priced ? [scene.currency ?? to.words.price] : [])],
      report.takeoff.map((row) => takeOffRow(row, priced, to)),
      `lrrrlrrrl${priced ? 'r' : ''}`,
    ),
    '',
  ];
}

function takeOffRow(row: ReportTakeOff, priced: boolean, to: Writing): string[] {
  const { words, fixed, orDash } = to;
  return [
    row.material,
    fixed(row.areaM2, 1),
    fixed(row.placedM3),
    fixed(row.orderM3 ?? row.orderM2 ?? 0, 1),
    row.orderM3 === undefined ? 'm²' : row.orderM3 > row.placedM3 ? words.loose : 'm³',
    fixed(row.dryKg / 1000),
    fixed(row.massKg / 1000),
    orDash(row.deliveries, 0),
    deliveryWords(row, to),
    ...(priced ? [orDash(row.price)] : []),
  ];
}

function deliveryWords({ deliveries, deliveryBy, deliveriesDry }: ReportTakeOff, { words }: Writing): string {
  if (deliveryBy === null) return '';
  return words.deliveries(deliveryBy, deliveriesDry === deliveries ? null : deliveriesDry);
}
