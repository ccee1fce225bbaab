/** Lets every number below it tell how it comes about, in a dialog over the page. */

import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import type { DerivationAsk } from '../../model/derivation.ts';
import { printWords } from '../text/print-words.ts';
import { useView } from '../use-stores.ts';
import { Derivation } from './DerivationPanel.tsx';
import { DerivationsContext } from './Derived.tsx';

export function WithDerivations({ children }: { readonly children: ReactNode }) {
  const language = useView((state) => state.language);
  const words = printWords(language);
  const [ask, setAsk] = useState<DerivationAsk | null>(null);
  const dialog = useRef<HTMLDialogElement>(null);
  const derivations = useMemo(() => ({ ask: setAsk, title: words.derivation.title }), [words]);
  useEffect(() => {
    if (ask !== null) dialog.current?.showModal();
  }, [ask]);
  return (
    <DerivationsContext value={derivations}>
      {children}
      <dialog ref={dialog} className="sheet dialog derivation-dialog" aria-label={words.derivation.title} onClose={() => setAsk(null)}>
        {ask !== null && <Derivation ask={ask} words={words} onClose={() => dialog.current?.close()} />}
      </dialog>
    </DerivationsContext>
  );
}
