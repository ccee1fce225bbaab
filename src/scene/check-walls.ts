/** Checks retaining edges: a shape that can hold soil, densities in the unit asked for. */

import type { SceneFile, SceneRetaining } from '../model/scene-file.ts';
import { GRAVITY_MS2 } from '../model/units.ts';
import type { IssueList } from './issue-list.ts';
import type { Path } from './path.ts';

/** Densities outside this range suggest another unit [kg/m³]: light planting soil to heavy concrete. */
const USUAL_DENSITY = { least: 300, greatest: 4000 };
/** Below this t/m³ is more likely than kN/m³. */
const MOST_T_PER_M3 = 5;
/** Below this kN/m³ is more likely than a light material in kg/m³. */
const MOST_KN_PER_M3 = 40;

/** Checks shape and densities of every retaining edge. */
export function checkWalls(scene: SceneFile, issues: IssueList): void {
  for (const [i, object] of (scene.objects ?? []).entries()) {
    if (object.kind !== 'retaining') continue;
    const path = ['objects', i];
    checkShape(object, path, issues);
    checkDensity(object.backfill.density, [...path, 'backfill', 'density'], issues);
    if (object.wallDensity !== undefined) checkDensity(object.wallDensity, [...path, 'wallDensity'], issues);
  }
}

function checkShape({ id, stemM, baseM, slabM, retainedM }: SceneRetaining, path: Path, issues: IssueList): void {
  if (stemM >= baseM) {
    issues.error('WALL_SHAPE', [...path, 'stemM'], () => ({
      got: `a stem of ${stemM} m on a base slab of ${baseM} m for retaining edge "${id}"`,
      expected: 'a base slab wider than the stem, since the soil on it holds the wall [m]',
      mend: 'Check the two; enter a wall without a base slab as an object of kind "line" and have it proved by the structural engineer.',
    }));
  }
  if (slabM >= retainedM) {
    issues.error('WALL_SHAPE', [...path, 'slabM'], () => ({
      got: `a base slab ${slabM} m thick in a wall of ${retainedM} m for retaining edge "${id}"`,
      expected: 'a base slab thinner than the height retained, which counts from its underside [m]',
      mend: 'Check the two; metres are asked for.',
    }));
  }
}

function checkDensity(density: number, path: Path, issues: IssueList): void {
  if (density >= USUAL_DENSITY.least && density <= USUAL_DENSITY.greatest) return;
  issues.warning('DENSITY_UNUSUAL', path, () => ({
    got: `${density} kg/m³`,
    expected: `usually ${USUAL_DENSITY.least} to ${USUAL_DENSITY.greatest} kg/m³`,
    mend: densityMend(density),
  }));
}

function densityMend(density: number): string {
  if (density < MOST_T_PER_M3) return `Was t/m³ meant? Then write ${Number((density * 1000).toPrecision(6))}.`;
  if (density < MOST_KN_PER_M3) return `Was kN/m³ meant? Then write ${Number(((density * 1000) / GRAVITY_MS2).toPrecision(4))}.`;
  return 'Check the value; kg/m³ is asked for.';
}
