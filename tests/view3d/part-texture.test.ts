/** Texels of parts, lifts, and surfaces on top: all reckoned from `small-picture.ts`. */

import { describe, expect, it } from 'vitest';
import { ROLE_STYLE } from '../../src/model/palette.ts';
import { liftM } from '../../src/view3d/lift.ts';
import { partStates } from '../../src/view3d/part-states.ts';
import {
  PART_OVERHEAD,
  PART_SHOWN,
  PART_SLAB,
  PART_TEXTURE_WIDTH,
  PART_TOP,
  PARTS_PER_ROW,
  partHeightsM,
  partTextureRows,
  STYLE_KINDS,
  TEXELS_PER_PART,
  writePartTexels,
} from '../../src/view3d/part-texture.ts';
import { drawnTopM, topAt } from '../../src/view3d/top-at.ts';
import { smallPicture } from './small-picture.ts';

const LOOK = { stage: null, hiddenKinds: new Set<never>(), hiddenZones: new Set<string>(), onlyKind: null, onlyZone: null };
const picture = smallPicture();
const states = partStates(picture.parts, LOOK);

function texelsOf(part: number): number[] {
  const texels = new Float32Array(PART_TEXTURE_WIDTH * partTextureRows(picture.parts.length) * 4);
  writePartTexels(picture, states, { heightsM: partHeightsM(picture), green: new Set() }, texels);
  return [...texels.subarray(part * TEXELS_PER_PART * 4, (part + 1) * TEXELS_PER_PART * 4)];
}

describe('part texture', () => {
  it('has a row for every so many parts', () => {
    expect([0, 1, PARTS_PER_ROW, PARTS_PER_ROW + 1].map(partTextureRows)).toEqual([1, 1, 1, 2]);
  });

  it('carries lift, extra heights, style and height of a layer', () => {
    const [lift, bottom, top, style, , arriving, height] = texelsOf(2);
    expect(lift).toBe(1);
    expect(bottom).toBeCloseTo(0.01, 6);
    expect(top).toBeCloseTo(0.01, 6);
    expect(STYLE_KINDS[style]).toBe('substrate');
    expect(arriving).toBe(0);
    // Upper surface at 0.34, 0.44, 0.44 and 0.34 m, lower at 0.04 m: mean 0.39 - 0.04 = 0.35 m.
    expect(height).toBeCloseTo(0.35, 6);
  });

  it('carries what is shown, on top, overhead, slab', () => {
    const bits = [0, 1, 2, 3, 4].map((part) => texelsOf(part)[4]);
    expect(bits).toEqual([PART_SHOWN | PART_TOP | PART_SLAB, PART_SHOWN, PART_SHOWN | PART_TOP, PART_SHOWN | PART_OVERHEAD, 0]);
  });

  it('has a style for every kind', () => {
    expect(new Set(STYLE_KINDS)).toEqual(new Set(Object.keys(ROLE_STYLE)));
  });
});

describe('lift', () => {
  it('is the floor and what drawn sheets add, by the share exploded', () => {
    // 0.5 × (1 + 0.01) m
    expect(liftM(picture, 2, true, 0.5)).toBeCloseTo(0.505, 12);
    // Lower surface of the element: its floor alone.
    expect(liftM(picture, 1, false, 1)).toBe(0.5);
    expect(liftM(picture, 2, true, 0)).toBe(0);
  });

  it('refuses a part that is not there', () => {
    expect(() => liftM(picture, 5, true, 1)).toThrow(/liftM: part must be one of 5, got 5/);
  });
});

describe('surface on top', () => {
  it('is the sloping top of the uppermost layer', () => {
    // The substrate rises from 0.34 m at x = 0 to 0.44 m at x = 5: at x = 2 m 0.34 + 0.1 × 2/5 = 0.38 m.
    const top = topAt(picture, states, 2, 1);
    expect(top?.part).toBe(2);
    expect(top?.zM).toBeCloseTo(0.38, 9);
  });

  it('is the slab beside the zone, and nothing beside the slab', () => {
    expect(topAt(picture, states, 7, 3)).toMatchObject({ part: 0, zM: 0 });
    expect(topAt(picture, states, 11, 3)).toBeNull();
  });

  it('is the layer below when the upper one is hidden or not placed yet', () => {
    const early = partStates(picture.parts, { ...LOOK, stage: 1 });
    const top = topAt(picture, early, 2, 1);
    expect(top?.part).toBe(1);
    expect(top?.zM).toBeCloseTo(0.04, 12);
  });

  it('stands on the screen where the exploded view lifts it', () => {
    // 0.38 + 1 × (1 + 0.01) m
    expect(drawnTopM(picture, states, [2, 1], 1)).toBeCloseTo(1.39, 9);
    expect(drawnTopM(picture, states, [-1, 1], 1)).toBeNull();
  });
});
