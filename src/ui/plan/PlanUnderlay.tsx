/** The picture below the plan, where it was put to scale. */

import { useEffect } from 'react';
import type { PointM } from '../../model/scene-file.ts';
import type { Surface } from '../../store/plan-draw.ts';
import { keptUnder } from './kept-underlay.ts';
import { usePlan, usePlanStore } from './plan-context.ts';
import { useSceneFile } from './use-drawn-lists.ts';

export function PlanUnderlay({ surface, originM }: { readonly surface: Surface; readonly originM: PointM }) {
  const underlay = usePlan((state) => state.underlay);
  useFoundAgain();
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

/** The picture of the last visit; `of` changes once the plan shows another deck. */
function useFoundAgain(): void {
  const plan = usePlanStore();
  const of = usePlan((state) => state.of);
  const name = useSceneFile()?.name ?? '';
  // biome-ignore lint/correctness/useExhaustiveDependencies: looked for once for each deck
  useEffect(() => {
    let isWanted = plan.getState().underlay === null;
    if (isWanted)
      void keptUnder('pictures', name).then((kept) => {
        if (isWanted && kept !== null && plan.getState().underlay === null) plan.getState().setUnderlay(kept);
      });
    return () => {
      isWanted = false;
    };
  }, [plan, name, of]);
}
