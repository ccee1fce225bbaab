/** The limits that no change can keep: proved place by place, with everything as light there as it may be. */

import type { Evaluation } from '../core/evaluation.ts';
import { at } from '../core/findings.ts';
import type { LightenHindrance, LightenObstacle } from '../model/lighten.ts';
import type { Site } from './ground.ts';
import { lightestAt, withoutRules, type ZoneTask } from './task.ts';
import { type BayLimit, greatestOf, isOver } from './windows.ts';

const FAMILIES: readonly LightenHindrance[] = ['substrate depth', 'tree soil', 'room', 'base course'];

export interface Search {
  readonly site: Site;
  readonly over: readonly BayLimit[];
  readonly tasks: readonly ZoneTask[];
  /** The same, with the zones that must stay as they are. */
  readonly unlocked: () => ZoneTask[];
  /** All zones at their least weight. */
  readonly lightest: Evaluation;
}

/** Limits still broken at the lightest. */
export function findObstacles({ site, over, tasks, unlocked, lightest }: Search): LightenObstacle[] {
  // Made when first asked for, and then kept: their options are worked out once.
  const made = new Map<LightenHindrance, readonly ZoneTask[]>();
  const tasksFor = (family: LightenHindrance, make: () => readonly ZoneTask[]) => {
    const found = made.get(family) ?? make();
    made.set(family, found);
    return found;
  };
  return over.flatMap((limit): LightenObstacle[] => {
    const worst = greatestOf(lightest, limit);
    if (!isOver(worst.kNm2, limit.permittedKNm2)) return [];
    const least = lightestAt(tasks, limit, worst.cell, site);
    if (!isOver(least.kNm2, limit.permittedKNm2)) return [];
    const helps = (from: readonly ZoneTask[]) => !isOver(lightestAt(from, limit, worst.cell, site).kNm2, limit.permittedKNm2);
    const hindrances = FAMILIES.filter((family) => helps(tasksFor(family, () => withoutRules(tasks, family))));
    const free = tasksFor('locked zones', unlocked);
    if (free.length > tasks.length && helps(free)) hindrances.push('locked zones');
    const { bay, kind, stage, permittedKNm2 } = limit;
    return [
      {
        ...{ bay, kind, stage, permittedKNm2 },
        at: at(site.on, worst.cell).at as [number, number],
        beforeKNm2: greatestOf(site.on, limit).kNm2,
        lightestKNm2: least.kNm2,
        overKNm2: least.kNm2 - permittedKNm2,
        othersKNm2: least.othersKNm2,
        hindrances,
      },
    ];
  });
}
