/** A preview as paths on a sheet of fixed size, with a scale bar of round metres. In a plan y runs down. */

import type { Preview, PreviewLayer } from '../../model/importer.ts';
import type { PointM } from '../../model/scene-file.ts';
import type { Lie } from './import-facts.ts';

/** Longer side of the drawing on the sheet; also the size that letters are meant for. */
const SHEET = 300;
const MARGIN = 14;
/** Under the drawing, for the scale bar. */
const FOOT = 22;

export interface PreviewSheet {
  readonly viewBox: string;
  readonly layers: readonly { readonly name: string; readonly d: string }[];
  /** Outline of the open deck; empty without one. */
  readonly deck: string;
  readonly bar: { readonly metres: number; readonly x: number; readonly y: number; readonly length: number };
  readonly north: PointM;
}

/**
 * The sheet of a preview.
 * @param preview - thinned drawing
 * @param lie - how the numbers of the file lie; null as the plan
 * @param deck - outline of the deck that is open, drawn beside it
 */
export function previewSheet(preview: Preview, lie: Lie | null, deck: readonly PointM[] | null): PreviewSheet {
  const put = lie ?? ((point: PointM): PointM => point);
  const local = (deck ?? []).map(([x, y]) => put([x - preview.at[0], y - preview.at[1]]));
  const frame = frameOf(preview.layers, put, local);
  const width = Math.max(frame.maxX - frame.minX, 1e-6);
  const height = Math.max(frame.maxY - frame.minY, 1e-6);
  const scale = SHEET / Math.max(width, height);
  const onSheet = ([x, y]: PointM): string => `${((x - frame.minX) * scale).toFixed(1)} ${((frame.maxY - y) * scale).toFixed(1)}`;
  const metres = roundLength(width / 3);
  const [sheetWidth, sheetHeight] = [Math.max(width * scale, SHEET / 3), height * scale];
  return {
    viewBox: `${-MARGIN} ${-MARGIN} ${sheetWidth + 2 * MARGIN} ${sheetHeight + 2 * MARGIN + FOOT}`,
    layers: preview.layers.map((layer) => ({ name: layer.name, d: layerPath(layer, (point) => onSheet(put(point))) })),
    deck: local.length === 0 ? '' : `M${local.map(onSheet).join('L')}Z`,
    bar: { metres, x: 0, y: sheetHeight + FOOT, length: metres * scale },
    north: [sheetWidth, sheetHeight + FOOT],
  };
}

/** Path data of a layer. */
export function layerPath({ points, starts }: PreviewLayer, onSheet: (point: PointM) => string): string {
  const parts: string[] = [];
  for (let i = 0; i < starts.length; i++) {
    const from = starts[i] ?? 0;
    const to = starts[i + 1] ?? points.length / 2;
    for (let k = from; k < to; k++) parts.push(`${k === from ? 'M' : 'L'}${onSheet([points[2 * k] ?? 0, points[2 * k + 1] ?? 0])}`);
    // A place is a line without length, which round ends draw as a dot.
    if (to - from === 1) parts.push('h0');
  }
  return parts.join('');
}

function frameOf(layers: readonly PreviewLayer[], put: Lie, deck: readonly PointM[]) {
  const frame = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  const add = ([x, y]: PointM) => {
    frame.minX = Math.min(frame.minX, x);
    frame.minY = Math.min(frame.minY, y);
    frame.maxX = Math.max(frame.maxX, x);
    frame.maxY = Math.max(frame.maxY, y);
  };
  for (const { points } of layers) for (let k = 0; k + 1 < points.length; k += 2) add(put([points[k] ?? 0, points[k + 1] ?? 0]));
  const drawn = Math.max(frame.maxX - frame.minX, frame.maxY - frame.minY);
  const around = { ...frame };
  for (const point of deck) add(point);
  // A deck far away would leave nothing of the drawing to be seen.
  const whole = Math.max(frame.maxX - frame.minX, frame.maxY - frame.minY);
  if (around.minX <= around.maxX && whole > FAR * drawn) return around;
  return frame.minX <= frame.maxX ? frame : { minX: 0, minY: 0, maxX: 1, maxY: 1 };
}

const FAR = 6;

/** The largest of 1, 2, 5 times a power of ten that is not longer [m]. */
function roundLength(mostM: number): number {
  const power = 10 ** Math.floor(Math.log10(mostM));
  return ([5, 2, 1].find((step) => step * power <= mostM) ?? 1) * power;
}
