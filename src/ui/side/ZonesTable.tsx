/** Zones with area, depth and load; each can be gone to, hidden, or shown alone. */

import { useMemo } from 'react';
import type { DerivationAsk } from '../../model/derivation.ts';
import type { ReportZone, Spread } from '../../model/report.ts';
import { cellText, loadNumber, numberText } from '../format.ts';
import { Icon } from '../parts/Icon.tsx';
import { Derived } from '../sheets/Derived.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useScene, useView } from '../use-stores.ts';

/** Below this an area is rounding, not a fault [m²]. */
const LEAST_M2 = 0.05;

export function ZonesTable() {
  const zones = useScene((state) => state.snapshot?.report.zones);
  const given = useScene((state) => state.snapshot?.scene.zones);
  const names = useMemo(() => new Map(given?.map(({ id, name }) => [id, name ?? ''])), [given]);
  if (zones === undefined) return null;
  if (zones.length === 0) return <p>{t.zones.none}</p>;
  return (
    <table className="zones numbers">
      <caption className="unseen">{t.zones.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{t.zones.zone}</th>
          <th scope="col">{t.zones.area}</th>
          <th scope="col">{t.zones.depth}</th>
          <th scope="col">{t.zones.load}</th>
        </tr>
      </thead>
      <tbody>
        {zones.map((zone) => (
          <ZoneRow key={zone.id} zone={zone} name={names.get(zone.id) ?? ''} />
        ))}
      </tbody>
    </table>
  );
}

function ZoneRow({ zone, name }: { readonly zone: ReportZone; readonly name: string }) {
  const go = useGo();
  const called = name === '' ? zone.id : name;
  return (
    <tr className="zone-row" onClick={() => go.toZone(zone.id)}>
      <th scope="row">
        <button type="button" className="row-button" aria-label={t.zones.pick(called)}>
          {called}
        </button>
        {name !== '' && <span className="small">{zone.id}</span>}
        <span className="zone-buttons">
          <ZoneButtons id={zone.id} name={called} />
        </span>
        {zone.shortM2 > LEAST_M2 && <span className="zone-fault">{t.zones.short(zone.shortM2)}</span>}
        {zone.overM2 > LEAST_M2 && <span className="zone-fault">{t.zones.over(zone.overM2)}</span>}
      </th>
      <td>{numberText(zone.areaM2, 1)}</td>
      <SpreadCell ask={{ kind: 'depth', zone: zone.id }} spread={zone.depthMm} text={(valueMm) => cellText(valueMm, 'mm')} />
      <SpreadCell ask={{ kind: 'zone load', zone: zone.id }} spread={zone.saturatedKNm2} text={loadNumber} />
    </tr>
  );
}

interface SpreadProps {
  /** Of the mean. */
  readonly ask: DerivationAsk;
  readonly spread: Spread;
  readonly text: (value: number) => string;
}

function SpreadCell({ ask, spread: { min, mean, max }, text }: SpreadProps) {
  const [low, middle, high] = [min, mean, max].map(text);
  return (
    <td>
      <Derived ask={ask}>{middle}</Derived>
      {low !== high && <span className="small block">{t.zones.range(low ?? '', high ?? '')}</span>}
    </td>
  );
}

function ZoneButtons({ id, name }: { readonly id: string; readonly name: string }) {
  const hidden = useView((state) => state.hiddenZones.has(id));
  const only = useView((state) => state.onlyZone);
  const toggle = useView((state) => state.toggleZone);
  const isolate = useView((state) => state.isolateZone);
  const shown = only === null ? !hidden : only === id;
  return (
    <>
      <button
        type="button"
        className="icon-button"
        aria-pressed={shown}
        aria-label={shown ? t.zones.hide(name) : t.zones.unhide(name)}
        onClick={(event) => {
          event.stopPropagation();
          toggle(id);
        }}
      >
        <Icon name={shown ? 'eye' : 'hidden'} />
      </button>
      <button
        type="button"
        className="only-button"
        aria-pressed={only === id}
        aria-label={t.zones.only(name)}
        onClick={(event) => {
          event.stopPropagation();
          isolate(only === id ? null : id);
        }}
      >
        {t.legend.onlyWord}
      </button>
    </>
  );
}
