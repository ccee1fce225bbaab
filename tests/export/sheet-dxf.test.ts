/** DXF read again by an independent reader: version, unit, ASCII layers, closed outlines in metres, umlauts. */

import DxfParser, { type ICircleEntity, type ILwpolylineEntity, type ITextEntity } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import type { PointM } from '../../src/model/scene-file.ts';
import { drawnScene, drawnText } from './drawn-scenes.ts';

const ALONG: PointM[] = [
  [0, 1.5],
  [4, 1.5],
];

function parsed(text: string) {
  const dxf = new DxfParser().parseSync(text)!;
  const of = <T>(type: string, layer?: string) =>
    dxf.entities.filter((entity) => entity.type === type && (layer === undefined || entity.layer === layer)) as unknown as T[];
  const texts = of<ITextEntity>('TEXT');
  return {
    dxf,
    texts,
    rings: (layer: string) => of<ILwpolylineEntity>('LWPOLYLINE', layer),
    circles: (layer: string) => of<ICircleEntity>('CIRCLE', layer),
  };
}

const range = (values: number[]) => [Math.min(...values), Math.max(...values)];
const boxOf = ({ vertices }: ILwpolylineEntity) => [...range(vertices.map(({ x }) => x)), ...range(vertices.map(({ y }) => y))];
const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 6));
const areaM2 = ({ vertices }: ILwpolylineEntity) =>
  Math.abs(
    vertices.reduce((sum, { x, y }, i) => sum + x * vertices[(i + 1) % vertices.length]!.y - vertices[(i + 1) % vertices.length]!.x * y, 0),
  ) / 2;

/** Values of a group code in the order of the file. */
function values(text: string, code: number): string[] {
  const lines = text.split(/\r?\n/);
  return lines.flatMap((line, i) => (i % 2 === 0 && Number(line) === code ? [lines[i + 1]!] : []));
}

describe.each([
  ['section dxf', { line: ALONG, scale: 50 }],
  ['plan dxf', { scale: 100 }],
] as const)('%s', (kind, options) => {
  it('is of 2007 or later, in metres, with names of layers in ASCII', async () => {
    const text = await drawnText(drawnScene(), kind, options);
    const { dxf } = parsed(text);
    // AC1021 is the version of 2007, the first whose text is UTF-8; unit 6 is the metre.
    expect(dxf.header.$ACADVER).toBe('AC1021');
    expect(dxf.header.$INSUNITS).toBe(6);
    const layers = Object.keys(dxf.tables.layer.layers);
    for (const layer of layers) expect(layer).toMatch(/^[A-Z0-9-]+$|^0$|^Defpoints$/i);
    for (const { layer } of dxf.entities) expect(layers).toContain(layer);
  });

  it('keeps umlauts, in text of 2.5 mm on paper', async () => {
    const { texts } = parsed(await drawnText(drawnScene(), kind, { ...options, language: 'de' }));
    const said = texts.map(({ text }) => text);
    expect(said.some((text) => text.includes('Größe Ä & <b>'))).toBe(true);
    expect(said).toContain('Hof “Süd” & <Garten>');
    expect(said.join(' ')).toContain('kein Standsicherheitsnachweis');
    const heights = new Set(texts.map(({ textHeight }) => (textHeight * 1000) / options.scale));
    expect([...heights].map((height) => height.toFixed(6)).sort()).toEqual(['2.500000', '3.500000']);
  });

  it('cannot be broken by a line break in a name', async () => {
    const scene = { ...drawnScene(), name: 'Hof\n0\nEOF' };
    const { texts } = parsed(await drawnText(scene, kind, options));
    expect(texts.map(({ text }) => text)).toContain('Hof 0 EOF');
  });
});

describe('a section as DXF', () => {
  it('has layers as closed outlines: metres along, levels upwards', async () => {
    const { rings } = parsed(await drawnText(drawnScene(), 'section dxf', { line: ALONG }));
    const [slab] = rings('CUT-SLAB');
    expect(slab!.shape).toBe(true);
    expect(boxOf(slab!)).toEqual(near(0, 4, -0.2, 0));
    expect(boxOf(rings('CUT-LIGHT-FILL')[0]!)).toEqual(near(0, 4, 0, 0.1));
    const soil = rings('CUT-SUBSTRATE')[0]!;
    expect(boxOf(soil)).toEqual(near(0, 4, 0.1, 0.5));
    // 4 m × 0.40 m
    expect(areaM2(soil)).toBeCloseTo(1.6, 9);
  });

  it('is true in height, whatever is asked of the paper', async () => {
    const { rings } = parsed(await drawnText(drawnScene(), 'section dxf', { line: ALONG, exaggeration: 5 }));
    expect(boxOf(rings('CUT-SLAB')[0]!)).toEqual(near(0, 4, -0.2, 0));
  });

  it('has hatches with closed boundaries and families of lines', async () => {
    const text = await drawnText(drawnScene(), 'section dxf', { line: ALONG, scale: 50 });
    const hatch = text.slice(text.indexOf('CUT-SLAB-HATCH', text.indexOf('AcDbHatch') - 400));
    expect(hatch).toMatch(/LD-CONCRETE/);
    // Spacing of the concrete hatch, 2.5 mm at 45° on paper at 1:50: offset ∓0.125 · sin 45° m
    const offset = 0.125 * Math.SQRT1_2;
    expect(values(text, 45).map(Number)).toContainEqual(expect.closeTo(-offset, 9));
    expect(values(text, 46).map(Number)).toContainEqual(expect.closeTo(offset, 9));
  });
});

describe('a plan as DXF', () => {
  it('lies where the file has it', async () => {
    const { rings, circles } = parsed(await drawnText(drawnScene(4_500_000, 5_400_000), 'plan dxf'));
    const [outline] = rings('OUTLINE');
    expect(outline!.shape).toBe(true);
    expect(boxOf(outline!)).toEqual(near(4_500_000, 4_500_004, 5_400_000, 5_400_003));
    expect(boxOf(rings('COLUMNS')[0]!)).toEqual(near(4_500_001.8, 4_500_002.2, 5_400_001.35, 5_400_001.65));
    expect(circles('TREES').map(({ center, radius }) => [center.x, center.y, radius])[0]).toEqual(near(4_500_003, 5_400_002, 1));
  });
});
