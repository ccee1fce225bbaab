/** Asks how far a survey of more levels than a scene holds is to be thinned, and does it. */

import { type ThinnedNet, thinNet } from '../core/levels/thin-net.ts';
import type { DrawingKind, DrawingLayer } from '../model/drawing.ts';
import type { Point3M } from '../model/scene-file.ts';
import { MAX_LIST_POINTS } from '../scene/limits.ts';
import { choiceOf, type Gathering } from './gathering.ts';
import { guessRoles } from './guess-roles.ts';
import { breaklineOf, spotOf } from './level-shapes.ts';
import { MAX_THINNED, MAX_THINNED_LINES } from './limits.ts';
import type { Steps } from './steps.ts';

/** Greatest deviations offered [mm]. */
const TOLERANCES_MM = [2, 5, 10, 20, 50];

/** Levels of layers that together make one surface. */
interface Survey {
  readonly names: ReadonlySet<string>;
  /** x y z per spot, from a corner at whole metres: near it the net is made with the digits that the calculation has. */
  readonly spots: Float64Array;
  readonly breaklines: readonly Float64Array[];
}

interface Thinned {
  readonly layers: DrawingLayer[];
  /** Layers that were thinned, as one surface; none where there was nothing to thin. */
  readonly thinned: readonly string[];
}

/** The same layers, with fewer levels where there were too many. */
export function* thinLevels(layers: DrawingLayer[], kind: DrawingKind, gather: Gathering): Steps<Thinned> {
  const survey = surveyOf(layers, kind);
  const before = survey.spots.length / 3;
  const lines = survey.breaklines.reduce((sum, line) => sum + line.length / 3, 0);
  const same = { layers, thinned: [] };
  if (before <= MAX_LIST_POINTS) return same;
  if (before > MAX_THINNED || lines > MAX_THINNED_LINES) {
    gather.warning('LEVELS_TOO_MANY', { count: before, lines, most: MAX_THINNED, mostLines: MAX_THINNED_LINES });
    return same;
  }
  const found = yield* thinNet(
    survey,
    [...TOLERANCES_MM].reverse().map((mm) => mm / 1000),
    MAX_LIST_POINTS,
  );
  if (found.length === 0) {
    gather.warning('LEVELS_TOO_ROUGH', { count: before, most: MAX_LIST_POINTS, errorMm: Math.max(...TOLERANCES_MM) });
    return same;
  }
  const taken = asked(found, before, gather);
  gather.mend('LEVELS_THINNED', valuesOf(taken, before));
  return { layers: withKept(layers, survey, taken), thinned: [...survey.names] };
}

function asked(found: readonly ThinnedNet[], before: number, gather: Gathering): ThinnedNet {
  const finest = found[found.length - 1];
  const nameOf = ({ toleranceM }: ThinnedNet) => String(Math.round(1000 * toleranceM));
  const answer = gather.ask({
    id: 'thin',
    code: 'THIN',
    values: { count: before, most: MAX_LIST_POINTS },
    choices: [...found].reverse().map((net) => choiceOf(nameOf(net), 'THIN', valuesOf(net, before))),
    guess: nameOf(finest),
  });
  return found.find((net) => nameOf(net) === answer) ?? finest;
}

/** The deviation found is rounded up: never told smaller than it is. */
function valuesOf({ toleranceM, kept, greatestM }: ThinnedNet, before: number) {
  return { count: before, after: kept.length, errorMm: Math.round(1000 * toleranceM), mostMm: Math.ceil(1e4 * greatestM - 1e-9) / 10 };
}

/** Layers that are most likely levels, and any with too many levels of its own. */
function surveyOf(layers: readonly DrawingLayer[], kind: DrawingKind): Survey {
  const roles = guessRoles({ kind, layers });
  const counts = (layer: DrawingLayer) => layer.shapes.reduce((sum, shape) => sum + (spotOf(shape) === null ? 0 : 1), 0);
  const used = layers.filter((layer) => roles.get(layer.name) === 'levels' || counts(layer) > MAX_LIST_POINTS);
  const spots = used.flatMap(({ shapes }) => shapes.map(spotOf).filter((spot) => spot !== null));
  const lines = used.flatMap(({ shapes }) => shapes.map(breaklineOf).filter((line) => line !== null));
  let [x0, y0] = [Infinity, Infinity];
  for (const [x, y] of spots) [x0, y0] = [Math.min(x0, Math.floor(x)), Math.min(y0, Math.floor(y))];
  const local = (points: readonly Point3M[]) => Float64Array.from(points.flatMap(([x, y, z]) => [x - x0, y - y0, z]));
  return { names: new Set(used.map(({ name }) => name)), spots: local(spots), breaklines: lines.map(local) };
}

/** Without the spots that are not kept; the order stays. */
function withKept(layers: readonly DrawingLayer[], { names }: Survey, { kept }: ThinnedNet): DrawingLayer[] {
  const stays = new Set(kept);
  let at = -1;
  return layers.map((layer) => {
    if (!names.has(layer.name)) return layer;
    return { ...layer, shapes: layer.shapes.filter((shape) => spotOf(shape) === null || stays.has(++at)) };
  });
}
