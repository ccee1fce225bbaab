/**
 * The one calculation behind app, command line and tests: from a deck's numbers to loads, depths, bays and stages.
 * With the evaluation before it, only what a changed zone can reach is calculated again.
 */

import type { BayInput, DeckInput, ZoneInput } from '../model/deck-input.ts';
import type { Evaluation } from './evaluation.ts';
import { blockOfCells } from './geometry/grid.ts';
import { judgeBays } from './judge.ts';
import { type StackCoefficients, stackCoefficients } from './layers/coefficients.ts';
import { type MakeUp, makeUpOf } from './layers/make-up.ts';
import { netSurface } from './levels/net.ts';
import { type Surface, sampleSurface } from './levels/surface.ts';
import { zoneBayShare } from './loads/bays.ts';
import { coefficientArrays, type LayerField, writeMakeUp } from './loads/field.ts';
import { type PreparedDeck, prepareDeck, reachM, sameShapes, sameUnderZones } from './prepare.ts';
import { planStages, type StagePlan } from './stages/plan.ts';
import { zoneResult } from './zone-result.ts';

/**
 * Evaluates a deck.
 * @param input - the deck in numbers, local [m]
 * @param previous - evaluation of an earlier state of the same deck; it is used up: its arrays are written anew [-]
 * @returns loads [kN/m²], depths and levels [m], bays and stages [-]
 * @throws RangeError if the grid would be too large
 * @source contract.md, section 2
 */
export function evaluate(input: DeckInput, previous?: Evaluation): Evaluation {
  const usable = previous && sameShapes(previous.input, input) ? previous : undefined;
  const prepared = usable?.prepared ?? prepareDeck(input, previous);
  const plan = planStages(input);
  const alike = previous && sameUnderZones(previous.input, input) && sameLimits(previous.input, input) && samePlan(previous.plan, plan);
  const changed = usable && alike ? changedZones(usable.input, input) : null;
  const reaching = previous && reachM(previous.input) === reachM(input) ? previous : undefined;
  const finishSurfaces = finishSurfacesOf(input, reaching);
  const field = usable?.field ?? emptyField(prepared);
  const finishScratch = new Float64Array(prepared.deckSums.length);
  const fresh = (z: number) => changed === null || changed.has(z);
  const makeUps = input.zones.map((zone, z) => {
    if (usable && !fresh(z)) return usable.makeUps[z];
    if (previous && sameMakeUp(previous, { input, prepared, finishSurfaces }, z)) {
      const known = previous.makeUps[z];
      writeMakeUp(field, z, prepared.zones[z], known.thicknessM);
      return known;
    }
    return layMakeUp(prepared, field, zone, z, finishSurfaces[z], finishScratch);
  });
  const stacks = input.zones.map((zone, z) => (usable && !fresh(z) ? usable.stacks[z] : stackCoefficients(zone.buildUp, () => true, true)));
  const stageStacks = plan.stages.map((_, s) =>
    input.zones.map((zone, z) => (usable && !fresh(z) ? usable.stageStacks[s][z] : placedStack(zone, plan, z, s))),
  );
  const zoneShares = input.zones.map((_, z) => {
    if (usable && !fresh(z)) return usable.zoneShares[z];
    return zoneBayShare(prepared.zones[z], prepared.zonePieces[z], prepared.bays, makeUps[z].thicknessM, input.cellM);
  });
  const stageLoads = stageStacks.map((zones) => coefficientArrays(zones.map((stack) => stack.saturated)));
  const judged = judgeBays({
    input,
    prepared,
    plan,
    field,
    stacks,
    stageStacks,
    stageLoads,
    zoneShares,
    changed: alike ? relaidZones(previous, { input, prepared, makeUps }) : null,
    before: previous,
  });
  const zones = input.zones.map((_, z) => {
    if (usable && !fresh(z)) return usable.zones[z];
    return zoneResult(prepared.zones[z], stacks[z], makeUps[z], input.zones[z], prepared.deckLevelsM, input.cellM);
  });
  const objectsKN = prepared.objects.reduce((sum, object) => sum + object.weightKN, 0);
  return {
    input,
    prepared,
    plan,
    finishSurfaces,
    makeUps,
    field,
    stacks,
    stageStacks,
    stageLoads,
    zoneShares,
    ...judged,
    zones,
    totals: {
      dryKN: zones.reduce((sum, zone) => sum + zone.dryKN, objectsKN),
      saturatedKN: zones.reduce((sum, zone) => sum + zone.saturatedKN, objectsKN),
      objectsKN,
    },
    placedKN: placedWeights(prepared, plan, stageStacks, zones),
  };
}

/** Whether a zone is the same on the same cells and surfaces. */
function sameMakeUp(before: Evaluation, now: Pick<Evaluation, 'input' | 'prepared' | 'finishSurfaces'>, z: number): boolean {
  return (
    before.input.zones[z] === now.input.zones[z] &&
    before.prepared.zones[z] === now.prepared.zones[z] &&
    before.prepared.deckLevelsM === now.prepared.deckLevelsM &&
    before.finishSurfaces[z] === now.finishSurfaces[z]
  );
}

/** Zones that are not the same object as before. */
function changedZones(before: DeckInput, now: DeckInput): Set<number> {
  const changed = new Set<number>();
  now.zones.forEach((zone, z) => {
    if (zone !== before.zones[z]) changed.add(z);
  });
  return changed;
}

type Laid = Pick<Evaluation, 'input' | 'prepared' | 'makeUps'>;

/** Zones that lie otherwise than before, by whatever: layers, cells, levels or finish. */
function relaidZones(before: Laid, now: Laid): Set<number> {
  const changed = changedZones(before.input, now.input);
  now.makeUps.forEach((makeUp, z) => {
    if (makeUp !== before.makeUps[z] || now.prepared.zones[z] !== before.prepared.zones[z]) changed.add(z);
  });
  return changed;
}

function sameLimits(before: DeckInput, now: DeckInput): boolean {
  const same = (a: BayInput, b: BayInput) =>
    a.permanentKNm2 === b.permanentKNm2 && a.imposedKNm2 === b.imposedKNm2 && a.totalKNm2 === b.totalKNm2 && a.stageKNm2 === b.stageKNm2;
  const floods = (input: DeckInput) => (input.stages ?? []).map((stage) => stage.floodKNm2).join();
  return before.bays.every((bay, i) => same(bay, now.bays[i])) && floods(before) === floods(now);
}

function samePlan(before: StagePlan, now: StagePlan): boolean {
  const equal = (a: Int16Array, b: Int16Array) => a.length === b.length && a.every((value, i) => value === b[i]);
  return (
    before.stages.length === now.stages.length &&
    before.layerStages.every((stages, z) => equal(stages, now.layerStages[z])) &&
    equal(before.vegetationStages, now.vegetationStages) &&
    equal(before.objectStages, now.objectStages)
  );
}

/** Those of the evaluation before, where the finish is the same. */
function finishSurfacesOf(input: DeckInput, before: Evaluation | undefined): (Surface | null)[] {
  return input.zones.map((zone, z) => {
    if (before && zone.finish === before.input.zones[z]?.finish) return before.finishSurfaces[z];
    return finishSurface(zone, input);
  });
}

function finishSurface(zone: ZoneInput, input: DeckInput): Surface | null {
  const { finish } = zone;
  if (finish.kind === 'build-up') return null;
  if (finish.kind === 'net') return netSurface(finish.net, reachM(input));
  return { kind: 'plane', x: finish.x, y: finish.y, z: finish.z, slopeX: finish.slopeX, slopeY: finish.slopeY };
}

function emptyField(prepared: PreparedDeck): LayerField {
  return {
    grid: prepared.ground.grid,
    zones: prepared.zoneCells,
    makeUpM: new Float64Array(prepared.deckSums.length),
    entryMakeUpM: new Float64Array(prepared.zoneCells.entryZone.length),
  };
}

function layMakeUp(
  prepared: PreparedDeck,
  field: LayerField,
  zone: ZoneInput,
  index: number,
  finish: Surface | null,
  scratch: Float64Array,
): MakeUp {
  const laid = prepared.zones[index];
  const { grid } = prepared.ground;
  // A cell that a surface misses must show, not take the level of another zone.
  if (finish) scratch.fill(Number.NaN);
  const levels = finish && laid.cells.length > 0 ? sampleSurface(finish, grid, blockOfCells([laid.cells], grid.columns), scratch) : null;
  const makeUp = makeUpOf(zone, laid, prepared.deckLevelsM, finish ? (levels ?? scratch) : null, grid);
  writeMakeUp(field, index, laid, makeUp.thicknessM);
  return makeUp;
}

function placedStack(zone: ZoneInput, plan: StagePlan, z: number, stage: number): StackCoefficients {
  const layers = plan.layerStages[z];
  const vegetation = plan.vegetationStages[z];
  return stackCoefficients(zone.buildUp, (layer) => layers[layer] >= 0 && layers[layer] <= stage, vegetation >= 0 && vegetation <= stage);
}

function placedWeights(
  prepared: PreparedDeck,
  plan: StagePlan,
  stageStacks: readonly (readonly StackCoefficients[])[],
  zones: readonly { readonly areaM2: number; readonly makeUpM3: number }[],
): number[] {
  let before = 0;
  return plan.stages.map((_, s) => {
    let now = 0;
    zones.forEach((zone, z) => {
      const { fixed, perM } = stageStacks[s][z].saturated;
      now += fixed * zone.areaM2 + perM * zone.makeUpM3;
    });
    prepared.objects.forEach((object, o) => {
      if (plan.objectStages[o] >= 0 && plan.objectStages[o] <= s) now += object.weightKN;
    });
    const placed = now - before;
    before = now;
    return placed;
  });
}
