/** A number field with its label before it. */

import { NumberField, type NumberFieldProps } from './NumberField.tsx';

interface Props extends NumberFieldProps {
  readonly className: string;
  /** What stands before the field where the label, which a reader says by itself, has more to say. */
  readonly shown?: string;
}

export function NumberRow({ className, shown, ...field }: Props) {
  return (
    <span className={className}>
      <span aria-hidden="true">{shown ?? field.label}</span>
      <NumberField {...field} />
    </span>
  );
}
