/** Choosing the language of everything that is read. */

import { LANGUAGES, type Language } from '../../model/language.ts';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';

/** Each in its own language, so that whoever needs it can read it. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch' };

export function LanguageChoice() {
  const language = useView((state) => state.language);
  const setLanguage = useView((state) => state.setLanguage);
  return (
    <span className="language-choice">
      <span className="language-short" aria-hidden="true">
        {language.toUpperCase()}
      </span>
      <select
        aria-label={t.app.language}
        value={language}
        onChange={({ target }) => setLanguage(LANGUAGES.find((one) => one === target.value) ?? language)}
      >
        {LANGUAGES.map((one) => (
          <option key={one} value={one} lang={one}>
            {LANGUAGE_NAMES[one]}
          </option>
        ))}
      </select>
    </span>
  );
}
