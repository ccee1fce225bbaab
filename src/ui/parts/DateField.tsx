/** A date, taken over on Enter or when leaving: half a date is none. */

import { useTyped } from './use-typed.ts';

interface Props {
  readonly label: string;
  /** YYYY-MM-DD; empty for none. */
  readonly value: string;
  readonly onCommit: (value: string) => void;
}

export function DateField({ label, value, onCommit }: Props) {
  const { input } = useTyped({
    shown: value,
    take: (typed) => {
      onCommit(typed);
      return null;
    },
  });
  return <input type="date" className="text-field" aria-label={label} {...input} />;
}
