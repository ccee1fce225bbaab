/** One blocked outlet: how far its water rises, where it leaves, what it weighs on the bays; and the depth shown in the model. */

import { useMemo } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import type { ReportBlocked } from '../../model/report-water.ts';
import { blockedVerdict, heldLevelM, type ListedWetBay, listWetBays } from '../facts/water-list.ts';
import { areaText, levelText } from '../format.ts';
import { type Fact, FactTable } from '../parts/FactTable.tsx';
import { Stepper } from '../parts/Stepper.tsx';
import { TableHead } from '../parts/TableHead.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useView } from '../use-stores.ts';

/** Steps in which the water is held on its way up. */
const STEPS = 20;

export function BlockedFacts({ snapshot }: { readonly snapshot: Snapshot }) {
  const id = useView((state) => state.blocked);
  const block = useView((state) => state.blockOutlet);
  const flat = useView((state) => state.canvas === 'unavailable');
  const blocked = snapshot.report.water?.blocked.find(({ outlet }) => outlet === id);
  const wet = useMemo(() => (blocked ? listWetBays(blocked, snapshot.report.bays) : []), [blocked, snapshot]);
  if (blocked === undefined) return null;
  const verdict = blockedVerdict(blocked, wet);
  return (
    <section className="sheet-part water-blocked" aria-label={t.water.chosen(blocked.outlet)}>
      <div className="water-chosen">
        <h2 className="block-title">{t.water.chosen(blocked.outlet)}</h2>
        <button type="button" className="button" aria-label={t.water.open(blocked.outlet)} onClick={() => block(null)}>
          {t.water.openShort}
        </button>
      </div>
      <p className={verdict === 'within' || verdict === 'dry' ? 'water-verdict' : 'water-verdict water-wrong'}>
        {t.water.verdict(verdict)} {t.water.verdictDecides}
      </p>
      {!flat && blocked.depthMm !== null && <Held blocked={blocked} depthMm={blocked.depthMm} />}
      {!flat && blocked.depthMm !== null && <SlabAlone />}
      <FactTable facts={factsOf(blocked)} />
      <p className="small">{t.water.chosenSays}</p>
      {wet.length > 0 && <WetBays wet={wet} />}
    </section>
  );
}

/** Takes the layers off the slab, so that the water lies open. */
function SlabAlone() {
  const alone = useView((state) => state.onlyKind === 'slab');
  const closed = useView((state) => state.explode < 0.05 && !state.cut.on);
  const isolate = useView((state) => state.isolateKind);
  return (
    <div className="water-chosen">
      <button type="button" className="button" aria-pressed={alone} onClick={() => isolate(alone ? null : 'slab')}>
        {alone ? t.water.layersToo : t.water.slabAlone}
      </button>
      {closed && !alone && <span className="small">{t.water.through}</span>}
    </div>
  );
}

function factsOf({ levelM, depthMm, areaM2, litres, into }: ReportBlocked): Fact[] {
  if (levelM === null) return [{ name: t.water.leaves, value: t.water.leavesNowhere, wrong: true }];
  return [
    { name: t.water.rises, value: levelText(levelM) },
    ...(depthMm === null ? [] : [{ name: t.water.deepest, value: t.water.deep(depthMm) }]),
    ...(areaM2 === null ? [] : [{ name: t.water.spread, value: areaText(areaM2) }]),
    ...(litres === null ? [] : [{ name: t.water.litres, value: t.water.litresText(litres) }]),
    { name: t.water.leaves, value: into ?? t.water.leavesNowhere },
  ];
}

/** Buttons go to the next whole step; slider and arrow keys by one step. */
function Held({ blocked, depthMm }: { readonly blocked: ReportBlocked; readonly depthMm: number }) {
  const heldMm = useView((state) => state.heldMm);
  const hold = useView((state) => state.holdWater);
  const shownMm = Math.min(heldMm ?? depthMm, depthMm);
  const stepMm = depthMm / STEPS;
  const step = Math.round(shownMm / stepMm);
  const to = (next: number) => hold(next >= STEPS ? null : Math.max(0, next) * stepMm);
  const levelM = heldLevelM(blocked, shownMm) ?? 0;
  return (
    <div>
      <div className="slider-row">
        <Stepper label={t.water.hold} onLess={step <= 0 ? null : () => to(step - 1)} onMore={step >= STEPS ? null : () => to(step + 1)}>
          <input
            type="range"
            aria-label={t.water.hold}
            aria-valuetext={t.water.holdText(shownMm, levelM)}
            min={0}
            max={STEPS}
            step={1}
            value={step}
            onChange={(event) => to(Number(event.target.value))}
          />
        </Stepper>
      </div>
      <p className="small water-held">{t.water.holdShown(shownMm, levelM)}</p>
    </div>
  );
}

function WetBays({ wet }: { readonly wet: readonly ListedWetBay[] }) {
  const go = useGo();
  return (
    <table className="numbers water-bays">
      <caption className="unseen">{t.water.wetCaption}</caption>
      <TableHead heads={[t.water.bay, t.water.waterLoad, t.water.useWith]} />
      <tbody>
        {wet.map(({ bay, at, waterKNm2, before, utilisation, status }) => (
          <tr key={bay}>
            <th scope="row">
              <button type="button" className="row-button" aria-label={t.water.bayPick(bay)} onClick={() => go.toBay(bay, at)}>
                {bay}
              </button>
            </th>
            <td>{t.water.waterLoadText(waterKNm2)}</td>
            <td>
              {t.water.usedWith(before, utilisation)}
              <span
                className={status.startsWith('over') ? 'small block water-wrong' : 'small block'}
                data-unconfirmed={status === 'not confirmed'}
              >
                {t.water.wetStatus(status)}
              </span>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
