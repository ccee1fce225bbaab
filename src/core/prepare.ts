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
  /** Worked out when it is first asked for: no load rests on it. */
  readonly zoneTiling: Tiling;
  readonly bays: BayCells;
  readonly bayTiling: Tiling;
  readonly objects: readonly StandingLoad[];
  /** Per stage: its stockpiles. */
  readonly stockpiles: readonly (readonly StandingLoad[])[];
  /** Null where no columns are drawn. Like the tiling, when it is first asked for. */
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

/** A deck that was prepared before, and from what. */
export interface PreparedFrom {
  readonly input: DeckInput;
  readonly prepared: PreparedDeck;
}

/**
 * Prepares a deck. With the deck before it, only what is made from changed shapes is laid again: the rest stays the same objects.
 * @param input - shapes, levels, objects and stockpiles; local [m]
 * @param before - deck before an edit [m]
 * @returns cells, shares, levels and window areas [-]
 * @throws RangeError if the grid would be too large
 * @source contract.md, section 2, Grid and Deck level
 */
export function prepareDeck(input: DeckInput, before?: PreparedFrom): PreparedDeck {
  const onGround = before && sameGround(before.input, input) ? before : undefined;
  const ground = onGround?.prepared.ground ?? layDeck(gridOver(input.deck.outer, input.cellM, input.originM), input.deck);
  const { grid } = ground;
  const size = grid.columns * grid.rows;
  const laidBefore = new Map(onGround?.input.zones.map(({ region }, z) => [region, onGround.prepared.zones[z]]));
  const zones = input.zones.map(({ region }) => laidBefore.get(region) ?? layRegion(ground, region));
  const zoneCells = ownCells(zones, grid.columns, grid.rows);
  const onBays = onGround && sameEach(onGround.input.bays, input.bays, (bay) => bay.region) ? onGround : undefined;
  const regions = input.bays.map((bay) => bay.region);
  const bays = onBays?.prepared.bays ?? layBays(ground, regions);
  const wholeGrid = { column0: 0, column1: grid.columns, row0: 0, row1: grid.rows };
  const onLevels = before && before.input.levels === input.levels && reachM(before.input) === reachM(input) ? before : undefined;
  const deckSurface = onLevels?.prepared.deckSurface ?? (input.levels ? netSurface(input.levels, reachM(input)) : levelSurface(0));
  const onBoth = onGround === onLevels ? onGround : undefined;
  const reach = windowReach(grid.cellM);
  const deckSums = onGround?.prepared.deckSums ?? windowSums(ground.deckShare, grid, reach, wholeGrid, new Float64Array(size));
  const standing = standingOn(input, { ground, bays, windowM2: () => windowAreasM2(deckSums, reach, grid.cellM) }, onBays);
  const piecesBefore = new Map(onBays?.input.zones.map(({ region }, z) => [region, onBays.prepared.zonePieces[z]]));
  const deck = {
    ground,
    zones,
    zoneCells,
    zonePieces: input.zones.map(({ region }, z) => piecesBefore.get(region) ?? splitAmongBays(ground, bays, region, zones[z])),
    bays,
    bayTiling: onBays?.prepared.bayTiling ?? checkTiling(ground, bays.regions, ownCells(bays.laid, grid.columns, grid.rows)),
    ...standing,
    deckSurface,
    deckLevelsM: onBoth?.prepared.deckLevelsM ?? sampleSurface(deckSurface, grid, wholeGrid, new Float64Array(size)),
    outsideLevelsM2: onBoth?.prepared.outsideLevelsM2 ?? (input.levels ? outsideNetM2(ground, deckSurface) : 0),
    reach,
    deckSums,
    scratch: onGround?.prepared.scratch ?? { loads: new Float64Array(size), sums: new Float64Array(size) },
  };
  return withAsked(deck, input);
}

type Asked = 'zoneTiling' | 'columns';

/** In a function of its own: what is kept for later must not hold the deck before, and with it all decks before that. */
function withAsked(deck: Omit<PreparedDeck, Asked>, input: DeckInput): PreparedDeck {
  const { ground, zones, zoneCells } = deck;
  const regions = input.zones.map(({ region }) => region);
  const get: { readonly [K in Asked]: () => PreparedDeck[K] } = {
    zoneTiling: onceAsked(() => checkTiling(ground, regions, zoneCells)),
    columns: onceAsked(() => (input.columns?.length ? layColumns(ground, input.columns, laidZones(input, zones), input.objects) : null)),
  };
  return Object.defineProperties(deck, {
    zoneTiling: { get: get.zoneTiling, enumerable: true },
    columns: { get: get.columns, enumerable: true },
  }) as PreparedDeck;
}

function onceAsked<T>(make: () => T): () => T {
  let made: { readonly of: T } | undefined;
  return () => {
    made ??= { of: make() };
    return made.of;
  };
}

interface LaidDeck {
  readonly ground: DeckGround;
  readonly bays: BayCells;
  readonly windowM2: () => Float64Array;
}

/** Objects and stockpiles; those of the deck before as they were, on the same ground and bays. */
function standingOn(input: DeckInput, { ground, bays, windowM2 }: LaidDeck, before: PreparedFrom | undefined) {
  const known = new Map<object, StandingLoad>();
  before?.input.objects.forEach((object, o) => {
    known.set(object, before.prepared.objects[o]);
  });
  before?.input.stages?.forEach(({ stockpiles }, s) => {
    stockpiles.forEach((pile, p) => {
      known.set(pile, before.prepared.stockpiles[s][p]);
    });
  });
  let areasM2: Float64Array | null = null;
  const lay = (load: object, pieces: Parameters<typeof layStanding>[3]): StandingLoad => {
    const kept = known.get(load);
    if (kept) return kept;
    areasM2 ??= windowM2();
    return layStanding(ground, bays, areasM2, pieces);
  };
  return {
    objects: input.objects.map((object) => lay(object, object.pieces)),
    stockpiles: (input.stages ?? []).map((stage) => stage.stockpiles.map((pile) => lay(pile, [pile]))),
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
  return (
    sameUnderZones(before, now) &&
    before.levels === now.levels &&
    before.columns === now.columns &&
    sameEach(before.zones, now.zones, (zone) => zone.region)
  );
}

/**
 * Whether loads of zones that have not changed still fall on the same cells, windows and bays, beside the same objects and stockpiles.
 * @param before - input of the state before [-]
 * @param now - input to compare [-]
 * @returns true if nothing of these has changed and the zones are as many [-]
 * @source none: arithmetic
 */
export function sameUnderZones(before: DeckInput, now: DeckInput): boolean {
  return (
    sameGround(before, now) &&
    before.zones.length === now.zones.length &&
    sameEach(before.bays, now.bays, (bay) => bay.region) &&
    sameEach(before.objects, now.objects, (object) => object) &&
    sameEach(before.stages ?? [], now.stages ?? [], (stage) => stage.stockpiles)
  );
}

function sameGround(before: DeckInput, now: DeckInput): boolean {
  const [[x, y], [nowX, nowY]] = [before.originM, now.originM];
  return before.cellM === now.cellM && x === nowX && y === nowY && before.deck === now.deck;
}

function sameEach<T>(a: readonly T[], b: readonly T[], key: (item: T) => unknown): boolean {
  return a.length === b.length && a.every((item, i) => key(item) === key(b[i]));
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
