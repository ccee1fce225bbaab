/** The single values of an item of a scene, by their paths, so that two items can be compared value by value. */

/** Lists whose members have an id, or stand in an order that is told member by member. */
const BY_ID = ['stockpiles', 'holdPoints'];

/** Values by path; what is not given has no entry. */
export function leaves(item: object, prefix = ''): Map<string, unknown> {
  const found = new Map<string, unknown>();
  for (const [key, value] of Object.entries(item)) {
    if (key === 'id' || value === undefined) continue;
    const path = `${prefix}${key}`;
    if (key === 'layers' && Array.isArray(value)) addLayers(value as { material: string }[], path, found);
    else if (BY_ID.includes(key) && Array.isArray(value)) {
      for (const one of value as { id: string }[]) {
        found.set(`${path}[${one.id}]`, true);
        for (const [inner, part] of leaves(one, `${path}[${one.id}].`)) found.set(inner, part);
      }
    } else if (typeof value === 'object' && value !== null && !Array.isArray(value) && !isRange(value)) {
      for (const [inner, part] of leaves(value, `${path}.`)) found.set(inner, part);
    } else found.set(path, value);
  }
  return found;
}

/** A make-up range is one value. */
function isRange(value: object): boolean {
  return 'min' in value && 'max' in value;
}

/** Layers by material, counted where one comes twice: a layer between others does not rename those above it. */
function addLayers(layers: readonly { readonly material: string }[], path: string, found: Map<string, unknown>): void {
  const counts = new Map<string, number>();
  const order = layers.map((layer) => {
    const count = (counts.get(layer.material) ?? 0) + 1;
    counts.set(layer.material, count);
    const name = count > 1 ? `${layer.material}#${count}` : layer.material;
    for (const [key, part] of leaves(layer, `${path}[${name}].`)) if (!key.endsWith('].material')) found.set(key, part);
    return name;
  });
  found.set(path, order);
}

/** Equal as they stand in a file. */
export function sameValue(a: unknown, b: unknown): boolean {
  return JSON.stringify(a ?? null) === JSON.stringify(b ?? null);
}

/** Endings of keys and their units; the longest that fits counts. */
const UNITS: readonly (readonly [ending: RegExp, unit: string])[] = [
  [/KNm2$/, 'kN/m²'],
  [/KNm$|kNm$/, 'kN/m'],
  [/kNm2$/, 'kN/m²'],
  [/LpsHa$/, 'l/(s·ha)'],
  [/Lps$|^lps$/, 'l/s'],
  [/Lm2$/, 'l/m²'],
  [/Lsm$/, 'l/(s·m)'],
  [/KPa$/, 'kPa'],
  [/KN$/, 'kN'],
  [/M3$/, 'm³'],
  [/Mm$/, 'mm'],
  [/Ms$/, 'm/s'],
  [/Kg$/, 'kg'],
  [/Deg$/, '°'],
  [/Percent$/, '%'],
  [/areal\.(dry|saturated)$/, 'kg/m²'],
  [/density(\.(dry|saturated))?$|wallDensity$/, 'kg/m³'],
  [/M$/, 'm'],
];

/** Unit that a key's ending names; empty where it names none. */
export function unitOf(key: string): string {
  return UNITS.find(([ending]) => ending.test(key))?.[1] ?? '';
}
