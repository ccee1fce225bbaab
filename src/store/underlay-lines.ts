/** Lines of a drawing that lie under the plan, to be drawn over. They are no part of the scene. */

import type { PreviewLayer } from '../model/importer.ts';
import type { PointM } from '../model/scene-file.ts';

export interface UnderlayLines {
  /** Name of the file they come from. */
  readonly name: string;
  /** Corner from which their points are counted, coordinates of the file [m]. */
  readonly at: PointM;
  readonly layers: readonly PreviewLayer[];
}
