/** Which language is spoken: asked for in the address, chosen before on this device, or that of the device. */

import { useEffect } from 'react';
import { isLanguage, type Language } from '../model/language.ts';
import type { ViewStore } from '../store/view-store.ts';
import { keepUnits } from './kept-units.ts';
import { speak, type Texts, t, textsOf } from './text/text.ts';
import { useScene, useView } from './use-stores.ts';

const KEPT_AS = 'loamdeck.language';

/** Storage may be shut off; then the choice holds until the page is left. */
function kept(): string | null {
  try {
    return localStorage.getItem(KEPT_AS);
  } catch {
    return null;
  }
}

function keep(language: Language): void {
  try {
    localStorage.setItem(KEPT_AS, language);
  } catch {
    // Nothing is lost but the choice for next time.
  }
}

/** The language to start with. */
export function startLanguage(): Language {
  const asked = new URLSearchParams(location.search).get('lang');
  const choices = [asked, kept(), ...navigator.languages.map((tag) => tag.slice(0, 2).toLowerCase())];
  return choices.find(isLanguage) ?? 'en';
}

/** Speaks what the store says, before anything that shows it renders: so call it before other followers of the store. */
export function followLanguage(view: ViewStore): void {
  const { language: first, units: firstUnits } = view.getState();
  speak(first, firstUnits);
  view.subscribe(({ language, units }, before) => {
    if (language === before.language && units === before.units) return;
    speak(language, units);
    keep(language);
    keepUnits(units);
  });
}

/** The table of the language spoken, for what is kept as long as it stays. */
export const useTexts = (): Texts => textsOf(useView((state) => state.language));

/** Tells the browser the language and the scene's name; whoever calls it renders anew when the language changes. */
export function useLanguage(): void {
  const language = useView((state) => state.language);
  useView((state) => state.units);
  const name = useScene((state) => state.snapshot?.scene.name);
  useEffect(() => {
    document.documentElement.lang = language;
    document.title = name === undefined ? t.app.name : t.app.title(name);
  }, [language, name]);
}
