/** The grid of a stage as it is read: states of ticks, of one zone and of several at once, and what the list counts. */

import { describe, expect, it } from 'vitest';
import { stageGrid } from '../../src/edit/stage-grid.ts';
import type { Finding } from '../../src/model/finding.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { allZones, doneRoles, type Tick, tickGroups } from '../../src/ui/facts/stage-cells.ts';
import { countFindings, findingsIn, stagesGone } from '../../src/ui/facts/stage-list.ts';
import { buildUp, rect, SOIL_100, SOUND, sceneOf, zone } from '../helpers/scene-builder.ts';

const ROLES = [
  { id: 'sound', layers: ['protection', 'drainage element', 'filter', 'substrate'].map((role) => ({ role })) },
  { id: 'soil-100', layers: [{ role: 'substrate' }] },
  { id: 'twice', layers: ['filter', 'light fill', 'filter'].map((role) => ({ role })) },
];

const SCENE: SceneFile = sceneOf({
  buildups: [SOUND, SOIL_100, buildUp('twice', [{ material: 'cloth' }, { material: 'light', thicknessMm: 100 }, { material: 'cloth' }])],
  zones: [
    zone('A', rect(0, 0, 1, 3), 'sound', { name: 'West' }),
    zone('B', rect(1, 0, 2, 3), 'sound'),
    zone('C', rect(2, 0, 3, 3), 'soil-100'),
    zone('D', rect(3, 0, 4, 3), 'twice'),
  ],
  stages: [
    { id: 'S1', name: 'Below', place: [{ roles: ['protection', 'drainage element'] }] },
    {
      id: 'S2',
      name: 'West',
      place: [
        { zones: ['A'], roles: ['filter'] },
        { zones: ['D'], roles: ['filter'] },
      ],
    },
    {
      id: 'S3',
      name: 'Soil',
      place: [
        { zones: ['A', 'B'], roles: ['substrate'] },
        { zones: ['D'], roles: ['light fill', 'filter'] },
      ],
    },
  ],
});

const gridAt = (at: number) => stageGrid(SCENE, ROLES, at);
const states = (ticks: readonly (Tick | null)[]) => ticks.map((tick) => tick && `${tick.ticked}: ${tick.state.kind}`);

describe('groups', () => {
  it('hold the zones of a build-up; a single zone stands for itself', () => {
    expect(tickGroups(gridAt(1), SCENE).map(({ id, name, zones }) => [id, name, zones.map((one) => one.name)])).toEqual([
      ['sound', 'sound', ['West', 'B']],
      ['C', 'C', []],
      ['D', 'D', []],
    ]);
  });

  it('tell states per role, in the order they are laid: protection, element, fill, filter, substrate', () => {
    const grid = gridAt(1);
    expect(grid.roles).toEqual(['protection', 'drainage element', 'light fill', 'filter', 'substrate']);
    const [sound, soil, twice] = tickGroups(grid, SCENE);
    expect(states(sound?.zones[0]?.ticks ?? [])).toEqual(['none: before', 'none: before', null, 'all: here', 'none: later']);
    expect(states(sound?.zones[1]?.ticks ?? [])).toEqual(['none: before', 'none: before', null, 'none: never', 'none: later']);
    expect(states(sound?.ticks ?? [])).toEqual(['none: before', 'none: before', null, 'some: mixed', 'none: later']);
    expect(states(soil?.ticks ?? [])).toEqual([null, null, null, null, 'none: never']);
    expect(twice?.ticks[3]?.state).toEqual({ kind: 'here', layers: 1, of: 2 });
    expect(twice?.ticks[2]?.state).toEqual({ kind: 'later', stage: 3 });
  });

  it('tell of all what one of them lacks below', () => {
    // B has no filter when its substrate comes.
    const [sound] = tickGroups(gridAt(2), SCENE);
    expect(sound?.ticks[4]?.state).toEqual({ kind: 'missing', roles: ['filter'] });
    expect(sound?.zones[0]?.ticks[4]?.state).toEqual({ kind: 'here', layers: 1, of: 1 });
  });

  it('name what lies everywhere', () => {
    expect(doneRoles(gridAt(0))).toEqual([]);
    expect(doneRoles(gridAt(2))).toEqual(['protection', 'drainage element']);
    const whole = allZones(gridAt(2), 'All');
    expect(whole.ticks[4]?.zones).toEqual(['A', 'B', 'C']);
    expect(whole.ticks[4]?.ticked).toBe('some');
  });
});

describe('the list', () => {
  const finding = (stage: string | undefined, severity: Finding['severity']): Finding => ({
    rule: 'load.stage',
    severity,
    where: stage === undefined ? {} : { stage },
    says: '',
    value: 1,
    limit: 1,
    unit: '-',
    source: '',
  });

  it('counts findings of a stage by how serious they are', () => {
    const all = [finding('S1', 'stop'), finding('S2', 'check'), finding('S1', 'check'), finding('S1', 'stop'), finding(undefined, 'stop')];
    expect(countFindings(findingsIn(all, 'S1'))).toEqual({ stop: 2, check: 1, note: 0 });
  });

  it('counts what goes when stages are replaced', () => {
    const stages: SceneFile['stages'] = [
      { id: 'S1', name: '1', floodTestMm: 100, holdPoints: [{ id: 'H1', says: '' }], cautions: ['', ''] },
      { id: 'S2', name: '2', stockpiles: [{ id: 'K1', outline: rect(0, 0, 1, 1), material: 'soil', heightM: 1 }], floodTestMm: 0 },
      { id: 'S3', name: '3', plant: [{ vehicle: 'loader', route: [] }], holdPoints: [{ id: 'H2', says: '' }] },
    ];
    expect(stagesGone({ stages })).toEqual({ stages: 3, stockpiles: 1, plant: 1, floodTests: 1, holdPoints: 2, cautions: 2 });
  });
});
