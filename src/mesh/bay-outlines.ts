/** Bays as drawn on the slab: outlines that follow its levels, and a place for each label. */

import { boundsOf, centroidM, isInside, ringsOf } from '../core/geometry/ring.ts';
import { type Surface, surfaceLevelM } from '../core/levels/surface.ts';
import type { BayInput, Region } from '../model/deck-input.ts';
import type { Picture } from '../model/picture.ts';
import { drapedLine } from './draped-lines.ts';

/** Height above the slab, so that line and slab do not flicker [m]. */
const ABOVE_SLAB_M = 0.005;

/**
 * Outlines and label places of all bays. What the labels say is left to the page: here a label is the bay's id.
 * @param bays - bays [m]
 * @param deck - top of the slab [m]
 * @returns outlines, two points per line, and labels [m]
 * @source none: geometry
 */
export function bayOutlines(bays: readonly BayInput[], deck: Surface): Pick<Picture, 'bayLines' | 'bays'> {
  const lines: number[] = [];
  for (const bay of bays) {
    for (const ring of ringsOf(bay.region)) {
      const draped = drapedLine(Float64Array.from([...ring, ring[0], ring[1]]), deck);
      for (let i = 3; i < draped.length; i += 3) {
        for (const p of [i - 3, i]) lines.push(draped[p], draped[p + 1], draped[p + 2] + ABOVE_SLAB_M);
      }
    }
  }
  return {
    bayLines: Float32Array.from(lines),
    bays: bays.map((bay) => {
      const [x, y] = placeInside(bay.region);
      return { id: bay.id, label: bay.id, at: [x, y, surfaceLevelM(deck, x, y) + ABOVE_SLAB_M], confirmed: bay.confirmed };
    }),
  };
}

/** The centroid, or where that is outside, the middle of the longest stretch inside at half height. */
function placeInside(region: Region): [number, number] {
  const [cx, cy] = centroidM(region.outer);
  if (isInside(region, cx, cy)) return [cx, cy];
  const box = boundsOf(region.outer);
  const y = (box.minY + box.maxY) / 2;
  const xs: number[] = [];
  for (const ring of ringsOf(region)) {
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      if (ring[i + 1] <= y === ring[j + 1] <= y) continue;
      xs.push(ring[i] + ((y - ring[i + 1]) / (ring[j + 1] - ring[i + 1])) * (ring[j] - ring[i]));
    }
  }
  xs.sort((p, q) => p - q);
  let longest = 0;
  for (let i = 2; i + 1 < xs.length; i += 2) if (xs[i + 1] - xs[i] > xs[longest + 1] - xs[longest]) longest = i;
  return [(xs[longest] + xs[longest + 1]) / 2, y];
}
