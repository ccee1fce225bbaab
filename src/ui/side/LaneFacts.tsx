/** One lane for fire appliances: what is drawn, what the rule asks for, and where that stands. */

import { type ListedLane, middleOf } from '../facts/site-list.ts';
import { mmText } from '../format.ts';
import { type Fact, FactTable } from '../parts/FactTable.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';

/** Seen with at least this much around it [m]. */
const LEAST_M = 10;

export function LaneFacts({ lane }: { readonly lane: ListedLane }) {
  const go = useGo();
  const middle = middleOf(lane.line);
  return (
    <div>
      <button
        type="button"
        className="row-button"
        disabled={middle === null}
        aria-label={t.lanes.pick(lane.id)}
        onClick={() => middle && go.toPoint(middle.at, Math.max(LEAST_M, middle.lengthM))}
      >
        {lane.id}
      </button>
      <FactTable facts={factsOf(lane)} />
      <p className="small">{t.lanes.source(lane.source)}</p>
    </div>
  );
}

function factsOf({ widthM, missingM, faults, requiredM, leastOuterM, steepestPercent, stepMm, ruleName, country }: ListedLane): Fact[] {
  const narrow = missingM !== null && missingM > 0;
  const drawn = widthM === null ? t.lanes.notDrawn : t.lanes.metres(widthM);
  return [
    { name: t.lanes.width, value: narrow ? `${drawn}, ${t.lanes.short(missingM)}` : drawn, wrong: narrow || widthM === null },
    { name: t.lanes.required, value: t.lanes.metres(requiredM) },
    { name: t.lanes.radius, value: leastOuterM === null ? t.lanes.straight : t.lanes.metres(leastOuterM), wrong: faults.radius },
    {
      name: t.lanes.steepest,
      value: steepestPercent === null ? t.lanes.unknown : t.lanes.percent(steepestPercent),
      wrong: faults.gradient,
    },
    { name: t.lanes.step, value: stepMm === null ? t.lanes.noStep : mmText(stepMm), wrong: faults.step },
    { name: t.lanes.rule, value: t.lanes.ruleOf(ruleName, country) },
  ];
}
