/** Sentences said to people who do not see the picture, in German. */

import { loadNumber, loadText, unitText, wholePercent } from '../format.ts';
import { JUDGEMENTS } from './de-words.ts';
import type { Texts } from './text.ts';

export const live: Texts['live'] = {
  opened: (name, headline) => `${name} ist geöffnet. ${headline}.`,
  place: (bay, stage, load, permitted) => `Feld ${bay}, ${stage}: ${loadNumber(load)} von ${loadNumber(permitted)} ${unitText('kN/m²')}`,
  verdict: (place, ratio, judgement, confirmed) => {
    const percent = `${wholePercent(ratio)} Prozent`;
    if (judgement !== 'over' && !confirmed) return `${place}, ${percent}, nicht bestätigt`;
    return `${place}, ${percent}, ${JUDGEMENTS[judgement]}${confirmed ? '' : ', nicht bestätigt'}`;
  },
  noLimit: (bay, stage, load) => `Feld ${bay}, ${stage}: ${loadText(load)}, keine zulässige Last angegeben`,
  noBay: (stage, load) => `${stage}: ${loadText(load)}, hier kein Feld`,
  withBasis: (says, basis) => `${says}. Zulässig nach: ${basis}`,
  stageNumber: (number) => `Bauzustand ${number}`,
  garden: 'fertige Anlage',
};
