/** What a stage lays and sets up: ticks by zone and role, objects below. */

import './lay.css';
import { useMemo } from 'react';
import { type GridObject, type StageGrid, stageGrid } from '../../edit/stage-grid.ts';
import { tickObjects, tickRoles } from '../../edit/stage-places.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import { Refused } from '../edit/Refused.tsx';
import { allZones, doneRoles, type Tick, tickGroups } from '../facts/stage-cells.ts';
import { t } from '../text/text.ts';
import { LayGrid } from './LayGrid.tsx';
import type { PageProps } from './StagePage.tsx';
import { useStageEdit } from './use-stage-edit.ts';
import { useTick } from './use-tick.ts';

export function LayPage({ snapshot, stage, at }: PageProps) {
  const { scene, buildUps, report } = snapshot;
  const whole = useMemo(() => stageGrid(scene, buildUps, at), [scene, buildUps, at]);
  const done = doneRoles(whole);
  // A column of what lies there everywhere is a word, not a column.
  const grid = { ...whole, roles: whole.roles.filter((role) => !done.includes(role)) };
  const { issues, run } = useStageEdit(stage.id);
  const words = t.stageEditor.lay;
  const placedKN = report.stages.find(({ id }) => id === stage.id)?.placedKN ?? 0;
  const what = { act: 'change', part: 'stage', names: [stage.name] } as const;
  const onTick = ({ role, zones }: Tick, on: boolean) => {
    const cells = zones.map((zone) => ({ zone, role }));
    return run((now) => tickRoles(now, stage.id, cells, on), what);
  };
  const onObject = (id: string, on: boolean) => run((now) => tickObjects(now, stage.id, [id], on), what);
  return (
    <>
      <p>
        {words.says} {placedKN > 0 && words.weight(placedKN)}
      </p>
      {done.length > 0 && <p>{words.done(done.map((role) => t.part(role)))}</p>}
      <Refused issues={issues} />
      {grid.roles.length > 0 && (
        <LayGrid
          roles={grid.roles}
          all={allZones(grid, words.all)}
          groups={tickGroups(grid, scene)}
          caption={words.caption(at + 1)}
          onTick={onTick}
        />
      )}
      <Objects scene={scene} objects={grid.objects} at={at} onTick={onObject} />
    </>
  );
}

interface ObjectsProps {
  readonly scene: SceneFile;
  readonly objects: StageGrid['objects'];
  readonly at: number;
  readonly onTick: (id: string, on: boolean) => Promise<unknown>;
}

function Objects({ scene, objects, at, onTick }: ObjectsProps) {
  const words = t.stageEditor.lay;
  const nameOf = (id: string) => {
    const name = scene.objects?.find((object) => object.id === id)?.name;
    return name === undefined ? id : `${id} ${name}`;
  };
  return (
    <fieldset className="stage-objects">
      <legend className="block-title">{words.objects}</legend>
      {objects.length === 0 && <p>{words.noObjects}</p>}
      {objects.map((object) => (
        <ObjectTick
          key={object.id}
          object={object}
          says={words.object(nameOf(object.id), whereSet(object, at))}
          onTick={(on) => onTick(object.id, on)}
        />
      ))}
    </fieldset>
  );
}

interface ObjectTickProps {
  readonly object: GridObject;
  readonly says: string;
  readonly onTick: (on: boolean) => Promise<unknown>;
}

function ObjectTick({ object, says, onTick }: ObjectTickProps) {
  const { checked, onChange } = useTick(object.ticked, onTick);
  return (
    <label className="check">
      <input type="checkbox" checked={checked} onChange={onChange} />
      <span data-left={object.stage === null}>{says}</span>
    </label>
  );
}

function whereSet({ stage }: GridObject, at: number): string {
  const words = t.stageEditor.lay;
  if (stage === null) return words.objectNever;
  return stage === at ? words.objectHere : words.objectIn(stage + 1);
}
