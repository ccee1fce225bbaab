/** A sheet over the page for work that needs its own room; closes on Escape. */

import { type ReactNode, useEffect, useId, useRef } from 'react';

interface Props {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

export function PlanDialog({ title, onClose, children }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal();
  }, []);
  return (
    <dialog ref={dialog} className="sheet dialog pe-dialog" aria-labelledby={id} onClose={onClose}>
      <h2 id={id} className="sheet-title">
        {title}
      </h2>
      {children}
    </dialog>
  );
}
