/** Opening a scene from a demo, a picked file or a drop, with a sentence for everything that is no scene file. */

import { useMemo, useState } from 'react';
import { readSceneText } from './read-scene-text.ts';
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
  const { scene } = useStores();
  const [refused, setRefused] = useState<Refused | null>(null);
  return useMemo(() => {
    const open = async (name: string, text: string) => {
      setRefused(null);
      await scene.getState().openText(name, text);
    };
    return {
      refused,
      refuse: (says) => setRefused({ says }),
      dismiss: () => setRefused(null),
      async openFile(file) {
        const read = await readSceneText(file);
        if (read.ok) await open(file.name, read.text);
        else setRefused({ says: read.says });
      },
      async openDemo(name, load) {
        let text: string;
        try {
          text = await load();
        } catch {
          setRefused({ says: t.scenes.demoFailed(name) });
          return;
        }
        await open(name, text);
      },
    };
  }, [scene, refused]);
}
