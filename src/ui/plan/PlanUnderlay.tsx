/** The picture below the plan, where it was put to scale. */

import type { PointM } from '../../model/scene-file.ts';
import type { Surface } from '../../store/plan-draw.ts';
import { usePlan } from './plan-context.ts';

export function PlanUnderlay({ surface, originM }: { readonly surface: Surface; readonly originM: PointM }) {
  const underlay = usePlan((state) => state.underlay);
  if (underlay === null || !underlay.shown) return null;
  const { url, widthPx, heightPx, opacity, place } = underlay;
  const { scalePx, panPx } = surface;
  const [a, b] = [place.a * scalePx, place.b * scalePx];
  const x = panPx[0] + (place.dx - originM[0]) * scalePx;
  const y = panPx[1] - (place.dy - originM[1]) * scalePx;
  // Pixels of the picture run down as those of the page do.
  return (
    <image
      className="pe-underlay"
      href={url}
      width={widthPx}
      height={heightPx}
      opacity={opacity}
      preserveAspectRatio="none"
      transform={`matrix(${a} ${-b} ${b} ${a} ${x} ${y})`}
    />
  );
}
