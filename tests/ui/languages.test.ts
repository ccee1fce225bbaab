/** Both tables of sentences: every entry in both, every function callable, nothing left in English, numbers in the marks of the language. */

import { afterEach, describe, expect, it, vi } from 'vitest';
import { readNumber } from '../../src/model/parse-number.ts';
import { levelText, numberText, percentText, quantityText } from '../../src/ui/format.ts';
import { startLanguage } from '../../src/ui/language.ts';
import { de } from '../../src/ui/text/de.ts';
import { MAP_BASES, MAP_NAMES, MAP_QUANTITIES, NUMBER_NAMES, PARTS, RULES } from '../../src/ui/text/de-words.ts';
import { NUMBER_NAMES as EN_NUMBER_NAMES } from '../../src/ui/text/en-words.ts';
import { speak, t, textsOf } from '../../src/ui/text/text.ts';

afterEach(() => {
  speak('en');
  vi.unstubAllGlobals();
});

/** Words that are English and nothing else, as whole words in lower case. */
const ENGLISH =
  /(?<!\p{L})(the|and|of|with|without|not|from|are|is|has|have|does|which|where|what|this|that|every|bays?|layers?|stages?|heaps?|loads?|cells?|deck|weight|water|edge|height|depth|thickness|permitted|over|under|show|hide|close|open|none|given|confirmed|finished|garden|wheel|vehicle|source)(?!\p{L})/iu;
/** Names of files and of their entries; what drawings are parted into is called the same in German. */
const NAMES = /\.scene\.json|\bLayern?\b/g;

/** Every value in the table with its path. */
function walked(table: unknown, path: string): [string, unknown][] {
  if (table === null || typeof table !== 'object') return [[path, table]];
  return Object.entries(table).flatMap(([key, value]) => walked(value, `${path}.${key}`));
}

const shapeOf = (table: unknown) => walked(table, 't').map(([path, value]) => `${path}: ${typeof value}`);

/** Answers whatever a sentence asks of its parameter: a number, a word, a list or an entry. */
const anything = (): unknown =>
  new Proxy(() => undefined, {
    get: (_, key) => {
      if (key === Symbol.toPrimitive) return (hint: string) => (hint === 'string' ? 'X1' : 2.5);
      if (key === Symbol.iterator) return [][Symbol.iterator];
      if (key === 'toString' || key === 'valueOf') return () => 'X1';
      if (key === 'length') return 2;
      if (key === 'map' || key === 'slice' || key === 'filter') return () => ['X1', 'X2'];
      if (key === 'join') return () => 'X1, X2';
      if (key === 'replace') return () => 'X1';
      return 2.5;
    },
    apply: () => 'X1',
  });

type Sentence = (...given: unknown[]) => unknown;

const ANYTHING = [0, 1, 2.5, 1234.5, 'X1', ['X1', 'X2'], [], null, true, false, anything()];
/** A name out of each list of names that sentences choose by. */
const CHOICES = [
  'within',
  'take-off',
  'damaged',
  'load',
  'loads',
  'tree',
  'slab',
  'permanent',
  'stage',
  'over',
  'no gap',
  'new',
  'dxf',
  'x',
  'levels',
  'add',
  'upstand',
  { id: 'X1', kind: 'overflow', invertM: 2.5, deliveryBy: null },
  new Date(2026, 2, 9),
  { document: 'X1', revision: 'X1', date: '2026-03-09' },
  { what: 'scene', wanted: 'X1', known: ['X1'] },
  { kind: 'parts', act: 'move', part: 'zone', names: ['X1'] },
  {
    ...{ bay: 'X1', cases: [{ kind: 'stage', stage: 'X1' }], why: 'time', permittedKNm2: 2.5, beforeKNm2: 2.5 },
    ...{ afterKNm2: 2.5, lightestKNm2: 2.5, othersKNm2: 2.5 },
  },
];

/** What a sentence says with numbers, words and lists for its parameters; combinations its types rule out may throw. */
function saidBy(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'function') return [];
  const said = saidWith(value as Sentence, ANYTHING);
  return said.length > 0 ? said : saidWith(value as Sentence, CHOICES);
}

function saidWith(value: Sentence, kinds: readonly unknown[]): string[] {
  const said: string[] = [];
  for (const kind of kinds) {
    try {
      const says: unknown = value(...Array.from({ length: Math.max(1, value.length) }, () => kind));
      for (const [, text] of walked(says, '')) if (typeof text === 'string') said.push(text);
    } catch {
      // Another kind of parameter is the one it takes.
    }
  }
  return said;
}

describe('the German table', () => {
  it('has every entry of the English one, of the same kind', () => {
    expect(shapeOf(textsOf('de'))).toEqual(shapeOf(textsOf('en')));
  });

  it('says something for every entry that says something in English', () => {
    const silent = walked(textsOf('de'), 't').filter(([, value]) => typeof value !== 'number' && saidBy(value).length === 0);
    expect(silent.map(([path]) => path)).toEqual([]);
  });

  it('holds no English word', () => {
    speak('de');
    const left = walked(textsOf('de'), 't').flatMap(([path, value]) =>
      saidBy(value)
        .filter((text) => ENGLISH.test(text.replace(NAMES, '')))
        .map((text) => `${path}: ${text}`),
    );
    expect(left).toEqual([]);
  });

  it('words every map, rule, part and number', () => {
    const words = { ...MAP_BASES, ...MAP_NAMES, ...MAP_QUANTITIES, ...NUMBER_NAMES, ...PARTS, ...RULES };
    for (const [key, word] of Object.entries(words)) expect(word, key).not.toMatch(ENGLISH);
    expect(Object.keys(NUMBER_NAMES)).toEqual(Object.keys(EN_NUMBER_NAMES));
  });

  it('says one thing in the singular and several in the plural', () => {
    expect([de.refusal.issues(1), de.refusal.issues(3)]).toEqual(['1 Punkt zu beheben', '3 Punkte zu beheben']);
    expect([de.stage.openCount(1), de.stage.openCount(2)]).toEqual(['1 offener Haltepunkt', '2 offene Haltepunkte']);
    expect(de.bays.allWithin(1, [])).toContain('hält die zulässige Last ein');
    expect(de.bays.allWithin(2, [])).toContain('halten die zulässigen Lasten ein');
  });

  it('says wherever English does that this is no structural check', () => {
    expect(de.app.statementFull).toContain('Kein Standsicherheitsnachweis');
    expect(de.app.statement).toContain('Kein Standsicherheitsnachweis');
    expect(de.walk.frame).toContain('Kein Standsicherheitsnachweis');
  });
});

describe('speaking a language', () => {
  it('changes the sentences read from then on', () => {
    expect(t.tabs.bays).toBe('Bays');
    speak('de');
    expect(t.tabs.bays).toBe('Felder');
    speak('en');
    expect(t.tabs.bays).toBe('Bays');
  });

  // Marks of German and British numbers: CLDR, locales de and en-GB.
  it('changes the marks of numbers, but no unit and no minus sign', () => {
    const texts = () => [numberText(1234.5, 1), numberText(1234567, 0), quantityText(12.5, 'kN/m²'), levelText(-0.35), percentText(0.876)];
    expect(texts()).toEqual(['1,234.5', '1,234,567', '12.50\u202FkN/m²', '\u22120.350\u202Fm', '87.6\u202F%']);
    speak('de');
    expect(texts()).toEqual(['1.234,5', '1.234.567', '12,50\u202FkN/m²', '\u22120,350\u202Fm', '87,6\u202F%']);
  });

  it('shows no round 100 percent for what is over the limit, in either language', () => {
    for (const language of ['en', 'de'] as const) {
      speak(language);
      expect(percentText(1.0004)).not.toBe(percentText(1));
      expect(percentText(1.0004)).toMatch(/^100[.,]04/);
    }
  });

  it('reads both decimal marks in both languages', () => {
    for (const language of ['en', 'de'] as const) {
      speak(language);
      for (const typed of ['12,5', '12.5']) expect(readNumber(typed)).toEqual({ ok: true, value: 12.5 });
      expect(readNumber('1.234,5')).toEqual({ ok: true, value: 1234.5 });
      expect(readNumber("1'234.5")).toEqual({ ok: true, value: 1234.5 });
      expect(readNumber('1.234')).toMatchObject({ ok: false, why: 'ambiguous' });
    }
  });
});

describe('the language to start with', () => {
  /** A browser that asks for these languages, with this address and what was kept before. */
  const browser = (languages: readonly string[], search: string, kept: string | null | Error) => {
    vi.stubGlobal('navigator', { languages });
    vi.stubGlobal('location', { search });
    vi.stubGlobal('localStorage', {
      getItem: () => {
        if (kept instanceof Error) throw kept;
        return kept;
      },
    });
    return startLanguage();
  };

  it('is asked for in the address, else chosen before, else that of the device, else English', () => {
    expect(browser(['en-GB'], '?scene=terrace&lang=de', 'en')).toBe('de');
    expect(browser(['en-GB'], '', 'de')).toBe('de');
    expect(browser(['de-AT', 'en'], '', null)).toBe('de');
    expect(browser(['fr-FR', 'de'], '?lang=xx', 'nonsense')).toBe('de');
    expect(browser(['fr-FR'], '', null)).toBe('en');
  });

  it('does without storage where that is shut off', () => {
    expect(browser(['de'], '', new Error('SecurityError'))).toBe('de');
  });
});
