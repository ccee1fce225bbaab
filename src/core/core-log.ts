/** The column under one cell: layers with levels, thicknesses and weights, line by line. */

import type { BayInput } from '../model/deck-input.ts';
import type { CoreLog, CoreLogLayer, CoreLogOther } from '../model/maps.ts';
import type { Evaluation } from './evaluation.ts';
import { cellCentreM } from './geometry/grid.ts';
import { stageLimitKNm2 } from './judge.ts';

/**
 * Core log of a cell.
 * @param on - evaluation [kN/m²]
 * @param cell - index of the cell [-]
 * @param stage - index of the stage, null for the finished garden [-]
 * @returns the column; its lines add up to its sums; null where the cell has no deck [kN/m²]
 * @source contract.md, section 2, Area load
 */
export function coreLog(on: Evaluation, cell: number, stage: number | null): CoreLog | null {
  const { ground, deckLevelsM } = on.prepared;
  const onDeck = ground.deckShare[cell] ?? 0;
  if (onDeck === 0) return null;
  const membraneM = deckLevelsM[cell];
  const entries = entriesOf(on, cell).map((entry) => ({ ...entry, share: entry.share / onDeck }));
  const layers: CoreLogLayer[] = [];
  const others: CoreLogOther[] = [];
  let finishedM = Number.NEGATIVE_INFINITY;
  for (const { zone, share, makeUpM } of entries) {
    const top = addZone(on, { zone, share, makeUpM }, membraneM, stage, { layers, others });
    // Several zones in one cell: the level given is that of the largest.
    if (finishedM === Number.NEGATIVE_INFINITY) finishedM = top;
  }
  addStanding(on, cell, onDeck, stage, others);
  const counted = layers.filter((layer) => layer.placed);
  const sum = (key: 'dryKNm2' | 'saturatedKNm2') => [...counted, ...others].reduce((total, line) => total + line[key], 0);
  const [x, y] = cellCentreM(ground.grid, cell);
  return {
    cell,
    stage: stage === null ? null : on.plan.stages[stage].id,
    at: [x + on.input.originM[0], y + on.input.originM[1]],
    deckAreaM2: onDeck * ground.grid.cellM ** 2,
    membraneM,
    finishedM: entries.length === 0 ? membraneM : finishedM,
    layers,
    others,
    dryKNm2: sum('dryKNm2'),
    saturatedKNm2: sum('saturatedKNm2'),
    ...judgement(on, cell, stage),
  };
}

function judgement(on: Evaluation, cell: number, stage: number | null) {
  const b = on.bayAt[cell];
  const patchKNm2 = patchAt(on, cell, stage);
  if (b < 0) return { patchKNm2, bay: null, bayConfirmed: false, permittedKNm2: null, permittedBasis: '', utilisation: null };
  const bay = on.input.bays[b];
  const cases = limitCases(on, bay, cell, stage).filter((one) => one.patchKNm2 !== null);
  // Where two limits hold, the one nearer to being reached is told, as on the map.
  cases.sort((p, q) => (q.patchKNm2 as number) / q.permittedKNm2 - (p.patchKNm2 as number) / p.permittedKNm2);
  const worst = cases[0];
  return {
    patchKNm2: worst?.patchKNm2 ?? patchKNm2,
    bay: bay.id,
    bayConfirmed: bay.confirmed,
    permittedKNm2: worst?.permittedKNm2 ?? null,
    permittedBasis: worst?.basis ?? '',
    utilisation: worst ? (worst.patchKNm2 as number) / worst.permittedKNm2 : null,
  };
}

interface LimitCase {
  readonly patchKNm2: number | null;
  readonly permittedKNm2: number;
  readonly basis: string;
}

/** What the load at a cell is compared with; a total limit takes the imposed load in. */
function limitCases(on: Evaluation, bay: BayInput, cell: number, stage: number | null): LimitCase[] {
  const patchKNm2 = patchAt(on, cell, stage);
  if (stage !== null) {
    const permittedKNm2 = stageLimitKNm2(bay);
    const basis = bay.stageKNm2 !== null ? 'stage' : bay.permanentKNm2 !== null ? 'permanent' : 'total';
    return permittedKNm2 === null ? [] : [{ patchKNm2, permittedKNm2, basis }];
  }
  const cases: LimitCase[] = [];
  if (bay.permanentKNm2 !== null) cases.push({ patchKNm2, permittedKNm2: bay.permanentKNm2, basis: 'permanent' });
  if (bay.totalKNm2 !== null && on.totalPatchKNm2) {
    cases.push({ patchKNm2: patchKNm2 === null ? null : on.totalPatchKNm2[cell], permittedKNm2: bay.totalKNm2, basis: 'total' });
  }
  return cases;
}

function patchAt(on: Evaluation, cell: number, stage: number | null): number | null {
  if (on.prepared.ground.centreOnDeck[cell] === 0) return null;
  return (stage === null ? on.patchKNm2 : on.stagePatchKNm2[stage])[cell];
}

interface Entry {
  readonly zone: number;
  readonly share: number;
  readonly makeUpM: number;
}

function entriesOf(on: Evaluation, cell: number): Entry[] {
  const { zones, makeUpM, entryMakeUpM } = on.field;
  if (zones.owner[cell] >= 0) return [{ zone: zones.owner[cell], share: 1, makeUpM: makeUpM[cell] }];
  const i = zones.mixed.indexOf(cell);
  if (i < 0) return [];
  const entries: Entry[] = [];
  for (let e = zones.start[i]; e < zones.start[i + 1]; e++) {
    entries.push({ zone: zones.entryZone[e], share: zones.entryShare[e], makeUpM: entryMakeUpM[e] });
  }
  return entries.sort((a, b) => b.share - a.share);
}

/** Adds one zone's lines; returns the top of what is placed [m]. */
function addZone(
  on: Evaluation,
  { zone, share, makeUpM }: Entry,
  membraneM: number,
  stage: number | null,
  to: { readonly layers: CoreLogLayer[]; readonly others: CoreLogOther[] },
): number {
  const input = on.input.zones[zone];
  let bottomM = membraneM;
  let placedTopM = membraneM;
  input.buildUp.layers.forEach((layer, i) => {
    const placedIn = on.plan.layerStages[zone][i];
    const thicknessM = layer.rangeM ? makeUpM : layer.thicknessM;
    const placed = stage === null || (placedIn >= 0 && placedIn <= stage);
    const topM = bottomM + thicknessM;
    if (placed) placedTopM = topM;
    to.layers.push({
      zone: input.id,
      share,
      materialId: layer.materialId,
      name: layer.name,
      role: layer.role,
      loose: layer.loose ?? false,
      bottomM,
      topM,
      thicknessMm: thicknessM * 1000,
      intoVoidsLm2: layer.voidVolumeM * 1000,
      dryKNm2: share * (layer.dryFixedKNm2 + layer.dryPerMKNm3 * thicknessM),
      saturatedKNm2: share * (layer.saturatedFixedKNm2 + layer.saturatedPerMKNm3 * thicknessM),
      stage: placedIn < 0 ? null : on.plan.stages[placedIn].id,
      makeUp: layer.rangeM !== null,
      placed,
    });
    bottomM = topM;
  });
  const vegetation = on.plan.vegetationStages[zone];
  if (input.buildUp.vegetationKNm2 > 0 && (stage === null || (vegetation >= 0 && vegetation <= stage))) {
    const kNm2 = share * input.buildUp.vegetationKNm2;
    to.others.push({ kind: 'vegetation', id: input.buildUp.id, zone: input.id, dryKNm2: kNm2, saturatedKNm2: kNm2 });
  }
  return placedTopM;
}

function addStanding(on: Evaluation, cell: number, onDeck: number, stage: number | null, others: CoreLogOther[]): void {
  const line = (kind: CoreLogOther['kind'], id: string, kNm2: number) => {
    if (kNm2 > 0) others.push({ kind, id, zone: null, dryKNm2: kNm2, saturatedKNm2: kNm2 });
  };
  const inCell = (load: { readonly cells: Int32Array; readonly kNm2: Float64Array }) => {
    const i = load.cells.indexOf(cell);
    return i < 0 ? 0 : load.kNm2[i] / onDeck;
  };
  on.prepared.objects.forEach((object, o) => {
    const placedIn = on.plan.objectStages[o];
    if (stage !== null && (placedIn < 0 || placedIn > stage)) return;
    line(on.input.objects[o].kind, on.input.objects[o].id, inCell(object.sparse));
  });
  if (stage === null || !on.input.stages) return;
  const { stockpiles, floodKNm2 } = on.input.stages[stage];
  stockpiles.forEach((pile, p) => {
    line('stockpile', pile.id, inCell(on.prepared.stockpiles[stage][p].sparse));
  });
  line('flood test', on.input.stages[stage].id, floodKNm2);
}
