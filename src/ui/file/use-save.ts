/** Saving the open scene: to the file it was saved to before, to a new one, or by a download with a name. */

import { useCallback, useEffect, useRef, useState } from 'react';
import { t } from '../text/text.ts';
import { useStores } from '../use-stores.ts';
import { asFileName, download, type FileHandle, hasPicker, pickFile, writeTo } from './write-file.ts';

export interface Save {
  /** `anew` asks for a file though there is one. */
  save(anew: boolean): Promise<void>;
  /** Name proposed for a download that waits for its name. */
  readonly asks: string | null;
  /** The name was given, or not. */
  give(name: string | null): Promise<void>;
  /** What came of the last one, '' before the first. */
  readonly said: string;
  readonly failed: boolean;
}

export function useSave(): Save {
  const { scene } = useStores();
  const handle = useRef<FileHandle | null>(null);
  const [asks, setAsks] = useState<string | null>(null);
  const [{ said, failed }, setOutcome] = useState({ said: '', failed: false });
  const told = useCallback(async (work: () => Promise<string>) => {
    try {
      setOutcome({ said: await work(), failed: false });
    } catch (error) {
      setOutcome({ said: t.file.notSaved(error instanceof Error ? error.message : String(error)), failed: true });
    }
  }, []);
  const save = useCallback(
    (anew: boolean) =>
      told(async () => {
        const { saved, snapshot, sceneText, markSaved } = scene.getState();
        if (snapshot === null) return '';
        const { name, text } = await sceneText('file');
        if (!hasPicker()) {
          setAsks(saved?.name ?? name);
          return '';
        }
        // Of a scene opened since, nothing was saved yet: its first file is chosen.
        const kept = anew || saved === null ? null : handle.current;
        const file = kept ?? (await pickFile(saved?.name ?? name));
        if (file === null) return '';
        await writeTo(file, text);
        handle.current = file;
        await markSaved(file.name);
        askToStay();
        return t.file.saved(file.name);
      }),
    [scene, told],
  );
  const give = useCallback(
    (typed: string | null) =>
      told(async () => {
        setAsks(null);
        if (typed === null) return '';
        const name = asFileName(typed);
        const { text } = await scene.getState().sceneText('file');
        download({ name, text });
        await scene.getState().markSaved(name);
        askToStay();
        return t.file.downloaded(name);
      }),
    [scene, told],
  );
  useSaveKey(save);
  return { save, asks, give, said, failed };
}

/** Ctrl or Cmd with S, also while a text is typed. */
function useSaveKey(save: Save['save']): void {
  useEffect(() => {
    const down = (event: KeyboardEvent) => {
      if (event.key.toLowerCase() !== 's' || event.ctrlKey === event.metaKey || event.altKey) return;
      event.preventDefault();
      // What stands in a field is taken over when the field is left.
      if (document.activeElement instanceof HTMLInputElement) document.activeElement.blur();
      void save(event.shiftKey);
    };
    window.addEventListener('keydown', down);
    return () => window.removeEventListener('keydown', down);
  }, [save]);
}

let asked = false;

/** Once, and only after something was saved: the browser is asked not to clear its copies when space runs short. */
function askToStay(): void {
  if (asked) return;
  asked = true;
  // Either answer is the user's or the browser's; the copies work meanwhile with both.
  void navigator.storage?.persist?.().catch(() => false);
}
