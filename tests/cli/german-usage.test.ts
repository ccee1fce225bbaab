/** Help and refusals of calls in German, where the call asks for German; the flags are those of the English help. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';

const call = (...args: string[]) => run(args, () => new Uint8Array());

const flagsOf = (help: string) => [...new Set(help.match(/--[a-z]+/g))].sort();

it('helps in German, with the commands and flags of the English help', () => {
  const [english, german] = [call('check', '--help'), call('check', '--help', '--language', 'de')];
  expect(german.code).toBe(0);
  expect(english.out).toMatch(/^Use: /);
  expect(german.out).toMatch(/^Aufruf: /);
  expect(flagsOf(german.out)).toEqual(flagsOf(english.out));
  expect(german.out.split('\n')).toHaveLength(english.out.split('\n').length);
  expect(german.out).not.toMatch(/\b(the|and|file|of the|where left out|exit code)\b/);
  expect(call('--help', '--language=de').out).toBe(german.out);
});

describe.each([
  ['no such command', ['chek', 'a'], 'Einen Befehl „chek“ gibt es nicht; es gibt: check, '],
  ['no such option', ['check', 'a', '--jsn'], 'Eine Option „--jsn“ gibt es nicht.'],
  ['an option of another command', ['check', 'a', '--xlsx', 'b'], '„check“ hat keine Option „--xlsx“.'],
  ['a value where none belongs', ['check', 'a', '--json=x'], '„--json“ verlangt einen Wert oder steht allein'],
  ['no file', ['check'], 'Erwartet wurde eine Szene als Datei, angegeben ist keine.'],
  ['one file of two', ['diff', 'a'], 'zuerst die frühere, dann die spätere; angegeben sind 1.'],
  ['a cell too large', ['check', 'a', '--cell', '9'], '--cell nimmt Meter von 0.05 bis 2'],
  ['no line', ['export', 'a', '--section', '1', '--svg', 'b'], '--section nimmt x,y von zwei oder mehr Punkten'],
  ['no aim', ['lighten', 'a', '--by', 'x'], '--by nimmt eines von: cost, weight, change; gefunden „x“.'],
  ['no role', ['import', 'a', '--scene', 'b'], 'Was ist der Umriss der Decke?'],
] as const)('%s', (_, args, says) => {
  it('is refused in German, and in English without the flag', () => {
    const { out, err, code } = call(...args, '--language', 'de');
    expect([out, code]).toEqual(['', 2]);
    expect(err).toContain(says);
    expect(err).toContain('\n\nAufruf: ');
    expect(call(...args).err).toContain('\n\nUse: ');
    expect(call(...args).err).not.toContain(says);
  });
});

it('tells in German which stages there are', () => {
  const scene = readFileSync(new URL('../../scenes/courtyard.scene.json', import.meta.url));
  const args = ['export', 'a', '--section', '1,4,9,4', '--svg', 'b', '--stage', 'S99', '--language', 'de'];
  expect(run(args, () => scene).err).toContain('Einen Bauzustand „S99“ gibt es nicht; es gibt: S1, ');
});
