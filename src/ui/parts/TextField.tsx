/** A text typed by hand, taken over on Enter or when leaving; Escape gives back what was there. */

import { type KeyboardEvent, useEffect, useState } from 'react';

interface Props {
  readonly label: string;
  readonly value: string;
  /** Neither empty nor blanks alone. */
  readonly required?: boolean;
  readonly lines?: number;
  readonly describedBy?: string;
  readonly onCommit: (value: string) => void;
}

export function TextField({ label, value, required = false, lines = 1, describedBy, onCommit }: Props) {
  const [typed, setTyped] = useState<string | null>(null);
  // A new value from elsewhere replaces what was typed.
  // biome-ignore lint/correctness/useExhaustiveDependencies: runs when the value changes, whatever it is
  useEffect(() => setTyped(null), [value]);
  const commit = () => {
    if (typed === null) return;
    const text = typed.trim();
    setTyped(null);
    if (text === value || (required && text === '')) return;
    onCommit(text);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && (lines === 1 || event.ctrlKey || event.metaKey)) commit();
    if (event.key === 'Escape') setTyped(null);
  };
  const field = {
    'aria-label': label,
    'aria-describedby': describedBy,
    autoComplete: 'off',
    value: typed ?? value,
    onChange: (event: { readonly target: { readonly value: string } }) => setTyped(event.target.value),
    onBlur: commit,
    onKeyDown,
  };
  return lines === 1 ? (
    <input type="text" className="text-field" {...field} />
  ) : (
    <textarea className="text-field" rows={lines} {...field} />
  );
}
