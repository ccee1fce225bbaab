/** Lines of a drawing that lie under the plan, to be drawn over. They are no part of the scene. */

import type { Preview, PreviewLayer } from '../model/importer.ts';
import type { PointM } from '../model/scene-file.ts';

export interface UnderlayLines {
  /** Name of the file they come from. */
  readonly name: string;
  /** Corner from which their points are counted, coordinates of the file [m]. */
  readonly at: PointM;
  readonly layers: readonly PreviewLayer[];
  /** Names of layers that are neither seen nor caught. */
  readonly off: ReadonlySet<string>;
  /** 0 … 1. */
  readonly opacity: number;
  readonly shown: boolean;
}

const OPACITY = 0.8;

/** All layers that have lines, to be seen. */
export function underlayLinesOf(name: string, { at, layers }: Preview): UnderlayLines {
  return { name, at, layers: layers.filter(({ starts }) => starts.length > 0), off: new Set(), opacity: OPACITY, shown: true };
}
