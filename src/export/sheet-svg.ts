/** A sheet as SVG: millimetres on paper, nothing to load, every text escaped. */

import { HATCH_TILES } from '../model/hatch-tiles.ts';
import { ROLE_STYLE } from '../model/palette.ts';
import type { PartKind } from '../model/picture.ts';
import { markupText } from './markup.ts';
import type { Area, Circle, Line, Pen, Point, Shape, Sheet, Text } from './sheet.ts';
import { FONT_SIZE_PER_CAP } from './text-width.ts';

/** One pixel of a hatch tile on paper [mm]. */
const TILE_MM = 0.25;
const HATCH_PEN_MM = 0.13;
/** Paper shows through the fills by this share, so that lines and text stay readable. */
const LIGHTER = 0.45;
const FONTS = 'Arial, Helvetica, "Liberation Sans", "DejaVu Sans", sans-serif';

/**
 * Writes a sheet.
 * @param sheet - shapes in millimetres
 * @returns text of the file
 */
export function sheetSvg({ title, shapes, box }: Sheet): string {
  const kinds = [...new Set(shapes.flatMap((shape) => (shape.shape === 'area' && shape.hatch !== null ? [shape.hatch] : [])))];
  const [width, height] = [mm(box.width), mm(box.height)];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${mm(box.x)} ${mm(box.y)} ${width} ${height}">`,
    `<title>${markupText(title)}</title>`,
    `<defs>${kinds.map(hatchPattern).join('')}</defs>`,
    `<rect x="${mm(box.x)}" y="${mm(box.y)}" width="${width}" height="${height}" fill="#FFFFFF"/>`,
    `<g stroke-linejoin="round" font-family="${markupText(FONTS)}">`,
    ...groups(shapes),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

/** To a thousandth of a millimetre, without trailing zeros. */
function mm(value: number): string {
  return String(Number(value.toFixed(3)) || 0);
}

/** Neighbours on one layer share a group, so that a drawing program can switch them. */
function groups(shapes: readonly Shape[]): string[] {
  const lines: string[] = [];
  let open = '';
  for (const shape of shapes) {
    if (shape.layer !== open) {
      if (open !== '') lines.push('</g>');
      lines.push(`<g class="${shape.layer}">`);
      open = shape.layer;
    }
    lines.push(element(shape));
  }
  if (open !== '') lines.push('</g>');
  return lines;
}

function element(shape: Shape): string {
  switch (shape.shape) {
    case 'area':
      return areaElement(shape);
    case 'line':
      return lineElement(shape);
    case 'circle':
      return circleElement(shape);
    case 'text':
      return textElement(shape);
  }
}

const hatchId = (kind: PartKind) => `hatch-${kind.replaceAll(' ', '-')}`;

function hatchPattern(kind: PartKind): string {
  const { fill, line, pattern } = ROLE_STYLE[kind];
  const { width, height, strokes, fills } = HATCH_TILES[pattern];
  const marks = [
    strokes === '' ? '' : `<path d="${strokes}" fill="none" stroke="${line}" stroke-width="${HATCH_PEN_MM / TILE_MM}"/>`,
    fills === '' ? '' : `<path d="${fills}" fill="${line}"/>`,
  ];
  return `<pattern id="${hatchId(kind)}" width="${width}" height="${height}" patternUnits="userSpaceOnUse" patternTransform="scale(${TILE_MM})"><rect width="${width}" height="${height}" fill="${lighter(fill)}"/>${marks.join('')}</pattern>`;
}

function lighter(colour: string): string {
  const mixed = [1, 3, 5].map((at) => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16);
    return Math.round(value + (255 - value) * LIGHTER)
      .toString(16)
      .padStart(2, '0');
  });
  return `#${mixed.join('')}`.toUpperCase();
}

function pathOf(rings: readonly (readonly Point[])[], closed: boolean): string {
  return rings.map((ring) => `M${ring.map(([x, y]) => `${mm(x)} ${mm(y)}`).join('L')}${closed ? 'Z' : ''}`).join('');
}

function strokeOf(pen: Pen | null): string {
  if (pen === null) return '';
  const dash = pen.dashMm === undefined ? '' : ` stroke-dasharray="${pen.dashMm.join(' ')}"`;
  return ` stroke="${pen.colour}" stroke-width="${pen.widthMm}"${dash}`;
}

function areaElement({ rings, fill, hatch, pen }: Area): string {
  const paint = hatch === null ? (fill ?? 'none') : `url(#${hatchId(hatch)})`;
  return `<path d="${pathOf(rings, true)}" fill="${paint}" fill-rule="evenodd"${strokeOf(pen)}/>`;
}

function lineElement({ points, closed, pen }: Line): string {
  return `<path d="${pathOf([points], closed)}" fill="none"${strokeOf(pen)}/>`;
}

function circleElement({ at, radiusMm, fill, pen }: Circle): string {
  return `<circle cx="${mm(at[0])}" cy="${mm(at[1])}" r="${mm(radiusMm)}" fill="${fill ?? 'none'}"${strokeOf(pen)}/>`;
}

function textElement({ at, text, capMm, anchor, bold, colour, halo }: Text): string {
  const size = mm(capMm * FONT_SIZE_PER_CAP);
  const looks = [
    anchor === 'start' ? '' : ` text-anchor="${anchor}"`,
    bold ? ' font-weight="bold"' : '',
    halo ? ' stroke="#FFFFFF" stroke-width="0.8" paint-order="stroke"' : '',
  ].join('');
  return `<text x="${mm(at[0])}" y="${mm(at[1])}" font-size="${size}" fill="${colour}"${looks} xml:space="preserve">${markupText(text)}</text>`;
}
