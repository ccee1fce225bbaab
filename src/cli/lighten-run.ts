/** The command `lighten`: how zones too heavy for their bays could be built lighter, or which limit stands in the way. */

import { lighten } from '../lighten/lighten.ts';
import type { Solver } from '../lighten/solver.ts';
import type { Language } from '../model/language.ts';
import type { LightenAim, LightenAnswer, LightenObstacle, LightenVariant, LightenZone } from '../model/lighten.ts';
import { byCases, type LightenCase, type WithCases } from '../model/lighten-cases.ts';
import { derivedStageName } from '../model/roles.ts';
import type { Project } from '../project/evaluate-project.ts';
import { WRITING, type Writing } from './writing.ts';

export interface LightenCall {
  readonly by: LightenAim | undefined;
  readonly zones: readonly string[] | undefined;
  readonly locked: readonly string[] | undefined;
  readonly json: boolean;
  readonly language: Language;
  readonly out: string | undefined;
}

/** What to print, and the scene to write. */
export function runLighten(
  solver: Solver,
  call: LightenCall,
  project: Project,
): { out: string; code: 0 | 1; file?: { name: string; bytes: Promise<Uint8Array> } } {
  const answer = lighten(solver, project, {
    ...(call.by ? { aims: [call.by] } : {}),
    ...(call.zones ? { zones: call.zones } : {}),
    ...(call.locked ? { locked: call.locked } : {}),
  });
  const out = call.json
    ? `${JSON.stringify({ format: 'loamdeck-lighten', version: 1, ...answer }, null, 2)}\n`
    : `${lines(answer, { ...WRITING[call.language], stage: stageNames(project, call.language) }).join('\n')}\n`;
  const [first] = answer.variants;
  const isOpen = answer.obstacles.length > 0 || answer.unsolved.some(({ why }) => why !== 'no prices');
  const code = isOpen || answer.variants.some(({ unmet }) => unmet.length > 0) ? 1 : 0;
  if (call.out === undefined || !first) return { out, code };
  const bytes = Promise.resolve(new TextEncoder().encode(`${JSON.stringify(first.scene, null, 2)}\n`));
  return { out, code, file: { name: call.out, bytes } };
}

interface Telling extends Writing {
  /** A stage by its id, with its name. */
  readonly stage: (id: string) => string;
}

function stageNames({ evaluation }: Project, language: Language): Telling['stage'] {
  const names = new Map(evaluation.plan.stages.map(({ id, name, derived }) => [id, derived ? derivedStageName(name, language) : name]));
  return (id) => {
    const name = names.get(id) ?? id;
    return name.toLowerCase() === id.toLowerCase() ? id : `${id} (${name})`;
  };
}

function lines(answer: LightenAnswer, to: Telling): string[] {
  const { calls, fixed } = to;
  if (answer.over.length === 0 && answer.variants.length === 0) return [calls.withinAll];
  return [
    ...answer.variants.flatMap((variant) => variantLines(variant, to)),
    ...answer.unsolved.map(({ aim, why }) => `${calls.aim[aim]}: ${calls.unsolved[why]}.`),
    ...byCases(answer.obstacles).map((obstacle) => obstacleLine(obstacle, to)),
    ...answer.passedOver.map(({ zone, why }) => calls.passedOver(zone, calls.passing[why])),
    ...answer.leftOut.map(({ zone, change, fromMm, says }) => {
      const mm = fixed(fromMm, 0);
      return change === 'substrate' ? calls.leftThick(zone, mm, says) : calls.leftOut(zone, change, mm, says);
    }),
    calls.notACheck,
  ];
}

function variantLines(variant: LightenVariant, to: Telling): string[] {
  const { calls, fixed } = to;
  const { costBefore, costAfter } = variant;
  const price = costBefore === null || costAfter === null ? calls.noPrices : calls.price(fixed(costBefore, 0), fixed(costAfter, 0));
  const all = calls.variant(calls.aim[variant.aim], variant.proven, fixed(variant.savedKN, 1), fixed(variant.exchangedM3, 1));
  return [
    `${all}, ${price}`,
    ...byCases(variant.unmet).map(({ bay, cases, afterKNm2, permittedKNm2, why }) => {
      return `  ${calls.stillOver(placeOf(bay, cases, to), fixed(afterKNm2), fixed(permittedKNm2), calls.unmet[why])}`;
    }),
    ...variant.zones.flatMap((zone) => zoneLines(zone, to)),
    ...variant.bays.map(({ bay, kind, stage, beforeKNm2, afterKNm2, permittedKNm2, binding }) => {
      const load = calls.bayLoad(fixed(beforeKNm2), fixed(afterKNm2), fixed(permittedKNm2), binding);
      return `  ${placeOf(bay, [{ kind, stage }], to)}: ${load}`;
    }),
    '',
  ];
}

function zoneLines({ zone, buildUp, newBuildUp, layers, laidIn, savedKN }: LightenZone, { calls, fixed, stage }: Telling): string[] {
  const mm = (spread: LightenZone['layers'][number]['beforeMm']) => {
    if (!spread) return calls.none;
    return spread.max - spread.min < 0.5 ? `${fixed(spread.mean, 0)} mm` : `${fixed(spread.min, 0)}–${fixed(spread.max, 0)} mm`;
  };
  const renamed = buildUp === newBuildUp ? buildUp : `${buildUp} → ${newBuildUp}`;
  return [
    `  ${calls.zoneLess(zone, renamed, fixed(savedKN, 1))}`,
    ...layers.map(({ name, beforeMm, afterMm }) => `    ${name}: ${mm(beforeMm)} → ${mm(afterMm)}`),
    ...(laidIn === null ? [] : [`    ${calls.laidIn(stage(laidIn))}`]),
  ];
}

const placeOf = (bay: string, cases: readonly LightenCase[], { calls, stage: named }: Telling): string =>
  calls.bayAt(
    bay,
    cases.map(({ kind, stage }) => (stage === null ? calls.limit[kind] : calls.inStage(named(stage)))),
  );

function obstacleLine({ bay, cases, hindrances, ...loads }: WithCases<LightenObstacle>, to: Telling): string {
  const { calls, fixed } = to;
  const says = calls.obstacle({
    before: fixed(loads.beforeKNm2),
    permitted: fixed(loads.permittedKNm2),
    lightest: fixed(loads.lightestKNm2),
    over: fixed(loads.overKNm2),
    others: fixed(loads.othersKNm2),
  });
  const way = hindrances.length > 0 ? ` ${calls.inTheWay(hindrances.map((one) => calls.hindrance[one]).join(', '))}` : '';
  return `${placeOf(bay, cases, to)}: ${says}${way}`;
}
