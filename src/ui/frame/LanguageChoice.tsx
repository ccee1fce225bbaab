/** Choosing the language of everything that is read. */

import { LANGUAGES, type Language } from '../../model/language.ts';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';

/** Each in its own language, so that whoever needs it can read it. */
const NAMES: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch' };

export function LanguageChoice() {
  const language = useView((state) => state.language);
  const setLanguage = useView((state) => state.setLanguage);
  return (
    <label className="language-choice">
      <span className="unseen">{t.app.language}</span>
      <span className="language-short" aria-hidden="true">
        {language.toUpperCase()}
      </span>
      <select value={language} onChange={({ target }) => setLanguage(LANGUAGES.find((one) => one === target.value) ?? language)}>
        {LANGUAGES.map((one) => (
          <option key={one} value={one} lang={one}>
            {NAMES[one]}
          </option>
        ))}
      </select>
    </label>
  );
}
