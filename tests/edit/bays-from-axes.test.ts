/** Bays of axes put into a scene: what is kept, what is lost; by hand. */

import { describe, expect, it } from 'vitest';
import { withBaysFromAxes } from '../../src/edit/bays-from-axes.ts';
import type { AxisGrid } from '../../src/model/drawing.ts';
import { bay, rect, sceneOf } from '../helpers/scene-builder.ts';

const GRID: AxisGrid = { at: [0, 0], turnDeg: 0, alongM: [6, 6], acrossM: [8] };
const [FIRST, OTHER] = [bay('A1', rect(0, 0, 6, 8)), bay('B1', rect(6, 0, 11, 8), { permanentKNm2: 20, vehicles: ['loader'] })];

describe('bays of a grid', () => {
  it('keep what was said of the same field, whichever way round it was drawn, and nothing of another', () => {
    const scene = sceneOf({
      deck: { outline: rect(0, 0, 12, 8), bays: [{ ...FIRST, outline: [...FIRST.outline].reverse() }, OTHER, bay('C9', rect(0, 0, 1, 1))] },
    });
    const { patch, ...told } = withBaysFromAxes(scene, GRID);
    expect(told).toEqual({
      selected: [
        { part: 'bay', id: 'A1' },
        { part: 'bay', id: 'B1' },
      ],
      kept: ['A1'],
      lost: ['B1', 'C9'],
      slivers: [],
    });
    expect(patch.deck?.bays[0]).toMatchObject({ id: 'A1', permanentKNm2: 12, basis: FIRST.basis });
    expect(Object.keys(patch.deck?.bays[1] ?? {})).toEqual(['id', 'outline']);
  });

  it('tells slivers: 4 mm × 8 m beyond the last inner axis', () => {
    const scene = sceneOf({ deck: { outline: rect(0, 0, 6.004, 8), bays: [{ id: 'A1', outline: rect(0, 0, 1, 1) }] } });
    const { slivers, lost } = withBaysFromAxes(scene, GRID);
    expect([slivers, lost]).toEqual([['B1'], []]);
  });
});
