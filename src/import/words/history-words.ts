/** Sentences for a scene's history: what was read, asked and taken, in English and German. */

import type { LayerRole } from '../../model/drawing.ts';
import type { Language } from '../../model/language.ts';
import { some } from './number-words.ts';
import { TERMS_DE, TERMS_EN } from './term-words.ts';

interface HistoryWords {
  readonly deckName: string;
  readonly layer: (name: string, role: LayerRole, shapes: number) => string;
  readonly read: (file: string, kind: string, layers: readonly string[]) => string;
  readonly answered: (question: string, answer: string) => string;
  readonly guessed: (question: string, taken: string) => string;
  readonly onLayer: (layer: string, mend: string) => string;
}

const EN: HistoryWords = {
  deckName: 'Imported deck',
  layer: (name, role, shapes) => `${name} as ${TERMS_EN.roles[role]} (${some(shapes, 'shape', 'shapes')})`,
  read: (file, kind, layers) => `Read from "${file}" (${kind}): ${layers.length === 0 ? 'no layers' : layers.join(', ')}.`,
  answered: (question, answer) => `Asked: ${question} Answer: ${answer}.`,
  guessed: (question, taken) => `Not answered: ${question} Taken: ${taken}.`,
  onLayer: (layer, mend) => `Layer ${layer}: ${mend}`,
};

const DE: HistoryWords = {
  deckName: 'Eingelesene Decke',
  layer: (name, role, shapes) => `${name} als ${TERMS_DE.roles[role]} (${some(shapes, 'Form', 'Formen')})`,
  read: (file, kind, layers) => `Gelesen aus „${file}“ (${kind}): ${layers.length === 0 ? 'keine Layer' : layers.join(', ')}.`,
  answered: (question, answer) => `Gefragt: ${question} Antwort: ${answer}.`,
  guessed: (question, taken) => `Nicht beantwortet: ${question} Angenommen: ${taken}.`,
  onLayer: (layer, mend) => `Layer ${layer}: ${mend}`,
};

export const HISTORY_WORDS: Readonly<Record<Language, HistoryWords>> = { en: EN, de: DE };
