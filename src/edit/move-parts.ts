/** Parts moved, turned, mirrored and copied as they are. */

import type { EditPart, ScenePatch } from '../model/history.ts';
import type { Point3M, PointM, SceneFile, SceneFinish } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import { withNets } from './level-nets.ts';
import { idBeside, idsOf, withEntries } from './part-lists.ts';
import {
  finishNet,
  keyed,
  mapped,
  type NetIds,
  OUTLINE_ID,
  openingId,
  type PlanPoint,
  patched,
  patchOf,
  plantId,
  withPointLists,
} from './point-lists.ts';
import { cosSin } from './quarter-turns.ts';
import { placedWith } from './references.ts';

/** x' = a·x - b·y + dx and y' = b·x + a·y + dy: shift and turn (a² + b² = 1), scale where asked. Exact for a plain shift. */
export interface Placement {
  readonly a: number;
  readonly b: number;
  readonly dx: number;
  readonly dy: number;
}

/**
 * A plain shift.
 * @param dx - along x [m]
 * @param dy - along y [m]
 * @returns placement
 */
export function shift(dx: number, dy: number): Placement {
  return { a: 1, b: 0, dx, dy };
}

/**
 * A turn about a point; quarter turns are exact.
 * @param about - stays where it is [m]
 * @param turnDeg - counter-clockwise [°]
 * @returns placement
 */
export function turn(about: PointM, turnDeg: number): Placement {
  const [a, b] = cosSin(turnDeg);
  return { a, b, dx: about[0] - a * about[0] + b * about[1], dy: about[1] - b * about[0] - a * about[1] };
}

/**
 * A placement laid on a place; exact for a plain shift.
 * @param placement - shift, turn
 * @param at - place, with or without a level, which stays
 * @returns where it comes to lie
 */
export function placed<P extends PlanPoint>({ a, b, dx, dy }: Placement, [x, y, ...level]: P): P {
  const isShift = a === 1 && b === 0;
  return [isShift ? x + dx : a * x - b * y + dx, isShift ? y + dy : b * x + a * y + dy, ...level] as unknown as P;
}

/**
 * Moves parts with all that belongs to them: holes, the building line, a zone's own finish (plane or spots; levels stay).
 * Neighbours stay: see `shared-vertices.ts` for what moves together.
 * @param scene - the scene
 * @param selected - parts
 * @param placement - where to; within a gesture always from the scene at its beginning
 * @returns what changes
 */
export function moved(scene: SceneFile, selected: readonly Selected[], placement: Placement): ScenePatch {
  const wanted = new Set(selected.map(({ part, id }) => `${part} ${id}`));
  // Levels of a zone's finish go with the zone, once.
  for (const { id, finish } of scene.zones) {
    if (finish?.kind !== 'spots' || !wanted.has(`zone ${id}`)) continue;
    const { part, spot, line } = finishNet(id);
    for (const i of finish.spots.keys()) wanted.delete(`${part} ${spot(i)}`);
    for (const i of (finish.breaklines ?? []).keys()) wanted.delete(`${part} ${line(i)}`);
  }
  const next = patched(
    scene,
    withPointLists(scene, ({ part, id, points }) => (wanted.has(`${part} ${id}`) ? points.map((at) => placed(placement, at)) : points)),
  );
  const zones = mapped(next.zones, (zone) =>
    zone.finish && wanted.has(`zone ${zone.id}`) ? { ...zone, finish: placedFinish(placement, zone.finish) } : zone,
  );
  return patchOf(scene, keyed(next, 'zones', zones));
}

/** What a part stands in a level or towards a side with goes along; heights stay. */
function placedFinish(placement: Placement, finish: SceneFinish): SceneFinish {
  const all = (points: readonly Point3M[]) => points.map((at) => placed(placement, at));
  if (finish.kind === 'plane') {
    const turnDeg = (Math.atan2(placement.b, placement.a) * 180) / Math.PI;
    const towardsDeg = turnDeg === 0 ? finish.towardsDeg : (((finish.towardsDeg - turnDeg) % 360) + 360) % 360;
    return { ...finish, at: placed(placement, finish.at), towardsDeg };
  }
  if (finish.kind !== 'spots') return finish;
  return { ...finish, spots: all(finish.spots), ...(finish.breaklines && { breaklines: finish.breaklines.map(all) }) };
}

/**
 * Copies parts beside the originals, with new ids. What stages place of a zone or an object, they place of its copy. A copied bay keeps neither permitted loads
 * nor vehicles nor basis: these hold for the place they were given for.
 * @param scene - the scene
 * @param selected - parts; the outline of the deck is not copied
 * @param placement - where the copies lie
 * @returns what changes and the copies
 */
export function duplicated(
  scene: SceneFile,
  selected: readonly Selected[],
  placement: Placement,
): { readonly patch: ScenePatch; readonly selected: readonly Selected[] } {
  let next = scene;
  const copies: Selected[] = [];
  for (const one of selected) {
    const copied = withCopy(next, one);
    if (copied === null) continue;
    next = copied.scene;
    copies.push({ part: one.part, id: copied.id });
  }
  next = patched(next, moved(next, copies, placement));
  return { patch: patchOf(scene, next), selected: copies };
}

interface Copied {
  readonly scene: SceneFile;
  readonly id: string;
}

function withCopy(scene: SceneFile, { part, id }: Selected): Copied | null {
  if (part === 'levels' || part === 'finish') return withCopiedLevel(scene, part, id);
  if (part === 'outline' || id === OUTLINE_ID) return null;
  const copyId = idBeside(id, idsOf(scene, part));
  let at: string | null = null;
  let next = withEntries(scene, part, (entries, stage) => {
    const original = entries.find((entry) => entry.id === id)?.entry;
    if (original === undefined) return null;
    const all = entries.map(({ entry }) => entry);
    if ('id' in original) at = copyId;
    else at = part === 'plant' ? plantId(stage ?? '', all.length) : openingId(all.length);
    return [...all, copyOf(part, original, copyId)];
  });
  if (at === null) return null;
  if (part === 'zone' || part === 'object') next = placedWith(next, part, id, [copyId]);
  return { scene: next, id: at };
}

function copyOf(part: EditPart, original: object, id: string): object {
  if (!('id' in original)) return Array.isArray(original) ? [...original] : { ...original };
  if (part === 'bay' && 'outline' in original) return { id, outline: original.outline };
  return { ...original, id };
}

/** A spot or breakline of the deck or of a finish, once more at the end of its net. */
function withCopiedLevel(scene: SceneFile, part: NetIds['part'], id: string): Copied | null {
  let at: string | null = null;
  const next = withNets(scene, part, (net, ids) => {
    const { spots, breaklines = [] } = net;
    const spot = spots.find((_, i) => ids.spot(i) === id);
    const line = breaklines.find((_, i) => ids.line(i) === id);
    if (spot !== undefined) {
      at = ids.spot(spots.length);
      return { ...net, spots: [...spots, spot] };
    }
    if (line === undefined) return net;
    at = ids.line(breaklines.length);
    return { ...net, breaklines: [...breaklines, line] };
  });
  return at === null ? null : { scene: next, id: at };
}
