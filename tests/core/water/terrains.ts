/** Small terrains for the tests of water: levels as functions or printed grids, all cells open unless said otherwise. */

import { layTerrain, terrainCell, type WaterExit, type WaterTerrain } from '../../../src/core/water/terrain.ts';
import { gridOf } from '../../helpers/deck-builder.ts';

export interface Field {
  readonly terrain: WaterTerrain;
  readonly columns: number;
  readonly rows: number;
  readonly levelsM: Float64Array;
  readonly share: Float64Array;
  /** Cell of the terrain at a column and row of the grid. */
  at(column: number, row: number): number;
}

/** Levels at the centres of cells, a function of x and y; `open` says where there is deck. */
export function fieldOf(
  [columns, rows]: readonly [number, number],
  cellM: number,
  levelM: (x: number, y: number) => number,
  open: (x: number, y: number) => boolean = () => true,
): Field {
  const levelsM = new Float64Array(columns * rows);
  const share = new Float64Array(columns * rows);
  for (let cell = 0; cell < levelsM.length; cell++) {
    const x = ((cell % columns) + 0.5) * cellM;
    const y = (Math.floor(cell / columns) + 0.5) * cellM;
    levelsM[cell] = levelM(x, y);
    share[cell] = open(x, y) ? 1 : 0;
  }
  const terrain = layTerrain(gridOf(columns, rows, cellM), share, levelsM);
  return { terrain, columns, rows, levelsM, share, at: (column, row) => terrainCell(terrain, row * columns + column) };
}

/** A printed grid: rows as they stand on paper, cells of 1 m. */
export function printed(rows: readonly (readonly number[])[]): Field {
  return fieldOf([rows[0].length, rows.length], 1, (x, y) => rows[Math.floor(y)][Math.floor(x)]);
}

/** An exit at the level of its own cell. */
export function outletAt(field: Field, column: number, row: number, sink = 0): WaterExit {
  return { cell: field.at(column, row), levelM: field.levelsM[row * field.columns + column], sink };
}

/** Outlets in all cells of the rim; which sink is the function's to say. */
export function rimOutlets(field: Field, sinkOf: (column: number, row: number) => number = () => 0): WaterExit[] {
  const exits: WaterExit[] = [];
  for (let row = 0; row < field.rows; row++) {
    for (let column = 0; column < field.columns; column++) {
      if (row > 0 && column > 0 && row < field.rows - 1 && column < field.columns - 1) continue;
      exits.push(outletAt(field, column, row, sinkOf(column, row)));
    }
  }
  return exits;
}

function random(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A ragged terrain with a few outlets and overflows, each a sink of its own; levels stretched by a factor. */
export function randomField(seed: number, stretch: number): { field: Field; exits: WaterExit[] } {
  const next = random(seed);
  const size: [number, number] = [4 + Math.floor(12 * next()), 4 + Math.floor(12 * next())];
  const field = fieldOf(
    size,
    0.5,
    () => stretch * Math.floor(40 * next()) * 0.0013,
    () => next() < 0.8,
  );
  const exits: WaterExit[] = [];
  for (let cell = 0; cell < field.share.length; cell++) {
    if (field.share[cell] === 0 || next() > 0.05) continue;
    const above = next() < 0.5 ? 0 : stretch * 0.02 * next();
    exits.push({
      cell: field.at(cell % field.columns, Math.floor(cell / field.columns)),
      levelM: field.levelsM[cell] + above,
      sink: exits.length,
    });
  }
  return { field, exits };
}
