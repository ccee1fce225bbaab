/** Sheets beside the model, chosen in a register; on narrow screens the core log and the stages are sheets here too. */

import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { CorePanel } from '../log/CorePanel.tsx';
import { Follows } from '../parts/Follows.tsx';
import { StageRail } from '../stage/StageRail.tsx';
import { t } from '../text/text.ts';
import type { Layout } from '../use-media.ts';
import { useScene, useView } from '../use-stores.ts';
import { BaysTable } from './BaysTable.tsx';
import { CellsTable } from './CellsTable.tsx';
import { EdgesTable } from './EdgesTable.tsx';
import { FindingsList } from './FindingsList.tsx';
import { HeapBoard } from './HeapBoard.tsx';
import { ProbesList } from './ProbesList.tsx';
import { Register, SHEETS, type Sheet } from './Register.tsx';
import { SiteSheet } from './SiteSheet.tsx';
import { SourcesSheet } from './SourcesSheet.tsx';
import { TakeOffSheet } from './TakeOffSheet.tsx';
import { WaterSheet } from './WaterSheet.tsx';
import { WheelsSheet } from './WheelsSheet.tsx';
import { ZonesTable } from './ZonesTable.tsx';

const PANELS: Readonly<Record<Sheet, () => ReactNode>> = {
  core: () => <CorePanel />,
  bays: () => <BaysTable />,
  findings: () => <FindingsList />,
  zones: () => <ZonesTable />,
  cells: () => <CellsTable />,
  heaps: () => <HeapBoard />,
  edges: () => <EdgesTable />,
  site: () => <SiteSheet />,
  wheels: () => <WheelsSheet />,
  water: () => <WaterSheet />,
  takeoff: () => <TakeOffSheet />,
  probes: () => <ProbesList />,
  sources: () => <SourcesSheet />,
  stage: () => <StageRail full />,
};

/** Sheets that follow a drag without waiting for the report, or never change. */
const WITHOUT_REPORT: readonly Sheet[] = ['core', 'sources'];

/** Sheets that have something to show, and a place, in this layout. */
function useSheets(layout: Layout): readonly Sheet[] {
  const runs = useScene((state) => (state.snapshot?.runs.length ?? 0) > 0);
  return useMemo(
    () =>
      SHEETS.filter((sheet) => {
        if (sheet === 'core') return layout !== 'split';
        if (sheet === 'stage') return layout === 'phone';
        return sheet !== 'wheels' || runs;
      }),
    [layout, runs],
  );
}

export function SidePanel({ layout }: { readonly layout: Layout }) {
  const [chosen, setChosen] = useState<Sheet>('bays');
  const sheets = useSheets(layout);
  const sheet = sheets.includes(chosen) ? chosen : 'bays';
  const reports = !WITHOUT_REPORT.includes(sheet);
  const behind = useScene((state) => state.behind !== null);
  // Beside the editor there is no room for an upright register.
  const editing = useView((state) => state.editor !== null);
  const cell = useView((state) => state.cell);
  // Where the core log is one of the sheets, a place picked in the model opens it; one picked in a table does not take the table away.
  const panel = useRef<HTMLElement>(null);
  const hasCore = layout !== 'split';
  useEffect(() => {
    if (cell !== null && hasCore && !panel.current?.contains(document.activeElement)) setChosen('core');
  }, [cell, hasCore]);
  return (
    <section ref={panel} id="tables" className="area-side" aria-label={t.tabs.title} tabIndex={-1}>
      <Register sheets={sheets} sheet={sheet} upright={layout !== 'phone' && !editing} onChoose={setChosen} />
      {reports && <Follows what="tables" />}
      <div
        key={sheet}
        role="tabpanel"
        id="tab-panel"
        className="tab-panel"
        data-report={reports}
        aria-labelledby={`tab-${sheet}`}
        aria-busy={reports && behind}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a panel that scrolls must be reachable by keyboard
        tabIndex={0}
      >
        {PANELS[sheet]()}
      </div>
    </section>
  );
}
