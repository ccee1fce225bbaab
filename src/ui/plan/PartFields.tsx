/** Fields of one part, or of several at once: where they differ, the field says so until something is typed. */

import { useId } from 'react';
import { valueAt, withValue } from '../../edit/part-values.ts';
import type { EditPart } from '../../model/history.ts';
import type { FieldSpec, NumberSpec } from '../facts/plan-fields.ts';
import { DateField } from '../parts/DateField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { t } from '../text/text.ts';
import { MOST_LOAD_KNM2, QuantityField } from './QuantityField.tsx';
import { ReferenceField, ReferencesField } from './ReferenceFields.tsx';

interface Props {
  readonly part: EditPart;
  readonly fields: readonly FieldSpec[];
  readonly entries: readonly object[];
  readonly onChange: (change: (entry: object) => object, path: string) => void;
}

export function PartFields({ fields, entries, onChange }: Props) {
  return (
    <div className="pe-fields">
      {fields.map((field) => (
        <Field
          key={field.path}
          field={field}
          entries={entries}
          onSet={(value) => onChange((entry) => withValue(entry, field.path, value), field.path)}
        />
      ))}
    </div>
  );
}

export interface FieldProps<Spec extends FieldSpec = FieldSpec> {
  readonly field: Spec;
  readonly entries: readonly object[];
  readonly onSet: (value: unknown) => void;
}

/** Undefined for none, null where they differ. */
export function commonValue(entries: readonly object[], path: string): unknown {
  const [first, ...others] = entries.map((entry) => valueAt(entry, path));
  const same = others.every((other) => JSON.stringify(other) === JSON.stringify(first));
  return same ? first : null;
}

function Field(props: FieldProps) {
  const { field } = props;
  const label = t.draw.field(field.path);
  return (
    <div className="pe-field" data-type={field.type}>
      <span className="pe-field-name">{label}</span>
      <Input {...props} />
    </div>
  );
}

function Input({ field, entries, onSet }: FieldProps) {
  const value = commonValue(entries, field.path);
  const label = t.draw.field(field.path);
  switch (field.type) {
    case 'number':
      return <NumberInput field={field} value={value as number | undefined | null} onSet={onSet} />;
    case 'load':
      return (
        <QuantityField
          label={label}
          value={value as number | undefined | null}
          unit="kN/m²"
          decimals={2}
          min={0}
          max={MOST_LOAD_KNM2}
          optional={field.optional ?? false}
          onCommit={onSet}
        />
      );
    case 'date':
      return <DateInput label={label} value={typeof value === 'string' ? value : ''} onSet={onSet} />;
    case 'text':
      return (
        <TextField
          label={label}
          value={typeof value === 'string' ? value : ''}
          onCommit={(text) => onSet(text === '' ? undefined : text)}
        />
      );
    case 'flag':
      return <FlagInput label={label} value={value as boolean | undefined | null} onSet={onSet} />;
    case 'size':
      return <SizeInput value={value as readonly [number, number] | undefined | null} onSet={onSet} />;
    case 'choice':
      return <ChoiceInput label={label} among={field.among} value={value as string | undefined | null} onSet={onSet} />;
    case 'reference':
      return <ReferenceField label={label} to={field.to} value={value as string | undefined | null} onSet={onSet} />;
    case 'references':
      return <ReferencesField label={label} to={field.to} value={(value ?? []) as readonly string[]} onSet={onSet} />;
  }
}

function NumberInput({
  field,
  value,
  onSet,
}: {
  readonly field: NumberSpec;
  readonly value: number | undefined | null;
  readonly onSet: FieldProps['onSet'];
}) {
  const { path, unit, decimals, min, max, optional = false } = field;
  return <QuantityField {...{ label: t.draw.field(path), value, unit, decimals, min, max, optional }} onCommit={onSet} />;
}

const ISO_DATE = /^\d{4}-\d\d-\d\d$/;

/** Chosen from a calendar; what the file has that is no date stays a text. */
function DateInput({ label, value, onSet }: { readonly label: string; readonly value: string; readonly onSet: FieldProps['onSet'] }) {
  const set = (text: string) => onSet(text === '' ? undefined : text);
  if (value !== '' && !ISO_DATE.test(value)) return <TextField label={label} value={value} onCommit={set} />;
  return <DateField label={label} value={value} onCommit={set} />;
}

/** Said, denied or not said: these are three things. */
function FlagInput({
  label,
  value,
  onSet,
}: {
  readonly label: string;
  readonly value: boolean | undefined | null;
  readonly onSet: FieldProps['onSet'];
}) {
  const { none, yes, no } = t.draw.fieldWords;
  const shown = value === null ? 'mixed' : value === undefined ? 'none' : value ? 'yes' : 'no';
  return (
    <select aria-label={label} value={shown} onChange={({ target }) => onSet(target.value === 'none' ? undefined : target.value === 'yes')}>
      {value === null && <option value="mixed">{t.draw.chosen.mixed}</option>}
      <option value="none">{none}</option>
      <option value="yes">{yes}</option>
      <option value="no">{no}</option>
    </select>
  );
}

interface ChoiceProps {
  readonly label: string;
  readonly among: readonly string[];
  readonly value: string | undefined | null;
  readonly onSet: FieldProps['onSet'];
}

function ChoiceInput({ label, among, value, onSet }: ChoiceProps) {
  return (
    <select aria-label={label} value={value ?? ''} onChange={({ target }) => onSet(target.value)}>
      {(value === undefined || value === null) && <option value="">{value === null ? t.draw.chosen.mixed : t.draw.fieldWords.none}</option>}
      {among.map((one) => (
        <option key={one} value={one}>
          {t.draw.choice(one)}
        </option>
      ))}
    </select>
  );
}

/** Half a size is none: both sides are set together, the second as the first until it is typed. */
function SizeInput({
  value,
  onSet,
}: {
  readonly value: readonly [number, number] | undefined | null;
  readonly onSet: FieldProps['onSet'];
}) {
  const id = useId();
  const { along, across } = t.draw.fieldWords;
  const side = (index: 0 | 1) => (value === null ? null : value?.[index]);
  const set = (index: 0 | 1) => (to: number | undefined) => {
    if (to === undefined) return;
    const other = value?.[index === 0 ? 1 : 0] ?? to;
    onSet(index === 0 ? [to, other] : [other, to]);
  };
  const field = { unit: 'm', decimals: 3, min: 0.01, max: 50 } as const;
  return (
    <span className="pe-size" id={id}>
      <QuantityField label={along} value={side(0)} {...field} onCommit={set(0)} />×
      <QuantityField label={across} value={side(1)} {...field} onCommit={set(1)} />
    </span>
  );
}
