/** Lines of the grid at round distances, through whole metres of the file's coordinates. */

import type { PointM } from '../../model/scene-file.ts';
import type { Surface } from '../../store/plan-draw.ts';
import { atPixel, gridStepM, type SizePx, toPixel } from '../facts/plan-surface.ts';

/** Lines are at least this far apart [px]. */
const APART_PX = 44;

interface Props {
  readonly surface: Surface;
  readonly size: SizePx;
  readonly originM: PointM;
}

export function PlanGrid({ surface, size, originM }: Props) {
  const stepM = gridStepM(surface, APART_PX);
  const [left, top] = atPixel([0, 0], surface);
  const [right, bottom] = atPixel([size.width, size.height], surface);
  const lines: string[] = [];
  for (const x of steps(left, right, stepM, originM[0])) {
    const [px] = toPixel([x, 0], surface);
    lines.push(`M${px.toFixed(1)} 0V${size.height}`);
  }
  for (const y of steps(bottom, top, stepM, originM[1])) {
    const [, py] = toPixel([0, y], surface);
    lines.push(`M0 ${py.toFixed(1)}H${size.width}`);
  }
  return <path className="pe-grid" d={lines.join('')} />;
}

/** Local places of the lines between two ends, at whole steps of the file's coordinates. */
function steps(from: number, to: number, stepM: number, origin: number): number[] {
  const first = Math.ceil((from + origin) / stepM);
  const last = Math.floor((to + origin) / stepM);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * stepM - origin);
}
