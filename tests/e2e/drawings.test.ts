/** Drawings in the real browser: true millimetres, and with its own letters no text on another or beyond the sheet. */

import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exportDrawn } from '../../src/export/drawn-file.ts';
import { sectionSource } from '../../src/export/picture-source.ts';
import type { DrawnKind, DrawnOptions } from '../../src/model/drawn-file.ts';
import { readProject } from '../../src/project/evaluate-project.ts';
import { workerBrowser } from './worker-browser.ts';

/** CSS pixels in a millimetre: 96 to the inch of 25.4 mm. */
const PX_PER_MM = 96 / 25.4;

let browser: Browser;
beforeAll(async () => {
  browser = await workerBrowser();
});
afterAll(() => browser.close());

async function shown(scene: string, kind: DrawnKind, options: DrawnOptions) {
  const { project } = readProject(readFileSync(new URL(`../../scenes/${scene}.scene.json`, import.meta.url), 'utf8'));
  const { bytes } = await exportDrawn(kind, { project: project!, source: sectionSource(project!) }, options);
  const page = await browser.newPage({ viewport: { width: 1600, height: 900 } });
  const svg = new TextDecoder().decode(bytes).replace(/^<\?xml[^>]*>/, '');
  await page.setContent(`<body style="margin:0">${svg}</body>`);
  return page;
}

interface Letters {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Boxes of all texts and of the sheet, in pixels; heights of capitals only, as lines may come close. */
function measured(): { readonly sheet: { readonly right: number; readonly bottom: number }; readonly texts: Letters[] } {
  const svg = document.querySelector('svg')!;
  const { right, bottom } = svg.getBoundingClientRect();
  const texts = [...svg.querySelectorAll('text')].map((element) => {
    const box = element.getBoundingClientRect();
    const size = Number(element.getAttribute('font-size'));
    const baseline = element.getScreenCTM()!.f + Number(element.getAttribute('y')) * element.getScreenCTM()!.d;
    const cap = 0.716 * size * element.getScreenCTM()!.d;
    return { text: element.textContent ?? '', left: box.left, right: box.right, top: baseline - cap, bottom: baseline };
  });
  return { sheet: { right, bottom }, texts };
}

const DRAWN: readonly [string, DrawnKind, DrawnOptions][] = [
  [
    'terrace',
    'section svg',
    {
      language: 'de',
      scale: 20,
      line: [
        [2, 0],
        [2, 6],
      ],
    },
  ],
  [
    'courtyard',
    'section svg',
    {
      language: 'de',
      scale: 50,
      line: [
        [40.2, 0],
        [40.2, 38],
      ],
    },
  ],
  [
    'courtyard',
    'section svg',
    {
      language: 'en',
      scale: 100,
      line: [
        [0, 2],
        [20.9, 19],
        [20.9, 38],
      ],
    },
  ],
  [
    'problem-deck',
    'section svg',
    {
      language: 'en',
      scale: 50,
      line: [
        [1, 0],
        [19, 14],
      ],
    },
  ],
  ['courtyard', 'plan svg', { language: 'de', scale: 100 }],
  ['problem-deck', 'plan svg', { language: 'en', scale: 100 }],
];

describe('letters on drawings', () => {
  it.each(DRAWN)('%s, %s %j: apart, and on the sheet', async (scene, kind, options) => {
    const page = await shown(scene, kind, options);
    const { sheet, texts } = await page.evaluate(measured);
    expect(texts.length).toBeGreaterThan(20);
    const collisions = texts.flatMap((a, i) =>
      texts
        .slice(i + 1)
        .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
        .map((b) => `${a.text} | ${b.text}`),
    );
    expect(collisions).toEqual([]);
    for (const { text, left, right, top, bottom } of texts) {
      expect(left >= 0 && top >= 0 && right <= sheet.right && bottom <= sheet.bottom, text).toBe(true);
    }
    await page.close();
  });
});

describe('scale', () => {
  it('45 m at 1:100 are 450 mm', async () => {
    const page = await shown('courtyard', 'plan svg', { language: 'en', scale: 100 });
    const widthPx = await page.evaluate(() => {
      const box = (document.querySelector('g.OUTLINE path') as SVGPathElement).getBBox();
      const matrix = (document.querySelector('svg') as SVGSVGElement).getScreenCTM()!;
      return box.width * matrix.a;
    });
    expect(widthPx / PX_PER_MM).toBeCloseTo(450, 1);
    await page.close();
  });
});
