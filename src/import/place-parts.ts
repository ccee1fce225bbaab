/** Columns, outlets, trees and edges of a drawing. */

import type { DrawingLayer, DrawingShape, WaitingPart } from '../model/drawing.ts';
import type { DrawnParts, PartEntries, SceneColumn, SceneTree } from '../model/drawn-parts.ts';
import type { PointM, SceneEdge } from '../model/scene-file.ts';
import { freeId } from '../scene/free-id.ts';
import type { DraftIssues, RoleLayers } from './draft-scene.ts';

interface Place {
  readonly at: PointM;
  readonly sizeM?: PointM;
  readonly name?: string;
}

export interface PlaceParts {
  readonly parts: Pick<DrawnParts, 'columns' | 'outlets' | 'edges' | 'trees'>;
  readonly waiting: readonly WaitingPart[];
}

/** Largest column [m]; common practice. */
const LARGEST_COLUMN_M = 3;

export function placeParts(layersOf: RoleLayers, issues: DraftIssues, entries: PartEntries): PlaceParts {
  const columns = columnsOf(layersOf('columns'), issues, entries.columnM);
  const edges = edgesOf(layersOf('edges'), issues, entries.edge);
  const ids = new Set<string>();
  const outlets = placesOf(layersOf('outlets'), issues).map(({ at, name }) => ({
    id: freeId(name, 'O', ids),
    at,
    kind: 'outlet' as const,
  }));
  const trees = treesOf(layersOf('trees'), issues, entries.tree);
  return {
    parts: {
      ...(columns.whole.length > 0 ? { columns: columns.whole } : {}),
      ...(outlets.length > 0 ? { outlets } : {}),
      ...(edges.whole.length > 0 ? { edges: edges.whole } : {}),
      ...(trees.whole.length > 0 ? { trees: trees.whole } : {}),
    },
    waiting: [...columns.waiting, ...edges.waiting, ...trees.waiting],
  };
}

/** A thing stands where its block, point, circle or small outline stands; texts beside it name it. */
function placesOf(layers: readonly DrawingLayer[], issues: DraftIssues): Place[] {
  return layers.flatMap(({ name: layer, shapes }) => {
    const blocks = shapes.filter((shape) => shape.kind === 'block');
    // What is drawn inside a block is its picture.
    const drawn = blocks.length > 0 ? shapes.filter((shape) => shape.kind === 'block' || shape.block === undefined) : shapes;
    const texts = drawn.filter((shape) => shape.kind === 'text');
    const places: Place[] = [];
    let unfit = 0;
    for (const shape of drawn) {
      if (shape.kind === 'text') continue;
      const place = placeOf(shape);
      if (place === null) unfit += 1;
      else places.push(place);
    }
    issues.unfit(layer, unfit, 'places');
    return places.map((place) => (place.name === undefined ? { ...place, ...nearestText(place, texts) } : place));
  });
}

function placeOf(shape: DrawingShape): Place | null {
  const name = shape.name === undefined ? {} : { name: shape.name };
  if (shape.kind === 'point' || shape.kind === 'block') return { at: shape.at, ...name };
  if (shape.kind === 'circle') return { at: shape.at, sizeM: [2 * shape.radiusM, 2 * shape.radiusM], ...name };
  if (shape.kind !== 'ring') return null;
  // Not by Math.min of all: an outline may have a million points.
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of shape.points) {
    [minX, maxX] = [Math.min(minX, x), Math.max(maxX, x)];
    [minY, maxY] = [Math.min(minY, y), Math.max(maxY, y)];
  }
  return { at: [(minX + maxX) / 2, (minY + maxY) / 2], sizeM: [maxX - minX, maxY - minY], ...name };
}

/** A label stands no further away than this [m]. */
const LABEL_M = 1.5;

function nearestText({ at }: Place, texts: readonly Extract<DrawingShape, { kind: 'text' }>[]): { readonly name?: string } {
  let best: { readonly name?: string } = {};
  let least = LABEL_M;
  for (const text of texts) {
    const distance = Math.hypot(text.at[0] - at[0], text.at[1] - at[1]);
    if (distance <= least) [least, best] = [distance, { name: text.says }];
  }
  return best;
}

interface Found<T> {
  readonly whole: readonly T[];
  readonly waiting: readonly WaitingPart[];
}

function columnsOf(layers: readonly DrawingLayer[], issues: DraftIssues, entered: PointM | undefined): Found<SceneColumn> {
  const ids = new Set<string>();
  const whole: SceneColumn[] = [];
  const waiting: WaitingPart[] = [];
  for (const { at, sizeM: drawn, name } of placesOf(layers, issues)) {
    const id = freeId(name, 'C', ids);
    const fits = drawn !== undefined && Math.max(...drawn) <= LARGEST_COLUMN_M && Math.min(...drawn) > 0;
    const sizeM = fits ? drawn : entered;
    if (sizeM !== undefined) whole.push({ id, at, sizeM });
    else waiting.push({ part: 'column', id, at, needs: ['sizeM'] });
  }
  return { whole, waiting };
}

function treesOf(layers: readonly DrawingLayer[], issues: DraftIssues, entered: PartEntries['tree']): Found<SceneTree> {
  const ids = new Set<string>();
  const whole: SceneTree[] = [];
  const waiting: WaitingPart[] = [];
  for (const { at, sizeM, name } of placesOf(layers, issues)) {
    const id = freeId(name, 'T', ids);
    const spread = sizeM === undefined ? {} : { spreadM: Math.max(...sizeM) };
    if (entered !== undefined) whole.push({ kind: 'tree', id, at, ...entered, ...spread });
    else waiting.push({ part: 'tree', id, at, ...spread, needs: sizeM === undefined ? ['massKg', 'spreadM'] : ['massKg'] });
  }
  return { whole, waiting };
}

/** The top of the membrane is known only where the line lies at one level of its own. */
function edgesOf(layers: readonly DrawingLayer[], issues: DraftIssues, entered: PartEntries['edge']): Found<SceneEdge> {
  const ids = new Set<string>();
  const whole: SceneEdge[] = [];
  const waiting: WaitingPart[] = [];
  for (const { name: layer, shapes } of layers) {
    let unfit = 0;
    for (const shape of shapes) {
      if (shape.kind !== 'line' && shape.kind !== 'ring') {
        unfit += shape.kind === 'text' ? 0 : 1;
        continue;
      }
      const line = shape.kind === 'ring' ? [...shape.points, shape.points[0]] : shape.points;
      const level =
        shape.kind === 'ring' ? shape.levelM : shape.levelsM?.every((z) => z === shape.levelsM?.[0]) ? shape.levelsM[0] : undefined;
      const id = freeId(shape.name, 'E', ids);
      if (level !== undefined) whole.push({ id, line, kind: entered?.kind ?? 'upstand', membraneTopM: level });
      else if (entered !== undefined) whole.push({ id, line, ...entered });
      else waiting.push({ part: 'edge', id, line, needs: ['kind', 'membraneTopM'] });
    }
    issues.unfit(layer, unfit, 'lines');
  }
  return { whole, waiting };
}
