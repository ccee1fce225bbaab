/** A small plan on which the line of a section is tapped. */

import { type MouseEvent, useMemo } from 'react';
import type { PointM } from '../../model/scene-file.ts';
import { boxOf } from '../facts/place.ts';
import { planFrame, planPath, planPoint } from '../facts/plan-frame.ts';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';

const SIZE = 320;
const MARGIN = 16;

interface Props {
  readonly points: readonly PointM[];
  readonly onTap: (point: PointM) => void;
}

export function SectionPlan({ points, onTap }: Props) {
  const snapshot = useScene((state) => state.snapshot);
  const frame = useMemo(() => snapshot && planFrame(snapshot, SIZE, MARGIN), [snapshot]);
  if (snapshot === null || frame === null) return null;
  const { deck, zones } = snapshot.scene;
  const onClick = (event: MouseEvent<SVGSVGElement>) => {
    const matrix = event.currentTarget.getScreenCTM();
    if (matrix === null) return;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    onTap([toCentimetre(at.x / frame.scale + frame.originM[0]), toCentimetre(-at.y / frame.scale + frame.originM[1])]);
  };
  const onPlan = points.map((point) => planPoint(point, frame));
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: by keyboard points are typed beside it, as the label says
    <svg className="plan-drawing section-plan" role="img" aria-label={t.section.plan} viewBox={frame.viewBox} onClick={onClick}>
      <path className="plan-deck" d={planPath(deck.outline, frame)} />
      {zones.map(({ id, outline, holes }) => (
        <path
          key={id}
          className="plan-zone"
          fillRule="evenodd"
          d={[outline, ...(holes ?? [])].map((ring) => planPath(ring, frame)).join('')}
        />
      ))}
      {deck.openings?.map((ring) => (
        <path key={ring.join(' ')} className="plan-opening" d={planPath(ring, frame)} />
      ))}
      {deck.bays.map(({ id, outline }) => {
        const { min, max } = boxOf(outline.map((point) => planPoint(point, frame)));
        return (
          <g key={id} className="plan-bay">
            <path d={planPath(outline, frame)} />
            <text x={(min[0] + max[0]) / 2} y={(min[1] + max[1]) / 2} fontSize={Math.min(12, (max[0] - min[0]) / id.length)}>
              {id}
            </text>
          </g>
        );
      })}
      <polyline className="section-line" points={onPlan.map((point) => point.join(',')).join(' ')} />
      {onPlan.map(([x, y], i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two points may be at one place
        <circle key={i} className="section-point" cx={x} cy={y} r={4} />
      ))}
    </svg>
  );
}

const toCentimetre = (valueM: number) => Math.round(valueM * 100) / 100;
