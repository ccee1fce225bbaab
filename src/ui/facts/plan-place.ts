/** Where on the plan an issue lies: the first coordinates at or below the place of the file that it names. */

import type { Issue } from '../../model/issue.ts';
import type { PointM, SceneFile } from '../../model/scene-file.ts';

/** Steps of a path as issues write it, e.g. `zones[3].outline[2]`. */
export function stepsOf(path: string): readonly (string | number)[] {
  return [...path.matchAll(/\[(\d+)\]|\["((?:[^"\\]|\\.)*)"\]|([^.[\]]+)/g)].map(([, index, quoted, key]) =>
    index === undefined ? (quoted ?? key ?? '') : Number(index),
  );
}

const isPoint = (value: unknown): value is PointM =>
  Array.isArray(value) && (value.length === 2 || value.length === 3) && value.every((one) => typeof one === 'number');

/** The first point in a value, going into what holds points by its usual keys. */
function firstPoint(value: unknown): PointM | null {
  if (isPoint(value)) return [value[0], value[1]];
  if (Array.isArray(value)) return value.length > 0 ? firstPoint(value[0]) : null;
  if (typeof value !== 'object' || value === null) return null;
  for (const key of ['at', 'outline', 'line', 'route'] as const) {
    const found = Object.hasOwn(value, key) ? firstPoint((value as Record<string, unknown>)[key]) : null;
    if (found !== null) return found;
  }
  return null;
}

/**
 * @param scene - the scene as it would have become
 * @param issue - what is wrong with it
 * @returns a point, or null where the issue has no place in the plan
 */
export function placeOfIssue(scene: SceneFile, { path }: Issue): PointM | null {
  let value: unknown = scene;
  let found: PointM | null = null;
  for (const step of stepsOf(path)) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) break;
    value = (value as Record<string | number, unknown>)[step];
    // The scene's list of zones is no place; an entry of it is.
    if (typeof step === 'number' || found !== null) found = firstPoint(value) ?? found;
  }
  return found;
}
