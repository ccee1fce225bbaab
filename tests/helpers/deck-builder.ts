/** Small decks for the tests of the core, as numbers: shapes in local metres, loads given directly. */

import type {
  BayInput,
  BuildUpInput,
  DeckInput,
  LayerInput,
  ObjectInput,
  PlaceInput,
  Region,
  Ring,
  StageInput,
  ZoneInput,
} from '../../src/model/deck-input.ts';
import type { GridShape } from '../../src/model/maps.ts';
import type { Role } from '../../src/model/roles.ts';

export type Corner = readonly [number, number];

export const ring = (...corners: readonly Corner[]): Ring => Float64Array.from(corners.flat());
export const region = (...corners: readonly Corner[]): Region => ({ outer: ring(...corners), holes: [] });

export function boxRing(x0: number, y0: number, x1: number, y1: number): Ring {
  return ring([x0, y0], [x1, y0], [x1, y1], [x0, y1]);
}

export function box(x0: number, y0: number, x1: number, y1: number): Region {
  return { outer: boxRing(x0, y0, x1, y1), holes: [] };
}

export function holed(shape: Region, ...holes: readonly Ring[]): Region {
  return { outer: shape.outer, holes };
}

/** A hole runs clockwise. */
export function hole(x0: number, y0: number, x1: number, y1: number): Ring {
  return ring([x0, y0], [x0, y1], [x1, y1], [x1, y0]);
}

export function gridOf(columns: number, rows: number, cellM = 1): GridShape {
  return { columns, rows, cellM, x0M: 0, y0M: 0 };
}

/** Weightless unless `over` says otherwise. */
export function layer(role: Role, thicknessM: number, over: Partial<LayerInput> = {}): LayerInput {
  return {
    materialId: role.replaceAll(' ', '-'),
    name: role,
    role,
    thicknessM,
    rangeM: null,
    dryFixedKNm2: 0,
    dryPerMKNm3: 0,
    saturatedFixedKNm2: 0,
    saturatedPerMKNm3: 0,
    heldFixedLm2: 0,
    heldPerMLm2: 0,
    voidVolumeM: 0,
    ...over,
  };
}

/** A substrate of 0.1 m that weighs the load given, dry and saturated. */
export function loaded(kNm2: number): BuildUpInput {
  return buildUp('plain', [layer('substrate', 0.1, { dryFixedKNm2: kNm2, saturatedFixedKNm2: kNm2 })]);
}

export function buildUp(id: string, layers: readonly LayerInput[], vegetationKNm2 = 0): BuildUpInput {
  return { id, layers, vegetationKNm2 };
}

export function zone(id: string, shape: Region, of: BuildUpInput, over: Partial<ZoneInput> = {}): ZoneInput {
  return { id, region: shape, buildUp: of, imposedKNm2: 0, finish: { kind: 'build-up' }, ...over };
}

/** Permits 10 kN/m² permanent and 5 kN/m² imposed, confirmed, unless `over` says otherwise. */
export function bay(id: string, shape: Region, over: Partial<BayInput> = {}): BayInput {
  return { id, region: shape, permanentKNm2: 10, imposedKNm2: 5, totalKNm2: null, stageKNm2: null, confirmed: true, ...over };
}

export function block(id: string, footprint: Ring, kNm2: number): ObjectInput {
  return { id, kind: 'block', pieces: [{ ring: footprint, kNm2 }] };
}

export function place(roles: readonly Role[], zones: readonly number[] | null = null, objects: readonly number[] = []): PlaceInput {
  return { zones, roles, objects };
}

export function stage(id: string, places: readonly PlaceInput[], over: Partial<StageInput> = {}): StageInput {
  return { id, name: id, place: places, stockpiles: [], floodKNm2: 0, ...over };
}

/** A deck of 4 m × 2 m in cells of 1 m, level at 0.000, with one bay and nothing on it. */
export function deck(over: Partial<DeckInput> = {}): DeckInput {
  return {
    originM: [0, 0],
    cellM: 1,
    deck: box(0, 0, 4, 2),
    levels: null,
    bays: [bay('B', box(0, 0, 4, 2))],
    zones: [],
    objects: [],
    stages: null,
    ...over,
  };
}
