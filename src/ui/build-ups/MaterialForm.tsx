/** An own material: every value of a data sheet with its unit, where it comes from, and a question where a number looks like a slip. */

import { type ReactNode, useState } from 'react';
import { dropMaterial, type MaterialDoubt, materialDoubts, putMaterial } from '../../edit/materials.ts';
import type { MaterialView } from '../../model/catalogue-view.ts';
import type { Snapshot } from '../../model/engine.ts';
import { ROLES, type Role } from '../../model/roles.ts';
import type { RunoffSurface } from '../../model/runoff.ts';
import { RUNOFF_SURFACES } from '../../model/runoff.ts';
import type { SceneMaterial } from '../../model/scene-file.ts';
import { Refused } from '../edit/Refused.tsx';
import { useEdit } from '../edit/use-edit.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { t } from '../text/text.ts';
import { EntrySources } from './EntrySources.tsx';
import { MaterialUsesLine, usersOf } from './MaterialUsesLine.tsx';
import {
  BEARING_FIELDS,
  type FieldSpec,
  ORDER_FIELDS,
  SIZE_FIELDS,
  TOLERANCE_FIELDS,
  WATER_FIELDS,
  weightFields,
  weightKey,
  weightUnit,
  withMaterial,
} from './material-fields.ts';

interface Props {
  readonly snapshot: Snapshot;
  readonly material: SceneMaterial;
  /** Of the catalogue with the same id; null where it has none. */
  readonly entry: MaterialView | null;
  readonly onGone: () => void;
}

/** A value that was typed and not taken over yet, as something about it is asked. */
interface Pending {
  readonly material: SceneMaterial;
  readonly doubt: MaterialDoubt;
}

export function MaterialForm({ snapshot, material, entry, onGone }: Props) {
  const { issues, run } = useEdit();
  const [pending, setPending] = useState<Pending | null>(null);
  const { materials } = t;
  const put = (next: SceneMaterial) => {
    setPending(null);
    void run((now) => putMaterial(now, next), { act: 'change', part: 'material', names: [next.name] });
  };
  /** Only what is doubtful anew is asked: what was kept once stays. */
  const offer = (next: SceneMaterial) => {
    const known = new Set(materialDoubts(material).map(({ why, found }) => `${why} ${found}`));
    const doubt = materialDoubts(next).find(({ why, found }) => !known.has(`${why} ${found}`));
    if (doubt === undefined) put(next);
    else setPending({ material: next, doubt });
  };
  const fields = (specs: readonly FieldSpec[]) =>
    specs.map((spec) => <MaterialNumberField key={spec.field} {...{ material, spec, offer }} />);
  return (
    <section className="bu-material" aria-label={material.name}>
      <h3 className="block-title">
        {material.name}
        {!material.source?.trim() && <span className="bu-no-source">{materials.noSource}</span>}
      </h3>
      <MaterialUsesLine snapshot={snapshot} id={material.id} />
      <MaterialWords material={material} put={put} />
      <Group title={materials.weight(weightKey(material))}>{fields([...weightFields(material), ...SIZE_FIELDS])}</Group>
      {pending && (
        <Doubt
          pending={pending}
          unit={unitOf(pending)}
          onTake={() => pending.doubt.mended && put(pending.doubt.mended)}
          onKeep={() => put(pending.material)}
          onForget={() => setPending(null)}
        />
      )}
      <Refused issues={issues} />
      <Group title={materials.groups.water}>{fields(WATER_FIELDS)}</Group>
      <Group title={materials.groups.bearing}>{fields(BEARING_FIELDS)}</Group>
      <Group title={materials.groups.order}>
        <DeliveryUnit material={material} put={put} />
        {fields(ORDER_FIELDS)}
      </Group>
      <Group title={materials.groups.more}>
        <MaterialKinds material={material} put={put} />
        {fields(TOLERANCE_FIELDS)}
      </Group>
      <GoneButton {...{ snapshot, material, entry, onGone }} run={run} />
      {entry && <EntrySources entry={entry} />}
    </section>
  );
}

/** Thickness is asked about in millimetres, weights in their unit. */
const unitOf = ({ material, doubt }: Pending): string => (doubt.why === 'm' || doubt.why === 'cm' ? 'mm' : weightUnit(material));

function Group({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <fieldset className="bu-group">
      <legend className="block-title">{title}</legend>
      <div className="bu-numbers">{children}</div>
    </fieldset>
  );
}

interface NumberProps {
  readonly material: SceneMaterial;
  readonly spec: FieldSpec;
  readonly offer: (next: SceneMaterial) => void;
}

function MaterialNumberField({ material, spec, offer }: NumberProps) {
  const { label, hint } = t.materials.fields[spec.field];
  const value = spec.get(material);
  const clear = spec.field === 'dry' || spec.field === 'saturated' ? {} : { onClear: () => offer(spec.set(material, null)) };
  const whole = value !== undefined && Number.isInteger(value);
  return (
    <div className="bu-number">
      <span className="bu-number-label">{label}</span>
      <NumberField
        label={label}
        value={value ?? null}
        unit={spec.unit}
        decimals={whole ? 0 : spec.decimals}
        min={spec.min}
        max={spec.max}
        onCommit={(next) => offer(spec.set(material, next))}
        {...clear}
      />
      <span className="small bu-hint">{hint}</span>
    </div>
  );
}

interface WordsProps {
  readonly material: SceneMaterial;
  readonly put: (next: SceneMaterial) => void;
}

function MaterialWords({ material, put }: WordsProps) {
  const { materials } = t;
  const { name, id, role, source } = material;
  return (
    <div className="bu-material-words">
      <div className="bu-field">
        <span>{materials.name}</span>
        <TextField label={materials.name} value={name} required onCommit={(to) => put({ ...material, name: to })} />
      </div>
      <p className="small">
        {materials.id}: {id}
      </p>
      <label className="bu-field">
        <span>{materials.role}</span>
        <select value={role} onChange={(event) => put({ ...material, role: event.target.value as Role })}>
          {ROLES.map((one) => (
            <option key={one} value={one}>
              {t.part(one)}
            </option>
          ))}
        </select>
      </label>
      <div className="bu-field">
        <span>{materials.source}</span>
        <TextField
          label={materials.source}
          value={source ?? ''}
          onCommit={(to) => put(withMaterial(material, { source: to === '' ? null : to }))}
        />
      </div>
      <p className="small">{materials.sourceHint}</p>
    </div>
  );
}

interface DoubtProps {
  readonly pending: Pending;
  readonly unit: string;
  readonly onTake: () => void;
  readonly onKeep: () => void;
  readonly onForget: () => void;
}

/** Nothing is taken over before this is answered. */
function Doubt({ pending: { doubt }, unit, onTake, onKeep, onForget }: DoubtProps) {
  const { materials } = t;
  const { why, found, meant } = doubt;
  return (
    <div className="bu-doubt" role="alert">
      <p>{materials.doubt(doubt, unit)}</p>
      <div className="bu-tools">
        {meant !== null && (
          <button type="button" className="button" onClick={onTake}>
            {why === 'saturated below dry' ? materials.swap : materials.takeMeant(meant, unit)}
          </button>
        )}
        <button type="button" className="button" onClick={onKeep}>
          {materials.keep(found, unit)}
        </button>
        <button type="button" className="button" onClick={onForget}>
          {materials.forget}
        </button>
      </div>
    </div>
  );
}

/** How it comes: the name of the unit, without which a delivery has none. */
function DeliveryUnit({ material, put }: WordsProps) {
  const { materials } = t;
  const { delivery, price } = material;
  return (
    <>
      <div className="bu-number">
        <span className="bu-number-label">{materials.delivery}</span>
        <TextField
          label={materials.delivery}
          value={delivery?.unit ?? ''}
          onCommit={(unit) => put(withMaterial(material, { delivery: unit === '' ? null : { ...delivery, unit } }))}
        />
      </div>
      {price && (
        <label className="bu-number">
          <span className="bu-number-label">{materials.per}</span>
          <select
            value={price.per}
            onChange={(event) => put({ ...material, price: { ...price, per: event.target.value as typeof price.per } })}
          >
            {(['m3', 'm2', 't'] as const).map((per) => (
              <option key={per} value={per}>
                {materials.perUnit[per]}
              </option>
            ))}
          </select>
        </label>
      )}
    </>
  );
}

const UPLIFTS = ['sealed', 'grains'] as const;

/** What it is to water and to the rules. */
function MaterialKinds({ material, put }: WordsProps) {
  const { materials } = t;
  return (
    <>
      <label className="bu-number">
        <span className="bu-number-label">{materials.uplift}</span>
        <select
          value={material.uplift ?? 'none'}
          onChange={(event) => put(withMaterial(material, { uplift: UPLIFTS.find((one) => one === event.target.value) ?? null }))}
        >
          {(['none', ...UPLIFTS] as const).map((one) => (
            <option key={one} value={one}>
              {materials.upliftOf[one]}
            </option>
          ))}
        </select>
      </label>
      <label className="bu-number">
        <span className="bu-number-label">{materials.surface}</span>
        <select
          value={material.surface ?? 'none'}
          onChange={(event) => put(withMaterial(material, { surface: RUNOFF_SURFACES.find((one) => one === event.target.value) ?? null }))}
        >
          {(['none', ...RUNOFF_SURFACES] as readonly ('none' | RunoffSurface)[]).map((one) => (
            <option key={one} value={one}>
              {materials.surfaceOf[one]}
            </option>
          ))}
        </select>
      </label>
      {material.role === 'substrate' && (
        <label className="check">
          <input
            type="checkbox"
            checked={material.mineral ?? false}
            onChange={(event) => put(withMaterial(material, { mineral: event.target.checked || null }))}
          />
          <span>{materials.mineral}</span>
        </label>
      )}
    </>
  );
}

interface GoneProps extends Props {
  readonly run: ReturnType<typeof useEdit>['run'];
}

/** Back to what the catalogue says, or away where it says nothing and nobody needs it. */
function GoneButton({ snapshot, material: { id, name }, entry, onGone, run }: GoneProps) {
  const { materials } = t;
  const { buildUps, others } = usersOf(snapshot, id);
  const held = entry === null && buildUps.length + others.length > 0;
  const drop = async () => {
    const done = await run((now) => dropMaterial(now, id), { act: 'remove', part: 'material', names: [name] });
    if (done && entry === null) onGone();
  };
  return (
    <div className="bu-tools">
      <button type="button" className="button" disabled={held} onClick={() => void drop()}>
        {entry === null ? materials.remove : materials.reset}
      </button>
      {held && <p className="small">{materials.removeUsed}</p>}
    </div>
  );
}
