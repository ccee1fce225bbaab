/** Areas of parts read, and put back in one piece or several. */

import type { PointM, SceneFile } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import type { AreaM } from './overlay.ts';
import { idBeside, idsOf, withEntries } from './part-lists.ts';
import { planShapes, shapeOf } from './plan-shapes.ts';
import { patched } from './point-lists.ts';
import { placedWith } from './references.ts';
import type { Refused } from './refusal.ts';
import { ON_EDGE_M, withVerticesInserted } from './shared-vertices.ts';
import { snapIndex } from './snap.ts';

/**
 * The area of a part.
 * @param scene - the scene
 * @param selected - the part
 * @returns outline and, for a zone, its holes; null for what is no area
 */
export function areaIn(scene: SceneFile, selected: Selected): AreaM | null {
  const shape = shapeOf(scene, selected);
  if (shape === null || shape.form !== 'area') return null;
  const outline = shape.points.map(([x, y]): PointM => [x, y]);
  return shape.holes === undefined ? { outline } : { outline, holes: shape.holes };
}

/** The deck with its openings as holes. */
export function deckArea({ deck }: SceneFile): AreaM {
  return { outline: deck.outline, holes: deck.openings ?? [] };
}

export interface WithPieces {
  readonly scene: SceneFile;
  readonly selected: readonly Selected[];
}

/**
 * Gives a part another area, in one piece or several. The first keeps the id; the others come right after it, with all that the whole one had and ids of their own, and stages
 * that placed the whole place them all. Vertices that are new are put into every edge that passes through them.
 * @param scene - the scene
 * @param selected - the part
 * @param pieces - areas, largest first
 * @returns the scene with them, or why it cannot be
 */
export function withPieces(scene: SceneFile, selected: Selected, pieces: readonly AreaM[]): WithPieces | Refused {
  if (pieces.length === 0) return { refused: 'nothing left' };
  const { part, id } = selected;
  if (part !== 'zone' && pieces.some(({ holes = [] }) => holes.length > 0))
    return { refused: part === 'bay' ? 'bay with hole' : 'in pieces' };
  const old = areaIn(scene, selected);
  if (old === null) return { refused: 'no such part' };
  const [first, ...others] = welded(scene, pieces);
  const taken = idsOf(scene, part);
  const more = others.map((area) => ({ id: idBeside(id, taken), area }));
  let next = withEntries(scene, part, (entries) => {
    const whole = entries.find((one) => one.id === id);
    if (whole === undefined) return null;
    const made = [withArea(whole.entry, first), ...more.map((piece) => ({ ...withArea(whole.entry, piece.area), id: piece.id }))];
    return entries.flatMap((one) => (one === whole ? made : [one.entry]));
  });
  const ids = more.map((piece) => piece.id);
  if (part === 'zone' || part === 'object') next = placedWith(next, part, id, ids);
  const before = new Set([old.outline, ...(old.holes ?? [])].flat().map(keyOf));
  const added = [first, ...others]
    .flatMap(({ outline, holes = [] }) => [outline, ...holes].flat())
    .filter((point) => !before.has(keyOf(point)));
  next = patched(next, withVerticesInserted(next, unique(added)));
  return { scene: next, selected: [selected, ...ids.map((one) => ({ part, id: one }))] };
}

/**
 * Areas whose vertices take the very numbers of a vertex that lies there already, but for rounding.
 * @param scene - the scene
 * @param areas - areas to be put into it
 * @returns the same areas
 */
export function welded(scene: SceneFile, areas: readonly AreaM[]): readonly AreaM[] {
  const index = snapIndex(planShapes(scene).filter(({ form }) => form !== 'point'));
  const ring = (points: readonly PointM[]) =>
    points.map((point) => {
      const near = index.verticesNear(point, ON_EDGE_M);
      return near.reduce((best, one) => (one.distanceM < best.distanceM ? one : best), near[0])?.item.at ?? point;
    });
  return areas.map(({ outline, holes }) => ({ outline: ring(outline), ...(holes && { holes: holes.map(ring) }) }));
}

function withArea(entry: object, { outline, holes = [] }: AreaM): object {
  const { holes: _, ...rest } = entry as { readonly holes?: unknown };
  return { ...rest, outline, ...(holes.length > 0 && { holes }) };
}

const keyOf = ([x, y]: PointM) => `${x} ${y}`;

const unique = (points: readonly PointM[]) => [...new Map(points.map((point) => [keyOf(point), point])).values()];
