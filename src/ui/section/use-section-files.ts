/** The section that is shown, as a file, at the stage shown. */

import { useCallback } from 'react';
import { dayOf } from '../../model/date-text.ts';
import type { ExportedFile } from '../../model/engine.ts';
import type { Language } from '../../model/language.ts';
import { useStores } from '../use-stores.ts';

export const today = (): string => dayOf(new Date());

export function useSectionFiles(): (kind: 'svg' | 'dxf', language?: Language) => Promise<ExportedFile> {
  const { scene, view } = useStores();
  return useCallback(
    (kind, language = view.getState().language) => {
      const { section, stage } = view.getState();
      if (section === null) throw new RangeError('useSectionFiles: no section is shown');
      const { line, scale, heights } = section;
      const options = { line, scale, stage, language, date: today(), ...(kind === 'svg' ? { exaggeration: heights } : {}) };
      return scene.getState().exportDrawn(`section ${kind}`, options);
    },
    [scene, view],
  );
}
