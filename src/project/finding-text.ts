/** Findings in words: what, where, why it matters, what to do; and the source of each limit. */

import type { Finding, FindingFact, Rule } from '../model/finding.ts';
import type { Language } from '../model/language.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { isConfirmed } from './resolve-scene.ts';
import { FINDINGS_DE } from './words/de-findings.ts';
import { FINDINGS_EN } from './words/en-findings.ts';
import { type Names, namesOf } from './words/names.ts';
import { namesIn, type RuleWords, type Words } from './words/rule-words.ts';
import { SHARED_WORDS } from './words/shared-words.ts';

const WORDS: Readonly<Record<Language, RuleWords>> = { en: FINDINGS_EN, de: FINDINGS_DE };

/** A fact in words. */
export function wordFinding(fact: FindingFact, scene: SceneFile, language: Language = 'en', names = namesOf(scene, language)): Finding {
  const { rule, severity, where, value, limit, unit } = fact;
  const words = WORDS[language][rule] as Words | undefined;
  if (!words) throw new RangeError(`wordFinding: no words for rule ${rule}`);
  const says = words(withNames(fact, names), scene);
  return { rule, severity, where, says, value, limit, unit, source: sourceOf(fact, scene, names) };
}

/** Facts that are names of the catalogue, or several of them. */
const NAMES = ['layer', 'layers', 'below', 'above', 'vehicle', 'run', 'countedAs', 'form', 'rule', 'country', 'names', 'table'];

function withNames(fact: FindingFact, names: Names): FindingFact {
  if (names.language === 'en') return fact;
  const facts = Object.entries(fact.facts).map(([key, value]): [string, string | number] => {
    if (typeof value !== 'string' || !NAMES.includes(key)) return [key, value];
    return [key, namesIn(value).map(names.name).join('\n')];
  });
  return { ...fact, facts: Object.fromEntries(facts) };
}

/** Rules whose limit is what the load plan permits. */
const PERMITTED: readonly Rule[] = ['load.permanent', 'load.imposed', 'load.total', 'load.stage'];

/** Rules that look at the drawing alone. */
const DRAWN: readonly Rule[] = [
  'depth.short',
  'depth.over',
  'level.outside',
  'zone.gap',
  'zone.overlap',
  'zone.outside',
  'bay.gap',
  'bay.overlap',
];

function sourceOf({ rule, where, facts }: FindingFact, scene: SceneFile, names: Names): string {
  const words = SHARED_WORDS[names.language];
  if (facts.why === 'twice') return words.sceneFile;
  if (PERMITTED.includes(rule) || (rule === 'load.basis' && facts.why !== undefined))
    return bayBasis(where.bay, scene, names.language, true);
  if (rule === 'traffic.bay') return bayBasis(where.bay, scene, names.language, false);
  if (DRAWN.includes(rule)) return words.sceneFile;
  return facts.source === undefined ? words.practice : names.source(String(facts.source));
}

/** Where the permitted load of a bay comes from. */
export function bayBasis(id: string | undefined, scene: SceneFile, language: Language, withAuthor: boolean): string {
  const words = SHARED_WORDS[language];
  const bay = scene.deck.bays.find((entry) => entry.id === id);
  if (!bay?.basis || !isConfirmed(bay)) return words.notConfirmed;
  const { document, revision, date, by } = bay.basis;
  return `${words.basis(`${document}`, `${revision}`, `${date}`)}${withAuthor && by ? `, ${by}` : ''}`;
}
