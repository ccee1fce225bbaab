/** Blocks put in their places: scaled, turned, mirrored, in rows, and blocks inside blocks. */

import { type Affine, chainOf, moveCurve, movePoint, moveVector } from './curves.ts';
import type { BlockInsert } from './dxf-entities.ts';
import { type Gathering, StopReading } from './gathering.ts';
import { issueOf } from './issue-of.ts';
import { MAX_COPIES, MAX_DEPTH, MAX_FROM_BLOCKS } from './limits.ts';
import type { RawPath, RawShape } from './raw-shapes.ts';
import type { Steps } from './steps.ts';

export interface Block {
  readonly base: readonly [number, number];
  readonly isReference: boolean;
  readonly shapes: RawShape[];
  readonly inserts: BlockInsert[];
}

interface Placing {
  readonly move: Affine;
  readonly scaleZ: number;
  readonly z: number;
}

interface Standing {
  readonly insert: BlockInsert;
  readonly outer: Placing;
  /** Layer that what is drawn on layer 0 takes. */
  readonly layer: string;
  readonly within: readonly string[];
}

const UNPLACED: Placing = { move: { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 }, scaleZ: 1, z: 0 };
/** Shapes between two steps. */
const STEP = 2000;

/** Expands all inserts of the drawing. */
export function* placeBlocks(inserts: readonly BlockInsert[], blocks: ReadonlyMap<string, Block>, gather: Gathering): Steps<void> {
  const work = new BlockWork(blocks, gather);
  for (const [i, insert] of inserts.entries()) {
    yield* work.place({ insert, outer: UNPLACED, layer: insert.layer, within: [] });
    if (i % 100 === 0) yield i / inserts.length;
  }
}

class BlockWork {
  readonly #blocks: ReadonlyMap<string, Block>;
  readonly #gather: Gathering;
  readonly #told = new Set<string>();
  #made = 0;

  constructor(blocks: ReadonlyMap<string, Block>, gather: Gathering) {
    this.#blocks = blocks;
    this.#gather = gather;
  }

  *place({ insert, outer, layer, within }: Standing): Steps<void> {
    const block = this.#blockOf(insert, layer, within);
    if (block === null) return;
    const { columns, rows, along, across } = insert.copies;
    if (columns * rows > MAX_COPIES) this.#tooMany();
    const placedBase = { ...insert.move, e: 0, f: 0 };
    const [backX, backY] = moveVector(placedBase, block.base);
    for (let row = 0; row < rows; row++) {
      for (let column = 0; column < columns; column++) {
        const own: Affine = {
          ...insert.move,
          e: insert.move.e - backX + column * along[0] + row * across[0],
          f: insert.move.f - backY + column * along[1] + row * across[1],
        };
        const placing = {
          move: chainOf(outer.move, own),
          scaleZ: outer.scaleZ * insert.scaleZ,
          z: outer.z + outer.scaleZ * insert.z,
        };
        yield* this.#fill(block, placing, { insert, layer, within });
      }
    }
  }

  *#fill(block: Block, placing: Placing, { insert, layer, within }: Omit<Standing, 'outer'>): Steps<void> {
    const name = this.#gather.text(insert.block);
    const [x, y] = movePoint(placing.move, ...block.base);
    this.#gather.add({ kind: 'block', layer, x, y, turnDeg: insert.turnDeg, block: name });
    for (const shape of block.shapes) {
      this.#made += 1;
      if (this.#made > MAX_FROM_BLOCKS) this.#tooMany();
      if (this.#made % STEP === 0) yield 0;
      this.#gather.add({ ...moved(shape, placing), layer: shape.layer === '0' ? layer : shape.layer, block: name });
    }
    for (const inner of block.inserts) {
      this.#made += 1;
      if (this.#made > MAX_FROM_BLOCKS) this.#tooMany();
      const innerLayer = inner.layer === '0' ? layer : inner.layer;
      yield* this.place({ insert: inner, outer: placing, layer: innerLayer, within: [...within, insert.block] });
    }
  }

  #blockOf(insert: BlockInsert, layer: string, within: readonly string[]): Block | null {
    const block = this.#blocks.get(insert.block.toUpperCase());
    const name = insert.block.slice(0, 60);
    if (block === undefined) {
      this.#gather.ignored(layer, 'INSERT', 'of a block that is not there');
      this.#tell(name, () => this.#gather.warning('BLOCK_MISSING', { block: name }));
      return null;
    }
    if (block.isReference) {
      this.#gather.ignored(layer, 'INSERT', 'of another drawing (XREF)');
      return null;
    }
    if (within.length >= MAX_DEPTH || within.some((outer) => outer.toUpperCase() === insert.block.toUpperCase())) {
      this.#gather.ignored(layer, 'INSERT', 'inside itself');
      this.#tell(name, () => this.#gather.warning('BLOCK_CYCLE', { block: name, most: MAX_DEPTH }));
      return null;
    }
    this.#gather.used(layer, 'INSERT');
    return block;
  }

  #tell(name: string, tell: () => void): void {
    if (this.#told.has(name)) return;
    this.#told.add(name);
    tell();
  }

  #tooMany(): never {
    throw new StopReading(issueOf('error', 'BLOCKS_TOO_MANY', { most: MAX_FROM_BLOCKS }));
  }
}

function moved(shape: RawShape, placing: Placing): RawShape {
  const { move, scaleZ, z } = placing;
  if (shape.kind === 'path') return movedPath(shape, placing);
  const [x, y] = movePoint(move, shape.x, shape.y);
  if (shape.kind === 'circle') return { ...shape, x, y, u: moveVector(move, shape.u), v: moveVector(move, shape.v) };
  return shape.kind === 'point' ? { ...shape, x, y, z: shape.z === null ? null : shape.z * scaleZ + z } : { ...shape, x, y };
}

function movedPath(path: RawPath, placing: Placing): RawPath {
  const { move, scaleZ, z } = placing;
  const points: number[] = [];
  for (let i = 0; i + 1 < path.points.length; i += 2) points.push(...movePoint(move, path.points[i], path.points[i + 1]));
  const levels = path.levels ?? (z === 0 ? null : new Array<number>(points.length / 2).fill(0));
  return {
    ...path,
    points,
    levels: levels?.map((level) => level * scaleZ + z) ?? null,
    curves: path.curves && new Map([...path.curves].map(([i, curve]) => [i, moveCurve(move, curve)])),
    ...(path.holes ? { holes: path.holes.map((hole) => movedPath(hole, placing)) } : {}),
  };
}
