/** What was found, put to use: the person says what each layer is, and gets the part of a scene that the file holds. */

import { baysFromAxes, MOST_FIELDS } from '../edit/axis-bays.ts';
import { takeParts } from '../edit/take-parts.ts';
import type { AxisGrid, DrawingLayer, DrawingShape, ImportResult, LayerRole, LayerRoles, WaitingPart } from '../model/drawing.ts';
import { LAYER_ROLES } from '../model/drawing.ts';
import { type DrawnParts, type PartEntries, STARTER } from '../model/drawn-parts.ts';
import type { Issue } from '../model/issue.ts';
import type { Language } from '../model/language.ts';
import type { Point3M, PointM, PolygonM, SceneBay, SceneBuildUp, SceneFile, SceneLevels } from '../model/scene-file.ts';
import type { KnownIds } from '../scene/known-ids.ts';
import { parseScene } from '../scene/parse-scene.ts';
import { SCENE_FORMAT, SCENE_VERSION } from '../scene/schema.ts';
import { areaParts, ringsOf } from './area-parts.ts';
import { axisGridOf } from './axis-grid.ts';
import { importIn, importIssueIn } from './import-language.ts';
import { issueOf } from './issue-of.ts';
import { breaklineOf, spotOf } from './level-shapes.ts';
import { placeParts } from './place-parts.ts';
import { enteredWords, HISTORY_WORDS, leftOutWords } from './words/history-words.ts';
import type { IssueId, IssueValues } from './words/import-words.ts';
import type { Wanted } from './words/term-words.ts';

export interface DraftOptions {
  readonly language?: Language;
  /** Entries for parts that wait for them. */
  readonly entries?: PartEntries;
  /** Outline of the deck that is open: the parts go into its scene and need no outline of their own. */
  readonly deck?: PolygonM | null;
}

export interface Draft {
  /** What the file holds and can stand in a scene. */
  readonly parts: DrawnParts;
  /** A scene of its own; null without an outline. */
  readonly scene: SceneFile | null;
  /** Parts that need an entry: bays stand in the scene without, all others are left out until then. */
  readonly waiting: readonly WaitingPart[];
  /** Sentences for the scene's history, in order. */
  readonly history: readonly string[];
  /** Layers that no role was given to. */
  readonly unassigned: readonly string[];
  /** Grid of the layers given as axes, from which bays can be cut; null where there is none. */
  readonly grid: AxisGrid | null;
  readonly issues: readonly Issue[];
}

/** Collects messages; a role's shapes that it cannot use are counted by layer. */
export class DraftIssues {
  readonly issues: Issue[] = [];

  add<I extends IssueId>(level: Issue['level'], id: I, layer: string, values: IssueValues<I>): void {
    this.issues.push(issueOf(level, id, values, { path: layer }));
  }

  unfit(layer: string, count: number, wanted: Wanted): void {
    if (count > 0) this.add('warning', 'SHAPE_UNFIT', layer, { layer, count, wanted });
  }
}

export type RoleLayers = (role: LayerRole) => readonly DrawingLayer[];

/**
 * Makes the part of a scene that a drawing holds.
 * @param result - what was read
 * @param roles - what each layer is
 * @param options - language, entries, the deck that is open
 * @returns parts, scene, what waits for entries, history
 */
export function draftScene(
  result: ImportResult,
  roles: LayerRoles,
  { language = 'en', entries = {}, deck = null }: DraftOptions = {},
): Draft {
  const issues = new DraftIssues();
  const known = checkRoles(result, roles, issues);
  const layersOf: RoleLayers = (role) => result.layers.filter(({ name }) => known.get(name) === role);
  const outline = deck === null || layersOf('outline').length > 0 ? outlineOf(layersOf('outline'), issues) : null;
  const areas = areaParts(layersOf, issues, entries);
  const places = placeParts(layersOf, issues, entries);
  const levels = levelsOf(layersOf('levels'), issues, missingTold(result));
  testThinned(result.thinned, layersOf('levels'), issues);
  const openings = [
    ...(outline?.holes ?? []),
    ...layersOf('openings').flatMap((layer) => ringsOf(layer, issues).map(({ points }) => points)),
  ];
  const grid = gridOf(layersOf('axes'), issues);
  const within = outline?.points ?? deck;
  const cut = grid !== null && areas.bays.length === 0 && within !== null ? cutBays(grid, within) : [];
  const words = HISTORY_WORDS[language];
  const parts: DrawnParts = {
    ...(outline && { outline: outline.points }),
    ...(openings.length > 0 && { openings }),
    ...(levels && { levels }),
    ...(areas.bays.length + cut.length > 0 && { bays: [...areas.bays, ...cut] }),
    ...(areas.zones.length > 0 && { zones: areas.zones }),
    ...(areas.zones.length > 0 && entries.buildup === STARTER && { buildups: [starter(words.starter)] }),
    ...places.parts,
  };
  const waiting = [
    ...areas.waiting,
    ...cut.map((bay): WaitingPart => ({ part: 'bay', ...bay, needs: ['permanentKNm2'] })),
    ...places.waiting,
  ];
  const used = result.layers.filter(({ name }) => known.has(name) && known.get(name) !== 'ignore');
  const history = [
    ...historyOf(importIn(result, language), used, { roles: known, language }),
    ...(cut.length > 0 ? [words.cut(cut.length)] : []),
    ...enteredWords(entries, parts, words),
    ...leftOutWords(waiting, words),
  ];
  return {
    parts,
    scene: parts.outline === undefined ? null : sceneOf(nameOf(result.name, language), parts, history),
    waiting,
    history,
    unassigned: result.layers.filter(({ name, shapes }) => shapes.length > 0 && !known.has(name)).map(({ name }) => name),
    grid,
    issues: issues.issues.map((issue) => importIssueIn(issue, language)),
  };
}

function cutBays(grid: AxisGrid, outline: PolygonM): SceneBay[] {
  return baysFromAxes(grid, outline).map((bay) => ({ id: bay.id, outline: bay.outline }));
}

function starter(name: string): SceneBuildUp {
  return { id: STARTER, name, layers: [{ material: 'fleece-500' }] };
}

/** The drawing as a scene of its own. */
function sceneOf(name: string, parts: DrawnParts, history: readonly string[]): SceneFile {
  const empty: SceneFile = {
    format: SCENE_FORMAT,
    version: SCENE_VERSION,
    name,
    deck: { outline: parts.outline ?? [], bays: [] },
    buildups: [],
    zones: [],
  };
  const patch = takeParts(
    empty,
    parts,
    {},
    history.map((says) => ({ says })),
  );
  return { ...empty, ...patch } as SceneFile;
}

/**
 * What is wrong with the draft as a scene, as the check of a scene says it.
 * @param draft - the draft
 * @param known - what scenes may refer to
 * @param language - of the messages
 * @returns issues without lines, since the draft is no file yet; that bays wait for their loads is told by `waiting`
 */
export function draftIssues({ scene, issues }: Draft, known: KnownIds, language: Language = 'en'): readonly Issue[] {
  if (scene === null) return issues;
  const ofScene = parseScene(JSON.stringify(scene), known).issues.filter(({ code }) => code !== 'BAY_NO_LIMIT');
  return [...issues, ...ofScene.map(({ line: _, ...issue }) => importIssueIn(issue, language))];
}

function checkRoles({ layers }: ImportResult, roles: LayerRoles, issues: DraftIssues): ReadonlyMap<string, LayerRole> {
  const known = new Map<string, LayerRole>();
  for (const [layer, role] of Object.entries(roles)) {
    if (!layers.some(({ name }) => name === layer)) {
      const names = layers.slice(0, 20).map(({ name }) => name);
      issues.add('error', 'ROLE_UNKNOWN:layer', layer, { layer, layers: names.join(', ') });
    } else if (!LAYER_ROLES.includes(role)) {
      issues.add('error', 'ROLE_UNKNOWN', layer, { role, roles: LAYER_ROLES.join(', ') });
    } else known.set(layer, role);
  }
  return known;
}

type Ring = Extract<DrawingShape, { kind: 'ring' }>;

function outlineOf(layers: readonly DrawingLayer[], issues: DraftIssues): Ring | null {
  const rings = layers.flatMap((layer) => ringsOf(layer, issues));
  const name = layers[0]?.name ?? '';
  if (rings.length === 0) {
    if (layers.length === 0) issues.add('error', 'OUTLINE_MISSING:role', name, {});
    else issues.add('error', 'OUTLINE_MISSING', name, { layer: name });
    return null;
  }
  const [largest, ...rest] = [...rings].sort((a, b) => boxArea(b) - boxArea(a));
  if (rest.length > 0) issues.add('warning', 'OUTLINE_SEVERAL', name, { count: rings.length });
  return largest;
}

function boxArea({ points }: Ring): number {
  const extent = (axis: 0 | 1) =>
    points.reduce((high, point) => Math.max(high, point[axis]), -Infinity) -
    points.reduce((low, point) => Math.min(low, point[axis]), Infinity);
  return extent(0) * extent(1);
}

const isWithoutLevel = (shape: DrawingShape): boolean => shape.kind === 'point' && shape.levelM === null;

/** Whether the reading told of all points without a level: once is enough. */
function missingTold({ issues, layers }: ImportResult): boolean {
  const told = Number(issues.find(({ code }) => code === 'LEVELS_MISSING')?.said?.values.count ?? 0);
  return told > 0 && layers.reduce((count, { shapes }) => count + shapes.filter(isWithoutLevel).length, 0) <= told;
}

function levelsOf(layers: readonly DrawingLayer[], issues: DraftIssues, isTold: boolean): SceneLevels | null {
  const spots: Point3M[] = [];
  const breaklines: (readonly Point3M[])[] = [];
  for (const { name, shapes } of layers) {
    let unfit = 0;
    // An outline whose corners lie at different levels comes with a line that has them.
    const told = new Set(
      shapes.flatMap((shape) => (shape.kind === 'line' && shape.levelsM !== undefined ? [shape.points[0].join(' ')] : [])),
    );
    for (const shape of shapes) {
      const [spot, breakline] = [spotOf(shape), breaklineOf(shape)];
      if (spot !== null) spots.push(spot);
      else if (breakline !== null) breaklines.push(breakline);
      else if (isTold && isWithoutLevel(shape)) continue;
      else if (shape.kind !== 'ring' || !told.has(shape.points[0].join(' '))) unfit += 1;
    }
    issues.unfit(name, unfit, 'levels');
  }
  return spots.length + breaklines.length === 0 ? null : { spots, ...(breaklines.length > 0 ? { breaklines } : {}) };
}

/** Levels were thinned as one surface: with other layers it is another one. */
function testThinned(thinned: readonly string[] | undefined, used: readonly DrawingLayer[], issues: DraftIssues): void {
  if (thinned === undefined || used.length === 0) return;
  const withLevels = used.filter(({ shapes }) => shapes.some((shape) => spotOf(shape) !== null || breaklineOf(shape) !== null));
  const same = withLevels.length === thinned.length && withLevels.every(({ name }) => thinned.includes(name));
  if (!same) issues.add('warning', 'LEVELS_THINNED_APART', used[0].name, { layers: thinned.join(', ') });
}

function gridOf(layers: readonly DrawingLayer[], issues: DraftIssues): AxisGrid | null {
  if (layers.length === 0) return null;
  const grid = axisGridOf(layers.flatMap(({ shapes }) => shapes.flatMap(linesOf)));
  const fits = grid !== null && (grid.alongM.length + 1) * (grid.acrossM.length + 1) <= MOST_FIELDS;
  if (!fits) issues.add('warning', 'AXES_UNFIT', layers[0].name, {});
  return fits ? grid : null;
}

/** Axes that meet at their ends were joined; a ring's last side is an axis too. */
function linesOf(shape: DrawingShape): readonly (readonly PointM[])[] {
  if (shape.kind === 'ring') return [[...shape.points, shape.points[0]]];
  return shape.kind === 'line' ? [shape.points] : [];
}

function nameOf(file: string, language: Language): string {
  return file.replace(/^.*[\\/]/, '').replace(/\.[^.]*$/, '') || HISTORY_WORDS[language].deckName;
}

interface HistoryOptions {
  readonly roles: ReadonlyMap<string, LayerRole>;
  readonly language: Language;
}

/** Every layer that is used has a role. */
function historyOf(result: ImportResult, used: readonly DrawingLayer[], { roles, language }: HistoryOptions): string[] {
  const words = HISTORY_WORDS[language];
  const layers = used.map(({ name, shapes }) => words.layer(name, roles.get(name) ?? 'ignore', shapes.length));
  return [
    words.read(result.name, result.kind ?? '?', layers),
    ...result.questions.filter(({ answered }) => answered).map(({ says, taken }) => words.answered(says, taken)),
    ...result.questions.filter(({ answered, certain }) => !answered && !certain).map(({ says, guess }) => words.guessed(says, guess)),
    ...result.mends.map(({ says, layer }) => (layer === undefined ? says : words.onLayer(layer, says))),
  ];
}
