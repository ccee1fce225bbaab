/** The take-off: per material what is laid, what to order, what it weighs, how many deliveries, what it costs. */

import type { Evaluation } from '../core/evaluation.ts';
import { deliveriesOf, type LaidLayer, laidLayers } from '../core/takeoff/take-off.ts';
import type { ReportTakeOff, TakeOffShare } from '../model/report.ts';
import { ROLES } from '../model/roles.ts';
import type { MaterialOf, ResolvedMaterial } from './materials.ts';

/** Quantities of all layers of an evaluated scene. */
export function laidOf({ input, zones, plan }: Evaluation): LaidLayer[] {
  return laidLayers(input.zones, zones, plan.layerStages);
}

/** Rows by role, within a role as the build-ups first name them. Trees, walls and blocks are not in it. */
export function takeOffReport(on: Evaluation, materialOf: MaterialOf): ReportTakeOff[] {
  const byMaterial = new Map<string, LaidLayer[]>();
  for (const laid of laidOf(on)) {
    const { materialId } = on.input.zones[laid.zone].buildUp.layers[laid.layer];
    const known = byMaterial.get(materialId);
    if (known) known.push(laid);
    else byMaterial.set(materialId, [laid]);
  }
  const rank = (id: string) => ROLES.indexOf(materialOf(id).role);
  const ids = [...byMaterial.keys()].sort((a, b) => rank(a) - rank(b));
  return ids.map((id) => {
    const laid = byMaterial.get(id) as LaidLayer[];
    return {
      ...orderOf(materialOf(id), sum(laid, 'areaM2'), sum(laid, 'placedM3')),
      zones: shares(laid, 'zone', (z) => on.input.zones[z].id),
      stages: shares(laid, 'stage', (s) => on.plan.stages[s].id),
    };
  });
}

function sum(laid: readonly LaidLayer[], of: 'areaM2' | 'placedM3'): number {
  return laid.reduce((total, one) => total + one[of], 0);
}

/** Sums by zone or stage, in its order; what no stage places (told as `stage.left`) has no share. */
function shares(laid: readonly LaidLayer[], by: 'zone' | 'stage', idOf: (index: number) => string): TakeOffShare[] {
  const groups = new Map<number, LaidLayer[]>();
  for (const one of laid) {
    const group = groups.get(one[by]);
    if (group) group.push(one);
    else groups.set(one[by], [one]);
  }
  const indices = [...groups.keys()].filter((index) => index >= 0).sort((a, b) => a - b);
  return indices.map((index) => {
    const own = groups.get(index) as LaidLayer[];
    return { id: idOf(index), areaM2: sum(own, 'areaM2'), placedM3: sum(own, 'placedM3') };
  });
}

type Order = Omit<ReportTakeOff, 'zones' | 'stages'>;

/**
 * What to order. Loose volume is placed volume times the compaction factor and weighs the same, as mass is conserved.
 * How moist a material comes nobody knows beforehand: `massKg` counts it wet through, which no delivery exceeds.
 */
function orderOf(material: ResolvedMaterial, areaM2: number, placedM3: number): Order {
  const withLaps = 1 + (material.lapPercent ?? 0) / 100;
  const { density } = material;
  const order = density ? { orderM3: placedM3 * (material.compactionFactor ?? 1) } : { orderM2: areaM2 * withLaps };
  const dryKg = density ? placedM3 * density.dry : areaM2 * withLaps * (material.areal?.dry ?? 0);
  const massKg = density ? placedM3 * density.saturated : areaM2 * withLaps * suppliedKgM2(material);
  const orderM3 = order.orderM3 ?? null;
  const deliveries = deliveriesOf(orderM3, massKg, material.delivery);
  const amounts = { m3: orderM3 ?? placedM3 * withLaps, m2: order.orderM2 ?? areaM2, t: massKg / 1000 };
  return {
    material: material.id,
    areaM2,
    placedM3,
    ...order,
    massKg,
    dryKg,
    deliveries: deliveries?.count ?? null,
    deliveryBy: deliveries?.by ?? null,
    deliveriesDry: deliveriesOf(orderM3, dryKg, material.delivery)?.count ?? null,
    price: material.price ? material.price.amount * amounts[material.price.per] : null,
  };
}

/** Sheets and elements come dry; turf and planted mats come as wet as they may be. */
function suppliedKgM2({ role, areal }: ResolvedMaterial): number {
  return (role === 'vegetation' ? areal?.saturated : areal?.dry) ?? 0;
}
