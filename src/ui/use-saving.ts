/** Makes a file, hands it to the browser, and says what came of it. */

import { useCallback, useState } from 'react';
import type { ExportedFile } from '../model/engine.ts';
import { saveFile } from './save-file.ts';
import { t } from './text/text.ts';

export interface Saving {
  save(make: () => Promise<ExportedFile>): Promise<void>;
  /** Anything else that takes its time; gives the sentence to be said. */
  run(work: () => Promise<string>): Promise<void>;
  /** Last result as a sentence; '' before the first. */
  readonly said: string;
  readonly busy: boolean;
}

export function useSaving(): Saving {
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);
  const run = useCallback(async (work: () => Promise<string>) => {
    setBusy(true);
    try {
      setSaid(await work());
    } catch (error) {
      setSaid(t.takeoff.notSaved(error instanceof Error ? error.message : String(error)));
    }
    setBusy(false);
  }, []);
  const save = useCallback(
    (make: () => Promise<ExportedFile>) =>
      run(async () => {
        const file = await make();
        saveFile(file);
        return t.takeoff.saved(file.name);
      }),
    [run],
  );
  return { save, run, said, busy };
}
