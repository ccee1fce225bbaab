/** Whether a shape could stand in a scene: the same checks and the same words as for a file, while it is being drawn. */

import type { Issue } from '../model/issue.ts';
import type { Language } from '../model/language.ts';
import type { PointM } from '../model/scene-file.ts';
import { issueIn } from '../scene/issue-language.ts';
import { pathText } from '../scene/path.ts';
import { areaFaults, faultPath, lineFaults, type ShapeFault } from '../scene/shape-faults.ts';
import { phrase } from '../scene/words/phrase.ts';
import type { PlanForm, PlanPoint } from './point-lists.ts';

/** Why a shape would be refused. */
export interface Fault {
  /** As the scene's check gives it, told in the language asked for; its path leads into `outline` or `holes`. */
  readonly issue: Issue;
  /** Where to mark it; null where it has no place (too few points). */
  readonly at: PointM | null;
  /** Edges that cross or touch, by the index of their first point; of the hole where `hole` is given. */
  readonly edges: readonly number[];
  readonly hole?: number;
}

export interface DrawnShape {
  readonly form: PlanForm;
  readonly points: readonly PlanPoint[];
  readonly holes?: readonly (readonly PlanPoint[])[];
  /** Still being drawn: only crossings of what is drawn count, neither the edge back to the first point nor how many points there are. */
  readonly open?: boolean;
}

const NAMES = { name: phrase('thisShape'), hole: (index: number) => phrase('hole', { n: index + 1 }) };

/**
 * Faults of a shape.
 * @param shape - points as drawn
 * @param language - of the words
 * @returns the faults that would be told of the file; none for a sound shape
 */
export function shapeFaults(shape: DrawnShape, language: Language): readonly Fault[] {
  return foundFaults(shape).map((fault) => told(fault, language));
}

function foundFaults({ form, points, holes = [], open = false }: DrawnShape): readonly ShapeFault[] {
  if (form === 'point') return [];
  const flat = flattened(points);
  if (form === 'line') return open ? [] : lineFaults(flat, NAMES.name);
  if (!open) return areaFaults(flat, holes.map(flattened), NAMES);
  // The way back to the first point is not drawn yet: what only it would touch is no fault.
  const last = flat.length - 1;
  return areaFaults(flat, [], NAMES).filter(({ edges }) => edges.length > 0 && edges.every(({ from, to }) => from !== last || to !== 0));
}

const flattened = (points: readonly PlanPoint[]) => points.map(([x, y]): PointM => [x, y]);

function told(fault: ShapeFault, language: Language): Fault {
  const path = pathText(faultPath(fault, ['outline'], ['holes']));
  const issue: Issue = { code: fault.code, level: 'error', path, ...fault.words() };
  return {
    issue: issueIn(issue, language),
    at: fault.at,
    edges: fault.edges.map(({ from }) => from),
    ...(fault.hole !== null && { hole: fault.hole }),
  };
}
