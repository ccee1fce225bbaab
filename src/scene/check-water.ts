/** Checks rain and the water numbers of materials for what looks like another unit or leaves no room for solids. */

import type { SceneFile, SceneMaterial } from '../model/scene-file.ts';
import type { IssueList } from './issue-list.ts';
import type { Path } from './path.ts';
import { asIs, phrase, worded } from './words/phrase.ts';

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
    issues.warning('RAIN_UNUSUAL', ['rain', key], () =>
      worded(
        asIs(`${value} l/(s·ha)`),
        phrase('usualRain', { a: USUAL_RAIN.least, b: USUAL_RAIN.greatest }),
        value < 1 ? phrase('wasUnitMeant', { unit: 'l/(s·m²)', n: Number((value * M2_PER_HA).toPrecision(6)) }) : phrase('checkRain'),
      ),
    );
  }
  const { annualMm } = rain;
  if (annualMm === undefined || (annualMm >= USUAL_YEAR.least && annualMm <= USUAL_YEAR.greatest)) return;
  issues.warning('RAIN_UNUSUAL', ['rain', 'annualMm'], () =>
    worded(
      phrase('yearMm', { n: annualMm }),
      phrase('usualYear', { a: USUAL_YEAR.least, b: USUAL_YEAR.greatest }),
      annualMm < USUAL_YEAR.least ? phrase('metresMeant', { n: Number((annualMm * 1000).toPrecision(6)) }) : phrase('checkValue'),
    ),
  );
}

function checkPores({ id, porePercent, waterCapacityPercent, permeabilityMs }: SceneMaterial, path: Path, issues: IssueList): void {
  const water = (porePercent ?? 0) + (waterCapacityPercent ?? 0);
  if (porePercent !== undefined && water > 100) {
    issues.warning('PORES_UNUSUAL', [...path, 'porePercent'], () =>
      worded(phrase('poresBeside', { a: porePercent, b: waterCapacityPercent ?? 0, id }), phrase('poresTogether'), phrase('takeOffPores')),
    );
  }
  if (permeabilityMs === undefined || permeabilityMs <= MOST_PERMEABLE_MS) return;
  issues.warning('PERMEABILITY_UNUSUAL', [...path, 'permeabilityMs'], () =>
    worded(
      phrase('speedFor', { n: permeabilityMs, id }),
      phrase('permeableAtMost', { n: MOST_PERMEABLE_MS }),
      phrase('wasUnitMeant', { unit: 'cm/s', n: Number((permeabilityMs / 100).toPrecision(6)) }),
    ),
  );
}
