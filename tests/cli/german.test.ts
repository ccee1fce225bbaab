/** German of all commands: the numbers of the English text, no English words, decimal commas. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { SOLVER } from '../helpers/lightened.ts';
import { bay, buildUp, rect, sceneOf, zone } from '../helpers/scene-builder.ts';
import { dxf, polyline, rectangle } from '../import/dxf-builder.ts';

const fileOf = (name: string) => readFileSync(new URL(`../../scenes/${name}.scene.json`, import.meta.url));
const bytesOf = (value: unknown) => new TextEncoder().encode(typeof value === 'string' ? value : JSON.stringify(value));

/** A bed of 488 kg/m², 4.787 kN/m² (see the test of the worker), on a bay for 4 or for 1 kN/m². */
const bed = (permanentKNm2: number) => {
  const outline = rect(0, 0, 4, 3);
  const layers = [
    { material: 'sheet' },
    { material: 'expanded-clay', thicknessMm: { min: 50, max: 900, nominal: 500 } },
    { material: 'cloth' },
    { material: 'soil', thicknessMm: 150 },
  ];
  return bytesOf(
    sceneOf({
      deck: { bays: [bay('A1', outline, { permanentKNm2 })] },
      buildups: [buildUp('bed', layers)],
      zones: [zone('Z1', outline, 'bed')],
    }),
  );
};
const DRAWING = bytesOf(
  dxf({
    entities: [
      rectangle('Rand', 40_000, 60_000),
      rectangle('Rand', 40_000, 60_000),
      // An angle of two sides: a line, no outline.
      polyline(
        'Felder',
        [
          [0, 0],
          [9000, 0],
          [9000, 9000],
        ],
        false,
      ),
    ],
  }),
);
const FILES: Record<string, () => Uint8Array> = {
  terrace: () => fileOf('terrace'),
  courtyard: () => fileOf('courtyard'),
  'problem-deck': () => fileOf('problem-deck'),
  heavy: () => bed(4),
  hopeless: () => bed(0.5),
  drawing: () => DRAWING,
  pdf: () => bytesOf('%PDF-1.7'),
};
const readFrom = (file: string) => {
  const found = FILES[file];
  if (!found) throw Object.assign(new Error('gone'), { code: 'ENOENT' });
  return found();
};
const call = (...args: string[]) => run(args, readFrom, undefined, { solver: SOLVER });

const isoDays = (told: string) => told.replace(/\b(\d\d)\.(\d\d)\.(\d{4})\b/g, '$3-$2-$1');
/** Numbers of a text in any order; the names in it are the same in both languages. */
const numbersOf = (told: string) =>
  (
    isoDays(told)
      .replace(/(\d),(\d)/g, '$1.$2')
      .match(/\d+(?:\.\d+)?/g) ?? []
  )
    .map(Number)
    .sort((a, b) => a - b);
/** Words that are English alone; texts of scenes are English, so none that stand in a scene. */
const ENGLISH =
  /\b(bays?|zone s|stages?|saturated|permitted|permanent|worst|findings?|highest|least|required|spare|width|asked|straight|heap|deliveries|wheels|membrane|outlets?|overflows?|ponds|litres|blocked|deck of|load plan|build-ups|finished|price|binding|open questions|settled|changes|waits|left out|expected|found)\b/i;

/** Headings and sentences: what stands before the first number of a line and is no row of a scene's own names. */
const headings = (told: string) => told.split('\n').filter((one) => /^\S/.test(one));

describe.each(['terrace', 'courtyard', 'problem-deck'])('check of %s', (file) => {
  it('has German headings and the numbers of the English summary', () => {
    const [english, german] = [call('check', file), call('check', file, '--language', 'de')];
    expect(german.code).toBe(english.code);
    const [tables, germanTables] = [english.out, german.out].map(
      (out) => out.split(/\n(?:Findings|Befunde|No findings|Keine Befunde)/)[0]!,
    );
    expect(germanTables!.split('\n')).toHaveLength(tables!.split('\n').length);
    expect(numbersOf(germanTables!)).toEqual(numbersOf(tables!));
    // The first line is the scene's name.
    for (const heading of headings(german.out).slice(1)) expect(heading).not.toMatch(ENGLISH);
    expect(germanTables).not.toMatch(/\d\.\d+ (?:m|kN|%|mm)/);
  });
});

describe('diff in German', () => {
  it('names groups and results, with decimal commas', () => {
    const { out, code } = call('diff', 'heavy', 'hopeless', '--language', 'de');
    expect(out).toContain('Lastenplan\n  Feld A1: permanentKNm2 bisher 4 kN/m²; jetzt 0,5 kN/m²\n');
    // 4.787 kN/m² on 4 is 119.7 %, on 0.5 it is 957.5 % (4.78728 / 0.5 = 9.57456).
    expect(out).toContain('Feld A1: fertige Anlage 119,7 % → 957,5 %');
    expect(code).toBe(1);
    expect(call('diff', 'heavy', 'heavy', '--language', 'de').out).toContain('Beide Szenen sagen dasselbe.');
  });
});

describe('lighten in German', () => {
  it('tells an answer with the numbers of the English one', () => {
    const [english, german] = [call('lighten', 'heavy'), call('lighten', 'heavy', '--language', 'de')];
    expect(english.out).toContain('kN less');
    expect(german.out).toContain('kN weniger');
    expect(german.out).toContain('Feld A1, ständig: 4,79 → ');
    expect(numbersOf(german.out)).toEqual(numbersOf(english.out));
    expect(german.out).not.toMatch(ENGLISH);
  });

  it('tells what is in the way', () => {
    const { out, code } = call('lighten', 'hopeless', '--language', 'de');
    expect(out).toMatch(/^Feld A1, ständig, Bauzustand substrate \(Substrat\): 4,79 von 0,50 kN\/m²; so leicht wie möglich sind es noch /m);
    expect(code).toBe(1);
  });
});

describe('import in German', () => {
  it('asks, tells changes and drafts in German', () => {
    const { out, err, code } = call('import', 'drawing', '--language', 'de', '--role', 'Rand=outline', '--role', 'Felder=bays');
    // 40 000 by 60 000 units fit no deck in metres: the unit is asked.
    expect(err).toContain('Fehler RING_OPEN');
    expect(code).toBe(2);
    expect(out).toBe('');
    const without = call('import', 'drawing', '--language', 'de', '--role', 'Rand=outline');
    expect(without.out).toContain('unit: Die Zeichnung misst 40000 × 60000');
    expect(without.out).toContain('> mm   Millimeter: 40 × 60 m');
    expect(without.out).toContain('Rand: 1 doppelt gezeichnete Form wurde an ihrer Stelle nur einmal genommen.');
    expect(without.out).not.toMatch(ENGLISH);
    expect(without.out).not.toMatch(/\blayers?\b/);
    expect(without.code).toBe(1);
  });

  it('refuses in German', () => {
    expect(call('import', 'pdf', '--language', 'de').err).toContain('gefunden: ein PDF-Dokument');
    expect(call('import', 'nothing', '--language', 'de').err).toBe('nothing: Diese Datei gibt es nicht. Name und Ordner prüfen.\n');
    expect(call('check', 'drawing', '--language', 'de').err).toContain('gefunden: eine DXF-Zeichnung');
    expect(call('import', 'pdf', '--language', 'fr').err).toContain('--language takes en or de');
  });
});
