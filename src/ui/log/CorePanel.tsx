/** The picked place: its column of layers, its weight, its bay, and the thicknesses of its build-up. */

import type { CoreLog } from '../../model/maps.ts';
import { cellPlace } from '../facts/place.ts';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';
import { CoreLogDrawing } from './CoreLogDrawing.tsx';
import { CoreLogSums } from './CoreLogSums.tsx';
import { CoreLogFacts, CoreLogVerdict } from './CoreLogVerdict.tsx';
import { ThicknessControls } from './ThicknessControls.tsx';

export function CorePanel() {
  const log = useScene((state) => state.coreLog);
  const hasScene = useScene((state) => state.snapshot !== null);
  return (
    <div className="core-panel">
      {log === null ? <CoreEmpty /> : <CorePlace log={log} />}
      {hasScene && <ThicknessControls zone={log?.layers[0]?.zone ?? null} />}
      <p className="small core-statement">{t.app.statementFull}</p>
    </div>
  );
}

function CoreEmpty() {
  return (
    <section className="core-empty">
      <h2 className="panel-title">{t.core.emptyTitle}</h2>
      <p>{t.core.emptyHow}</p>
    </section>
  );
}

function CorePlace({ log }: { readonly log: CoreLog }) {
  return (
    <section aria-label={t.core.title} data-testid="core-log">
      <CoreHead log={log} />
      <CoreLogVerdict log={log} />
      {log.layers.length === 0 ? <p>{t.core.noZone}</p> : <CoreLogDrawing log={log} />}
      <CoreLogFacts log={log} />
      <CoreLogSums log={log} />
    </section>
  );
}

function CoreHead({ log }: { readonly log: CoreLog }) {
  const grid = useScene((state) => state.snapshot?.grid);
  const pickCell = useView((state) => state.pickCell);
  const stages = useScene((state) => state.snapshot?.stages);
  const index = stages?.findIndex((stage) => stage.id === log.stage) ?? -1;
  const stage = index < 0 ? t.core.finishedGarden : t.core.stage(index + 1, stages?.[index]?.name ?? '');
  const place = grid && cellPlace(grid, log.cell);
  return (
    <header className="core-head">
      <div>
        <h2 className="panel-title">{log.bay === null ? t.core.title : t.core.bay(log.bay)}</h2>
        <p className="small">{t.core.place(...log.at)}</p>
        <p className="small">{place && t.core.cell(place.column, place.row)}</p>
        <p className="small">{stage}</p>
      </div>
      <button type="button" className="icon-button" aria-label={t.core.close} title={t.core.close} onClick={() => pickCell(null)}>
        <Icon name="close" />
      </button>
    </header>
  );
}
