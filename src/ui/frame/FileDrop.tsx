/** Takes a file dropped anywhere on the page, and shows a veil while one is held over it. */

import { useEffect, useRef, useState } from 'react';
import { t } from '../text/text.ts';
import type { Opening } from '../use-open-scene.ts';
import { areScenes } from '../variants/are-scenes.ts';
import { CompareDialog } from '../variants/CompareDialog.tsx';

/** What is wrong with a drop before any file is read; null where it is one file, or two that may be scenes. */
function dropProblem(transfer: DataTransfer): string | null {
  const items = [...transfer.items].filter((item) => item.kind === 'file');
  if (items.some((item) => item.webkitGetAsEntry()?.isDirectory)) return t.scenes.folder;
  const count = Math.max(items.length, transfer.files.length);
  if (count > 2) return t.scenes.several(count);
  return count === 0 ? t.scenes.noFile : null;
}

export function FileDrop({ opening }: { readonly opening: Opening }) {
  const [over, setOver] = useState(false);
  const [two, setTwo] = useState<readonly [File, File] | null>(null);
  const latest = useRef(opening);
  latest.current = opening;
  useEffect(() => {
    // Each element entered is told before the one left, so a count says whether the pointer is still on the page.
    let depth = 0;
    const listeners = new AbortController();
    const { signal } = listeners;
    const isDrag = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
    const show = (change: number) => {
      depth = Math.max(0, depth + change);
      setOver(depth > 0);
    };
    window.addEventListener('dragenter', (event) => isDrag(event) && show(1), { signal });
    window.addEventListener('dragleave', (event) => isDrag(event) && show(-1), { signal });
    window.addEventListener('dragover', (event) => event.preventDefault(), { signal });
    window.addEventListener(
      'drop',
      (event) => {
        event.preventDefault();
        depth = 0;
        setOver(false);
        const { dataTransfer } = event;
        if (dataTransfer === null) return;
        const problem = dropProblem(dataTransfer);
        const [file, second] = dataTransfer.files;
        if (problem !== null || file === undefined) latest.current.refuse(problem ?? t.scenes.noFile);
        else if (second !== undefined)
          void areScenes([file, second]).then((both) => (both ? setTwo([file, second]) : latest.current.refuse(t.scenes.several(2))));
        else void latest.current.openFile(file);
      },
      { signal },
    );
    return () => listeners.abort();
  }, []);
  return (
    <>
      {over && (
        <div className="drop-veil" aria-hidden="true">
          <p>{t.scenes.veil}</p>
        </div>
      )}
      {two && <CompareDialog opening={opening} files={two} onClose={() => setTwo(null)} />}
    </>
  );
}
