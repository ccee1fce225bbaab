/** Depths measured on site against the plan: difference, and what it would mean for the load. */

import { removed } from '../../edit/references.ts';
import type { ReportProbe } from '../../model/report.ts';
import { judge } from '../facts/utilisation.ts';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useScene } from '../use-stores.ts';
import { NewProbe } from './NewProbe.tsx';

const AROUND_M = 6;

export function ProbesList() {
  const probes = useScene((state) => state.snapshot?.report.probes);
  return (
    <div className="sheet-parts">
      <p>{t.probes.says}</p>
      <NewProbe />
      {probes === undefined || probes.length === 0 ? (
        <p>{t.probes.none}</p>
      ) : (
        <ul className="probes">
          {probes.map((probe) => (
            <li key={probe.id}>
              <Probe probe={probe} />
              <RemoveProbe id={probe.id} />
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

function RemoveProbe({ id }: { readonly id: string }) {
  const edit = useScene((state) => state.edit);
  const selected = { part: 'probe', id } as const;
  const remove = () => void edit((scene) => removed(scene, [selected]), { kind: 'parts', act: 'remove', part: 'probe', names: [id] });
  return (
    <button type="button" className="button" aria-label={t.probes.remove(id)} onClick={remove}>
      {t.probes.removeShort}
    </button>
  );
}

function Probe({ probe }: { readonly probe: ReportProbe }) {
  const names = useScene((state) => state.snapshot?.materialNames);
  const confirmed = useScene((state) => state.snapshot?.report.bays.find(({ id }) => id === probe.bay)?.confirmed ?? false);
  const told = useScene((state) => state.snapshot?.scene.probes?.find(({ id }) => id === probe.id));
  const go = useGo();
  const { id, at, zone, bay, layer, countedAs, utilisation } = probe;
  const over = utilisation !== null && judge(utilisation) === 'over';
  return (
    <button type="button" className="finding" data-over={over} onClick={() => go.toPoint(at, AROUND_M)}>
      <span className="finding-where">{t.probes.place(id, zone, bay)}</span>
      <span className="finding-says">{t.probes.measured(probe, layer === null ? null : (names?.get(layer) ?? layer))}</span>
      {countedAs !== null && countedAs !== layer && (
        <span className="finding-says">{t.probes.countedAs(names?.get(countedAs) ?? countedAs)}</span>
      )}
      <span className="finding-says">{t.probes.means(probe, utilisation === null ? null : judge(utilisation), confirmed)}</span>
      {(told?.on || told?.by) && <span className="finding-says">{t.probes.measuredOn(told.on ?? '', told.by ?? '')}</span>}
    </button>
  );
}
