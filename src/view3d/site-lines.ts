/** Lines of a site plan on what lies in a stage: ways of machines, reach of cranes and hoses, the band along open edges, posts at access points. */

import type { Snapshot } from '../model/engine.ts';
import type { EdgeLines, Picture } from '../model/picture.ts';
import type { PointM, SceneAccessPoint, SceneSetUpArea } from '../model/scene-file.ts';
import type { PartState } from './part-states.ts';
import { type SurfaceAt, surfaceOf } from './top-index.ts';

/** Height above the surface, so that lines do not sink into it [m]. */
const ABOVE_M = 0.03;
/** Longest stretch drawn straight, and the least into which one is cut where it leaves a surface [m]. */
const STEP_M = 1;
const FINE_M = 0.06;
/** Dashes of a way along the longer side of the deck. */
const DASHES_ACROSS = 60;
const CIRCLE_SIDES = 180;
/** Height of a post as a share of the longer side of the deck, and at least [m]. */
const POST_SHARE = 0.05;
const POST_M = 1.5;

export interface SiteLines {
  readonly band: EdgeLines;
  readonly ways: EdgeLines;
  readonly reach: EdgeLines;
  readonly posts: EdgeLines;
  /** Outlines of set-up and movement areas. */
  readonly areas: EdgeLines;
  readonly areaLabels: readonly AreaLabel[];
  /** Heads of the posts, in the order of the scene's access points. */
  readonly heads: readonly PostHead[];
}

export interface AreaLabel {
  readonly area: SceneSetUpArea;
  readonly at: readonly [number, number, number];
  readonly part: number;
}

export interface PostHead {
  readonly point: SceneAccessPoint;
  /** Local [m]. */
  readonly at: readonly [number, number, number];
  /** Part that it moves with. */
  readonly part: number;
}

/**
 * All lines for a stage; in the finished garden of areas for appliances alone.
 * @param snapshot - evaluated scene
 * @param states - states of the parts as drawn
 * @param stage - index of the stage, null for the finished garden
 */
export function siteLines(snapshot: Snapshot, states: readonly PartState[], stage: number | null): SiteLines {
  const { picture, scene, originM } = snapshot;
  const { min, max } = picture.boundsM;
  const sizeM = Math.max(max[0] - min[0], max[1] - min[1]);
  const surface = surfaceOf(picture, states);
  const local = ([x, y]: PointM): Point => [x - originM[0], y - originM[1]];
  const points = stage === null ? [] : (scene.accessPoints ?? []);
  const ways = (stage === null ? [] : (scene.stages?.[stage]?.plant ?? [])).flatMap(({ route }) =>
    dashes(route.map(local), sizeM / DASHES_ACROSS / 2),
  );
  const circles = points.flatMap(({ at, kind, reachM }) =>
    (kind === 'crane' || kind === 'blower') && reachM !== undefined ? circle(local(at), reachM) : [],
  );
  const heads = points.map((point): PostHead => {
    const at = local(point.at);
    const foot = surface(...at) ?? surface(...inside(at, min, max)) ?? { part: slabOf(picture), zM: min[2] };
    return { point, at: [...at, foot.zM + Math.max(POST_M, POST_SHARE * sizeM)], part: foot.part };
  });
  const set = stage === null ? (scene.setUpAreas ?? []) : [];
  const onDeck = ({ at }: PostHead) => surface(at[0], at[1]) !== null;
  return {
    band: draped(stage === null ? [] : pieces(picture.edgeBand), surface),
    ways: draped(ways, surface),
    reach: draped(circles, surface),
    posts: posts(heads, (head) => (onDeck(head) ? head.at[2] - Math.max(POST_M, POST_SHARE * sizeM) : min[2])),
    areas: draped(
      set.flatMap(({ outline }) => sides(outline.map(local))),
      surface,
    ),
    areaLabels: set.flatMap((area): AreaLabel[] => {
      const at = middle(area.outline.map(local));
      const top = surface(...at);
      return top ? [{ area, at: [...at, top.zM], part: top.part }] : [];
    }),
    heads,
  };
}

type Point = readonly [number, number];
type Piece = readonly [number, number, number, number];
function slabOf({ parts }: Picture): number {
  return Math.max(
    0,
    parts.findIndex(({ kind }) => kind === 'slab'),
  );
}

/** The place of the model's box nearest to a point beside it. */
function inside([x, y]: Point, min: readonly number[], max: readonly number[]): Point {
  const clear = 0.3;
  return [Math.min(max[0] - clear, Math.max(min[0] + clear, x)), Math.min(max[1] - clear, Math.max(min[1] + clear, y))];
}

function sides(ring: readonly Point[]): Piece[] {
  return ring.map((from, i): Piece => [...from, ...(ring[(i + 1) % ring.length] as Point)]);
}

function middle(ring: readonly Point[]): Point {
  const sum = (axis: 0 | 1) => ring.reduce((all, point) => all + point[axis], 0);
  return [sum(0) / ring.length, sum(1) / ring.length];
}

function pieces(flat: Float64Array): Piece[] {
  return Array.from({ length: flat.length / 4 }, (_, i): Piece => [flat[4 * i], flat[4 * i + 1], flat[4 * i + 2], flat[4 * i + 3]]);
}

/** A line cut into dashes with gaps as long, counted through its bends. */
export function dashes(line: readonly Point[], dashM: number): Piece[] {
  const out: Piece[] = [];
  let along = 0;
  for (let i = 1; i < line.length; i++) {
    const [ax, ay] = line[i - 1];
    const [bx, by] = line[i];
    const lengthM = Math.hypot(bx - ax, by - ay);
    const at = (m: number): Point => [ax + ((bx - ax) * m) / lengthM, ay + ((by - ay) * m) / lengthM];
    for (let k = Math.floor(along / dashM / 2); 2 * k * dashM < along + lengthM; k++) {
      const from = Math.max(0, 2 * k * dashM - along);
      const to = Math.min(lengthM, (2 * k + 1) * dashM - along);
      if (to > from) out.push([...at(from), ...at(to)]);
    }
    along += lengthM;
  }
  return out;
}

/** Every second side of a circle. */
function circle([x, y]: Point, radiusM: number): Piece[] {
  const at = (k: number): Point => {
    const angle = (2 * Math.PI * k) / CIRCLE_SIDES;
    return [x + radiusM * Math.cos(angle), y + radiusM * Math.sin(angle)];
  };
  return Array.from({ length: CIRCLE_SIDES / 2 }, (_, k): Piece => [...at(2 * k), ...at(2 * k + 1)]);
}

/** Pieces laid on the surface, each part of them with what lies below it; nothing beyond the deck. */
/** Pieces laid on the uppermost surface drawn. */
export function draped(given: readonly Piece[], surface: SurfaceAt): EdgeLines {
  const positions: number[] = [];
  const parts: number[] = [];
  const lay = ([ax, ay, bx, by]: Piece): void => {
    const lengthM = Math.hypot(bx - ax, by - ay);
    if (lengthM === 0) return;
    // A little inside, where the ends of a piece lie on a border of two surfaces.
    const nudge = Math.min(0.25, 1e-4 / lengthM);
    const a = surface(ax + nudge * (bx - ax), ay + nudge * (by - ay));
    const b = surface(bx - nudge * (bx - ax), by - nudge * (by - ay));
    if (a === null && b === null && lengthM <= STEP_M) return;
    if (lengthM > STEP_M || (a?.part !== b?.part && lengthM > FINE_M)) {
      const [mx, my] = [(ax + bx) / 2, (ay + by) / 2];
      lay([ax, ay, mx, my]);
      lay([mx, my, bx, by]);
      return;
    }
    const top = a ?? b;
    if (top === null || a === null || b === null) return;
    const end = a.part === b.part ? b.zM : top.zM;
    positions.push(ax, ay, top.zM + ABOVE_M, bx, by, end + ABOVE_M);
    parts.push(top.part, top.part);
  };
  for (const piece of given) lay(piece);
  return { positions: Float32Array.from(positions), parts: Uint16Array.from(parts), upper: new Uint8Array(parts.length).fill(1) };
}

/** Each from its foot: on the deck, or beside it on the ground below. */
function posts(heads: readonly PostHead[], footM: (head: PostHead) => number): EdgeLines {
  const positions = heads.flatMap((head) => [head.at[0], head.at[1], footM(head), ...head.at]);
  return {
    positions: Float32Array.from(positions),
    parts: Uint16Array.from(heads.flatMap(({ part }) => [part, part])),
    upper: new Uint8Array(2 * heads.length).fill(1),
  };
}
