/** Depths measured on site against the plan: difference, and what it would mean for the load. */

import type { ReportProbe } from '../../model/report.ts';
import { judge } from '../facts/utilisation.ts';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useScene } from '../use-stores.ts';

const AROUND_M = 6;

export function ProbesList() {
  const probes = useScene((state) => state.snapshot?.report.probes);
  if (probes === undefined || probes.length === 0) return <p>{t.probes.none}</p>;
  return (
    <div className="sheet-parts">
      <p>{t.probes.says}</p>
      <ul className="probes">
        {probes.map((probe) => (
          <li key={probe.id}>
            <Probe probe={probe} />
          </li>
        ))}
      </ul>
    </div>
  );
}

function Probe({ probe }: { readonly probe: ReportProbe }) {
  const names = useScene((state) => state.snapshot?.materialNames);
  const confirmed = useScene((state) => state.snapshot?.report.bays.find(({ id }) => id === probe.bay)?.confirmed ?? false);
  const go = useGo();
  const { id, at, zone, bay, layer, utilisation } = probe;
  const over = utilisation !== null && judge(utilisation) === 'over';
  return (
    <button type="button" className="finding" data-over={over} onClick={() => go.toPoint(at, AROUND_M)}>
      <span className="finding-where">{t.probes.place(id, zone, bay)}</span>
      <span className="finding-says">{t.probes.measured(probe, layer === null ? null : (names?.get(layer) ?? layer))}</span>
      <span className="finding-says">{t.probes.means(probe, utilisation === null ? null : judge(utilisation), confirmed)}</span>
    </button>
  );
}
