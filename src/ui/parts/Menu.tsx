/** A sheet behind a button: closes on Escape, on a tap beside it and when the focus leaves it. */

import { type FocusEvent, type KeyboardEvent, type ReactNode, useId, useRef, useState } from 'react';
import { Icon } from './Icon.tsx';

interface Props {
  readonly label: string;
  /** `close` gives the focus back to the button. */
  readonly children: (close: () => void, open: boolean) => ReactNode;
}

export function Menu({ label, children }: Props) {
  const [open, setOpen] = useState(false);
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  // What had the focus is hidden now; a dialog that follows gives it back to the button.
  const close = () => {
    setOpen(false);
    button.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && open) close();
  };
  const onBlur = (event: FocusEvent<HTMLElement>) => {
    // The file picker of the system takes the focus to nowhere: that is no reason to close.
    if (event.relatedTarget instanceof Node && !event.currentTarget.contains(event.relatedTarget)) setOpen(false);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: only listens to what bubbles up from its button and list
    <div className="scenes" onKeyDown={onKeyDown} onBlur={onBlur}>
      <button ref={button} type="button" className="button" aria-expanded={open} aria-controls={id} onClick={() => setOpen(!open)}>
        {label}
        <Icon name="down" />
      </button>
      {open && <button type="button" className="scenes-away" tabIndex={-1} aria-hidden="true" onClick={() => setOpen(false)} />}
      <div id={id} className="scenes-sheet sheet" hidden={!open}>
        {children(close, open)}
      </div>
    </div>
  );
}
