/** Why a file did not open, line by line in the wording of the command line; the scene opened before stays. */

import { type ReactNode, useEffect, useRef, useState } from 'react';
import { issueLineIn } from '../../model/issue.ts';
import { IssueList } from '../parts/IssueList.tsx';
import { t } from '../text/text.ts';
import type { Opening } from '../use-open-scene.ts';
import { useScene, useView } from '../use-stores.ts';

export function RefusalSheet({ opening }: { readonly opening: Opening }) {
  const refused = useScene((state) => state.refused);
  const language = useView((state) => state.language);
  const dismiss = useScene((state) => state.dismissRefusal);
  const hasScene = useScene((state) => state.snapshot !== null);
  if (opening.refused !== null) {
    return (
      <Sheet title={t.scenes.title} onClose={opening.dismiss}>
        <p>{opening.refused.says}</p>
      </Sheet>
    );
  }
  if (refused === null) return null;
  return (
    <Sheet title={refused.ofEdit ? t.refusal.titleEdit : t.refusal.title(refused.fileName)} onClose={dismiss}>
      <p>
        {t.refusal.issues(refused.issues.length)}. {hasScene && t.refusal.stays}
      </p>
      <IssueList issues={refused.issues} />
      <CopyButton text={refused.issues.map((issue) => issueLineIn(issue, language)).join('\n')} />
    </Sheet>
  );
}

function Sheet({ title, onClose, children }: { readonly title: string; readonly onClose: () => void; readonly children: ReactNode }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal();
  }, []);
  return (
    <dialog ref={dialog} className="sheet dialog" aria-labelledby="refusal-title" onClose={onClose}>
      <h2 id="refusal-title" className="sheet-title">
        {title}
      </h2>
      {children}
      <button type="button" className="button" onClick={() => dialog.current?.close()}>
        {t.refusal.close}
      </button>
    </dialog>
  );
}

function CopyButton({ text }: { readonly text: string }) {
  const [copied, setCopied] = useState(false);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setCopied(true);
    } catch {
      // Without permission the list can still be marked and copied by hand.
      setCopied(false);
    }
  };
  return (
    <button type="button" className="button" onClick={() => void copy()}>
      {copied ? t.refusal.copied : t.refusal.copy}
    </button>
  );
}
