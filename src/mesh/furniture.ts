/** Everything drawn besides layers and slab: what stands on the garden, on the deck and below it. Sizes not in the scene are our own. */

import { type Surface, surfaceLevelM } from '../core/levels/surface.ts';
import type { PartKind } from '../model/picture.ts';
import { drapedLine } from './draped-lines.ts';
import { circleLoop, type FlatSolid, tube, wall } from './flat-solid.ts';
import type { GroundAt } from './ground.ts';
import { blockSolid, heapSolid } from './heap-solids.ts';
import type { PictureInput } from './picture-input.ts';
import type { BarePrism } from './prism.ts';
import { retainingSolid } from './retaining.ts';
import { treeSolids } from './tree-solids.ts';

/** One part made of small solids. */
export interface Piece {
  readonly kind: PartKind;
  readonly owner: string;
  readonly solids: readonly FlatSolid[];
  /** The same shape for cuts, where it has one. */
  readonly prisms?: readonly BarePrism[];
  /** False for leaves, which would turn black with ink. */
  readonly inked: boolean;
  /** Rises above all layers when exploded; otherwise it stays with the slab. */
  readonly above: boolean;
  /** As in `Part`. */
  readonly stageFrom: number;
  readonly stageTo: number;
}

export interface Pieces {
  readonly pieces: readonly Piece[];
  readonly notDrawn: readonly { readonly owner: string; readonly why: string }[];
}

/** Drawn height of a column below the slab [m]. */
const COLUMN_M = 2.6;
/** Outlet: ring and cover [m]. */
const OUTLET = { outerM: 0.15, innerM: 0.11, ringM: 0.03, coverM: 0.1, coverHighM: 0.02, sides: 20 };
/** Thickness of upstands and thresholds [m]. */
const EDGE_WIDE_M = 0.12;
/** Longest stretch of a wall between two looks at the ground [m]. */
const WALL_STEP_M = 0.5;

/**
 * Pieces that are always there: columns, outlets, upstands and thresholds.
 * @param input - furniture and deck surface [m]
 * @returns pieces, and what could not be drawn [m]
 * @source none: geometry
 */
export function deckPieces(input: PictureInput): Pieces {
  const { furniture, deckSurface } = input;
  const fixed = { inked: true, above: false, stageFrom: -1, stageTo: -1 };
  const pieces: Piece[] = [];
  const notDrawn: { owner: string; why: string }[] = [];
  for (const column of furniture.columns) {
    pieces.push({ ...fixed, kind: 'column', owner: column.id, solids: [columnSolid(column, deckSurface, furniture.slabM)] });
  }
  for (const outlet of furniture.outlets) {
    const z = surfaceLevelM(deckSurface, outlet.x, outlet.y);
    pieces.push({ ...fixed, kind: 'outlet', owner: outlet.id, solids: outletSolids(outlet.x, outlet.y, z) });
  }
  for (const edge of furniture.edges) {
    const line = flatten(drapedLine(edge.line, deckSurface));
    const span = (x: number, y: number): [number, number] => {
      const z = surfaceLevelM(deckSurface, x, y);
      return [z, Math.max(z, edge.membraneTopM)];
    };
    const rises = line.some((_, i) => i % 2 === 0 && surfaceLevelM(deckSurface, line[i], line[i + 1]) < edge.membraneTopM);
    const solid = rises ? wall(line, EDGE_WIDE_M, span) : null;
    if (solid !== null) pieces.push({ ...fixed, kind: 'edge', owner: edge.id, solids: [solid] });
    else notDrawn.push({ owner: edge.id, why: rises ? 'its line has no length' : 'its membrane does not rise above the deck' });
  }
  return { pieces, notDrawn };
}

function flatten(xyz: Float64Array): number[] {
  return [...xyz].filter((_, i) => i % 3 !== 2);
}

function columnSolid(column: PictureInput['furniture']['columns'][number], deck: Surface, slabM: number): FlatSolid {
  const [wide, deep] = column.sizeM;
  const under = (x: number, y: number) => surfaceLevelM(deck, x, y) - slabM;
  const footM = under(column.x, column.y) - COLUMN_M;
  const corners = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([sx, sy]) => [column.x + (sx * wide) / 2, column.y + (sy * deep) / 2]);
  const foot = corners.flatMap(([x, y]) => [x, y, footM]);
  const head = corners.flatMap(([x, y]) => [x, y, under(x, y)]);
  return tube([foot, head], false);
}

function outletSolids(x: number, y: number, z: number): FlatSolid[] {
  const loop = (radiusM: number, level: number) => circleLoop({ x, y, radiusM, sides: OUTLET.sides }, level);
  const ringTop = z + OUTLET.ringM;
  const ring = tube([loop(OUTLET.outerM, z), loop(OUTLET.outerM, ringTop), loop(OUTLET.innerM, ringTop), loop(OUTLET.innerM, z)], true);
  return [ring, tube([loop(OUTLET.coverM, z), loop(OUTLET.coverM, z + OUTLET.coverHighM)], false)];
}

/**
 * Trees, line loads, retaining edges and blocks on the finished garden.
 * @param input - furniture, objects and their stages [m]
 * @param ground - level of the ground [m]
 * @param never - stage given to objects that no stage places [-]
 * @returns pieces, and what could not be drawn [m]
 * @source none: geometry
 */
export function objectPieces(input: PictureInput, ground: GroundAt, never: number): Pieces {
  const pieces: Piece[] = [];
  const notDrawn: { owner: string; why: string }[] = [];
  const finished = (x: number, y: number) => ground(x, y, null);
  const common = (object: number) => {
    const stage = input.objectStages[object];
    return { owner: input.input.objects[object].id, inked: true, above: true, stageFrom: stage < 0 ? never : stage, stageTo: -1 };
  };
  const put = (kind: PartKind, object: number, solid: FlatSolid | null, prisms: readonly BarePrism[] = []): void => {
    const piece = common(object);
    if (solid === null) notDrawn.push({ owner: piece.owner, why: 'it has no extent in plan' });
    else pieces.push({ ...piece, kind, solids: [solid], prisms });
  };
  for (const tree of input.furniture.trees) {
    const { trunk, crown } = treeSolids({ ...tree, z: finished(tree.x, tree.y), seed: tree.object });
    put('tree trunk', tree.object, trunk);
    pieces.push({ ...common(tree.object), kind: 'tree crown', inked: false, solids: crown });
  }
  for (const { object, line, widthM, heightM } of input.furniture.lines) {
    const span = (x: number, y: number): [number, number] => [finished(x, y), finished(x, y) + heightM];
    put('line load', object, wall(stepped(line), widthM, span));
  }
  for (const { object, ...shape } of input.furniture.retaining) {
    const made = retainingSolid(shape, finished, (x, y) => surfaceLevelM(input.deckSurface, x, y));
    put('retaining', object, made?.solid ?? null, made?.prisms);
  }
  for (const { object, ring, heightM } of input.furniture.blocks) put('block', object, blockSolid(ring, heightM, finished));
  return { pieces, notDrawn };
}

/** The line with a point at least every half metre. */
function stepped(line: Float64Array): number[] {
  const out = [line[0], line[1]];
  for (let i = 2; i < line.length; i += 2) {
    const [ax, ay, bx, by] = line.subarray(i - 2, i + 2);
    const steps = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / WALL_STEP_M));
    for (let k = 1; k <= steps; k++) out.push(ax + ((bx - ax) * k) / steps, ay + ((by - ay) * k) / steps);
  }
  return out;
}

/**
 * Stockpiles of all stages, each on what is placed by the end of its stage.
 * @param input - stages [m]
 * @param ground - level of the ground [m]
 * @returns pieces, and what could not be drawn [m]
 * @source none: geometry
 */
export function stockpilePieces(input: PictureInput, ground: GroundAt): Pieces {
  const pieces: Piece[] = [];
  const notDrawn: { owner: string; why: string }[] = [];
  input.input.stages?.forEach((stage, index) => {
    for (const pile of stage.stockpiles) {
      const solid = heapSolid(pile.ring, pile.heightM, (x, y) => ground(x, y, index));
      if (solid === null) notDrawn.push({ owner: pile.id, why: 'its outline has no area' });
      else pieces.push({ kind: 'stockpile', owner: pile.id, solids: [solid], inked: true, above: true, stageFrom: index, stageTo: index });
    }
  });
  return { pieces, notDrawn };
}
