/** Below a drawing: legend, scale bar and title block; round it a margin and a border. */

import type { ExportLanguage } from '../model/engine.ts';
import { BLACK, type Box, boundsOfShapes, CAP_MM, LINE_MM, line, PENS, type Point, type Shape, type Sheet, textAt } from './sheet.ts';
import { numberOn, SHEET_WORDS } from './sheet-words.ts';
import { BOLD, textWidthMm, wrapped } from './text-width.ts';

export interface LegendEntry {
  /** Drawn in a box of 9 mm × 4 mm whose upper left corner is given. */
  readonly swatch: (corner: Point) => readonly Shape[];
  readonly text: string;
}

export interface Frame {
  readonly title: string;
  /** Lines of the title block after its head. */
  readonly lines: readonly string[];
  readonly legend: readonly LegendEntry[];
  /** Said under the scale bar, line by line. */
  readonly notes: readonly string[];
  readonly scale: number;
  readonly originM: readonly [number, number];
  readonly language: ExportLanguage;
}

export const SWATCH: readonly [number, number] = [9, 4];

const BLOCK_MM = 92;
const LEAST_MM = 200;
const ROW_MM = 6;
const MARGIN_MM = 10;
const BORDER_MM = 5;
const SPACE_MM = 10;

/**
 * Puts a drawing on its sheet.
 * @param drawn - shapes of the drawing
 * @param frame - what stands below
 * @returns sheet, as large as it needs to be
 */
export function framed(drawn: readonly Shape[], frame: Frame): Sheet {
  const bounds = boundsOfShapes(drawn) ?? { x: 0, y: 0, width: LEAST_MM, height: 0 };
  const width = Math.max(LEAST_MM, bounds.width);
  const left = bounds.x - (width - bounds.width) / 2;
  const top = bounds.y + bounds.height + SPACE_MM;
  const block = titleBlock(frame, [left + width - BLOCK_MM, top]);
  const bar = scaleBar(frame, [left, top], width - BLOCK_MM - SPACE_MM);
  const legend = legendShapes(frame, { x: left, y: bar.bottom + 4, width: width - BLOCK_MM - SPACE_MM, height: 0 });
  const shapes = [...drawn, ...bar.shapes, ...legend, ...block];
  const all = boundsOfShapes(shapes) as Box;
  const box = grown(all, MARGIN_MM);
  return {
    title: frame.title,
    shapes: [...shapes, border(grown(all, MARGIN_MM - BORDER_MM))],
    scale: frame.scale,
    originM: frame.originM,
    box,
  };
}

function grown({ x, y, width, height }: Box, byMm: number): Box {
  return { x: x - byMm, y: y - byMm, width: width + 2 * byMm, height: height + 2 * byMm };
}

function border({ x, y, width, height }: Box): Shape {
  return { shape: 'line', layer: 'FRAME', points: corners(x, y, width, height), closed: true, pen: PENS.outline };
}

export function corners(x: number, y: number, width: number, height: number): Point[] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

function titleBlock({ title, lines, language }: Frame, [x, y]: Point): Shape[] {
  const shapes: Shape[] = [];
  let bottom = y + 2;
  const write = (text: string, capMm: number, bold: boolean) => {
    for (const part of wrapped(text, BLOCK_MM - 6, capMm * (bold ? BOLD : 1))) {
      bottom += capMm + 2;
      shapes.push(textAt([x + 3, bottom], part, { layer: 'FRAME', capMm, bold }));
    }
  };
  write(title, 3.5, true);
  bottom += 1;
  for (const text of lines) write(text, CAP_MM, false);
  const rule: Point[] = [
    [x, bottom + 2],
    [x + BLOCK_MM, bottom + 2],
  ];
  bottom += 2;
  write(SHEET_WORDS[language].notACheck, CAP_MM, true);
  shapes.push(
    { shape: 'line', layer: 'FRAME', points: corners(x, y, BLOCK_MM, bottom + 3 - y), closed: true, pen: PENS.outline },
    line('FRAME', rule, PENS.thin),
  );
  return shapes;
}

/** Whole lengths that a bar may show [m]. */
const BAR_STEPS_M = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100];
const BAR_PARTS = 5;
const BAR_MOST_MM = 100;

function scaleBar(
  { scale, language, notes }: Frame,
  [x, y]: Point,
  widthMm: number,
): { readonly shapes: Shape[]; readonly bottom: number } {
  const stepM = BAR_STEPS_M.findLast((step) => (BAR_PARTS * step * 1000) / scale <= BAR_MOST_MM) ?? BAR_STEPS_M[0];
  const stepMm = (stepM * 1000) / scale;
  const barY = y + 4.5;
  const shapes: Shape[] = [];
  for (let i = 0; i <= BAR_PARTS; i++) {
    const left = x + i * stepMm;
    const text = i === 0 ? '0' : numberOn(i * stepM, stepM < 1 ? 1 : 0, language);
    shapes.push(textAt([left, y + 3], i === BAR_PARTS ? `${text} m` : text, { layer: 'SCALE', anchor: 'middle' }));
    if (i === BAR_PARTS) break;
    shapes.push({
      shape: 'area',
      layer: 'SCALE',
      rings: [corners(left, barY, stepMm, 2)],
      fill: i % 2 === 0 ? BLACK : '#FFFFFF',
      hatch: null,
      pen: PENS.thin,
    });
  }
  let bottom = barY + 2;
  for (const note of notes.flatMap((one) => wrapped(one, widthMm, CAP_MM))) {
    bottom += LINE_MM + 1;
    shapes.push(textAt([x, bottom], note, { layer: 'SCALE' }));
  }
  return { shapes, bottom: bottom + (notes.length === 0 ? 0 : 1) };
}

/** In columns, filled downwards. */
function legendShapes({ legend, language }: Frame, { x, y, width }: Box): Shape[] {
  if (legend.length === 0) return [];
  const columnMm = SWATCH[0] + 8 + Math.max(...legend.map(({ text }) => textWidthMm(text, CAP_MM)));
  const columns = Math.max(1, Math.min(legend.length, Math.floor(width / columnMm)));
  const rows = Math.ceil(legend.length / columns);
  const title = textAt([x, y + 4], SHEET_WORDS[language].legend, { layer: 'LEGEND', bold: true });
  const entries = legend.flatMap(({ swatch, text }, i) => {
    const left = x + Math.floor(i / rows) * columnMm;
    const top = y + 6.5 + (i % rows) * ROW_MM;
    return [...swatch([left, top]), textAt([left + SWATCH[0] + 2.5, top + 3.2], text, { layer: 'LEGEND' })];
  });
  return [title, ...entries];
}
