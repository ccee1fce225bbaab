/** The command `lighten`: how zones too heavy for their bays could be built lighter, or which limit stands in the way. */

import { lighten } from '../lighten/lighten.ts';
import {
  LIGHTEN_AIMS,
  type LightenAim,
  type LightenAnswer,
  type LightenObstacle,
  type LightenVariant,
  type LightenZone,
} from '../model/lighten.ts';
import type { Project } from '../project/evaluate-project.ts';

export interface LightenCall {
  readonly by: LightenAim | undefined;
  readonly zones: readonly string[] | undefined;
  readonly locked: readonly string[] | undefined;
  readonly json: boolean;
  readonly out: string | undefined;
}

export const LIGHTEN_HELP = `lighten: other fills and thicknesses for zones too heavy for their bays, finished levels kept; or the limit in the way
  --by AIM       ${LIGHTEN_AIMS.join(', ')}: least price, least weight, least volume exchanged (all, where left out)
  --zones A,B    zones to lighten instead of those over their bays
  --locked A,B   zones that stay as they are
  --out NEW      writes the scene of the first answer to NEW
                 exit code 1: a limit is still broken; nothing can help there
`;

/** What to print, and the scene to write. */
export function runLighten(
  call: LightenCall,
  project: Project,
): { out: string; code: 0 | 1; file?: { name: string; bytes: Promise<Uint8Array> } } {
  const answer = lighten(project, {
    ...(call.by ? { aims: [call.by] } : {}),
    ...(call.zones ? { zones: call.zones } : {}),
    ...(call.locked ? { locked: call.locked } : {}),
  });
  const out = call.json
    ? `${JSON.stringify({ format: 'loamdeck-lighten', version: 1, ...answer }, null, 2)}\n`
    : `${lines(answer).join('\n')}\n`;
  const [first] = answer.variants;
  const code = answer.obstacles.length > 0 || answer.unsolved.some(({ why }) => why !== 'no prices') ? 1 : 0;
  if (call.out === undefined || !first) return { out, code };
  const bytes = Promise.resolve(new TextEncoder().encode(`${JSON.stringify(first.scene, null, 2)}\n`));
  return { out, code, file: { name: call.out, bytes } };
}

const AIM_TEXT: Readonly<Record<LightenAim, string>> = { cost: 'Cheapest', weight: 'Lightest', change: 'Least exchanged' };

const UNSOLVED_TEXT: Readonly<Record<LightenAnswer['unsolved'][number]['why'], string>> = {
  'no common answer': 'each limit can be kept, but not all of them together',
  time: 'no answer was found in time',
  'no prices': 'the materials have no prices',
};

function lines(answer: LightenAnswer): string[] {
  if (answer.over.length === 0 && answer.variants.length === 0) return ['No bay is over its limit.'];
  return [
    ...answer.variants.flatMap(variantLines),
    ...answer.unsolved.map(({ aim, why }) => `${AIM_TEXT[aim]}: ${UNSOLVED_TEXT[why]}.`),
    ...answer.obstacles.map(obstacleLine),
    ...answer.passedOver.map(({ zone, why }) => `zone ${zone} was passed over: ${why}.`),
    ...answer.leftOut.map(({ zone, change, says }) => `zone ${zone}: ${change} was left out. ${says}`),
    'Compares entered loads with entered limits. Not a structural check: the structural engineer decides.',
  ];
}

function variantLines(variant: LightenVariant): string[] {
  const { costBefore, costAfter } = variant;
  const price = costBefore === null || costAfter === null ? 'no prices' : `price ${costBefore.toFixed(0)} → ${costAfter.toFixed(0)}`;
  const proven = variant.proven ? '' : ' (search stopped early)';
  return [
    `${AIM_TEXT[variant.aim]}${proven}: ${variant.savedKN.toFixed(1)} kN less, ${variant.exchangedM3.toFixed(1)} m³ exchanged, ${price}`,
    ...variant.zones.flatMap(zoneLines),
    ...variant.bays.map(
      ({ bay, kind, stage, beforeKNm2, afterKNm2, permittedKNm2, binding }) =>
        `  bay ${bay}, ${stage ? `stage ${stage}` : kind}: ${beforeKNm2.toFixed(2)} → ${afterKNm2.toFixed(2)} of ${permittedKNm2.toFixed(2)} kN/m²${binding ? ', binding' : ''}`,
    ),
    '',
  ];
}

function zoneLines({ zone, buildUp, newBuildUp, layers, savedKN }: LightenZone): string[] {
  const mm = (spread: LightenZone['layers'][number]['beforeMm']) => {
    if (!spread) return 'none';
    return spread.max - spread.min < 0.5 ? `${spread.mean.toFixed(0)} mm` : `${spread.min.toFixed(0)}–${spread.max.toFixed(0)} mm`;
  };
  const renamed = buildUp === newBuildUp ? buildUp : `${buildUp} → ${newBuildUp}`;
  return [
    `  zone ${zone} (${renamed}), ${savedKN.toFixed(1)} kN less`,
    ...layers.map(({ name, beforeMm, afterMm }) => `    ${name}: ${mm(beforeMm)} → ${mm(afterMm)}`),
  ];
}

function obstacleLine({
  bay,
  kind,
  stage,
  permittedKNm2,
  beforeKNm2,
  lightestKNm2,
  overKNm2,
  othersKNm2,
  hindrances,
}: LightenObstacle): string {
  const limit = `bay ${bay}, ${stage ? `stage ${stage}` : kind}: ${beforeKNm2.toFixed(2)} of ${permittedKNm2.toFixed(2)} kN/m²`;
  const least = `as light as it may be it is still ${lightestKNm2.toFixed(2)}, ${overKNm2.toFixed(2)} too much; ${othersKNm2.toFixed(2)} of it is what else stands there`;
  return `${limit}; ${least}.${hindrances.length > 0 ? ` In the way: ${hindrances.join(', ')}.` : ''}`;
}
