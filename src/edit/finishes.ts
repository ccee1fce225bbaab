/** How a zone's finished level is given, begun in another way from what there is. */

import type { Point3M, PointM, SceneFile, SceneFinish, SceneZone } from '../model/scene-file.ts';
import { pointInside } from './gaps.ts';

/** Over the highest level of the deck, as a usual build-up comes to, where nothing else is known [m]. */
const USUAL_M = 0.5;

const toMillimetre = (valueM: number): number => Math.round(valueM * 1000) / 1000;

/**
 * A finish of another kind, as near to the present one as is known: levels and planes are kept, else it lies half a metre over the deck's highest spot.
 * @param scene - the scene
 * @param zone - the zone, as it stands
 * @param kind - build-up, level, plane or spots
 * @returns the finish; of spots, one at each of the zone's outermost corners
 */
export function begunFinish(scene: SceneFile, zone: SceneZone, kind: SceneFinish['kind']): SceneFinish {
  const { finish, outline, holes } = zone;
  if (kind === 'build-up' || finish?.kind === kind) return finish?.kind === kind ? finish : { kind: 'build-up' };
  const highestM = Math.max(0, ...(scene.deck.levels?.spots.map(([, , z]) => z) ?? []));
  const levelAt = (at: PointM) => (finish === undefined ? null : levelOf(finish, at)) ?? toMillimetre(highestM + USUAL_M);
  if (kind === 'spots') return { kind, spots: outermost(outline).map((at): Point3M => [at[0], at[1], levelAt(at)]) };
  const [x, y] = pointInside({ outline, ...(holes && { holes }) });
  const at: PointM = [toMillimetre(x), toMillimetre(y)];
  if (kind === 'level') return { kind, levelM: levelAt(at) };
  return { kind, at: [at[0], at[1], levelAt(at)], fallPercent: 2, towardsDeg: 180 };
}

/** Level of a finish at a place, to the millimetre; of spots that of the nearest. Null where the build-up tells it. */
function levelOf(finish: SceneFinish, [x, y]: PointM): number | null {
  if (finish.kind === 'build-up') return null;
  if (finish.kind === 'level') return finish.levelM;
  if (finish.kind === 'plane') {
    const { at, fallPercent, towardsDeg } = finish;
    const towards = (towardsDeg * Math.PI) / 180;
    const alongM = (x - at[0]) * Math.sin(towards) + (y - at[1]) * Math.cos(towards);
    return toMillimetre(at[2] - (alongM * fallPercent) / 100);
  }
  const far = (point: Point3M) => Math.hypot(point[0] - x, point[1] - y);
  const points = [...finish.spots, ...(finish.breaklines ?? []).flat()];
  return points.reduce<Point3M | null>((best, point) => (best !== null && far(best) <= far(point) ? best : point), null)?.[2] ?? null;
}

/** Corners farthest towards the four diagonals: those of a rectangle that stands upright. */
function outermost(outline: readonly PointM[]): readonly PointM[] {
  const signs = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  const farthest = signs.map(([toX, toY]) =>
    outline.reduce((best, point) => (point[0] * toX + point[1] * toY > best[0] * toX + best[1] * toY ? point : best)),
  );
  return [...new Set(farthest)];
}
