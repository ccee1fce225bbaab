/** Stages as they follow from the build-ups: shown where the scene names none, and written into it so that they can be changed. */

import { useRef, useState } from 'react';
import { derivedStages } from '../../edit/stage-plan.ts';
import { addStage, nextStageId, replaceStages } from '../../edit/stages.ts';
import type { Snapshot } from '../../model/engine.ts';
import { derivedStageName } from '../../model/roles.ts';
import { Refused } from '../edit/Refused.tsx';
import { useEdit } from '../edit/use-edit.ts';
import { stagesGone } from '../facts/stage-list.ts';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';
import { StageTable } from './StageTable.tsx';

/** Writes derived stages; names are those that the language spoken gives to roles. */
function useDerive({ scene, buildUps }: Snapshot) {
  const { issues, run } = useEdit();
  const showStage = useView((state) => state.showStage);
  const language = useView((state) => state.language);
  const derive = async () => {
    const stages = derivedStages(scene, buildUps, (name) => derivedStageName(name, language));
    const done = await run((now) => replaceStages(now, stages), { act: 'derive', part: 'stage', names: stages.map(({ name }) => name) });
    if (done) showStage(0);
  };
  return { issues, run, derive, count: derivedStages(scene, buildUps, (name) => name).length };
}

/** The scene names no stages. */
export function DerivedStages({ snapshot }: { readonly snapshot: Snapshot }) {
  const { issues, run, derive, count } = useDerive(snapshot);
  const showStage = useView((state) => state.showStage);
  const { list, derive: words } = t.stageEditor;
  const onAdd = async () => {
    const stage = { id: nextStageId(snapshot.scene), name: list.newName(1) };
    if (await run((scene) => addStage(scene, 0, stage), { act: 'add', part: 'stage', names: [stage.name] })) showStage(0);
  };
  return (
    <>
      <p>{count === 0 ? words.nothing : words.derived}</p>
      <div className="stage-tools">
        {count > 0 && (
          <button type="button" className="button" onClick={derive}>
            {words.write}
          </button>
        )}
        <button type="button" className="button" onClick={onAdd}>
          {list.first}
        </button>
      </div>
      <Refused issues={issues} />
      {count > 0 && (
        <StageTable
          snapshot={snapshot}
          name={(stage, index) => (
            <button type="button" className="row-button" onClick={() => showStage(index)}>
              {list.choose(index + 1, stage.name)}
            </button>
          )}
        />
      )}
    </>
  );
}

/** The scene names stages: they would be replaced, and that is said before. */
export function DeriveAgain({ snapshot }: { readonly snapshot: Snapshot }) {
  const { issues, derive, count } = useDerive(snapshot);
  const [asking, setAsking] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  const words = t.stageEditor.derive;
  if (count === 0) return null;
  const close = () => {
    setAsking(false);
    opener.current?.focus();
  };
  return (
    <div className="stage-derive">
      <button ref={opener} type="button" className="button" aria-expanded={asking} onClick={() => setAsking(!asking)}>
        {words.again}
      </button>
      {asking && (
        <div className="stage-ask">
          <p role="status">{words.ask(stagesGone(snapshot.scene))}</p>
          <div className="stage-tools">
            <button
              type="button"
              className="button button-main"
              onClick={() => {
                close();
                void derive();
              }}
            >
              {words.replace}
            </button>
            <button type="button" className="button" onClick={close}>
              {words.keep}
            </button>
          </div>
        </div>
      )}
      <Refused issues={issues} />
    </div>
  );
}
