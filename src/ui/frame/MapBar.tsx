/** Which map is drawn, in two steps: a group, then one of its maps; and whether on top of the garden or on the slab. */

import { useMemo, useRef } from 'react';
import type { MapKind } from '../../model/maps.ts';
import { type GroupedMaps, groupedMaps, groupOf, type MapGroup } from '../facts/map-groups.ts';
import { t } from '../text/text.ts';
import { useMapMatter } from '../use-map-matter.ts';
import type { Layout } from '../use-media.ts';
import { useView } from '../use-stores.ts';

function useGroups(): readonly GroupedMaps[] {
  const matter = useMapMatter();
  return useMemo(() => groupedMaps(matter), [matter]);
}

export function MapBar({ layout }: { readonly layout: Layout }) {
  const groups = useGroups();
  return <div className="map-bar">{layout === 'phone' ? <MapSelect groups={groups} /> : <MapRows groups={groups} />}</div>;
}

interface Props {
  readonly groups: readonly GroupedMaps[];
}

function MapSelect({ groups }: Props) {
  const map = useView((state) => state.map);
  const showMap = useView((state) => state.showMap);
  const find = (value: string) => groups.flatMap(({ kinds }) => kinds).find((kind) => kind === value) ?? null;
  return (
    <label className="map-select">
      <span>{t.map.label}</span>
      <select value={map ?? ''} onChange={(event) => showMap(find(event.target.value))}>
        <option value="">{t.map.noMap}</option>
        {groups.map(({ group, kinds }) => (
          <optgroup key={group} label={t.map.group(group)}>
            {kinds.map((kind) => (
              <option key={kind} value={kind}>
                {t.map.name(kind)}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
}

/** A group comes back with the map that was last seen in it. */
function MapRows({ groups }: Props) {
  const map = useView((state) => state.map);
  const showMap = useView((state) => state.showMap);
  const last = useRef(new Map<MapGroup, MapKind>());
  const chosen = map === null ? null : groupOf(map);
  if (map !== null && chosen !== null) last.current.set(chosen, map);
  const kinds = groups.find(({ group }) => group === chosen)?.kinds ?? [];
  const showGroup = ({ group, kinds: own }: GroupedMaps) => {
    const before = last.current.get(group);
    showMap(before !== undefined && own.includes(before) ? before : (own[0] ?? null));
  };
  return (
    <>
      <fieldset className="segments">
        <legend>{t.map.label}</legend>
        <Segment name="map-group" label={t.map.none} checked={map === null} onChoose={() => showMap(null)} />
        {groups.map((one) => (
          <Segment
            key={one.group}
            name="map-group"
            label={t.map.group(one.group)}
            checked={one.group === chosen}
            onChoose={() => showGroup(one)}
          />
        ))}
      </fieldset>
      {chosen !== null && (
        <div className="map-kinds">
          <fieldset className="segments">
            <legend className="unseen">{t.map.group(chosen)}</legend>
            {kinds.map((kind) => (
              <Segment key={kind} name="map" label={t.map.name(kind)} checked={map === kind} onChoose={() => showMap(kind)} />
            ))}
          </fieldset>
          <MapPlace />
        </div>
      )}
    </>
  );
}

interface SegmentProps {
  readonly name: string;
  readonly label: string;
  readonly checked: boolean;
  readonly onChoose: () => void;
}

function Segment({ name, label, checked, onChoose }: SegmentProps) {
  return (
    <label className="segment">
      <input type="radio" name={name} checked={checked} onChange={onChoose} />
      <span>{label}</span>
    </label>
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
        <Segment key={place} name="map-on" label={t.map[place]} checked={mapOn === place} onChoose={() => setMapOn(place)} />
      ))}
    </fieldset>
  );
}
