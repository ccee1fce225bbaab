/** A scene file held against the scene as it stands: kept as a variant where it is a scheme for the same deck, else told as changes. */

import { useMemo, useState } from 'react';
import { nextVariantId, withScheme } from '../../edit/variants.ts';
import type { FileAnswer } from '../../model/variants.ts';
import { t } from '../text/text.ts';
import { useStores } from '../use-stores.ts';

export type Compared =
  | { readonly file: string; readonly state: 'working' | 'unreadable' }
  | { readonly file: string; readonly state: 'told'; readonly answer: FileAnswer };

export interface FileComparing {
  /** What is to be told; null for nothing, or where a variant tells it. */
  readonly compared: Compared | null;
  /** True where it is kept as a variant now. */
  compare(file: File): Promise<boolean>;
}

export function useCompareFile(): FileComparing {
  const { scene, view } = useStores();
  const [compared, setCompared] = useState<Compared | null>(null);
  return useMemo(() => {
    const kept = async (file: string, answer: FileAnswer): Promise<boolean> => {
      const { snapshot, edit } = scene.getState();
      if (!answer.ok || answer.comparison.scheme === null || snapshot === null) return false;
      const { scheme } = answer.comparison;
      const id = nextVariantId(snapshot.scene.variants ?? []);
      // What was done to read the file stays with the variant.
      const says = answer.notes.length > 0 ? { says: answer.notes.join(' ') } : {};
      const refused = await edit((now) => withScheme(now, { name: file, ...says, scheme }), {
        kind: 'parts',
        act: 'add',
        part: 'variant',
        names: [file],
      });
      if (refused.length > 0) return false;
      view.getState().edit('variants');
      view.getState().compare(id);
      return true;
    };
    return {
      compared,
      async compare(file) {
        setCompared({ file: file.name, state: 'working' });
        let bytes: Uint8Array;
        try {
          bytes = new Uint8Array(await file.arrayBuffer());
        } catch {
          setCompared({ file: file.name, state: 'unreadable' });
          return false;
        }
        const answer = await scene.getState().compareFile(bytes);
        const isVariant = await kept(file.name.replace(/(\.scene)?\.json$/i, ''), answer);
        setCompared(isVariant ? null : { file: file.name, state: 'told', answer });
        return isVariant;
      },
    };
  }, [scene, view, compared]);
}

/** What a comparison says above its list. */
export function comparedTitle(compared: Compared): string {
  const { file, state } = compared;
  if (state === 'working') return t.variants.file.working;
  return state === 'told' && compared.answer.ok ? t.variants.file.title(file) : t.variants.file.refused(file);
}
