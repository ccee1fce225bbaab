/** A choice from two groups: what the scene has, then what the catalogue has. */

export interface Choice {
  readonly id: string;
  readonly name: string;
}

interface Props {
  readonly label: string;
  readonly value: string;
  readonly groups: readonly { readonly name: string; readonly choices: readonly Choice[] }[];
  readonly onChoose: (id: string) => void;
}

export function ChoiceOf({ label, value, groups, onChoose }: Props) {
  return (
    <label className="stage-field">
      <span>{label}</span>
      <select value={value} onChange={(event) => onChoose(event.target.value)}>
        {groups
          .filter(({ choices }) => choices.length > 0)
          .map(({ name, choices }) => (
            <optgroup key={name} label={name}>
              {choices.map((choice) => (
                <option key={choice.id} value={choice.id}>
                  {choice.name}
                </option>
              ))}
            </optgroup>
          ))}
      </select>
    </label>
  );
}
