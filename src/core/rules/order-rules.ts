/** Rules on what belongs above and below what. */

import type { Role } from '../../model/roles.ts';
import type { LayerFacts, ZoneFacts } from '../../model/rule-input.ts';
import { type Breach, type BuildUpRule, breachAt, hasRole } from './build-up-rule.ts';

export const ORDER_RULES: readonly BuildUpRule[] = [
  { name: 'order.protection', severity: 'stop', why: 'protection', breaches: ({ layers }) => unprotected(layers) },
  {
    name: 'order.root',
    severity: 'stop',
    why: 'root',
    breaches: (zone, { rootResistant }) => (rootResistant === false ? rootsReachMembrane(zone) : []),
  },
  { name: 'order.slip', severity: 'check', why: 'slip', breaches: withoutSlip },
  { name: 'order.drainage', severity: 'check', why: 'drainage', breaches: ({ layers }) => undrained(layers) },
  { name: 'order.filter', severity: 'check', why: 'filter', breaches: ({ layers }) => unfiltered(layers) },
  { name: 'order.separation', severity: 'check', why: 'separation', breaches: ({ layers }) => unseparated(layers) },
  { name: 'order.orientation', severity: 'check', why: 'orientation', breaches: wrongWayUp },
  { name: 'order.infill', severity: 'stop', why: 'infill', breaches: hollowUnderWheels },
];

/** A root barrier may lie beneath the protection. */
function unprotected(layers: readonly LayerFacts[]): Breach[] {
  // Nothing lies there yet; that is told by itself.
  if (layers.length === 0) return [];
  const lowest = layers.findIndex((layer) => layer.role !== 'root barrier');
  if (lowest >= 0 && layers[lowest].role === 'protection') return [];
  return [breachAt(lowest, { layer: layers[Math.max(0, lowest)]?.name ?? '' })];
}

const PLANTED: readonly Role[] = ['substrate', 'vegetation'];

/** Only protection and slip may come between membrane and root barrier: anything thicker would be rooted through. */
function rootsReachMembrane({ layers, vegetationForm }: ZoneFacts): Breach[] {
  const planted = layers.find((layer) => PLANTED.includes(layer.role))?.name ?? vegetationForm;
  if (planted === null) return [];
  const lowest = layers.find((layer) => !hasRole(layer, 'protection', 'slip'));
  return lowest?.role === 'root barrier' ? [] : [breachAt(-1, { layer: planted })];
}

/**
 * Paved: a surfacing on bedding or base course passes its thrust on to what lies below; loose gravel, boards and
 * decks on bearers don't. The slip layer lies on the protection, so that the whole build-up can move.
 */
function withoutSlip({ layers, trafficked }: ZoneFacts): Breach[] {
  const paved = layers.findIndex((layer, i) => layer.role === 'surfacing' && hasRole(layers[i - 1], 'bedding', 'base course'));
  if (!trafficked && paved < 0) return [];
  const first = layers.findIndex((layer) => !hasRole(layer, 'root barrier', 'protection'));
  if (hasRole(layers[first], 'slip')) return [];
  const top = layers[paved < 0 ? layers.length - 1 : paved];
  return [breachAt(first, { layer: top?.name ?? '', trafficked: trafficked ? 1 : 0 })];
}

/** The lowest substrate or base course decides for all above it. */
function undrained(layers: readonly LayerFacts[]): Breach[] {
  const wet = layers.findIndex((layer) => hasRole(layer, 'substrate', 'base course'));
  const drain = layers.findIndex((layer) => hasRole(layer, 'drainage element', 'drainage fill'));
  if (wet < 0 || (drain >= 0 && drain < wet)) return [];
  return [breachAt(wet, { layer: layers[wet].name })];
}

/**
 * Grain by role, as no material gives its own: 3 open, 2 graded, 1 fine. Bedding on base course needs no filter: their
 * grain goes together. Slabs, boards and sheets have none.
 */
const GRAIN: Partial<Record<Role, number>> = {
  'drainage element': 3,
  'drainage fill': 3,
  'light fill': 3,
  'base course': 2,
  bedding: 2,
  substrate: 1,
  vegetation: 1,
};

function unfiltered(layers: readonly LayerFacts[]): Breach[] {
  const found: Breach[] = [];
  const grain = (layer: LayerFacts) => GRAIN[layer.role] ?? 0;
  layers.forEach((upper, i) => {
    const below = layers.slice(0, i).findLastIndex((layer) => grain(layer) > 0);
    if (below < 0 || grain(upper) === 0 || grain(layers[below]) <= grain(upper)) return;
    // On light fill a separation is asked for whatever lies above; only under planting both rules tell it.
    if (layers[below].role === 'light fill' && grain(upper) > 1) return;
    const between = layers.slice(below + 1, i);
    if (between.some((layer) => hasRole(layer, 'filter', 'separation'))) return;
    found.push(breachAt(i, { layer: upper.name, below: layers[below].name }));
  });
  return found;
}

function unseparated(layers: readonly LayerFacts[]): Breach[] {
  return layers.flatMap((layer, i) => {
    const above = layers[i + 1];
    if (layer.role !== 'light fill' || !above || hasRole(above, 'light fill', 'separation', 'filter')) return [];
    return [breachAt(i, { layer: layer.name, above: above.name })];
  });
}

/** Which way up an element lies matters only if it could hold water. */
function wrongWayUp({ layers, trafficked }: ZoneFacts): Breach[] {
  return layers.flatMap((layer, i) => {
    if (layer.role !== 'drainage element' || layer.retentionLm2 <= 0) return [];
    const wanted = wantedOrientation(layers.slice(i + 1), trafficked);
    if (wanted === null || layer.orientation === wanted) return [];
    return [breachAt(i, { layer: layer.name, wanted, laid: layer.orientation ?? '', trafficked: trafficked ? 1 : 0 })];
  });
}

function wantedOrientation(above: readonly LayerFacts[], trafficked: boolean): 'retention' | 'drained' | null {
  if (trafficked || above.some((layer) => layer.role === 'surfacing')) return 'drained';
  return above.some((layer) => PLANTED.includes(layer.role)) ? 'retention' : null;
}

function hollowUnderWheels({ layers, trafficked }: ZoneFacts): Breach[] {
  if (!trafficked) return [];
  return layers.flatMap((layer, i) => {
    if (layer.role !== 'drainage element' || layer.voidLm2 <= 0 || layers[i + 1]?.infill) return [];
    return [breachAt(i, { layer: layer.name })];
  });
}
