/** Stages as a whole: order, copies, what goes with a stage that is taken out. */

import { describe, expect, it } from 'vitest';
import { addStage, changeStage, copyStage, moveStage, nextStageId, removeStage, replaceStages } from '../../src/edit/stages.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { rect, sceneOf } from '../helpers/scene-builder.ts';

const SCENE = sceneOf({
  stages: [
    { id: 'S1', name: 'Below', place: [{ roles: ['protection'] }], holdPoints: [{ id: 'H1', says: 'Dry.', on: '2026-03-02' }] },
    {
      id: 'S2',
      name: 'Soil',
      stockpiles: [
        { id: 'K1', outline: rect(0, 0, 1, 1), material: 'soil', heightM: 0.5 },
        { id: 'K4', outline: rect(1, 1, 2, 2), material: 'soil', heightM: 0.5 },
      ],
      floodTestMm: 100,
      holdPoints: [{ id: 'H2', says: 'Level.', releasedBy: 'foreman', on: '2026-04-02' }],
    },
    { id: 'winter', name: 'Wait' },
  ],
  views: [
    { id: 'V1', name: 'Soil', eye: [0, 0, 9], target: [0, 0, 0], show: { stage: 'S2', explode: 0.5 } },
    { id: 'V2', name: 'All', eye: [0, 0, 9], target: [0, 0, 0] },
  ],
});
const ids = (patch: { readonly stages?: SceneFile['stages'] | null }) => patch.stages?.map(({ id }) => id);

describe('stages', () => {
  it('are added before and after others, with the next id of their kind', () => {
    expect(nextStageId(SCENE)).toBe('S3');
    expect(nextStageId(sceneOf())).toBe('S1');
    expect(ids(addStage(SCENE, 0, { id: 'S3', name: 'First' }))).toEqual(['S3', 'S1', 'S2', 'winter']);
    expect(ids(addStage(SCENE, 3, { id: 'S3', name: 'Last' }))).toEqual(['S1', 'S2', 'winter', 'S3']);
    expect(ids(addStage(sceneOf(), 0, { id: 'S1', name: 'Only' }))).toEqual(['S1']);
  });

  it('are moved to a place in the order that is left when they are taken out', () => {
    expect(ids(moveStage(SCENE, 'S1', 2))).toEqual(['S2', 'winter', 'S1']);
    expect(ids(moveStage(SCENE, 'winter', 0))).toEqual(['winter', 'S1', 'S2']);
  });

  it('are copied with heaps and hold points of their own, of which none is released', () => {
    const { stages } = copyStage(SCENE, 'S2', { id: 'S3', name: 'Soil again' });
    expect(stages?.map(({ id }) => id)).toEqual(['S1', 'S2', 'S3', 'winter']);
    expect(stages?.[2]).toEqual({
      id: 'S3',
      name: 'Soil again',
      stockpiles: [
        { id: 'K5', outline: rect(0, 0, 1, 1), material: 'soil', heightM: 0.5 },
        { id: 'K6', outline: rect(1, 1, 2, 2), material: 'soil', heightM: 0.5 },
      ],
      floodTestMm: 100,
      holdPoints: [{ id: 'H3', says: 'Level.', releasedBy: 'foreman' }],
    });
    expect(stages?.[1]).toBe(SCENE.stages?.[1]);
  });

  it('taken out leave no view that shows them', () => {
    const patch = removeStage(SCENE, 'S2');
    expect(ids(patch)).toEqual(['S1', 'winter']);
    expect(patch.views?.map(({ show }) => show)).toEqual([{ stage: 'finished', explode: 0.5 }, undefined]);
    expect(removeStage(SCENE, 'winter')).not.toHaveProperty('views');
  });

  it('replaced keep the views of those that stay', () => {
    const only = [{ id: 'S2', name: 'New' }];
    expect(replaceStages(SCENE, only)).toEqual({ stages: only });
    expect(replaceStages(SCENE, [{ id: 'filter', name: 'Filter' }]).views?.[0]?.show).toEqual({ stage: 'finished', explode: 0.5 });
  });

  it('the last one taken out leaves a scene without stages', () => {
    expect(removeStage(sceneOf({ stages: [{ id: 'S1', name: 'Only' }] }), 'S1')).toEqual({ stages: null });
  });

  it('lose what is emptied, and keep their name', () => {
    const { stages } = changeStage(SCENE, 'S2', { floodTestMm: 0, holdPoints: [], cautions: ['Mind the edge.'] });
    expect(Object.keys(stages?.[1] ?? {}).sort()).toEqual(['cautions', 'id', 'name', 'stockpiles']);
    expect(stages?.[0]).toBe(SCENE.stages?.[0]);
  });
});
