/** Materials to choose from: the scene's own first, then role by role, with weight, thickness and source. */

import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import type { Role } from '../../model/roles.ts';
import type { SceneMaterial } from '../../model/scene-file.ts';
import { type Choice, groupChoices } from '../facts/build-up-facts.ts';
import { Icon } from '../parts/Icon.tsx';
import { SearchField } from '../parts/SearchField.tsx';
import { t } from '../text/text.ts';
import { MaterialGroups } from './MaterialGroups.tsx';

interface Props {
  readonly choices: readonly Choice[];
  /** Role shown before the others. */
  readonly first: Role;
  readonly onChoose: (choice: Choice) => void;
  readonly onClose: () => void;
}

/** Weight dry and saturated, and thickness where the material has its own. */
export function materialLine({ density, areal, thicknessMm }: SceneMaterial): string {
  const { layer, picker } = t.buildUps;
  const weight = density ? layer.density(density.dry, density.saturated) : areal ? layer.areal(areal.dry, areal.saturated) : '';
  return thicknessMm === undefined ? weight : `${picker.thickness(thicknessMm)} · ${weight}`;
}

export function MaterialPicker({ choices, first, onChoose, onClose }: Props) {
  const [search, setSearch] = useState('');
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.focus(), []);
  const { picker } = t.buildUps;
  const groups = groupChoices(choices, search, t.part, first);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape') onClose();
  };
  return (
    <section className="bu-picker sheet" aria-label={picker.title} onKeyDown={onKeyDown}>
      <div className="bu-picker-head">
        <SearchField ref={field} label={picker.find} value={search} onChange={setSearch} />
        <button type="button" className="icon-button" aria-label={picker.close} title={picker.close} onClick={onClose}>
          <Icon name="close" />
        </button>
      </div>
      <div className="bu-picker-list">
        {groups.length === 0 && <p>{picker.none}</p>}
        <MaterialGroups groups={groups} onChoose={onChoose}>
          {({ material, source }) => (
            <>
              <strong>{material.name}</strong>
              <span className="small block">{materialLine(material)}</span>
              <span className="small block">{source === '' ? picker.noSource : source}</span>
            </>
          )}
        </MaterialGroups>
      </div>
    </section>
  );
}
