/** The section that is shown beside the model, and the one being drawn. Part of the view store. */

import type { PointM } from '../model/scene-file.ts';

/** Heights are drawn this many times as large as lengths. */
export const HEIGHTS = [1, 2, 5] as const;
/** 1 : this. */
export const SECTION_SCALES = [10, 20, 25, 50, 100, 200] as const;

export interface SectionView {
  /** Coordinates of the file [m]. */
  readonly line: readonly PointM[];
  /** Stands where the cut of the model stands, and goes with it. */
  readonly ofCut: boolean;
  readonly scale: number;
  readonly heights: number;
}

/** Of the first section. */
export const SECTION_START = { scale: 50, heights: 1 } as const;
