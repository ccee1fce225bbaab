/** A kept variant against the scene as it stands: evaluated like any scene, compared number by number. */

import { cellMap } from '../core/maps.ts';
import type { CellMap } from '../model/maps.ts';
import { CELL_NO_DATA } from '../model/maps.ts';
import type { Report } from '../model/report.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { SCHEME_KEYS, type SceneVariant } from '../model/scheme.ts';
import {
  DIFFERENCE_CLASSES,
  DIFFERENCE_LIMITS_KNM2,
  type SchemeFigures,
  type StageNamed,
  type TakeOffChange,
  type VariantComparison,
} from '../model/variants.ts';
import { diffReports } from './diff-reports.ts';
import { diffScenes } from './diff-scenes.ts';
import { changeLine, DIFF_TEXT } from './diff-text.ts';
import { differenceMap } from './difference-map.ts';
import type { Project } from './evaluate-project.ts';
import { namesOf } from './words/names.ts';

/** The scene with the scheme of a variant instead of its own; the variants themselves left out. */
export function sceneOfVariant(scene: SceneFile, { scheme }: SceneVariant): SceneFile {
  const rest = Object.entries(scene).filter(([key]) => key !== 'variants' && !SCHEME_KEYS.some((own) => own === key));
  return { ...Object.fromEntries(rest), ...scheme } as SceneFile;
}

/**
 * Compares two evaluated schemes.
 * @param before - scene as it stands, in the language of the words
 * @param after - scene of the variant, evaluated
 * @param variant - id of the variant
 * @returns figures of both, and what differs
 */
export function compareVariant(before: Project, after: Project, variant: string): VariantComparison {
  const { variants: _, ...own } = before.scene;
  const text = DIFF_TEXT[before.language];
  return {
    variant,
    before: figuresOf(before.report),
    after: figuresOf(after.report),
    report: diffReports(before.report, after.report),
    takeOff: takeOffChanges(before, after),
    changes: diffScenes(own, after.scene).map((change) => changeLine(change, text)),
  };
}

function figuresOf({ deck, stages: told, bays, zones, findings, takeoff }: Report): SchemeFigures {
  const stageOf = (wanted: string | null): StageNamed | null => {
    if (wanted === null) return null;
    // Derived stages stand in the report alone.
    const { id, name } = told.find((stage) => stage.id === wanted) ?? { id: wanted, name: wanted };
    return { id, name };
  };
  const cases = bays.flatMap(({ id, permanent, imposed, total, stages }) => [
    ...[permanent.utilisation, imposed.utilisation, total?.utilisation ?? null].map((utilisation) => ({
      bay: id,
      stage: null,
      utilisation,
    })),
    ...stages.map(({ stage, utilisation }) => ({ bay: id, stage, utilisation })),
  ]);
  let worst: SchemeFigures['worst'] = null;
  const over = new Set<string>();
  for (const { bay, stage, utilisation } of cases) {
    if (utilisation === null) continue;
    if (worst === null || utilisation > worst.utilisation) worst = { bay, stage: stageOf(stage), utilisation };
    if (utilisation > 1 + 1e-9) over.add(bay);
  }
  const zonedM2 = zones.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  const held = zones.reduce((sum, { areaM2, heldLm2 }) => sum + areaM2 * heldLm2.mean, 0);
  const prices = (takeoff ?? []).map(({ price }) => price ?? null);
  return {
    saturatedKN: deck.saturatedKN,
    dryKN: deck.dryKN,
    stops: findings.filter(({ severity }) => severity === 'stop').length,
    checks: findings.filter(({ severity }) => severity === 'check').length,
    worst,
    baysOver: over.size,
    baysNotConfirmed: bays.filter(({ confirmed }) => !confirmed).length,
    heldLm2: zonedM2 > 0 ? held / zonedM2 : 0,
    price: prices.every((price) => price !== null) ? prices.reduce((sum, price) => sum + price, 0) : null,
  };
}

function takeOffChanges(before: Project, after: Project): TakeOffChange[] {
  const [was, is] = [before, after].map(({ report }) => new Map((report.takeoff ?? []).map((row) => [row.material, row])));
  const names = namesOf(before.scene, before.language);
  return [...new Set([...(was?.keys() ?? []), ...(is?.keys() ?? [])])].flatMap((material) => {
    const [old, now] = [was?.get(material), is?.get(material)];
    const massKg = { before: old?.massKg ?? 0, after: now?.massKg ?? 0 };
    if (Math.abs(massKg.after - massKg.before) < 0.5) return [];
    const placedM3 = { before: old?.placedM3 ?? 0, after: now?.placedM3 ?? 0 };
    return [{ material, name: names.name((now ? after : before).resolved.materialOf(material).name), massKg, placedM3 }];
  });
}

/**
 * Map of what a variant would add to or take from every cell of the finished garden, wet through.
 * @param before - scene as it stands
 * @param after - scene of the variant, evaluated
 * @returns map of named classes
 */
export function variantMap(before: Project, after: Project): CellMap {
  const laid = ({ evaluation }: Project) => ({
    map: cellMap(evaluation, 'load', null),
    grid: evaluation.prepared.ground.grid,
    originM: evaluation.input.originM,
  });
  // Deck and grid are those of the scene as it stands, on whose cells the difference is shown.
  const one = laid(after);
  const { values, flags } = differenceMap(laid(before), one);
  const { deckShare, grid } = before.evaluation.prepared.ground;
  const classM2 = DIFFERENCE_CLASSES.map(() => 0);
  const classes = values.map((difference, cell) => {
    if (Number.isNaN(difference)) return Number.NaN;
    const of = DIFFERENCE_LIMITS_KNM2.findIndex((limit) => difference < limit);
    const index = of < 0 ? DIFFERENCE_LIMITS_KNM2.length : of;
    classM2[index] = (classM2[index] ?? 0) + (deckShare[cell] ?? 0) * grid.cellM * grid.cellM;
    return index;
  });
  const none = flags.reduce((sum, of, cell) => sum + (of & CELL_NO_DATA ? (deckShare[cell] ?? 0) : 0), 0);
  return {
    ...one.map,
    kind: 'difference',
    values: classes,
    flags,
    unit: '',
    names: DIFFERENCE_CLASSES,
    classM2,
    noDataM2: none * grid.cellM * grid.cellM,
  };
}
