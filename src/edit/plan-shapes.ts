/** What the plan draws: every part of a scene as an area, a line or a place; and new points for any of them. */

import type { ScenePatch } from '../model/history.ts';
import type { PointM, SceneFile } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import {
  hasLevels,
  isSameList,
  type Piece,
  type PlanPart,
  type PlanPoint,
  type PointList,
  pointLists,
  withPointLists,
} from './point-lists.ts';

/** One drawable part. A set-up area and its building line are two shapes with the same part and id. */
export interface PlanShape extends PointList {
  /** Holes of a zone, as the file has them. Openings of the deck are shapes of their own. */
  readonly holes?: readonly (readonly PointM[])[];
}

/**
 * Every drawable part of a scene. Points are those of the file; ids of parts without one: see `point-lists.ts`.
 * @param scene - the scene
 * @returns shapes: outline, openings, bays, edges, levels, columns, outlets, zones, objects, routes, set-up areas, stages, access points, probes
 */
export function planShapes(scene: SceneFile): readonly PlanShape[] {
  const shapes: PlanShape[] = [];
  const holes = new Map(scene.zones.map((zone) => [zone.id, zone.holes]));
  for (const list of pointLists(scene)) {
    if (typeof list.piece === 'number') continue;
    const own = list.part === 'zone' ? holes.get(list.id) : undefined;
    shapes.push(own === undefined ? list : { ...list, holes: own });
  }
  return shapes;
}

/**
 * The shape of one part; for a set-up area the area itself.
 * @param scene - the scene
 * @param selected - the part
 * @returns the shape, or null where the scene has no such part
 */
export function shapeOf(scene: SceneFile, selected: Selected): PlanShape | null {
  return planShapes(scene).find(({ part, id, piece }) => part === selected.part && id === selected.id && piece === undefined) ?? null;
}

/**
 * The shapes of several parts, found in one walk.
 * @param scene - the scene
 * @param selected - the parts
 * @returns those the scene has, in the order of the parts
 */
export function shapesOf(scene: SceneFile, selected: readonly Selected[]): readonly PlanShape[] {
  const shapes = new Map(planShapes(scene).flatMap((shape) => (shape.piece === undefined ? [[`${shape.part} ${shape.id}`, shape]] : [])));
  return selected.flatMap(({ part, id }) => shapes.get(`${part} ${id}`) ?? []);
}

/**
 * Gives a part other points. A spot level or a breakline keeps its levels where the points come without: point by point if as many, else refused by RangeError.
 * @param scene - the scene
 * @param selected - the part
 * @param points - new points; of a place, the first counts
 * @param piece - hole by its index, or the building line; else the outline, line or place itself
 * @returns what changes; nothing where there is no such part
 * @throws RangeError where points of levels come without levels and in another number
 */
export function withPoints(scene: SceneFile, selected: Selected, points: readonly PlanPoint[], piece?: Piece): ScenePatch {
  const wanted = { part: selected.part as PlanPart, id: selected.id, ...(piece === undefined ? {} : { piece }) };
  return withPointLists(scene, (list) => {
    if (!isSameList(list, wanted)) return list.points;
    if (!hasLevels(list)) return points;
    if (points.some((point) => point[2] === undefined) && points.length !== list.points.length)
      throw new RangeError('withPoints: points of levels come with their levels, or as many as before');
    return points.map((point, i): PlanPoint => (point[2] === undefined ? [point[0], point[1], list.points[i][2] as number] : point));
  });
}
