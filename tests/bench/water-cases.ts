/** The benchmark's cases of water: filling of depressions, and the whole way from levels to what arrives at the outlets. */

import { flood } from '../../src/core/water/flood.ts';
import { accumulate, flowOf } from '../../src/core/water/flow.ts';
import { layTerrain, terrainCell, type WaterExit, type WaterTerrain } from '../../src/core/water/terrain.ts';
import type { GridShape } from '../../src/model/maps.ts';
import { type BenchCase, copyOf, prove } from './bench-case.ts';

const SIDE_M = 100;

/** Deck of 100 m × 100 m with 16 outlets in its dips, 1.25 % of fall, a sag of 30 mm and two openings. */
function benchWater(cellM: number): { terrain: WaterTerrain; exits: WaterExit[] } {
  const count = Math.round(SIDE_M / cellM);
  const grid: GridShape = { columns: count, rows: count, cellM, x0M: 0, y0M: 0 };
  const share = new Float64Array(count * count);
  const levelsM = new Float64Array(count * count);
  const offM = (along: number) => Math.abs((along % 25) - 12.5);
  for (let cell = 0; cell < share.length; cell++) {
    const x = ((cell % count) + 0.5) * cellM;
    const y = (Math.floor(cell / count) + 0.5) * cellM;
    const isOpening = (x > 30 && x < 36 && y > 40 && y < 48) || (x > 70 && x < 78 && y > 60 && y < 66);
    share[cell] = isOpening ? 0 : 1;
    levelsM[cell] = 0.0125 * Math.max(offM(x), offM(y)) - 0.03 * Math.sin((Math.PI * x) / 8.3) ** 2 * Math.sin((Math.PI * y) / 7.7) ** 2;
  }
  const terrain = layTerrain(grid, share, levelsM);
  const exits = Array.from({ length: 16 }, (_, sink) => {
    const column = Math.floor((12.5 + 25 * (sink % 4)) / cellM);
    const row = Math.floor((12.5 + 25 * Math.floor(sink / 4)) / cellM);
    const cell = row * count + column;
    return { cell: terrainCell(terrain, cell), levelM: levelsM[cell], sink };
  });
  return { terrain, exits };
}

/** Cases for one cell size; throws where a result is wrong, before anything is timed. */
export function waterCases(cellM: number): BenchCase[] {
  const fine = cellM < 0.2;
  const { terrain, exits } = benchWater(cellM);
  const sources = Float64Array.from(terrain.open);
  const cells = sources.reduce((sum, open) => sum + open, 0);
  const route = () => {
    const flooded = flood(terrain, exits);
    return accumulate(flowOf(terrain, flooded), flooded, sources);
  };
  proveFlood(terrain, exits);
  provePlane();
  const sums = route();
  const arrived = exits.reduce((sum, { cell }) => sum + sums[cell], 0);
  prove(Math.abs(arrived / cells - 1) < 1e-12, `water: ${arrived} of ${cells} cells arrive`);
  const size = terrain.columns * terrain.rows;
  const written = [new Int32Array(size), new Int32Array(size), new Int16Array(size)];
  const limit = 'levels, parents and labels (10 bytes a cell)';
  return [
    {
      id: 'flood',
      what: 'filling of depressions to 0.01 mm, 16 outlets',
      limit,
      run: () => {
        flood(terrain, exits);
      },
      copy: copyOf(...written),
      target: fine ? 88 : 115,
    },
    {
      id: 'water',
      what: 'filling, directions, and sums at the outlets',
      limit,
      run: () => {
        route();
      },
      copy: copyOf(...written),
      target: fine ? 195 : 280,
    },
  ];
}

/** Every cell stands at its own level or at the level of the cell that it drains to, and no lower than either. */
function proveFlood(terrain: WaterTerrain, exits: readonly WaterExit[]): void {
  const { filled, order, reached, parent } = flood(terrain, exits);
  for (let i = 0; i < reached; i++) {
    const cell = order[i];
    const wanted = Math.max(terrain.level[cell], filled[parent[cell]]);
    prove(filled[cell] === wanted, `flood: level of cell ${cell}`);
  }
}

/** A square plane turned by 20°: the side gutter gets tan 20° / 2 of the square within the gutters, and its own cells. */
function provePlane(): void {
  const count = 200;
  const grid: GridShape = { columns: count, rows: count, cellM: 0.25, x0M: 0, y0M: 0 };
  const a = (20 * Math.PI) / 180;
  const levelsM = Float64Array.from({ length: count * count }, (_, cell) => {
    return 0.005 * (Math.floor(cell / count) * Math.cos(a) - (cell % count) * Math.sin(a));
  });
  const terrain = layTerrain(grid, new Float64Array(count * count).fill(1), levelsM);
  const exits: WaterExit[] = [];
  for (let cell = 0; cell < levelsM.length; cell++) {
    const column = cell % count;
    const row = Math.floor(cell / count);
    if (column > 0 && row > 0 && column < count - 1 && row < count - 1) continue;
    const side = column === count - 1 && row > 0 && row < count - 1;
    exits.push({ cell: terrainCell(terrain, cell), levelM: levelsM[cell], sink: side ? 1 : 0 });
  }
  const flooded = flood(terrain, exits);
  const sums = accumulate(flowOf(terrain, flooded), flooded, Float64Array.from(terrain.open));
  const side = exits.reduce((sum, { cell, sink }) => sum + (sink === 1 ? sums[cell] : 0), 0);
  const expected = (Math.tan(a) / 2) * (count - 2) ** 2 + (count - 2);
  prove(Math.abs(side - expected) / count ** 2 < 0.003, `water: share of a plane, ${side} of ${expected} cells`);
}
