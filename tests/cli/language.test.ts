/** The command line in German: findings, names, sources and messages. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';

const SCENE = readFileSync(new URL('../../scenes/problem-deck.scene.json', import.meta.url));
const call = (...args: string[]) => run(args, () => SCENE);
const reportOf = (...args: string[]) => JSON.parse(call('check', 'a.scene.json', '--json', ...args).out);

describe('check --language de', () => {
  it('tells findings in German with the numbers of the English report', () => {
    const english = reportOf();
    const german = reportOf('--language', 'de');
    expect(reportOf('--language', 'en')).toEqual(english);
    expect(german.bays).toEqual(english.bays);
    expect(german.zones).toEqual(english.zones);
    expect(german.findings).toHaveLength(english.findings.length);
    expect(german.findings[0].says).toMatch(/^Feld .* zulässig sind /);
    expect(call('check', 'a.scene.json', '--language', 'de').out).toContain('den Tragwerksplaner fragen');
  });

  it('tells what is wrong with a file in German', () => {
    const { err, code } = run(['check', 'a.scene.json', '--language', 'de'], () =>
      new TextEncoder().encode('{ "format": "loamdeck-scene", }'),
    );
    expect(code).toBe(2);
    expect(err).toContain('Fehler JSON_TRAILING_COMMA');
    expect(err).toContain('Das Komma löschen.');
  });
});

it('lists sources in German', () => {
  const { out, code } = call('sources', '--language', 'de');
  expect(code).toBe(0);
  expect(out).toContain('Aus dem Gedächtnis: nicht bestätigt (');
  expect(out).not.toMatch(/\b(numbers|used in|our value|guideline)\b/);
});

it.each(['check', 'export', 'sources'])('%s refuses other languages', (command) => {
  expect(call(command, 'a.scene.json', '--language', 'fr')).toMatchObject({ code: 2, out: '' });
});
