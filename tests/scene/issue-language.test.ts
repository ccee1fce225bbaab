/** Every message on a scene file has its German: all faults of the tests, told in both languages. */

import { describe, expect, it } from 'vitest';
import type { Issue, Phrase } from '../../src/model/issue.ts';
import { issueIn } from '../../src/scene/issue-language.ts';
import { parseScene } from '../../src/scene/parse-scene.ts';
import { phrase, tell } from '../../src/scene/words/phrase.ts';
import { SCENE_CASES } from './scene-cases.ts';
import { fullScene, KNOWN } from './scenes.ts';
import { TEXT_CASES } from './text-cases.ts';

const SCENES = SCENE_CASES.map(({ put }) => {
  const scene = fullScene();
  put(scene);
  return JSON.stringify(scene);
});

const ISSUES = [...TEXT_CASES.map(({ text }) => text), ...SCENES].flatMap((text) => parseScene(text, KNOWN).issues);

/** Text that is quoted from the file, in any language, is not ours. */
const ours = (text: string) => text.replace(/"[^"]*"|\[.*\]|\{.*\}/gs, '…');

const ENGLISH =
  /(?<!\p{L})(the|and|of|is|are|with|not|no|to|from|bay|layer|found|points|line|least|most|write|give|add|delete|check|list|which|inside|near|key)(?!\p{L})/iu;

const SENTENCES = [
  ...new Map(
    ISSUES.flatMap((issue) => (['got', 'expected', 'mend'] as const).map((part) => [`${part} ${issue[part]}`, { issue, part }])),
  ).values(),
];

describe('German messages', () => {
  it('has faults of every kind to tell', () => expect(new Set(ISSUES.map(({ code }) => code)).size).toBeGreaterThan(40));

  it.each(SENTENCES.map(({ issue, part }): [string, string, Issue, 'got' | 'expected' | 'mend'] => [part, issue[part], issue, part]))(
    '%s: %s',
    (_, english, issue, part) => {
      const german = issueIn(issue, 'de')[part];
      expect(ours(german)).not.toMatch(ENGLISH);
      if (english !== 'undefined') expect(german).not.toMatch(/\{\w+\*?\}|undefined/);
      if (/[a-z] [a-z]/.test(ours(english))) expect(german).not.toBe(english);
    },
  );

  it('keep code, level, place and line', () => {
    for (const issue of ISSUES) {
      const { got: _, expected: __, mend: ___, ...place } = issue;
      expect(issueIn(issue, 'de')).toMatchObject(place);
    }
  });

  it('come from the reader itself, and stay English unless asked for', () => {
    const text = '{ "format": "loamdeck-scene", }';
    expect(parseScene(text, KNOWN, 'de').issues).toEqual(parseScene(text, KNOWN).issues.map((issue) => issueIn(issue, 'de')));
    expect(parseScene(text, KNOWN, 'de').issues[0]?.mend).toBe('Das Komma löschen.');
    expect(parseScene(text, KNOWN, 'de').issues.map((issue) => issueIn(issue, 'en'))).toEqual(parseScene(text, KNOWN).issues);
  });
});

describe('phrases', () => {
  it('group the thousands of counts as the language does', () => {
    const most = phrase('pointsInList', { n: 20000 });
    expect(tell(most, 'en')).toBe('at most 20,000 points in one list');
    expect(tell(most, 'de')).toBe('höchstens 20.000 Punkte in einer Liste');
    expect(tell(phrase('pointsFound', { n: 999 }), 'de')).toBe('999 Punkte');
  });

  /** In both languages. */
  const said = (one: Phrase) => [tell(one, 'en'), tell(one, 'de')];

  it('count one and several', () => {
    expect(said(phrase('furtherMessages', { n: 1 }))).toEqual(['1 further message', '1 weitere Meldung']);
    expect(said(phrase('furtherMessages', { n: 7 }))).toEqual(['7 further messages', '7 weitere Meldungen']);
  });

  it('name shapes within shapes', () => {
    const hole = phrase('partOf', { what: phrase('hole', { n: 2 }), owner: phrase('zone', { id: 'Z4' }) });
    expect(said(phrase('enclosesNothing', { name: hole }))).toEqual([
      'hole 2 of zone "Z4" enclosing no area: its points lie on one line or on top of each other',
      'Loch 2 (Zone "Z4") ohne Fläche: Die Punkte liegen auf einer Linie oder aufeinander',
    ]);
  });

  it('shorten long lists of names, from the 25th name on', () => {
    const ids = Array.from({ length: 25 }, (_, i) => `B${i + 1}`);
    const [en, de] = said(phrase('idOf', { what: 'build-up', ids }));
    expect(en).toMatch(/^the id of a build-up \(there are: B1, B2, .*, B20 and 5 more\)$/);
    expect(de).toMatch(/^eine vorhandene Kennung \(es gibt: B1, B2, .*, B20 und 5 weitere\)$/);
    expect(said(phrase('idOf', { what: 'object', ids: [] }))).toEqual([
      'the id of an object (there are: none)',
      'eine vorhandene Kennung (es gibt: keine)',
    ]);
  });

  it('tell the meaning of a key in English, elsewhere the key', () => {
    const wanted = phrase('ofKey', { key: 'massKg', meaning: 'mass', kind: phrase('numberAbove', { a: 0, unit: 'kg' }) });
    expect(said(wanted)).toEqual(['mass: a number above 0 [kg]', '"massKg": eine Zahl über 0 [kg]']);
  });

  it('that there are not are a fault of the program', () => {
    expect(() => tell({ id: 'nothing', values: {} }, 'de')).toThrow(/^tell: .*"nothing"$/);
  });
});
