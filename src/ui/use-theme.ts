/** Puts the chosen look on the root element, where the style sheets find it, and keeps it for the next visit. */

import { useEffect } from 'react';
import { THEMES, type Theme } from '../store/walk.ts';
import { useView } from './use-stores.ts';

const KEPT_AS = 'loamdeck.theme';

/** Only what was chosen for the whole app: the talk has its own look as long as it lasts. */
export function keepTheme(theme: Theme): void {
  try {
    localStorage.setItem(KEPT_AS, theme);
  } catch {
    // Nothing is lost but the choice for next time.
  }
}

function keptTheme(): Theme {
  try {
    const kept = localStorage.getItem(KEPT_AS);
    return THEMES.find((one) => one === kept) ?? 'paper';
  } catch {
    return 'paper';
  }
}

export function useTheme(): void {
  const theme = useView((state) => state.theme);
  const setTheme = useView((state) => state.setTheme);
  useEffect(() => setTheme(keptTheme()), [setTheme]);
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
}
