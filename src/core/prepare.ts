/** Everything about a deck that depends on drawn shapes and levels only, and so survives a change of thickness or material. */

import type { DeckInput, Region } from '../model/deck-input.ts';
import { type BayCells, type BayPieces, layBays, splitAmongBays } from './geometry/bay-split.ts';
import { gridOver } from './geometry/grid.ts';
import { type DeckGround, layDeck, layRegion, type RegionCells } from './geometry/region-cells.ts';
import { boundsOf } from './geometry/ring.ts';
import { checkTiling, type Tiling } from './geometry/tiling.ts';
import { ownCells, type ZoneCells } from './geometry/zone-cells.ts';
import { netSurface } from './levels/net.ts';
import { levelSurface, type Surface, sampleSurface } from './levels/surface.ts';
import { type ColumnCells, layColumns } from './loads/columns.ts';
import { type WindowReach, windowAreasM2, windowReach, windowSums } from './loads/patch.ts';
import { layStanding, type StandingLoad } from './loads/standing.ts';

export interface PreparedDeck {
  readonly ground: DeckGround;
  readonly zones: readonly RegionCells[];
  readonly zoneCells: ZoneCells;
  readonly zonePieces: readonly BayPieces[];
  readonly zoneTiling: Tiling;
  readonly bays: BayCells;
  readonly bayTiling: Tiling;
  readonly objects: readonly StandingLoad[];
  /** Per stage: its stockpiles. */
  readonly stockpiles: readonly (readonly StandingLoad[])[];
  /** Null where no columns are drawn. */
  readonly columns: ColumnCells | null;
  readonly deckSurface: Surface;
  /** Level of the membrane at each cell's centre [m]. */
  readonly deckLevelsM: Float64Array;
  /** Deck outside the net of levels [m²]. */
  readonly outsideLevelsM2: number;
  readonly reach: WindowReach;
  /** Window sums of deck shares, in whole cells. */
  readonly deckSums: Float64Array;
  /** Scratch fields of the whole grid. */
  readonly scratch: { readonly loads: Float64Array; readonly sums: Float64Array };
}

/**
 * Prepares a deck.
 * @param input - shapes, levels, objects and stockpiles; local [m]
 * @returns cells, shares, levels and window areas [-]
 * @throws RangeError if the grid would be too large
 * @source contract.md, section 2, Grid and Deck level
 */
export function prepareDeck(input: DeckInput): PreparedDeck {
  const grid = gridOver(input.deck.outer, input.cellM, input.originM);
  const ground = layDeck(grid, input.deck);
  const zones = input.zones.map((zone) => layRegion(ground, zone.region));
  const size = grid.columns * grid.rows;
  const zoneCells = ownCells(zones, grid.columns, grid.rows);
  const bays = layBays(
    ground,
    input.bays.map((bay) => bay.region),
  );
  const deckSurface = input.levels ? netSurface(input.levels, reachM(input)) : levelSurface(0);
  const wholeGrid = { column0: 0, column1: grid.columns, row0: 0, row1: grid.rows };
  const deckLevelsM = sampleSurface(deckSurface, grid, wholeGrid, new Float64Array(size));
  const reach = windowReach(grid.cellM);
  const deckSums = windowSums(ground.deckShare, grid, reach, wholeGrid, new Float64Array(size));
  const windowM2 = windowAreasM2(deckSums, reach, grid.cellM);
  return {
    ground,
    zones,
    zoneCells,
    zonePieces: input.zones.map((zone, z) => splitAmongBays(ground, bays, zone.region, zones[z])),
    zoneTiling: checkTiling(
      ground,
      input.zones.map((zone) => zone.region),
      zoneCells,
    ),
    bays,
    bayTiling: checkTiling(ground, bays.regions, ownCells(bays.laid, grid.columns, grid.rows)),
    objects: input.objects.map((object) => layStanding(ground, bays, windowM2, object.pieces)),
    stockpiles: (input.stages ?? []).map((stage) => stage.stockpiles.map((pile) => layStanding(ground, bays, windowM2, [pile]))),
    columns: input.columns?.length ? layColumns(ground, input.columns, laidZones(input, zones), input.objects) : null,
    deckSurface,
    deckLevelsM,
    outsideLevelsM2: input.levels ? outsideNetM2(ground, deckSurface) : 0,
    reach,
    deckSums,
    scratch: { loads: new Float64Array(size), sums: new Float64Array(size) },
  };
}

function laidZones(input: DeckInput, laid: readonly RegionCells[]) {
  return input.zones.map(({ region }, z) => ({ region, laid: laid[z] }));
}

/**
 * Whether a prepared deck still fits an input: all shapes, levels, objects and stockpiles are the very same objects.
 * @param before - input the deck was prepared from [-]
 * @param now - input to compare [-]
 * @returns true if nothing drawn has changed [-]
 * @source none: arithmetic
 */
export function sameShapes(before: DeckInput, now: DeckInput): boolean {
  const same = <T>(a: readonly T[], b: readonly T[], key: (item: T) => unknown) =>
    a.length === b.length && a.every((item, i) => key(item) === key(b[i]));
  return (
    before.cellM === now.cellM &&
    before.originM[0] === now.originM[0] &&
    before.originM[1] === now.originM[1] &&
    before.deck === now.deck &&
    before.levels === now.levels &&
    same(before.bays, now.bays, (bay) => bay.region) &&
    same(before.zones, now.zones, (zone) => zone.region) &&
    same(before.objects, now.objects, (object) => object) &&
    before.columns === now.columns &&
    same(before.stages ?? [], now.stages ?? [], (stage) => stage.stockpiles)
  );
}

/**
 * How far an extended surface must reach to lie under everything drawn.
 * @param input - deck and zones, local [m]
 * @returns distance [m]
 * @source none: geometry
 */
export function reachM(input: DeckInput): number {
  let far = 0;
  const regions: readonly Region[] = [input.deck, ...input.zones.map((zone) => zone.region)];
  for (const { outer } of regions) {
    const box = boundsOf(outer);
    far = Math.max(far, Math.abs(box.minX), Math.abs(box.minY), Math.abs(box.maxX), Math.abs(box.maxY));
  }
  const nets = [input.levels, ...input.zones.map((zone) => (zone.finish.kind === 'net' ? zone.finish.net : null))];
  for (const net of nets) {
    if (!net) continue;
    for (const points of [net.spots, ...net.breaklines]) {
      for (let i = 0; i < points.length; i += 3) far = Math.max(far, Math.abs(points[i]), Math.abs(points[i + 1]));
    }
  }
  // Twice for the diagonal, once more from the far side of the net.
  return 4 * far + 10 * input.cellM;
}

function outsideNetM2(ground: DeckGround, surface: Surface): number {
  // A net of one spot, or of spots on one line, has no area.
  if (surface.kind === 'plane' || surface.boundary.length < 6) return ground.areaM2;
  const inside = layRegion(ground, { outer: surface.boundary, holes: [] }).areaM2;
  const outside = ground.areaM2 - inside;
  return outside > 1e-6 ? outside : 0;
}
