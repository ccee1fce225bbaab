/** A picture of the model with its legend below it, as PNG of exactly the size asked for. */

import type { TakePicture } from '../../model/view-picture.ts';
import type { DrawnFill } from '../facts/hatch-pattern.ts';
import type { LegendEntry, PictureLegend } from './picture-legend.ts';

type Pen = CanvasRenderingContext2D;

const PAPER = '#FFFDF7';
const INK = '#1E2A2E';
/** Width of a page at which letters have their usual size [px]. */
const USUAL_PX = 1280;
const LETTERS_PX = 14;
const LEAST_LETTERS_PX = 9;
/** The legend takes at most this share of the height. */
const MOST_SHARE = 0.5;

interface Measures {
  readonly letters: number;
  readonly line: number;
  readonly margin: number;
  readonly width: number;
}

/** Null where no picture can be drawn. */
export async function pictureBytes(
  take: TakePicture | null,
  size: { readonly widthPx: number; readonly heightPx: number },
  legend: PictureLegend,
): Promise<Uint8Array<ArrayBuffer> | null> {
  const { widthPx, heightPx } = size;
  const canvas = document.createElement('canvas');
  canvas.width = widthPx;
  canvas.height = heightPx;
  const pen = canvas.getContext('2d');
  if (pen === null || take === null) return null;
  const of = measures(widthPx);
  const stripPx = Math.ceil(Math.min(MOST_SHARE * heightPx, drawLegend(pen, legend, of, null)));
  const picture = take(widthPx, heightPx - stripPx);
  if (picture === null) return null;
  pen.fillStyle = PAPER;
  pen.fillRect(0, 0, widthPx, heightPx);
  pen.putImageData(new ImageData(picture.rgba, picture.widthPx, picture.heightPx), 0, 0);
  drawLegend(pen, legend, of, heightPx - stripPx);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  return blob && new Uint8Array(await blob.arrayBuffer());
}

function measures(width: number): Measures {
  const letters = Math.max(LEAST_LETTERS_PX, Math.round((LETTERS_PX * width) / USUAL_PX));
  return { letters, line: Math.round(1.45 * letters), margin: letters, width };
}

/** Draws the legend from `top` on, or with null only measures it; the height it takes. */
function drawLegend(pen: Pen, legend: PictureLegend, of: Measures, top: number | null): number {
  const { letters, line, margin, width } = of;
  pen.textBaseline = 'alphabetic';
  let y = margin;
  const texts = (text: string, bold: boolean) => {
    pen.font = `${bold ? 600 : 400} ${letters}px Barlow, Arial, sans-serif`;
    for (const part of wrapped(pen, text, width - 2 * margin)) {
      if (top !== null) {
        pen.fillStyle = INK;
        pen.fillText(part, margin, top + y + letters);
      }
      y += line;
    }
  };
  texts(legend.title, true);
  texts(legend.says, false);
  pen.font = `400 ${letters}px Barlow, Arial, sans-serif`;
  y += drawEntries(pen, legend.entries, of, top === null ? null : top + y);
  texts(legend.statement, true);
  return y + margin / 2;
}

/** Side by side, as many as fit into a line. */
function drawEntries(pen: Pen, entries: readonly LegendEntry[], { letters, line, margin, width }: Measures, top: number | null): number {
  if (entries.length === 0) return 0;
  const swatch = 2 * letters;
  let [x, y] = [margin, 0];
  for (const { fill, text } of entries) {
    const taken = swatch + 0.5 * letters + pen.measureText(text).width;
    if (x > margin && x + taken > width - margin) [x, y] = [margin, y + line];
    if (top !== null) {
      drawSwatch(pen, fill, [x, top + y + 0.1 * letters, swatch, letters], letters / LETTERS_PX);
      pen.fillStyle = INK;
      pen.fillText(text, x + swatch + 0.5 * letters, top + y + letters);
    }
    x += taken + 1.5 * letters;
  }
  return y + line;
}

function drawSwatch(pen: Pen, of: DrawnFill, [x, y, width, height]: readonly [number, number, number, number], scale: number): void {
  pen.save();
  pen.beginPath();
  pen.rect(x, y, width, height);
  pen.clip();
  pen.fillStyle = of.fill;
  pen.fillRect(x, y, width, height);
  const [strokes, fills] = [new Path2D(of.strokes), new Path2D(of.fills)];
  pen.translate(x, y);
  pen.scale(scale, scale);
  pen.strokeStyle = of.line;
  for (let across = 0; across * of.width * scale < width; across++) {
    for (let down = 0; down * of.height * scale < height; down++) {
      pen.save();
      pen.translate(across * of.width, down * of.height);
      pen.stroke(strokes);
      pen.fillStyle = of.line;
      pen.fill(fills);
      pen.restore();
    }
  }
  pen.restore();
  pen.strokeStyle = INK;
  pen.strokeRect(x, y, width, height);
}

function wrapped(pen: Pen, text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.replaceAll('\u00AD', '').split(' ').filter(Boolean)) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && pen.measureText(longer).width <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
