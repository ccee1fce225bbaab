/** How a number of the report comes about, down to what was entered: made anew from the inputs, so that it can be held against the number. */

import { coreLog } from '../core/core-log.ts';
import { stageLimitKNm2 } from '../core/judge.ts';
import { zoneBayShare } from '../core/loads/bays.ts';
import { HEAP_STEP_M } from '../core/loads/heaps.ts';
import type { DerivationAsk, LoadAsk, Term, TermSource } from '../model/derivation.ts';
import { patchTerm } from './derivation-patch.ts';
import { DRAWING, given, layerHeld, layerLoad, layerThickness, looseWeight, made, zoneLoad } from './derivation-terms.ts';
import { waterTerm } from './derivation-water.ts';
import { wheelTerm } from './derivation-wheel.ts';
import type { Project } from './evaluate-project.ts';
import { basisOf } from './resolve-wheels.ts';
import { laidOf } from './take-off.ts';

/** Null where the scene has no such number. */
export function derive(project: Project, ask: DerivationAsk): Term | null {
  const { input, plan } = project.evaluation;
  const bay = 'bay' in ask ? input.bays.findIndex(({ id }) => id === ask.bay) : 0;
  const stage = 'stage' in ask && ask.stage !== null ? plan.stages.findIndex(({ id }) => id === ask.stage) : null;
  if (bay < 0 || stage === -1) return null;
  switch (ask.kind) {
    case 'mean':
      return meanTerm(project, bay);
    case 'utilisation':
      return utilisationTerm(project, bay, stage, ask.of);
    case 'load':
      return heldAgainst(project, bay, stage, ask.of)?.load ?? null;
    case 'core log':
      return coreLogTerm(project, ask.cell, stage, ask.state);
    case 'heap':
      return stage === null ? null : heapTerm(project, bay, stage, ask.material);
    case 'column':
      return columnTerm(project, ask.column);
    case 'mass':
      return massTerm(project, ask.material);
    case 'held':
    case 'depth':
    case 'zone load':
      return zoneTerm(project, ask.kind, ask.zone);
    case 'catchment':
    case 'design flow':
    case 'outlet use':
    case 'overflow area':
    case 'overflow duty':
    case 'overflow use':
      return waterTerm(project, ask);
    case 'wheel':
      return wheelTerm(project, ask);
  }
}

const ALL = { layer: () => true, plants: true };

interface ZonePart {
  readonly zone: number;
  readonly areaM2: number;
  readonly makeUpM3: number;
}

function zoneWeights(project: Project, parts: readonly ZonePart[]): Term[] {
  return parts
    .filter(({ areaM2 }) => areaM2 > 0)
    .map(({ zone, areaM2, makeUpM3 }) => {
      const { id } = project.evaluation.input.zones[zone];
      const area = given({ name: 'zone area', of: id, unit: 'm²' }, areaM2, DRAWING);
      return made({ name: 'weight of zone', of: id, unit: 'kN' }, 'product', [area, zoneLoad(project, zone, makeUpM3 / areaM2, ALL)]);
    });
}

function meanTerm(project: Project, b: number): Term | null {
  const { input, prepared, zoneShares, bays } = project.evaluation;
  if (bays[b].areaM2 === 0) return null;
  const parts = zoneShares.map(({ areaM2, makeUpM3 }, zone) => ({ zone, areaM2: areaM2[b], makeUpM3: makeUpM3[b] }));
  const objects = prepared.objects.flatMap(({ bayKN }, o) =>
    bayKN[b] > 0 ? [given({ name: 'weight of object', of: input.objects[o].id, unit: 'kN' }, bayKN[b], DRAWING)] : [],
  );
  return made({ name: 'mean load', of: input.bays[b].id, unit: 'kN/m²' }, 'quotient', [
    made({ name: 'weight', unit: 'kN' }, 'sum', [...zoneWeights(project, parts), ...objects]),
    given({ name: 'bay area', of: input.bays[b].id, unit: 'm²' }, bays[b].areaM2, DRAWING),
  ]);
}

const plan = (project: Project, b: number): TermSource => ({ from: 'load plan', text: basisOf(project.scene, b) });

function permitted(project: Project, b: number, kNm2: number): Term {
  return given({ name: 'permitted', of: project.evaluation.input.bays[b].id, unit: 'kN/m²' }, kNm2, plan(project, b));
}

interface HeldAgainst {
  readonly load: Term;
  readonly limitKNm2: number | null;
}

/** A load of a bay and what is permitted of it; null where there is no such load. */
function heldAgainst(project: Project, b: number, stage: number | null, of: LoadAsk['of']): HeldAgainst | null {
  const { input, bays } = project.evaluation;
  const bay = input.bays[b];
  if (of === 'imposed') return { load: imposedTerm(project, b), limitKNm2: bay.imposedKNm2 };
  const isTotal = of === 'total' || (of === undefined && stage === null && bay.permanentKNm2 === null);
  const total = isTotal ? bays[b].total : null;
  if (of === 'total' && total === null) return null;
  const patch = stage === null ? (total?.patch ?? bays[b].patch) : bays[b].stages[stage].patch;
  if (patch.cell < 0) return null;
  const gardenKNm2 = total === null ? (bay.permanentKNm2 ?? bay.totalKNm2) : bay.totalKNm2;
  return { load: patchTerm(project, patch.cell, stage, total !== null), limitKNm2: stage === null ? gardenKNm2 : stageLimitKNm2(bay) };
}

/** The greatest of the zones that lie in a bay. */
function imposedTerm(project: Project, b: number): Term {
  const { input, bays, zoneShares } = project.evaluation;
  const [value, unit] = [bays[b].imposedKNm2, 'kN/m²'];
  const zone = input.zones.findIndex(({ imposedKNm2 }, z) => imposedKNm2 === value && zoneShares[z].areaM2[b] > 0);
  return given({ name: 'imposed load', of: input.zones[zone]?.id, unit }, value);
}

function utilisationTerm(project: Project, b: number, stage: number | null, of: LoadAsk['of']): Term | null {
  const found = heldAgainst(project, b, stage, of);
  if (found === null || found.limitKNm2 === null) return null;
  const { id } = project.evaluation.input.bays[b];
  return made({ name: 'utilisation', of: id, unit: '-' }, 'quotient', [found.load, permitted(project, b, found.limitKNm2)]);
}

function coreLogTerm(project: Project, cell: number, stage: number | null, state: 'dry' | 'saturated'): Term | null {
  const log = coreLog(project.evaluation, cell, stage);
  if (log === null) return null;
  const { zones } = project.evaluation.input;
  const key = state === 'dry' ? 'dryKNm2' : 'saturatedKNm2';
  const position = new Map<string, number>();
  const layers = log.layers.flatMap(({ zone: id, share, thicknessMm, placed, name }): Term[] => {
    const layer = position.get(id) ?? 0;
    position.set(id, layer + 1);
    if (!placed) return [];
    const zone = zones.findIndex((one) => one.id === id);
    const load = layerLoad({ project, zone, layer, thicknessM: thicknessMm / 1000 }, state);
    if (share === 1) return [load];
    const part = given({ name: 'share', of: id, unit: '-' }, share, DRAWING);
    return [made({ name: 'load of layer', of: name, unit: 'kN/m²' }, 'product', [part, load])];
  });
  const others = log.others.map((other) => {
    if (other.kind === 'vegetation') return given({ name: 'load of plants', of: other.zone ?? other.id, unit: 'kN/m²' }, other[key]);
    return given({ name: other.kind === 'flood test' ? 'flood' : 'load standing', of: other.id, unit: 'kN/m²' }, other[key], DRAWING);
  });
  return made({ name: 'weight', unit: 'kN/m²' }, 'sum', [...layers, ...others]);
}

/** A height, or where the bay is over already, by how much. */
function heapTerm(project: Project, b: number, stage: number, materialId: string): Term | null {
  const { input, bays } = project.evaluation;
  const limitKNm2 = stageLimitKNm2(input.bays[b]);
  const { patch } = bays[b].stages[stage];
  const heap = project.report.bays[b].heapM?.find(
    (one) => one.material === materialId && one.stage === project.evaluation.plan.stages[stage].id,
  );
  if (limitKNm2 === null || patch.cell < 0 || !heap) return null;
  const there = patchTerm(project, patch.cell, stage, false);
  const limit = permitted(project, b, limitKNm2);
  if (heap.overKNm2 > 0) return made({ name: 'overload', of: input.bays[b].id, unit: 'kN/m²' }, 'difference', [there, limit]);
  const room = made({ name: 'room', unit: 'kN/m²' }, 'difference', [limit, there]);
  const exact = made({ name: 'height', unit: 'm' }, 'quotient', [room, looseWeight(project.resolved.materialOf(materialId))]);
  const step = given({ name: 'step', unit: 'm' }, HEAP_STEP_M, { from: 'rule' });
  return made({ name: 'height', of: input.bays[b].id, unit: 'm' }, 'whole steps', [exact, step]);
}

function columnTerm(project: Project, id: string): Term | null {
  const { input, prepared, makeUps } = project.evaluation;
  const c = input.columns?.findIndex((one) => one.id === id) ?? -1;
  if (c < 0 || !prepared.columns) return null;
  const { cells, zonePieces, objectsKN } = prepared.columns;
  const parts = prepared.zones.map((laid, zone): ZonePart => {
    const share = zoneBayShare(laid, zonePieces[zone], cells, makeUps[zone].thicknessM, input.cellM);
    return { zone, areaM2: share.areaM2[c], makeUpM3: share.makeUpM3[c] };
  });
  const objects = objectsKN[c] > 0 ? [given({ name: 'weight of objects', unit: 'kN' }, objectsKN[c], DRAWING)] : [];
  return made({ name: 'column load', of: id, unit: 'kN' }, 'sum', [...zoneWeights(project, parts), ...objects]);
}

/** At most, as delivered. */
function massTerm(project: Project, id: string): Term | null {
  const { evaluation, resolved } = project;
  const { zones } = evaluation.input;
  const material = resolved.materialOf(id);
  const laid = laidOf(evaluation).filter(({ zone, layer }) => zones[zone].buildUp.layers[layer].materialId === id);
  if (laid.length === 0) return null;
  const source: TermSource = { from: 'material', text: material.sourceText };
  const named = { name: 'mass', of: material.name, unit: 'kg' } as const;
  const part = (key: 'areaM2' | 'placedM3', name: 'volume' | 'area laid', unit: string) =>
    made(
      { name, of: material.name, unit },
      'sum',
      laid.map((one) => given({ name, of: zones[one.zone].id, unit }, one[key], DRAWING)),
    );
  if (material.density) {
    const density = given({ name: 'density saturated', of: material.name, unit: 'kg/m³' }, material.density.saturated, source);
    return made(named, 'product', [part('placedM3', 'volume', 'm³'), density]);
  }
  const laps = given({ name: 'laps', of: material.name, unit: '-' }, 1 + (material.lapPercent ?? 0) / 100, source);
  const kgM2 = (material.role === 'vegetation' ? material.areal?.saturated : material.areal?.dry) ?? 0;
  return made(named, 'product', [
    part('areaM2', 'area laid', 'm²'),
    laps,
    given({ name: 'mass per area', of: material.name, unit: 'kg/m²' }, kgM2, source),
  ]);
}

const LAYER_TERMS = { held: layerHeld, depth: layerThickness };

/** Mean of a zone; null where none of it lies on the deck. */
function zoneTerm(project: Project, kind: 'held' | 'depth' | 'zone load', id: string): Term | null {
  const { input, zones } = project.evaluation;
  const zone = input.zones.findIndex((one) => one.id === id);
  if (zone < 0 || zones[zone].areaM2 === 0) return null;
  const makeUpM = zones[zone].makeUpM?.mean ?? 0;
  if (kind === 'zone load') return zoneLoad(project, zone, makeUpM, ALL);
  const terms = input.zones[zone].buildUp.layers.flatMap(({ rangeM, thicknessM }, layer) => {
    return LAYER_TERMS[kind]({ project, zone, layer, thicknessM: rangeM ? makeUpM : thicknessM }) ?? [];
  });
  return made({ name: kind, of: id, unit: kind === 'held' ? 'l/m²' : 'm' }, 'sum', terms);
}
