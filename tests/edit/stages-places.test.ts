/** Ticks of roles and objects, the grid that shows them, and derived stages written out: held against the check itself. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { stageGrid } from '../../src/edit/stage-grid.ts';
import { layingsOf, tickObjects, tickRoles } from '../../src/edit/stage-places.ts';
import { derivedStages, type LayerRoles, stagePlanOf } from '../../src/edit/stage-plan.ts';
import type { ScenePatch } from '../../src/model/history.ts';
import type { SceneFile, SceneStage } from '../../src/model/scene-file.ts';
import { evaluateProject, readProject, readSceneText } from '../../src/project/evaluate-project.ts';
import { materialLookup } from '../../src/project/materials.ts';
import { buildUp, findingsOf, ON_SOUND, read, rect, SOIL_100, SOUND, sceneOf, zone } from '../helpers/scene-builder.ts';

const patched = (scene: SceneFile, { stages }: ScenePatch): SceneFile => {
  const { stages: _, ...rest } = scene;
  return stages ? { ...rest, stages } : rest;
};
const layerRoles = (scene: SceneFile): LayerRoles[] => {
  const materialOf = materialLookup(scene);
  return scene.buildups.map(({ id, layers }) => ({ id, layers: layers.map(({ material }) => ({ role: materialOf(material).role })) }));
};
const stagesOf = (patch: ScenePatch): readonly SceneStage[] => patch.stages ?? [];

/** Two zones of the sound build-up (protection, element, filter, substrate), one of soil alone. */
const THREE = sceneOf({
  buildups: [SOUND, SOIL_100],
  zones: [zone('A', rect(0, 0, 1, 3), 'sound'), zone('B', rect(1, 0, 2, 3), 'sound'), zone('C', rect(2, 0, 4, 3), 'soil-100')],
  objects: [
    { kind: 'tree', id: 'T1', at: [0.5, 1], massKg: 100, spreadM: 1 },
    { kind: 'tree', id: 'T2', at: [1.5, 1], massKg: 100, spreadM: 1 },
  ],
  stages: [
    { id: 'S1', name: 'Below', place: [{ roles: ['protection', 'drainage element'] }] },
    { id: 'S2', name: 'Above', place: [{ zones: ['A', 'B'], roles: ['filter', 'substrate'] }, { objects: ['T1'] }] },
    { id: 'S3', name: 'Rest', place: [{ zones: ['C'], roles: ['substrate'], objects: ['T2'] }] },
  ],
});

describe('ticks of roles', () => {
  it('taken away in one zone leave the others as they are', () => {
    const [, above] = stagesOf(tickRoles(THREE, 'S2', [{ zone: 'B', role: 'filter' }], false));
    expect(above?.place).toEqual([
      { zones: ['A'], roles: ['filter', 'substrate'] },
      { zones: ['B'], roles: ['substrate'] },
      { objects: ['T1'] },
    ]);
  });

  it('put back give what was there', () => {
    const cells = [{ zone: 'B', role: 'filter' as const }];
    const there = patched(THREE, tickRoles(THREE, 'S2', cells, false));
    expect(stagesOf(tickRoles(there, 'S2', cells, true))[1]).toEqual(THREE.stages?.[1]);
  });

  it('in every zone alike name no zone', () => {
    const cells = ['A', 'B', 'C'].map((name) => ({ zone: name, role: 'filter' as const }));
    const [below] = stagesOf(tickRoles(THREE, 'S1', cells, true));
    expect(below?.place).toEqual([{ roles: ['protection', 'drainage element', 'filter'] }]);
  });

  it('the last one taken away leaves no entry', () => {
    const [, , rest] = stagesOf(tickRoles(THREE, 'S3', [{ zone: 'C', role: 'substrate' }], false));
    expect(rest?.place).toEqual([{ objects: ['T2'] }]);
    const emptied = patched(THREE, tickObjects(THREE, 'S3', ['T2'], false));
    expect(stagesOf(tickRoles(emptied, 'S3', [{ zone: 'C', role: 'substrate' }], false))[2]).toEqual({ id: 'S3', name: 'Rest' });
  });

  it('keep the order of entries in zones that are not named', () => {
    const entries = [{ roles: ['filter'] as const }, { roles: ['protection', 'drainage element'] as const }];
    const scene = sceneOf({
      ...ON_SOUND,
      zones: [zone('A', rect(0, 0, 2, 3), 'sound'), zone('B', rect(2, 0, 4, 3), 'sound')],
      stages: [{ id: 'S1', name: 'All', place: entries }],
    });
    const after = patched(scene, tickRoles(scene, 'S1', [{ zone: 'B', role: 'substrate' }], true));
    const layings = layingsOf(after, after.stages?.[0] as SceneStage);
    expect(layings.get('A')).toEqual([['filter'], ['protection', 'drainage element']]);
    expect(layings.get('B')).toEqual([['filter'], ['protection', 'drainage element', 'substrate']]);
  });
});

describe('ticks of objects', () => {
  it('bring an object in one stage only', () => {
    const stages = stagesOf(tickObjects(THREE, 'S1', ['T1'], true));
    expect(stages.map(({ place }) => place)).toEqual([
      [{ roles: ['protection', 'drainage element'] }, { objects: ['T1'] }],
      [{ zones: ['A', 'B'], roles: ['filter', 'substrate'] }],
      THREE.stages?.[2]?.place,
    ]);
    expect(stages[2]).toBe(THREE.stages?.[2]);
  });

  it('keep the layers of an entry that brought both', () => {
    expect(stagesOf(tickObjects(THREE, 'S3', ['T2'], false))[2]?.place).toEqual([{ zones: ['C'], roles: ['substrate'] }]);
  });
});

describe('the grid', () => {
  const cellAt = (scene: SceneFile, stage: number, of: string, role: 'filter' | 'substrate' | 'protection' | 'vegetation') =>
    stageGrid(scene, layerRoles(scene), stage)
      .rows.find((row) => row.zone === of)
      ?.cells.get(role);

  it('has the roles of the build-ups in the order they are laid, and no cell where a build-up has no such layer', () => {
    const grid = stageGrid(THREE, layerRoles(THREE), 0);
    expect(grid.roles).toEqual(['protection', 'drainage element', 'filter', 'substrate']);
    expect(grid.rows.map(({ cells }) => cells.size)).toEqual([4, 4, 1]);
  });

  it('tells what lies there, what is laid and what comes later', () => {
    expect(cellAt(THREE, 1, 'A', 'protection')).toMatchObject({ ticked: false, here: 0, before: 0, later: null, never: 0 });
    expect(cellAt(THREE, 1, 'A', 'filter')).toMatchObject({ ticked: true, here: 1, before: null, missing: [] });
    expect(cellAt(THREE, 1, 'C', 'substrate')).toMatchObject({ ticked: false, here: 0, later: 2 });
    // Stage 1 lists "protection" for all zones; C has none, so nothing is ticked there.
    expect(cellAt(THREE, 0, 'C', 'substrate')).toMatchObject({ ticked: false });
  });

  it('tells what is missing below where the check finds it, and what is left over', () => {
    const scene = patched(THREE, tickRoles(THREE, 'S2', [{ zone: 'A', role: 'filter' }], false));
    expect(cellAt(scene, 1, 'A', 'substrate')?.missing).toEqual(['filter']);
    expect(cellAt(scene, 1, 'A', 'filter')).toMatchObject({ never: 1, later: null });
    expect(cellAt(scene, 1, 'B', 'substrate')?.missing).toEqual([]);
    const project = read(scene);
    expect(findingsOf(project, 'stage.order').map(({ where }) => [where.zone, where.stage])).toEqual([['A', 'S2']]);
    expect(findingsOf(project, 'stage.left').map(({ where }) => where.zone)).toEqual(['A']);
  });

  it('counts plants without a layer of their own as vegetation, which comes with the top layer if nobody says so', () => {
    const planted = sceneOf({
      buildups: [buildUp('sound', SOUND.layers, { vegetation: { form: 'lawn', kNm2: 0.05 } })],
      zones: ON_SOUND.zones,
      stages: [
        { id: 'S1', name: 'Below', place: [{ roles: ['protection', 'drainage element', 'vegetation'] }] },
        { id: 'S2', name: 'Above', place: [{ roles: ['filter', 'substrate'] }] },
      ],
    });
    expect(cellAt(planted, 0, 'Z1', 'vegetation')).toMatchObject({ ticked: true, here: 1, missing: ['filter', 'substrate'] });
    const unsaid = patched(planted, tickRoles(planted, 'S1', [{ zone: 'Z1', role: 'vegetation' }], false));
    expect(cellAt(unsaid, 1, 'Z1', 'vegetation')).toMatchObject({ ticked: false, here: 1, missing: [] });
  });

  it('tells where an object is set up', () => {
    expect(stageGrid(THREE, layerRoles(THREE), 2).objects).toEqual([
      { id: 'T1', ticked: false, stage: 1 },
      { id: 'T2', ticked: true, stage: 2 },
    ]);
  });
});

describe('derived stages written out', () => {
  it.each(['terrace', 'courtyard', 'problem-deck', 'district'])('place everything as those derived: %s', (name) => {
    const { scene } = readSceneText(readFileSync(`scenes/${name}.scene.json`, 'utf8'));
    const { stages: _, ...bare } = scene!;
    const roles = layerRoles(bare);
    const derived = stagePlanOf(bare, roles);
    const written = stagePlanOf({ ...bare, stages: derivedStages(scene!, roles, (text) => text) }, roles);
    expect(written).toEqual({ ...derived, stages: derived.stages.map((stage) => ({ ...stage, derived: false })) });
    expect(written.outOfOrder).toEqual([]);
    expect(written.layerStages.every((stages) => !stages.includes(-1))).toBe(true);
  });

  it('give the numbers of those derived', () => {
    const { project } = readProject(readFileSync('scenes/terrace.scene.json', 'utf8'));
    const { stages: _, ...bare } = project!.scene;
    const derived = evaluateProject(bare);
    const given = evaluateProject({ ...bare, stages: derivedStages(bare, layerRoles(bare), (text) => text) });
    expect(given.report.stages).toEqual(derived.report.stages);
    expect(given.report.bays).toEqual(derived.report.bays);
    expect(given.report.stages.map(({ id }) => id)).toContain('light-fill');
  });

  it('of a sound build-up with a tree: one per role, then the tree, by hand', () => {
    const scene = sceneOf({ ...ON_SOUND, objects: [{ kind: 'tree', id: 'T1', at: [1, 1], massKg: 100, spreadM: 1 }] });
    expect(derivedStages(scene, layerRoles(scene), (text) => `${text}!`)).toEqual([
      { id: 'protection', name: 'Protection!', place: [{ zones: ['Z1'], roles: ['protection'] }] },
      { id: 'drainage-element', name: 'Drainage element!', place: [{ zones: ['Z1'], roles: ['drainage element'] }] },
      { id: 'filter', name: 'Filter!', place: [{ zones: ['Z1'], roles: ['filter'] }] },
      { id: 'substrate', name: 'Substrate!', place: [{ zones: ['Z1'], roles: ['substrate'] }] },
      { id: 'objects', name: 'Trees, walls and blocks!', place: [{ objects: ['T1'] }] },
    ]);
  });
});
