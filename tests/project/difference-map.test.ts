/** The difference of two maps, by hand: 10 cm more soil, other grids, other origins. */

import { describe, expect, it } from 'vitest';
import { cellMap } from '../../src/core/maps.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { differenceMap, type LaidMap } from '../../src/project/difference-map.ts';
import { bay, buildUp, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

function soil(thicknessMm: number, outline = rect(0, 0, 4, 3)): SceneFile {
  return sceneOf({
    deck: { outline, bays: [bay('A1', outline)] },
    buildups: [buildUp('soil', [{ material: 'soil', thicknessMm }])],
    zones: [zone('Z1', outline, 'soil')],
  });
}

function laid(scene: SceneFile, cellM?: number): LaidMap {
  const { evaluation } = read(scene, cellM);
  return { map: cellMap(evaluation, 'load', null, []), grid: evaluation.prepared.ground.grid, originM: evaluation.input.originM };
}

describe('differenceMap', () => {
  it('is 0.1 m of soil, 1500 kg/m³ · 9.81 · 0.1 = 1.4715 kN/m², in all 192 cells', () => {
    const { values, most, resampled, dataCells, unit } = differenceMap(laid(soil(100)), laid(soil(200)));
    expect(values.every((value) => Math.abs(value - 1.4715) < 1e-5)).toBe(true);
    expect([resampled, dataCells, unit]).toEqual([false, 192, 'kN/m²']);
    expect(most).toBeCloseTo(1.4715, 5);
  });

  it('says when it had to take other cells', () => {
    const { values, resampled } = differenceMap(laid(soil(100), 0.5), laid(soil(200)));
    expect(resampled).toBe(true);
    expect(values.every((value) => Math.abs(value - 1.4715) < 1e-5)).toBe(true);
  });

  it('has no value where only one of the two has a deck', () => {
    // The second deck is moved by 1 m: of its 192 cells a strip of 4 columns, 48 cells, has nothing before.
    expect(differenceMap(laid(soil(100)), laid(soil(100, rect(1, 0, 5, 3))))).toMatchObject({ dataCells: 144, most: 0, resampled: false });
  });

  it('refuses maps of different things', () => {
    const one = laid(soil(100));
    expect(() => differenceMap(one, { ...one, map: { ...one.map, kind: 'depth' } })).toThrow(RangeError);
  });
});
