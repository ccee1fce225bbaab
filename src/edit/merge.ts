/** Touching areas made one. */

import type { ScenePatch } from '../model/history.ts';
import type { PointM, SceneBay, SceneFile } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import { areaIn, withPieces } from './area-parts.ts';
import { type AreaM, areaM2, overlay } from './overlay.ts';
import { withEntries, withOnly } from './part-lists.ts';
import { WELD_M } from './planar.ts';
import { patchOf, pointLists } from './point-lists.ts';
import { placedInstead } from './references.ts';
import { isRefused, type Refused } from './refusal.ts';

export interface MergedParts {
  readonly patch: ScenePatch;
  readonly selected: Selected;
  /** Keys in which the areas differed: of zones the first one's hold; of bays the lower limit holds, a limit that not all have is left out, and the basis goes, so that it is not confirmed. */
  readonly differing: readonly string[];
  /** What the merged area has more than the areas had together: 0 where they met exactly, else gaps closed less overlaps [m²]. */
  readonly changeM2: number;
}

/** Where edges do not meet exactly, points up to this far apart are taken for one [m]. */
const NEARLY_M = 0.001;
/** Points nearer to the line between their neighbours than this are not needed for the shape [m]. */
const STRAIGHT_M = 2e-9;

/**
 * Makes zones, or bays, one. All coordinates stay the very same numbers; points between that lie on a straight edge and belong to no other part go.
 * Areas that meet only nearly, up to a millimetre apart, are joined as well: see `changeM2`.
 * @param scene - the scene
 * @param selected - two or more zones, or two or more bays; the first gives id, name, build-up, finish
 * @returns what changes, or why it cannot be
 */
export function merged(scene: SceneFile, selected: readonly Selected[]): MergedParts | Refused {
  const [first, ...others] = selected;
  if (first === undefined || others.length === 0) return { refused: 'too few parts' };
  const { part } = first;
  if ((part !== 'zone' && part !== 'bay') || others.some((one) => one.part !== part)) return { refused: 'wrong kind' };
  const areas = selected.map((one) => areaIn(scene, one));
  if (areas.includes(null)) return { refused: 'no such part' };
  const whole = joined(areas as readonly AreaM[]);
  if (whole === null) return { refused: 'not touching' };
  const gone = new Set(others.map(({ id }) => id));
  const { scene: told, differing } = withOneEntry(scene, first, selected);
  let rest = withOnly(told, part, (id) => !gone.has(id));
  if (part === 'zone') rest = placedInstead(rest, part, gone, first.id);
  const result = withPieces(rest, first, [straightened(whole, rest, first)]);
  if (isRefused(result)) return result;
  const changeM2 = areaM2(whole) - (areas as readonly AreaM[]).reduce((sum, area) => sum + areaM2(area), 0);
  return { patch: patchOf(scene, result.scene), selected: first, differing, changeM2 };
}

/** One area, or null where they do not touch along an edge. */
function joined(areas: readonly AreaM[]): AreaM | null {
  for (const weldM of [WELD_M, NEARLY_M]) {
    const union = overlay(areas, (covered) => covered.includes(true), weldM);
    if (union.length === 1) return union[0];
  }
  return null;
}

function straightened(area: AreaM, scene: SceneFile, { part, id }: Selected): AreaM {
  const needed = new Set<string>();
  for (const list of pointLists(scene)) {
    if (list.part === part && list.id === id) continue;
    for (const [x, y] of list.points) needed.add(`${x} ${y}`);
  }
  const ring = (points: readonly PointM[]) => straightRing(points, ([x, y]) => needed.has(`${x} ${y}`));
  return { outline: ring(area.outline), ...(area.holes && { holes: area.holes.map(ring) }) };
}

function straightRing(points: readonly PointM[], isNeeded: (point: PointM) => boolean): readonly PointM[] {
  const kept: PointM[] = [...points];
  for (let i = kept.length - 1; i >= 0 && kept.length > 3; i--) {
    const [before, after] = [kept[(i + kept.length - 1) % kept.length], kept[(i + 1) % kept.length]];
    if (!isNeeded(kept[i]) && isBetween(kept[i], before, after)) kept.splice(i, 1);
  }
  return kept;
}

function isBetween(point: PointM, a: PointM, b: PointM): boolean {
  const [alongX, alongY] = [b[0] - a[0], b[1] - a[1]];
  const [x, y] = [point[0] - a[0], point[1] - a[1]];
  const squared = alongX * alongX + alongY * alongY;
  const along = x * alongX + y * alongY;
  return along > 0 && along < squared && Math.abs(alongX * y - alongY * x) <= STRAIGHT_M * Math.sqrt(squared);
}

const LIMITS = ['permanentKNm2', 'imposedKNm2', 'totalKNm2', 'stageKNm2'] as const;
const TOLD = { zone: ['use', 'buildup', 'imposedKNm2', 'finish'], bay: [...LIMITS, 'vehicles', 'basis'] } as const;

/** The first entry says what holds for all. */
function withOneEntry(
  scene: SceneFile,
  first: Selected,
  selected: readonly Selected[],
): { readonly scene: SceneFile; readonly differing: readonly string[] } {
  const ids = new Set(selected.map(({ id }) => id));
  let differing: readonly string[] = [];
  const next = withEntries(scene, first.part, (entries) => {
    const own = entries.filter(({ id }) => ids.has(id)).map(({ entry }) => entry as Readonly<Record<string, unknown>>);
    const keys = TOLD[first.part === 'bay' ? 'bay' : 'zone'];
    differing = keys.filter((key) => new Set(own.map((entry) => JSON.stringify(entry[key]))).size > 1);
    if (first.part !== 'bay' || differing.length === 0) return null;
    const bay = oneBay(own as unknown as readonly SceneBay[], differing);
    return entries.map(({ id, entry }) => (id === first.id ? { ...bay, id } : entry));
  });
  return { scene: next, differing };
}

/** The lower of each limit that all have; nothing that only some of them have. */
function oneBay(bays: readonly SceneBay[], differing: readonly string[]): SceneBay {
  const [{ id, outline, basis }] = bays;
  const limits = LIMITS.flatMap((key) => {
    const given = bays.map((bay) => bay[key]);
    return given.includes(undefined) ? [] : [[key, Math.min(...(given as number[]))]];
  });
  const lists = bays.map(({ vehicles }) => vehicles ?? []);
  const vehicles = lists[0].filter((vehicle) => lists.every((list) => list.includes(vehicle)));
  const isSame = basis !== undefined && differing.length === 0;
  return { id, outline, ...Object.fromEntries(limits), ...(vehicles.length > 0 && { vehicles }), ...(isSame && { basis }) };
}
