/** Each fault gives its own message: code, place, words, and no other message beside it. */

import { describe, expect, it } from 'vitest';
import { issueLine } from '../../src/model/issue.ts';
import { SCENE_ISSUE_CODES } from '../../src/scene/issue-codes.ts';
import { parseScene } from '../../src/scene/parse-scene.ts';
import { SCENE_CASES } from './scene-cases.ts';
import { fullScene, KNOWN } from './scenes.ts';
import { TEXT_CASES } from './text-cases.ts';

describe('texts that are no scene', () => {
  it.each(TEXT_CASES.map((one) => [one.code, one.text.slice(0, 40), one] as const))('%s: %j', (code, _, { text, path, line, says }) => {
    const { scene, issues } = parseScene(text, KNOWN);
    expect(scene).toBeNull();
    expect(issues).toHaveLength(1);
    expect(issues[0]).toMatchObject({ code, level: 'error' });
    if (path !== undefined) expect(issues[0]?.path).toBe(path);
    if (line !== undefined) expect(issues[0]?.line).toBe(line);
    for (const words of says) expect(issues.map(issueLine).join()).toContain(words);
  });

  it('DUPLICATE_KEY names both lines', () => {
    const text = JSON.stringify(fullScene()).replace('"name":', '"grid":{},\n"name":').replace('"about"', '\n"about"');
    const { scene, issues } = parseScene(text, KNOWN);
    expect(scene).toBeNull();
    expect(issues).toHaveLength(1);
    expect(issues[0]).toMatchObject({ code: 'DUPLICATE_KEY', path: 'grid', line: 3 });
    expect(issues[0]?.got).toContain('first in line 1');
  });
});

describe('faults in a scene', () => {
  it.each(SCENE_CASES.map((one) => [one.code, one.fault, one] as const))('%s: %s', (code, _, { put, path, says, level }) => {
    const broken = fullScene();
    put(broken);
    const { scene, issues } = parseScene(JSON.stringify(broken), KNOWN);
    const lines = issues.map(issueLine);
    const found = issues.filter((issue) => issue.code === code && issue.path === path);
    expect(found, lines.join('\n')).toHaveLength(1);
    expect(found[0]?.level).toBe(level ?? 'error');
    expect(scene === null).toBe(level === undefined);
    for (const words of says) expect(found.map(issueLine).join()).toContain(words);
    expect(
      issues.filter((issue) => issue.code !== code && issue.code !== 'MORE_ISSUES'),
      lines.join('\n'),
    ).toEqual([]);
  });
});

describe('words', () => {
  const everything = () => [
    ...TEXT_CASES.map(({ text }) => text),
    ...SCENE_CASES.map(({ put }) => {
      const scene = fullScene();
      put(scene);
      return JSON.stringify(scene);
    }),
  ];

  it('every message is whole: something found, something expected, a sentence to act on', () => {
    for (const text of everything()) {
      for (const { got, expected, mend } of parseScene(text, KNOWN).issues) {
        expect(got).not.toMatch(/^\s*$|undefined \S|\[object/);
        expect(expected).not.toMatch(/^\s*$|undefined|\[object|Something else/i);
        expect(mend).toMatch(/^[A-Z].*[.?]$/);
        expect((got + expected + mend).length).toBeLessThan(900);
      }
    }
  });

  it('every code of the list has a case, except the counter of further messages', () => {
    const provoked = new Set<string>([
      'DUPLICATE_KEY',
      'MORE_ISSUES',
      'NOT_FINITE',
      ...TEXT_CASES.map(({ code }) => code),
      ...SCENE_CASES.map(({ code }) => code),
    ]);
    expect(Object.keys(SCENE_ISSUE_CODES).filter((code) => !provoked.has(code))).toEqual([]);
  });

  it('NOT_FINITE: JSON can write numbers that are too large', () => {
    const text = JSON.stringify(fullScene()).replace('"massKg":2400', '"massKg":1e999');
    expect(parseScene(text, KNOWN).issues).toMatchObject([{ code: 'NOT_FINITE', path: 'objects[0].massKg', got: 'Infinity' }]);
  });
});
