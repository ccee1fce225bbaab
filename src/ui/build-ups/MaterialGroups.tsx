/** Materials in groups, those of the scene first, each with the swatch and name of its role. */

import type { ReactNode } from 'react';
import type { Choice, ChoiceGroup } from '../facts/build-up-facts.ts';
import { partFill } from '../parts/Hatches.tsx';
import { Swatch } from '../parts/Swatch.tsx';
import { t } from '../text/text.ts';

interface Props {
  readonly groups: readonly ChoiceGroup[];
  /** Id of the material that is marked; without one the list only offers. */
  readonly chosen?: string;
  readonly onChoose: (choice: Choice) => void;
  /** What stands in the row of a material. */
  readonly children: (choice: Choice) => ReactNode;
}

export function MaterialGroups({ groups, chosen, onChoose, children }: Props) {
  return groups.map(({ role, choices }) => (
    <section key={role ?? ''}>
      <h4 className="bu-picker-role">
        {role !== null && <Swatch fill={partFill(role)} />}
        {role === null ? t.materials.own : t.part(role)}
      </h4>
      <ul>
        {choices.map((choice) => {
          const { id } = choice.material;
          return (
            <li key={id}>
              <button
                type="button"
                className="bu-choice"
                aria-pressed={chosen === undefined ? undefined : id === chosen}
                onClick={() => onChoose(choice)}
              >
                {children(choice)}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  ));
}
