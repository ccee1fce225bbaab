/** Over the page while a file is read and checked: progress first, then what was read, asked and changed, and what it becomes. */

import { lazy, Suspense, useEffect, useRef, useState } from 'react';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { useImports } from '../use-stores.ts';

const ImportCheck = lazy(() => import('./ImportCheck.tsx').then((module) => ({ default: module.ImportCheck })));

/** A scene is read in less; what comes and goes at once only disturbs [ms]. */
const QUICK_MS = 250;
const BYTES_PER_MB = 1_000_000;

export function ImportPage() {
  const file = useImports((state) => state.file);
  const shown = useImports((state) => state.read !== null);
  const slow = useSlow(file !== null);
  return file !== null && (shown || slow) ? <OpenPage name={file.name} bytes={file.bytes} /> : null;
}

function useSlow(running: boolean): boolean {
  const [slow, setSlow] = useState(false);
  useEffect(() => {
    setSlow(false);
    if (!running) return;
    const timer = setTimeout(() => setSlow(true), QUICK_MS);
    return () => clearTimeout(timer);
  }, [running]);
  return running && slow;
}

function OpenPage({ name, bytes }: { readonly name: string; readonly bytes: number }) {
  const read = useImports((state) => state.read);
  const share = useImports((state) => state.share);
  const crashed = useImports((state) => state.crashed);
  const close = useImports((state) => state.close);
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal();
    title.current?.focus();
  }, []);
  return (
    <dialog ref={dialog} className="import-page" aria-labelledby="import-title" onClose={close}>
      <header className="import-head">
        <h2 ref={title} id="import-title" className="sheet-title" tabIndex={-1}>
          {read === null ? t.imports.reading(name, bytes / BYTES_PER_MB) : t.imports.title(name)}
        </h2>
        {read !== null && share !== null && <Progress share={share} says={t.imports.readingAgain} />}
        <button type="button" className="icon-button" aria-label={t.imports.leave} title={t.imports.leave} onClick={close}>
          <Icon name="close" />
        </button>
      </header>
      {crashed && (
        <p className="import-crashed" role="alert">
          {t.imports.crashed(name)}
        </p>
      )}
      {read === null ? (
        <div className="import-waits">
          <Progress share={share ?? 0} says={t.imports.background} />
          <button type="button" className="button" onClick={close}>
            {t.imports.cancel}
          </button>
        </div>
      ) : (
        !crashed && (
          <Suspense fallback={null}>
            <ImportCheck read={read} />
          </Suspense>
        )
      )}
    </dialog>
  );
}

function Progress({ share, says }: { readonly share: number; readonly says: string }) {
  return (
    <p className="import-progress">
      <progress max={1} value={share} aria-label={says} />
      <span className="import-share">{t.imports.share(share)}</span>
      <span className="small">{says}</span>
    </p>
  );
}
