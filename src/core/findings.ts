/** What the evaluation finds wrong or worth a look, as facts; `src/project` puts them into words. */

import type { FindingFact, Rule, Severity, Where } from '../model/finding.ts';
import type { Evaluation } from './evaluation.ts';
import { layBays, splitAmongBays } from './geometry/bay-split.ts';
import { cellCentreM } from './geometry/grid.ts';
import type { RegionCells } from './geometry/region-cells.ts';
import { SLIVER_M2, stageLimitKNm2 } from './judge.ts';
import type { Surface } from './levels/surface.ts';
import { zoneBayShare } from './loads/bays.ts';

/** At exactly 100 % a bay is at its limit, not over it; this much is rounding [-]. */
export const ROUNDING = 1e-9;
/** From here on someone should look [-]; contract.md, section 2, Bay result. */
const NEAR_LIMIT = 0.9;
/** Areas below this are not told [m²]. */
const NO_AREA_M2 = 1e-6;

/**
 * All findings of loads, depths, levels, coverage and stages.
 * @param on - evaluation [kN/m²]
 * @returns facts, grouped by rule [-]
 * @source contract.md, sections 2 and 4
 */
export function findFacts(on: Evaluation): FindingFact[] {
  return [...bayFacts(on), ...stageFacts(on), ...depthFacts(on), ...coverFacts(on), ...orderFacts(on)];
}

/**
 * Place of a cell in a finding.
 * @param on - evaluation [-]
 * @param cell - index of the cell, -1 for none [-]
 * @returns its centre in file coordinates; nothing for no cell [m]
 * @source none: geometry
 */
export function at(on: Pick<Evaluation, 'prepared' | 'input'>, cell: number): { at: [number, number] } | Record<string, never> {
  if (cell < 0) return {};
  const [x, y] = cellCentreM(on.prepared.ground.grid, cell);
  return { at: [x + on.input.originM[0], y + on.input.originM[1]] };
}

/**
 * How serious a utilisation is.
 * @param utilisation - load / permitted load [-]
 * @returns null where it is well within the limit [-]
 * @source contract.md, section 2, Bay result
 */
export function severityOf(utilisation: number): Severity | null {
  if (utilisation > 1 + ROUNDING) return 'stop';
  return utilisation > NEAR_LIMIT + ROUNDING ? 'check' : null;
}

function loadFact(rule: Rule, severity: Severity, where: Where, value: number, limit: number, facts: FindingFact['facts']): FindingFact {
  return { rule, severity, where, value, limit, unit: 'kN/m²', facts };
}

function bayFacts(on: Evaluation): FindingFact[] {
  const found: FindingFact[] = [];
  on.input.bays.forEach((bay, b) => {
    const result = on.bays[b];
    const permanent = result.permanentUtilisation === null ? null : severityOf(result.permanentUtilisation);
    if (permanent) {
      const where = { bay: bay.id, ...at(on, result.patch.cell) };
      found.push(loadFact('load.permanent', permanent, where, result.patch.kNm2, bay.permanentKNm2!, { meanKNm2: result.meanKNm2 }));
    }
    const imposed = result.imposedUtilisation === null ? null : severityOf(result.imposedUtilisation);
    if (imposed) found.push(loadFact('load.imposed', imposed, { bay: bay.id }, result.imposedKNm2, bay.imposedKNm2!, {}));
    const total = result.total ? severityOf(result.total.utilisation) : null;
    if (total && result.total) {
      const where = { bay: bay.id, ...at(on, result.total.patch.cell) };
      const facts = { permanentKNm2: result.patch.kNm2, imposedKNm2: result.imposedKNm2 };
      found.push(loadFact('load.total', total, where, result.total.patch.kNm2, bay.totalKNm2!, facts));
    }
  });
  on.input.bays.forEach((bay) => {
    if (!bay.confirmed)
      found.push({ rule: 'load.basis', severity: 'check', where: { bay: bay.id }, value: 0, limit: 1, unit: '-', facts: {} });
  });
  return found;
}

/** Every stage that is over or near the bay's limit. */
function stageFacts(on: Evaluation): FindingFact[] {
  const found: FindingFact[] = [];
  on.input.bays.forEach((bay, b) => {
    const limit = stageLimitKNm2(bay);
    on.bays[b].stages.forEach(({ patch, utilisation }, s) => {
      const severity = utilisation === null ? null : severityOf(utilisation);
      if (limit === null || severity === null) return;
      const where = { bay: bay.id, stage: on.plan.stages[s].id, ...at(on, patch.cell) };
      const heaped = on.prepared.stockpiles[s]?.some((pile) => pile.windows.cells.includes(patch.cell)) ?? false;
      const facts = { ownLimit: bay.stageKNm2 === null ? 0 : 1, heaped: heaped ? 1 : 0 };
      found.push(loadFact('load.stage', severity, where, patch.kNm2, limit, facts));
    });
  });
  return found;
}

function depthFacts(on: Evaluation): FindingFact[] {
  const found: FindingFact[] = [];
  on.input.zones.forEach((zone, z) => {
    const made = on.makeUps[z];
    if (made.shortM2 > NO_AREA_M2) {
      const facts = { areaM2: made.shortM2, mostMm: made.shortMostM * 1000 };
      found.push({
        rule: 'depth.short',
        severity: made.shortInsideM2 > NO_AREA_M2 ? 'stop' : 'note',
        where: { zone: zone.id, ...at(on, made.shortCell) },
        value: made.shortM2,
        limit: 0,
        unit: 'm²',
        facts,
      });
    }
    if (made.overM2 > NO_AREA_M2) {
      const facts = { areaM2: made.overM2, mostMm: made.overMostM * 1000 };
      found.push({
        rule: 'depth.over',
        severity: made.overInsideM2 > NO_AREA_M2 ? 'check' : 'note',
        where: { zone: zone.id, ...at(on, made.overCell) },
        value: made.overM2,
        limit: 0,
        unit: 'm²',
        facts,
      });
    }
  });
  on.input.zones.forEach((zone, z) => {
    const outsideM2 = outsideFinishM2(on, z);
    if (outsideM2 <= NO_AREA_M2) return;
    const facts = { zoneM2: on.prepared.zones[z].areaM2 };
    found.push({ rule: 'level.outside', severity: 'check', where: { zone: zone.id }, value: outsideM2, limit: 0, unit: 'm²', facts });
  });
  if (on.prepared.outsideLevelsM2 > NO_AREA_M2) {
    const facts = { deckM2: on.prepared.ground.areaM2 };
    found.push({ rule: 'level.outside', severity: 'check', where: {}, value: on.prepared.outsideLevelsM2, limit: 0, unit: 'm²', facts });
  }
  return found;
}

/** Of a zone's cells, for the net they were last held against: a matter of shapes alone. */
const outsideKnown = new WeakMap<RegionCells, { readonly surface: Surface; readonly areaM2: number }>();

/** Part of a zone beyond its own net of finished levels [m²]. */
function outsideFinishM2(on: Evaluation, z: number): number {
  const surface = on.finishSurfaces[z];
  const { zones } = on.prepared;
  if (on.input.zones[z].finish.kind !== 'net' || !surface) return 0;
  const known = outsideKnown.get(zones[z]);
  if (known?.surface === surface) return known.areaM2;
  const areaM2 = beyondNetM2(on, z, surface);
  outsideKnown.set(zones[z], { surface, areaM2 });
  return areaM2;
}

function beyondNetM2(on: Evaluation, z: number, surface: Surface): number {
  const { ground, zones } = on.prepared;
  if (surface.kind === 'plane' || surface.boundary.length < 6) return zones[z].areaM2;
  const net = layBays(ground, [{ outer: surface.boundary, holes: [] }]);
  const pieces = splitAmongBays(ground, net, on.input.zones[z].region, zones[z]);
  return zones[z].areaM2 - zoneBayShare(zones[z], pieces, net, Float64Array.of(0), ground.grid.cellM).areaM2[0];
}

function coverFacts(on: Evaluation): FindingFact[] {
  const found: FindingFact[] = [];
  const { zoneTiling, bayTiling, zones, objects } = on.prepared;
  const area = (rule: Rule, where: Where, areaM2: number, facts: FindingFact['facts'], sliver: Severity = 'note'): void => {
    if (areaM2 <= NO_AREA_M2) return;
    // Slivers of the drawing are told as notes (users.md, section 4, case 7).
    const severity = areaM2 < SLIVER_M2 ? sliver : 'check';
    found.push({ rule, severity, where, value: areaM2, limit: 0, unit: 'm²', facts });
  };
  const gap = (rule: Rule, tiling: typeof zoneTiling) => {
    if (tiling.gaps.length === 0) return;
    const largest = tiling.gaps[0];
    area(rule, at(on, largest.cell), tiling.gapM2, { count: tiling.gaps.length, largestM2: largest.areaM2 });
  };
  gap('zone.gap', zoneTiling);
  for (const { a, b, areaM2, cell } of zoneTiling.overlaps) {
    area('zone.overlap', { zone: on.input.zones[a].id, ...at(on, cell) }, areaM2, { other: on.input.zones[b].id });
  }
  on.input.zones.forEach((zone, z) => {
    if (zone.buildUp.layers.length === 0) area('zone.gap', { zone: zone.id }, zones[z].areaM2, {});
    area('zone.outside', { zone: zone.id }, zones[z].outsideM2, {});
  });
  on.input.objects.forEach((object, o) => {
    area('zone.outside', { object: object.id }, objects[o].outsideM2, { weightKN: objects[o].outsideKN }, 'check');
  });
  on.input.stages?.forEach((stage, s) => {
    stage.stockpiles.forEach((pile, p) => {
      const laid = on.prepared.stockpiles[s][p];
      area('zone.outside', { object: pile.id, stage: stage.id }, laid.outsideM2, { weightKN: laid.outsideKN }, 'check');
    });
  });
  gap('bay.gap', bayTiling);
  on.input.bays.forEach((bay, b) => {
    if (on.bays[b].areaM2 > 0) return;
    found.push({ rule: 'bay.gap', severity: 'check', where: { bay: bay.id }, value: 0, limit: 0, unit: 'm²', facts: { beyond: 1 } });
  });
  for (const { a, b, areaM2, cell } of bayTiling.overlaps) {
    area('bay.overlap', { bay: on.input.bays[a].id, ...at(on, cell) }, areaM2, { other: on.input.bays[b].id });
  }
  return found;
}

function orderFacts(on: Evaluation): FindingFact[] {
  const found: FindingFact[] = [];
  const { plan, input } = on;
  for (const { zone, layer, stage } of plan.outOfOrder) {
    const { layers } = input.zones[zone].buildUp;
    const missing = layers.findIndex((_, i) => i < layer && (plan.layerStages[zone][i] < 0 || plan.layerStages[zone][i] > stage));
    // Laid later in the same stage by another entry: the order within a stage is the crew's.
    if (missing < 0) continue;
    const facts = { layer: layers[layer].name, below: layers[missing].name };
    found.push({
      rule: 'stage.order',
      severity: 'stop',
      where: { zone: input.zones[zone].id, stage: plan.stages[stage].id },
      value: layer,
      limit: missing,
      unit: '-',
      facts,
    });
  }
  for (const { zone, stage } of plan.bareVegetation) {
    const { layers } = input.zones[zone].buildUp;
    const missing = layers.findIndex((_, i) => plan.layerStages[zone][i] < 0 || plan.layerStages[zone][i] > stage);
    if (missing < 0) continue;
    const where = { zone: input.zones[zone].id, stage: plan.stages[stage].id };
    const facts = { layer: 'Vegetation', below: layers[missing].name };
    found.push({ rule: 'stage.order', severity: 'stop', where, value: layers.length, limit: missing, unit: '-', facts });
  }
  input.zones.forEach((zone, z) => {
    const left = zone.buildUp.layers.filter((_, i) => plan.layerStages[z][i] < 0).map((layer) => layer.name);
    if (zone.buildUp.vegetationKNm2 > 0 && plan.vegetationStages[z] < 0) left.push('its vegetation');
    if (left.length === 0) return;
    const facts = { layers: left.join('\n') };
    found.push({ rule: 'stage.left', severity: 'check', where: { zone: zone.id }, value: left.length, limit: 0, unit: '-', facts });
  });
  input.objects.forEach((object, o) => {
    if (plan.objectStages[o] >= 0) return;
    found.push({ rule: 'stage.left', severity: 'check', where: { object: object.id }, value: 1, limit: 0, unit: '-', facts: {} });
  });
  return found;
}
