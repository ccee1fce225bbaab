/** The build-ups of the scene side by side, and the chosen one to change. */

import { useMemo, useState } from 'react';
import type { CatalogueView } from '../../model/catalogue-view.ts';
import type { BuildUpView, Snapshot } from '../../model/engine.ts';
import { Refused } from '../edit/Refused.tsx';
import { choicesOf } from '../facts/build-up-facts.ts';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';
import { BuildUpActions } from './BuildUpActions.tsx';
import { BuildUpColumn } from './BuildUpColumn.tsx';
import { BuildUpBrief, BuildUpLive } from './BuildUpLive.tsx';
import { BuildUpNames } from './BuildUpNames.tsx';
import { BuildUpStrip } from './BuildUpStrip.tsx';
import { LayerForm } from './LayerForm.tsx';
import { LayersTable } from './LayersTable.tsx';
import { PlantsForm } from './PlantsForm.tsx';
import { useBuildUp } from './use-build-up.ts';

interface Props {
  readonly snapshot: Snapshot;
  readonly catalogue: CatalogueView;
  /** Goes to the values of a material. */
  readonly onMaterial: (id: string) => void;
}

export function BuildUpPage({ snapshot, catalogue, onMaterial }: Props) {
  const chosen = useChosen(snapshot);
  const select = useView((state) => state.select);
  const choose = (id: string) => select([{ part: 'build-up', id }]);
  return (
    <>
      <BuildUpStrip buildUps={snapshot.buildUps} chosen={chosen?.id ?? null} onChoose={choose} />
      {chosen === null && <p>{t.buildUps.list.none}</p>}
      <BuildUpActions snapshot={snapshot} chosen={chosen} onChoose={choose} />
      {chosen !== null && <ChosenBuildUp key={chosen.id} {...{ snapshot, catalogue, onMaterial }} buildUp={chosen} onChoose={choose} />}
    </>
  );
}

/** The build-up chosen here, that of the zone chosen in the plan or under the picked place, or the first. */
function useChosen({ scene, buildUps }: Snapshot): BuildUpView | null {
  const selected = useView((state) => state.selected);
  const byId = (id: string | undefined) => buildUps.find((one) => one.id === id);
  const zone = selected.find(({ part }) => part === 'zone')?.id;
  const ofZone = scene.zones.find(({ id }) => id === zone)?.buildup;
  return byId(selected.find(({ part }) => part === 'build-up')?.id) ?? byId(ofZone) ?? buildUps[0] ?? null;
}

interface ChosenProps extends Props {
  readonly buildUp: BuildUpView;
  readonly onChoose: (id: string) => void;
}

function ChosenBuildUp({ snapshot, catalogue, buildUp, onMaterial, onChoose }: ChosenProps) {
  const [layer, setLayer] = useState(buildUp.layers.length - 1);
  // Undo can leave fewer layers than there were.
  const index = Math.min(layer, buildUp.layers.length - 1);
  const choices = useMemo(() => choicesOf(snapshot.scene, catalogue), [snapshot.scene, catalogue]);
  const edits = useBuildUp(snapshot.scene, buildUp, setLayer);
  return (
    <div className="bu-chosen">
      <BuildUpBrief snapshot={snapshot} buildUp={buildUp} />
      <div className="bu-both">
        <BuildUpColumn buildUp={buildUp} layer={index} onLayer={setLayer} edits={edits} />
        <BuildUpLive snapshot={snapshot} buildUp={buildUp} />
      </div>
      <Refused issues={edits.issues} />
      <LayerForm
        key={`${index} ${buildUp.layers[index]?.materialId}`}
        {...{ snapshot, buildUp, choices, edits, onMaterial }}
        index={index}
      />
      <LayersTable buildUp={buildUp} layer={index} onLayer={setLayer} edits={edits} />
      <BuildUpNames buildUp={buildUp} edits={edits} onChoose={onChoose} />
      <PlantsForm snapshot={snapshot} buildUp={buildUp} catalogue={catalogue} edits={edits} />
    </div>
  );
}
