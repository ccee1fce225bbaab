/** Short words that many texts share, in English and German. */

import { dayIn } from '../../model/date-text.ts';
import type { Language } from '../../model/language.ts';

interface SharedWords {
  readonly practice: string;
  readonly sceneFile: string;
  readonly notConfirmed: string;
  readonly basis: (document: string, revision: string, date: string) => string;
  readonly flowUnchecked: (ids: string) => string;
  readonly reachUnchecked: (ids: string) => string;
  readonly variantsUnchecked: (ids: string) => string;
}

const EN: SharedWords = {
  practice: 'common practice',
  sceneFile: 'the scene file',
  notConfirmed: 'permitted load not confirmed: basis incomplete',
  basis: (document, revision, date) => `${document}, revision ${revision}, ${date}`,
  flowUnchecked: (ids) => `flow to outlets, as no rain is given: ${ids}`,
  reachUnchecked: (ids) => `reach from access points, as no stages are given: ${ids}`,
  variantsUnchecked: (ids) => `variants, each judged when it is compared: ${ids}`,
};

const DE: SharedWords = {
  practice: 'übliche Praxis',
  sceneFile: 'die Szenendatei',
  notConfirmed: 'zulässige Last nicht bestätigt: Grundlage unvollständig',
  basis: (document, revision, date) => `${document}, Index ${revision}, ${dayIn(date, 'de')}`,
  flowUnchecked: (ids) => `Zufluss zu den Abläufen, da kein Regen angegeben ist: ${ids}`,
  reachUnchecked: (ids) => `Erreichbarkeit von den Zugängen, da keine Bauzustände angegeben sind: ${ids}`,
  variantsUnchecked: (ids) => `Varianten, jede beim Vergleichen beurteilt: ${ids}`,
};

export const SHARED_WORDS: Readonly<Record<Language, SharedWords>> = { en: EN, de: DE };
