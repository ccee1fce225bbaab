/** A depth measured at the picked place: of the whole build-up or of one layer of it. */

import { type FormEvent, useId, useState } from 'react';
import { withNew } from '../../edit/new-part.ts';
import { dayOf } from '../../model/date-text.ts';
import type { Issue } from '../../model/issue.ts';
import type { CoreLog } from '../../model/maps.ts';
import type { NumberRead } from '../../model/parse-number.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import { Refused } from '../edit/Refused.tsx';
import { fieldUnit, inField, readField } from '../field-units.ts';
import { FieldProblem } from '../parts/FieldProblem.tsx';
import { t } from '../text/text.ts';
import { useScene, useStores } from '../use-stores.ts';

/** Deeper than any build-up; what is typed in centimetres or metres by mistake is far from it. */
const DEEPEST_MM = 20_000;

export function NewProbe() {
  const log = useScene((state) => state.coreLog);
  // Day and name stay for the next place: one person measures many.
  const [on, setOn] = useState(() => dayOf(new Date()));
  const [by, setBy] = useState('');
  const words = t.probes.add;
  if (log === null || log.layers.length === 0) return <p className="small">{words.pick}</p>;
  // Another place has other layers, and what was typed was measured at the one before.
  return <ProbeAt key={log.cell} log={log} measured={{ on, setOn, by, setBy }} />;
}

interface Measured {
  /** YYYY-MM-DD; empty for none. */
  readonly on: string;
  readonly setOn: (on: string) => void;
  readonly by: string;
  readonly setBy: (by: string) => void;
}

interface ProbeProps {
  readonly log: CoreLog;
  readonly measured: Measured;
}

function ProbeAt({ log, measured }: ProbeProps) {
  const words = t.probes.add;
  const { scene } = useStores();
  const id = useId();
  const [layer, setLayer] = useState('');
  const [typed, setTyped] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const [issues, setIssues] = useState<readonly Issue[]>([]);
  const add = async (measuredMm: number) => {
    const { snapshot, edit } = scene.getState();
    if (snapshot === null) return;
    const make = (now: SceneFile) => {
      const made = withNew(now, 'probe', [log.at], { measuredMm, ...given({ layer, on: measured.on, by: measured.by.trim() }) });
      if ('needs' in made) throw new RangeError(`NewProbe: a probe needs ${made.needs.join(', ')}`);
      return made;
    };
    const names = [make(snapshot.scene).selected.id];
    const refused = await edit((now) => make(now).patch, { kind: 'parts', act: 'add', part: 'probe', names });
    setIssues(refused);
    if (refused.length === 0) setTyped('');
  };
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    const read = readField(typed, 'mm');
    const why = complaint(read);
    setProblem(why);
    if (why === null && read.ok) void add(read.value);
  };
  return (
    <form className="probe-new" aria-label={words.title(...log.at)} onSubmit={onSubmit}>
      <p className="probe-title">{words.title(...log.at)}</p>
      <label className="probe-field">
        <span>{words.layer}</span>
        <select value={layer} onChange={(event) => setLayer(event.target.value)}>
          <option value="">{words.whole}</option>
          {layersOf(log).map(([material, name]) => (
            <option key={material} value={material}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <label className="probe-field">
        <span>{words.measured}</span>
        <span className="number-field">
          <input
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={typed}
            aria-invalid={problem !== null}
            aria-describedby={problem === null ? undefined : id}
            onChange={(event) => {
              setTyped(event.target.value);
              setProblem(null);
            }}
          />
          <span className="unit">{fieldUnit('mm')}</span>
        </span>
      </label>
      <FieldProblem id={id}>{problem}</FieldProblem>
      <MeasuredFields {...measured} />
      <button type="submit" className="button button-main">
        {words.go}
      </button>
      <Refused issues={issues} />
    </form>
  );
}

function MeasuredFields({ on, setOn, by, setBy }: Measured) {
  const words = t.probes.add;
  return (
    <>
      <label className="probe-field">
        <span>{words.on}</span>
        <input type="date" className="text-field" value={on} onChange={(event) => setOn(event.target.value)} />
      </label>
      <label className="probe-field">
        <span>{words.by}</span>
        <input type="text" className="text-field" autoComplete="name" value={by} onChange={(event) => setBy(event.target.value)} />
      </label>
    </>
  );
}

/** Without what was left empty. */
const given = <Key extends string>(entries: Readonly<Record<Key, string>>): Partial<Record<Key, string>> =>
  Object.fromEntries(Object.entries(entries).filter(([, text]) => text !== '')) as Partial<Record<Key, string>>;

function complaint(read: NumberRead): string | null {
  if (!read.ok) return t.number.refused(read);
  if (read.value >= 0 && read.value <= DEEPEST_MM) return null;
  return t.number.outOfRange(inField(0, 'mm', 0), inField(DEEPEST_MM, 'mm', 0), fieldUnit('mm'));
}

/** Layers of the zone that has most of the place, top to bottom, each material once. */
function layersOf({ layers }: CoreLog): (readonly [id: string, name: string])[] {
  const own = layers.filter(({ zone }) => zone === layers[0]?.zone);
  return [...new Map(own.toReversed().map(({ materialId, name }) => [materialId, name]))];
}
