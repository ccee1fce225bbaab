/** Materials and vehicles of the catalogue, asked for once per language; null until they come. */

import { useEffect, useState } from 'react';
import type { CatalogueView } from '../../model/catalogue-view.ts';
import { useScene, useView } from '../use-stores.ts';

export function useCatalogue(): CatalogueView | null {
  const ask = useScene((state) => state.catalogue);
  const language = useView((state) => state.language);
  const [catalogue, setCatalogue] = useState<CatalogueView | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another language has other names
  useEffect(() => {
    let current = true;
    void ask().then((found) => current && setCatalogue(found));
    return () => {
      current = false;
    };
  }, [ask, language]);
  return catalogue;
}
