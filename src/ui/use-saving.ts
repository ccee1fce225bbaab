/** Makes a file, hands it to the browser, and says what came of it. */

import { useCallback, useState } from 'react';
import type { ExportedFile } from '../model/engine.ts';
import { saveFile } from './save-file.ts';
import { t } from './text/text.ts';

export interface Saving {
  save(make: () => Promise<ExportedFile>): Promise<void>;
  /** Last result as a sentence; '' before the first. */
  readonly said: string;
  readonly busy: boolean;
}

export function useSaving(): Saving {
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);
  const save = useCallback(async (make: () => Promise<ExportedFile>) => {
    setBusy(true);
    try {
      const file = await make();
      saveFile(file);
      setSaid(t.takeoff.saved(file.name));
    } catch (error) {
      setSaid(t.takeoff.notSaved(error instanceof Error ? error.message : String(error)));
    }
    setBusy(false);
  }, []);
  return { save, said, busy };
}
