/** Water: what each outlet gets, what a blocked one does, what stays, what is held, run-off, drainage, uplift; and who decides. */

import { useMemo } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import { listPonds } from '../facts/water-list.ts';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useScene, useView } from '../use-stores.ts';
import { BlockedFacts } from './BlockedFacts.tsx';
import { DrainTable, RunoffTable, UpliftTable } from './WaterChecks.tsx';
import { HeldTable } from './WaterHeld.tsx';
import { OutletsTable, OverflowsTable } from './WaterOutlets.tsx';

/** Enough around a pond to see where it is. */
const AROUND_M = 10;
const MAPS = ['catchment', 'flow', 'ponding', 'held'] as const;

export function WaterSheet() {
  const snapshot = useScene((state) => state.snapshot);
  if (snapshot === null) return null;
  const { water } = snapshot.report;
  return (
    <div className="sheet-parts water">
      <Basis snapshot={snapshot} />
      {water && <WaterMaps />}
      {water && <BlockedFacts snapshot={snapshot} />}
      {water && <OutletsTable snapshot={snapshot} />}
      {water && <OverflowsTable snapshot={snapshot} />}
      {water && <Ponds snapshot={snapshot} />}
      <HeldTable report={snapshot.report} />
      {water && <RunoffTable water={water} />}
      {water && <DrainTable water={water} names={snapshot.materialNames} />}
      {water && <UpliftTable water={water} snapshot={snapshot} />}
    </div>
  );
}

function Basis({ snapshot: { report } }: { readonly snapshot: Snapshot }) {
  const { water } = report;
  return (
    <section className="sheet-part">
      <p>{t.water.decides}</p>
      {water === undefined && <p>{t.water.nothing}</p>}
      {water?.rain && <p className="small">{t.water.rain(water.rain.designLpsHa, water.rain.extremeLpsHa, water.rain.source)}</p>}
      {water && !water.rain && <p className="water-missing">{t.water.noRain}</p>}
      {water && water.undrainedM2 > 0.05 && <p className="water-missing">{t.water.undrained(water.undrainedM2)}</p>}
    </section>
  );
}

function WaterMaps() {
  const map = useView((state) => state.map);
  const showMap = useView((state) => state.showMap);
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.water.maps}</h2>
      <div className="sheet-buttons">
        {MAPS.map((kind) => (
          <button
            key={kind}
            type="button"
            className="button"
            aria-pressed={map === kind}
            onClick={() => showMap(map === kind ? null : kind)}
          >
            {t.map.name(kind)}
          </button>
        ))}
      </div>
    </section>
  );
}

function Ponds({ snapshot: { report } }: { readonly snapshot: Snapshot }) {
  const ponds = useMemo(() => listPonds(report), [report]);
  const go = useGo();
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.water.ponds}</h2>
      <p className="small">{ponds.length === 0 ? t.water.noPonds : t.water.pondsSay}</p>
      {ponds.length > 0 && (
        <ul>
          {ponds.map((pond, i) => (
            <li key={pond.at.join(' ')} data-wrong={pond.deep}>
              <button
                type="button"
                className="finding"
                aria-describedby={`pond-${i}`}
                aria-label={t.water.pondPick(i + 1)}
                onClick={() => go.toPoint(pond.at, AROUND_M)}
              >
                <span id={`pond-${i}`}>{t.water.pond(pond.depthMm, pond.areaM2, pond.litres, pond.zone)}</span>
                {pond.deep && <span className="block water-wrong">{t.water.pondDeep}</span>}
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
