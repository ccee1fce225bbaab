/** Reads areas, lines and points in GeoJSON: planar metres, or degrees that are asked about. */

import type { Gathering } from './gathering.ts';
import type { LayerName } from './geojson-features.ts';
import { layerOf, levelOf, nameOf } from './geojson-features.ts';
import { MAX_DEPTH } from './limits.ts';
import { jsonOf } from './partial-json.ts';
import type { RawPath } from './raw-shapes.ts';
import type { Steps } from './steps.ts';

export interface GeoHead {
  /** What the file says of its coordinates; null where it says nothing. */
  readonly degrees: boolean | null;
}

const STEP = 500;
const GREATEST = 1e12;

/** A coordinate list out of form; never leaves this file. */
class OutOfForm extends Error {}

/** Reads all of it into the gathering. */
export function* readGeoJson(text: string, gather: Gathering): Steps<GeoHead> {
  yield 0;
  const root = jsonOf(text, gather);
  yield 0.4;
  const reading = new GeoReading(gather);
  const work: { readonly value: unknown; readonly path: string }[] = [];
  const features = listOf(root, 'features');
  if (features !== null) for (const [i, value] of features.entries()) work.push({ value, path: `features[${i}]` });
  else work.push({ value: root, path: '' });
  for (const [i, { value, path }] of work.entries()) {
    reading.feature(value, path);
    if (i % STEP === 0) yield 0.4 + (0.6 * i) / work.length;
  }
  reading.tellDamage();
  return { degrees: degreesSaid(root) };
}

function listOf(value: unknown, key: string): readonly unknown[] | null {
  const list = isObject(value) ? value[key] : null;
  return Array.isArray(list) ? list : null;
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** An older file may name its system; the newer standard knows degrees only, and few keep to it. */
function degreesSaid(root: unknown): boolean | null {
  const crs = isObject(root) && isObject(root.crs) && isObject(root.crs.properties) ? root.crs.properties.name : null;
  if (typeof crs !== 'string') return null;
  return /CRS84$|(?:EPSG:{1,2})4326$|4258$/i.test(crs);
}

class GeoReading {
  readonly #gather: Gathering;
  #bad = 0;
  #firstBad = '';

  constructor(gather: Gathering) {
    this.#gather = gather;
  }

  feature(value: unknown, path: string): void {
    if (!isObject(value)) {
      this.#damaged(path);
      return;
    }
    const properties = isObject(value.properties) ? value.properties : {};
    const isFeature = value.type === 'Feature';
    const geometry = isFeature ? value.geometry : value;
    if (geometry === null) {
      this.#gather.ignored(layerOf(properties, this.#gather) ?? 'features', 'feature without geometry');
      return;
    }
    const rawName = nameOf(properties, value.id);
    const name = rawName === null ? {} : { name: this.#gather.text(rawName) };
    this.#geometry(geometry, {
      layer: layerOf(properties, this.#gather),
      level: levelOf(properties),
      name,
      path: isFeature ? `${path}.geometry` : path,
      depth: 0,
    });
  }

  #geometry(geometry: unknown, owner: LayerName): void {
    if (!isObject(geometry) || typeof geometry.type !== 'string') {
      this.#damaged(owner.path);
      return;
    }
    const { type } = geometry;
    const layer = owner.layer ?? this.#gather.layerName(type.replace(/^Multi/, ''));
    if (type === 'GeometryCollection') {
      this.#collection(geometry, owner);
      return;
    }
    const before = this.#gather.shapes.length;
    try {
      this.#coordinates(type, geometry.coordinates, { ...owner, layer });
    } catch (error) {
      if (!(error instanceof OutOfForm)) throw error;
      this.#gather.shapes.length = before;
      this.#damaged(owner.path);
      this.#gather.ignored(layer, type, 'out of form');
      return;
    }
    if (this.#gather.shapes.length > before) this.#gather.used(layer, type);
    else this.#gather.ignored(layer, type, 'empty or not known');
  }

  #collection(geometry: Record<string, unknown>, owner: LayerName): void {
    const members = listOf(geometry, 'geometries') ?? [];
    if (owner.depth >= MAX_DEPTH) {
      this.#damaged(owner.path);
      return;
    }
    for (const [i, member] of members.entries())
      this.#geometry(member, { ...owner, path: `${owner.path}.geometries[${i}]`, depth: owner.depth + 1 });
  }

  #coordinates(type: string, coordinates: unknown, owner: LayerName & { readonly layer: string }): void {
    const list = (value: unknown): readonly unknown[] => {
      if (!Array.isArray(value)) throw new OutOfForm();
      return value;
    };
    const { layer, name, level } = owner;
    const point = (value: unknown) => {
      const [x, y, z] = position(value);
      this.#gather.add({ kind: 'point', layer, x, y, z: z ?? level, ...name });
    };
    const polygon = (value: unknown) => {
      const [outer, ...holes] = list(value).map((ring) => this.#path(list(ring), owner, true));
      if (outer !== undefined) this.#gather.add(holes.length > 0 ? { ...outer, holes } : outer);
    };
    if (type === 'Point') point(coordinates);
    else if (type === 'MultiPoint') list(coordinates).forEach(point);
    else if (type === 'LineString') this.#gather.add(this.#path(list(coordinates), owner, false));
    else if (type === 'MultiLineString') for (const line of list(coordinates)) this.#gather.add(this.#path(list(line), owner, false));
    else if (type === 'Polygon') polygon(coordinates);
    else if (type === 'MultiPolygon') list(coordinates).forEach(polygon);
  }

  #path(positions: readonly unknown[], { layer, name }: LayerName & { readonly layer: string }, isRing: boolean): RawPath {
    const points: number[] = [];
    const levels: number[] = [];
    for (const value of positions) {
      const [x, y, z] = position(value);
      points.push(x, y);
      if (z !== null) levels.push(z);
    }
    const last = points.length - 2;
    const closed = isRing && last >= 2 && points[0] === points[last] && points[1] === points[last + 1];
    if (closed) points.length = last;
    const whole = levels.length === positions.length && levels.some((z) => z !== 0);
    if (closed) levels.length = Math.min(levels.length, points.length / 2);
    return { kind: 'path', layer, closed, points, levels: whole ? levels : null, curves: null, loose: false, ...name };
  }

  #damaged(path: string): void {
    this.#bad += 1;
    if (this.#firstBad === '') this.#firstBad = path;
  }

  tellDamage(): void {
    if (this.#bad === 0) return;
    this.#gather.warning('GEOJSON_DAMAGED', { count: this.#bad }, { path: this.#firstBad });
  }
}

function position(value: unknown): readonly [number, number, number | null] {
  if (!Array.isArray(value) || value.length < 2) throw new OutOfForm();
  const [x, y, z] = value as unknown[];
  const fits = (one: unknown): one is number => typeof one === 'number' && Math.abs(one) <= GREATEST;
  if (!fits(x) || !fits(y) || (z !== undefined && z !== null && !fits(z))) throw new OutOfForm();
  return [x, y, typeof z === 'number' ? z : null];
}
