/** A text typed by hand. */

import { useTyped } from './use-typed.ts';

interface Props {
  readonly label: string;
  readonly value: string;
  /** Neither empty nor blanks alone: what was there comes back. */
  readonly required?: boolean;
  readonly lines?: number;
  readonly onCommit: (value: string) => void;
}

export function TextField({ label, value, required = false, lines = 1, onCommit }: Props) {
  const { input } = useTyped({
    shown: value,
    lines: lines > 1,
    take: (typed) => {
      const text = typed.trim();
      if (text !== value && !(required && text === '')) onCommit(text);
      return null;
    },
  });
  return lines === 1 ? (
    <input type="text" className="text-field" aria-label={label} {...input} />
  ) : (
    <textarea className="text-field" aria-label={label} rows={lines} {...input} />
  );
}
