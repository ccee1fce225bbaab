/** The weight of one place line by line, rounded so that the lines add up to the total below them. */

import type { CoreLog, CoreLogLayer, CoreLogOther } from '../../model/maps.ts';
import { drawnAs } from '../../model/palette.ts';
import type { PartKind } from '../../model/picture.ts';
import { roundToSum } from './round-to-sum.ts';

export interface LogRow {
  readonly key: string;
  readonly kind: PartKind;
  /** Name of the material; for anything else `other` names it. */
  readonly name: string;
  readonly other: CoreLogOther['kind'] | null;
  readonly zone: string | null;
  readonly thicknessMm: number | null;
  /** Rounded to 0.01; null where the stage shown has not placed it yet. */
  readonly dryKNm2: number | null;
  readonly saturatedKNm2: number | null;
}

export interface LogSum {
  /** Top to bottom, as one looks at the column. */
  readonly rows: readonly LogRow[];
  readonly dryKNm2: number;
  readonly saturatedKNm2: number;
  /** What the lines leave unexplained of the calculated total; 0 unless something is wrong. */
  readonly unexplainedKNm2: number;
}

const DECIMALS = 2;

const KIND_OF: Readonly<Record<CoreLogOther['kind'], PartKind>> = {
  vegetation: 'vegetation',
  tree: 'tree crown',
  line: 'line load',
  block: 'block',
  retaining: 'line load',
  stockpile: 'stockpile',
  'flood test': 'flood water',
};

function layerRow(layer: CoreLogLayer, index: number, rounded: readonly [number, number] | null): LogRow {
  return {
    key: `layer ${index}`,
    kind: drawnAs(layer.role, layer.loose),
    name: layer.name,
    other: null,
    zone: layer.zone,
    thicknessMm: layer.thicknessMm,
    dryKNm2: rounded?.[0] ?? null,
    saturatedKNm2: rounded?.[1] ?? null,
  };
}

/** Rows and sums of a core log. */
export function logSum(log: CoreLog): LogSum {
  const placed = log.layers.filter((layer) => layer.placed);
  const counted = [...placed, ...log.others];
  const dry = roundToSum(
    counted.map((one) => one.dryKNm2),
    DECIMALS,
  );
  const saturated = roundToSum(
    counted.map((one) => one.saturatedKNm2),
    DECIMALS,
  );
  const others = log.others.map((one, i): LogRow => {
    const at = placed.length + i;
    return {
      key: `other ${i}`,
      kind: KIND_OF[one.kind],
      name: one.id,
      other: one.kind,
      zone: one.zone,
      thicknessMm: null,
      dryKNm2: dry[at] ?? 0,
      saturatedKNm2: saturated[at] ?? 0,
    };
  });
  const layers = log.layers.map((layer, i) => {
    const at = placed.indexOf(layer);
    return layerRow(layer, i, at < 0 ? null : [dry[at] ?? 0, saturated[at] ?? 0]);
  });
  const lines = counted.reduce((sum, one) => sum + one.saturatedKNm2, 0);
  return {
    rows: [...others, ...topFirst(layers, log.layers)],
    dryKNm2: sumShown(dry),
    saturatedKNm2: sumShown(saturated),
    unexplainedKNm2: Math.abs(log.saturatedKNm2 - lines) > 0.005 ? log.saturatedKNm2 - lines : 0,
  };
}

/** Zones stay in their order (largest share first), layers within each turned top to bottom. */
function topFirst(rows: readonly LogRow[], layers: readonly CoreLogLayer[]): LogRow[] {
  const zones = [...new Set(layers.map((layer) => layer.zone))];
  return zones.flatMap((zone) => rows.filter((row) => row.zone === zone).reverse());
}

function sumShown(values: readonly number[]): number {
  const scale = 10 ** DECIMALS;
  return values.reduce((sum, value) => sum + Math.round(value * scale), 0) / scale;
}
