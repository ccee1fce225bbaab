/** The plan of the deck, drawn and changed: tools on top, the drawing, typed points, and what there is to say about it. */

import './plan.css';
import './drawing.css';
import './sheets.css';
import { isDrawing, PLAN_TABS, type PlanTab } from '../../store/plan-draw.ts';
import { Tabs } from '../parts/Tabs.tsx';
import { t } from '../text/text.ts';
import { useScene, useStores, useView } from '../use-stores.ts';
import { BaysSheet } from './BaysSheet.tsx';
import { ChosenSheet } from './ChosenSheet.tsx';
import { DrawingBar } from './DrawingBar.tsx';
import { LayersSheet } from './LayersSheet.tsx';
import { PartsSheet } from './PartsSheet.tsx';
import { PlanSurface } from './PlanSurface.tsx';
import { PlanTools } from './PlanTools.tsx';
import { PlanContext, planStoreOf, usePlan } from './plan-context.ts';
import { usePointing } from './use-pointing.ts';

export function PlanEditor() {
  const { view } = useStores();
  return (
    <PlanContext value={planStoreOf(view)}>
      <Plan />
    </PlanContext>
  );
}

function Plan() {
  const snapshot = useScene((state) => state.snapshot);
  const wide = usePlan((state) => state.wide);
  const drawing = usePlan((state) => isDrawing(state.tool));
  usePointing(snapshot);
  if (snapshot === null) return null;
  return (
    <div className="plan-editor" data-wide={wide}>
      <PlanTools />
      <div className="pe-room">
        <PlanSurface snapshot={snapshot} />
        {drawing ? <DrawingBar /> : <PlanSheets />}
      </div>
    </div>
  );
}

const SHEETS: Readonly<Record<PlanTab, () => React.ReactNode>> = {
  chosen: () => <ChosenSheet />,
  parts: () => <PartsSheet />,
  bays: () => <BaysSheet />,
  layers: () => <LayersSheet />,
};

function PlanSheets() {
  const tab = usePlan((state) => state.tab);
  const showTab = usePlan((state) => state.showTab);
  const count = useView((state) => state.selected.length);
  const says = (name: PlanTab) => (
    <>
      {t.draw.tabs[name]}
      {name === 'chosen' && count > 0 && <span className="pe-count">{count}</span>}
    </>
  );
  return (
    <div className="pe-sheets">
      <Tabs
        names={PLAN_TABS}
        chosen={tab}
        label={t.draw.tabsLabel}
        id="pe-tab"
        panel="pe-sheet"
        className="pe-tabs"
        onChoose={showTab}
        says={says}
      />
      <div key={tab} id="pe-sheet" role="tabpanel" className="pe-sheet" aria-labelledby={`pe-tab-${tab}`}>
        {SHEETS[tab]()}
      </div>
    </div>
  );
}
