/** Reach cell by cell: how what a stage brings comes to each place, and in which direction it is laid. */

import { type GridShape, REACH_CLASSES } from '../../model/maps.ts';
import type { AccessInput } from '../../model/route-input.ts';
import { bearingCells, broughtTo, isDriven, isSwung, ofUse, type ReachSite, travelM } from './reach.ts';
import { smoothWayM } from './smooth-way.ts';

const [DRIVEN, LIFTED, UNREACHED, IDLE] = REACH_CLASSES.keys();
/** Cells looked at on every side for the direction of the way. */
const AROUND = 2;
/** A direction with less than this share of its parts in common has none [-]. */
const NO_DIRECTION = 1e-6;

export interface ReachCells {
  /** Index into `REACH_CLASSES` per cell of the deck; where zones meet in a cell, the worst. */
  readonly classes: Uint8Array;
  /** Area of each class, exact by the shares of zones [m²]. */
  readonly classM2: readonly number[];
  /** Bearing in which material is laid where machines bring it, from far to near; NaN elsewhere [°]. */
  readonly towardsDeg: Float32Array;
}

/**
 * How each place of the deck is reached in a stage. Ground that cranes or hoses reach counts as driven where machines come too.
 * @param site - zones on the deck and the plan [-]
 * @param access - access points, local [m]
 * @param stage - stage that begins [-]
 * @returns classes, areas [m²] and directions [°]
 * @source contract.md, section 4, `stage.reach`
 */
export function reachCells(site: ReachSite, access: readonly AccessInput[], stage: number): ReachCells {
  const { grid, areaM2 } = site.ground;
  const wayM = travelM(grid, bearingCells(site, stage), access);
  const classes = new Uint8Array(grid.columns * grid.rows).fill(IDLE);
  const shares = [0, 0, 0, 0];
  site.laid.forEach(({ cells, shares: share }, z) => {
    const brought = broughtTo(site, stage, z);
    if (!brought) return;
    const useful = ofUse(access, brought.blown);
    for (let i = 0; i < cells.length; i++) {
      const cell = cells[i];
      const of = isDriven(grid, cell, wayM) ? DRIVEN : isSwung(grid, cell, useful) ? LIFTED : UNREACHED;
      shares[of] += share[i];
      if (classes[cell] === IDLE || of > classes[cell]) classes[cell] = of;
    }
  });
  const classM2 = shares.map((share) => share * grid.cellM * grid.cellM);
  classM2[IDLE] = Math.max(0, areaM2 - classM2[DRIVEN] - classM2[LIFTED] - classM2[UNREACHED]);
  return { classes, classM2, towardsDeg: directions(grid, classes, smoothWayM(grid, wayM)) };
}

/** Down the way to the access: the mean of all differences to the cells around, so that a machine retreats onto ground it has not laid. */
function directions(grid: GridShape, classes: Uint8Array, wayM: Float64Array): Float32Array {
  const towardsDeg = new Float32Array(classes.length).fill(Number.NaN);
  for (let cell = 0; cell < classes.length; cell++) {
    if (classes[cell] !== DRIVEN || wayM[cell] === Infinity) continue;
    const [x, y] = descent(grid, wayM, cell);
    if (Math.hypot(x, y) > NO_DIRECTION) towardsDeg[cell] = ((Math.atan2(x, y) * 180) / Math.PI + 360) % 360;
  }
  return towardsDeg;
}

function descent({ columns, rows }: GridShape, wayM: Float64Array, cell: number): [number, number] {
  const column = cell % columns;
  const row = (cell - column) / columns;
  const own = wayM[cell];
  let x = 0;
  let y = 0;
  for (let dy = -AROUND; dy <= AROUND; dy++) {
    if (row + dy < 0 || row + dy >= rows) continue;
    for (let dx = -AROUND; dx <= AROUND; dx++) {
      if (column + dx < 0 || column + dx >= columns) continue;
      const way = wayM[cell + dy * columns + dx];
      if (way === Infinity) continue;
      const squared = dx * dx + dy * dy || 1;
      x += ((own - way) * dx) / squared;
      y += ((own - way) * dy) / squared;
    }
  }
  return [x, y];
}
