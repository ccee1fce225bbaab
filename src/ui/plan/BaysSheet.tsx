/** Permitted loads and basis of all bays, typed straight down the column of the load plan, or for several bays at once. */

import { type FormEvent, useState } from 'react';
import { valueAt, withParts, withValue } from '../../edit/part-values.ts';
import type { SceneBay } from '../../model/scene-file.ts';
import { type BayLoads, readBayLoads, readBayNames } from '../facts/bay-entry.ts';
import { DOUBTFUL_KNM2 } from '../facts/load-field.ts';
import { type BASIS_KEYS, BAY_LOADS } from '../facts/plan-fields.ts';
import { TextField } from '../parts/TextField.tsx';
import { t } from '../text/text.ts';
import { useStores, useView } from '../use-stores.ts';
import { AxesDialog } from './AxesDialog.tsx';
import { MOST_LOAD_KNM2, QuantityField } from './QuantityField.tsx';
import { useSceneFile } from './use-drawn-lists.ts';
import { stepOf, usePlanEdits } from './use-plan-edits.ts';

type Changes = readonly (readonly [path: string, value: unknown])[];

const refsOf = (ids: readonly string[]) => ids.map((id) => ({ part: 'bay', id }) as const);

function useBayEdits() {
  const edits = usePlanEdits();
  return (ids: readonly string[], changes: Changes) =>
    edits.run(
      (scene) => ({
        patch: withParts(scene, refsOf(ids), (entry) => changes.reduce((now, [path, value]) => withValue(now, path, value), entry)),
      }),
      stepOf('change', 'bay', ids),
    );
}

/** The total goes where its parts are given, and the other way round. */
function loadChanges(loads: BayLoads): Changes {
  if ('totalKNm2' in loads)
    return [
      ['totalKNm2', loads.totalKNm2],
      ['permanentKNm2', undefined],
      ['imposedKNm2', undefined],
    ];
  return [
    ['permanentKNm2', loads.permanentKNm2],
    ['imposedKNm2', loads.imposedKNm2],
    ['totalKNm2', undefined],
  ];
}

export function BaysSheet() {
  const scene = useSceneFile();
  const [axes, setAxes] = useState(false);
  if (scene === null) return null;
  const { bays } = scene.deck;
  return (
    <>
      <h3 className="block-title">{t.draw.bays.title}</h3>
      {bays.length === 0 ? <p className="small">{t.draw.bays.noBays}</p> : <p className="small">{t.draw.bays.how}</p>}
      <div className="pe-actions">
        <button type="button" className="button" onClick={() => setAxes(true)}>
          {t.draw.parts.axes}
        </button>
      </div>
      {axes && <AxesDialog onClose={() => setAxes(false)} />}
      {bays.length > 0 && (
        <details className="pe-part-group" open={bays.some(saysNothing) || undefined}>
          <summary>{t.draw.bays.forAll}</summary>
          <SeveralBays bays={bays} />
        </details>
      )}
      {bays.length > 0 && <BayTable bays={bays} />}
    </>
  );
}

const saysNothing = ({ permanentKNm2, totalKNm2 }: SceneBay): boolean => permanentKNm2 === undefined && totalKNm2 === undefined;

const HEADS = { permanentKNm2: 'permanent', imposedKNm2: 'imposed', totalKNm2: 'total', stageKNm2: 'stage' } as const;

function BayTable({ bays }: { readonly bays: readonly SceneBay[] }) {
  const { view } = useStores();
  const selected = useView((state) => state.selected);
  const unit = useView((state) => state.units.load);
  const change = useBayEdits();
  const takes = (id: string) => (typed: string) => {
    if (!/[/+|]/.test(typed.replace(/(?:kn|kg|t|lb)\s*\/\s*(?:m|q|ft)/i, ''))) return false;
    const read = readBayLoads(typed, unit);
    if (read === null) return false;
    void change([id], loadChanges(read.loads));
    return true;
  };
  return (
    <table className="numbers pe-bays" onKeyDown={goDown}>
      <caption className="small">{t.draw.bays.unit()}</caption>
      <thead>
        <tr>
          <th scope="col">{t.draw.bays.bay}</th>
          {BAY_LOADS.map((key) => (
            <th key={key} scope="col">
              {t.draw.bays[HEADS[key]]}
            </th>
          ))}
          <th scope="col">{t.draw.bays.document}</th>
          <th scope="col">{t.draw.bays.revision}</th>
          <th scope="col">{t.draw.bays.date}</th>
        </tr>
      </thead>
      <tbody>
        {bays.map((bay) => (
          <tr key={bay.id} data-picked={selected.some(({ part, id }) => part === 'bay' && id === bay.id)}>
            <th scope="row">
              <button type="button" className="row-button" onClick={() => view.getState().select([{ part: 'bay', id: bay.id }])}>
                {bay.id}
              </button>
            </th>
            {BAY_LOADS.map((key) => (
              <td key={key} data-column={key}>
                <QuantityField
                  label={t.draw.bays.field(t.draw.field(key), bay.id)}
                  value={bay[key]}
                  unit="kN/m²"
                  decimals={2}
                  min={0}
                  max={MOST_LOAD_KNM2}
                  optional
                  takes={takes(bay.id)}
                  onCommit={(value) => void change([bay.id], [[key, value]])}
                />
              </td>
            ))}
            {(['document', 'revision', 'date'] as const).map((key) => (
              <td key={key} data-column={key}>
                <TextField
                  label={t.draw.bays.field(t.draw.field(`basis.${key}`), bay.id)}
                  value={(valueAt(bay, `basis.${key}`) as string | undefined) ?? ''}
                  onCommit={(value) => void change([bay.id], [[`basis.${key}`, value === '' ? undefined : value]])}
                />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Enter goes on to the same column of the next bay, arrow keys up and down. */
function goDown(event: React.KeyboardEvent<HTMLTableElement>): void {
  const down = event.key === 'Enter' || event.key === 'ArrowDown';
  if (!down && event.key !== 'ArrowUp') return;
  const cell = event.target instanceof Element ? event.target.closest('td') : null;
  const row = cell?.parentElement;
  const other = down ? row?.nextElementSibling : row?.previousElementSibling;
  const field = other?.querySelector<HTMLInputElement>(`td[data-column="${cell?.dataset.column}"] input`);
  if (!field) return;
  event.preventDefault();
  field.focus();
  field.select();
}

type BasisKey = (typeof BASIS_KEYS)[number];

function SeveralBays({ bays }: { readonly bays: readonly SceneBay[] }) {
  const unit = useView((state) => state.units.load);
  const change = useBayEdits();
  const [typed, setTyped] = useState<Readonly<Record<'which' | 'loads' | BasisKey, string>>>({
    which: '',
    loads: '',
    document: '',
    revision: '',
    date: '',
    by: '',
  });
  const [says, setSays] = useState<{ readonly text: string; readonly wrong: boolean }>({ text: '', wrong: false });
  const words = t.draw.bays;
  const wrong = (text: string) => setSays({ text, wrong: true });
  const go = async (event: FormEvent) => {
    event.preventDefault();
    const names = readBayNames(
      typed.which,
      bays.map(({ id }) => id),
    );
    if (names.missing.length > 0 || names.ids.length === 0)
      return wrong(words.noSuch(names.missing.length > 0 ? names.missing : [typed.which || '–']));
    const read = typed.loads.trim() === '' ? null : readBayLoads(typed.loads, unit);
    if (typed.loads.trim() !== '' && read === null) return wrong(words.loadsWrong);
    const basis = (['document', 'revision', 'date', 'by'] as const).flatMap((key) =>
      typed[key].trim() === '' ? [] : [[`basis.${key}`, typed[key].trim()] as const],
    );
    const changes: Changes = [...(read === null ? [] : loadChanges(read.loads)), ...basis];
    if (changes.length === 0) return wrong(words.nothing);
    const tooMuch = read === null ? undefined : Object.values(read.loads).find((load) => load > DOUBTFUL_KNM2);
    if (tooMuch !== undefined && !says.text.startsWith(t.draw.load.doubt(typed.loads)))
      return wrong(`${t.draw.load.doubt(typed.loads)} ${words.again}`);
    if (await change(names.ids, changes)) setSays({ text: words.done(names.ids.length), wrong: false });
  };
  const field = (key: keyof typeof typed, label: string, width: string) => (
    <label className="pe-typed-field">
      <span>{label}</span>
      <input
        type="text"
        autoComplete="off"
        style={{ width }}
        value={typed[key]}
        onChange={({ target }) => setTyped({ ...typed, [key]: target.value })}
      />
    </label>
  );
  return (
    <form className="pe-several" onSubmit={(event) => void go(event)} aria-label={words.forAll}>
      <p className="small">{words.forAllHow}</p>
      <div className="pe-small-form">
        {field('which', words.which, '7em')}
        {field('loads', words.loads, '5em')}
        {field('document', words.document, '8em')}
        {field('revision', words.revision, '3.5em')}
        {field('date', words.date, '7em')}
        {field('by', words.by, '8em')}
        <button type="submit" className="button button-main">
          {words.go}
        </button>
      </div>
      <p className="pe-says" data-wrong={says.wrong} role="status">
        {says.text}
      </p>
    </form>
  );
}
