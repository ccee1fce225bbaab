/** Lines of a drawing under the plan, thin and grey. */

import { memo, useMemo } from 'react';
import type { PreviewLayer } from '../../model/importer.ts';
import type { PointM } from '../../model/scene-file.ts';
import type { Surface } from '../../store/plan-draw.ts';
import { underlayPath } from '../facts/underlay-paths.ts';
import { useView } from '../use-stores.ts';
import { useKeptLines } from './use-kept-lines.ts';

export function PlanUnderlayLines({ surface, originM }: { readonly surface: Surface; readonly originM: PointM }) {
  const lines = useView((state) => state.underlayLines);
  useKeptLines();
  if (lines === null || !lines.shown) return null;
  const { at, layers, off, opacity } = lines;
  const { scalePx, panPx } = surface;
  const x = panPx[0] + (at[0] - originM[0]) * scalePx;
  const y = panPx[1] - (at[1] - originM[1]) * scalePx;
  return (
    <g className="pe-underlay-lines" opacity={opacity} transform={`matrix(${scalePx} 0 0 ${-scalePx} ${x} ${y})`}>
      {layers.map((layer) => !off.has(layer.name) && <Layer key={layer.name} layer={layer} />)}
    </g>
  );
}

const Layer = memo(function Layer({ layer }: { readonly layer: PreviewLayer }) {
  const d = useMemo(() => underlayPath(layer), [layer]);
  return <path d={d} />;
});
