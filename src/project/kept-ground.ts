/** What facts about levels along a line, and about machines in their stages, rest on: what `KeptParts` compares. */

import type { Evaluation } from '../core/evaluation.ts';
import { boundsMeet } from '../core/geometry/distance.ts';
import { type Bounds, boundsOf } from '../core/geometry/ring.ts';
import type { DeckInput } from '../model/deck-input.ts';

/** More than any rule looks to the side of a line for a zone [m]. */
const BESIDE_M = 0.25;

const bounds = new WeakMap<DeckInput['deck'], Bounds>();

function boundsOfRegion(region: DeckInput['deck']): Bounds {
  const known = bounds.get(region) ?? boundsOf(region.outer);
  bounds.set(region, known);
  return known;
}

/**
 * Deck, levels and the zones under or beside a line with their build-ups and finishes.
 * @param on - evaluation
 * @param line - x y per point, local [m]
 * @returns objects that stay the same as long as nothing there changes
 */
export function siteAlong(on: Evaluation, line: Float64Array): unknown[] {
  const { input, prepared, finishSurfaces } = on;
  const pieces: Bounds[] = [];
  for (let i = 0; i + 3 < line.length; i += 2) {
    const { minX, minY, maxX, maxY } = boundsOf(line.subarray(i, i + 4));
    pieces.push({ minX: minX - BESIDE_M, minY: minY - BESIDE_M, maxX: maxX + BESIDE_M, maxY: maxY + BESIDE_M });
  }
  const near = input.zones.flatMap((zone, z) => {
    const box = boundsOfRegion(zone.region);
    return pieces.some((piece) => boundsMeet(piece, box)) ? [z, zone, finishSurfaces[z]] : [];
  });
  return [prepared.ground, prepared.deckSurface, ...near];
}

/** Which layers each stage lays, by role and name, as a text; thicknesses are not in it. */
export function planText({ input, plan }: Evaluation): string {
  const zones = input.zones.map(({ id, buildUp }, z) => {
    const layers = buildUp.layers.map(({ role, name }, i) => [role, name, plan.layerStages[z][i]]);
    return [id, layers];
  });
  return JSON.stringify([zones, plan.stages.map(({ id, derived }) => [id, derived])]);
}
