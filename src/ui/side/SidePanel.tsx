/** Tables beside the model in tabs; on narrow screens the core log and the stages are tabs here too. */

import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import { CorePanel } from '../log/CorePanel.tsx';
import { StageRail } from '../stage/StageRail.tsx';
import { en as t } from '../text/en.ts';
import type { Layout } from '../use-media.ts';
import { useScene, useView } from '../use-stores.ts';
import { BaysTable } from './BaysTable.tsx';
import { CellsTable } from './CellsTable.tsx';
import { FindingsList } from './FindingsList.tsx';
import { ZonesTable } from './ZonesTable.tsx';

type Tab = 'core' | 'bays' | 'findings' | 'zones' | 'cells' | 'stage';

const TABS: Readonly<Record<Layout, readonly Tab[]>> = {
  split: ['bays', 'findings', 'zones', 'cells'],
  tabs: ['core', 'bays', 'findings', 'zones', 'cells'],
  phone: ['core', 'bays', 'findings', 'zones', 'cells', 'stage'],
};

const PANELS: Readonly<Record<Tab, () => ReactNode>> = {
  core: () => <CorePanel />,
  bays: () => <BaysTable />,
  findings: () => <FindingsList />,
  zones: () => <ZonesTable />,
  cells: () => <CellsTable />,
  stage: () => <StageRail full />,
};

export function SidePanel({ layout }: { readonly layout: Layout }) {
  const [chosen, setChosen] = useState<Tab>('bays');
  const tabs = TABS[layout];
  const tab = tabs.includes(chosen) ? chosen : 'bays';
  const cell = useView((state) => state.cell);
  // Where the core log is one of the tabs, a place picked in the model opens it; one picked in a table does not take the table away.
  const panel = useRef<HTMLElement>(null);
  useEffect(() => {
    if (cell !== null && tabs.includes('core') && !panel.current?.contains(document.activeElement)) setChosen('core');
  }, [cell, tabs]);
  return (
    <section ref={panel} id="tables" className="area-side" aria-label={t.tabs.title} tabIndex={-1}>
      <TabList tabs={tabs} tab={tab} onChoose={setChosen} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a panel that scrolls must be reachable by keyboard */}
      <div role="tabpanel" id="tab-panel" className="tab-panel" aria-labelledby={`tab-${tab}`} tabIndex={0}>
        {PANELS[tab]()}
      </div>
    </section>
  );
}

interface TabListProps {
  readonly tabs: readonly Tab[];
  readonly tab: Tab;
  readonly onChoose: (tab: Tab) => void;
}

/** Arrow keys, Home and End move between the tabs; only the chosen one is in the tab order. */
function TabList({ tabs, tab, onChoose }: TabListProps) {
  const row = useRef<HTMLDivElement>(null);
  const stops = useScene((state) => state.snapshot?.report.findings.filter(({ severity }) => severity === 'stop').length ?? 0);
  const onKeyDown = (event: KeyboardEvent) => {
    const at = tabs.indexOf(tab);
    const steps: Readonly<Record<string, number>> = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: tabs.length - 1 };
    const to = steps[event.key];
    if (to === undefined) return;
    event.preventDefault();
    const next = tabs[(to + tabs.length) % tabs.length] as Tab;
    onChoose(next);
    row.current?.querySelector<HTMLElement>(`#tab-${next}`)?.focus();
  };
  return (
    <div ref={row} role="tablist" className="tab-list" aria-label={t.tabs.title} onKeyDown={onKeyDown}>
      {tabs.map((one) => (
        <button
          key={one}
          id={`tab-${one}`}
          type="button"
          role="tab"
          aria-selected={one === tab}
          aria-controls="tab-panel"
          tabIndex={one === tab ? 0 : -1}
          onClick={() => onChoose(one)}
        >
          {t.tabs[one]}
          {one === 'findings' && stops > 0 && (
            <span className="tab-count" role="img" aria-label={t.tabs.stops(stops)}>
              {stops}
            </span>
          )}
        </button>
      ))}
    </div>
  );
}
