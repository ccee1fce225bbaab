/** A date with its label above it, taken over on Enter or when leaving: half a date is none. */

import { type KeyboardEvent, useEffect, useState } from 'react';

interface Props {
  readonly label: string;
  /** YYYY-MM-DD; empty for none. */
  readonly value: string;
  readonly onCommit: (value: string) => void;
}

export function DateRow({ label, value, onCommit }: Props) {
  const [typed, setTyped] = useState(value);
  useEffect(() => setTyped(value), [value]);
  const commit = () => {
    if (typed !== value) onCommit(typed);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') commit();
    if (event.key === 'Escape') setTyped(value);
  };
  return (
    <span className="stage-field">
      <span aria-hidden="true">{label}</span>
      <input
        type="date"
        className="text-field"
        aria-label={label}
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={commit}
        onKeyDown={onKeyDown}
      />
    </span>
  );
}
