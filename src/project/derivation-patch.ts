/** Derivation of a patch: what lies in its window of 1 m × 1 m, zone by zone, and what stands there. */

import type { Term } from '../model/derivation.ts';
import { DRAWING, floodLoad, given, made, zoneLoad } from './derivation-terms.ts';
import type { Project } from './evaluate-project.ts';

interface InWindow {
  /** In whole cells. */
  area: number;
  /** Area times thickness of the make-up layer. */
  makeUp: number;
}

/** Zones in the window round a cell. */
function zonesInWindow({ evaluation }: Project, cell: number): Map<number, InWindow> {
  const { prepared, field } = evaluation;
  const { columns, rows } = prepared.ground.grid;
  const { whole, fraction } = prepared.reach;
  const span = whole < 0 ? 0 : whole + (fraction > 0 ? 1 : 0);
  const weight = (shift: number) => (whole >= 0 && Math.abs(shift) > whole ? fraction : 1);
  const found = new Map<number, InWindow>();
  const add = (zone: number, area: number, makeUpM: number) => {
    const known = found.get(zone) ?? { area: 0, makeUp: 0 };
    found.set(zone, { area: known.area + area, makeUp: known.makeUp + area * makeUpM });
  };
  const [row, column] = [Math.floor(cell / columns), cell % columns];
  const { owner, mixed, start, entryZone, entryShare } = field.zones;
  for (let dy = -span; dy <= span; dy++) {
    for (let dx = -span; dx <= span; dx++) {
      if (row + dy < 0 || row + dy >= rows || column + dx < 0 || column + dx >= columns) continue;
      const at = (row + dy) * columns + column + dx;
      const w = weight(dx) * weight(dy);
      if (owner[at] >= 0) add(owner[at], w, field.makeUpM[at]);
      const i = owner[at] === -2 ? mixed.indexOf(at) : -1;
      if (i >= 0) for (let e = start[i]; e < start[i + 1]; e++) add(entryZone[e], w * entryShare[e], field.entryMakeUpM[e]);
    }
  }
  return found;
}

/** Load on the patch round a cell at a stage; `imposed` counts the imposed loads of the zones too. */
export function patchTerm(project: Project, cell: number, stage: number | null, imposed: boolean): Term {
  const { input, prepared, plan } = project.evaluation;
  const unitM2 = prepared.reach.whole < 0 ? 1 : prepared.ground.grid.cellM ** 2;
  const placed = (placedIn: number) => stage === null || (placedIn >= 0 && placedIn <= stage);
  const zones = [...zonesInWindow(project, cell)].filter(([, { area }]) => area > 0);
  const weights = zones.map(([zone, { area, makeUp }]) => {
    const counts = { layer: (layer: number) => placed(plan.layerStages[zone][layer]), plants: placed(plan.vegetationStages[zone]) };
    const { id, imposedKNm2 } = input.zones[zone];
    const own = zoneLoad(project, zone, makeUp / area, counts);
    const load = imposed
      ? made({ name: 'load of zone', of: id, unit: 'kN/m²' }, 'sum', [
          own,
          given({ name: 'imposed load', of: id, unit: 'kN/m²' }, imposedKNm2),
        ])
      : own;
    const areaM2 = given({ name: 'zone area', of: id, unit: 'm²' }, area * unitM2, DRAWING);
    return made({ name: 'weight of zone', of: id, unit: 'kN' }, 'product', [areaM2, load]);
  });
  const layers = made({ name: 'mean of layers', unit: 'kN/m²' }, 'quotient', [
    made({ name: 'weight', unit: 'kN' }, 'sum', weights),
    given({ name: 'window area', unit: 'm²' }, prepared.deckSums[cell] * unitM2, DRAWING),
  ]);
  const flood = stage === null ? 0 : (input.stages?.[stage].floodKNm2 ?? 0);
  return made({ name: 'patch', unit: 'kN/m²' }, 'sum', [
    layers,
    ...standingTerms(project, cell, stage),
    ...(flood > 0 ? [floodLoad(flood)] : []),
  ]);
}

/** Objects placed by then and stockpiles of the stage, each by its exact area in the window. */
function standingTerms({ evaluation }: Project, cell: number, stage: number | null): Term[] {
  const { input, prepared, plan } = evaluation;
  const term = (of: string, { cells, kNm2 }: { readonly cells: Int32Array; readonly kNm2: Float64Array }): Term[] => {
    const i = cells.indexOf(cell);
    return i < 0 ? [] : [given({ name: 'load standing', of, unit: 'kN/m²' }, kNm2[i], DRAWING)];
  };
  const objects = prepared.objects.flatMap(({ windows }, o) => {
    const placedIn = plan.objectStages[o];
    return stage === null || (placedIn >= 0 && placedIn <= stage) ? term(input.objects[o].id, windows) : [];
  });
  if (stage === null || !input.stages) return objects;
  const { stockpiles } = input.stages[stage];
  return [...objects, ...stockpiles.flatMap(({ id }, p) => term(id, prepared.stockpiles[stage][p].windows))];
}
