/** How far water rises from one cell before it finds a way out: it grows from the cell, the lowest cell beside it first, up to an exit. */

import { passes, stepsAround, unitsOf, type WaterExit, type WaterTerrain } from './terrain.ts';

/** What every rise on one terrain uses again. */
export interface RiseGround {
  readonly terrain: WaterTerrain;
  readonly steps: Int32Array;
  readonly exitsAt: ReadonlyMap<number, readonly WaterExit[]>;
  /** Number of the rise that has last been at a cell. */
  readonly seen: Int32Array;
  rises: number;
}

/** Where water gets out: at `units`, the least level at which a way leads from the cell to an exit. */
export interface WayOut {
  readonly units: number;
  readonly exit: WaterExit;
  /** Cell of the terrain where the level is set: a saddle, or the exit's own. */
  readonly over: number;
  /** Whether the exit's own level sets it, not that of a cell on the way. */
  readonly byExit: boolean;
}

/**
 * Prepares a terrain for rises.
 * @param terrain - terrain [m]
 * @param exits - exits [m]
 * @returns exits by cell and room to work in [-]
 * @source none: arithmetic
 */
export function riseGround(terrain: WaterTerrain, exits: readonly WaterExit[]): RiseGround {
  const exitsAt = new Map<number, WaterExit[]>();
  for (const exit of exits) {
    const here = exitsAt.get(exit.cell);
    if (here) here.push(exit);
    else exitsAt.set(exit.cell, [exit]);
  }
  return { terrain, steps: stepsAround(terrain.width), exitsAt, seen: new Int32Array(terrain.level.length), rises: 0 };
}

/**
 * Level to which water rises from a cell when one sink is closed.
 * @param ground - terrain and exits [-]
 * @param from - cell of the terrain [-]
 * @param closedSink - sink that takes nothing, -1 for none [-]
 * @returns the way out, or null where there is none [-]
 * @source growth of one tree by lowest next cell (R. C. Prim 1957), which finds the way with the least highest point
 */
export function wayOut(ground: RiseGround, from: number, closedSink: number): WayOut | null {
  const { terrain, steps, exitsAt, seen } = ground;
  const { level, open } = terrain;
  const turn = ++ground.rises;
  const queue = new LowestFirst();
  const waiting: WaterExit[] = [];
  const reach = (cell: number) => {
    seen[cell] = turn;
    queue.add(level[cell], cell);
    for (const exit of exitsAt.get(cell) ?? []) {
      // An exit stands in the queue with a number below those of cells, so that of two equal levels the way out comes first.
      if (exit.sink !== closedSink) queue.add(unitsOf(terrain, exit.levelM), -waiting.push(exit));
    }
  };
  let units = level[from];
  let over = from;
  reach(from);
  while (queue.size > 0) {
    const at = queue.lowest();
    const entry = queue.take();
    const exit = entry < 0 ? waiting[-entry - 1] : null;
    const byExit = exit !== null && at > units;
    if (at > units) {
      units = at;
      over = exit ? exit.cell : entry;
    }
    if (exit) return { units, exit, over, byExit };
    for (let k = 0; k < 8; k++) {
      const to = entry + steps[k];
      if (seen[to] !== turn && passes(open, steps, entry, k)) reach(to);
    }
  }
  return null;
}

/**
 * Cells under water that has risen from one of them.
 * @param ground - terrain [-]
 * @param from - cell of the terrain [-]
 * @param units - level of the water [-]
 * @returns cells of the terrain that lie lower and hang together with it, rising; none where it lies no lower itself [-]
 * @source none: geometry
 */
export function cellsUnder(ground: RiseGround, from: number, units: number): Int32Array {
  const { terrain, steps, seen } = ground;
  const turn = ++ground.rises;
  if (terrain.level[from] >= units) return new Int32Array(0);
  const cells = [from];
  seen[from] = turn;
  for (let i = 0; i < cells.length; i++) {
    for (let k = 0; k < 8; k++) {
      const to = cells[i] + steps[k];
      if (seen[to] === turn || terrain.level[to] >= units || !passes(terrain.open, steps, cells[i], k)) continue;
      seen[to] = turn;
      cells.push(to);
    }
  }
  return Int32Array.from(cells).sort();
}

/** A binary heap of whole-number keys; equal keys come by the number of their entry. */
class LowestFirst {
  readonly #keys: number[] = [];
  readonly #entries: number[] = [];

  get size(): number {
    return this.#keys.length;
  }

  lowest(): number {
    return this.#keys[0];
  }

  add(key: number, entry: number): void {
    const keys = this.#keys;
    const entries = this.#entries;
    let i = keys.length;
    keys.push(key);
    entries.push(entry);
    while (i > 0) {
      const up = (i - 1) >> 1;
      if (keys[up] < key || (keys[up] === key && entries[up] <= entry)) break;
      keys[i] = keys[up];
      entries[i] = entries[up];
      i = up;
    }
    keys[i] = key;
    entries[i] = entry;
  }

  take(): number {
    const keys = this.#keys;
    const entries = this.#entries;
    const first = entries[0];
    const key = keys.pop()!;
    const entry = entries.pop()!;
    const size = keys.length;
    if (size === 0) return first;
    let i = 0;
    for (let down = 1; down < size; down = 2 * i + 1) {
      if (down + 1 < size && isBefore(keys, entries, down + 1, down)) down++;
      if (key < keys[down] || (key === keys[down] && entry <= entries[down])) break;
      keys[i] = keys[down];
      entries[i] = entries[down];
      i = down;
    }
    keys[i] = key;
    entries[i] = entry;
    return first;
  }
}

function isBefore(keys: readonly number[], entries: readonly number[], a: number, b: number): boolean {
  return keys[a] < keys[b] || (keys[a] === keys[b] && entries[a] < entries[b]);
}
