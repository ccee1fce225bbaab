/** What can be done with whole build-ups: one more from a template, a copy, into zones, away. */

import { type ReactNode, useState } from 'react';
import { addBuildUp, assignBuildUp, buildUpId } from '../../edit/build-ups.ts';
import { BUILD_UP_TEMPLATES, fromTemplate, type TemplateId } from '../../edit/build-ups-templates.ts';
import { removed } from '../../edit/references.ts';
import type { BuildUpView, Snapshot } from '../../model/engine.ts';
import type { SceneBuildUp } from '../../model/scene-file.ts';
import { Refused } from '../edit/Refused.tsx';
import { type Editing, useEdit } from '../edit/use-edit.ts';
import { TextField } from '../parts/TextField.tsx';
import { t } from '../text/text.ts';
import { ZoneChoice } from './ZoneChoice.tsx';

interface Props {
  readonly snapshot: Snapshot;
  readonly chosen: BuildUpView | null;
  readonly onChoose: (id: string) => void;
}

type Open = 'new' | 'copy' | 'assign' | null;

export function BuildUpActions({ snapshot, chosen, onChoose }: Props) {
  const [open, setOpen] = useState<Open>(null);
  const [said, setSaid] = useState('');
  const editing = useEdit();
  const { actions } = t.buildUps;
  const toggle = (what: Open) => {
    setSaid('');
    setOpen(what === open ? null : what);
  };
  const remove = (buildUp: BuildUpView) => {
    setOpen(null);
    if (buildUp.zones.length > 0) {
      setSaid(actions.removeUsed(buildUp.zones));
      return;
    }
    setSaid('');
    const { id, name } = buildUp;
    void editing.run((now) => removed(now, [{ part: 'build-up', id }]), { act: 'remove', part: 'build-up', names: [name] });
  };
  const opening = (what: Open, label: string): ReactNode => (
    <button type="button" className="button" aria-expanded={open === what} onClick={() => toggle(what)}>
      {label}
    </button>
  );
  const done = (id: string) => {
    setOpen(null);
    onChoose(id);
  };
  return (
    <div className="bu-actions">
      <div className="bu-tools">
        {opening('new', actions.new)}
        {chosen && opening('copy', actions.copy)}
        {chosen && opening('assign', actions.assign)}
        {chosen && (
          <button type="button" className="button" onClick={() => remove(chosen)}>
            {actions.remove}
          </button>
        )}
      </div>
      <p role="alert" className="bu-refused">
        {said}
      </p>
      <Refused issues={editing.issues} />
      {open === 'new' && <NewBuildUp snapshot={snapshot} editing={editing} onDone={done} />}
      {open === 'copy' && chosen && <CopyBuildUp key={chosen.id} {...{ snapshot, editing }} of={chosen} onDone={done} />}
      {open === 'assign' && chosen && <AssignBuildUp key={chosen.id} {...{ snapshot, editing }} of={chosen} onDone={done} />}
    </div>
  );
}

interface FormProps {
  readonly snapshot: Snapshot;
  readonly editing: Editing;
  readonly onDone: (id: string) => void;
}

/** Adds a build-up under an id of its own. */
async function add({ snapshot, editing, onDone }: FormProps, buildUp: Omit<SceneBuildUp, 'id'>, zones: readonly string[], wish: string) {
  const id = buildUpId(snapshot.scene, wish);
  const made = await editing.run((now) => addBuildUp(now, { id, ...buildUp }, zones), {
    act: 'add',
    part: 'build-up',
    names: [buildUp.name],
  });
  if (made) onDone(id);
}

function NewBuildUp(props: FormProps) {
  const { template, actions, name, zones: zoneWords } = t.buildUps;
  const [use, setUse] = useState<TemplateId>('lawn');
  const [typed, setTyped] = useState<string | null>(null);
  const [zones, setZones] = useState<readonly string[]>([]);
  const words = template.words[use];
  const called = typed ?? words.name;
  const create = () => {
    const found = BUILD_UP_TEMPLATES.find(({ id }) => id === use);
    if (found)
      void add(props, { name: called, ...fromTemplate(found, props.snapshot.scene.deck.rootResistant) }, zones, use.replaceAll(' ', '-'));
  };
  return (
    <section className="bu-form sheet" aria-label={template.title}>
      <h3 className="block-title">{template.title}</h3>
      <p className="small">{template.says}</p>
      <div className="bu-fields">
        <label className="bu-field">
          <span>{template.choose}</span>
          <select
            value={use}
            onChange={(event) => {
              setUse(event.target.value as TemplateId);
              setTyped(null);
            }}
          >
            {BUILD_UP_TEMPLATES.map(({ id }) => (
              <option key={id} value={id}>
                {template.words[id].name}
              </option>
            ))}
          </select>
        </label>
        <div className="bu-field">
          <span>{name}</span>
          <TextField label={name} value={called} required onCommit={setTyped} />
        </div>
      </div>
      <p>{words.says}</p>
      <ZoneChoice snapshot={props.snapshot} not={null} title={zoneWords.title} chosen={zones} onChoose={setZones} />
      <button type="button" className="button button-main" onClick={create}>
        {actions.create}
      </button>
    </section>
  );
}

function CopyBuildUp({ of, ...props }: FormProps & { readonly of: BuildUpView }) {
  const { copyOf, actions, name, zones: zoneWords } = t.buildUps;
  const [called, setCalled] = useState(copyOf.name(of.name));
  const [zones, setZones] = useState<readonly string[]>([]);
  const create = () => {
    const given = props.snapshot.scene.buildups.find(({ id }) => id === of.id);
    if (!given) return;
    const { id: _, ...parts } = given;
    void add(props, { ...parts, name: called }, zones, of.id);
  };
  return (
    <section className="bu-form sheet" aria-label={copyOf.title(of.name)}>
      <h3 className="block-title">{copyOf.title(of.name)}</h3>
      <p className="small">{copyOf.says}</p>
      <div className="bu-field">
        <span>{name}</span>
        <TextField label={name} value={called} required onCommit={setCalled} />
      </div>
      <ZoneChoice snapshot={props.snapshot} not={null} first={of.id} title={zoneWords.title} chosen={zones} onChoose={setZones} />
      <button type="button" className="button button-main" onClick={create}>
        {actions.create}
      </button>
    </section>
  );
}

function AssignBuildUp({ of, snapshot, editing, onDone }: FormProps & { readonly of: BuildUpView }) {
  const { zones: words } = t.buildUps;
  const [zones, setZones] = useState<readonly string[]>([]);
  const assign = async () => {
    const done = await editing.run((now) => assignBuildUp(now, of.id, zones), { act: 'exchange', part: 'build-up', names: [of.name] });
    if (done) onDone(of.id);
  };
  return (
    <section className="bu-form sheet" aria-label={words.assignTitle(of.name)}>
      <h3 className="block-title">{words.assignTitle(of.name)}</h3>
      <ZoneChoice snapshot={snapshot} not={of.id} title={words.title} chosen={zones} onChoose={setZones} />
      <button type="button" className="button button-main" disabled={zones.length === 0} onClick={() => void assign()}>
        {words.assign(zones.length)}
      </button>
    </section>
  );
}
