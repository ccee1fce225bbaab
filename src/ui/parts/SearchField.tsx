/** Words by which a list is narrowed while they are typed. */

import type { Ref } from 'react';

interface Props {
  /** Name of the field, and what stands in it while it is empty. */
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly ref?: Ref<HTMLInputElement>;
}

export function SearchField({ label, value, onChange, ref }: Props) {
  return (
    <input
      ref={ref}
      type="search"
      className="text-field search-field"
      aria-label={label}
      placeholder={label}
      value={value}
      onChange={(event) => onChange(event.target.value)}
    />
  );
}
