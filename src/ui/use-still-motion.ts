/** Follows the device's wish for less motion, live, until the user chooses in the help sheet. */

import { useEffect } from 'react';
import { useMedia } from './use-media.ts';
import { useStores } from './use-stores.ts';

export function useStillMotion(): void {
  const { view } = useStores();
  const wished = useMedia('(prefers-reduced-motion: reduce)');
  useEffect(() => view.getState().setStillMotion(wished), [view, wished]);
}
