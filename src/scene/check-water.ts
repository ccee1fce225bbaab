/** Checks rain and the water numbers of materials for what looks like another unit or leaves no room for solids. */

import type { SceneFile, SceneMaterial } from '../model/scene-file.ts';
import type { IssueList } from './issue-list.ts';
import type { Path } from './path.ts';

/** Rains outside this range suggest another unit [l/(s·ha)]: drizzle to far beyond a cloudburst of a century. */
const USUAL_RAIN = { least: 20, greatest: 3000 };
const M2_PER_HA = 10_000;
/** Yearly rain outside this range suggests another unit [mm]. */
const USUAL_YEAR = { least: 50, greatest: 12_000 };
/** No bed of stones lets through more [m/s]. */
const MOST_PERMEABLE_MS = 1;

/** Checks rain and the scene's own materials. */
export function checkWater(scene: SceneFile, issues: IssueList): void {
  checkRain(scene, issues);
  for (const [i, material] of (scene.materials ?? []).entries()) checkPores(material, ['materials', i], issues);
}

function checkRain({ rain }: SceneFile, issues: IssueList): void {
  if (!rain) return;
  for (const key of ['designLpsHa', 'extremeLpsHa'] as const) {
    const value = rain[key];
    if (value >= USUAL_RAIN.least && value <= USUAL_RAIN.greatest) continue;
    issues.warning('RAIN_UNUSUAL', ['rain', key], () => ({
      got: `${value} l/(s·ha)`,
      expected: `usually ${USUAL_RAIN.least} to ${USUAL_RAIN.greatest} l/(s·ha)`,
      mend:
        value < 1
          ? `Was l/(s·m²) meant? Then write ${Number((value * M2_PER_HA).toPrecision(6))}.`
          : 'Check the value; litres per second and hectare are asked for.',
    }));
  }
  const { annualMm } = rain;
  if (annualMm === undefined || (annualMm >= USUAL_YEAR.least && annualMm <= USUAL_YEAR.greatest)) return;
  issues.warning('RAIN_UNUSUAL', ['rain', 'annualMm'], () => ({
    got: `${annualMm} mm a year`,
    expected: `usually ${USUAL_YEAR.least} to ${USUAL_YEAR.greatest} mm`,
    mend: annualMm < USUAL_YEAR.least ? `Were metres meant? Then write ${Number((annualMm * 1000).toPrecision(6))}.` : 'Check the value.',
  }));
}

function checkPores({ id, porePercent, waterCapacityPercent, permeabilityMs }: SceneMaterial, path: Path, issues: IssueList): void {
  const water = (porePercent ?? 0) + (waterCapacityPercent ?? 0);
  if (porePercent !== undefined && water > 100) {
    issues.warning('PORES_UNUSUAL', [...path, 'porePercent'], () => ({
      got: `${porePercent} % beside ${waterCapacityPercent} % of water held by "${id}"`,
      expected: 'together at most 100 %: pores that only ponded water fills are what held water leaves',
      mend: 'Take the water capacity off the pores.',
    }));
  }
  if (permeabilityMs === undefined || permeabilityMs <= MOST_PERMEABLE_MS) return;
  issues.warning('PERMEABILITY_UNUSUAL', [...path, 'permeabilityMs'], () => ({
    got: `${permeabilityMs} m/s for "${id}"`,
    expected: `at most ${MOST_PERMEABLE_MS} m/s, the most that clean gravel lets through`,
    mend: `Was cm/s meant? Then write ${Number((permeabilityMs / 100).toPrecision(6))}.`,
  }));
}
