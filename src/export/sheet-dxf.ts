/** A sheet as DXF in metres: text in UTF-8 (version 2007), unit declared, names of layers in plain ASCII. */

import { type DxfBlock, DxfWriter, LWPolylineFlags, point2d, point3d, TextHorizontalAlignment, TrueColor, Units } from '@tarikjabiri/dxf';
import { ROLE_STYLE } from '../model/palette.ts';
import { RegionHatch } from './dxf-hatch.ts';
import { DXF_HATCHES } from './dxf-hatches.ts';
import type { Area, Pen, Point, Shape, Sheet, Text } from './sheet.ts';

const FONT = 'arial.ttf';
const WHITE = '#FFFFFF';
const METRIC = 1;

/**
 * Writes a sheet.
 * @param sheet - shapes; lengths and heights must be drawn to the same scale
 * @returns text of the file
 */
export function sheetDxf(sheet: Sheet): string {
  const writer = new DxfWriter();
  writer.setUnits(Units.Meters);
  writer.setVariable('$MEASUREMENT', { 70: METRIC });
  writer.setVariable('$LASTSAVEDBY', { 1: 'Loamdeck' });
  writer.document.styleStandard.fontFileName = FONT;
  const pens = new Pens(writer, sheet.scale / 1000);
  const out = new Model(writer.modelSpace, sheet, pens);
  for (const shape of sheet.shapes) {
    pens.layer(shape);
    out.add(shape);
  }
  return writer.stringify();
}

const colourOf = (hex: string) => String(TrueColor.fromHex(hex));

/** Layers and types of lines, each made when first used. */
class Pens {
  private readonly types = new Map<string, string>();

  constructor(
    private readonly writer: DxfWriter,
    private readonly mPerMm: number,
  ) {}

  layer(shape: Shape): void {
    if (this.writer.layer(shape.layer) !== undefined) return;
    this.writer.addLayer(shape.layer, 7, 'Continuous').trueColor = TrueColor.fromHex(inkOf(shape));
  }

  options(layerName: string, pen: Pen): { layerName: string; trueColor: string; lineType: string } {
    return { layerName, trueColor: colourOf(pen.colour), lineType: this.lineType(pen.dashMm) };
  }

  private lineType(dashMm: readonly number[] | undefined): string {
    if (dashMm === undefined) return 'Continuous';
    const key = dashMm.join(' ');
    const known = this.types.get(key);
    if (known !== undefined) return known;
    const name = `DASHED-${this.types.size + 1}`;
    const elements = dashMm.map((lengthMm, i) => (i % 2 === 0 ? 1 : -1) * lengthMm * this.mPerMm);
    this.writer.addLType(name, 'strokes and gaps', elements);
    this.types.set(key, name);
    return name;
  }
}

function inkOf(shape: Shape): string {
  if (shape.shape === 'text') return shape.colour;
  return shape.pen?.colour ?? (shape.shape === 'line' ? '#000000' : (shape.fill ?? '#000000'));
}

/** A line break would end the value, and two percent signs begin a code. */
function plain(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must go
  return text.replace(/[\u0000-\u001F\u007F]+/g, ' ').replaceAll('%%', '% %');
}

/** Shapes on their way into the model. */
class Model {
  private readonly mPerMm: number;

  constructor(
    private readonly block: DxfBlock,
    private readonly sheet: Sheet,
    private readonly pens: Pens,
  ) {
    this.mPerMm = sheet.scale / 1000;
  }

  add(shape: Shape): void {
    switch (shape.shape) {
      case 'area':
        this.addArea(shape);
        break;
      case 'line':
        this.addPolyline(shape.layer, shape.points, shape.closed, shape.pen);
        break;
      case 'circle': {
        const [x, y] = this.metres(shape.at);
        const pen = shape.pen ?? { widthMm: 0, colour: shape.fill ?? '#000000' };
        this.block.addCircle(point3d(x, y), shape.radiusMm * this.mPerMm, this.pens.options(shape.layer, pen));
        break;
      }
      case 'text':
        this.addText(shape);
        break;
    }
  }

  private metres([x, y]: Point): [number, number] {
    const [originX, originY] = this.sheet.originM;
    return [originX + x * this.mPerMm, originY - y * this.mPerMm];
  }

  private addPolyline(layer: string, points: readonly Point[], closed: boolean, pen: Pen): void {
    const vertices = points.map((point) => ({ point: point2d(...this.metres(point)) }));
    const flags = closed ? LWPolylineFlags.Closed : LWPolylineFlags.None;
    this.block.addLWPolyline(vertices, { ...this.pens.options(layer, pen), flags });
  }

  private addArea({ layer, rings, fill, hatch, pen }: Area): void {
    const style = hatch === null ? null : ROLE_STYLE[hatch];
    // Hatch first: programs draw in this order, and the outline must stay to be seen.
    if (style !== null || (fill !== null && fill !== WHITE)) {
      const families = style === null ? null : DXF_HATCHES[style.pattern];
      const colour = style === null ? (fill as string) : families === null ? style.fill : style.line;
      const name = families === null ? 'SOLID' : `LD-${style?.pattern.toUpperCase().replaceAll(' ', '-')}`;
      const metres = rings.map((ring) => ring.map((point) => this.metres(point)));
      const options = { layerName: `${layer}-HATCH`, trueColor: colourOf(colour) };
      this.pens.layer({ shape: 'circle', layer: options.layerName, at: [0, 0], radiusMm: 0, fill: colour, pen: null });
      this.block.addEntity(new RegionHatch(metres, { name, families, mPerMm: this.mPerMm }, options));
    }
    if (pen !== null) for (const ring of rings) this.addPolyline(layer, ring, true, pen);
  }

  private addText({ layer, at, text, capMm, anchor, colour }: Text): void {
    const place = point3d(...this.metres(at));
    const aside = { start: TextHorizontalAlignment.Left, middle: TextHorizontalAlignment.Center, end: TextHorizontalAlignment.Right }[
      anchor
    ];
    this.block.addText(place, capMm * this.mPerMm, plain(text), {
      layerName: layer,
      trueColor: colourOf(colour),
      horizontalAlignment: aside,
      ...(anchor === 'start' ? {} : { secondAlignmentPoint: place }),
    });
  }
}
