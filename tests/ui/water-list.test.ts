/** Lists of the sheet of water: orders, verdicts, storage, by hand. */

import { describe, expect, it } from 'vitest';
import type { Report, ReportBay } from '../../src/model/report.ts';
import type { ReportBlocked } from '../../src/model/report-water.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { blockedVerdict, heldLevelM, listDrains, listOutlets, listUplifts, listWetBays, storageAt } from '../../src/ui/facts/water-list.ts';

const bay = (id: string, utilisation: number | null, confirmed = true): ReportBay =>
  ({ id, confirmed, permanent: { utilisation } }) as unknown as ReportBay;

const wet = (id: string, utilisation: number | null) => ({
  bay: id,
  waterKNm2: 0.5,
  patchKNm2: 9,
  at: [0, 0] as const,
  utilisation,
});

const blocked = (bays: ReportBlocked['bays'], levelM: number | null = 0.2): ReportBlocked => ({
  outlet: 'O1',
  levelM,
  depthMm: levelM === null ? null : 80,
  areaM2: 10,
  litres: 200,
  into: 'V1',
  bays,
});

describe('bays under water', () => {
  it('come with the one that the water overloads first', () => {
    const bays = [bay('A', 0.9), bay('B', 1.1), bay('C', 0.8), bay('D', 0.8, false), bay('E', null)];
    const one = blocked([wet('A', 0.95), wet('B', 1.2), wet('C', 1.01), wet('D', 0.85), wet('E', null)]);
    const listed = listWetBays(one, bays);
    expect(listed.map(({ bay: id, status }) => [id, status])).toEqual([
      ['C', 'over by water'],
      ['B', 'over anyway'],
      ['E', 'no limit'],
      ['D', 'not confirmed'],
      ['A', 'within'],
    ]);
    expect(listed[0]?.before).toBe(0.8);
    expect(blockedVerdict(one, listed)).toBe('over by water');
  });

  it('exactly at the limit is not over', () => {
    expect(listWetBays(blocked([wet('A', 1)]), [bay('A', 0.9)])[0]?.status).toBe('within');
  });

  it('never reads as within where nothing lets the water out', () => {
    expect(blockedVerdict(blocked([], null), [])).toBe('unbounded');
    expect(blockedVerdict(blocked([]), [])).toBe('dry');
  });
});

describe('held water', () => {
  it('stands below its highest by what is missing', () => {
    // 0.2 − (80 − 30) mm
    expect(heldLevelM(blocked([]), 30)).toBeCloseTo(0.15, 12);
    expect(heldLevelM(blocked([]), null)).toBe(0.2);
    expect(heldLevelM(blocked([], null), 30)).toBeNull();
  });
});

describe('storage', () => {
  const zones = [
    { id: 'A', areaM2: 50, heldLm2: { min: 0, mean: 40, max: 60 } },
    { id: 'B', areaM2: 200, heldLm2: { min: 0, mean: 20, max: 30 } },
  ] as unknown as Report['zones'];

  it('is what is not filled, largest zone first', () => {
    // A 2 m³, B 4 m³; 25 % filled leaves 4.5 of 6
    const { heldM3, freeM3, zones: listed } = storageAt({ zones }, 25);
    expect([heldM3, freeM3]).toEqual([6, 4.5]);
    expect(listed.map(({ id, freeLm2 }) => [id, freeLm2])).toEqual([
      ['B', 15],
      ['A', 30],
    ]);
  });
});

it('says of no storage that it is free where nobody gave a filling', () => {
  const zones = [{ id: 'A', areaM2: 50, heldLm2: { min: 0, mean: 40, max: 60 } }] as unknown as Report['zones'];
  expect(storageAt({ zones }, null)).toEqual({
    heldM3: 2,
    freeM3: null,
    zones: [{ id: 'A', heldM3: 2, heldLm2: 40, freeM3: null, freeLm2: null }],
  });
});

describe('orders', () => {
  it('outlets without a capacity come first, then the most used; overflows are not among them', () => {
    const of = (id: string, utilisation: number | null, kind = 'outlet') => ({ id, kind, utilisation });
    const outlets = [of('A', 0.5), of('B', null), of('C', 1.2), of('V', 2, 'overflow')];
    const report = { outlets, water: { blocked: [{ outlet: 'C' }] } } as unknown as Report;
    const scene = { deck: { outlets: [{ id: 'C', at: [3, 4] }] } } as unknown as SceneFile;
    const listed = listOutlets(report, scene);
    expect(listed.map(({ id, blockable }) => [id, blockable])).toEqual([
      ['B', false],
      ['C', true],
      ['A', false],
    ]);
    expect(listed[1]?.at).toEqual([3, 4]);
  });

  it('a fill is judged by the higher of its two heights, an element by its flow', () => {
    const drain = { flowLsm: 0.3, capacityLsm: 0.6, thicknessMm: 50, headMm: null, secondHeadMm: null };
    const zones = [
      { id: 'E', drain },
      { id: 'F', drain: { ...drain, headMm: 40, secondHeadMm: 55 } },
      { id: 'N', drain: null },
    ];
    const listed = listDrains({ zones } as never);
    // 55 of 50 mm; 0.3 of 0.6
    expect(listed.map(({ zone, share, over }) => [zone, share, over])).toEqual([
      ['F', 1.1, true],
      ['E', 0.5, false],
    ]);
  });

  it('what is nearest to floating comes first', () => {
    const zones = [{ ratio: 16 }, { ratio: 0.67 }, { ratio: 0.11 }];
    expect(listUplifts({ flotation: { zones } } as never).map(({ ratio }) => ratio)).toEqual([0.11, 0.67, 16]);
  });
});
