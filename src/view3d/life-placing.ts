/**
 * Where people, benches and plants stand: by a rule that gives the same places for the same scene every time. People and
 * benches stand on paving and lawn with room around them, never on beds; benches and tables also never on a fire lane.
 */

import type { Picture } from '../model/picture.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { chance, LifeBuilder, type LifeMesh, type Spot } from './life-builder.ts';
import { bench, cushion, grass, leaves, person, shrub, table } from './life-shapes.ts';
import type { Obstacle } from './obstacles.ts';
import type { SurfaceAt } from './top-index.ts';

/** What grows or goes on in a zone. */
export type Ground = 'paving' | 'lane' | 'lawn' | 'meadow' | 'bed' | 'shrubs' | 'mound' | 'other';

/** One look at each zone by its build-up: paved where its top layer is no plant and nothing grows in it. */
export function groundOf(scene: SceneFile): ReadonlyMap<string, Ground> {
  const lanes = new Set(scene.zones.filter(({ use }) => use === 'fire lane').map(({ id }) => id));
  return new Map(
    scene.zones.map(({ id, use, buildup }): readonly [string, Ground] => {
      if (lanes.has(id)) return [id, 'lane'];
      const form = scene.buildups.find((one) => one.id === buildup)?.vegetation?.form;
      if (form === undefined) return [id, use === 'gravel strip' ? 'other' : 'paving'];
      if (form.includes('tree') || form.includes('large shrub')) return [id, 'mound'];
      if (form.includes('shrub')) return [id, 'shrubs'];
      if (form === 'lawn') return [id, 'lawn'];
      return [id, form.includes('grass') ? 'meadow' : 'bed'];
    }),
  );
}

/** Zones whose soil is green all over. */
export function plantedZones(scene: SceneFile): ReadonlySet<string> {
  const green: readonly Ground[] = ['lawn', 'meadow', 'bed', 'shrubs', 'mound'];
  return new Set([...groundOf(scene)].filter(([, ground]) => green.includes(ground)).map(([id]) => id));
}

export interface Standing {
  readonly kind: 'person' | 'bench' | 'table';
  readonly spot: Spot;
  readonly zone: string;
}

export interface Garden {
  readonly scene: SceneFile;
  readonly picture: Picture;
  readonly surfaceAt: SurfaceAt;
  readonly obstacles: readonly Obstacle[];
}

/** Room around the middle that must be level and of the same zone, and to the next thing that stands there [m]. */
const ROOM = { person: 0.55, bench: 1.15, table: 1.25 } as const;
const STEP_M = 0.06;

/** Every place for people and things, in a fixed order. */
export function standings(garden: Garden): Standing[] {
  const ground = groundOf(garden.scene);
  const { min, max } = garden.picture.boundsM;
  const areaM2 = (max[0] - min[0]) * (max[1] - min[1]);
  const wanted = { bench: Math.min(6, Math.ceil(areaM2 / 400)), table: Math.min(4, Math.ceil(areaM2 / 600)) };
  const found: Standing[] = [];
  const people = Math.min(26, Math.max(3, Math.round(areaM2 / 60)));
  const tries = Math.max(400, Math.min(6000, Math.round(areaM2 * 3)));
  for (const kind of ['bench', 'table', 'person'] as const) {
    const most = kind === 'person' ? people : wanted[kind];
    let count = 0;
    for (let k = 1; k < tries && count < most; k++) {
      const seed = 7 * k + kind.length;
      const x = min[0] + (max[0] - min[0]) * halton(k, 2);
      const y = min[1] + (max[1] - min[1]) * halton(k, 3);
      const zone = standsIn(garden, [x, y], ROOM[kind]);
      if (zone === null || !suits(kind, ground.get(zone), seed)) continue;
      if (found.some(({ spot, kind: other }) => Math.hypot(spot.x - x, spot.y - y) < ROOM[kind] + ROOM[other])) continue;
      const zM = garden.surfaceAt(x, y)?.zM ?? 0;
      found.push({ kind, zone, spot: { x, y, zM, turn: kind === 'bench' ? facing(garden, [x, y]) : 2 * Math.PI * chance(seed) } });
      count++;
    }
  }
  return found;
}

function suits(kind: Standing['kind'], ground: Ground | undefined, seed: number): boolean {
  if (ground === 'paving') return true;
  // A few people cross the lawn; nothing is put on it.
  return kind === 'person' && ground === 'lawn' && chance(seed + 11) < 0.25;
}

/** The zone all of a circle lies in, level and free; null where there is none. */
function standsIn({ picture, surfaceAt, obstacles }: Garden, [x, y]: readonly [number, number], roomM: number): string | null {
  const middle = surfaceAt(x, y);
  if (middle === null) return null;
  const zone = picture.parts[middle.part].owner;
  if (zone === '') return null;
  for (let k = 0; k < 12; k++) {
    const angle = (Math.PI * k) / 6;
    const at = surfaceAt(x + roomM * Math.cos(angle), y + roomM * Math.sin(angle));
    if (at === null || picture.parts[at.part].owner !== zone || Math.abs(at.zM - middle.zM) > STEP_M) return null;
  }
  return obstacles.some((obstacle) => obstacle.distanceM(x, y) < roomM) ? null : zone;
}

/** Benches look to where the deck is widest: its middle. */
function facing({ picture }: Garden, [x, y]: readonly [number, number]): number {
  const { min, max } = picture.boundsM;
  return Math.atan2((min[1] + max[1]) / 2 - y, (min[0] + max[0]) / 2 - x);
}

/** Van der Corput's sequence: even, and always the same. */
function halton(index: number, base: number): number {
  let result = 0;
  let share = 1 / base;
  for (let i = index; i > 0; i = Math.floor(i / base)) {
    result += share * (i % base);
    share /= base;
  }
  return result;
}

/** Plants per square metre, before the whole is thinned out to what can be drawn quickly. */
const DENSITY: Readonly<Partial<Record<Ground, number>>> = { bed: 3.4, shrubs: 0.95, mound: 1.6, meadow: 5 };
const MOST_PLANTS = 1800;

interface Plant {
  readonly ground: Ground;
  readonly spot: Spot;
  readonly seed: number;
}

function plants({ scene, picture, surfaceAt, obstacles }: Garden): Plant[] {
  const ground = groundOf(scene);
  const { min, max } = picture.boundsM;
  const sideM = 0.42;
  const found: Plant[] = [];
  const columns = Math.ceil((max[0] - min[0]) / sideM);
  const rows = Math.ceil((max[1] - min[1]) / sideM);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const seed = (row * 7919 + column * 104729) | 0;
      const x = min[0] + (column + chance(seed)) * sideM;
      const y = min[1] + (row + chance(seed + 1)) * sideM;
      const top = surfaceAt(x, y);
      const kind = top === null ? undefined : ground.get(picture.parts[top.part].owner);
      const density = kind === undefined ? undefined : DENSITY[kind];
      if (top === null || kind === undefined || density === undefined || chance(seed + 2) > density * sideM * sideM) continue;
      const roomM = kind === 'shrubs' ? 0.45 : 0.15;
      // Leaves may hang over paving, stems not.
      const rim = [0, 1, 2, 3].some((k) => {
        const at = surfaceAt(x + roomM * [1, 0, -1, 0][k], y + roomM * [0, 1, 0, -1][k]);
        return at === null || at.part !== top.part;
      });
      if (rim || obstacles.some((obstacle) => obstacle.distanceM(x, y) < roomM)) continue;
      found.push({ ground: kind, spot: { x, y, zM: top.zM, turn: 2 * Math.PI * chance(seed + 3) }, seed });
    }
  }
  if (found.length <= MOST_PLANTS) return found;
  return found.filter((_, i) => Math.floor((i * MOST_PLANTS) / found.length) !== Math.floor(((i - 1) * MOST_PLANTS) / found.length));
}

/** Clumps of leaves round every crown. */
const CLUMPS = 34;
const MOST_CLUMPS = 1200;

function crowns(to: LifeBuilder, picture: Picture): void {
  const { positions, parts } = picture.solids;
  const isCrown = picture.parts.map(({ kind }) => kind === 'tree crown');
  const vertices = new Map<number, number[]>();
  for (let v = 0; v < parts.length; v++) {
    if (!isCrown[parts[v]]) continue;
    const own = vertices.get(parts[v]);
    if (own) own.push(v);
    else vertices.set(parts[v], [v]);
  }
  const each = Math.min(CLUMPS, Math.floor(MOST_CLUMPS / Math.max(1, vertices.size)));
  for (const [part, own] of vertices) {
    const xs = own.map((v) => positions[v * 3]);
    const spreadM = Math.max(...xs) - Math.min(...xs);
    for (let k = 0; k < each; k++) {
      const seed = 977 * part + 13 * k;
      const v = own[Math.floor(chance(seed) * own.length)] as number;
      const spot = { x: positions[v * 3], y: positions[v * 3 + 1], zM: positions[v * 3 + 2], turn: 6.28 * chance(seed + 1) };
      leaves(to, spot, { radiusM: spreadM * (0.1 + 0.07 * chance(seed + 2)), seed });
    }
  }
}

/** Everything that lives in the garden as one mesh. */
export function lifeMesh(garden: Garden, stands: readonly Standing[]): LifeMesh {
  const to = new LifeBuilder();
  stands.forEach(({ kind, spot }, i) => {
    if (kind === 'person') person(to, spot, 101 * i + 17);
    else if (kind === 'bench') bench(to, spot);
    else table(to, spot);
  });
  for (const { ground, spot, seed } of plants(garden)) {
    if (ground === 'shrubs') shrub(to, spot, seed);
    else if (ground === 'meadow') grass(to, spot, seed);
    else cushion(to, spot, seed);
  }
  crowns(to, garden.picture);
  return to.finish();
}
