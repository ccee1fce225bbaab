/** Vehicles and machines on their lines: choose one, drive it, and read what it presses on every layer and in every bay. */

import { useMemo } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import type { RunView } from '../../model/run.ts';
import { type ListedRun, listRuns, placeOnPath } from '../facts/run-facts.ts';
import { judge } from '../facts/utilisation.ts';
import { TableHead } from '../parts/TableHead.tsx';
import { t } from '../text/text.ts';
import { useScene, useStores, useView } from '../use-stores.ts';
import { RunBays } from './RunBays.tsx';
import { RunLayers } from './RunLayers.tsx';
import { RunPlace } from './RunPlace.tsx';

/** Enough around a vehicle to see where it is. */
const AROUND_M = 14;

/** Shows a run where it uses most, in its stage. */
function useShowRun(): (run: RunView | null) => void {
  const { view } = useStores();
  return (run) => {
    const state = view.getState();
    if (run === null) {
      state.chooseRun(null);
      return;
    }
    const stand = run.worst ?? { frontM: run.travelM / 2, on: 'wheels' };
    state.showStage(run.stage);
    state.chooseRun({ id: run.id, ...stand });
    state.moveCamera({ at: placeOnPath(run.path, stand.frontM), sizeM: AROUND_M });
  };
}

export function WheelsSheet() {
  const snapshot = useScene((state) => state.snapshot);
  const id = useView((state) => state.run?.id ?? null);
  if (snapshot === null) return null;
  const run = snapshot.runs.find((one) => one.id === id);
  return (
    <div className="sheet-parts">
      {run === undefined ? <AllRuns snapshot={snapshot} /> : <OneRun snapshot={snapshot} run={run} />}
      <p className="small">{t.wheels.note}</p>
    </div>
  );
}

const stageText = ({ stages }: Snapshot, stage: number | null) =>
  stage === null ? t.wheels.garden : t.wheels.stage(stage + 1, stages[stage]?.name ?? '');

function AllRuns({ snapshot }: { readonly snapshot: Snapshot }) {
  const listed = useMemo(() => listRuns(snapshot.runs, snapshot.report.traffic ?? []), [snapshot]);
  // Over, and yet no stop: not the pressure of the table, which marks its own and is told from 90 % on.
  const besides = snapshot.report.findings.filter(
    ({ rule, severity, value, limit }) => rule === 'stress.layer' && severity === 'check' && value > limit,
  ).length;
  return (
    <section className="sheet-part">
      <p>{t.wheels.says}</p>
      {besides > 0 && <p>{t.wheels.besides(besides)}</p>}
      <table className="numbers runs">
        <caption className="unseen">{t.wheels.caption}</caption>
        <TableHead heads={[t.wheels.list, t.wheels.used, t.wheels.membrane]} />
        <tbody>
          {listed.map((one) => (
            <RunRow key={one.id} one={one} snapshot={snapshot} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function RunRow({ one, snapshot }: { readonly one: ListedRun; readonly snapshot: Snapshot }) {
  const show = useShowRun();
  return (
    <tr
      className="bay-row"
      data-over={one.used !== null && one.used > 1}
      onClick={() => show(snapshot.runs.find(({ id }) => id === one.id) ?? null)}
    >
      <th scope="row">
        <button type="button" className="row-button" aria-label={t.wheels.pick(one.id, one.vehicle)}>
          {one.id}
        </button>
        <span className="small block">{one.vehicle}</span>
        <span className="small block">{stageText(snapshot, one.stage)}</span>
      </th>
      <td>
        <strong>{t.wheels.usedShare(one.used)}</strong>
        {one.used !== null && one.used > 1 && <span className="small block">{t.judgement(judge(one.used))}</span>}
      </td>
      <td>{t.wheels.pressure(one.membraneKPa)}</td>
    </tr>
  );
}

function OneRun({ snapshot, run }: { readonly snapshot: Snapshot; readonly run: RunView }) {
  const show = useShowRun();
  const stage = useView((state) => state.stage);
  const showStage = useView((state) => state.showStage);
  const traffic = snapshot.report.traffic?.find(({ id }) => id === run.id);
  return (
    <>
      <section className="sheet-part">
        <label className="choose">
          <span className="unseen">{t.wheels.choose}</span>
          <select value={run.id} onChange={(event) => show(snapshot.runs.find(({ id }) => id === event.target.value) ?? null)}>
            <option value="">{t.wheels.none}</option>
            {snapshot.runs.map(({ id, vehicle }) => (
              <option key={id} value={id}>
                {t.wheels.option(id, vehicle)}
              </option>
            ))}
          </select>
        </label>
        <p className="run-stage">
          <strong>{stageText(snapshot, run.stage)}</strong>
          {run.dynamicFactor !== 1 && <span className="small block">{t.wheels.factor(run.dynamicFactor)}</span>}
        </p>
        {stage !== run.stage && (
          <p className="run-elsewhere">
            {t.wheels.otherStage}{' '}
            <button type="button" className="button" onClick={() => showStage(run.stage)}>
              {t.wheels.showStage}
            </button>
          </p>
        )}
        <RunPlace run={run} onWorst={() => show(run)} />
      </section>
      <RunLayers run={run} traffic={traffic} />
      <RunBays traffic={traffic} />
    </>
  );
}
