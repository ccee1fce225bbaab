/** A date with its label above it. */

import { DateField } from '../parts/DateField.tsx';

interface Props {
  readonly label: string;
  /** YYYY-MM-DD; empty for none. */
  readonly value: string;
  readonly onCommit: (value: string) => void;
}

export function DateRow(props: Props) {
  return (
    <span className="stage-field">
      <span aria-hidden="true">{props.label}</span>
      <DateField {...props} />
    </span>
  );
}
