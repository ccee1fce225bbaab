/** Vehicles as lists: which wheel is looked at, how it is called, its layers against what they bear. */

import { describe, expect, it } from 'vitest';
import { MAP_KINDS } from '../../src/model/maps.ts';
import type { ReportTraffic } from '../../src/model/report.ts';
import type { PoseGround, PoseTop, PoseWheel, RunPose, RunView } from '../../src/model/run.ts';
import { groupedMaps, groupOf } from '../../src/ui/facts/map-groups.ts';
import { layerRows, listRuns, mostUsedWheel, placeOnPath, wheelName } from '../../src/ui/facts/run-facts.ts';
import { en } from '../../src/ui/text/en.ts';

/** Pressure with the weight above in it. */
const top = (materialId: string, layer: number, [kPa, aboveKPa]: readonly [number, number], permittedKPa: number | null) =>
  ({ materialId, layer, name: materialId, kPa, wheelsKPa: kPa - aboveKPa, aboveKPa, permittedKPa }) as PoseTop;
const ground = (tops: readonly PoseTop[], zone = 'lane', beside = false): PoseGround => ({ zone, beside, tops });
const wheel = (axle: number, leftM: number, grounds: readonly PoseGround[], onLine = true) =>
  ({ axle, leftM, grounds, onLine }) as PoseWheel;
const pose = (...wheels: readonly PoseWheel[]) => ({ wheels }) as unknown as RunPose;

describe('the wheel looked at', () => {
  it('is the one that uses most of what a layer bears, be it of a zone beside', () => {
    const light = wheel(0, 1, [ground([top('slab', 2, [100, 0], 200)])]);
    const beside = wheel(1, 1, [ground([top('slab', 2, [90, 0], 200)]), ground([top('lava', 1, [90, 0], 100)], 'bed', true)]);
    expect(mostUsedWheel(pose(light, beside))).toBe(1);
  });

  it('of wheels alike the first, not one that differs by rounding', () => {
    const tops = (kPa: number) => [ground([top('slab', 2, [kPa, 0], 200)])];
    expect(mostUsedWheel(pose(wheel(0, 1, tops(100)), wheel(0, -1, tops(100 + 1e-12))))).toBe(0);
  });

  it('where no layer says what it bears, is the one that presses the membrane most', () => {
    const bare = (kPa: number) => [ground([top('slab', 2, [500, 0], null), top('', -1, [kPa, 0], null)])];
    expect(mostUsedWheel(pose(wheel(0, 1, bare(20)), wheel(1, 1, bare(30))))).toBe(1);
  });

  it('is none before the line, off the deck, or without wheels', () => {
    expect(mostUsedWheel(pose(wheel(0, 1, [], true), wheel(1, 1, [ground([top('slab', 2, [9, 0], 10)])], false)))).toBe(-1);
    expect(mostUsedWheel(pose())).toBe(-1);
  });
});

describe('names of wheels', () => {
  const one = pose(
    wheel(0, 1, []),
    wheel(0, -1, []),
    wheel(1, 0.9, []),
    wheel(1, -0.9, []),
    wheel(1, 1.2, []),
    wheel(1, -1.2, []),
    wheel(2, 0, []),
  );

  it('tell axle and side, and from the outside where there are several', () => {
    expect(wheelName(one, 1)).toEqual({ axle: 1, side: 'right', place: 1, of: 1 });
    expect(wheelName(one, 2)).toEqual({ axle: 2, side: 'left', place: 2, of: 2 });
    expect(wheelName(one, 4)).toEqual({ axle: 2, side: 'left', place: 1, of: 2 });
    expect(wheelName(one, 6)).toEqual({ axle: 3, side: 'middle', place: 1, of: 1 });
    expect(en.wheels.wheelName(wheelName(one, 1))).toBe('axle 1, right');
    expect(en.wheels.wheelName(wheelName(one, 2))).toBe('axle 2, left, 2 of 2 from outside');
  });
});

const TRAFFIC = {
  id: 'F1',
  maxMembraneKPa: 87,
  layers: [
    { zone: 'lane', layer: 'slab', maxKPa: 600, utilisation: 0.6 },
    { zone: 'lane', layer: 'fleece', maxKPa: 120, utilisation: null },
    { zone: 'lane', layer: 'fleece', maxKPa: 90, utilisation: null },
    { zone: 'bed', layer: 'slab', maxKPa: 700, utilisation: 0.7 },
  ],
} as unknown as ReportTraffic;

describe('layers against what they bear', () => {
  const tops = [
    top('slab', 3, [500, 0], 1000),
    top('fleece', 2, [110, 10], null),
    top('fleece', 0, [80, 20], null),
    top('', -1, [80, 20], null),
  ];
  const rows = layerRows(ground(tops), TRAFFIC);

  it('hold wheels and weight against the bearing, the membrane with wheels alone', () => {
    expect(rows.map(({ kPa, share }) => [kPa, share])).toEqual([
      [500, 0.5],
      [110, null],
      [80, null],
      // 80 less 20 of weight
      [60, null],
    ]);
  });

  it('stand beside the worst of the whole line in the same zone; equal layers in their order', () => {
    expect(rows.map(({ route }) => route?.kPa)).toEqual([600, 120, 90, 87]);
    expect(rows.map(({ nth }) => nth)).toEqual([0, 0, 1, 0]);
    expect(rows[0]?.route?.share).toBe(0.6);
    expect(layerRows(ground([top('slab', 3, [500, 0], 1000)], 'elsewhere'), TRAFFIC)[0]?.route).toBeNull();
    expect(layerRows(ground([top('slab', 3, [500, 0], 1000)]), undefined)[0]?.route).toBeNull();
  });
});

it('lists vehicles with their worst; without a report there is nothing to tell', () => {
  const runs = [
    { id: 'F1', vehicle: 'Lorry', stage: null },
    { id: 'L1', vehicle: 'Loader', stage: 2 },
  ] as unknown as RunView[];
  expect(listRuns(runs, [TRAFFIC])).toEqual([
    { id: 'F1', vehicle: 'Lorry', stage: null, used: 0.7, membraneKPa: 87 },
    { id: 'L1', vehicle: 'Loader', stage: 2, used: null, membraneKPa: null },
  ]);
});

it('finds a place along a path and stays on it', () => {
  // 3 m to the right, then 4 m up
  const path = Float64Array.from([0, 0, 3, 0, 3, 4]);
  expect([-1, 0, 2, 3, 5, 7, 9].map((m) => placeOnPath(path, m))).toEqual([
    [0, 0],
    [0, 0],
    [2, 0],
    [3, 0],
    [3, 2],
    [3, 4],
    [3, 4],
  ]);
});

describe('maps in groups', () => {
  it('hold every map once', () => {
    const all = groupedMaps({ hasRuns: true, hasWater: true, isCompared: true }).flatMap(({ kinds }) => kinds);
    expect([...all].sort()).toEqual([...MAP_KINDS].sort());
    for (const { group, kinds } of groupedMaps({ hasRuns: true, hasWater: true, isCompared: true }))
      for (const kind of kinds) expect(groupOf(kind)).toBe(group);
  });

  it('leave maps of wheels out where nothing drives', () => {
    const all = groupedMaps({ hasRuns: false, hasWater: true, isCompared: false }).flatMap(({ kinds }) => kinds);
    expect(all).not.toContain('wheel-membrane');
    expect(all).toContain('load');
  });
});
