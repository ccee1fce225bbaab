/** Stages, changed: the list of all, then what the chosen one lays, heaps, drives and waits for. */

import './stages.css';
import type { Snapshot } from '../../model/engine.ts';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';
import { DeriveAgain, DerivedStages } from './DeriveStages.tsx';
import { StageList } from './StageList.tsx';
import { StagePage } from './StagePage.tsx';

export function StageEditor() {
  const snapshot = useScene((state) => state.snapshot);
  if (snapshot === null) return null;
  const derived = (snapshot.scene.stages?.length ?? 0) === 0;
  return <div className="stage-editor">{derived ? <DerivedStages snapshot={snapshot} /> : <GivenStages snapshot={snapshot} />}</div>;
}

function GivenStages({ snapshot }: { readonly snapshot: Snapshot }) {
  const at = useView((state) => state.stage);
  const stage = at === null ? undefined : snapshot.scene.stages?.[at];
  return (
    <>
      <StageList snapshot={snapshot} />
      {stage === undefined || at === null ? (
        <p>{t.stageEditor.page.choose}</p>
      ) : (
        <StagePage key={stage.id} snapshot={snapshot} stage={stage} at={at} />
      )}
      <DeriveAgain snapshot={snapshot} />
    </>
  );
}
