/** New parts: the drawn points with an id of their own, and nothing that anyone would have to know and has not said. */

import type { ScenePatch } from '../model/history.ts';
import type { Point3M, PointM, SceneBasis, SceneBuildUp, SceneFile, SceneLevels, SceneZone } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import { freeId } from '../scene/free-id.ts';
import { isInArea } from './gaps.ts';
import { idsOf, withEntry } from './part-lists.ts';
import {
  DECK_NET,
  finishNet,
  keyed,
  mapped,
  type NetIds,
  OUTLINE_ID,
  openingId,
  type Piece,
  type PlanPart,
  type PlanPoint,
  patchOf,
  plantId,
  withFinishNet,
} from './point-lists.ts';

/** What is known of a new part besides its points. Which of it a part needs: `needsOf`. */
export interface Given {
  /** Id wanted; a free one is made of it, or of the letter of its kind. */
  readonly id?: string;
  readonly name?: string;
  /** Object: tree, line, block, retaining · outlet: outlet, overflow · edge: upstand, threshold · set-up area: set-up, movement · access point: ramp, crane, blower, gate. */
  readonly kind?: string;
  readonly buildup?: string;
  readonly use?: string;
  readonly imposedKNm2?: number;
  readonly permanentKNm2?: number;
  readonly totalKNm2?: number;
  readonly stageKNm2?: number;
  readonly basis?: SceneBasis;
  readonly membraneTopM?: number;
  readonly drainedChannel?: boolean;
  readonly lps?: number;
  readonly invertM?: number;
  readonly sizeM?: readonly [number, number];
  readonly massKg?: number;
  readonly spreadM?: number;
  readonly kNm?: number;
  readonly kNm2?: number;
  readonly widthM?: number;
  readonly heightM?: number;
  readonly side?: 'left' | 'right';
  readonly retainedM?: number;
  readonly baseM?: number;
  readonly stemM?: number;
  readonly slabM?: number;
  readonly backfill?: { readonly density: number; readonly frictionDeg: number };
  readonly baseFriction?: number;
  readonly vehicle?: string;
  readonly stage?: string;
  readonly material?: string;
  readonly reachM?: number;
  /** Level of a spot, or of all points of a breakline that come without one. */
  readonly levelM?: number;
  readonly measuredMm?: number;
  readonly layer?: string;
  /** Of a measurement: its day and who made it. */
  readonly on?: string;
  readonly by?: string;
  /** Of a level of a finish: which zone's; left out, that in which it lies. */
  readonly zone?: string;
}

export type NewPart =
  | { readonly patch: ScenePatch; readonly selected: Selected }
  /** Entries that only a person can know and that are not given. */
  | { readonly needs: readonly (keyof Given)[] };

const NEEDS: Readonly<Record<string, readonly (keyof Given)[]>> = {
  edge: ['kind', 'membraneTopM'],
  outlet: ['kind'],
  column: ['sizeM'],
  'object tree': ['massKg', 'spreadM'],
  'object line': ['kNm', 'widthM'],
  'object block': ['kNm2'],
  'object retaining': ['side', 'retainedM', 'baseM', 'stemM', 'slabM', 'backfill', 'baseFriction'],
  route: ['vehicle'],
  'set-up area': ['kind', 'vehicle'],
  stockpile: ['stage', 'material', 'heightM'],
  plant: ['stage', 'vehicle'],
  'access point': ['kind'],
  levels: ['levelM'],
  finish: ['levelM'],
  probe: ['measuredMm'],
};

/** Entries that a part may have besides, where they are given. */
const MAY: Readonly<Record<string, readonly (keyof Given)[]>> = {
  bay: ['permanentKNm2', 'imposedKNm2', 'totalKNm2', 'stageKNm2', 'basis'],
  zone: ['name', 'use', 'imposedKNm2'],
  edge: ['drainedChannel'],
  outlet: ['lps', 'invertM'],
  object: ['name'],
  'object block': ['heightM'],
  route: ['widthM'],
  'set-up area': ['name'],
  'access point': ['reachM'],
  probe: ['layer', 'on', 'by'],
};

/** What the points of a part are called in the file: an outline unless told otherwise. */
const POINTS_KEY: Readonly<Record<string, 'line' | 'route' | 'at'>> = {
  edge: 'line',
  'object line': 'line',
  'object retaining': 'line',
  route: 'route',
  plant: 'route',
  outlet: 'at',
  column: 'at',
  'object tree': 'at',
  'access point': 'at',
  probe: 'at',
};

const LETTERS: Readonly<Record<string, string>> = {
  bay: 'A',
  zone: 'Z',
  edge: 'E',
  outlet: 'O',
  column: 'C',
  'object tree': 'T',
  'object line': 'W',
  'object block': 'P',
  'object retaining': 'W',
  route: 'F',
  'set-up area': 'U',
  stockpile: 'K',
  'access point': 'G',
  probe: 'P',
};

const kindOf = (part: PlanPart, kind: string | undefined) => (part === 'object' ? `object ${kind ?? 'block'}` : part);

/**
 * Entries a part of this kind cannot be without, in the order in which to ask for them.
 * @param part - kind of part
 * @param kind - for objects: tree, line, block (also where left out), retaining
 * @returns names of entries
 */
export function needsOf(part: PlanPart, kind?: string): readonly (keyof Given)[] {
  return NEEDS[kindOf(part, kind)] ?? [];
}

/**
 * Adds a part. A new bay has no permitted load and no basis unless given; a new zone takes the build-up given, else the first, else a new one without layers,
 * which the check of the scene refuses until it has some. One point of levels is a spot, several are a breakline; those of a finish go to a zone whose
 * finish is given by levels. Points for the outline of the deck replace it.
 * @param scene - the scene
 * @param part - kind of part
 * @param points - drawn points; of a place, the first counts
 * @param given - what else is known
 * @returns what changes and the new part, or what is still needed
 */
export function withNew(scene: SceneFile, part: PlanPart, points: readonly PlanPoint[], given: Given = {}): NewPart {
  if (part === 'levels' || part === 'finish') return withNewLevels(scene, part, points, given);
  const flat = points.map(([x, y]): PointM => [x, y]);
  if (part === 'outline') return { patch: { deck: { ...scene.deck, outline: flat } }, selected: { part, id: OUTLINE_ID } };
  if (part === 'opening') {
    const next = withEntry(scene, part, flat);
    return { patch: patchOf(scene, next), selected: { part, id: openingId((next.deck.openings?.length ?? 1) - 1) } };
  }
  const missing = needsOf(part, given.kind).filter((key) => given[key] === undefined);
  if (missing.length > 0) return { needs: missing };
  if (part === 'zone') return withNewZone(scene, flat, given);
  const entry = entryOf(part, flat, given);
  if (part === 'plant') {
    const stage = scene.stages?.find(({ id }) => id === given.stage);
    if (stage === undefined) return { needs: ['stage'] };
    const next = withEntry(scene, part, entry, given.stage);
    return { patch: patchOf(scene, next), selected: { part, id: plantId(stage.id, stage.plant?.length ?? 0) } };
  }
  const id = freeId(given.id, LETTERS[kindOf(part, given.kind)], idsOf(scene, part));
  const next = withEntry(scene, part, { id, ...entry }, part === 'stockpile' ? given.stage : undefined);
  return next === scene ? { needs: ['stage'] } : { patch: patchOf(scene, next), selected: { part, id } };
}

/** All of a part but its id, as the file has it. */
function entryOf(part: PlanPart, points: readonly PointM[], given: Given): object {
  const kind = kindOf(part, given.kind);
  const key = POINTS_KEY[kind] ?? 'outline';
  const keys = [...(NEEDS[kind] ?? []), ...(MAY[part] ?? []), ...(kind === part ? [] : (MAY[kind] ?? []))];
  const said = Object.fromEntries(keys.flatMap((one) => (one === 'stage' || given[one] === undefined ? [] : [[one, given[one]]])));
  return { ...(part === 'object' && { kind: kind.slice('object '.length) }), [key]: key === 'at' ? points[0] : points, ...said };
}

function withNewZone(scene: SceneFile, outline: readonly PointM[], given: Given): NewPart {
  const id = freeId(given.id, LETTERS.zone, idsOf(scene, 'zone'));
  const name = freeId(undefined, 'B', idsOf(scene, 'build-up'));
  const [first] = scene.buildups;
  const buildup = given.buildup ?? first?.id ?? name;
  const zone = { id, buildup, ...entryOf('zone', outline, given) } as SceneZone;
  const empty: SceneBuildUp = { id: name, name, layers: [] };
  const buildups = buildup === name && first === undefined ? { buildups: [empty] } : {};
  return { patch: { ...buildups, zones: [...scene.zones, zone] }, selected: { part: 'zone', id } };
}

function withNewLevels(scene: SceneFile, part: NetIds['part'], points: readonly PlanPoint[], { levelM, zone: named }: Given): NewPart {
  const raised: Point3M[] = [];
  for (const [x, y, z = levelM] of points as readonly (readonly [number, number, number?])[]) {
    if (z === undefined) return { needs: ['levelM'] };
    raised.push([x, y, z]);
  }
  if (part === 'levels') {
    const { net, id } = withLevels(scene.deck.levels ?? { spots: [] }, DECK_NET, raised);
    return { patch: { deck: { ...scene.deck, levels: net } }, selected: { part, id } };
  }
  const [first] = raised;
  const zone = scene.zones.findLast(({ id, finish, outline, holes }) => {
    if (finish?.kind !== 'spots') return false;
    return named === undefined ? first !== undefined && isInArea({ outline, ...(holes && { holes }) }, [first[0], first[1]]) : id === named;
  });
  if (zone?.finish?.kind !== 'spots') return { needs: ['zone'] };
  const { net, id } = withLevels(zone.finish, finishNet(zone.id), raised);
  const zones = mapped(scene.zones, (one) => (one === zone ? withFinishNet(zone, () => net) : one));
  return { patch: { zones }, selected: { part, id } };
}

function withLevels({ spots, breaklines = [] }: SceneLevels, ids: NetIds, raised: readonly Point3M[]) {
  const isSpot = raised.length === 1;
  const net: SceneLevels = isSpot
    ? { spots: [...spots, ...raised], ...(breaklines.length > 0 && { breaklines }) }
    : { spots, breaklines: [...breaklines, raised] };
  return { net, id: isSpot ? ids.spot(spots.length) : ids.line(breaklines.length) };
}

/**
 * Adds a hole to a zone.
 * @param scene - the scene
 * @param zone - its id
 * @param points - drawn points
 * @returns what changes; nothing where there is no such zone
 */
export function withNewHole(scene: SceneFile, zone: string, points: readonly PlanPoint[]): ScenePatch {
  const hole = points.map(([x, y]): PointM => [x, y]);
  return patchOf(
    scene,
    keyed(
      scene,
      'zones',
      mapped(scene.zones, (one) => (one.id === zone ? { ...one, holes: [...(one.holes ?? []), hole] } : one)),
    ),
  );
}

/**
 * Gives a set-up area the foot of the building it serves.
 * @param scene - the scene
 * @param area - its id
 * @param points - drawn points
 * @returns what changes; nothing where there is no such area
 */
export function withBuilding(scene: SceneFile, area: string, points: readonly PlanPoint[]): ScenePatch {
  const building = points.map(([x, y]): PointM => [x, y]);
  if (scene.setUpAreas === undefined) return {};
  const setUpAreas = mapped(scene.setUpAreas, (one) => (one.id === area ? { ...one, building } : one));
  return setUpAreas === scene.setUpAreas ? {} : { setUpAreas };
}

/**
 * Takes a hole out of a zone, or the building line off a set-up area.
 * @param scene - the scene
 * @param selected - the part
 * @param piece - hole by its index, or the building line
 * @returns what changes
 */
export function withoutPiece(scene: SceneFile, selected: Selected, piece: Piece): ScenePatch {
  if (selected.part === 'zone') {
    const zones = mapped(scene.zones, (zone) => {
      if (zone.id !== selected.id || typeof piece !== 'number' || zone.holes?.[piece] === undefined) return zone;
      const { holes: _, ...rest } = zone;
      const holes = zone.holes.filter((_hole, i) => i !== piece);
      return holes.length === 0 ? rest : { ...rest, holes };
    });
    return zones === scene.zones ? {} : { zones };
  }
  if (selected.part !== 'set-up area' || scene.setUpAreas === undefined || piece !== 'building') return {};
  const setUpAreas = mapped(scene.setUpAreas, (area) => {
    if (area.id !== selected.id || area.building === undefined) return area;
    const { building: _, ...rest } = area;
    return rest;
  });
  return setUpAreas === scene.setUpAreas ? {} : { setUpAreas };
}
