/**
 * A drawing on paper as plain shapes: millimetres, y downwards; what lies at model coordinates (x, y) metres is drawn at
 * (x, -y) · 1000 / scale. The SVG and the DXF are written from the same shapes.
 */

import type { PartKind } from '../model/picture.ts';
import { FONT_SIZE_PER_CAP, textWidthMm } from './text-width.ts';

/** On paper [mm]. */
export type Point = readonly [number, number];

export interface Pen {
  readonly widthMm: number;
  readonly colour: string;
  /** Lengths of strokes and gaps in turn; none for a whole line. */
  readonly dashMm?: readonly number[];
}

export interface Area {
  readonly shape: 'area';
  /** Plain ASCII: a name of layers in the DXF. */
  readonly layer: string;
  /** Outer ring first, then holes; closed, first point not repeated. */
  readonly rings: readonly (readonly Point[])[];
  readonly fill: string | null;
  /** Hatched like this part; null for none. */
  readonly hatch: PartKind | null;
  readonly pen: Pen | null;
}

export interface Line {
  readonly shape: 'line';
  readonly layer: string;
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly pen: Pen;
}

export interface Circle {
  readonly shape: 'circle';
  readonly layer: string;
  readonly at: Point;
  readonly radiusMm: number;
  readonly fill: string | null;
  readonly pen: Pen | null;
}

export interface Text {
  readonly shape: 'text';
  readonly layer: string;
  /** On the base line. */
  readonly at: Point;
  readonly text: string;
  /** Height of a capital. */
  readonly capMm: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly bold: boolean;
  readonly colour: string;
  /** White round the letters, where they stand on a hatch. */
  readonly halo: boolean;
}

export type Shape = Area | Line | Circle | Text;

export interface Sheet {
  readonly title: string;
  readonly shapes: readonly Shape[];
  readonly scale: number;
  /** Model coordinates of the paper's (0, 0) [m]. */
  readonly originM: readonly [number, number];
  /** The sheet: what is drawn and a margin round it. */
  readonly box: Box;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Height of capitals of all common text [mm]. */
export const CAP_MM = 2.5;
/** From base line to base line of common text [mm]. */
export const LINE_MM = 4;

export const BLACK = '#1E2A2E';
export const GREY = '#6B7478';

/** Widths of lines in the common series of drawing pens. */
export const PENS = {
  cut: { widthMm: 0.5, colour: BLACK },
  outline: { widthMm: 0.35, colour: BLACK },
  edge: { widthMm: 0.25, colour: BLACK },
  thin: { widthMm: 0.18, colour: BLACK },
  faint: { widthMm: 0.13, colour: GREY },
} as const satisfies Readonly<Record<string, Pen>>;

/** A text of common height; `more` changes what differs. */
export function textAt(at: Point, text: string, more: Partial<Omit<Text, 'shape' | 'at' | 'text'>> = {}): Text {
  return { shape: 'text', layer: 'TEXT', at, text, capMm: CAP_MM, anchor: 'start', bold: false, colour: BLACK, halo: false, ...more };
}

export function line(layer: string, points: readonly Point[], pen: Pen): Line {
  return { shape: 'line', layer, points, closed: false, pen };
}

/** Box that a text takes up, descenders included. */
export function textBox({ at, text, capMm, anchor, bold }: Text): Box {
  const width = textWidthMm(text, capMm, bold);
  const x = anchor === 'start' ? at[0] : anchor === 'middle' ? at[0] - width / 2 : at[0] - width;
  return { x, y: at[1] - capMm, width, height: capMm * (1 + 0.22 * FONT_SIZE_PER_CAP) };
}

/** Whether two boxes have more than a line in common. */
export function overlaps(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

/** Box round shapes; null without any. */
export function boundsOfShapes(shapes: readonly Shape[]): Box | null {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  const put = (x: number, y: number) => {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  };
  for (const shape of shapes) {
    if (shape.shape === 'area') for (const ring of shape.rings) for (const [x, y] of ring) put(x, y);
    else if (shape.shape === 'line') for (const [x, y] of shape.points) put(x, y);
    else {
      const { at } = shape;
      const box =
        shape.shape === 'text'
          ? textBox(shape)
          : { x: at[0] - shape.radiusMm, y: at[1] - shape.radiusMm, width: 2 * shape.radiusMm, height: 2 * shape.radiusMm };
      put(box.x, box.y);
      put(box.x + box.width, box.y + box.height);
    }
  }
  return left <= right ? { x: left, y: top, width: right - left, height: bottom - top } : null;
}
