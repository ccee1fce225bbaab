/** Where water leaves the deck: outlets and overflows on their cells, edges of the deck that it spills over. */

import type { GridShape } from '../../model/maps.ts';
import type { OutletFault, SpillInput, WaterOutlet, WaterSite } from '../../model/water-input.ts';
import { cellCentreM } from '../geometry/grid.ts';
import { type Surface, surfaceLevelM } from '../levels/surface.ts';
import { stepsAround, terrainCell, UNIT_M, type WaterExit, type WaterTerrain } from './terrain.ts';

export interface PlacedExits {
  /** Outlets first, then spills; `sink` is the index of the outlet, or the number of outlets plus the index of the spill. */
  readonly exits: readonly WaterExit[];
  readonly faults: readonly (OutletFault | null)[];
  /** Per outlet: cell of the grid, -1 where it is left out. */
  readonly outletCells: Int32Array;
  readonly ignoredSpills: readonly number[];
}

/** The deck as exits are placed on it. */
export interface ExitGround {
  readonly grid: GridShape;
  readonly terrain: WaterTerrain;
  readonly deckLevelsM: Float64Array;
  readonly deckSurface: Surface;
}

/**
 * Places outlets, overflows and spills. An outlet takes water at the level of its own point, where that is lower than the middle of
 * its cell, unless it is given a higher level. A spill counts in the cells at the rim of the deck that its line passes or comes near to, within a cell.
 * @param on - grid, terrain and levels [m]
 * @param site - outlets and spills, local [m]
 * @returns exits, what is wrong with outlets, and spills that touch no rim [m]
 * @source contract.md, section 2, Water
 */
export function placeExits(on: ExitGround, site: WaterSite): PlacedExits {
  const exits: WaterExit[] = [];
  const outletCells = new Int32Array(site.outlets.length).fill(-1);
  const faults = site.outlets.map((outlet, sink): OutletFault | null => {
    const cell = openCellNear(on, outlet.x, outlet.y);
    if (cell < 0) return 'off deck';
    if (outlet.kind === 'overflow' && outlet.invertM === null) return 'no invert';
    outletCells[sink] = cell;
    const ownM = on.deckLevelsM[cell];
    // An outlet set below the membrane, in a sump, takes it at the membrane; one above it leaves water standing up to its own level.
    const raised = outlet.invertM !== null && outlet.invertM > ownM + UNIT_M / 2;
    const levelM = raised ? outlet.invertM! : Math.min(ownM, pointLevelM(on, outlet, ownM));
    exits.push({ cell: terrainCell(on.terrain, cell), levelM, sink });
    return outlet.kind === 'overflow' && !raised ? 'below deck' : null;
  });
  const ignoredSpills: number[] = [];
  site.spills.forEach((spill, s) => {
    const cells = rimCells(on, spill);
    if (cells.size === 0) ignoredSpills.push(s);
    for (const [near, cell] of cells) {
      // Where the deck lies higher than the edge, water must first come up there.
      exits.push({ cell, levelM: Math.max(spill.membraneTopM, on.deckLevelsM[near]), sink: site.outlets.length + s });
    }
  });
  return { exits, faults, outletCells, ignoredSpills };
}

function pointLevelM({ deckSurface }: ExitGround, { x, y }: WaterOutlet, otherwise: number): number {
  const levelM = surfaceLevelM(deckSurface, x, y);
  return Number.isNaN(levelM) ? otherwise : levelM;
}

/** The open cell under a point, or the nearest one that is no more than a cell away; -1 for none. */
function openCellNear({ grid, terrain }: ExitGround, x: number, y: number): number {
  const column = Math.floor((x - grid.x0M) / grid.cellM);
  const row = Math.floor((y - grid.y0M) / grid.cellM);
  let best = -1;
  let least = Infinity;
  for (let r = row - 1; r <= row + 1; r++) {
    for (let c = column - 1; c <= column + 1; c++) {
      if (r < 0 || c < 0 || r >= grid.rows || c >= grid.columns) continue;
      const cell = r * grid.columns + c;
      if (terrain.open[terrainCell(terrain, cell)] === 0) continue;
      if (c === column && r === row) return cell;
      const [cx, cy] = cellCentreM(grid, cell);
      const distance = Math.hypot(cx - x, cy - y);
      if (distance >= least) continue;
      least = distance;
      best = cell;
    }
  }
  return best;
}

/** Cells at the rim of the deck along a line: of the grid, and the same of the terrain. */
function rimCells(on: ExitGround, { line }: SpillInput): Map<number, number> {
  const { grid, terrain } = on;
  const found = new Map<number, number>();
  const steps = stepsAround(terrain.width);
  for (let i = 0; i + 3 < line.length; i += 2) {
    const lengthM = Math.hypot(line[i + 2] - line[i], line[i + 3] - line[i + 1]);
    const pieces = Math.max(1, Math.ceil(lengthM / (grid.cellM / 2)));
    for (let k = 0; k < pieces; k++) {
      // Middles of the pieces: an end of the line belongs to the edge beyond it as well.
      const share = (k + 0.5) / pieces;
      const near = openCellNear(on, line[i] + share * (line[i + 2] - line[i]), line[i + 1] + share * (line[i + 3] - line[i + 1]));
      if (near < 0) continue;
      const cell = terrainCell(terrain, near);
      if (steps.some((step) => terrain.open[cell + step] === 0)) found.set(near, cell);
    }
  }
  return found;
}
