/** What a part of the plan is called where it stands alone: its kind and its name, id or number. */

import { type PlanShape, shapeOf } from '../../edit/plan-shapes.ts';
import { zoneOfFinish } from '../../edit/point-lists.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import type { Selected } from '../../model/selected.ts';
import { kindOfList } from '../facts/drawn-kinds.ts';
import { t } from '../text/text.ts';

/** Openings, spot levels, breaklines and machines have no id of their own. */
const NAMELESS: ReadonlySet<string> = new Set(['outline', 'opening', 'levels', 'finish', 'plant']);

export const isNameless = (part: string): boolean => NAMELESS.has(part);

/** Number of a part without an id, as people count. */
const placeOf = (id: string) => t.draw.number(Number(id.split(' ').at(-1)) + 1);

export function partTitle(scene: SceneFile, one: Selected): string {
  const shape = shapeOf(scene, one);
  return shape === null ? one.id : shapeTitle(shape);
}

export function shapeTitle(shape: PlanShape): string {
  const { part, id, name } = shape;
  const kind = kindOfList(shape);
  if (kind === null) return id;
  if (part === 'outline') return t.draw.kinds.outline;
  // Levels of a finish are counted within their zone.
  if (part === 'finish') return t.draw.part(kind, `${zoneOfFinish(id)} ${placeOf(id)}`);
  return t.draw.part(kind, isNameless(part) ? placeOf(id) : (name ?? id));
}
