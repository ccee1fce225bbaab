/** Every message on a scene file has its German: all faults of the tests, told in both languages. */

import { describe, expect, it } from 'vitest';
import type { Issue } from '../../src/model/issue.ts';
import { issueIn } from '../../src/scene/issue-language.ts';
import { parseScene } from '../../src/scene/parse-scene.ts';
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
    expect(issueIn(ISSUES[0] as Issue, 'en')).toBe(ISSUES[0]);
  });
});
