/** Pictures of the model as it is seen, and those kept for the handover. */

import { useCallback } from 'react';
import type { HandoverPicture } from '../../model/engine.ts';
import { t } from '../text/text.ts';
import { useStageName } from '../use-stage-name.ts';
import { useStores, useView } from '../use-stores.ts';
import { pictureBytes } from './picture-file.ts';
import { pictureLegend } from './picture-legend.ts';

export interface PictureSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Takes one picture; says so in an error where that cannot be done. */
export function usePicture(): (size: PictureSize) => Promise<HandoverPicture> {
  const { scene, view } = useStores();
  const map = useView((state) => state.map);
  const stage = useStageName(map);
  return useCallback(
    async (size) => {
      const legend = pictureLegend(scene.getState(), view.getState(), stage);
      const bytes = await pictureBytes(view.getState().takePicture, size, legend);
      if (bytes === null) throw new Error(t.exports.noPicture);
      return { caption: [legend.title, legend.says].filter(Boolean).join('. '), bytes };
    },
    [scene, view, stage],
  );
}
