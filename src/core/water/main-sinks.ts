/** Which sink most of a cell's water ends in, for the coloured areas of the plan. */

import type { Flood } from './flood.ts';
import { ALONG_PARENT, AT_EXIT, type Flow, targetsOf } from './flow.ts';

/** So many sinks are told apart in one cell; where more meet the least are dropped. */
const KEPT = 3;

/**
 * Main sink of every cell. What the flood reached a cell from would give areas with edges along the grid's diagonals; carried
 * along the split flow, the edges lie where the summed areas say.
 * @param flow - directions [-]
 * @param flooded - order of filling and sinks of the exits [-]
 * @returns sink per cell, -1 where none is reached [-]
 * @source none: arithmetic
 */
export function mainSinks(flow: Flow, flooded: Flood): Int16Array {
  const { order, reached, parent, label } = flooded;
  const size = label.length;
  const sinks = new Int16Array(KEPT * size).fill(-1);
  const parts = new Float32Array(KEPT * size);
  const main = new Int16Array(size).fill(-1);
  const mix = { sinks: new Int16Array(4 * KEPT), parts: new Float64Array(4 * KEPT), count: 0 };
  const take = (cell: number, part: number) => {
    for (let j = KEPT * cell; j < KEPT * (cell + 1) && parts[j] > 0; j++) addPart(mix, sinks[j], part * parts[j]);
  };
  const targets = { cells: new Int32Array(4), parts: new Float64Array(4), count: 0 };
  for (let i = 0; i < reached; i++) {
    const cell = order[i];
    mix.count = 0;
    if (flow.facet[cell] === AT_EXIT) addPart(mix, label[cell], 1);
    else if (flow.facet[cell] === ALONG_PARENT) take(parent[cell], 1);
    else {
      targetsOf(flow, cell, targets);
      for (let t = 0; t < targets.count; t++) take(targets.cells[t], targets.parts[t]);
    }
    for (let kept = 0; kept < KEPT; kept++) {
      const most = mostOf(mix);
      if (most < 0) break;
      sinks[KEPT * cell + kept] = mix.sinks[most];
      parts[KEPT * cell + kept] = mix.parts[most];
      mix.parts[most] = 0;
    }
    main[cell] = sinks[KEPT * cell];
  }
  return main;
}

interface Mix {
  readonly sinks: Int16Array;
  readonly parts: Float64Array;
  count: number;
}

function addPart(mix: Mix, sink: number, part: number): void {
  for (let j = 0; j < mix.count; j++) {
    if (mix.sinks[j] !== sink) continue;
    mix.parts[j] += part;
    return;
  }
  mix.sinks[mix.count] = sink;
  mix.parts[mix.count++] = part;
}

function mostOf({ parts, count }: Mix): number {
  let most = -1;
  for (let j = 0; j < count; j++) if (parts[j] > 0 && (most < 0 || parts[j] > parts[most])) most = j;
  return most;
}
