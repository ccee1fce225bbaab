/** A picture of the model as it is shown, drawn apart from the screen; null without a 3D view. */

import { useEffect, useState } from 'react';
import { useView } from '../use-stores.ts';

/** Layers move for a moment after the stage was chosen [ms]. */
const SETTLED_MS = 700;

export function useStagePicture(stage: number | null, widthPx: number, heightPx: number): string | null {
  const takePicture = useView((state) => state.takePicture);
  const shown = useView((state) => state.stage);
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    setAddress(null);
    // A picture of another stage would tell the crew wrong.
    if (takePicture === null || stage === null || shown !== stage) return;
    const timer = setTimeout(() => {
      const picture = takePicture(widthPx, heightPx);
      if (picture === null) return;
      const canvas = document.createElement('canvas');
      canvas.width = picture.widthPx;
      canvas.height = picture.heightPx;
      canvas.getContext('2d')?.putImageData(new ImageData(picture.rgba, picture.widthPx, picture.heightPx), 0, 0);
      setAddress(canvas.toDataURL('image/png'));
    }, SETTLED_MS);
    return () => clearTimeout(timer);
  }, [takePicture, stage, shown, widthPx, heightPx]);
  return address;
}
