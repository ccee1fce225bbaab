/** A depth measured on site against what is planned there: difference, load, and what its bay makes of it. */

import type { LayerInput } from '../model/deck-input.ts';
import type { Evaluation } from './evaluation.ts';
import { cellAt } from './geometry/grid.ts';
import { isInside } from './geometry/ring.ts';

/** What is planned at one place. */
export interface PlannedThere {
  readonly zone: number;
  /** Layer measured; null where the whole build-up was. */
  readonly layer: LayerInput | null;
  /** Layer that a difference is counted as; null where none weighs by its thickness. */
  readonly countedAs: LayerInput | null;
  readonly plannedM: number;
}

/** One limit of a bay with the load of the window centred on a cell. */
export interface LimitThere {
  readonly rule: 'load.permanent' | 'load.total';
  readonly bay: number;
  /** As planned. */
  readonly patchKNm2: number;
  readonly limitKNm2: number;
}

/**
 * What is planned at a place. A difference of the whole build-up counts as its topmost substrate, else as its thickest
 * layer that weighs by thickness: that is what comes out too deep where the ground was levelled by eye.
 * @param on - evaluation [-]
 * @param x - place, local [m]
 * @param y - place, local [m]
 * @param materialId - material of the layer measured (its topmost layer where there are several), null for the whole build-up [-]
 * @returns planned depth; null where no zone lies or its build-up has no such layer [m]
 * @source contract.md, section 2, Make-up layer
 */
export function plannedAt(on: Evaluation, x: number, y: number, materialId: string | null): PlannedThere | null {
  const zone = zoneAt(on, x, y);
  if (zone < 0) return null;
  const { layers } = on.input.zones[zone].buildUp;
  const makeUpM = makeUpAt(on, zone, cellAt(on.prepared.ground.grid, x, y));
  const thickness = (layer: LayerInput) => (layer.rangeM ? makeUpM : layer.thicknessM);
  if (materialId !== null) {
    const layer = layers.findLast((one) => one.materialId === materialId);
    if (!layer) return null;
    return { zone, layer, countedAs: layer.saturatedPerMKNm3 > 0 ? layer : null, plannedM: thickness(layer) };
  }
  const weighing = layers.filter((layer) => layer.saturatedPerMKNm3 > 0);
  const substrate = weighing.findLast((layer) => layer.role === 'substrate');
  const thickest = weighing.reduce<LayerInput | null>((most, one) => (most && thickness(most) >= thickness(one) ? most : one), null);
  const plannedM = layers.reduce((sum, layer) => sum + thickness(layer), 0);
  return { zone, layer: null, countedAs: substrate ?? thickest, plannedM };
}

/**
 * Limits that hold at a place; where bays overlap, those of each.
 * @param on - evaluation [kN/m²]
 * @param x - place, local [m]
 * @param y - place, local [m]
 * @returns limits and the finished garden's load on the square metre around, as planned [kN/m²]
 * @source contract.md, section 2, Patch and Bay result
 */
export function limitsAt(on: Evaluation, x: number, y: number): LimitThere[] {
  const cell = cellAt(on.prepared.ground.grid, x, y);
  if (cell < 0 || !isInside(on.input.deck, x, y)) return [];
  const { patchKNm2, totalPatchKNm2 } = on;
  return on.input.bays.flatMap(({ region, permanentKNm2, totalKNm2 }, bay) => {
    const found: LimitThere[] = [];
    if (!isInside(region, x, y)) return found;
    if (permanentKNm2 !== null) found.push({ rule: 'load.permanent', bay, patchKNm2: patchKNm2[cell], limitKNm2: permanentKNm2 });
    if (totalKNm2 !== null && totalPatchKNm2) {
      found.push({ rule: 'load.total', bay, patchKNm2: totalPatchKNm2[cell], limitKNm2: totalKNm2 });
    }
    return found;
  });
}

/** First zone drawn at a place on the deck, -1 for none. */
function zoneAt({ input, prepared }: Evaluation, x: number, y: number): number {
  if (!isInside(input.deck, x, y)) return -1;
  const cell = cellAt(prepared.ground.grid, x, y);
  return input.zones.findIndex((zone, z) => isInside(zone.region, x, y) && prepared.zones[z].cells.includes(cell));
}

/** Make-up thickness of a zone in one of its cells [m]. */
function makeUpAt(on: Evaluation, zone: number, cell: number): number {
  const { thicknessM } = on.makeUps[zone];
  return thicknessM.length === 1 ? thicknessM[0] : thicknessM[on.prepared.zones[zone].cells.indexOf(cell)];
}
