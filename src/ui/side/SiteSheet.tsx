/** The site: lanes for fire appliances, reach per stage, access points, open edges. */

import { useMemo } from 'react';
import { listAreas, listLanes } from '../facts/site-list.ts';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useScene } from '../use-stores.ts';
import { AreaFacts } from './AreaFacts.tsx';
import { LaneFacts } from './LaneFacts.tsx';
import { ReachTable } from './ReachTable.tsx';

const AROUND_M = 14;

export function SiteSheet() {
  const snapshot = useScene((state) => state.snapshot);
  const lanes = useMemo(() => (snapshot ? listLanes(snapshot.report, snapshot.scene) : []), [snapshot]);
  const areas = useMemo(() => (snapshot ? listAreas(snapshot.report, snapshot.scene) : []), [snapshot]);
  if (snapshot === null) return null;
  return (
    <div className="sheet-parts">
      {lanes.length > 0 && (
        <section className="sheet-part">
          <h2 className="block-title">{t.lanes.title}</h2>
          <p className="small">{t.lanes.says}</p>
          {lanes.map((lane) => (
            <LaneFacts key={lane.id} lane={lane} />
          ))}
        </section>
      )}
      {areas.length > 0 && (
        <section className="sheet-part">
          <h2 className="block-title">{t.areas.title}</h2>
          <p className="small">{t.areas.says}</p>
          {areas.map((area) => (
            <AreaFacts key={area.id} area={area} />
          ))}
        </section>
      )}
      <ReachTable />
      <AccessPoints />
      <section className="sheet-part">
        <h2 className="block-title">{t.site.edgesTitle}</h2>
        <p>{t.site.edges}</p>
      </section>
    </div>
  );
}

function AccessPoints() {
  const points = useScene((state) => state.snapshot?.scene.accessPoints);
  const go = useGo();
  if (points === undefined || points.length === 0) return null;
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.site.access}</h2>
      <ul>
        {points.map((point) => (
          <li key={point.id}>
            <button
              type="button"
              className="finding"
              aria-label={t.site.accessPick(point.id)}
              onClick={() => go.toPoint(point.at, AROUND_M)}
            >
              {t.site.accessPoint(point)}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
