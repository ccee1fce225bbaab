/** Whether what a stage lays can be brought there: over ground that bears plant from a gate, or by crane or hose. */

import type { ZoneInput } from '../../model/deck-input.ts';
import type { GridShape } from '../../model/maps.ts';
import type { Role } from '../../model/roles.ts';
import type { AccessInput } from '../../model/route-input.ts';
import { cellCentreM } from '../geometry/grid.ts';
import type { DeckGround, RegionCells } from '../geometry/region-cells.ts';
import type { ZoneCells } from '../geometry/zone-cells.ts';
import type { StagePlan } from './plan.ts';
import { bearsPlant, standingLayer } from './plant.ts';

/** Sheets, elements and plants are carried by hand and ask for no machine. */
const BROUGHT: ReadonlySet<Role> = new Set<Role>([
  'drainage fill',
  'light fill',
  'base course',
  'bedding',
  'surfacing',
  'edging',
  'substrate',
]);
/** What goes through a hose. */
const BLOWN: ReadonlySet<Role> = new Set<Role>(['drainage fill', 'light fill', 'substrate']);
/** A gate or ramp opens onto the deck within half the width of a lane of its point [m]. */
const OPENS_WITHIN_M = 1.5;
/** Ground below this is not told [m²]. */
const NO_AREA_M2 = 0.05;

export interface ReachSite {
  readonly ground: DeckGround;
  readonly zones: readonly ZoneInput[];
  readonly laid: readonly RegionCells[];
  readonly owners: ZoneCells;
  readonly plan: StagePlan;
}

/** A zone in which a stage lays something that has to be brought. */
export interface ZoneReach {
  readonly stage: number;
  readonly zone: number;
  readonly areaM2: number;
  readonly unreachedM2: number;
  /** Cell in the midst of what is not reached; -1 where all is. */
  readonly cell: number;
  /** Whether a hose could bring all of it. */
  readonly blown: boolean;
}

/**
 * Cells a machine may drive on when a stage begins; where zones meet in a cell, those that bear must hold half of its deck.
 * @param site - zones on the deck and the plan [-]
 * @param stage - stage that begins [-]
 * @returns 1 for each such cell [-]
 * @source contract.md, section 2, Stages
 */
export function bearingCells(site: ReachSite, stage: number): Uint8Array {
  const { owners, ground, zones, plan } = site;
  const bears = zones.map(({ buildUp: { layers } }, z) => bearsPlant(layers, standingLayer(layers, plan.layerStages[z], stage)));
  const cells = new Uint8Array(owners.owner.length);
  for (let cell = 0; cell < cells.length; cell++) {
    const owner = owners.owner[cell];
    if (owner >= 0 && bears[owner]) cells[cell] = 1;
  }
  owners.mixed.forEach((cell, i) => {
    let share = 0;
    for (let e = owners.start[i]; e < owners.start[i + 1]; e++) if (bears[owners.entryZone[e]]) share += owners.entryShare[e];
    if (share > 0 && share >= ground.deckShare[cell] / 2) cells[cell] = 1;
  });
  return cells;
}

/**
 * Length of the shortest way from the gates and ramps to each cell, from cell to cell over their sides.
 * How wide a passage is does not count.
 * @param grid - grid [m]
 * @param bears - 1 for each cell that may be driven on [-]
 * @param access - access points, local [m]
 * @returns length of the way; infinite where none leads [m]
 * @source none: geometry
 */
export function travelM(grid: GridShape, bears: Uint8Array, access: readonly AccessInput[]): Float64Array {
  const way = new Float64Array(bears.length).fill(Infinity);
  const queue = new Int32Array(bears.length);
  let end = 0;
  for (const { kind, x, y } of access) {
    if (kind !== 'gate' && kind !== 'ramp') continue;
    for (let cell = 0; cell < bears.length; cell++) {
      if (!bears[cell] || way[cell] === 0) continue;
      const [cx, cy] = cellCentreM(grid, cell);
      if (Math.hypot(cx - x, cy - y) > OPENS_WITHIN_M) continue;
      way[cell] = 0;
      queue[end++] = cell;
    }
  }
  for (let at = 0; at < end; at++) {
    const cell = queue[at];
    for (const next of besideCells(grid, cell)) {
      if (next < 0 || !bears[next] || way[next] < Infinity) continue;
      way[next] = way[cell] + grid.cellM;
      queue[end++] = next;
    }
  }
  return way;
}

/**
 * Cells in the order in which material is laid by a machine that comes from the gates and retreats: farthest first.
 * @param cells - cells to lay [-]
 * @param wayM - length of the way to each cell of the grid [m]
 * @returns the cells, those no way leads to first, then from far to near [-]
 * @source common practice: laid from far to near, so that nothing laid is driven on
 */
export function farToNear(cells: Int32Array, wayM: Float64Array): Int32Array {
  return cells.slice().sort((a, b) => (wayM[a] === wayM[b] ? a - b : wayM[b] - wayM[a]));
}

/**
 * Which of the ground that a stage lays can't be reached, for every stage of the scene and every zone to which something has to be brought.
 * A cell counts as reached by wheels if it or one beside it is.
 * @param site - zones on the deck and the plan [-]
 * @param access - access points, local [m]
 * @returns one entry per stage and zone; none where the stages are derived or no access point is given [m²]
 * @source contract.md, section 4, `stage.reach`
 */
export function zoneReaches(site: ReachSite, access: readonly AccessInput[]): ZoneReach[] {
  if (access.length === 0) return [];
  return site.plan.stages.flatMap(({ derived }, stage): ZoneReach[] => {
    if (derived) return [];
    let way: Float64Array | null = null;
    const wayM = () => {
      way ??= travelM(site.ground.grid, bearingCells(site, stage), access);
      return way;
    };
    return site.zones.flatMap((_, z): ZoneReach[] => {
      const brought = broughtTo(site, stage, z);
      if (!brought) return [];
      const { blown } = brought;
      return [{ stage, zone: z, blown, ...unreached(site, z, ofUse(access, blown), wayM) }];
    });
  });
}

/**
 * Whether a stage lays something in a zone that has to be brought there.
 * @param site - zones on the deck and the plan [-]
 * @param stage - index of the stage [-]
 * @param z - index of the zone [-]
 * @returns whether a hose could bring all of it; null where nothing is brought [-]
 * @source contract.md, section 2, Stages
 */
export function broughtTo(site: ReachSite, stage: number, z: number): { readonly blown: boolean } | null {
  const { layers } = site.zones[z].buildUp;
  const brought = layers.filter(({ role }, i) => site.plan.layerStages[z][i] === stage && BROUGHT.has(role));
  if (brought.length === 0 || site.laid[z].cells.length === 0) return null;
  return { blown: brought.every(({ role }) => BLOWN.has(role)) };
}

/**
 * Access points of use for what is brought.
 * @param access - access points [-]
 * @param blown - whether all of it goes through a hose [-]
 * @returns all of them, or all but the hoses [-]
 * @source none: arithmetic
 */
export function ofUse(access: readonly AccessInput[], blown: boolean): readonly AccessInput[] {
  return blown ? access : access.filter(({ kind }) => kind !== 'blower');
}

function unreached(site: ReachSite, z: number, access: readonly AccessInput[], wayM: () => Float64Array) {
  const { grid } = site.ground;
  const { cells, shares, areaM2 } = site.laid[z];
  const missed: number[] = [];
  let sum = 0;
  for (let i = 0; i < cells.length; i++) {
    if (isSwung(grid, cells[i], access) || isDriven(grid, cells[i], wayM())) continue;
    missed.push(cells[i]);
    sum += shares[i];
  }
  const unreachedM2 = sum * grid.cellM * grid.cellM;
  if (unreachedM2 <= NO_AREA_M2) return { areaM2, unreachedM2: 0, cell: -1 };
  missed.sort((a, b) => a - b);
  return { areaM2, unreachedM2, cell: missed[missed.length >> 1] };
}

/**
 * Whether a cell is reached by crane or hose, straight from its place; one whose reach is not given reaches nothing.
 * @param grid - grid [m]
 * @param cell - cell [-]
 * @param access - access points of use, local [m]
 * @returns true where it is [-]
 * @source none: geometry
 */
export function isSwung(grid: GridShape, cell: number, access: readonly AccessInput[]): boolean {
  const [cx, cy] = cellCentreM(grid, cell);
  return access.some(
    ({ kind, x, y, reachM }) => (kind === 'crane' || kind === 'blower') && reachM !== null && Math.hypot(cx - x, cy - y) <= reachM,
  );
}

/**
 * Whether a machine comes to a cell or to one beside it.
 * @param grid - grid [m]
 * @param cell - cell [-]
 * @param wayM - length of the way to each cell [m]
 * @returns true where it does [-]
 * @source none: geometry
 */
export function isDriven(grid: GridShape, cell: number, wayM: Float64Array): boolean {
  return wayM[cell] < Infinity || besideCells(grid, cell).some((next) => next >= 0 && wayM[next] < Infinity);
}

/** Left, right, below, above; -1 beyond the grid. */
function besideCells({ columns, rows }: GridShape, cell: number): [number, number, number, number] {
  const column = cell % columns;
  return [
    column > 0 ? cell - 1 : -1,
    column < columns - 1 ? cell + 1 : -1,
    cell >= columns ? cell - columns : -1,
    cell + columns < columns * rows ? cell + columns : -1,
  ];
}
