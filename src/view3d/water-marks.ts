/** Marks on the slab: outlets, overflows, the one that is blocked, and the place where rising water leaves. */

import type { Snapshot } from '../model/engine.ts';
import type { EdgeLines, Picture, Prism } from '../model/picture.ts';
import type { PointM, SceneOutlet } from '../model/scene-file.ts';
import { cellCentre } from './cell-mark.ts';
import type { FieldLabel } from './field-labels.ts';

/** Size of a mark as a share of the longer side of the deck, and at least [m]. */
const MARK_SHARE = 0.006;
const MARK_M = 0.35;
const CIRCLE_SIDES = 24;
/** Height above the slab, so that lines do not sink into it [m]. */
const ABOVE_M = 0.02;

/** What stands on the marks. */
export interface WaterWords {
  readonly outlet: (outlet: SceneOutlet) => string;
  readonly blocked: (id: string) => string;
  /** At the place where the water leaves; null for an outlet beyond a saddle that is not named. */
  readonly leaves: (into: string | null) => string;
}

/** Where the water of the blocked outlet goes. */
export interface Leaving {
  readonly outlet: string;
  readonly into: string | null;
  /** -1 where nothing lets it out. */
  readonly overCell: number;
}

export interface WaterMarks {
  readonly open: EdgeLines;
  readonly closed: EdgeLines;
  readonly labels: readonly FieldLabel[];
}

/** The slab; null where it could not be drawn. */
export function slabPrism({ prisms, parts }: Picture): Prism | null {
  return prisms.find((prism) => parts[prism.parts[0]]?.kind === 'slab') ?? null;
}

/**
 * Marks of all outlets and overflows.
 * @param snapshot - evaluated scene
 * @param words - what the labels say
 * @param leaving - the blocked outlet; null for none
 * @returns lines that move with the slab, and labels: of all, or of the blocked outlet and its exit alone
 */
export function waterMarks(snapshot: Snapshot, words: WaterWords, leaving: Leaving | null): WaterMarks {
  const { scene, picture, originM, grid } = snapshot;
  const slab = slabPrism(picture);
  const outlets = scene.deck.outlets ?? [];
  if (slab === null) return { open: linesOf([], 0), closed: linesOf([], 0), labels: [] };
  const { min, max } = picture.boundsM;
  const sizeM = Math.max(MARK_M, MARK_SHARE * Math.max(max[0] - min[0], max[1] - min[1]));
  const on = (x: number, y: number): At => [x, y, slabLevelM(slab, x, y) + ABOVE_M];
  const place = ({ at }: { readonly at: PointM }): At => on(at[0] - originM[0], at[1] - originM[1]);
  const isBlocked = ({ id }: SceneOutlet) => id === leaving?.outlet;
  const label = (text: string, at: At): FieldLabel => ({ text, at, liftM: 0, kind: 'post' });
  const over = leaving !== null && leaving.overCell >= 0 ? on(...cellCentre(grid, leaving.overCell)) : null;
  const first = outlets.filter(isBlocked).map((outlet) => label(words.blocked(outlet.id), place(outlet)));
  const exit = over === null ? [] : [label(words.leaves(leaving?.into ?? null), over)];
  const others = outlets.filter((outlet) => !isBlocked(outlet)).map((outlet) => label(words.outlet(outlet), place(outlet)));
  const shapes = outlets.filter((outlet) => !isBlocked(outlet)).flatMap((outlet) => shapeOf(outlet.kind, place(outlet), sizeM));
  const crosses = outlets
    .filter(isBlocked)
    .flatMap((outlet) => [...shapeOf('outlet', place(outlet), sizeM), ...cross(place(outlet), sizeM)]);
  const arrows = over === null ? [] : shapeOf('leaving', over, 1.4 * sizeM);
  return {
    open: linesOf(shapes, slab.parts[0]),
    closed: linesOf([...crosses, ...arrows], slab.parts[0]),
    // With one blocked the eye is to find that one.
    labels: leaving === null ? others : [...first, ...exit],
  };
}

type At = readonly [number, number, number];

/** An outlet is round, an overflow square; where water leaves, a triangle. */
function shapeOf(kind: SceneOutlet['kind'] | 'leaving', [x, y, z]: At, sizeM: number): number[] {
  const sides = { outlet: CIRCLE_SIDES, overflow: 4, leaving: 3 }[kind];
  const at = (k: number) => {
    const angle = (2 * Math.PI * k) / sides + Math.PI / (kind === 'overflow' ? 4 : 2);
    return [x + sizeM * Math.cos(angle), y + sizeM * Math.sin(angle), z];
  };
  return Array.from({ length: sides }, (_, k) => [...at(k), ...at(k + 1)]).flat();
}

function cross([x, y, z]: At, sizeM: number): number[] {
  const arm = sizeM * Math.SQRT1_2;
  return [x - arm, y - arm, z, x + arm, y + arm, z, x - arm, y + arm, z, x + arm, y - arm, z];
}

function linesOf(positions: readonly number[], part: number): EdgeLines {
  const vertices = positions.length / 3;
  return { positions: Float32Array.from(positions), parts: new Uint16Array(vertices).fill(part), upper: new Uint8Array(vertices).fill(1) };
}

/** Membrane at a place [m]; beside the deck at the corner of its net nearest to it. */
export function slabLevelM({ plan, triangles, heights }: Prism, x: number, y: number): number {
  const top = heights.length - plan.length / 2;
  const at = (v: number): Point => [plan[2 * v], plan[2 * v + 1]];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = triangles.subarray(t, t + 3);
    const twice = twiceArea(at(a), at(b), at(c));
    const ofA = twiceArea(at(b), at(c), [x, y]) / twice;
    const ofB = twiceArea(at(c), at(a), [x, y]) / twice;
    const ofC = 1 - ofA - ofB;
    if (Math.min(ofA, ofB, ofC) >= -1e-9) return ofA * heights[top + a] + ofB * heights[top + b] + ofC * heights[top + c];
  }
  const apart = (v: number) => (plan[2 * v] - x) ** 2 + (plan[2 * v + 1] - y) ** 2;
  let nearest = 0;
  for (let v = 1; v < plan.length / 2; v++) if (apart(v) < apart(nearest)) nearest = v;
  return heights[top + nearest];
}

type Point = readonly [number, number];

function twiceArea([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number {
  return (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
}
