/** The map of the model under the lines of the plan: the same classes and hatches. */

import { memo } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import { PlanMap } from '../frame/PlanFallback.tsx';

export const PlanTint = memo(function PlanTint({ snapshot, scalePx }: { readonly snapshot: Snapshot; readonly scalePx: number }) {
  return (
    <g className="pe-tint">
      <PlanMap snapshot={snapshot} frame={{ scale: scalePx, originM: snapshot.originM, viewBox: '' }} />
    </g>
  );
});
