/** What the water on a deck breaks: outlets, overflows, ponds, drainage, uplift. */

import type { Evaluation } from '../core/evaluation.ts';
import { ROUNDING, severityOf } from '../core/findings.ts';
import { waterOnCells } from '../core/standing-water.ts';
import { WATER_KNM3 } from '../core/water/flotation.ts';
import type { UpliftAt } from '../core/zone-uplift.ts';
import type { FindingFact, Where } from '../model/finding.ts';
import type { GridShape } from '../model/maps.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { sourceLine } from '../model/source.ts';
import { NO_WAY_OUT, type WaterCourse, type WetBay } from '../model/water-result.ts';
import { overflowFacts } from './overflow-facts.ts';
import { ruleLimits } from './resolve-rules.ts';
import { fact, flowSource, outletPlace, type WaterFound } from './water-fact.ts';
import { greater, placeOf, sinkName } from './water-places.ts';

/** Deck without a way out of less than this is rounding [m²]. */
const NO_AREA_M2 = 0.05;

/** All findings of water, grouped by rule. */
export function waterFacts(found: WaterFound): FindingFact[] {
  return [
    ...outletFacts(found),
    ...overflowFacts(found),
    ...pondFacts(found),
    ...blockedFacts(found),
    ...flowFacts(found),
    ...upliftFacts(found),
  ];
}

function outletFacts({ scene, on, study, outlets, water }: WaterFound): FindingFact[] {
  const { course, runoffs } = study;
  const source = flowSource(water);
  const facts = outlets.flatMap((outlet, o): FindingFact[] => {
    const where = outletPlace(scene, outlet.id);
    if (outlet.kind === 'overflow') return [];
    if (course.faults[o]) return [fact(['water.outlet', 'check'], where, [0, 0, 'l/s'], { why: 'off deck', source: 'the scene file' })];
    const { designLps, capacityLps, catchmentM2 } = outlet;
    const more = { areaM2: catchmentM2, c: catchmentM2 > 0 ? outlet.effectiveM2 / catchmentM2 : 0, source };
    if (capacityLps === null) {
      return [
        fact(['water.outlet', 'check'], where, [designLps ?? 0, 0, 'l/s'], { ...more, why: 'no capacity', rain: water.rain ? 1 : 0 }),
      ];
    }
    const severity = outlet.utilisation === null ? null : severityOf(outlet.utilisation);
    if (!severity || designLps === null) return [];
    return [fact(['water.outlet', severity], where, [designLps, capacityLps, 'l/s'], { ...more, why: 'capacity' })];
  });
  const { areaM2 } = course.noWayOut;
  if (areaM2 > NO_AREA_M2) {
    const cell = course.sinkAt.indexOf(NO_WAY_OUT);
    const where = cell < 0 ? {} : { at: placeOf(on, cell) };
    const any = outlets.some(({ kind }) => kind === 'outlet') ? 1 : 0;
    facts.push(fact(['water.outlet', 'check'], where, [areaM2, 0, 'm²'], { why: 'no way out', any, source: 'the scene file' }));
  }
  facts.push(...passedByFacts(scene, on, course), ...edgeFacts(scene, course));
  if (!scene.deck.levels) facts.push(fact(['water.outlet', 'check'], {}, [0, 0, 'm'], { why: 'no levels', source: 'the scene file' }));
  if (!scene.rain) return facts;
  // What is not in the table counts in full: that is safe, but must be known.
  runoffs.forEach(({ peak }, z) => {
    if (peak.known || on.zones[z].areaM2 === 0) return;
    const where = { zone: on.input.zones[z].id };
    facts.push(fact(['water.outlet', 'note'], where, [peak.c, peak.c, '-'], { why: 'no row', table: water.table, source: water.table }));
  });
  return facts;
}

/** Less than this beside an outlet is what a slope brings to any cell, no stream [m²]. */
const STREAM_M2 = 1;

/**
 * Outlets that a stream passes in the next cell: an outlet takes what runs into its own cell, and on the grid a low line may run
 * beside it that on site runs through it.
 */
function passedByFacts(scene: SceneFile, on: Evaluation, course: WaterCourse): FindingFact[] {
  const { site, outletCells, catchments, sinkAt, upstreamM2 } = course;
  const { grid } = on.prepared.ground;
  return site.outlets.flatMap(({ id, kind }, o): FindingFact[] => {
    if (kind !== 'outlet' || outletCells[o] < 0) return [];
    const passing = cellsBeside(grid, outletCells[o]).filter(
      (cell) => sinkAt[cell] >= 0 && sinkAt[cell] !== o && !outletCells.includes(cell),
    );
    const mostM2 = passing.reduce((most, cell) => Math.max(most, upstreamM2[cell]), 0);
    const { areaM2, effectiveM2 } = catchments[o];
    if (mostM2 < STREAM_M2 || mostM2 <= effectiveM2) return [];
    const more = { why: 'passed by', areaM2, cellM: grid.cellM, source: 'the scene file' };
    return [fact(['water.outlet', 'check'], outletPlace(scene, id), [mostM2, effectiveM2, 'm²'], more)];
  });
}

function cellsBeside({ columns, rows }: GridShape, cell: number): number[] {
  const column = cell % columns;
  const row = (cell - column) / columns;
  const beside: number[] = [];
  for (let r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
    for (let c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) beside.push(r * columns + c);
  }
  return beside;
}

/** Edges that water runs over though every outlet works. */
function edgeFacts({ deck }: SceneFile, { site, catchments }: WaterCourse): FindingFact[] {
  return site.spills.flatMap(({ id }, s): FindingFact[] => {
    const { areaM2 } = catchments[site.outlets.length + s];
    if (areaM2 <= NO_AREA_M2) return [];
    const edge = deck.edges?.find((one) => one.id === id);
    const more = { why: 'over edge', edge: id, kind: edge?.kind ?? '', source: 'the scene file' };
    const severity = edge?.kind === 'threshold' ? 'stop' : 'check';
    return [fact(['water.outlet', severity], edge ? { at: edge.line[0], object: id } : {}, [areaM2, 0, 'm²'], more)];
  });
}

/** Water that stays though every outlet works: its weight is in no bay's load, so the bays are judged with it. */
function pondFacts({ scene, on, study, water }: WaterFound): FindingFact[] {
  const { pondMm } = ruleLimits(scene.limits);
  const { course } = study;
  return course.ponds.flatMap((pond, p): FindingFact[] => {
    const depthMm = 1000 * pond.depthM;
    if (depthMm <= pondMm.value + 1000 * ROUNDING) return [];
    const { at, zone } = water.ponds[p];
    const { bays } = waterOnCells(on, course.columns, Int32Array.from(course.pondCells[p]).sort(), pond.levelM);
    const over = overloaded(on, bays);
    if (over) {
      const more = { ...over.facts, why: 'pond load', depthMm, areaM2: pond.areaM2, source: LOAD_SOURCE };
      return [fact(['water.pond', 'stop'], over.where, [100 * over.use, 100, '%'], more)];
    }
    const { areaM2, litres, levelM } = pond;
    const more = { areaM2, litres, waterKNm2: (WATER_KNM3 * litres) / 1000 / areaM2, source: sourceLine(pondMm.source) };
    const outlet = course.site.outlets[pond.sink];
    const raised = outlet?.kind === 'outlet' && course.pondCells[p].includes(course.outletCells[pond.sink]);
    const why = raised ? { why: 'raised', outlet: outlet.id, levelM } : { why: 'pond' };
    return [fact(['water.pond', 'check'], { ...(zone === null ? {} : { zone }), at }, [depthMm, pondMm.value, 'mm'], { ...more, ...why })];
  });
}

const LOAD_SOURCE = 'the load plan and the levels in the scene file';

function blockedFacts({ scene, on, study }: WaterFound): FindingFact[] {
  return study.blocked.flatMap((blocked): FindingFact[] => {
    if (!blocked) return [];
    const outlet = study.course.site.outlets[blocked.outlet].id;
    if (!blocked.water) {
      const where = outletPlace(scene, outlet);
      return [fact(['water.pond', 'stop'], where, [0, 0, 'mm'], { why: 'unbounded', outlet, source: 'the scene file' })];
    }
    const over = overloaded(on, blocked.water.bays);
    if (!over) return [];
    const into = sinkName(study.course, blocked.into) ?? '';
    const more = { ...over.facts, why: 'blocked', outlet, depthMm: 1000 * blocked.water.mostM, into, source: LOAD_SOURCE };
    return [fact(['water.pond', 'stop'], over.where, [100 * over.use, 100, '%'], more)];
  });
}

/** Bays that water loads beyond what is permitted, the worst in front; one that is over without water is told by its own rule. */
function overloaded(on: Evaluation, bays: readonly WetBay[]) {
  const over = bays.flatMap((wet) => {
    const before = greater(on.bays[wet.bay].permanentUtilisation, on.bays[wet.bay].total?.utilisation ?? null);
    const use = greater(wet.permanentUtilisation, wet.totalUtilisation);
    return use === null || use <= 1 + ROUNDING || (before !== null && before > 1 + ROUNDING) ? [] : [{ wet, use }];
  });
  if (over.length === 0) return null;
  const { wet, use } = over.reduce((most, one) => (one.use > most.use ? one : most));
  const names = over.map((one) => on.input.bays[one.wet.bay].id);
  return {
    use,
    where: { bay: on.input.bays[wet.bay].id, at: placeOf(on, wet.patchCell) },
    facts: { bays: names.join(', '), count: over.length, waterKNm2: wet.waterMeanKNm2 },
  };
}

function flowFacts({ on, study, water }: WaterFound): FindingFact[] {
  return study.drains.flatMap((flow, z): FindingFact[] => {
    if (!flow) return [];
    const { drain, flowLsm, capacityLsm, head, cell } = flow;
    const where = { zone: on.input.zones[z].id, at: placeOf(on, cell) };
    const more = { layer: drain.name, flowLsm, source: flowSource(water) };
    if (!head) {
      if (flowLsm <= capacityLsm * (1 + ROUNDING)) return [];
      return [fact(['water.flow', 'check'], where, [flowLsm, capacityLsm, 'l/(s·m)'], { ...more, why: 'element' })];
    }
    const headM = Math.max(head.mcEnroeM, head.giroudM);
    if (headM <= drain.thicknessM + ROUNDING) return [];
    const secondMm = 1000 * Math.min(head.mcEnroeM, head.giroudM);
    return [
      fact(['water.flow', 'check'], where, [1000 * headM, 1000 * drain.thicknessM, 'mm'], { ...more, why: 'fill', capacityLsm, secondMm }),
    ];
  });
}

function upliftFacts({ scene, on, study }: WaterFound): FindingFact[] {
  const { upFactor, downFactor } = study.factors;
  const source = `EN 1997-1, 2.4.7.4; ${upFactor.value} up: ${sourceLine(upFactor.source)}; ${downFactor.value} down: ${sourceLine(downFactor.source)}`;
  const unknown = study.upliftUnknown.map((z) => on.input.zones[z].id);
  const open = unknown.length > 0 ? [unknownUplift(unknown, source)] : [];
  const floating = study.uplifts.flatMap(({ finished, building }, z): FindingFact[] => {
    const floats = (uplift: UpliftAt | null) => uplift !== null && uplift.ratio < 1 - ROUNDING;
    const told = floats(finished) ? finished : floats(building) ? building : null;
    if (!told) return [];
    const { buildUp, id } = on.input.zones[z];
    const where: Where = {
      zone: id,
      ...(told.stage === null ? {} : { stage: on.plan.stages[told.stage].id }),
      at: placeOf(on, told.cell),
    };
    const facts = {
      layer: buildUp.layers[told.layer].name,
      waterMm: 1000 * told.waterM,
      upliftKNm2: told.upliftKNm2,
      holdingKNm2: told.holdingKNm2,
      ballastKNm2: told.ballastKNm2,
      sealed: told.displaces === 1 ? 1 : 0,
      given: scene.flotation?.waterLevelM === undefined ? 0 : 1,
      source,
    };
    return [fact(['float.uplift', 'stop'], where, [told.ratio, 1, '-'], { ...facts, why: 'floats' })];
  });
  return [...floating, ...open];
}

/** One for all: the missing overflow is one fault. */
function unknownUplift(zones: readonly string[], source: string): FindingFact {
  return fact(['float.uplift', 'check'], { zone: zones[0] }, [zones.length, 0, '-'], { why: 'unknown', zones: zones.join('\n'), source });
}
