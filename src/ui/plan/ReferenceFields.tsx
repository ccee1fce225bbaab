/** Fields that name something else of the scene or the catalogue: one of it, or several. */

import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { type ChoiceGroup, useChoices } from './use-choices.ts';

interface Props<Value> {
  readonly label: string;
  readonly to: 'build-up' | 'vehicle' | 'material';
  readonly value: Value;
  readonly onSet: (value: unknown) => void;
}

function Options({ groups, without = [] }: { readonly groups: readonly ChoiceGroup[]; readonly without?: readonly string[] }) {
  return groups.map(({ label, choices }) => {
    const left = choices.filter(({ id }) => !without.includes(id));
    return (
      left.length > 0 && (
        <optgroup key={label} label={label}>
          {left.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </optgroup>
      )
    );
  });
}

const nameIn = (groups: readonly ChoiceGroup[], id: string) =>
  groups.flatMap(({ choices }) => choices).find((choice) => choice.id === id)?.name ?? id;

export function ReferenceField({ label, to, value, onSet }: Props<string | undefined | null>) {
  const groups = useChoices(to);
  const isKnown = groups.some(({ choices }) => choices.some(({ id }) => id === value));
  return (
    <select aria-label={label} value={value ?? ''} onChange={({ target }) => onSet(target.value)}>
      {(value === undefined || value === null) && (
        <option value="" disabled>
          {value === null ? t.draw.chosen.mixed : t.draw.fieldWords.none}
        </option>
      )}
      {value && !isKnown && <option value={value}>{value}</option>}
      <Options groups={groups} />
    </select>
  );
}

export function ReferencesField({ label, to, value, onSet }: Props<readonly string[]>) {
  const groups = useChoices(to);
  const set = (ids: readonly string[]) => onSet(ids.length === 0 ? undefined : ids);
  return (
    <span className="pe-references">
      {value.map((id) => (
        <span key={id} className="pe-reference">
          {nameIn(groups, id)}
          <button
            type="button"
            className="icon-button"
            aria-label={t.draw.fieldWords.remove(nameIn(groups, id))}
            onClick={() => set(value.filter((one) => one !== id))}
          >
            <Icon name="close" />
          </button>
        </span>
      ))}
      <select aria-label={`${label}: ${t.draw.fieldWords.addVehicle}`} value="" onChange={({ target }) => set([...value, target.value])}>
        <option value="">{t.draw.fieldWords.addVehicle}</option>
        <Options groups={groups} without={value} />
      </select>
    </span>
  );
}
