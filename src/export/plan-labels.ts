/** Labels inside regions of a plan: whole where they fit, shorter where they don't, never one on another. */

import { boundsOf, centroidM, isInside } from '../core/geometry/ring.ts';
import type { Region } from '../model/deck-input.ts';
import { type Box, CAP_MM, LINE_MM, line, overlaps, PENS, type Point, type Shape, type Text, textAt } from './sheet.ts';
import { textWidthMm } from './text-width.ts';

export interface PlanLabel {
  /** In millimetres on paper, y downwards. */
  readonly region: Region;
  /** Tried in turn: lines from top to bottom. */
  readonly variants: readonly (readonly string[])[];
  readonly looks: Partial<Omit<Text, 'shape' | 'at' | 'text'>>;
  /** Where it would best stand. */
  readonly best: 'middle' | 'upper left';
}

export interface PlacedLabel {
  /** Index of the variant that found room. */
  readonly variant: number;
  readonly shapes: readonly Shape[];
}

/** Distance between places that are tried, as a share of the region and at least [mm]. */
const STEPS = 48;
const LEAST_STEP_MM = 1;
const CLEAR_MM = 0.6;

/**
 * Places labels one after the other.
 * @param labels - those that matter most first
 * @param taken - boxes where nothing may stand; those of the labels are added
 */
export function placeLabels(labels: readonly PlanLabel[], taken: Box[]): PlacedLabel[] {
  return labels.map((label) => {
    const places = placesIn(label);
    for (const [variant, lines] of label.variants.entries()) {
      const size = sizeOf(lines, label);
      const at = places.find((place) => fits(boxAt(place, size), label.region, taken));
      if (at === undefined) continue;
      taken.push(boxAt(at, size));
      return { variant, shapes: texts(lines, label, at, size) };
    }
    return beside(label, places[0] ?? centreOf(label.region), taken);
  });
}

interface Size {
  readonly width: number;
  readonly height: number;
}

const capOf = ({ looks }: PlanLabel) => looks.capMm ?? CAP_MM;
const lineOf = (label: PlanLabel) => (capOf(label) * LINE_MM) / CAP_MM;

function sizeOf(lines: readonly string[], label: PlanLabel): Size {
  const width = Math.max(...lines.map((text) => textWidthMm(text, capOf(label), label.looks.bold)));
  return { width, height: lineOf(label) * (lines.length - 1) + capOf(label) };
}

const boxAt = ([x, y]: Point, { width, height }: Size): Box => ({
  x: x - width / 2 - CLEAR_MM,
  y: y - height / 2 - CLEAR_MM,
  width: width + 2 * CLEAR_MM,
  height: height + 2.4 * CLEAR_MM,
});

function fits(box: Box, region: Region, taken: readonly Box[]): boolean {
  const { x, y, width, height } = box;
  for (let i = 0; i <= 4; i++) {
    for (let j = 0; j <= 2; j++) if (!isInside(region, x + (width * i) / 4, y + (height * j) / 2)) return false;
  }
  return !taken.some((other) => overlaps(box, other));
}

function centreOf(region: Region): Point {
  return centroidM(region.outer);
}

/** Places on a fine grid inside the region, the best first. */
function placesIn({ region, best }: PlanLabel): Point[] {
  const box = boundsOf(region.outer);
  const target: Point = best === 'middle' ? centreOf(region) : [box.minX, box.minY];
  const step = Math.max(LEAST_STEP_MM, Math.min(box.maxX - box.minX, box.maxY - box.minY) / STEPS);
  const places: Point[] = isInside(region, target[0], target[1]) ? [target] : [];
  for (let y = box.minY + step / 2; y < box.maxY; y += step) {
    for (let x = box.minX + step / 2; x < box.maxX; x += step) if (isInside(region, x, y)) places.push([x, y]);
  }
  const far = ([x, y]: Point) => Math.hypot(x - target[0], y - target[1]);
  return places.sort((p, q) => far(p) - far(q));
}

function texts(lines: readonly string[], label: PlanLabel, [x, y]: Point, { height }: Size): Text[] {
  const first = y - height / 2 + capOf(label);
  return lines.map((text, i) => textAt([x, first + i * lineOf(label)], text, { halo: true, ...label.looks, anchor: 'middle' }));
}

const DIRECTIONS = 16;
const FARTHEST_MM = 60;

/** No room inside: the shortest variant as near as there is room, with a line to its region. */
function beside(label: PlanLabel, inside: Point, taken: Box[]): PlacedLabel {
  const variant = label.variants.length - 1;
  const lines = label.variants[variant];
  const size = sizeOf(lines, label);
  for (let reach = 2; reach <= FARTHEST_MM; reach += 1) {
    for (let k = 0; k < DIRECTIONS; k++) {
      const angle = (2 * Math.PI * k) / DIRECTIONS;
      const at: Point = [inside[0] + reach * Math.cos(angle), inside[1] + reach * Math.sin(angle)];
      const box = boxAt(at, size);
      if (taken.some((other) => overlaps(box, other))) continue;
      taken.push(box);
      return { variant, shapes: [line('LABELS', [inside, onBox(box, inside)], PENS.faint), ...texts(lines, label, at, size)] };
    }
  }
  return { variant, shapes: [] };
}

/** Point of a box nearest to a point. */
function onBox({ x, y, width, height }: Box, [px, py]: Point): Point {
  return [Math.min(x + width, Math.max(x, px)), Math.min(y + height, Math.max(y, py))];
}
