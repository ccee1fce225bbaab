/** Where nothing can help, and why: limits in the way, aims without an answer, zones and changes left out. */

import type { LightenAnswer } from '../../model/lighten.ts';
import { byCases } from '../../model/lighten-cases.ts';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useStageNumber } from '../use-stage-name.ts';

export function LightenObstacles({ answer }: { readonly answer: LightenAnswer }) {
  const { obstacles, unsolved, passedOver, leftOut } = answer;
  const go = useGo();
  const numberOf = useStageNumber();
  if (obstacles.length + unsolved.length + passedOver.length + leftOut.length === 0) return null;
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.lighten.obstacles}</h2>
      <ul className="variant-changes">
        {byCases(obstacles).map((obstacle) => (
          <li key={`${obstacle.bay} ${obstacle.at} ${obstacle.lightestKNm2}`} className="lighten-obstacle">
            <span>
              {t.lighten.obstacle({ ...obstacle, cases: obstacle.cases.map((one) => ({ ...one, stage: numberOf(one.stage) })) })}{' '}
              {obstacle.hindrances.length > 0 && t.lighten.inTheWay(obstacle.hindrances)}
            </span>
            <button type="button" className="row-button" onClick={() => go.toBay(obstacle.bay, obstacle.at)}>
              {t.lighten.showPlace}
            </button>
          </li>
        ))}
        {unsolved.map(({ aim, why }) => (
          <li key={`${aim} ${why}`}>{t.lighten.unsolved(aim, why)}</li>
        ))}
        {passedOver.map(({ zone, why }) => (
          <li key={zone}>{t.lighten.passedOver(zone, why)}</li>
        ))}
        {leftOut.map(({ zone, change, fromMm, rule, says }) => (
          <li key={`${zone} ${change} ${rule}`}>
            {change === 'substrate' ? t.lighten.leftThick(zone, fromMm, says) : t.lighten.leftOut(zone, change, fromMm, says)}
          </li>
        ))}
      </ul>
    </section>
  );
}
