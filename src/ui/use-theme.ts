/** Puts the chosen look on the root element, where the style sheets find it. */

import { useEffect } from 'react';
import { useView } from './use-stores.ts';

export function useTheme(): void {
  const theme = useView((state) => state.theme);
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
}
