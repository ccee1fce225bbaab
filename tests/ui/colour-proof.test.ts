/**
 * Colours for every eye: classes of maps stay apart for deficient colour vision and in grey, text stands off its ground.
 * Limits: ΔE2000 of 10 between neighbours (common practice, our aim); 4.5 : 1 for text, 3 : 1 for marks (WCAG 2.2, 1.4.3 and
 * 1.4.11); 7 : 1 where light falls on the screen (1.4.6).
 */

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { namedStyles } from '../../src/model/class-style.ts';
import { REACH_CLASSES } from '../../src/model/maps.ts';
import { PAPER, UTILISATION_COLOURS } from '../../src/model/palette.ts';
import { QUANTITY_COLOURS } from '../../src/model/ramp.ts';
import { apart, contrast, EYES, luminance } from '../helpers/colour-vision.ts';

const LEAST_APART = 10;

const SCALES = [
  ['quantities', QUANTITY_COLOURS],
  ['utilisation', UTILISATION_COLOURS],
] as const;

describe.each(SCALES)('the scale of %s', (_, colours) => {
  it.each(EYES)('neighbours stay apart: %s', (eye) => {
    for (let i = 1; i < colours.length; i++) {
      const [below, above] = [colours[i - 1] as string, colours[i] as string];
      expect(apart(eye, below, above), `${below} and ${above}`).toBeGreaterThanOrEqual(LEAST_APART);
    }
  });

  it('is darker with more, by a step that a copier keeps', () => {
    for (let i = 1; i < colours.length; i++) {
      // 1.2 : 1 is our own limit; two greys of that ratio print as two greys.
      const ratio = contrast(colours[i - 1] as string, colours[i] as string);
      expect(luminance(colours[i] as string)).toBeLessThan(luminance(colours[i - 1] as string));
      expect(ratio).toBeGreaterThan(1.2);
    }
  });
});

describe('named classes', () => {
  const outlets = Array.from({ length: 16 }, (_, i) => `O${i + 1}`);
  it.each([
    ['reach', namedStyles({ kind: 'reach', names: REACH_CLASSES })],
    ['sixteen catchments', namedStyles({ kind: 'catchment', names: outlets })],
  ] as const)('any two of %s differ in hatch, or in colour to every eye', (_, styles) => {
    // Which classes lie side by side is for the deck to say, so all pairs count.
    for (const [i, one] of styles.entries()) {
      for (const other of styles.slice(i + 1)) {
        if (one.hatch !== other.hatch) continue;
        for (const eye of EYES)
          expect(apart(eye, one.fill, other.fill), `${eye}: ${one.fill} ${other.fill}`).toBeGreaterThanOrEqual(LEAST_APART);
      }
    }
  });

  it('a hatch stands off its ground', () => {
    for (const { fill, line, hatch } of namedStyles({ kind: 'catchment', names: outlets })) {
      if (hatch !== 'none') expect(contrast(fill, line), `${fill} ${line}`).toBeGreaterThanOrEqual(2.5);
    }
  });
});

/** Custom colours of each theme, by name; a theme takes what it does not set from the paper. */
function themes(): Record<string, Record<string, string>> {
  const read = (file: string) => readFileSync(new URL(`../../src/ui/${file}`, import.meta.url), 'utf8');
  const colours = (block: string) =>
    Object.fromEntries([...block.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})\b/gi)].map(([, name, value]) => [name, value])) as Record<
      string,
      string
    >;
  const paper = colours(read('tokens.css'));
  const all: Record<string, Record<string, string>> = { paper };
  for (const [, name = '', block = ''] of read('themes.css').matchAll(/:root\[data-theme="([\w-]+)"\]\s*\{([^}]*)\}/g)) {
    all[name] = { ...paper, ...all[name], ...colours(block) };
  }
  return all;
}

/** Words in the first colour stand on the second somewhere on the page. */
const WRITTEN = [
  ['ink', 'paper'],
  ['ink', 'sheet'],
  ['ink', 'ochre-tint'],
  ['ink-soft', 'paper'],
  ['ink-soft', 'sheet'],
  ['accent', 'sheet'],
  ['accent', 'paper'],
  ['accent', 'accent-tint'],
  ['sheet', 'accent'],
  ['sheet', 'ink'],
  ['sheet', 'clay'],
  ['ink', 'accent-tint'],
  ['ink-soft', 'accent-tint'],
  ['ink', 'clay-tint'],
  ['clay', 'sheet'],
  ['clay', 'clay-tint'],
  ['moss', 'sheet'],
] as const;

describe('text', () => {
  const all = themes();
  it('themes were found', () => {
    expect(Object.keys(all)).toEqual(expect.arrayContaining(['paper', 'projector', 'sun']));
    expect(all.paper?.paper?.toUpperCase()).toBe(PAPER);
  });

  it.each(Object.keys(all))('theme %s', (theme) => {
    const colour = all[theme] as Record<string, string>;
    const least = theme === 'paper' ? 4.5 : 7;
    for (const [text, ground] of WRITTEN) {
      const [front, back] = [colour[text] as string, colour[ground] as string];
      expect(contrast(front, back), `${theme}: ${text} on ${ground}`).toBeGreaterThanOrEqual(least);
    }
    // The outline of what has the focus, and of buttons and fields.
    for (const ground of ['paper', 'sheet']) {
      for (const line of ['accent', 'rule-strong']) {
        expect(contrast(colour[line] as string, colour[ground] as string), `${theme}: ${line} on ${ground}`).toBeGreaterThanOrEqual(3);
      }
    }
  });
});

it('every name of a colour or measure that the style sheets use is given somewhere', () => {
  const files = readdirSync('src/ui', { recursive: true, encoding: 'utf8' }).map((file) => `src/ui/${file}`);
  const textOf = (ending: RegExp) =>
    files
      .filter((file) => ending.test(file))
      .map((file) => readFileSync(file, 'utf8'))
      .join('\n');
  const [styles, parts] = [textOf(/\.css$/), textOf(/\.tsx$/)];
  const given = new Set([...styles.matchAll(/(--[\w-]+)\s*:/g), ...parts.matchAll(/'(--[\w-]+)'/g)].map(([, name]) => name));
  const used = [...styles.matchAll(/var\((--[\w-]+)\)/g)].map(([, name]) => name);
  expect(used.length).toBeGreaterThan(100);
  expect([...new Set(used)].filter((name) => !given.has(name))).toEqual([]);
});
