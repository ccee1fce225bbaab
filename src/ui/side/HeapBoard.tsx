/** Heap board: how high a loose material may lie in each bay at the stage shown, as a plan and as a table; below it what columns carry. */

import { useMemo, useRef } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import { missingBasis } from '../facts/basis.ts';
import { type HeapEntry, heapBoard, heapMaterials, heapStage, isUnusual } from '../facts/heap-board.ts';
import { Icon } from '../parts/Icon.tsx';
import { Derived } from '../sheets/Derived.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useScene, useView } from '../use-stores.ts';
import { ColumnsTable } from './ColumnsTable.tsx';
import { HeapPlan } from './HeapPlan.tsx';

export function HeapBoard() {
  const snapshot = useScene((state) => state.snapshot);
  if (snapshot === null) return null;
  return (
    <div className="sheet-parts">
      <Heaps snapshot={snapshot} />
      <ColumnsTable />
    </div>
  );
}

function Heaps({ snapshot }: { readonly snapshot: Snapshot }) {
  const shown = useView((state) => state.stage);
  const wanted = useView((state) => state.heapOf);
  const { report, scene, stages } = snapshot;
  const at = heapStage(stages, shown);
  const materials = useMemo(() => heapMaterials(report), [report]);
  const stage = at === null ? undefined : stages[at];
  const material = materials.find((one) => one === wanted) ?? materials[0];
  const entries = useMemo(
    () => (stage === undefined || material === undefined ? [] : heapBoard(report, scene, stage.id, material)),
    [report, scene, stage, material],
  );
  if (at === null || stage === undefined || material === undefined) return <p>{t.heaps.none}</p>;
  const name = snapshot.materialNames.get(material) ?? material;
  const title = t.heaps.title(name, at + 1, stage.name);
  return (
    <section className="sheet-part" aria-label={t.tabs.heaps}>
      <h2 className="panel-title">{t.legend.stage(at + 1, stage.name)}</h2>
      <p className="small">{shown === null ? t.heaps.lastStage : t.heaps.railStage}</p>
      <MaterialChoice materials={materials} material={material} names={snapshot.materialNames} />
      <HeapPlan snapshot={snapshot} entries={entries} label={title} large={false} />
      <p>{t.heaps.says}</p>
      <p>{limitsText(entries)}</p>
      <LargePlan snapshot={snapshot} entries={entries} title={title} />
      <HeapTable entries={entries} caption={title} stage={stage.id} material={material} />
    </section>
  );
}

const limitsText = (entries: readonly HeapEntry[]) => (isUnusual(entries) ? `${t.heaps.loadOnly} ${t.heaps.unusual}` : t.heaps.loadOnly);

interface ChoiceProps {
  readonly materials: readonly string[];
  readonly material: string;
  readonly names: Snapshot['materialNames'];
}

function MaterialChoice({ materials, material, names }: ChoiceProps) {
  const showHeapsOf = useView((state) => state.showHeapsOf);
  return (
    <label className="choose">
      <span>{t.heaps.material}</span>
      <select value={material} onChange={(event) => showHeapsOf(event.target.value)}>
        {materials.map((id) => (
          <option key={id} value={id}>
            {names.get(id) ?? id}
          </option>
        ))}
      </select>
    </label>
  );
}

interface LargePlanProps {
  readonly snapshot: Snapshot;
  readonly entries: readonly HeapEntry[];
  readonly title: string;
}

/** The plan alone, as large as the window. */
function LargePlan({ snapshot, entries, title }: LargePlanProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  return (
    <>
      <button type="button" className="button" onClick={() => dialog.current?.showModal()}>
        {t.heaps.large}
      </button>
      <dialog ref={dialog} className="sheet large-sheet" aria-label={title}>
        <header>
          <h2 className="panel-title">{title}</h2>
          <button type="button" className="icon-button" aria-label={t.help.close} onClick={() => dialog.current?.close()}>
            <Icon name="close" />
          </button>
        </header>
        <p className="small">
          {t.heaps.says} {limitsText(entries)}
        </p>
        <HeapPlan snapshot={snapshot} entries={entries} label={title} large />
      </dialog>
    </>
  );
}

interface Heaped {
  readonly stage: string;
  readonly material: string;
}

function HeapTable({ entries, caption, ...heaped }: Heaped & { readonly entries: readonly HeapEntry[]; readonly caption: string }) {
  return (
    <table className="numbers heaps">
      <caption className="unseen">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{t.bays.column}</th>
          <th scope="col">{t.heaps.height}</th>
          <th scope="col">{t.heaps.permitted}</th>
        </tr>
      </thead>
      <tbody>
        {entries.map((entry) => (
          <HeapRow key={entry.bay} entry={entry} {...heaped} />
        ))}
      </tbody>
    </table>
  );
}

function HeapRow({ entry, stage, material }: Heaped & { readonly entry: HeapEntry }) {
  const { bay, confirmed, permittedKNm2, basis } = entry;
  const picked = useView((state) => state.bay === bay);
  const go = useGo();
  const missing = missingBasis(basis);
  return (
    <tr className="bay-row" data-picked={picked} data-heap={entry.state} onClick={() => go.toBay(bay, null)}>
      <th scope="row">
        <button type="button" className="row-button" aria-pressed={picked} aria-label={t.bays.pick(bay)}>
          {bay}
        </button>
      </th>
      <td>
        {entry.state === 'no limit' ? (
          <strong>{t.heaps.entry(entry)}</strong>
        ) : (
          <Derived ask={{ kind: 'heap', bay, stage, material }}>
            <strong>{t.heaps.entry(entry)}</strong>
          </Derived>
        )}
        {!confirmed && (
          <span className="small block">
            <span data-unconfirmed="true">{t.legend.unconfirmed}</span>
          </span>
        )}
      </td>
      <td>
        {permittedKNm2 === null ? t.heaps.noLimit : t.heaps.permittedLoad(permittedKNm2)}
        <span className="small block">{t.basis.short(basis, missing)}</span>
      </td>
    </tr>
  );
}
