/** Small plan for the crew: bays, stockpiles, the band along open edges and ways onto the deck; stands in where no picture can be taken. */

import { useMemo } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import type { PolygonM } from '../../model/scene-file.ts';
import { fitText } from '../facts/fit-label.ts';
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

const SIZES = { most: 20, least: 5 } as const;
/** Of letters, as wide as those of figures in the narrow type; from line to line. */
const WIDTH = 0.5;
const LINE = 1.1;

/** Off the openings; what has no room stands in the words beside the plan. */
function BayNames({ snapshot, frame, lineOf }: NamesProps) {
  const { deck } = snapshot.scene;
  const onPlan = (ring: PolygonM) => ring.map((point) => planPoint(point, frame));
  const openings = (deck.openings ?? []).map(onPlan);
  return deck.bays.map(({ id, outline }) => {
    const lines = [id, ...(lineOf === undefined ? [] : [lineOf(id)])];
    const width = WIDTH * Math.max(...lines.map((line) => line.length)) + 0.3;
    const fitted = fitText(onPlan(outline), openings, { width, height: LINE * lines.length }, SIZES);
    if (fitted === null) return null;
    const { at, letters } = fitted;
    return (
      <text key={id} className="stage-plan-name" x={at[0]} y={at[1] - ((lines.length - 1) * letters * LINE) / 2} fontSize={letters}>
        {lines.map((line, i) => (
          <tspan key={line} x={at[0]} dy={i === 0 ? '0.35em' : `${LINE}em`}>
            {line}
          </tspan>
        ))}
      </text>
    );
  });
}
