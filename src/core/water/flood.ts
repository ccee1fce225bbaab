/**
 * Filling of depressions by priority flood: water comes in from the exits and rises; every cell is reached at the lowest level at
 * which a way leads from it to an exit. Levels are whole numbers, so a bucket per level takes the place of a heap, first in first out.
 */

import { CLOSED, stepsAround, unitsOf, type WaterExit, type WaterTerrain } from './terrain.ts';

/** Per cell of the terrain. */
export interface Flood {
  /** Level up to which water stays, in units; the cell's own where not reached, `CLOSED` where closed. Below it only at an exit that lies lower. */
  readonly filled: Int32Array;
  /** Cells in the order in which they were reached, `reached` of them: each after the one it drains to. */
  readonly order: Int32Array;
  readonly reached: number;
  /** Cell from which a cell was reached; the cell itself at an exit, -1 where not reached. */
  readonly parent: Int32Array;
  /** Sink that it was reached from, -1 for none. */
  readonly label: Int16Array;
}

/** Up to so many levels have a bucket each (16 MB); a bucket per level that occurs is slower and gives the very same answer. */
const MOST_BUCKETS = 2 ** 21;

/** Sinks fit the labels. */
const MOST_SINKS = 32767;

/**
 * Fills depressions. Where the levels range over more than about 20 m, buckets stand for the levels that occur, found by sorting
 * them, so that memory depends on the number of cells and not on the range; the result is the same.
 * @param terrain - levels [m]
 * @param exits - where water leaves [m]
 * @returns filled levels, order of filling, parents and sinks [-]
 * @throws RangeError for an exit on a closed cell or a sink out of range
 * @source R. Barnes, C. Lehman, D. Mulla: Priority-flood, Computers & Geosciences 62 (2014), doi 10.1016/j.cageo.2013.04.024
 */
export function flood(terrain: WaterTerrain, exits: readonly WaterExit[]): Flood {
  const { open, level } = terrain;
  for (const { cell, sink } of exits) {
    if (open[cell] !== 1) throw new RangeError(`flood: an exit must be on an open cell, got ${cell}`);
    if (!(sink >= 0 && sink < MOST_SINKS)) throw new RangeError(`flood: a sink must be 0 … ${MOST_SINKS - 1}, got ${sink}`);
  }
  const exitLevels = Int32Array.from(exits, (exit) => unitsOf(terrain, exit.levelM));
  const { low, high } = rangeOf(level, exitLevels);
  if (high - low < MOST_BUCKETS) return fill(terrain, exits, level, exitLevels, low, high);
  const occurring = levelsThatOccur(level, exitLevels);
  const rank = (units: number) => rankOf(occurring, units);
  const ranked = level.map((units) => (units === CLOSED ? CLOSED : rank(units)));
  const result = fill(terrain, exits, ranked, exitLevels.map(rank), 0, occurring.length - 1);
  const filled = result.filled.map((value) => (value === CLOSED ? CLOSED : occurring[value]));
  return { ...result, filled };
}

function rangeOf(level: Int32Array, exitLevels: Int32Array): { low: number; high: number } {
  let low = CLOSED;
  let high = -CLOSED;
  for (const values of [level, exitLevels]) {
    for (let i = 0; i < values.length; i++) {
      const value = values[i];
      if (value === CLOSED) continue;
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  return { low, high };
}

function levelsThatOccur(level: Int32Array, exitLevels: Int32Array): Int32Array {
  const all = new Int32Array(level.length + exitLevels.length);
  all.set(level);
  all.set(exitLevels, level.length);
  all.sort();
  let count = 0;
  for (let i = 0; i < all.length && all[i] < CLOSED; i++) if (i === 0 || all[i] !== all[count - 1]) all[count++] = all[i];
  return all.slice(0, count);
}

function rankOf(rising: Int32Array, value: number): number {
  let low = 0;
  let high = rising.length - 1;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (rising[middle] < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** What `fill` works on. Queues per level are linked lists of entries: cells, then the exits that wait for their level. */
interface Work {
  /** 0 closed, 1 not reached, 2 reached. */
  readonly state: Uint8Array;
  readonly level: Int32Array;
  readonly low: number;
  readonly head: Int32Array;
  readonly tail: Int32Array;
  readonly next: Int32Array;
  readonly filled: Int32Array;
  readonly order: Int32Array;
  readonly parent: Int32Array;
  readonly label: Int16Array;
}

function fill(
  { open, width }: WaterTerrain,
  exits: readonly WaterExit[],
  level: Int32Array,
  exitLevels: Int32Array,
  low: number,
  high: number,
): Flood {
  const cells = level.length;
  const buckets = exits.length === 0 ? 0 : high - low + 1;
  const work: Work = {
    state: open.slice(),
    level,
    low,
    head: new Int32Array(buckets).fill(-1),
    tail: new Int32Array(buckets).fill(-1),
    next: new Int32Array(cells + exits.length).fill(-1),
    filled: level.slice(),
    order: new Int32Array(cells),
    parent: new Int32Array(cells).fill(-1),
    label: new Int16Array(cells).fill(-1),
  };
  /** The cell that an exit drains from now on; -1 where water from there already runs off elsewhere. */
  const drained = (e: number) => {
    const { cell, sink } = exits[e];
    if (work.state[cell] === 2) return -1;
    work.state[cell] = 2;
    work.filled[cell] = exitLevels[e];
    work.parent[cell] = cell;
    work.label[cell] = sink;
    return cell;
  };
  exits.forEach(({ cell }, e) => {
    // What drains its own cell takes it at once: no water runs past it. Other exits wait until water stands at their level.
    const entry = exitLevels[e] > level[cell] ? cells + e : drained(e);
    if (entry >= 0) append(work, exitLevels[e] - low, entry);
  });
  const reached = emptyBuckets(work, stepsAround(width), drained);
  const { filled, order, parent, label } = work;
  return { filled, order, reached, parent, label };
}

function append({ head, tail, next }: Work, bucket: number, entry: number): void {
  if (tail[bucket] < 0) head[bucket] = entry;
  else next[tail[bucket]] = entry;
  tail[bucket] = entry;
}

function emptyBuckets(work: Work, steps: Int32Array, drained: (exit: number) => number): number {
  const { state, level, low, head, tail, next, filled, order, parent, label } = work;
  const cells = level.length;
  let reached = 0;
  for (let bucket = 0; bucket < head.length; bucket++) {
    const water = bucket + low;
    for (let entry = head[bucket]; entry >= 0; entry = next[entry]) {
      const cell = entry < cells ? entry : drained(entry - cells);
      if (cell < 0) continue;
      order[reached++] = cell;
      const from = label[cell];
      for (let k = 0; k < 8; k++) {
        const to = cell + steps[k];
        if (state[to] !== 1) continue;
        // No way between two corners that touch.
        if (k >= 4 && (state[cell + steps[k - 4]] | state[cell + steps[(k - 3) & 3]]) === 0) continue;
        state[to] = 2;
        parent[to] = cell;
        label[to] = from;
        const own = level[to];
        const stays = own > water ? own : water;
        filled[to] = stays;
        const queue = stays - low;
        if (tail[queue] < 0) head[queue] = to;
        else next[tail[queue]] = to;
        tail[queue] = to;
      }
    }
  }
  return reached;
}
