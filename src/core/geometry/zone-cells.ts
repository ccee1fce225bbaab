/** Which zone lies on which cell: one owner for most cells, lists where several zones or bare deck meet. */

import { NO_SHARE, type RegionCells } from './region-cells.ts';

export interface ZoneCells {
  /** Per cell: zone that covers all of it, -1 none, -2 several zones or a part only. */
  readonly owner: Int32Array;
  /** Position of the cell in its owner's list; undefined where there is no owner. */
  readonly position: Int32Array;
  /** Stretches of one owner within a row, all zones and all rows in order: first cell, end (exclusive), zone. */
  readonly runs: Int32Array;
  /** Index of the first run of each row, one more than there are rows. */
  readonly rowRuns: Int32Array;
  /** Cells marked -2, rising. */
  readonly mixed: Int32Array;
  /** Start of each mixed cell's entries, one more than there are mixed cells. */
  readonly start: Int32Array;
  readonly entryZone: Int32Array;
  readonly entryPosition: Int32Array;
  readonly entryShare: Float64Array;
}

/**
 * Finds the owner of every cell.
 * @param laid - cells of every zone [-]
 * @param columns - columns of the grid [-]
 * @param rows - rows of the grid [-]
 * @returns owners and lists [-]
 * @source none: arithmetic
 */
export function ownCells(laid: readonly RegionCells[], columns: number, rows: number): ZoneCells {
  const cellCount = columns * rows;
  const owner = new Int32Array(cellCount).fill(-1);
  const position = new Int32Array(cellCount);
  const counts = new Map<number, number>();
  laid.forEach(({ cells, shares }, zone) => {
    for (let i = 0; i < cells.length; i++) {
      const cell = cells[i];
      if (owner[cell] === -1 && shares[i] >= 1 - NO_SHARE) {
        owner[cell] = zone;
        position[cell] = i;
        continue;
      }
      if (owner[cell] === -2) counts.set(cell, counts.get(cell)! + 1);
      else counts.set(cell, owner[cell] >= 0 ? 2 : 1);
      owner[cell] = -2;
    }
  });
  const mixed = Int32Array.from([...counts.keys()].sort((a, b) => a - b));
  const start = new Int32Array(mixed.length + 1);
  const slot = new Map<number, number>();
  mixed.forEach((cell, i) => {
    start[i + 1] = start[i] + counts.get(cell)!;
    slot.set(cell, i);
  });
  const total = start[mixed.length];
  const entryZone = new Int32Array(total);
  const entryPosition = new Int32Array(total);
  const entryShare = new Float64Array(total);
  const filled = start.slice();
  laid.forEach(({ cells, shares }, zone) => {
    for (let i = 0; i < cells.length; i++) {
      if (owner[cells[i]] !== -2) continue;
      const at = filled[slot.get(cells[i])!]++;
      entryZone[at] = zone;
      entryPosition[at] = i;
      entryShare[at] = shares[i];
    }
  });
  return { owner, position, ...runsOf(owner, columns, rows), mixed, start, entryZone, entryPosition, entryShare };
}

function runsOf(owner: Int32Array, columns: number, rows: number): Pick<ZoneCells, 'runs' | 'rowRuns'> {
  const runs: number[] = [];
  const rowRuns = new Int32Array(rows + 1);
  for (let row = 0; row < rows; row++) {
    const end = (row + 1) * columns;
    for (let from = row * columns; from < end; ) {
      const zone = owner[from];
      let to = from + 1;
      while (to < end && owner[to] === zone) to++;
      if (zone >= 0) runs.push(from, to, zone);
      from = to;
    }
    rowRuns[row + 1] = runs.length / 3;
  }
  return { runs: Int32Array.from(runs), rowRuns };
}
