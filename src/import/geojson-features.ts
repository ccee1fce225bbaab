/** What the properties of a feature say: its layer, name and level. */

import type { Gathering } from './gathering.ts';

/** Where a geometry belongs. */
export interface LayerName {
  readonly layer: string | null;
  readonly level: number | null;
  readonly name: { readonly name?: string };
  /** Place in the file, for messages. */
  readonly path: string;
  readonly depth: number;
}

type Properties = Readonly<Record<string, unknown>>;

const LAYER_KEYS = ['layer', 'kind', 'class', 'ebene', 'type'];
const NAME_KEYS = ['name', 'title', 'label', 'id', 'nr'];
const LEVEL_KEYS = ['z', 'level', 'levelm', 'elevation', 'elev', 'height', 'höhe', 'hoehe'];

/** Value of the first of these keys, whatever their case. */
function valueUnder(properties: Properties, keys: readonly string[]): unknown {
  const byName = new Map(Object.entries(properties).map(([key, value]) => [key.toLowerCase(), value]));
  return keys.map((key) => byName.get(key)).find((value) => value !== undefined && value !== null);
}

export function layerOf(properties: Properties, gather: Gathering): string | null {
  const value = valueUnder(properties, LAYER_KEYS);
  return typeof value === 'string' || typeof value === 'number' ? gather.layerName(String(value)) : null;
}

export function nameOf(properties: Properties, id: unknown): string | null {
  const value = valueUnder(properties, NAME_KEYS) ?? id;
  return typeof value === 'string' || typeof value === 'number' ? String(value) : null;
}

export function levelOf(properties: Properties): number | null {
  const value = valueUnder(properties, LEVEL_KEYS);
  return typeof value === 'number' && Number.isFinite(value) ? value : null;
}
