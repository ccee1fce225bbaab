/** A question with its answers; the drawing is read again with the one chosen. */

import type { Question } from '../../model/drawing.ts';
import { t } from '../text/text.ts';
import { useImports } from '../use-stores.ts';

export function ImportQuestion({ question: { id, says, choices, guess, taken, certain } }: { readonly question: Question }) {
  const answer = useImports((state) => state.answer);
  const chosen = useImports((state) => state.answers[id]) ?? taken;
  return (
    <fieldset className="import-question" data-question={id}>
      <legend>{says}</legend>
      {choices.map((choice) => (
        <label key={choice.value} className="check">
          <input
            type="radio"
            name={`import-${id}`}
            value={choice.value}
            checked={choice.value === chosen}
            onChange={() => answer(id, choice.value)}
          />
          <span>
            {choice.says}
            {!certain && choice.value === guess && <em className="import-guess">{t.imports.guess}</em>}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
