/** Machines of a stage: which, on what way, how hard they press; and machines of the scene's own. */

import { useState } from 'react';
import type { CatalogueView } from '../../model/catalogue-view.ts';
import type { Snapshot } from '../../model/engine.ts';
import type { ReportTraffic } from '../../model/report.ts';
import type { PointM, SceneFile } from '../../model/scene-file.ts';
import { Refused } from '../edit/Refused.tsx';
import { PointsField } from '../parts/PointsField.tsx';
import { t } from '../text/text.ts';
import { type Choice, ChoiceOf } from './ChoiceOf.tsx';
import { OnPlan } from './OnPlan.tsx';
import { OwnVehicles } from './OwnVehicles.tsx';
import type { PageProps } from './StagePage.tsx';
import { useCatalogue } from './use-catalogue.ts';
import { changedAt, useStageEdit, without } from './use-stage-edit.ts';

export function PlantPage({ snapshot, stage }: PageProps) {
  const { issues, change } = useStageEdit(stage.id);
  const vehicles = vehicleChoices(snapshot.scene, useCatalogue());
  const words = t.stageEditor.plant;
  const plant = stage.plant ?? [];
  const traffic = (snapshot.report.traffic ?? []).filter((one) => one.stage === stage.id);
  const nameOf = (id: string) => [...vehicles.own, ...vehicles.others].find((one) => one.id === id)?.name ?? id;
  const set = (act: 'change' | 'move', i: number, part: Partial<Plant>) =>
    void change(act, 'plant', nameOf(part.vehicle ?? plant[i]?.vehicle ?? ''), (now) => ({
      plant: changedAt(now.plant, i, (one) => ({ ...one, ...part })),
    }));
  return (
    <>
      <Refused issues={issues} />
      {plant.length === 0 && <p>{words.none}</p>}
      {plant.map((one, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: machines have no id
        <fieldset key={i} className="stage-card">
          <legend>{nameOf(one.vehicle)}</legend>
          <div className="stage-fields">
            <VehicleChoice vehicles={vehicles} value={one.vehicle} onChoose={(vehicle) => set('change', i, { vehicle })} />
            <PointsField label={words.route} value={one.route} least={2} onCommit={(route) => set('move', i, { route })} />
          </div>
          <Pressure traffic={traffic[i]} snapshot={snapshot} />
          <button
            type="button"
            className="button"
            aria-label={words.remove(nameOf(one.vehicle))}
            onClick={() => void change('remove', 'plant', nameOf(one.vehicle), (now) => ({ plant: without(now.plant, i) }))}
          >
            {t.stageEditor.list.remove}
          </button>
        </fieldset>
      ))}
      <NewPlant
        key={`new ${plant.length}`}
        vehicles={vehicles}
        onAdd={(one) => void change('add', 'plant', nameOf(one.vehicle), (now) => ({ plant: [...(now.plant ?? []), one] }))}
      />
      <OnPlan kind="plant" />
      <OwnVehicles scene={snapshot.scene} />
    </>
  );
}

interface Plant {
  readonly vehicle: string;
  readonly route: readonly PointM[];
}

interface Vehicles {
  readonly own: readonly Choice[];
  readonly others: readonly Choice[];
}

function vehicleChoices({ vehicles = [] }: SceneFile, catalogue: CatalogueView | null): Vehicles {
  const own = vehicles.map(({ id, name }) => ({ id, name }));
  const replaced = new Set(own.map(({ id }) => id));
  return { own, others: (catalogue?.vehicles ?? []).filter(({ id }) => !replaced.has(id)) };
}

interface ChoiceProps {
  readonly vehicles: Vehicles;
  readonly value: string;
  readonly onChoose: (id: string) => void;
}

function VehicleChoice({ vehicles: { own, others }, value, onChoose }: ChoiceProps) {
  const words = t.stageEditor.plant;
  // Until the catalogue comes, what is chosen stands for itself.
  const listed = [...own, ...others].some(({ id }) => id === value);
  return (
    <ChoiceOf
      label={words.vehicle}
      value={value}
      groups={[
        { name: words.ofScene, choices: own },
        { name: words.ofCatalogue, choices: listed ? others : [...others, { id: value, name: value }] },
      ]}
      onChoose={onChoose}
    />
  );
}

function NewPlant({ vehicles, onAdd }: { readonly vehicles: Vehicles; readonly onAdd: (plant: Plant) => void }) {
  const words = t.stageEditor.plant;
  const [chosen, setChosen] = useState<string | null>(null);
  const [route, setRoute] = useState<readonly PointM[]>([]);
  const vehicle = chosen ?? (vehicles.own[0] ?? vehicles.others[0])?.id;
  if (vehicle === undefined) return null;
  return (
    <fieldset className="stage-card">
      <legend>{words.newTitle}</legend>
      <div className="stage-fields">
        <VehicleChoice vehicles={vehicles} value={vehicle} onChoose={setChosen} />
        <PointsField label={words.route} value={route} least={2} onCommit={setRoute} />
      </div>
      <button type="button" className="button button-main" disabled={route.length < 2} onClick={() => onAdd({ vehicle, route })}>
        {words.add}
      </button>
    </fieldset>
  );
}

/** What its wheels come to; layers that it uses most first. */
function Pressure({ traffic, snapshot }: { readonly traffic: ReportTraffic | undefined; readonly snapshot: Snapshot }) {
  const words = t.stageEditor.plant;
  if (traffic?.maxMembraneKPa == null) return <p className="stage-warn">{words.offDeck}</p>;
  const worst = traffic.layers.toSorted((a, b) => (b.utilisation ?? 0) - (a.utilisation ?? 0))[0];
  return (
    <>
      <p className="small">{words.pressure(traffic.maxMembraneKPa, traffic.baysEntered)}</p>
      {worst?.utilisation != null && (
        <p className="small" data-over={worst.utilisation > 1}>
          {words.layer(snapshot.materialNames.get(worst.layer) ?? worst.layer, worst.utilisation)}
        </p>
      )}
    </>
  );
}
