/** Zones to tick, each with its area and the build-up it has now. */

import { useState } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import { holdsWords } from '../facts/search.ts';
import { areaText } from '../format.ts';
import { SearchField } from '../parts/SearchField.tsx';
import { t } from '../text/text.ts';

/** From so many on one searches. */
const MANY = 12;

interface Props {
  readonly snapshot: Snapshot;
  /** Build-up whose zones are left out. */
  readonly not: string | null;
  /** Build-up whose zones come first. */
  readonly first?: string;
  readonly title: string;
  readonly chosen: readonly string[];
  readonly onChoose: (zones: readonly string[]) => void;
}

export function ZoneChoice({ snapshot: { scene, report }, not, first, title, chosen, onChoose }: Props) {
  const [search, setSearch] = useState('');
  const { zones: words } = t.buildUps;
  const names = new Map(scene.buildups.map(({ id, name }) => [id, name]));
  const areas = new Map(report.zones.map(({ id, areaM2 }) => [id, areaM2]));
  const all = scene.zones
    .filter(({ buildup }) => buildup !== not)
    .sort((a, b) => Number(b.buildup === first) - Number(a.buildup === first));
  const shown = all.filter(({ id, name, buildup }) => holdsWords(`${id} ${name ?? ''} ${names.get(buildup) ?? ''}`, search));
  const toggle = (id: string, on: boolean) => onChoose(on ? [...chosen, id] : chosen.filter((one) => one !== id));
  return (
    <fieldset className="bu-zones">
      <legend className="block-title">{title}</legend>
      {all.length > MANY && <SearchField label={words.find} value={search} onChange={setSearch} />}
      {all.length === 0 && <p>{words.none}</p>}
      <div className="bu-zone-list">
        {shown.map(({ id, name, buildup }) => (
          <label key={id} className="check">
            <input type="checkbox" checked={chosen.includes(id)} onChange={(event) => toggle(id, event.target.checked)} />
            <span>
              {words.label(id, name ?? '', names.get(buildup) ?? buildup)}
              <span className="small"> {areaText(areas.get(id) ?? 0)}</span>
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
