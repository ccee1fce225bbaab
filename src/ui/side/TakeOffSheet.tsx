/** What to order and what it weighs: by material, or what lies in each zone or stage; to be saved as a table. */

import { useRef, useState } from 'react';
import type { Report } from '../../model/report.ts';
import { GROUPINGS, type Grouping } from '../facts/take-off.ts';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';
import { SaveButtons } from './SaveButtons.tsx';
import { TakeOffFull } from './TakeOffFull.tsx';
import { TakeOffMaterials } from './TakeOffMaterials.tsx';
import { TakeOffShares } from './TakeOffShares.tsx';

export function TakeOffSheet() {
  const report = useScene((state) => state.snapshot?.report);
  const [by, setBy] = useState<Grouping>('material');
  if (report?.takeoff === undefined || report.takeoff.length === 0) return <p>{t.takeoff.none}</p>;
  return (
    <div className="sheet-parts">
      <p>{t.takeoff.says}</p>
      <div className="sheet-buttons">
        <SaveButtons />
        <LargeTable report={report} />
      </div>
      <fieldset className="segments">
        <legend>{t.takeoff.by}</legend>
        {GROUPINGS.map((one) => (
          <label key={one} className="segment">
            <input type="radio" name="take-off-by" checked={by === one} onChange={() => setBy(one)} />
            <span>{t.takeoff.grouping[one]}</span>
          </label>
        ))}
      </fieldset>
      {by === 'material' ? <TakeOffMaterials rows={report.takeoff} /> : <TakeOffShares report={report} by={by} />}
    </div>
  );
}

function LargeTable({ report }: { readonly report: Report }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [open, setOpen] = useState(false);
  const onOpen = () => {
    setOpen(true);
    dialog.current?.showModal();
  };
  return (
    <>
      <button type="button" className="button" onClick={onOpen}>
        {t.takeoff.large}
      </button>
      <dialog ref={dialog} className="sheet large-sheet" aria-label={t.takeoff.title(report.scene)} onClose={() => setOpen(false)}>
        <header>
          <h2 className="panel-title">{t.takeoff.title(report.scene)}</h2>
          <button type="button" className="icon-button" aria-label={t.help.close} onClick={() => dialog.current?.close()}>
            <Icon name="close" />
          </button>
        </header>
        {open && <TakeOffFull rows={report.takeoff ?? []} />}
      </dialog>
    </>
  );
}
