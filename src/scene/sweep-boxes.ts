/** Pairs of overlapping boxes, by sorting along x. */

export interface Box {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/**
 * Visits each pair of boxes that overlap or touch, once.
 * @param boxes - the boxes
 * @param visit - called with each pair; false ends the search
 */
export function sweepBoxes<T extends Box>(boxes: readonly T[], visit: (a: T, b: T) => boolean): void {
  const ordered = [...boxes].sort((a, b) => a.minX - b.minX);
  for (const [i, a] of ordered.entries()) {
    for (let j = i + 1; j < ordered.length; j++) {
      const b = ordered[j];
      if (b === undefined || b.minX > a.maxX) break;
      if (b.minY <= a.maxY && b.maxY >= a.minY && !visit(a, b)) return;
    }
  }
}
