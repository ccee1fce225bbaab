/** Checks retaining edges: a shape that can hold soil, densities in the unit asked for. */

import type { Phrase } from '../model/issue.ts';
import type { SceneFile, SceneRetaining } from '../model/scene-file.ts';
import { GRAVITY_MS2 } from '../model/units.ts';
import type { IssueList } from './issue-list.ts';
import type { Path } from './path.ts';
import { asIs, phrase, worded } from './words/phrase.ts';

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
    issues.error('WALL_SHAPE', [...path, 'stemM'], () =>
      worded(phrase('stemOnSlab', { a: stemM, b: baseM, id }), phrase('slabWiderThanStem'), phrase('wallShape')),
    );
  }
  if (slabM >= retainedM) {
    issues.error('WALL_SHAPE', [...path, 'slabM'], () =>
      worded(phrase('slabInWall', { a: slabM, b: retainedM, id }), phrase('slabThinnerThanWall'), phrase('checkMetres')),
    );
  }
}

function checkDensity(density: number, path: Path, issues: IssueList): void {
  if (density >= USUAL_DENSITY.least && density <= USUAL_DENSITY.greatest) return;
  issues.warning('DENSITY_UNUSUAL', path, () =>
    worded(asIs(`${density} kg/m³`), phrase('usualDensity', { a: USUAL_DENSITY.least, b: USUAL_DENSITY.greatest }), densityAdvice(density)),
  );
}

function densityAdvice(density: number): Phrase {
  if (density < MOST_T_PER_M3) return phrase('wasUnitMeant', { unit: 't/m³', n: Number((density * 1000).toPrecision(6)) });
  if (density < MOST_KN_PER_M3)
    return phrase('wasUnitMeant', { unit: 'kN/m³', n: Number(((density * 1000) / GRAVITY_MS2).toPrecision(4)) });
  return phrase('checkKgM3');
}
