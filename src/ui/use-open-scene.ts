/** Opening a demo, a picked file or a drop. All files go through the reader of the import page, with the words of the command line. */

import { useMemo, useState } from 'react';
import { t } from './text/text.ts';
import { useStores } from './use-stores.ts';

/** What was offered cannot be read at all; the scene opened before stays. */
export interface Refused {
  readonly says: string;
}

export interface Opening {
  readonly refused: Refused | null;
  refuse(says: string): void;
  dismiss(): void;
  openFile(file: File): Promise<void>;
  openDemo(name: string, load: () => Promise<string>): Promise<void>;
}

export function useOpenScene(): Opening {
  const { scene, imports } = useStores();
  const [refused, setRefused] = useState<Refused | null>(null);
  return useMemo(() => {
    const { openText, refuse } = scene.getState();
    return {
      refused,
      refuse: (says) => setRefused({ says }),
      dismiss: () => setRefused(null),
      async openFile(file) {
        setRefused(null);
        const opened = await imports.getState().open(file);
        if (opened.kind === 'scene')
          await openText(
            file.name,
            opened.text,
            false,
            opened.mends.map(({ says }) => says),
          );
        else if (opened.kind === 'refused') refuse(file.name, opened.issues);
        else if (opened.kind === 'unreadable') setRefused({ says: t.scenes.unreadable(file.name) });
        else if (opened.kind === 'crashed') setRefused({ says: t.imports.crashed(file.name) });
      },
      async openDemo(name, load) {
        setRefused(null);
        let text: string;
        try {
          text = await load();
        } catch {
          setRefused({ says: t.scenes.demoFailed(name) });
          return;
        }
        await openText(name, text);
      },
    };
  }, [scene, imports, refused]);
}
