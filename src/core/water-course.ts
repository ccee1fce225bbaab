/** Where rain on a deck runs to with every outlet working: catchments, ponds, directions and lengths of flow. */

import type { WaterSite } from '../model/water-input.ts';
import { type Catchment, NO_WAY_OUT, OFF_DECK, type Pond, type WaterCourse } from '../model/water-result.ts';
import type { Evaluation } from './evaluation.ts';
import { placeExits } from './water/exits.ts';
import { type Flood, flood } from './water/flood.ts';
import { accumulate, bearingDeg, type Flow, flowOf } from './water/flow.ts';
import { mainSinks } from './water/main-sinks.ts';
import { longestPaths } from './water/path.ts';
import { type PoreColumn, poreColumn } from './water/pores.ts';
import { type RiseGround, riseGround } from './water/rise.ts';
import { gridCell, layTerrain, ontoTerrain, passes, stepsAround, UNIT_M, type WaterExit, type WaterTerrain } from './water/terrain.ts';
import { waterOnCellM } from './water-on-cell.ts';

/** A course with what further questions about it need. */
export interface RoutedWater extends WaterCourse {
  readonly columns: readonly PoreColumn[];
  readonly exits: readonly WaterExit[];
  readonly rises: RiseGround;
  /** Cells of each pond, in the order of `ponds`. */
  readonly pondCells: readonly (readonly number[])[];
}

/** What a course says of where water ends and how high it stands. */
export type DrainedWater = Pick<
  WaterCourse,
  'site' | 'faults' | 'outletCells' | 'ignoredSpills' | 'catchments' | 'noWayOut' | 'sinkAt' | 'filledM'
>;

/** Where the water of a deck runs, whatever each cell brings: a matter of the deck, its levels, outlets and edges alone. */
export type WaterRoutes = ReturnType<typeof waterRoutes>;

/** Where it stands on the way, and how far it would rise. */
export type WaterPools = ReturnType<typeof waterPools>;

/**
 * Routes the water of a deck. Outlets take it at the level of the membrane, overflows and edges only where it stands at theirs.
 * Where no edge is drawn at the rim of the deck, a wall is taken to stand. Rim and openings are seen by whole cells: what is
 * thinner than a cell does not part water.
 * @param on - evaluated deck [m]
 * @param site - outlets, edges, coefficients and pores [m]
 * @param routes - its routes, where they are known already [m]
 * @param pools - those of these routes [m]
 * @returns catchments [m²], levels [m], directions [°] and ponds [l]
 * @throws RangeError if the site does not fit the deck's zones
 * @source contract.md, section 2, Water
 */
export function waterCourse(on: Evaluation, site: WaterSite, routes = waterRoutes(on, site), pools = waterPools(routes)): RoutedWater {
  const { terrain, exits, flooded, flow, cOf, effectiveSums, ...drained } = drain(on, site, routes);
  const columns = on.input.zones.map((zone, z) => poreColumn(zone.buildUp, site.zones[z].freePores));
  const ways = waysPerCell({ terrain, flooded, flow, sinkAt: drained.sinkAt }, effectiveSums, longestPaths(terrain, flow, flooded, cOf));
  return {
    ...drained,
    ...ways,
    ...fillPonds(on, columns, pools.pondCells, drained),
    columns,
    exits,
    rises: pools.rises,
  };
}

/**
 * The part of a course that overflows are judged by: where water ends and how high it stands, not how it gets there.
 * @param on - evaluated deck [m]
 * @param site - outlets, edges and coefficients [m]
 * @param routes - its routes, where they are known already [m]
 * @returns catchments [m²] and levels [m]
 * @throws RangeError if the site does not fit the deck's zones
 * @source contract.md, section 2, Water
 */
export function drainedWater(on: Evaluation, site: WaterSite, routes = waterRoutes(on, site)): DrainedWater {
  const { faults, outletCells, ignoredSpills, catchments, noWayOut, sinkAt, filledM } = drain(on, site, routes);
  return { site, faults, outletCells, ignoredSpills, catchments, noWayOut, sinkAt, filledM };
}

/**
 * How the catchments of a site are made up of zones, by the very flow that makes them.
 * @param on - evaluated deck [m]
 * @param site - outlets, edges and coefficients [m]
 * @returns per sink the area that each zone sends to it, and last that of deck without a zone [m²]
 * @throws RangeError if the site does not fit the deck's zones
 * @source none: arithmetic; what arrives is linear in what every cell brings
 */
export function catchmentsByZone(on: Evaluation, site: WaterSite): Float64Array[] {
  const { terrain, placed, flooded, flow, areasM2 } = waterRoutes(on, site);
  const sinks = site.outlets.length + site.spills.length;
  const shares = Array.from({ length: sinks }, () => new Float64Array(site.zones.length + 1));
  for (let z = 0; z <= site.zones.length; z++) {
    // As many coefficients of 1 as it takes to tell the zone's own part.
    const only = {
      ...site,
      zones: site.zones.map((zone, i) => ({ ...zone, peakC: i === z ? 1 : 0 })),
      bareC: z === site.zones.length ? 1 : 0,
    };
    const part = ontoTerrain(terrain, peakCs(on, only));
    const sums = accumulate(
      flow,
      flooded,
      areasM2.map((areaM2, at) => areaM2 * part[at]),
    );
    catchmentsOf(terrain, placed.exits, flooded, sinks, [sums, sums]).forEach(({ areaM2 }, sink) => {
      shares[sink][z] = areaM2;
    });
  }
  return shares;
}

/**
 * Where the water of a deck runs; what its zones bring or hold does not matter.
 * @param on - evaluated deck [m]
 * @param site - outlets and edges [m]
 * @returns terrain, exits, flow and levels [m]
 * @throws RangeError if the site does not fit the deck's zones
 * @source contract.md, section 2, Water
 */
export function waterRoutes(on: Evaluation, site: WaterSite) {
  const { ground, deckLevelsM, deckSurface } = on.prepared;
  const { grid, deckShare } = ground;
  if (site.zones.length !== on.input.zones.length) {
    throw new RangeError(`waterCourse: zones must be as many as the deck's ${on.input.zones.length}, got ${site.zones.length}`);
  }
  const terrain = layTerrain(grid, deckShare, deckLevelsM);
  const placed = placeExits({ grid, terrain, deckLevelsM, deckSurface }, site);
  const flooded = flood(terrain, placed.exits);
  const areasM2 = ontoTerrain(
    terrain,
    deckShare.map((share) => share * grid.cellM ** 2),
  );
  const flow = flowOf(terrain, flooded);
  return {
    terrain,
    placed,
    flooded,
    flow,
    areasM2,
    areaSums: accumulate(flow, flooded, areasM2),
    levels: levelsPerCell(terrain, flooded, deckLevelsM, mainSinks(flow, flooded)),
  };
}

/**
 * Where water stands on its routes, and what tells how far it would rise.
 * @param routes - routes of a deck [m]
 * @returns cells of every pond, and room to work in [-]
 * @source none: arithmetic
 */
export function waterPools({ terrain, flooded, placed }: WaterRoutes) {
  return { pondCells: pondsOf(terrain, flooded), rises: riseGround(terrain, placed.exits) };
}

function drain(on: Evaluation, site: WaterSite, { terrain, placed, flooded, flow, areasM2, areaSums, levels }: WaterRoutes) {
  const cOf = ontoTerrain(terrain, peakCs(on, site));
  const effectiveM2 = areasM2.map((areaM2, at) => areaM2 * cOf[at]);
  const effectiveSums = accumulate(flow, flooded, effectiveM2);
  const sinks = site.outlets.length + site.spills.length;
  return {
    site,
    ...placed,
    terrain,
    flooded,
    flow,
    cOf,
    effectiveSums,
    catchments: catchmentsOf(terrain, placed.exits, flooded, sinks, [areaSums, effectiveSums]),
    noWayOut: leftOver(flooded, areasM2, effectiveM2),
    ...levels,
  };
}

/**
 * The same water with other pores or make-up thicknesses: where it runs does not change, what stands in the layers does.
 * @param on - evaluated deck of the same shapes and levels [m]
 * @param course - water routed before [m]
 * @param site - the same site but for its pores [-]
 * @returns course with the water of its ponds worked out anew [-]
 * @source none: arithmetic
 */
export function refillCourse(on: Evaluation, course: RoutedWater, site: WaterSite): RoutedWater {
  const columns = on.input.zones.map((zone, z) => poreColumn(zone.buildUp, site.zones[z].freePores));
  return { ...course, site, columns, ...fillPonds(on, columns, course.pondCells, course) };
}

/** Peak coefficient of each cell's deck, by area. Rain falls once: where zones overlap it is their mean. */
function peakCs({ field, prepared }: Evaluation, site: WaterSite): Float64Array {
  const { owner, mixed, start, entryZone, entryShare } = field.zones;
  const { deckShare } = prepared.ground;
  const out = new Float64Array(owner.length);
  for (let cell = 0; cell < owner.length; cell++) out[cell] = owner[cell] >= 0 ? site.zones[owner[cell]].peakC : site.bareC;
  mixed.forEach((cell, i) => {
    let covered = 0;
    let sum = 0;
    for (let e = start[i]; e < start[i + 1]; e++) {
      covered += entryShare[e];
      sum += entryShare[e] * site.zones[entryZone[e]].peakC;
    }
    const bare = Math.max(0, deckShare[cell] - covered);
    out[cell] = (sum + bare * site.bareC) / (covered + bare);
  });
  return out;
}

/** From cells of the terrain to cells of the grid: sinks, and levels up to which water stays. */
function levelsPerCell(terrain: WaterTerrain, { filled }: Flood, deckLevelsM: Float64Array, sinkOf: Int16Array) {
  const sinkAt = new Int16Array(deckLevelsM.length).fill(OFF_DECK);
  const filledM = new Float64Array(deckLevelsM.length).fill(Number.NaN);
  eachOpen(terrain, (cell, at) => {
    const stands = filled[at] > terrain.level[at];
    filledM[cell] = stands ? terrain.baseM + filled[at] * UNIT_M : deckLevelsM[cell];
    sinkAt[cell] = sinkOf[at] < 0 ? NO_WAY_OUT : sinkOf[at];
  });
  return { sinkAt, filledM };
}

interface Ways {
  readonly terrain: WaterTerrain;
  readonly flooded: Flood;
  readonly flow: Flow;
  readonly sinkAt: Int16Array;
}

/** The same of directions, what passes each cell, and lengths. */
function waysPerCell({ terrain, flooded, flow, sinkAt }: Ways, effectiveSums: Float64Array, pathsM: Float64Array) {
  const [upstreamM2, pathM] = Array.from({ length: 2 }, () => new Float64Array(sinkAt.length).fill(Number.NaN));
  const bearings = new Float32Array(sinkAt.length).fill(Number.NaN);
  eachOpen(terrain, (cell, at) => {
    if (sinkAt[cell] < 0) return;
    upstreamM2[cell] = effectiveSums[at];
    pathM[cell] = pathsM[at];
    if (flooded.filled[at] <= terrain.level[at]) bearings[cell] = bearingDeg(flow, at);
  });
  return { bearingDeg: bearings, upstreamM2, pathM };
}

function eachOpen({ rows, columns, width, open }: WaterTerrain, visit: (cell: number, at: number) => void): void {
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const at = (row + 1) * width + column + 1;
      if (open[at] !== 0) visit(row * columns + column, at);
    }
  }
}

/** What arrives at the exits. Sinks that drain the very same cell share it evenly. */
function catchmentsOf(
  terrain: WaterTerrain,
  exits: readonly WaterExit[],
  { parent, label }: Flood,
  sinks: number,
  [areas, effective]: readonly Float64Array[],
): Catchment[] {
  const sums = Array.from({ length: sinks }, () => ({ areaM2: 0, effectiveM2: 0 }));
  const byCell = new Map<number, Set<number>>();
  for (const { cell, levelM, sink } of exits) {
    if (parent[cell] !== cell) continue;
    const takers = byCell.get(cell) ?? new Set([label[cell]]);
    if (drainsCell(terrain, cell, levelM)) takers.add(sink);
    byCell.set(cell, takers);
  }
  for (const [cell, takers] of byCell) {
    for (const sink of takers) {
      sums[sink].areaM2 += areas[cell] / takers.size;
      sums[sink].effectiveM2 += effective[cell] / takers.size;
    }
  }
  return sums;
}

function drainsCell(terrain: WaterTerrain, cell: number, levelM: number): boolean {
  return Math.round((levelM - terrain.baseM) / UNIT_M) <= terrain.level[cell];
}

function leftOver({ label }: Flood, areas: Float64Array, effective: Float64Array): Catchment {
  let areaM2 = 0;
  let effectiveM2 = 0;
  for (let cell = 0; cell < label.length; cell++) {
    if (label[cell] >= 0) continue;
    areaM2 += areas[cell];
    effectiveM2 += effective[cell];
  }
  return { areaM2, effectiveM2 };
}

type Routes = Pick<WaterCourse, 'filledM' | 'sinkAt'>;

/** Cells that are filled above their level, gathered to those that hang together; they all have one level of water. */
function pondsOf(terrain: WaterTerrain, flooded: Flood): number[][] {
  const { filled, order, reached } = flooded;
  const steps = stepsAround(terrain.width);
  const seen = new Uint8Array(filled.length);
  const ponds: number[][] = [];
  for (let i = 0; i < reached; i++) {
    if (seen[order[i]] || filled[order[i]] <= terrain.level[order[i]]) continue;
    const cells = [order[i]];
    seen[order[i]] = 1;
    for (let j = 0; j < cells.length; j++) {
      for (let k = 0; k < 8; k++) {
        const to = cells[j] + steps[k];
        if (seen[to] || filled[to] <= terrain.level[to] || !passes(terrain.open, steps, cells[j], k)) continue;
        seen[to] = 1;
        cells.push(to);
      }
    }
    ponds.push(cells.map((at) => gridCell(terrain, at)));
  }
  return ponds;
}

/** Ponds with their water, deepest first. */
function fillPonds(on: Evaluation, columns: readonly PoreColumn[], pondCells: readonly (readonly number[])[], routes: Routes) {
  const filled = pondCells.map((cells) => ({ cells, pond: pondOf(on, columns, cells, routes) }));
  filled.sort((a, b) => b.pond.depthM - a.pond.depthM);
  return { ponds: filled.map(({ pond }) => pond), pondCells: filled.map(({ cells }) => cells) };
}

function pondOf(on: Evaluation, columns: readonly PoreColumn[], cells: readonly number[], routes: Routes): Pond {
  const { deckLevelsM, ground } = on.prepared;
  const cellM2 = on.input.cellM ** 2;
  const { filledM, sinkAt } = routes;
  const pond = { cell: cells[0], levelM: filledM[cells[0]], depthM: 0, areaM2: 0, litres: 0, bareLitres: 0, sink: sinkAt[cells[0]] };
  for (const cell of cells) {
    const depthM = Math.max(0, filledM[cell] - deckLevelsM[cell]);
    const areaM2 = ground.deckShare[cell] * cellM2;
    pond.areaM2 += areaM2;
    pond.bareLitres += 1000 * depthM * areaM2;
    pond.litres += 1000 * waterOnCellM(on, columns, cell, depthM) * areaM2;
    if (depthM <= pond.depthM) continue;
    pond.depthM = depthM;
    pond.cell = cell;
  }
  return pond;
}
