/** A row of tabs above one panel: arrow keys, Home and End move between them; only the chosen one is in the tab order. */

import { type KeyboardEvent, type ReactNode, useEffect, useRef } from 'react';
import { tabAfter } from './tab-keys.ts';

interface Props<Name extends string> {
  readonly names: readonly Name[];
  readonly chosen: Name;
  readonly label: string;
  /** Begins the ids of tabs: the panel is labelled by `ID-NAME`. */
  readonly id: string;
  /** Id of the panel. */
  readonly panel: string;
  readonly className: string;
  readonly onChoose: (name: Name) => void;
  readonly says: (name: Name) => ReactNode;
}

export function Tabs<Name extends string>({ names, chosen, label, id, panel, className, onChoose, says }: Props<Name>) {
  const list = useRef<HTMLDivElement>(null);
  const at = names.indexOf(chosen);
  // By the list's own position: the browser's way would also move the page.
  useEffect(() => {
    const tab = list.current?.querySelectorAll('button')[at];
    if (!list.current || !tab) return;
    const [outer, inner] = [list.current.getBoundingClientRect(), tab.getBoundingClientRect()];
    list.current.scrollLeft += Math.max(0, inner.right - outer.right) + Math.min(0, inner.left - outer.left);
  }, [at]);
  const onKeyDown = (event: KeyboardEvent) => {
    const to = tabAfter(event.key, at, names.length);
    const next = to === null ? undefined : names[to];
    if (to === null || next === undefined) return;
    event.preventDefault();
    onChoose(next);
    list.current?.querySelectorAll('button')[to]?.focus();
  };
  return (
    <div ref={list} role="tablist" className={className} aria-label={label} onKeyDown={onKeyDown}>
      {names.map((name) => (
        <button
          key={name}
          id={`${id}-${name}`}
          type="button"
          role="tab"
          aria-selected={name === chosen}
          aria-controls={panel}
          tabIndex={name === chosen ? 0 : -1}
          onClick={() => onChoose(name)}
        >
          {says(name)}
        </button>
      ))}
    </div>
  );
}
