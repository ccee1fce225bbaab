/** What was found, put to use: the person says what each layer is, and gets the part of a scene that the file holds. */

import type { AxisGrid, DrawingLayer, DrawingShape, ImportResult, LayerRole, LayerRoles, WaitingPart } from '../model/drawing.ts';
import { LAYER_ROLES } from '../model/drawing.ts';
import type { Issue } from '../model/issue.ts';
import type { Point3M, PointM, SceneDeck, SceneFile, SceneLevels } from '../model/scene-file.ts';
import { SCENE_FORMAT, SCENE_VERSION } from '../scene/schema.ts';
import { areaParts, ringsOf } from './area-parts.ts';
import { axisGridOf } from './axis-grid.ts';
import { issueOf } from './gathering.ts';
import type { ImportIssueCode } from './issue-codes.ts';
import { placeParts } from './place-parts.ts';

export interface Draft {
  /** Only what the file holds, and passes the checks of a scene; null without an outline. */
  readonly scene: SceneFile | null;
  /** Parts that need an entry before they can stand in a scene, such as a permitted load. */
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

  add(level: Issue['level'], code: ImportIssueCode, path: string, words: readonly [got: string, expected: string, mend: string]): void {
    const [got, expected, mend] = words;
    this.issues.push(issueOf(code, level, { path, got, expected, mend }));
  }

  unfit(layer: string, count: number, expected: string): void {
    if (count === 0) return;
    const got = `${count} ${count === 1 ? 'shape' : 'shapes'} on layer "${layer}" that ${count === 1 ? 'is' : 'are'} of no use there`;
    this.add('warning', 'SHAPE_UNFIT', layer, [got, expected, 'They were left out; give the layer another role, or mend the drawing.']);
  }
}

export type RoleLayers = (role: LayerRole) => readonly DrawingLayer[];

/**
 * Makes the part of a scene that a drawing holds.
 * @param result - what was read
 * @param roles - what each layer is
 * @returns scene, what waits for entries, history
 */
export function draftScene(result: ImportResult, roles: LayerRoles): Draft {
  const issues = new DraftIssues();
  const known = checkRoles(result, roles, issues);
  const layersOf: RoleLayers = (role) => result.layers.filter(({ name }) => known.get(name) === role);
  const outline = outlineOf(layersOf('outline'), issues);
  const areas = areaParts(layersOf, issues);
  const places = placeParts(layersOf, issues);
  const levels = levelsOf(layersOf('levels'), issues);
  const openings = [
    ...(outline?.holes ?? []),
    ...layersOf('openings').flatMap((layer) => ringsOf(layer, issues).map(({ points }) => points)),
  ];
  const used = result.layers.filter(({ name }) => known.has(name) && known.get(name) !== 'ignore');
  const deck: SceneDeck | null = outline && {
    outline: outline.points,
    ...(openings.length > 0 ? { openings } : {}),
    ...(levels === null ? {} : { levels }),
    bays: [],
    ...places.deck,
  };
  return {
    scene: deck && { format: SCENE_FORMAT, version: SCENE_VERSION, name: nameOf(result.name), deck, buildups: [], zones: [] },
    waiting: [...areas, ...places.waiting],
    history: historyOf(result, used, known),
    unassigned: result.layers.filter(({ name, shapes }) => shapes.length > 0 && !known.has(name)).map(({ name }) => name),
    grid: gridOf(layersOf('axes'), issues),
    issues: issues.issues,
  };
}

function checkRoles({ layers }: ImportResult, roles: LayerRoles, issues: DraftIssues): ReadonlyMap<string, LayerRole> {
  const known = new Map<string, LayerRole>();
  for (const [layer, role] of Object.entries(roles)) {
    if (!layers.some(({ name }) => name === layer)) {
      const names = layers.slice(0, 20).map(({ name }) => name);
      issues.add('error', 'ROLE_UNKNOWN', layer, [
        `a role for a layer "${layer}"`,
        `one of the layers ${names.join(', ')}`,
        'Check the name of the layer.',
      ]);
    } else if (!LAYER_ROLES.includes(role)) {
      issues.add('error', 'ROLE_UNKNOWN', layer, [`the role "${role}"`, `one of ${LAYER_ROLES.join(', ')}`, 'Choose one of these.']);
    } else known.set(layer, role);
  }
  return known;
}

type Ring = Extract<DrawingShape, { kind: 'ring' }>;

function outlineOf(layers: readonly DrawingLayer[], issues: DraftIssues): Ring | null {
  const rings = layers.flatMap((layer) => ringsOf(layer, issues));
  const name = layers[0]?.name ?? '';
  if (rings.length === 0) {
    const got = layers.length === 0 ? 'no layer given as outline' : `no closed outline on layer "${name}"`;
    issues.add('error', 'OUTLINE_MISSING', name, [
      got,
      'one closed outline of the deck',
      'Give the layer with the deck’s edge the role outline; close the line in the drawing.',
    ]);
    return null;
  }
  const [largest, ...rest] = [...rings].sort((a, b) => boxArea(b) - boxArea(a));
  if (rest.length > 0) {
    const got = `${rings.length} closed outlines`;
    issues.add('warning', 'OUTLINE_SEVERAL', name, [
      got,
      'one outline of the deck',
      'The largest was taken; put openings on a layer of their own, other decks in a file of their own.',
    ]);
  }
  return largest;
}

function boxArea({ points }: Ring): number {
  const extent = (axis: 0 | 1) =>
    points.reduce((high, point) => Math.max(high, point[axis]), -Infinity) -
    points.reduce((low, point) => Math.min(low, point[axis]), Infinity);
  return extent(0) * extent(1);
}

function levelsOf(layers: readonly DrawingLayer[], issues: DraftIssues): SceneLevels | null {
  const spots: Point3M[] = [];
  const breaklines: Point3M[][] = [];
  for (const { name, shapes } of layers) {
    let unfit = 0;
    for (const shape of shapes) {
      if ((shape.kind === 'point' || shape.kind === 'text') && shape.levelM !== null) spots.push([...shape.at, shape.levelM]);
      else if (shape.kind === 'line' && shape.levelsM !== undefined) breaklines.push(withLevels(shape.points, shape.levelsM));
      else if (shape.kind === 'ring' && shape.levelM !== undefined)
        breaklines.push(withLevels([...shape.points, shape.points[0]], [shape.levelM]));
      else unfit += 1;
    }
    issues.unfit(name, unfit, 'points or texts with a level, or lines with levels');
  }
  return spots.length + breaklines.length === 0 ? null : { spots, ...(breaklines.length > 0 ? { breaklines } : {}) };
}

function gridOf(layers: readonly DrawingLayer[], issues: DraftIssues): AxisGrid | null {
  if (layers.length === 0) return null;
  const grid = axisGridOf(layers.flatMap(({ shapes }) => shapes.flatMap((shape) => ('points' in shape ? [shape.points] : []))));
  if (grid === null) {
    issues.add('warning', 'AXES_UNFIT', layers[0].name, [
      'lines that make no grid',
      'straight axes in two directions at right angles, two or more in each',
      'Enter the distances between axes by hand, or draw the bays as outlines.',
    ]);
  }
  return grid;
}

/** The last level given counts for the points after it. */
function withLevels(points: readonly PointM[], levels: readonly number[]): Point3M[] {
  return points.map(([x, y], i) => [x, y, levels[Math.min(i, levels.length - 1)]]);
}

function nameOf(file: string): string {
  return file.replace(/^.*[\\/]/, '').replace(/\.[^.]*$/, '') || 'Imported deck';
}

function historyOf(result: ImportResult, used: readonly DrawingLayer[], roles: ReadonlyMap<string, LayerRole>): string[] {
  const layers = used.map(
    ({ name, shapes }) => `${name} as ${roles.get(name)} (${shapes.length} ${shapes.length === 1 ? 'shape' : 'shapes'})`,
  );
  const answers = result.questions.filter(({ answered }) => answered).map(({ says, taken }) => `Asked: ${says} Answer: ${taken}.`);
  const guessed = result.questions
    .filter(({ answered, certain }) => !answered && !certain)
    .map(({ says, guess }) => `Not answered: ${says} Taken: ${guess}.`);
  return [
    `Read from "${result.name}" (${result.kind ?? 'unknown'}): ${layers.length === 0 ? 'no layers' : layers.join(', ')}.`,
    ...answers,
    ...guessed,
    ...result.mends.map(({ says, layer }) => (layer === undefined ? says : `Layer ${layer}: ${says}`)),
  ];
}
