/** Every list of points of a scene, read and changed in one walk, so that no operation can forget a part. */

import type { EditPart, ScenePatch } from '../model/history.ts';
import type {
  Point3M,
  PointM,
  SceneDeck,
  SceneFile,
  SceneLevels,
  SceneObject,
  SceneSetUpArea,
  SceneStage,
  SceneZone,
} from '../model/scene-file.ts';

/** Parts that are drawn in the plan. */
export type PlanPart = Extract<
  EditPart,
  | 'outline'
  | 'opening'
  | 'levels'
  | 'finish'
  | 'bay'
  | 'zone'
  | 'edge'
  | 'outlet'
  | 'column'
  | 'object'
  | 'route'
  | 'set-up area'
  | 'stockpile'
  | 'plant'
  | 'access point'
  | 'probe'
>;

export type PlanForm = 'area' | 'line' | 'point';

/** A point as the file has it; levels bring theirs along. */
export type PlanPoint = PointM | Point3M;

/** Which list of points of a part: a hole by its index, or the building line of a set-up area; absent for the outline, line or place itself. */
export type Piece = number | 'building';

export interface ListRef {
  readonly part: PlanPart;
  readonly id: string;
  readonly piece?: Piece;
}

export interface PointList extends ListRef {
  readonly form: PlanForm;
  readonly points: readonly PlanPoint[];
  /** Kind of an object, outlet, edge, access point or set-up area; spot or breakline for levels. */
  readonly kind?: string;
  readonly name?: string;
  /** Stage of a stockpile or of plant. */
  readonly stage?: string;
}

/** The outline of the deck has no id in the file. */
export const OUTLINE_ID = 'outline';
/** Openings go by their index from 0. */
export const openingId = (index: number): string => `${index}`;
/** Level spots go by their index from 0. */
export const spotId = (index: number): string => `spot ${index}`;
/** Breaklines go by their index from 0. */
export const breaklineId = (index: number): string => `breakline ${index}`;
/** How the levels of a net are called: those of the deck, or those that a zone's finish is given by. */
export interface NetIds {
  readonly part: 'levels' | 'finish';
  spot(index: number): string;
  line(index: number): string;
}
export const DECK_NET: NetIds = { part: 'levels', spot: spotId, line: breaklineId };
/** Spots and breaklines of a zone's finish go by the zone and their index there. */
export const finishNet = (zone: string): NetIds => ({
  part: 'finish',
  spot: (index) => `${zone} ${spotId(index)}`,
  line: (index) => `${zone} ${breaklineId(index)}`,
});
/** The zone whose finish a spot or breakline belongs to. */
export const zoneOfFinish = (id: string): string => id.replace(/ (?:spot|breakline) \d+$/, '');
/** Whether points of a part bring levels along. */
export const hasLevels = ({ part }: Pick<ListRef, 'part'>): boolean => part === 'levels' || part === 'finish';

/** Plant goes by its stage and its index there, from 0. */
export const plantId = (stage: string, index: number): string => `${stage} ${index}`;

export const isSameList = (one: ListRef, other: ListRef): boolean =>
  one.part === other.part && one.id === other.id && one.piece === other.piece;

/** Gives the new points of a list; the very same array for a list that stays. */
export type ChangeList = (list: PointList) => readonly PlanPoint[];

/**
 * All lists of points of a scene.
 * @param scene - the scene
 * @returns lists in the order in which they are drawn: outline first, points last within each part of the file
 */
export function pointLists(scene: SceneFile): readonly PointList[] {
  const lists: PointList[] = [];
  withPointLists(scene, (list) => {
    lists.push(list);
    return list.points;
  });
  return lists;
}

/**
 * Changes lists of points. What stays, stays the very same object; a scene of which nothing changes gives an empty patch.
 * @param scene - the scene
 * @param change - called with each list once
 * @returns keys of the scene that changed
 */
export function withPointLists(scene: SceneFile, change: ChangeList): ScenePatch {
  const next: { -readonly [Key in keyof SceneFile]: SceneFile[Key] } = { ...scene };
  next.deck = changedDeck(scene.deck, change);
  next.zones = mapped(scene.zones, (zone) => {
    const base = { part: 'zone', id: zone.id, form: 'area', ...named(zone) } as const;
    const outline = flat(zone.outline, base, change);
    const holes = zone.holes && mapped(zone.holes, (hole, piece) => flat(hole, { ...base, piece }, change));
    const next = outline === zone.outline && holes === zone.holes ? zone : { ...zone, outline, ...(holes && { holes }) };
    return withFinishNet(next, (net) => changedNet(net, finishNet(zone.id), change));
  });
  if (scene.objects) next.objects = mapped(scene.objects, (object) => changedObject(object, change));
  if (scene.traffic)
    next.traffic = mapped(scene.traffic, (entry) =>
      keyed(entry, 'route', flat(entry.route, { part: 'route', id: entry.id, form: 'line' }, change)),
    );
  if (scene.setUpAreas) next.setUpAreas = mapped(scene.setUpAreas, (area) => changedSetUpArea(area, change));
  if (scene.stages) next.stages = mapped(scene.stages, (stage) => changedStage(stage, change));
  if (scene.accessPoints)
    next.accessPoints = mapped(scene.accessPoints, (entry) =>
      keyed(entry, 'at', place(entry.at, { part: 'access point', id: entry.id, kind: entry.kind }, change)),
    );
  if (scene.probes)
    next.probes = mapped(scene.probes, (entry) => keyed(entry, 'at', place(entry.at, { part: 'probe', id: entry.id }, change)));
  return patchOf(scene, next);
}

/** Keys in which two scenes differ; null where the second has none. */
export function patchOf(scene: SceneFile, next: SceneFile): ScenePatch {
  const patch: Record<string, unknown> = {};
  for (const key of new Set([...Object.keys(scene), ...Object.keys(next)]) as Set<keyof SceneFile>) {
    if (scene[key] !== next[key]) patch[key] = next[key] ?? null;
  }
  return patch as ScenePatch;
}

/** A scene with a patch laid on, for operations that build on one another. */
export function patched(scene: SceneFile, patch: ScenePatch): SceneFile {
  const next: Record<string, unknown> = { ...scene, ...patch };
  for (const [key, value] of Object.entries(patch)) if (value === null) delete next[key];
  return next as unknown as SceneFile;
}

function changedDeck(deck: SceneDeck, change: ChangeList): SceneDeck {
  const next: { -readonly [Key in keyof SceneDeck]: SceneDeck[Key] } = { ...deck };
  next.outline = flat(deck.outline, { part: 'outline', id: OUTLINE_ID, form: 'area' }, change);
  if (deck.openings)
    next.openings = mapped(deck.openings, (opening, i) => flat(opening, { part: 'opening', id: openingId(i), form: 'area' }, change));
  next.bays = mapped(deck.bays, (bay) => keyed(bay, 'outline', flat(bay.outline, { part: 'bay', id: bay.id, form: 'area' }, change)));
  if (deck.edges)
    next.edges = mapped(deck.edges, (edge) =>
      keyed(edge, 'line', flat(edge.line, { part: 'edge', id: edge.id, form: 'line', kind: edge.kind }, change)),
    );
  if (deck.levels) next.levels = changedNet(deck.levels, DECK_NET, change);
  if (deck.columns)
    next.columns = mapped(deck.columns, (column) => keyed(column, 'at', place(column.at, { part: 'column', id: column.id }, change)));
  if (deck.outlets)
    next.outlets = mapped(deck.outlets, (outlet) =>
      keyed(outlet, 'at', place(outlet.at, { part: 'outlet', id: outlet.id, kind: outlet.kind }, change)),
    );
  const same = (Object.keys(next) as (keyof SceneDeck)[]).every((key) => next[key] === deck[key]);
  return same ? deck : next;
}

/** The zone with another net of levels for its finish; the same where it is given in another way. */
export function withFinishNet(zone: SceneZone, change: (net: SceneLevels) => SceneLevels): SceneZone {
  const { finish } = zone;
  if (finish?.kind !== 'spots') return zone;
  const net = change(finish);
  return net === finish ? zone : { ...zone, finish: { kind: 'spots', ...net } };
}

function changedNet(levels: SceneLevels, { part, spot: spotOf, line: lineOf }: NetIds, change: ChangeList): SceneLevels {
  const spots = mapped(levels.spots, (spot, i) => {
    const to = change({ part, id: spotOf(i), form: 'point', kind: 'spot', points: [spot] });
    // The list of a place is made anew with each walk; its point is not.
    return to[0] === spot ? spot : raised(to[0]);
  });
  const breaklines =
    levels.breaklines &&
    mapped(levels.breaklines, (line, i) => {
      const to = change({ part, id: lineOf(i), form: 'line', kind: 'breakline', points: line });
      return to === line ? line : to.map(raised);
    });
  return spots === levels.spots && breaklines === levels.breaklines ? levels : { spots, ...(breaklines && { breaklines }) };
}

function changedObject(object: SceneObject, change: ChangeList): SceneObject {
  const base = { part: 'object', id: object.id, kind: object.kind, ...named(object) } as const;
  if (object.kind === 'tree') return keyed(object, 'at', place(object.at, base, change));
  if (object.kind === 'block') return keyed(object, 'outline', flat(object.outline, { ...base, form: 'area' }, change));
  return keyed(object, 'line', flat(object.line, { ...base, form: 'line' }, change));
}

function changedSetUpArea(area: SceneSetUpArea, change: ChangeList): SceneSetUpArea {
  const base = { part: 'set-up area', id: area.id, kind: area.kind, ...named(area) } as const;
  const next = keyed(area, 'outline', flat(area.outline, { ...base, form: 'area' }, change));
  if (area.building === undefined) return next;
  return keyed(next, 'building', flat(area.building, { ...base, form: 'line', piece: 'building' }, change));
}

function changedStage(stage: SceneStage, change: ChangeList): SceneStage {
  let next = stage;
  if (stage.stockpiles) {
    const to = mapped(stage.stockpiles, (pile) =>
      keyed(pile, 'outline', flat(pile.outline, { part: 'stockpile', id: pile.id, form: 'area', stage: stage.id }, change)),
    );
    next = keyed(next, 'stockpiles', to);
  }
  if (stage.plant) {
    const to = mapped(stage.plant, (plant, i) =>
      keyed(plant, 'route', flat(plant.route, { part: 'plant', id: plantId(stage.id, i), form: 'line', stage: stage.id }, change)),
    );
    next = keyed(next, 'plant', to);
  }
  return next;
}

type Described = Omit<PointList, 'points'>;

function flat(points: readonly PointM[], list: Described, change: ChangeList): readonly PointM[] {
  const to = change({ ...list, points });
  return to === points ? points : to.map(([x, y]): PointM => [x, y]);
}

function place(at: PointM, list: Omit<Described, 'form'>, change: ChangeList): PointM {
  const [first] = change({ ...list, form: 'point', points: [at] });
  if (first === at) return at;
  if (first === undefined) throw new RangeError(`withPointLists: a place keeps one point, found none for ${list.part} ${list.id}`);
  return [first[0], first[1]];
}

function raised(point: PlanPoint | undefined): Point3M {
  if (point?.[2] === undefined) throw new RangeError('withPointLists: a point of the levels keeps its level, found none');
  return [point[0], point[1], point[2]];
}

const named = ({ name }: { readonly name?: string }) => (name === undefined ? {} : { name });

/** The same array where no entry changed. */
export function mapped<T>(list: readonly T[], change: (entry: T, index: number) => T): readonly T[] {
  const next = list.map(change);
  return next.every((entry, i) => entry === list[i]) ? list : next;
}

/** The same object where the value is the same. */
export function keyed<T, K extends keyof T>(entry: T, key: K, value: T[K]): T {
  return entry[key] === value ? entry : { ...entry, [key]: value };
}
