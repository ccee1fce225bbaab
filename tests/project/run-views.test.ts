/** Vehicles on their lines as the app gets them, from scenes that are looked at. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { runViews, wheelsOf } from '../../src/project/run-views.ts';
import { Session } from '../../src/project/session.ts';

function opened(name: string) {
  const session = new Session();
  session.open(readFileSync(`scenes/${name}.scene.json`, 'utf8'));
  return session;
}

describe.each(['courtyard', 'problem-deck'])('%s', (name) => {
  const session = opened(name);
  const project = session.opened();
  const runs = runViews(project);
  const traffic = project.report.traffic ?? [];

  it('lists what the report lists, in its order, as plain data', () => {
    expect(runs.map(({ id }) => id)).toEqual(traffic.map(({ id }) => id));
    expect(runs.map(({ stage }) => (stage === null ? null : project.evaluation.plan.stages[stage].id))).toEqual(
      traffic.map(({ stage }) => stage),
    );
    expect(structuredClone(runs)).toEqual(runs);
    expect(wheelsOf(project)).toBe(wheelsOf(project));
  });

  it('at its worst place each vehicle uses what the report says', () => {
    for (const run of runs) {
      const used = traffic.find(({ id }) => id === run.id)?.layers.map(({ utilisation }) => utilisation ?? 0) ?? [];
      if (run.worst === null) continue;
      const pose = session.runAt(run.id, run.worst);
      const tops = pose?.wheels.filter(({ onLine }) => onLine).flatMap(({ grounds }) => grounds.flatMap(({ tops: all }) => all)) ?? [];
      const here = Math.max(...tops.map(({ kPa, permittedKPa }) => (permittedKPa === null ? 0 : kPa / permittedKPa)));
      expect(here, run.id).toBeCloseTo(Math.max(...used), 9);
    }
  });

  it('no cell of a map is above the exact peak of its vehicles', () => {
    for (const stage of new Set(runs.map((run) => run.stage))) {
      const own = traffic.filter((_, i) => runs[i].stage === stage);
      const exact = Math.max(...own.map(({ maxMembraneKPa }) => maxMembraneKPa ?? 0));
      const map = session.map('wheel-membrane', stage);
      expect(map.max).toBeGreaterThan(0);
      expect(map.max).toBeLessThanOrEqual(exact * (1 + 1e-6));
    }
  });
});

it('the lane of the courtyard: 44 m, every axle of the appliance travels it', () => {
  const [lane] = runViews(opened('courtyard').opened());
  // 44 m and 3.6 m between the axles
  expect(lane.travelM).toBeCloseTo(47.6, 9);
  expect([...lane.path.subarray(0, 2)]).toEqual([0.5, 2.75]);
  expect(lane.path.at(-2)).toBeCloseTo(44.5, 9);
  expect([lane.supportM, lane.body.form, lane.body.widthM]).toEqual([null, 'lorry', 2.5]);
});

it('what is not there has no place', () => {
  const session = opened('courtyard');
  expect(session.runAt('no such', { frontM: 1, on: 'wheels' })).toBeNull();
  // This one has no supports
  expect(session.runAt('F1', { frontM: 1, on: 'support' })).toBeNull();
});
