/** Checks bays, loads, rain, stages and dates for what is missing or looks like another unit. */

import type { Phrase } from '../model/issue.ts';
import type { SceneFile, SceneStage } from '../model/scene-file.ts';
import { GRAVITY_MS2 } from '../model/units.ts';
import type { IssueList } from './issue-list.ts';
import type { KnownIds } from './known-ids.ts';
import type { Path } from './path.ts';
import { asIs, phrase, worded } from './words/phrase.ts';

/** Greatest load per area that raises no question [kN/m²]. */
const USUAL_LOAD_KNM2 = 200;
/** Least tree with root ball that raises no question [kg]. */
const USUAL_TREE_KG = 20;

/** Checks permitted and given loads. */
export function checkLoads(scene: SceneFile, issues: IssueList): void {
  for (const [i, bay] of scene.deck.bays.entries()) {
    const path = ['deck', 'bays', i];
    if (bay.permanentKNm2 === undefined && bay.totalKNm2 === undefined) {
      issues.warning('BAY_NO_LIMIT', path, () =>
        worded(phrase('bayNoLimit', { id: bay.id }), phrase('permittedLoad'), phrase('addPermitted')),
      );
    }
    for (const key of ['permanentKNm2', 'imposedKNm2', 'totalKNm2', 'stageKNm2'] as const) checkLoad(bay[key], [...path, key], issues);
    checkDate(bay.basis?.date, [...path, 'basis', 'date'], issues);
  }
  for (const [i, zone] of scene.zones.entries()) checkLoad(zone.imposedKNm2, ['zones', i, 'imposedKNm2'], issues);
  for (const [i, object] of (scene.objects ?? []).entries()) {
    if (object.kind === 'block') checkLoad(object.kNm2, ['objects', i, 'kNm2'], issues);
    if (object.kind === 'tree' && object.massKg < USUAL_TREE_KG) {
      issues.warning('LOAD_UNUSUAL', ['objects', i, 'massKg'], () =>
        worded(
          phrase('treeKg', { n: object.massKg, id: object.id }),
          phrase('treeWeight', { n: USUAL_TREE_KG }),
          phrase('tonnesMeant', { n: Number((object.massKg * 1000).toPrecision(6)) }),
        ),
      );
    }
  }
  for (const [i, entry] of (scene.history ?? []).entries()) checkDate(entry.on, ['history', i, 'on'], issues);
  const { rain } = scene;
  if (rain !== undefined && rain.extremeLpsHa < rain.designLpsHa) {
    issues.warning('RAIN_ORDER', ['rain', 'extremeLpsHa'], () =>
      worded(phrase('rainBelowDesign', { a: rain.extremeLpsHa, b: rain.designLpsHa }), phrase('extremeRain'), phrase('swapped')),
    );
  }
}

function checkLoad(loadKNm2: number | undefined, path: Path, issues: IssueList): void {
  if (loadKNm2 === undefined || loadKNm2 <= USUAL_LOAD_KNM2) return;
  issues.warning('LOAD_UNUSUAL', path, () =>
    worded(asIs(`${loadKNm2} kN/m²`), phrase('usualLoad', { n: USUAL_LOAD_KNM2 }), otherUnits(loadKNm2)),
  );
}

/** One kN/m² in pounds per square foot: 1000 N / 4.4482216 N · 0.3048² [psf]. */
const PSF_PER_KNM2 = (1000 / 4.4482216152605) * 0.3048 ** 2;
/** More psf than this is more likely kg/m²: 1000 psf are 48 kN/m². */
const MOST_PSF = 1000;

function otherUnits(load: number): Phrase {
  const kg = Number(((load * GRAVITY_MS2) / 1000).toPrecision(4));
  if (load > MOST_PSF) return phrase('wasUnitMeant', { unit: 'kg/m²', n: kg });
  return phrase('wasKgOrPsfMeant', { kg, psf: Number((load / PSF_PER_KNM2).toPrecision(4)) });
}

/** Checks what the stages place, heap up and date. */
export function checkStages(scene: SceneFile, known: KnownIds, issues: IssueList): void {
  for (const [i, stage] of (scene.stages ?? []).entries()) {
    checkPlaces(stage, ['stages', i, 'place'], issues);
    for (const [j, pile] of (stage.stockpiles ?? []).entries()) {
      const material = known.materials.get(pile.material);
      if (material === undefined || material.density !== undefined) continue;
      issues.error('STOCKPILE_NOT_LOOSE', ['stages', i, 'stockpiles', j, 'material'], () =>
        worded(phrase('pileNoDensity', { id: pile.id, material: pile.material }), phrase('heapMaterial'), phrase('looseOnly')),
      );
    }
    for (const [j, hold] of (stage.holdPoints ?? []).entries()) checkDate(hold.on, ['stages', i, 'holdPoints', j, 'on'], issues);
  }
}

function checkPlaces(stage: SceneStage, path: Path, issues: IssueList): void {
  for (const [j, place] of (stage.place ?? []).entries()) {
    if (place.zones !== undefined && place.roles === undefined) {
      issues.error('PLACE_ZONES_WITHOUT_ROLES', [...path, j], () =>
        worded(phrase('zonesNoRoles', { id: stage.id }), phrase('rolesBesideZones'), phrase('addRoles')),
      );
    } else if (place.roles === undefined && place.objects === undefined) {
      issues.error('PLACE_EMPTY', [...path, j], () =>
        worded(phrase('placesNothing', { id: stage.id }), phrase('rolesOrObjects'), phrase('addPlaced')),
      );
    }
  }
}

const TIME_OF_DAY = /T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:\d{2})?$/;

/** Dates are free text, but only ISO dates sort and compare. */
function checkDate(date: string | undefined, path: Path, issues: IssueList): void {
  if (date === undefined || isIsoDate(date.replace(TIME_OF_DAY, ''))) return;
  issues.warning('DATE_FORM', path, () => worded(asIs(`"${date}"`), phrase('isoDate'), phrase('writeSo')));
}

function isIsoDate(date: string): boolean {
  const time = /^\d{4}-\d{2}-\d{2}$/.test(date) ? Date.parse(`${date}T00:00:00Z`) : Number.NaN;
  return Number.isFinite(time) && new Date(time).toISOString().startsWith(date);
}
