/** The whole picture of a deck: parts, prisms, solids, ink lines, lifts of the exploded view. */

import { OPEN_EDGE_M } from '../core/geometry/edge-band.ts';
import { insetPieces } from '../core/geometry/inset.ts';
import { boundsOf } from '../core/geometry/ring.ts';
import type { Surface } from '../core/levels/surface.ts';
import type { LayerInput, Region } from '../model/deck-input.ts';
import { drawnAs } from '../model/palette.ts';
import type { Part, Picture, Prism, SolidMesh } from '../model/picture.ts';
import { bayOutlines } from './bay-outlines.ts';
import { writeFlatSolid } from './flat-solid.ts';
import { type DrawnExtra, drawnExtras, type FloorRange, floorGapM, floorLifts, layerFloors } from './floors.ts';
import { deckPieces, objectPieces, type Piece, type Pieces, stockpilePieces } from './furniture.ts';
import { groundOver } from './ground.ts';
import type { PictureInput } from './picture-input.ts';
import { type PlanNet, type PlanNetAnswer, planNet } from './plan-net.ts';
import { type BarePrism, greatestThicknessM, sheetPrism, zonePrism } from './prism.ts';
import { createSolidWriter, type SolidWriter, type WrittenMeshes, type WrittenStretch } from './solid-writer.ts';
import { writePrism } from './solids.ts';

/** What the next picture can take over from this one. */
export interface PictureMemory {
  readonly slab: DeckShape;
  readonly zones: ReadonlyMap<string, ZoneShape>;
  readonly onDeck: OnDeck;
  /** What was written, and where each prism or piece lies in it. */
  readonly meshes: WrittenMeshes;
  readonly stretches: ReadonlyMap<BarePrism | Piece, WrittenStretch>;
}

/** What always stands on the deck. */
interface OnDeck extends Pieces {
  readonly furniture: PictureInput['furniture'];
  readonly surface: Surface;
}

interface SlabShape {
  readonly deck: Region;
  readonly surface: Surface;
  readonly answer: PlanNetAnswer;
}

interface DeckShape extends SlabShape {
  readonly edgeBand: Float64Array;
}

interface ZoneShape extends SlabShape {
  readonly region: Region;
  readonly finish: Surface | null;
  readonly layers: readonly LayerInput[];
  readonly prism: BarePrism | null;
  /** Greatest thickness of each layer [m]. */
  readonly thicknessesM: readonly number[];
}

/** Weight of water per metre of depth [kN/m³]. */
const WATER_KNM3 = 9.81;

/**
 * Builds the picture. Zones whose region, layers and surfaces are the same objects as last time keep their prisms and triangles.
 * Parts that no stage places get the stage after the last one, so that they show in the finished garden only.
 * @param input - what to draw [m]
 * @param previous - memory of the last picture, if there was one [-]
 * @returns picture, and the memory for the next one [m]
 * @throws RangeError if there are more than 65536 parts
 * @source none: geometry
 */
export function buildPicture(input: PictureInput, previous?: PictureMemory): { picture: Picture; memory: PictureMemory } {
  const slab = slabShape(input, previous);
  const zones = input.input.zones.map((_, z) => zoneShape(input, z, previous));
  const draft = new Draft(input, zones, previous);
  if (slab.answer.net === null) draft.notDrawn.push({ owner: '', why: slab.answer.why });
  else draft.addSlab(slab.answer.net);
  zones.forEach((zone, z) => {
    draft.addZone(zone, z);
  });
  const onDeck = piecesOnDeck(input, previous);
  draft.addFurniture(onDeck);
  if (slab.answer.net !== null) draft.addFlood(slab.answer.net);
  const picture = draft.finish(slab.edgeBand);
  const known = new Map(input.input.zones.map((zone, z) => [zone.id, zones[z]]));
  return { picture, memory: { slab, zones: known, onDeck, meshes: picture, stretches: draft.stretches } };
}

function slabShape(input: PictureInput, previous: PictureMemory | undefined): DeckShape {
  const deck = input.input.deck;
  const surface = input.deckSurface;
  if (previous !== undefined && previous.slab.deck === deck && previous.slab.surface === surface) return previous.slab;
  const edgeBand = previous?.slab.deck === deck ? previous.slab.edgeBand : insetPieces(deck, OPEN_EDGE_M);
  return { deck, surface, answer: planNet(deck, deck, { deck: surface, finish: null }), edgeBand };
}

function piecesOnDeck(input: PictureInput, previous: PictureMemory | undefined): OnDeck {
  const { furniture, deckSurface: surface } = input;
  const known = previous?.onDeck;
  return known && known.furniture === furniture && known.surface === surface ? known : { furniture, surface, ...deckPieces(input) };
}

function zoneShape(input: PictureInput, z: number, previous: PictureMemory | undefined): ZoneShape {
  const { region, id, buildUp } = input.input.zones[z];
  const layers = buildUp.layers;
  const deck = input.input.deck;
  const surface = input.deckSurface;
  const finish = input.finishSurfaces[z];
  const old = previous?.zones.get(id);
  const sameNet =
    old !== undefined && old.region === region && old.deck === deck && old.surface === surface && old.finish === finish ? old : null;
  if (sameNet !== null && sameNet.layers === layers) return sameNet;
  const answer = sameNet === null ? planNet(region, deck, { deck: surface, finish }) : sameNet.answer;
  const prism = answer.net === null ? null : zonePrism(answer.net, layers);
  const thicknessesM = layers.map((_, k) => (prism === null ? 0 : greatestThicknessM(prism, k)));
  return { deck, surface, answer, region, finish, layers, prism, thicknessesM };
}

/** A picture while it is put together. */
class Draft {
  readonly notDrawn: { owner: string; why: string }[] = [];
  readonly stretches = new Map<BarePrism | Piece, WrittenStretch>();
  private readonly parts: Part[] = [];
  private readonly prisms: Prism[] = [];
  private readonly wallPrisms: Prism[] = [];
  private readonly writer: SolidWriter;
  private readonly floors: readonly (readonly number[])[];
  private readonly extras: readonly (readonly DrawnExtra[])[];
  /** Floor of everything that stands on the garden. */
  private readonly topFloor: number;
  /** Drawn thickness added below whatever stands on the garden: the greatest of all zones [m]. */
  private readonly topExtraM: number;
  /** Stage of what no stage places. */
  private readonly never: number;

  constructor(
    private readonly input: PictureInput,
    private readonly zones: readonly ZoneShape[],
    private readonly previous: PictureMemory | undefined,
  ) {
    this.writer = createSolidWriter(previous?.meshes);
    const stacks = zones.map((zone) => zone.layers.map((layer, k) => ({ role: layer.role, drawn: zone.thicknessesM[k] > 0 })));
    this.floors = layerFloors(stacks);
    this.extras = zones.map((zone) => drawnExtras(zone.thicknessesM));
    this.topFloor = 1 + this.floors.flat().reduce((most, floor) => Math.max(most, floor), 0);
    this.topExtraM = this.extras.flat().reduce((most, extra) => Math.max(most, extra.topM), 0);
    let last = (input.input.stages?.length ?? 0) - 1;
    for (const stages of [...input.layerStages, input.objectStages]) for (const stage of stages) last = Math.max(last, stage);
    this.never = last + 1;
  }

  addSlab(net: PlanNet): void {
    const bare = sheetPrism(net, -this.input.furniture.slabM, 0);
    this.addPrism(bare, '', [this.addPart({ ...STANDING, kind: 'slab', owner: '', name: '' })]);
  }

  addZone(zone: ZoneShape, z: number): void {
    const owner = this.input.input.zones[z].id;
    if (zone.prism === null) {
      if (zone.answer.net === null) this.notDrawn.push({ owner, why: zone.answer.why });
      return;
    }
    const topLayer = zone.thicknessesM.findLastIndex((thicknessM) => thicknessM > 0);
    const parts = zone.layers.map((layer, k) => {
      const stage = this.input.layerStages[z][k];
      return this.addPart({
        kind: drawnAs(layer.role, layer.loose ?? false),
        owner,
        layer: k,
        name: layer.name,
        floor: this.floors[z][k],
        extraBottomM: this.extras[z][k].bottomM,
        extraTopM: this.extras[z][k].topM,
        stageFrom: stage < 0 ? this.never : stage,
        stageTo: -1,
        empty: !(zone.thicknessesM[k] > 0),
        top: k === topLayer,
      });
    });
    this.addPrism(zone.prism, owner, parts);
  }

  addFurniture(onDeck: OnDeck): void {
    const { input } = this;
    const drawn = this.zones.flatMap((zone, z) => {
      return zone.prism === null ? [] : [{ region: zone.region, prism: zone.prism, stages: input.layerStages[z] }];
    });
    const ground = groundOver(drawn, input.deckSurface);
    for (const group of [onDeck, objectPieces(input, ground, this.never), stockpilePieces(input, ground)]) {
      for (const piece of group.pieces) this.addPiece(piece);
      this.notDrawn.push(...group.notDrawn);
    }
  }

  private addPiece(piece: Piece): void {
    const { kind, owner, stageFrom, stageTo, above, solids, prisms = [], inked } = piece;
    const extraM = above ? this.topExtraM : 0;
    const floor = above ? this.topFloor : 0;
    const part = { ...STANDING, kind, owner, name: owner, stageFrom, stageTo, floor, extraBottomM: extraM, extraTopM: extraM };
    const index = this.addPart(part);
    this.write(piece, index, () => {
      this.writer.begin(index);
      for (const solid of solids) writeFlatSolid(this.writer, solid, inked);
    });
    for (const prism of prisms) this.wallPrisms.push({ ...prism, owner, parts: [index] });
  }

  /** Water of flood tests, standing on the membrane. */
  addFlood(net: PlanNet): void {
    this.input.input.stages?.forEach((stage, index) => {
      if (!(stage.floodKNm2 > 0)) return;
      const part = { ...STANDING, kind: 'flood water' as const, owner: stage.id, name: stage.name, stageFrom: index, stageTo: index };
      const bare = sheetPrism(net, 0, stage.floodKNm2 / WATER_KNM3);
      writePrism(this.writer, { ...bare, owner: stage.id, parts: [this.addPart(part)] });
    });
  }

  finish(edgeBand: Float64Array): Picture {
    const { solids, edges } = this.writer.finish();
    const box = boundsOf(this.input.input.deck.outer);
    const sizeM = Math.max(box.maxX - box.minX, box.maxY - box.minY);
    const ranges = floorRanges(solids, this.parts, this.topFloor + 1);
    return {
      parts: this.parts,
      prisms: this.prisms,
      wallPrisms: this.wallPrisms,
      solids,
      edges,
      edgeBand,
      floorLiftM: floorLifts(ranges, floorGapM(sizeM)),
      ...bayOutlines(this.input.input.bays, this.input.deckSurface),
      boundsM: boundsOfSolids(solids),
      notDrawn: this.notDrawn,
    };
  }

  private addPart(part: Part): number {
    return this.parts.push(part) - 1;
  }

  private addPrism(bare: BarePrism, owner: string, parts: readonly number[]): void {
    const prism = { ...bare, owner, parts };
    this.prisms.push(prism);
    this.write(bare, parts.at(0) ?? 0, () => writePrism(this.writer, prism));
  }

  /** Copies what was written for the very same object before. */
  private write(shape: BarePrism | Piece, firstPart: number, anew: () => void): void {
    const from = this.writer.written();
    const known = this.previous?.stretches.get(shape);
    if (known && this.previous) this.writer.copy(this.previous.meshes, known, firstPart);
    else anew();
    this.stretches.set(shape, { from, to: this.writer.written(), firstPart });
  }
}

/** What parts have in common that are no layers and stay with the slab. */
const STANDING = { layer: -1, floor: 0, extraBottomM: 0, extraTopM: 0, stageFrom: -1, stageTo: -1, top: false };

function floorRanges(solids: SolidMesh, parts: readonly Part[], floors: number): FloorRange[] {
  // Per part first: a plain loop over a million vertices.
  const low = new Float64Array(parts.length).fill(Infinity);
  const high = new Float64Array(parts.length).fill(-Infinity);
  const extras = Float64Array.from(parts.flatMap((part) => [part.extraBottomM, part.extraTopM]));
  for (let v = 0; v < solids.parts.length; v++) {
    const part = solids.parts[v];
    const z = solids.positions[3 * v + 2] + extras[2 * part + solids.upper[v]];
    if (z < low[part]) low[part] = z;
    if (z > high[part]) high[part] = z;
  }
  const ranges = Array.from({ length: floors }, () => ({ lowM: Infinity, highM: -Infinity }));
  parts.forEach(({ floor }, part) => {
    ranges[floor].lowM = Math.min(ranges[floor].lowM, low[part]);
    ranges[floor].highM = Math.max(ranges[floor].highM, high[part]);
  });
  return ranges;
}

function boundsOfSolids({ positions }: SolidMesh): Picture['boundsM'] {
  if (positions.length === 0) return { min: [0, 0, 0], max: [0, 0, 0] };
  let [minX, minY, minZ] = positions;
  let [maxX, maxY, maxZ] = positions;
  for (let i = 0; i < positions.length; i += 3) {
    const [x, y, z] = [positions[i], positions[i + 1], positions[i + 2]];
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
    if (z < minZ) minZ = z;
    if (z > maxZ) maxZ = z;
  }
  return { min: [minX, minY, minZ], max: [maxX, maxY, maxZ] };
}
