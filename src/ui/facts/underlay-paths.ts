/** Lines under the plan as paths to be drawn and as points to be caught. */

import type { PreviewLayer } from '../../model/importer.ts';
import type { PointM } from '../../model/scene-file.ts';
import type { UnderlayLines } from '../../store/underlay-lines.ts';
import { layerPath } from './preview-paths.ts';

/** In metres from the corner of the lines, y up: a path stays the same however the plan is moved and zoomed. */
export const underlayPath = (layer: PreviewLayer): string => layerPath(layer, ([x, y]) => `${x} ${y}`);

/** Corner and way to a point add up to crumbs: coordinates are told to a nanometre, as the drawing has them. */
const tidy = (coordinateM: number): number => Math.round(coordinateM * 1e9) / 1e9;

/** Lines of the layers that are seen, coordinates of the file. */
export function underlayPoints({
  at: [atX, atY],
  layers,
  off,
}: Pick<UnderlayLines, 'at' | 'layers' | 'off'>): readonly (readonly PointM[])[] {
  return layers
    .filter(({ name }) => !off.has(name))
    .flatMap(({ points, starts }) =>
      Array.from(starts, (from, i) =>
        Array.from({ length: (starts[i + 1] ?? points.length / 2) - from }, (_, k): PointM => {
          const [x = 0, y = 0] = points.subarray(2 * (from + k), 2 * (from + k) + 2);
          return [tidy(atX + x), tidy(atY + y)];
        }),
      ),
    );
}
