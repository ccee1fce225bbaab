/** Materials to choose from: the scene's own first, then role by role, with weight, thickness and source. */

import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import type { Role } from '../../model/roles.ts';
import type { SceneMaterial } from '../../model/scene-file.ts';
import { type Choice, groupChoices } from '../facts/build-up-facts.ts';
import { partFill } from '../parts/Hatches.tsx';
import { Icon } from '../parts/Icon.tsx';
import { SearchField } from '../parts/SearchField.tsx';
import { Swatch } from '../parts/Swatch.tsx';
import { t } from '../text/text.ts';

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
        {groups.map(({ role, choices: found }) => (
          <section key={role ?? ''}>
            <h4 className="bu-picker-role">
              {role !== null && <Swatch fill={partFill(role)} />}
              {role === null ? picker.own : t.part(role)}
            </h4>
            <ul>
              {found.map((choice) => (
                <li key={choice.material.id}>
                  <button type="button" className="bu-choice" onClick={() => onChoose(choice)}>
                    <strong>{choice.material.name}</strong>
                    <span className="small block">{materialLine(choice.material)}</span>
                    <span className="small block">{choice.source === '' ? picker.noSource : choice.source}</span>
                  </button>
                </li>
              ))}
            </ul>
          </section>
        ))}
      </div>
    </section>
  );
}
