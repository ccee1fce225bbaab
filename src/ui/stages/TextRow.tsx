/** A text field with its label above it. */

import { TextField } from '../parts/TextField.tsx';

interface Props {
  readonly label: string;
  readonly value: string;
  readonly required?: boolean;
  readonly lines?: number;
  readonly onCommit: (value: string) => void;
}

export function TextRow(props: Props) {
  return (
    <span className={props.lines === undefined ? 'stage-field' : 'stage-field stage-wide'}>
      <span aria-hidden="true">{props.label}</span>
      <TextField {...props} />
    </span>
  );
}
