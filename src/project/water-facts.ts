/** What the water on a deck breaks: outlets, overflows, ponds, drainage, uplift. */

import { ROUNDING, severityOf } from '../core/findings.ts';
import type { UpliftAt } from '../core/zone-uplift.ts';
import type { FindingFact, Where } from '../model/finding.ts';
import { sourceLine } from '../model/source.ts';
import { NO_WAY_OUT } from '../model/water-result.ts';
import { overflowFacts } from './overflow-facts.ts';
import { ruleLimits } from './resolve-rules.ts';
import { fact, flowSource, outletPlace, type WaterFound } from './water-fact.ts';
import { greater, placeOf, sinkName } from './water-places.ts';

/** Deck without a way out of less than this is rounding [m²]. */
const NO_AREA_M2 = 0.05;

/** All findings of water, grouped by rule. */
export function waterFacts(found: WaterFound): FindingFact[] {
  return [...outletFacts(found), ...overflowFacts(found), ...pondFacts(found), ...flowFacts(found), ...upliftFacts(found)];
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
  if (!scene.rain) return facts;
  // What is not in the table counts in full: that is safe, but must be known.
  runoffs.forEach(({ peak }, z) => {
    if (peak.known || on.zones[z].areaM2 === 0) return;
    const where = { zone: on.input.zones[z].id };
    facts.push(fact(['water.outlet', 'note'], where, [peak.c, peak.c, '-'], { why: 'no row', table: water.table, source: water.table }));
  });
  return facts;
}

function pondFacts({ scene, on, study, water }: WaterFound): FindingFact[] {
  const { pondMm } = ruleLimits(scene.limits);
  const facts = water.ponds.flatMap((pond): FindingFact[] => {
    if (pond.depthMm <= pondMm.value + 1000 * ROUNDING) return [];
    const where = { ...(pond.zone === null ? {} : { zone: pond.zone }), at: pond.at };
    const more = { why: 'pond', areaM2: pond.areaM2, litres: pond.litres, source: sourceLine(pondMm.source) };
    return [fact(['water.pond', 'check'], where, [pond.depthMm, pondMm.value, 'mm'], more)];
  });
  for (const blocked of study.blocked) {
    if (!blocked) continue;
    const outlet = study.course.site.outlets[blocked.outlet].id;
    const where = outletPlace(scene, outlet);
    if (!blocked.water) {
      facts.push(fact(['water.pond', 'stop'], where, [0, 0, 'mm'], { why: 'unbounded', outlet, source: 'the scene file' }));
      continue;
    }
    const over = blocked.water.bays.flatMap((wet) => {
      const before = greater(on.bays[wet.bay].permanentUtilisation, on.bays[wet.bay].total?.utilisation ?? null);
      const use = greater(wet.permanentUtilisation, wet.totalUtilisation);
      // A bay that is over without water is told by its own rule.
      if (use === null || use <= 1 + ROUNDING || (before !== null && before > 1 + ROUNDING)) return [];
      return [{ wet, use }];
    });
    if (over.length === 0) continue;
    const worst = over.reduce((most, one) => (one.use > most.use ? one : most));
    const bay = on.input.bays[worst.wet.bay].id;
    const more = {
      why: 'blocked',
      outlet,
      bays: over.map(({ wet }) => on.input.bays[wet.bay].id).join(', '),
      count: over.length,
      waterKNm2: worst.wet.waterMeanKNm2,
      depthMm: 1000 * blocked.water.mostM,
      into: sinkName(study.course, blocked.into) ?? '',
      source: 'the load plan and the levels in the scene file',
    };
    const at = { bay, at: placeOf(on, worst.wet.patchCell) };
    facts.push(fact(['water.pond', 'stop'], at, [100 * worst.use, 100, '%'], more));
  }
  return facts;
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
