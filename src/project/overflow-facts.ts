/** Overflows: whether every low place has one, what they are to carry, and how high water stands until they run. */

import type { Evaluation } from '../core/evaluation.ts';
import { severityOf } from '../core/findings.ts';
import type { FindingFact } from '../model/finding.ts';
import type { ReportOverflow } from '../model/report-water.ts';
import { fact, flowSource, outletPlace, type WaterFound } from './water-fact.ts';
import { placeOf, zoneAt } from './water-places.ts';
import type { Emergency } from './water-study.ts';

/** Water that stands this little over a finish is rounding [m]. */
const OVER_FINISH_M = 0.001;

/** Findings of the overflows, then of the outlets that have none. */
export function overflowFacts(found: WaterFound): FindingFact[] {
  return [...found.water.overflows.flatMap((overflow, v) => ofOverflow(found, overflow, v)), ...withoutOverflow(found)];
}

function ofOverflow({ scene, on, study, water, kept }: WaterFound, overflow: ReportOverflow, v: number): FindingFact[] {
  const where = outletPlace(scene, overflow.id);
  const fault = study.emergency.faults[v];
  const none = [0, 0, 'l/s'] as const;
  const source = 'the scene file';
  if (fault === 'off deck' || fault === 'no invert') return [fact(['water.overflow', 'check'], where, none, { why: fault, source })];
  const facts: FindingFact[] = [];
  if (fault) facts.push(fact(['water.overflow', 'check'], where, none, { why: fault, invertM: overflow.invertM ?? 0, source }));
  const { dutyLps, capacityLps, utilisation, areaM2 } = overflow;
  if (capacityLps === null) {
    const more = { why: 'no capacity', areaM2, rain: water.rain ? 1 : 0, source: flowSource(water) };
    facts.push(fact(['water.overflow', 'check'], where, [dutyLps ?? 0, 0, 'l/s'], more));
  }
  const severity = utilisation === null ? null : severityOf(utilisation);
  if (severity && dutyLps !== null && capacityLps !== null) {
    const more = { why: 'capacity', areaM2, source: flowSource(water) };
    facts.push(fact(['water.overflow', severity], where, [dutyLps, capacityLps, 'l/s'], more));
  }
  const { zoneCells, deckLevelsM } = on.prepared;
  const pool = kept.get(`pool ${v}`, [study.emergency, zoneCells, deckLevelsM], () => poolOf(on, study.emergency, v));
  return [...facts, ...overFinish(on, study.emergency, pool, overflow.id)];
}

/** Cells of one zone each in which water stands on the membrane before the overflow runs. */
function poolOf(on: Evaluation, { sinkAt, filledM }: Emergency, v: number): Int32Array {
  const { zoneCells, deckLevelsM } = on.prepared;
  const cells: number[] = [];
  for (let cell = 0; cell < sinkAt.length; cell++) {
    if (sinkAt[cell] === v && zoneCells.owner[cell] >= 0 && filledM[cell] - deckLevelsM[cell] > OVER_FINISH_M) cells.push(cell);
  }
  return Int32Array.from(cells);
}

/** Where water stands on the garden before the overflow runs: one finding, at the deepest place. */
function overFinish(on: Evaluation, emergency: Emergency, pool: Int32Array, overflow: string): FindingFact[] {
  const { owner, position } = on.prepared.zoneCells;
  let most = OVER_FINISH_M;
  let at = -1;
  let cells = 0;
  for (const cell of pool) {
    const z = owner[cell];
    const made = on.makeUps[z].thicknessM;
    const { fixed, perM } = on.stacks[z].depth;
    const depthM = fixed + perM * made[made.length === 1 ? 0 : position[cell]];
    const overM = emergency.filledM[cell] - on.prepared.deckLevelsM[cell] - depthM;
    if (overM <= OVER_FINISH_M) continue;
    cells++;
    if (overM > most) {
      most = overM;
      at = cell;
    }
  }
  if (at < 0) return [];
  const zone = zoneAt(on, at);
  const more = { why: 'over finish', overflow, areaM2: cells * on.input.cellM ** 2, source: 'the scene file' };
  return [fact(['water.overflow', 'check'], { ...(zone === null ? {} : { zone }), at: placeOf(on, at) }, [1000 * most, 0, 'mm'], more)];
}

/** An outlet whose water, were all outlets closed, meets an edge or nothing at all before any overflow. */
function withoutOverflow({ scene, study, outlets }: WaterFound): FindingFact[] {
  const { course, emergency, blocked } = study;
  return outlets.flatMap(({ id, kind }, o): FindingFact[] => {
    const cell = course.outletCells[o];
    // Where water rises without end, the ponding tells it.
    if (kind !== 'outlet' || cell < 0 || !blocked[o]?.water) return [];
    const sink = emergency.sinkAt[cell];
    const overflows = emergency.site.outlets.length;
    if (sink >= 0 && sink < overflows) return [];
    const where = outletPlace(scene, id);
    if (sink < 0) return [fact(['water.overflow', 'check'], where, [0, 0, 'mm'], { why: 'none', source: PRACTICE })];
    const edge = scene.deck.edges?.find((one) => one.id === emergency.site.spills[sink - overflows].id);
    const isSill = edge?.kind === 'threshold';
    const more = { why: 'over edge', edge: edge?.id ?? '', kind: edge?.kind ?? '', source: PRACTICE };
    const depthMm = 1000 * (emergency.filledM[cell] - course.filledM[cell]);
    return [fact(['water.overflow', isSill ? 'stop' : 'check'], where, [depthMm, 0, 'mm'], more)];
  });
}

const PRACTICE = 'EN 12056-3 and DIN 1986-100, an outlet and an overflow at each low place, as two trade pages repeat it (secondary)';
