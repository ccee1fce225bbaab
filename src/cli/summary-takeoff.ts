/** The take-off in short: one row per material. */

import type { Report, ReportTakeOff } from '../model/report.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { fixed, orDash, table } from './text-table.ts';

/** Lines of the section. */
export function takeOffLines(scene: SceneFile, report: Report): string[] {
  if (!report.takeoff?.length) return [];
  const priced = report.takeoff.some((row) => row.price !== null);
  return [
    'Take-off: m² and m³ as laid and placed; to order with laps, or loose. Turn-ups at edges and waste are not in it; a material of two sheets',
    'counts its area once. Tonnes dry, and wet through as the most it can weigh on delivery (sheets and elements dry), by which deliveries are',
    'counted. By zone and stage in the report (--json).',
    ...table(
      ['material', 'm²', 'placed m³', 'order', '', 't dry', 't wet', 'deliveries', '', ...(priced ? [scene.currency ?? 'price'] : [])],
      report.takeoff.map((row) => takeOffRow(row, priced)),
      `lrrrlrrrl${priced ? 'r' : ''}`,
    ),
    '',
  ];
}

function takeOffRow(row: ReportTakeOff, priced: boolean): string[] {
  return [
    row.material,
    fixed(row.areaM2, 1),
    fixed(row.placedM3),
    fixed(row.orderM3 ?? row.orderM2 ?? 0, 1),
    row.orderM3 === undefined ? 'm²' : row.orderM3 > row.placedM3 ? 'm³ loose' : 'm³',
    fixed(row.dryKg / 1000),
    fixed(row.massKg / 1000),
    orDash(row.deliveries, 0),
    deliveryWords(row),
    ...(priced ? [orDash(row.price)] : []),
  ];
}

function deliveryWords({ deliveries, deliveryBy, deliveriesDry }: ReportTakeOff): string {
  if (deliveryBy === null) return '';
  return `by ${deliveryBy}${deliveriesDry === deliveries ? '' : `, ${deliveriesDry} if dry`}`;
}
