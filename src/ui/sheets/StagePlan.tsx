/** Small plan for the crew: bays, stockpiles, the band along open edges and ways onto the deck; stands in where no picture can be taken. */

import { useMemo } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import { type PlanFrame, planFrame, planPath, planPoint } from '../facts/plan-frame.ts';
import { EDGE_BAND_FILL, partFill } from '../parts/Hatches.tsx';

const SIZE = 420;
const MARGIN = 8;

interface Props {
  readonly snapshot: Snapshot;
  readonly stage: number;
  readonly label: string;
  /** A line per bay under its name. */
  readonly lineOf?: ((bay: string) => string) | undefined;
}

export function StagePlan({ snapshot, stage, label, lineOf }: Props) {
  const frame = useMemo(() => planFrame(snapshot, SIZE, MARGIN), [snapshot]);
  const { deck, accessPoints = [], stages = [] } = snapshot.scene;
  const piles = stages[stage]?.stockpiles ?? [];
  return (
    <svg className="stage-plan" role="img" aria-label={label} viewBox={frame.viewBox}>
      <path className="plan-deck" d={planPath(deck.outline, frame)} />
      <Band snapshot={snapshot} frame={frame} />
      {deck.bays.map(({ id, outline }) => (
        <path key={id} className="stage-plan-bay" d={planPath(outline, frame)} />
      ))}
      {deck.openings?.map((ring) => (
        <path key={ring.join(' ')} className="plan-opening" d={planPath(ring, frame)} />
      ))}
      {piles.map(({ id, outline }) => (
        <path key={id} className="stage-plan-pile" fill={partFill('stockpile')} d={planPath(outline, frame)} />
      ))}
      <BayNames snapshot={snapshot} frame={frame} lineOf={lineOf} />
      {accessPoints.map(({ id, at }) => {
        const [x, y] = planPoint(at, frame);
        return (
          <g key={id} className="stage-plan-access" transform={`translate(${x} ${y})`}>
            <circle r="9" />
            <text dy="0.35em">{id}</text>
          </g>
        );
      })}
    </svg>
  );
}

/** The band's lines are drawn as wide as their hatch. */
function Band({ snapshot, frame }: { readonly snapshot: Snapshot; readonly frame: PlanFrame }) {
  const { edgeBand } = snapshot.picture;
  const at = (i: number) => `${(edgeBand[i] ?? 0) * frame.scale} ${-(edgeBand[i + 1] ?? 0) * frame.scale}`;
  const lines = Array.from({ length: edgeBand.length / 4 }, (_, k) => `M${at(4 * k)}L${at(4 * k + 2)}`).join('');
  return <path className="stage-plan-band" stroke={EDGE_BAND_FILL} d={lines} />;
}

interface NamesProps {
  readonly snapshot: Snapshot;
  readonly frame: PlanFrame;
  readonly lineOf: Props['lineOf'];
}

const MOST_LETTERS = 20;

function BayNames({ snapshot, frame, lineOf }: NamesProps) {
  return snapshot.scene.deck.bays.map(({ id, outline }) => {
    const points = outline.map((point) => planPoint(point, frame));
    const xs = points.map(([x]) => x);
    const ys = points.map(([, y]) => y);
    const lines = [id, ...(lineOf === undefined ? [] : [lineOf(id)])];
    const width = Math.max(...xs) - Math.min(...xs);
    const letters = Math.min(
      MOST_LETTERS,
      (1.9 * width) / Math.max(...lines.map((line) => line.length)),
      (Math.max(...ys) - Math.min(...ys)) / (1.3 * lines.length),
    );
    const x = (Math.max(...xs) + Math.min(...xs)) / 2;
    const y = (Math.max(...ys) + Math.min(...ys)) / 2 - ((lines.length - 1) * letters * 1.1) / 2;
    return (
      <text key={id} className="stage-plan-name" x={x} y={y} fontSize={letters}>
        {lines.map((line, i) => (
          <tspan key={line} x={x} dy={i === 0 ? '0.35em' : '1.1em'}>
            {line}
          </tspan>
        ))}
      </text>
    );
  });
}
