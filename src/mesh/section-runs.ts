/** Cuts through prisms along a line with bends: stretches measured along the whole line, and the areas of their layers. */

import type { SectionPoint, SectionSpan } from '../model/section-drawing.ts';
import type { BarePrism } from './prism.ts';
import { type SectionRun, sectionProfile } from './section.ts';
import type { SectionLeg } from './section-line.ts';

/** Ends nearer than this are one [m]. */
const ONE_PLACE_M = 1e-6;
/** A layer thinner than this is not there [m]. */
const NOTHING_M = 1e-9;

/**
 * Stretches of a prism along the line; those that go on round a bend are one.
 * @param prism - prism [m]
 * @param legs - legs of the line [m]
 * @returns stretches with their heights, measured along the whole line [m]
 * @source none: geometry
 */
export function lineRuns(prism: BarePrism, legs: readonly SectionLeg[]): SectionRun[] {
  const runs: SectionRun[] = [];
  for (const leg of legs) {
    for (const whole of sectionProfile(prism, leg.plane)) {
      const run = withinLeg(whole, leg);
      if (run === null) continue;
      const last = runs.at(-1);
      if (last !== undefined && run.alongM[0] - last.alongM[last.alongM.length - 1] <= ONE_PLACE_M)
        runs[runs.length - 1] = joined(last, run);
      else runs.push(run);
    }
  }
  return runs;
}

function withinLeg(run: SectionRun, { startM, lengthM }: SectionLeg): SectionRun | null {
  const from = Math.max(0, run.alongM[0]);
  const to = Math.min(lengthM, run.alongM[run.alongM.length - 1]);
  if (to - from <= ONE_PLACE_M) return null;
  const between = run.alongM.filter((at) => at > from && at < to);
  const places = [from, ...between, to];
  return {
    alongM: Float64Array.from(places, (at) => startM + at),
    heightsM: run.heightsM.map((heights) => Float64Array.from(places, (at) => levelAt(run.alongM, heights, at))),
  };
}

function joined(first: SectionRun, second: SectionRun): SectionRun {
  return {
    alongM: Float64Array.from([...first.alongM, ...second.alongM]),
    heightsM: first.heightsM.map((heights, s) => Float64Array.from([...heights, ...second.heightsM[s]])),
  };
}

function levelAt(alongM: Float64Array, heights: Float64Array, at: number): number {
  let i = 1;
  while (i < alongM.length - 1 && alongM[i] < at) i++;
  const lengthM = alongM[i] - alongM[i - 1];
  return lengthM > 0 ? heights[i - 1] + ((at - alongM[i - 1]) / lengthM) * (heights[i] - heights[i - 1]) : heights[i];
}

/**
 * Height of every surface of a stretch at one place.
 * @param run - stretch [m]
 * @param alongM - place along the line [m]
 * @returns heights, bottom first [m]
 * @source none: geometry
 */
export function heightsAt(run: SectionRun, alongM: number): number[] {
  return run.heightsM.map((heights) => levelAt(run.alongM, heights, alongM));
}

/**
 * Beginning and end of a stretch.
 * @param run - stretch [m]
 * @returns distances along the line [m]
 * @source none: arithmetic
 */
export function spanOf(run: SectionRun): SectionSpan {
  return { fromM: run.alongM[0], toM: run.alongM[run.alongM.length - 1] };
}

/**
 * Areas of one layer in a stretch: several where it runs out in between, none where it is not there.
 * @param run - stretch [m]
 * @param layer - index of the layer from the bottom [-]
 * @returns closed outlines, lower side first [m]
 * @source none: geometry
 */
export function layerOutlines(run: SectionRun, layer: number): SectionPoint[][] {
  const [low, high] = [run.heightsM[layer], run.heightsM[layer + 1]];
  const thick = (i: number) => high[i] - low[i] > NOTHING_M;
  const outlines: SectionPoint[][] = [];
  let start = -1;
  for (let i = 0; i < run.alongM.length; i++) {
    const goesOn = i + 1 < run.alongM.length && (thick(i) || thick(i + 1));
    if (start < 0 && goesOn) start = i;
    if (start < 0 || goesOn) continue;
    outlines.push(outlineBetween(run, [low, high], start, i));
    start = -1;
  }
  return outlines;
}

function outlineBetween({ alongM }: SectionRun, [low, high]: readonly Float64Array[], start: number, end: number): SectionPoint[] {
  const lower: SectionPoint[] = [];
  const upper: SectionPoint[] = [];
  for (let i = start; i <= end; i++) {
    addPoint(lower, [alongM[i], low[i]]);
    addPoint(upper, [alongM[i], high[i]]);
  }
  if (upper[0][1] - lower[0][1] <= NOTHING_M) upper.shift();
  const [lastUp, lastLow] = [upper.at(-1), lower.at(-1)];
  if (lastUp && lastLow && lastUp[1] - lastLow[1] <= NOTHING_M) upper.pop();
  return [...lower, ...upper.reverse()];
}

/** Leaves out the point before where it lies on the straight line. */
function addPoint(line: SectionPoint[], point: SectionPoint): void {
  const [first, middle] = line.slice(-2);
  if (middle !== undefined && isStraight(first, middle, point)) line.pop();
  line.push(point);
}

function isStraight(first: SectionPoint, middle: SectionPoint, last: SectionPoint): boolean {
  const lengthM = last[0] - first[0];
  if (lengthM <= 0) return false;
  const share = (middle[0] - first[0]) / lengthM;
  return Math.abs(first[1] + share * (last[1] - first[1]) - middle[1]) <= NOTHING_M;
}

/**
 * One surface of a stretch as a line.
 * @param run - stretch [m]
 * @param surface - index of the surface, 0 at the bottom [-]
 * @returns points, those on a straight line left out [m]
 * @source none: geometry
 */
export function surfaceLine(run: SectionRun, surface: number): SectionPoint[] {
  const line: SectionPoint[] = [];
  run.alongM.forEach((at, i) => {
    addPoint(line, [at, run.heightsM[surface][i]]);
  });
  return line;
}
