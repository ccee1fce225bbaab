/** Names on the plan, where they have room. */

import type { Snapshot } from '../../model/engine.ts';
import type { SceneBay, SceneStage } from '../../model/scene-file.ts';
import type { PlanLayer } from '../../store/plan-draw.ts';
import type { PlanFrame } from '../facts/plan-frame.ts';
import { planLabels } from '../facts/plan-labels.ts';
import { levelText, loadNumber } from '../format.ts';
import { t } from '../text/text.ts';

interface Props {
  readonly snapshot: Snapshot;
  readonly stage: SceneStage | undefined;
  readonly hidden: ReadonlySet<PlanLayer>;
  readonly frame: PlanFrame;
}

/** What a bay carries, in as few figures as there are. */
function carries({ permanentKNm2, imposedKNm2, totalKNm2 }: SceneBay): string {
  if (totalKNm2 !== undefined) return t.draw.total(loadNumber(totalKNm2));
  if (permanentKNm2 === undefined && imposedKNm2 === undefined) return t.draw.noLoad;
  return [permanentKNm2, imposedKNm2].map((load) => (load === undefined ? '–' : loadNumber(load))).join(' / ');
}

export function PlanNames({ snapshot: { scene }, stage, hidden, frame }: Props) {
  const labels = planLabels({ scene, stage, hidden, frame, words: { carries, level: levelText } });
  return (
    <g className="pe-names">
      {labels.map(({ key, kind, lines, at: [x, y], anchor, missing = false }) => (
        <text key={key} data-kind={kind} data-missing={missing} x={x} y={y} textAnchor={anchor}>
          {lines.map((line, i) => (
            <tspan key={line} x={x} dy={i === 0 ? 0 : '1.15em'}>
              {line}
            </tspan>
          ))}
        </text>
      ))}
    </g>
  );
}
