/** Which map is drawn, and whether on top of the garden or on the slab. */

import { MAP_KINDS, type MapKind } from '../../model/maps.ts';
import { en as t } from '../text/en.ts';
import type { Layout } from '../use-media.ts';
import { useView } from '../use-stores.ts';

const CHOICES: readonly (MapKind | null)[] = [null, ...MAP_KINDS];

const nameOf = (kind: MapKind | null) => (kind === null ? t.map.none : t.map.name(kind));

export function MapBar({ layout }: { readonly layout: Layout }) {
  const map = useView((state) => state.map);
  return (
    <div className="map-bar">
      {layout === 'phone' ? <MapSelect /> : <MapRow />}
      {map !== null && layout !== 'phone' && <MapPlace />}
    </div>
  );
}

function MapSelect() {
  const map = useView((state) => state.map);
  const showMap = useView((state) => state.showMap);
  return (
    <label className="map-select">
      <span>{t.map.label}</span>
      <select value={map ?? ''} onChange={(event) => showMap(CHOICES.find((kind) => kind === event.target.value) ?? null)}>
        {CHOICES.map((kind) => (
          <option key={kind ?? ''} value={kind ?? ''}>
            {kind === null ? t.map.noMap : nameOf(kind)}
          </option>
        ))}
      </select>
    </label>
  );
}

function MapRow() {
  const map = useView((state) => state.map);
  const showMap = useView((state) => state.showMap);
  return (
    <fieldset className="segments">
      <legend>{t.map.label}</legend>
      {CHOICES.map((kind) => (
        <label key={kind ?? ''} className="segment">
          <input type="radio" name="map" checked={map === kind} onChange={() => showMap(kind)} />
          <span>{nameOf(kind)}</span>
        </label>
      ))}
    </fieldset>
  );
}

export function MapPlace() {
  const flat = useView((state) => state.canvas === 'unavailable');
  const mapOn = useView((state) => state.mapOn);
  const setMapOn = useView((state) => state.setMapOn);
  if (flat) return null;
  return (
    <fieldset className="segments map-place">
      <legend className="unseen">{t.map.place}</legend>
      {(['top', 'slab'] as const).map((place) => (
        <label key={place} className="segment">
          <input type="radio" name="map-on" checked={mapOn === place} onChange={() => setMapOn(place)} />
          <span>{t.map[place]}</span>
        </label>
      ))}
    </fieldset>
  );
}
