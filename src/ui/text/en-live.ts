/** Sentences said to people who do not see the picture. */

import type { Judgement } from '../facts/utilisation.ts';
import { loadNumber, loadText, unitText, wholePercent } from '../format.ts';
import { JUDGEMENTS } from './en-words.ts';

export const live = {
  opened: (name: string, headline: string) => `${name} is open. ${headline}.`,
  place: (bay: string, stage: string, load: number, permitted: number) =>
    `Bay ${bay}, ${stage}: ${loadNumber(load)} of ${loadNumber(permitted)} ${unitText('kN/m²')}`,
  verdict: (place: string, ratio: number, judgement: Judgement, confirmed: boolean) => {
    const percent = `${wholePercent(ratio)} percent`;
    if (judgement !== 'over' && !confirmed) return `${place}, ${percent}, not confirmed`;
    return `${place}, ${percent}, ${JUDGEMENTS[judgement]}${confirmed ? '' : ', not confirmed'}`;
  },
  noLimit: (bay: string, stage: string, load: number) => `Bay ${bay}, ${stage}: ${loadText(load)}, no permitted load given`,
  noBay: (stage: string, load: number) => `${stage}: ${loadText(load)}, no bay here`,
  withBasis: (says: string, basis: string) => `${says}. Permitted by: ${basis}`,
  stageNumber: (number: number) => `stage ${number}`,
  garden: 'finished garden',
} as const;
