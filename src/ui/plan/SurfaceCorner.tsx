/** On the drawing: nearer, farther, all; a bar of whole metres, north, and where the pointer is. */

import type { PointM } from '../../model/scene-file.ts';
import type { Surface } from '../../store/plan-draw.ts';
import { roundStep, type SizePx, zoomed } from '../facts/plan-surface.ts';
import { numberText, quantityText } from '../format.ts';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { usePlan } from './plan-context.ts';

const BAR_PX = 70;
const ZOOM = 1.4;

interface Props {
  readonly surface: Surface;
  readonly size: SizePx;
  readonly originM: PointM;
  readonly onAll: () => void;
}

export function SurfaceCorner({ surface, size, onAll }: Props) {
  const setSurface = usePlan((state) => state.setSurface);
  const zoom = (factor: number) => () => setSurface(zoomed(surface, factor, [size.width / 2, size.height / 2]));
  return (
    <>
      <div className="pe-zoom">
        <button type="button" className="icon-button" aria-label={t.draw.tools.nearer} title={t.draw.tools.nearer} onClick={zoom(ZOOM)}>
          <Icon name="plus" />
        </button>
        <button
          type="button"
          className="icon-button"
          aria-label={t.draw.tools.farther}
          title={t.draw.tools.farther}
          onClick={zoom(1 / ZOOM)}
        >
          <Icon name="minus" />
        </button>
        <button type="button" className="icon-button" aria-label={t.draw.tools.all} title={t.draw.tools.all} onClick={onAll}>
          <Icon name="home" />
        </button>
      </div>
      <div className="pe-foot" aria-hidden="true">
        <Bar scalePx={surface.scalePx} />
        <span className="pe-north">
          <svg width="14" height="18" viewBox="0 0 14 18" aria-hidden="true">
            <path d="M7 1L12 16L7 12.5L2 16z" />
          </svg>
          N
        </span>
        <Pointer />
      </div>
    </>
  );
}

function Bar({ scalePx }: { readonly scalePx: number }) {
  const stepM = roundStep(BAR_PX / scalePx);
  const width = stepM * scalePx;
  return (
    <span className="pe-bar">
      <svg width={width + 2} height="8" viewBox={`-1 0 ${width + 2} 8`} aria-hidden="true">
        <path d={`M0 1v6M0 4h${width}M${width} 1v6M${width / 2} 2.5v3`} />
      </svg>
      {quantityText(stepM, 'm').replace(/[.,]?0+(?=\s)/, '')}
    </span>
  );
}

function Pointer() {
  const aim = usePlan((state) => state.aim);
  if (aim === null) return null;
  return (
    <span className="pe-at">
      x {numberText(aim.at[0], 2)} · y {numberText(aim.at[1], 2)}
    </span>
  );
}
