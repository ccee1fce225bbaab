/** The section that is shown, as a file, at the stage shown. */

import { useCallback } from 'react';
import type { ExportedFile } from '../../model/engine.ts';
import type { Language } from '../../model/language.ts';
import { useStores } from '../use-stores.ts';

/** Year, month and day here, not in Greenwich. */
export function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}

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
