/** Drawings as SVG, read back from their text: millimetres at the scale stated, areas of thickness times length, no text on another. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sectionSource } from '../../src/export/picture-source.ts';
import { planSheet } from '../../src/export/plan-sheet.ts';
import { sectionSheet } from '../../src/export/section-sheet.ts';
import { overlaps, type Sheet, textBox } from '../../src/export/sheet.ts';
import { drawSection } from '../../src/mesh/section-drawing.ts';
import type { PointM } from '../../src/model/scene-file.ts';
import { readProject } from '../../src/project/evaluate-project.ts';
import { drawnScene, drawnText } from './drawn-scenes.ts';

const ALONG: PointM[] = [
  [0, 1.5],
  [4, 1.5],
];

/** Paths of one layer: rings of points. */
function ringsOf(svg: string, layer: string): [number, number][][] {
  const groups = [...svg.matchAll(new RegExp(`<g class="${layer}">(.*?)</g>`, 'gs'))].map(([, inside]) => inside).join('');
  return [...groups.matchAll(/ d="M([^"]*?)Z?"/g)].map(([, path]) =>
    path!.split('L').map((point) => point.split(' ').map(Number) as [number, number]),
  );
}
const extent = (values: number[]) => Math.max(...values) - Math.min(...values);
/** Shoelace. */
const areaMm2 = (ring: [number, number][]) =>
  Math.abs(ring.reduce((sum, [x, y], i) => sum + x * ring[(i + 1) % ring.length]![1] - ring[(i + 1) % ring.length]![0] * y, 0)) / 2;
/** The rings of a layer besides the swatch of the legend, 9 mm × 4 mm. */
const drawnRings = (svg: string, layer: string) => ringsOf(svg, layer).filter((ring) => Math.abs(areaMm2(ring) - 36) > 1e-6);

describe('a section as SVG', () => {
  it.each([20, 25, 50, 100])('is drawn at 1:%i, in millimetres', async (scale) => {
    const svg = await drawnText(drawnScene(), 'section svg', { line: ALONG, scale });
    const [, width, height, box] = /<svg [^>]*width="([\d.]+)mm" height="([\d.]+)mm" viewBox="([^"]*)"/.exec(svg)!;
    expect(box!.split(' ').slice(2)).toEqual([width, height]);
    const slab = drawnRings(svg, 'CUT-SLAB');
    expect(slab).toHaveLength(1);
    expect(extent(slab[0]!.map(([x]) => x))).toBeCloseTo(4000 / scale, 2);
    expect(extent(slab[0]!.map(([, y]) => y))).toBeCloseTo(200 / scale, 2);
    // 4 m × 0.40 m and 4 m × 0.10 m
    const toMm2 = 1e6 / scale ** 2;
    expect(areaMm2(drawnRings(svg, 'CUT-SUBSTRATE')[0]!) / toMm2).toBeCloseTo(1.6, 3);
    expect(areaMm2(drawnRings(svg, 'CUT-LIGHT-FILL')[0]!) / toMm2).toBeCloseTo(0.4, 3);
    expect(svg).toContain(`>Scale 1 : ${scale}, heights true to scale<`);
  });

  it('draws heights larger where asked, lengths as before, and says so', async () => {
    const svg = await drawnText(drawnScene(), 'section svg', { line: ALONG, scale: 100, exaggeration: 2.5 });
    const slab = drawnRings(svg, 'CUT-SLAB')[0]!;
    expect(extent(slab.map(([x]) => x))).toBeCloseTo(40, 2);
    expect(extent(slab.map(([, y]) => y))).toBeCloseTo(2 * 2.5, 2);
    expect(svg).toContain('>Scale 1 : 100, heights × 2.5 (1 : 40)<');
  });

  it('says whose loads these are, and what it is not', async () => {
    const svg = await drawnText(drawnScene(), 'section svg', { line: ALONG, date: '2026-11-25', name: 'B–B' });
    for (const text of [
      'Section B–B, finished garden',
      'Date 2026-11-25',
      'Permitted loads: load plan, rev. A, 2026-01-05',
      'Bay A1',
      'permanent 12.0',
      'imposed 5.0',
      'membrane up to +0.650',
      'Not given, for the picture only: height of trees',
      // 0.65 − 0.50 m
      'mm above finished',
    ]) {
      expect(svg).toContain(`>${text}<`);
    }
    expect(svg.replaceAll(/<[^>]*>\n?/g, ' ').replaceAll(/\s+/g, ' ')).toContain(
      'Compares entered loads with entered limits; not a structural check.',
    );
    expect(svg).toMatch(/>150<\/text>\s*<text[^>]*>mm above finished</);
  });

  it('tells the membrane where it begins, ends and turns', async () => {
    // A valley at x = 1 m: 0.02 at x = 0, 0.00 there, 0.06 at x = 4; nowhere else a turn.
    const levels = {
      spots: [
        [0, 0, 0.02],
        [0, 3, 0.02],
        [4, 0, 0.06],
        [4, 3, 0.06],
      ],
      breaklines: [
        [
          [1, 0, 0],
          [1, 3, 0],
        ],
      ],
    } as const;
    const scene = drawnScene();
    const svg = await drawnText({ ...scene, deck: { ...scene.deck, levels } }, 'section svg', { line: ALONG, scale: 20 });
    const row = [...svg.matchAll(/<text x="([-\d.]+)" y="([-\d.]+)"[^>]*text-anchor="middle"[^>]*>([+±−][\d.]+)</g)];
    expect(row.map(([, , , text]) => text)).toEqual(['+0.020', '±0.000', '+0.060']);
    expect(new Set(row.map(([, , y]) => y)).size).toBe(1);
    // 1:20: 0, 50 and 200 mm along
    expect(row.map(([, x]) => Number(x))).toEqual([0, 50, 200]);
  });

  it('speaks German, with decimal commas', async () => {
    const svg = await drawnText(drawnScene(), 'section svg', { line: ALONG, language: 'de' });
    for (const text of ['Schnitt A–A, fertige Anlage', 'Feld A1', 'ständig 12,0', 'Oberkante +0,500', 'Abdichtung ±0,000', '4,00']) {
      expect(svg).toContain(`>${text}<`);
    }
    expect(svg).toContain('Standsicherheitsnachweis');
  });

  it('escapes every text and loads nothing', async () => {
    const svg = await drawnText(drawnScene(), 'section svg', { line: ALONG, name: '<script>"&' });
    expect(svg).toContain('Größe Ä &amp; &lt;b&gt;');
    expect(svg).toContain('&lt;script&gt;&quot;&amp;');
    expect(svg).not.toMatch(/<script|<b>|href|url\((?!#)/);
  });

  it('beside the deck says so', async () => {
    const svg = await drawnText(drawnScene(), 'section svg', {
      line: [
        [10, 10],
        [12, 10],
      ],
    });
    expect(svg).toContain('The line does not meet the deck.');
  });

  it('refuses what is no section', async () => {
    await expect(drawnText(drawnScene(), 'section svg')).rejects.toThrow(RangeError);
    await expect(drawnText(drawnScene(), 'section svg', { line: ALONG, scale: 0 })).rejects.toThrow(RangeError);
  });
});

describe('a plan as SVG', () => {
  it('is drawn to scale, wherever on earth', async () => {
    for (const scene of [drawnScene(), drawnScene(4_500_000, 5_400_000)]) {
      const svg = await drawnText(scene, 'plan svg', { scale: 50 });
      const [outline] = ringsOf(svg, 'OUTLINE');
      expect([extent(outline!.map(([x]) => x)), extent(outline!.map(([, y]) => y))]).toEqual([80, 60]);
      // column 0.4 m × 0.3 m
      const column = ringsOf(svg, 'COLUMNS')[0]!;
      expect([extent(column.map(([x]) => x)), extent(column.map(([, y]) => y))].map((at) => at.toFixed(2))).toEqual(['8.00', '6.00']);
      // crown of 2 m
      expect(svg).toMatch(/<circle [^>]*r="20"/);
    }
  });

  it('writes one number into each bay, and marks a section', async () => {
    const svg = await drawnText(drawnScene(), 'plan svg', {
      bayTexts: new Map([['A1', '61 %']]),
      bayTextsAre: 'Use of the permanent load',
      line: ALONG,
      name: 'C–C',
    });
    expect(svg).toContain('>61 %<');
    expect(svg).toContain('>Use of the permanent load<');
    expect(svg.match(/>C</g)).toHaveLength(2);
    // Along +x the section looks to the left, towards +y: upwards on paper.
    const line = ringsOf(svg, 'SECTION').find((ring) => ring.length === 2 && ring[0]![0] === ring[1]![0])!;
    expect(line[1]![1]).toBeLessThan(line[0]![1]);
  });
});

/** Texts that stand on another one. */
function collisions({ shapes }: Sheet): string[] {
  const texts = shapes.flatMap((shape) => (shape.shape === 'text' ? [{ text: shape.text, box: textBox(shape) }] : []));
  return texts.flatMap(({ text, box }, i) =>
    texts.slice(i + 1).flatMap((other) => (overlaps(box, other.box) ? [`${text} | ${other.text}`] : [])),
  );
}

const CUTS: readonly [string, PointM[]][] = [
  [
    'terrace',
    [
      [2, 0],
      [2, 6],
    ],
  ],
  [
    'terrace',
    [
      [0, 1.5],
      [9, 3.5],
    ],
  ],
  [
    'courtyard',
    [
      [40.2, 0],
      [40.2, 38],
    ],
  ],
  [
    'courtyard',
    [
      [0, 2],
      [20.9, 19],
      [20.9, 38],
    ],
  ],
  [
    'problem-deck',
    [
      [0, 4],
      [20, 4],
    ],
  ],
  [
    'problem-deck',
    [
      [1, 0],
      [19, 14],
    ],
  ],
];

describe('no text stands on another', () => {
  it.each(CUTS)('%s along %j', (name, line) => {
    const { project } = readProject(readFileSync(new URL(`../../scenes/${name}.scene.json`, import.meta.url), 'utf8'));
    const source = sectionSource(project!);
    for (const language of ['en', 'de'] as const) {
      const common = { language, date: '2026-11-25', basis: ['load plan, rev. C'] };
      for (const stage of [null, 2]) {
        for (const scale of [20, 50, 100]) {
          const drawing = drawSection(source, line, stage);
          expect(collisions(sectionSheet(drawing, { ...common, scale, name: 'A–A', exaggeration: 1 }))).toEqual([]);
        }
      }
      const bayTexts = new Map(source.input.bays.map(({ id }) => [id, '100.0 %']));
      expect(collisions(planSheet(source.scene, source.input, { ...common, scale: 100, bayTexts }))).toEqual([]);
    }
  });
});
