/** Where the deck lies on a drawn plan: plan units per metre, the frame around it, outlines as paths. In a plan y runs down. */

import type { Snapshot } from '../../model/engine.ts';
import type { PointM, PolygonM } from '../../model/scene-file.ts';
import { boxOf, boxSizeM, toLocal } from './place.ts';

export interface PlanFrame {
  /** Plan units per metre. */
  readonly scale: number;
  readonly originM: PointM;
  readonly viewBox: string;
}

/** A frame around the deck with its longer side `size` plan units, and `margin` around it. */
export function planFrame({ scene, originM }: Pick<Snapshot, 'scene' | 'originM'>, size: number, margin: number): PlanFrame {
  const box = boxOf(scene.deck.outline.map((point) => toLocal(point, originM)));
  const scale = size / boxSizeM(box);
  const width = (box.max[0] - box.min[0]) * scale + 2 * margin;
  const height = (box.max[1] - box.min[1]) * scale + 2 * margin;
  return { scale, originM, viewBox: `${box.min[0] * scale - margin} ${-box.max[1] * scale - margin} ${width} ${height}` };
}

/** A point of the file on the plan. */
export function planPoint(point: PointM, { originM, scale }: PlanFrame): PointM {
  const [x, y] = toLocal(point, originM);
  return [x * scale, -y * scale];
}

/** An outline of the file as an SVG path. */
export function planPath(ring: PolygonM, frame: PlanFrame): string {
  const points = ring.map((point) => planPoint(point, frame)).map(([x, y]) => `${x} ${y}`);
  return `M${points.join('L')}Z`;
}

/** Room for words inside a bay. */
export interface PlanRoom {
  readonly width: number;
  readonly height: number;
}

/** Letters of Barlow Condensed are about this wide [em]. */
const LETTER_EM = 0.43;
/** From line to line. */
export const LINE_EM = 1.1;
/** Words keep off the outline. */
const FILLED = 0.92;

/** Size of letters at which lines of text fit; never above `most`. */
export function fittingLetters(lines: readonly string[], { width, height }: PlanRoom, most: number): number {
  const letters = Math.max(1, ...lines.map((line) => line.length));
  const byWidth = (FILLED * width) / (letters * LETTER_EM);
  const byHeight = (FILLED * height) / (lines.length * LINE_EM);
  return Math.min(most, byWidth, byHeight);
}
