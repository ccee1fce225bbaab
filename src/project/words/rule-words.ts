/** What the words of a rule are made of. */

import type { FindingFact, Rule } from '../../model/finding.ts';
import type { SceneFile } from '../../model/scene-file.ts';

/** What is found and what to do. */
export type Words = (fact: FindingFact, scene: SceneFile) => string;

/** Words of every rule. */
export type RuleWords = Readonly<Record<Rule, Words>>;

/** Words by the `why` of a fact. */
export type WhyWords = Readonly<Record<string, Words>>;

/** The same entries as another table has: what is missing does not compile. */
export type Like<T> = Readonly<Record<keyof T, Words>>;

/** Words of the rules that tell several things, chosen by `facts.why`. */
export function byWhy(words: WhyWords): Words {
  return (fact, scene) => {
    const says = words[String(fact.facts.why)];
    if (!says) throw new RangeError(`byWhy: no words for "${fact.facts.why}" of rule ${fact.rule}`);
    return says(fact, scene);
  };
}

/** A number with a fixed count of decimals. */
export const number = (value: number, digits = 2): string => value.toFixed(digits);

/** The same in German. */
export const numberDe = (value: number, digits = 2): string => number(value, digits).replace('.', ',');

/** Names that a fact carries in one text, one per line. */
export const namesIn = (text: string | number): string[] => String(text).split('\n');
