/** Tells the style sheets, without drawing anything anew, that numbers of the report are still those of the state before. */

import { useEffect } from 'react';
import { useStores } from './use-stores.ts';

export function useBehind(): void {
  const { scene } = useStores();
  useEffect(() => {
    const { dataset } = document.documentElement;
    const show = () => {
      const { behind } = scene.getState();
      if (behind === null) delete dataset.behind;
      else if (dataset.behind !== behind) dataset.behind = behind;
    };
    show();
    return scene.subscribe(show);
  }, [scene]);
}
