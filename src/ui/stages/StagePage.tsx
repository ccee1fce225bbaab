/** One stage: its name, what it lays, heaps, drives and waits for, one page at a time; and what the check finds in it. */

import { type ReactNode, useState } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import type { Finding, Severity } from '../../model/finding.ts';
import type { SceneStage } from '../../model/scene-file.ts';
import { Refused } from '../edit/Refused.tsx';
import { findingsIn } from '../facts/stage-list.ts';
import { Tabs } from '../parts/Tabs.tsx';
import { TextField } from '../parts/TextField.tsx';
import { FindingItem } from '../side/FindingsList.tsx';
import { t } from '../text/text.ts';
import { HeapsPage } from './HeapsPage.tsx';
import { HoldsPage } from './HoldsPage.tsx';
import { LayPage } from './LayPage.tsx';
import { PlantPage } from './PlantPage.tsx';
import { useStageEdit } from './use-stage-edit.ts';

export interface PageProps {
  readonly snapshot: Snapshot;
  readonly stage: SceneStage;
  /** Index of the stage. */
  readonly at: number;
}

const PAGES = ['lay', 'heaps', 'plant', 'holds'] as const;
type PageName = (typeof PAGES)[number];

const VIEWS: Readonly<Record<PageName, (props: PageProps) => ReactNode>> = {
  lay: (props) => <LayPage {...props} />,
  heaps: (props) => <HeapsPage {...props} />,
  plant: (props) => <PlantPage {...props} />,
  holds: (props) => <HoldsPage {...props} />,
};

/** The page shown stays while one goes through the stages. */
let lastPage: PageName = 'lay';

export function StagePage(props: PageProps) {
  const { stage, at, snapshot } = props;
  const [page, setPage] = useState(lastPage);
  const { issues, change } = useStageEdit(stage.id);
  const words = t.stageEditor.page;
  const choose = (name: PageName) => {
    lastPage = name;
    setPage(name);
  };
  return (
    <section className="stage-page" aria-label={words.label(at + 1, stage.name)}>
      <div className="stage-title">
        <span aria-hidden="true">{words.name}</span>
        <TextField label={words.name} value={stage.name} required onCommit={(name) => change('rename', 'stage', name, () => ({ name }))} />
        <span className="small">{words.id(stage.id)}</span>
      </div>
      <Refused issues={issues} />
      <PageTabs page={page} stage={stage} onChoose={choose} />
      <div key={page} role="tabpanel" id="stage-tab-panel" aria-labelledby={`stage-tab-${page}`} className="stage-tab-panel">
        {VIEWS[page](props)}
      </div>
      <StageFindings findings={findingsIn(snapshot.report.findings, stage.id)} title={words.findings} none={words.noFindings} />
      <LeftOver findings={snapshot.report.findings} />
    </section>
  );
}

interface TabsProps {
  readonly page: PageName;
  readonly stage: SceneStage;
  readonly onChoose: (page: PageName) => void;
}

function PageTabs({ page, stage, onChoose }: TabsProps) {
  const words = t.stageEditor.page;
  const counts: Readonly<Record<PageName, number>> = {
    lay: 0,
    heaps: stage.stockpiles?.length ?? 0,
    plant: stage.plant?.length ?? 0,
    holds: stage.holdPoints?.length ?? 0,
  };
  return (
    <Tabs
      names={PAGES}
      chosen={page}
      label={words.pages}
      id="stage-tab"
      panel="stage-tab-panel"
      className="stage-tabs"
      onChoose={onChoose}
      says={(name) => words.tabCount(words.tabs[name], counts[name])}
    />
  );
}

const SEVERITIES: readonly Severity[] = ['stop', 'check', 'note'];

interface FindingsProps {
  readonly findings: readonly Finding[];
  readonly title: string;
  readonly none: string;
}

function StageFindings({ findings, title, none }: FindingsProps) {
  const sorted = SEVERITIES.flatMap((severity) => findings.filter((finding) => finding.severity === severity));
  return (
    <section className="stage-findings">
      <h3 className="block-title">{title}</h3>
      {sorted.length === 0 ? (
        <p>{none}</p>
      ) : (
        <ul>
          {sorted.map((finding, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: findings have no id and their order is that of the report
            <li key={i} className={`finding-${finding.severity}`}>
              <span className="stage-severity">{t.findings.severity[finding.severity]}</span>
              <FindingItem finding={finding} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** What no stage ever brings: it belongs to none, so it is told with each. */
function LeftOver({ findings }: { readonly findings: readonly Finding[] }) {
  const left = findings.filter(({ rule }) => rule === 'stage.left');
  return left.length === 0 ? null : <StageFindings findings={left} title={t.stageEditor.page.left} none="" />;
}
