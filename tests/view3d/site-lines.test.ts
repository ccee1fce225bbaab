/** The site plan on a picture small enough to reckon by hand: lines on what lies there, dashes, posts. */

import { describe, expect, it } from 'vitest';
import type { Snapshot } from '../../src/model/engine.ts';
import type { EdgeLines } from '../../src/model/picture.ts';
import { classPlaces } from '../../src/view3d/class-places.ts';
import { partStates } from '../../src/view3d/part-states.ts';
import { dashes, siteLines } from '../../src/view3d/site-lines.ts';
import { smallPicture } from './small-picture.ts';

const lengthOf = ({ positions }: EdgeLines) => {
  let sum = 0;
  for (let i = 0; i < positions.length; i += 6) sum += Math.hypot(positions[i + 3] - positions[i], positions[i + 4] - positions[i + 1]);
  return sum;
};

/** A slab of 10 m × 6 m with a zone on its left half; the file's origin is at 100, 200. */
const picture = { ...smallPicture(), edgeBand: Float64Array.from([2, 2, 8, 2]) };
const scene = {
  accessPoints: [
    { id: 'G1', at: [101, 203], kind: 'gate' },
    { id: 'C1', at: [105, 198], kind: 'crane', reachM: 3 },
    { id: 'C2', at: [105, 203], kind: 'crane' },
  ],
  stages: [{ id: 'S1', plant: [{ vehicle: 'loader', route: [[101, 203], [109, 203]] }] }], // biome-ignore format: points in a row
  setUpAreas: [{ id: 'U1', kind: 'set-up', vehicle: 'fire', outline: [[106, 201], [109, 201], [109, 203], [106, 203]] }], // biome-ignore format: points in a row
};
const snapshot = { picture, scene, originM: [100, 200] } as unknown as Snapshot;
const look = { hiddenKinds: new Set(), hiddenZones: new Set(), onlyKind: null, onlyZone: null } as const;
const at = (stage: number | null) => siteLines(snapshot, partStates(picture.parts, { ...look, stage } as never), stage);

describe('in a stage', () => {
  const bare = at(0);

  it('the band lies on the bare slab, whole', () => {
    expect(lengthOf(bare.band)).toBeCloseTo(6, 4);
    expect(new Set(bare.band.parts)).toEqual(new Set([0]));
  });

  it('follows what has been laid by then: on the zone to x = 5, on the slab beyond', () => {
    const { band } = at(2);
    expect(new Set(band.parts)).toEqual(new Set([0, 2]));
    for (let v = 0; v < band.parts.length; v++) {
      const [x, , z] = band.positions.slice(3 * v, 3 * v + 3);
      // The zone's top is 0.34 m and rises by 0.1 m over 5 m; drawn 0.03 m above.
      const want = band.parts[v] === 2 ? 0.37 + 0.02 * x! : 0.03;
      expect(z).toBeCloseTo(want, 4);
    }
  });

  it('reach ends at the edge of the deck: of a circle 2 m beyond only the cap on it', () => {
    // Centre (5, −2), radius 3: half angle on the deck acos(2/3) = 48.19°, arc 2 · 0.8411 · 3 = 5.05 m, half of it dashes.
    expect(lengthOf(bare.reach)).toBeGreaterThan(2.2);
    expect(lengthOf(bare.reach)).toBeLessThan(2.9);
    // The crane without a reach has no circle.
    for (let v = 0; v < bare.reach.parts.length; v++) {
      const [x, y] = bare.reach.positions.slice(3 * v, 3 * v + 2);
      expect(Math.hypot(x! - 5, y! + 2)).toBeCloseTo(3, 2);
    }
  });

  it('a post stands on the deck, or beside it on the ground below', () => {
    const { positions } = bare.posts;
    // Feet: the slab's top at G1; the lowest of the model at C1, which stands beside it.
    expect([positions[2], positions[8]]).toEqual([0, expect.closeTo(-0.2, 6)]);
    expect(bare.heads.map(({ point }) => point.id)).toEqual(['G1', 'C1', 'C2']);
  });

  it('areas for appliances belong to the finished garden, all else to stages', () => {
    expect(bare.areas.parts).toHaveLength(0);
    const garden = at(null);
    // 3 m × 2 m
    expect(lengthOf(garden.areas)).toBeCloseTo(10, 3);
    expect(garden.areaLabels.map(({ area, at: [x, y] }) => [area.id, x, y])).toEqual([['U1', 7.5, 2]]);
    for (const none of [garden.band, garden.ways, garden.reach, garden.posts]) expect(none.parts).toHaveLength(0);
  });
});

it('dashes go on round a bend', () => {
  // 3 m and 3 m with dashes of 1 m: 0–1, 2–3 and, round the bend, 4–5: three of them
  const found = dashes([[0, 0], [3, 0], [3, 3]], 1); // biome-ignore format: points in a row
  expect(found).toEqual([
    [0, 0, 1, 0],
    [2, 0, 3, 0],
    [3, 1, 3, 2],
  ]);
});

it('names of classes stand on their own cells', () => {
  // A U of class 0 round class 1: the middle of the U is not on it.
  const values = Float32Array.from([0, 0, 0, 0, 1, 0, 0, 1, 0]);
  const map = { names: ['O1', 'O2', 'O3'], values } as never;
  const places = classPlaces(map, { columns: 3, rows: 3, cellM: 1, x0M: 0, y0M: 0 });
  expect(places.map(({ index }) => index)).toEqual([0, 1]);
  for (const {
    index,
    at: [x, y],
  } of places)
    expect(values[Math.floor(y) * 3 + Math.floor(x)]).toBe(index);
});
