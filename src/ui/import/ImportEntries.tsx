/** Entries for parts of which a drawing gives only the place: one for all of a kind. What has none is left out, and that is told. */

import { useId, useState } from 'react';
import { type PartEntries, STARTER } from '../../model/drawn-parts.ts';
import type { SceneEdge } from '../../model/scene-file.ts';
import { fieldUnit, readField } from '../field-units.ts';
import { FieldProblem } from '../parts/FieldProblem.tsx';
import { t } from '../text/text.ts';
import { useImports, useScene } from '../use-stores.ts';

export function ImportEntries() {
  const draft = useImports((state) => state.draft);
  const entries = useImports((state) => state.entries);
  if (draft === null) return null;
  const { counts, waiting } = draft;
  const columns = waiting.columns ?? (entries.columnM === undefined ? 0 : (counts.columns ?? 0));
  const trees = waiting.trees ?? (entries.tree === undefined ? 0 : (counts.trees ?? 0));
  const edges = waiting.edges ?? (entries.edge === undefined ? 0 : (counts.edges ?? 0));
  const zones = waiting.zones ?? counts.zones ?? 0;
  return (
    <div className="import-entries">
      {zones > 0 && <ZoneEntry zones={zones} />}
      {columns > 0 && <ColumnEntry columns={columns} />}
      {edges > 0 && <EdgeEntry edges={edges} />}
      {trees > 0 && <TreeEntry trees={trees} />}
      {columns + trees + edges > 0 && <p className="small">{t.imports.leftUntil}</p>}
      {(waiting.bays ?? 0) > 0 && <p className="small">{t.imports.bayLoads(waiting.bays ?? 0)}</p>}
    </div>
  );
}

/** The other entries stay; without a value the entry is taken back. */
function useEntry<K extends keyof PartEntries>(key: K): readonly [PartEntries[K], (value: PartEntries[K] | undefined) => void] {
  const entries = useImports((state) => state.entries);
  const setEntries = useImports((state) => state.setEntries);
  const { [key]: old, ...others } = entries;
  return [old, (value) => setEntries(value === undefined ? others : { ...others, [key]: value })];
}

function ZoneEntry({ zones }: { readonly zones: number }) {
  const [buildup, setBuildup] = useEntry('buildup');
  const target = useImports((state) => state.target);
  const buildups = useScene((state) => state.snapshot?.scene.buildups);
  const known = (target === 'into' && buildups) || [];
  return (
    <label className="import-entry">
      <span>{t.imports.waitZones(zones)}</span>
      <select value={buildup ?? ''} onChange={({ target: field }) => setBuildup(field.value === '' ? undefined : field.value)}>
        {!known.some(({ id }) => id === STARTER) && <option value={STARTER}>{t.imports.starter}</option>}
        {known.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
        <option value="">{t.imports.leaveZones}</option>
      </select>
    </label>
  );
}

function ColumnEntry({ columns }: { readonly columns: number }) {
  const [size, setSize] = useEntry('columnM');
  const [sides, setSides] = useState<readonly (number | null)[]>(size ?? [null, null]);
  const put = (side: number, value: number | null) => {
    const next = sides.map((old, i) => (i === side ? value : old));
    const [width, depth] = next;
    setSides(next);
    setSize(width != null && depth != null ? [width, depth] : undefined);
  };
  return (
    <fieldset className="import-entry">
      <legend>{t.imports.waitColumns(columns)}</legend>
      <EntryField label={t.imports.width} unit="m" value={sides[0] ?? null} onEnter={(value) => put(0, value)} />
      <EntryField label={t.imports.depth} unit="m" value={sides[1] ?? null} onEnter={(value) => put(1, value)} />
    </fieldset>
  );
}

function TreeEntry({ trees }: { readonly trees: number }) {
  const [tree, setTree] = useEntry('tree');
  const [massKg, setMassKg] = useState(tree?.massKg ?? null);
  const [spreadM, setSpreadM] = useState(tree?.spreadM ?? null);
  const put = (mass: number | null, spread: number | null) => {
    setMassKg(mass);
    setSpreadM(spread);
    setTree(mass !== null && spread !== null ? { massKg: mass, spreadM: spread } : undefined);
  };
  return (
    <fieldset className="import-entry">
      <legend>{t.imports.waitTrees(trees)}</legend>
      <EntryField label={t.imports.mass} unit="kg" value={massKg} onEnter={(value) => put(value, spreadM)} />
      <EntryField label={t.imports.spread} unit="m" value={spreadM} onEnter={(value) => put(massKg, value)} />
    </fieldset>
  );
}

const EDGE_KINDS: readonly SceneEdge['kind'][] = ['upstand', 'threshold'];

function EdgeEntry({ edges }: { readonly edges: number }) {
  const [edge, setEdge] = useEntry('edge');
  const [kind, setKind] = useState<SceneEdge['kind']>(edge?.kind ?? 'upstand');
  const [topM, setTopM] = useState(edge?.membraneTopM ?? null);
  const put = (newKind: SceneEdge['kind'], newTopM: number | null) => {
    setKind(newKind);
    setTopM(newTopM);
    setEdge(newTopM === null ? undefined : { kind: newKind, membraneTopM: newTopM });
  };
  return (
    <fieldset className="import-entry">
      <legend>{t.imports.waitEdges(edges)}</legend>
      <label>
        <span>{t.imports.edgeKind}</span>
        <select value={kind} onChange={({ target }) => put(target.value === 'threshold' ? 'threshold' : 'upstand', topM)}>
          {EDGE_KINDS.map((one) => (
            <option key={one} value={one}>
              {t.imports.edgeKinds(one)}
            </option>
          ))}
        </select>
      </label>
      <EntryField label={t.imports.membraneTop} unit="m" value={topM} anySign onEnter={(value) => put(kind, value)} />
    </fieldset>
  );
}

interface FieldProps {
  readonly label: string;
  readonly unit: string;
  readonly value: number | null;
  readonly anySign?: boolean;
  readonly onEnter: (value: number | null) => void;
}

/** A number that may be missing. */
function EntryField({ label, unit, value, anySign = false, onEnter }: FieldProps) {
  const [typed, setTyped] = useState(value === null ? '' : String(value));
  const [problem, setProblem] = useState<string | null>(null);
  const id = useId();
  const enter = () => {
    const read = readField(typed, unit);
    const empty = typed.trim() === '';
    const fits = read.ok && (anySign || read.value > 0);
    setProblem(empty || fits ? null : anySign ? t.imports.levelWrong : t.imports.entryWrong);
    onEnter(fits ? read.value : null);
  };
  return (
    <label>
      <span>{label}</span>
      <span className="number-field">
        <input
          type="text"
          inputMode="decimal"
          autoComplete="off"
          aria-invalid={problem !== null}
          aria-describedby={problem === null ? undefined : id}
          value={typed}
          onChange={({ target }) => setTyped(target.value)}
          onBlur={enter}
          onKeyDown={({ key }) => key === 'Enter' && enter()}
        />
        <span className="unit">{fieldUnit(unit)}</span>
        <FieldProblem id={id}>{problem}</FieldProblem>
      </span>
    </label>
  );
}
