/** Every number that has a source has a plain name in the sheet of sources. */

import { expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../src/catalogue/rule-limits.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { sourceUses } from '../../src/project/source-uses.ts';
import { NUMBER_NAMES } from '../../src/ui/text/en-words.ts';
import { FILES, TEXTS } from '../scenes/demo-scenes.ts';

/** Rows of the tables of run-off are named by their surface: words, not a key. */
const isPlain = (number: string) => number.includes(' ');

const unnamed = (scene: SceneFile | null) => [
  ...new Set(sourceUses(scene).flatMap(({ number, entry }) => (number in NUMBER_NAMES || isPlain(number) ? [] : [`${entry}: ${number}`]))),
];

it('of the catalogue and the rules', () => {
  expect(sourceUses(null).length).toBeGreaterThan(100);
  expect(unnamed(null)).toEqual([]);
});

it.each(FILES)('of what %s brings itself', (name) => {
  expect(unnamed(JSON.parse(TEXTS.get(name) ?? ''))).toEqual([]);
});

it('of every limit that a scene can replace', () => {
  const limits = Object.fromEntries(Object.keys(DEFAULT_LIMITS).map((key) => [key, key === 'substrateMm' ? { lawn: 200 } : 1]));
  const scene = { limits: { ...limits, dynamicFactor: 1.2 }, deck: { bays: [] }, buildups: [] } as unknown as SceneFile;
  expect(unnamed(scene)).toEqual([]);
});
