/** Lines drawn piece by piece, joined where two ends meet. Where three or more meet, nothing is joined: it would be a guess. */

import type { PointM } from '../model/scene-file.ts';

export interface OpenLine {
  readonly points: readonly PointM[];
  readonly levels: readonly number[] | null;
  readonly name?: string;
  readonly block?: string;
}

export interface Chained {
  readonly rings: readonly OpenLine[];
  readonly open: readonly OpenLine[];
  /** Lines that became part of something longer or closed. */
  readonly joined: number;
  /** Greatest distance between two ends that were joined [m]. */
  readonly gapM: number;
}

/** Ends by place, so that each looks only at its neighbours. */
class Nodes {
  readonly #toleranceM: number;
  readonly #cells = new Map<string, number[]>();
  readonly #places: PointM[] = [];
  /** Ends at each node: line · 2, plus 1 for its last point. */
  readonly ends: number[][] = [];

  constructor(toleranceM: number) {
    this.#toleranceM = toleranceM;
  }

  put(end: number, [x, y]: PointM): number {
    const size = 2 * this.#toleranceM;
    const [column, row] = [Math.floor(x / size), Math.floor(y / size)];
    for (let c = column - 1; c <= column + 1; c++) {
      for (let r = row - 1; r <= row + 1; r++) {
        for (const node of this.#cells.get(`${c} ${r}`) ?? []) {
          const [px, py] = this.#places[node];
          if (Math.hypot(px - x, py - y) > this.#toleranceM) continue;
          this.ends[node].push(end);
          return node;
        }
      }
    }
    const key = `${column} ${row}`;
    const node = this.#places.push([x, y]) - 1;
    this.ends.push([end]);
    this.#cells.set(key, [...(this.#cells.get(key) ?? []), node]);
    return node;
  }
}

/**
 * Joins lines.
 * @param lines - open lines of one layer
 * @param toleranceM - ends nearer than this are one [m]
 * @returns rings without their closing point, and what stays open
 */
export function chainLines(lines: readonly OpenLine[], toleranceM: number): Chained {
  const nodes = new Nodes(toleranceM);
  const nodeOf = lines.flatMap(({ points }, i) => [nodes.put(2 * i, points[0]), nodes.put(2 * i + 1, points[points.length - 1])]);
  const partner = (end: number): number | null => {
    const ends = nodes.ends[nodeOf[end]];
    return ends.length === 2 ? (ends[0] === end ? ends[1] : ends[0]) : null;
  };
  const walk = new Walk(lines, partner);
  // Open chains first, from their free ends; what is left goes round.
  for (let i = 0; i < lines.length; i++) for (const end of [2 * i, 2 * i + 1]) if (partner(end) === null) walk.from(end);
  for (let i = 0; i < lines.length; i++) walk.from(2 * i);
  return walk.result();
}

class Walk {
  readonly #lines: readonly OpenLine[];
  readonly #partner: (end: number) => number | null;
  readonly #done: Uint8Array;
  readonly #rings: OpenLine[] = [];
  readonly #open: OpenLine[] = [];
  #joined = 0;
  #gapM = 0;

  constructor(lines: readonly OpenLine[], partner: (end: number) => number | null) {
    this.#lines = lines;
    this.#partner = partner;
    this.#done = new Uint8Array(lines.length);
  }

  result(): Chained {
    return { rings: this.#rings, open: this.#open, joined: this.#joined, gapM: this.#gapM };
  }

  /** Follows a chain from an end. */
  from(start: number): void {
    if (this.#done[start >> 1] === 1) return;
    const points: PointM[] = [];
    const levels: number[] = [];
    let leveled = true;
    let closed = false;
    let count = 0;
    for (let end = start; ; ) {
      const line = this.#lines[end >> 1];
      this.#done[end >> 1] = 1;
      count += 1;
      const turned = (end & 1) === 1;
      const own = turned ? [...line.points].reverse() : line.points;
      if (points.length > 0) this.#measure(points[points.length - 1], own[0]);
      for (const point of points.length > 0 ? own.slice(1) : own) points.push(point);
      leveled &&= line.levels !== null;
      if (line.levels !== null) {
        const ownLevels = turned ? [...line.levels].reverse() : line.levels;
        for (const level of levels.length > 0 ? ownLevels.slice(1) : ownLevels) levels.push(level);
      }
      const next = this.#partner(end ^ 1);
      closed = next === start;
      if (next === null || this.#done[next >> 1] === 1) break;
      end = next;
    }
    const { name, block } = this.#lines[start >> 1];
    const whole = {
      points,
      levels: leveled ? levels : null,
      ...(name === undefined ? {} : { name }),
      ...(block === undefined ? {} : { block }),
    };
    if (count > 1 || closed) this.#joined += count;
    if (closed) this.#rings.push(this.#closedUp(whole));
    else this.#open.push(whole);
  }

  #closedUp(line: OpenLine): OpenLine {
    this.#measure(line.points[line.points.length - 1], line.points[0]);
    return { ...line, points: line.points.slice(0, -1), levels: line.levels?.slice(0, -1) ?? null };
  }

  #measure(a: PointM, b: PointM): void {
    this.#gapM = Math.max(this.#gapM, Math.hypot(a[0] - b[0], a[1] - b[1]));
  }
}
