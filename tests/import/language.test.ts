/** German of everything said on files that are read: each sentence by sample values, and over the corpus of bad inputs. */

import { describe, expect, it } from 'vitest';
import { draftScene } from '../../src/import/draft-scene.ts';
import { importIn, importIssueIn } from '../../src/import/import-language.ts';
import { readingSteps } from '../../src/import/read-drawing.ts';
import { runAtOnce } from '../../src/import/steps.ts';
import { ISSUES_EN } from '../../src/import/words/en-issues.ts';
import { MENDS_EN } from '../../src/import/words/en-mends.ts';
import { CHOICES_EN, QUESTIONS_EN } from '../../src/import/words/en-questions.ts';
import { tell, type Values } from '../../src/import/words/import-words.ts';
import { kindCount } from '../../src/import/words/kind-words.ts';
import type { LayerRole, LayerRoles } from '../../src/model/drawing.ts';
import { issueLineIn } from '../../src/model/issue.ts';
import { DRAWING_ROWS } from './corpus/drawing-rows.ts';
import { KIND_ROWS } from './corpus/kind-rows.ts';
import { TABLE_ROWS } from './corpus/table-rows.ts';

/** Something under every name that a sentence fills in; numbers that no sentence holds of itself. */
const SAMPLE: Values = {
  ...{ lines: 1013, mostLines: 1019, mostMm: 7.25 },
  ...{ advice: 'asCsv', after: 913, answer: 'A', areaM2: 0.917, at: 919, axes: 'yx', before: 929, block: 'B', cells: 937, choices: 'C' },
  ...{ columns: 941, count: 947, encoding: 'utf-8', endX: 953.25, endY: 967.25, errorMm: 971, farM: 977, file: 'F', found: 'G' },
  ...{ from: 1.25, fromM: 2.25, gapMm: 983, guess: 'cm', height: 3.25, heightM: 4.25, highCount: 991, highFrom: 5.25, highTo: 6.25 },
  ...{
    how: 'touch',
    kept: 'lower',
    kind: 'dxf',
    kinds: '7\tARC tilted',
    large: '1234',
    latitude: 52.5,
    layer: 'L',
    layers: 'M',
    line: 997,
  },
  ...{ longitude: 13.25, lowCount: 1009, lowFrom: 7.25, lowTo: 8.25, mark: ',', most: 1013, mostM: 9.25, name: 'N', number: '1.234' },
  ...{ of: 1019, open: 1021, problem: 'P', rings: 1031, role: 'R', roles: 'S', root: 'T', row: 1033, said: 'ft', sample: 'U' },
  ...{ separator: ';', sizeMB: 1039, slabs: 1049, small: '1.234', surface: 'V', to: 10.25, toM: 11.25, toleranceMm: 1051, unit: 'mm' },
  ...{
    areas: 577,
    below: 587,
    eastM: 17.25,
    levelM: 18.25,
    mostDeg: 19.5,
    northM: 20.25,
    offered: 593,
    recesses: 599,
    insideMm: 607,
    schema: 'IFC4X3',
  },
  ...{ scale: 0.9375, tiltDeg: 22.25, unitM: 23.25, xM: 24.25, yM: 25.25, zM: 26.25 },
  ...{ storey: 'W', through: 601, turnDeg: 21.25, way: 'faces' },
  ...{ wanted: 'lines', what: 'pdf', width: 12.25, widthM: 13.75, x: 14.25, y: 15.25 },
};
const PARTS = { questions: QUESTIONS_EN, choices: CHOICES_EN, mends: MENDS_EN, issues: ISSUES_EN } as const;
const ALL = Object.entries(PARTS).flatMap(([part, words]) => Object.keys(words).map((code) => [part as keyof typeof PARTS, code] as const));

const textOf = (told: unknown) => (typeof told === 'string' ? told : Object.values(told as object).join(' | '));
/** Numbers of a sentence in any order, decimal commas as points. */
const numbersOf = (text: string) => (text.replace(/(\d),(\d)/g, '$1.$2').match(/\d+(?:\.\d+)?/g) ?? []).map(Number).sort((a, b) => a - b);
const ENGLISH = /\b(the|and|were|with|which|that|is|are|not|of|file|level|point|line|outline|drawing|left|out|read|at most)\b/i;
/** What comes from the file stands in quotation marks or behind a colon. */
const own = (text: string) => text.replace(/„[^“]*“|"[^"]*"|XML[^|]*/g, '');

describe.each(ALL)('%s %s', (part, code) => {
  const values = code === 'DATES' || code === 'DATES_NUMBER' ? { ...SAMPLE, number: 22.5 } : SAMPLE;
  const [english, german] = (['en', 'de'] as const).map((language) => textOf(tell(part, code, values, language)));

  it('is German, whole, and holds the numbers of the English one', () => {
    expect(german).not.toMatch(/undefined|NaN|\[object/);
    expect(english).not.toMatch(/undefined|NaN|\[object/);
    expect(own(german)).not.toMatch(ENGLISH);
    expect(numbersOf(german)).toEqual(numbersOf(english));
    if (code !== 'ENCODING_AS' && code !== 'COLUMNS') expect(german).not.toBe(english);
  });
});

describe('the corpus of bad inputs', () => {
  const rows = [...DRAWING_ROWS, ...TABLE_ROWS, ...KIND_ROWS].filter(({ by, what }) => by === 'import' && !/100 ?000|million/.test(what));
  const readings = rows.map(({ file, answers = {}, around, roles }) => {
    const content = file();
    const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
    const result = runAtOnce(readingSteps('bad.file', bytes, { answers, ...(around === undefined ? {} : { around }) }));
    return { result, roles: (roles ?? {}) as LayerRoles };
  });

  it('is told in German and back without loss', () => {
    for (const { result } of readings) {
      const german = importIn(result, 'de');
      expect(importIn(german, 'en')).toEqual(result);
      expect({ ...german, questions: [], mends: [], issues: [] }).toEqual({ ...result, questions: [], mends: [], issues: [] });
      for (const issue of german.issues) expect(own(issueLineIn(issue, 'de'))).not.toMatch(ENGLISH);
      for (const { says } of [...german.mends, ...german.questions]) expect(own(says)).not.toMatch(ENGLISH);
    }
  });

  it('gives drafts with a German history and German messages', () => {
    // Where a row gives no roles, each layer gets another one, so that every kind of shape meets a role it does not fit.
    const any: readonly LayerRole[] = ['outline', 'bays', 'axes', 'levels', 'edges', 'columns'];
    const drafts = readings.filter(({ result }) => result.box !== null);
    expect(drafts.length).toBeGreaterThan(20);
    for (const [i, { result, roles: given }] of drafts.entries()) {
      const some = Object.fromEntries(result.layers.map(({ name }, k) => [name, any[(i + k) % any.length]]));
      const roles = Object.keys(given).length > 0 ? given : (some as LayerRoles);
      const [english, german] = [draftScene(result, roles), draftScene(result, roles, { language: 'de' })];
      const wordless = (draft: typeof english) => ({
        ...draft,
        history: [],
        issues: [],
        scene: draft.scene && { ...draft.scene, history: [], name: '', buildups: [] },
      });
      expect(wordless(german)).toEqual(wordless(english));
      expect(german.history[0]).toMatch(/^Gelesen aus „bad\.file“/);
      for (const line of german.history.slice(1)) expect(own(line)).not.toMatch(ENGLISH);
      expect(german.issues.map((issue) => importIssueIn(issue, 'en'))).toEqual(english.issues);
    }
  });

  it('counts what was left out in German words', () => {
    const kinds = new Set(
      readings.flatMap(({ result }) => result.layers.flatMap(({ used, ignored }) => [...Object.keys(used), ...Object.keys(ignored)])),
    );
    expect(kindCount('SPLINE given by points to pass through', 2, 'de')).toBe('2 freie Kurven durch Stützpunkte gegeben');
    expect(kindCount('ARC in a block', 1, 'de')).toBe('1 Bogen in einem Block');
    for (const kind of kinds) expect(own(kindCount(kind, 2, 'de').replace(/^2 × [A-Z0-9_]+/, ''))).not.toMatch(ENGLISH);
  });

  it('has words for every kind a reader reads, in singular and plural, thousands grouped', () => {
    const told = (language: 'en' | 'de') =>
      readings.flatMap(({ result }) => result.layers.flatMap(({ used }) => Object.keys(used).map((kind) => kindCount(kind, 2, language))));
    expect(told('en').length).toBeGreaterThan(40);
    // "2 × NAME" is the way out for names that have no words.
    for (const says of [...told('en'), ...told('de')]) expect(says).toMatch(/^2 [^×]/);
    expect(kindCount('LWPOLYLINE closed', 1, 'en')).toBe('1 closed polyline');
    expect(kindCount('POLYLINE closed in a block', 1200, 'en')).toBe('1,200 closed polylines in a block');
    expect(kindCount('LWPOLYLINE closed', 12345678, 'de')).toBe('12.345.678 geschlossene Polylinien');
    expect(kindCount('LWPOLYLINE', 999, 'de')).toBe('999 Polylinien');
    expect(kindCount('FOO', 1000, 'de')).toBe('1.000 × FOO');
  });
});
