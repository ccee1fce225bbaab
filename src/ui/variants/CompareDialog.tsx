/** Two scene files dropped at once: offered to be compared, and what comes of it. */

import { useEffect, useRef } from 'react';
import { t } from '../text/text.ts';
import type { Opening } from '../use-open-scene.ts';
import { useStores } from '../use-stores.ts';
import { ComparedFile } from './ComparedFile.tsx';
import { comparedTitle, useCompareFile } from './use-compare-file.ts';

interface Props {
  readonly opening: Opening;
  readonly files: readonly [File, File];
  readonly onClose: () => void;
}

export function CompareDialog({ opening, files, onClose }: Props) {
  const [first, second] = files;
  const { scene } = useStores();
  const { compared, compare } = useCompareFile();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal();
  }, []);
  const go = async () => {
    await opening.openFile(first);
    const { fileName, refused } = scene.getState();
    // Why the first did not open is told by a sheet of its own.
    if (refused !== null || fileName !== first.name) return onClose();
    // A scheme for the same deck is a variant now, and the page of variants tells of it.
    if (await compare(second)) onClose();
  };
  const words = t.variants.file;
  return (
    <dialog ref={dialog} className="sheet dialog" aria-labelledby="compare-title" onClose={onClose}>
      <h2 id="compare-title" className="sheet-title">
        {compared === null ? words.two : comparedTitle(compared)}
      </h2>
      {compared === null ? <p>{words.offer(first.name, second.name)}</p> : <ComparedFile compared={compared} />}
      {compared === null && (
        <button type="button" className="button button-main" onClick={() => void go()}>
          {words.go}
        </button>
      )}
      <button type="button" className="button" onClick={() => dialog.current?.close()}>
        {t.refusal.close}
      </button>
    </dialog>
  );
}
