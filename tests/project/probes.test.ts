/** Probed depths in report and findings, by hand. */

import { describe, expect, it } from 'vitest';
import type { SceneFile, SceneProbe } from '../../src/model/scene-file.ts';
import { bay, buildUp, MATERIALS, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const PROBE: SceneProbe = { id: 'P1', at: [1, 1], measuredMm: 620 };

/** 500 mm of a soil of 19 kN/m³: 9.5 kN/m². */
function scene(probes: readonly SceneProbe[], permanentKNm2 = 20, parts: Partial<SceneFile> = {}): SceneFile {
  const { deck: _, ...rest } = parts;
  const soil = { id: 'heavy', name: 'Heavy soil', role: 'substrate', density: { dry: 1500, saturated: 19000 / 9.81 } } as const;
  return sceneOf({
    materials: [...MATERIALS, soil],
    buildups: [buildUp('deep', [{ material: 'heavy', thicknessMm: 500 }])],
    zones: [zone('Z1', rect(0, 0, 4, 3), 'deep')],
    probes,
    ...rest,
    deck: { bays: [bay('C3', rect(0, 0, 4, 3), { permanentKNm2 })] },
  });
}
const told = (of: SceneFile) => read(of).report.findings.filter((finding) => finding.says.includes('probe '));

describe('rows of the report', () => {
  it('+120 mm at 19 kN/m³ are +2.28 kN/m²; 11.78 of 20 there', () => {
    expect(read(scene([PROBE])).report.probes).toEqual([
      {
        id: 'P1',
        at: [1, 1],
        zone: 'Z1',
        bay: 'C3',
        layer: null,
        countedAs: 'heavy',
        plannedMm: expect.closeTo(500, 9),
        measuredMm: 620,
        differenceMm: expect.closeTo(120, 9),
        differenceKNm2: expect.closeTo(2.28, 9),
        patchKNm2: expect.closeTo(11.78, 9),
        utilisation: expect.closeTo(0.589, 9),
      },
    ]);
  });

  it('too little is a negative difference: 450 mm, −0.95 kN/m²', () => {
    expect(read(scene([{ ...PROBE, layer: 'heavy', measuredMm: 450 }])).report.probes?.[0]).toMatchObject({
      layer: 'heavy',
      differenceKNm2: expect.closeTo(-0.95, 9),
      patchKNm2: expect.closeTo(8.55, 9),
    });
  });

  it('say so where there is nothing to compare with', () => {
    const nothing = { plannedMm: null, differenceMm: null, differenceKNm2: null, patchKNm2: null, utilisation: null, countedAs: null };
    const [beyond, missing] = read(
      scene([
        { ...PROBE, at: [9, 9] },
        { ...PROBE, id: 'P2', layer: 'light' },
      ]),
    ).report.probes!;
    expect(beyond).toMatchObject({ zone: null, bay: null, ...nothing });
    expect(missing).toMatchObject({ zone: null, bay: 'C3', ...nothing });
  });

  it('a layer given by its weight per m² has a difference in mm and none in load', () => {
    const buildups = [buildUp('deep', [{ material: 'sheet' }, { material: 'soil', thicknessMm: 100 }])];
    expect(read(scene([{ ...PROBE, layer: 'sheet', measuredMm: 14 }], 20, { buildups })).report.probes?.[0]).toMatchObject({
      plannedMm: expect.closeTo(10, 9),
      differenceMm: expect.closeTo(4, 9),
      countedAs: null,
      differenceKNm2: null,
      utilisation: null,
    });
  });

  it('are in the file’s coordinates, and left out where nothing was probed', () => {
    const far = scene([{ ...PROBE, at: [400001, 5800001] }]);
    const move = (points: readonly (readonly [number, number])[]) => points.map(([x, y]) => [x + 400000, y + 5800000] as const);
    const deck = { outline: move(far.deck.outline), bays: far.deck.bays.map((b) => ({ ...b, outline: move(b.outline) })) };
    const moved = { ...far, deck, zones: far.zones.map((z) => ({ ...z, outline: move(z.outline) })) };
    expect(read(moved).report.probes?.[0]).toMatchObject({ at: [400001, 5800001], zone: 'Z1', utilisation: expect.closeTo(0.589, 9) });
    expect('probes' in read(sceneOf()).report).toBe(false);
  });
});

describe('findings', () => {
  it('stop where the bay goes over: 11.78 of 11 is 107.1 %', () => {
    const [finding, ...others] = told(scene([PROBE], 11));
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ rule: 'load.permanent', severity: 'stop', where: { bay: 'C3', zone: 'Z1', at: [1, 1] }, limit: 11 });
    expect(finding.value).toBeCloseTo(11.78, 9);
    expect(finding.says).toMatch(
      /Bay C3: probe P1 in zone Z1.*620 mm in all.*500.*\+120 mm of Heavy soil.*\+2\.28 kN\/m².*11\.78 kN\/m².*107\.1 %/,
    );
    expect(finding.source).toBe('load plan, revision A, 2026-01-05');
  });

  it('check where it comes near: 11.78 of 12 is 98.2 %', () => {
    expect(told(scene([PROBE], 12)).map((finding) => finding.severity)).toEqual(['check']);
  });

  it('none at ease: 11.78 of 13.1 is 89.9 %', () => {
    expect(told(scene([PROBE], 13.1))).toEqual([]);
  });

  it('none for what is as planned or thinner, whatever the bay carries by plan', () => {
    expect(told(scene([{ ...PROBE, measuredMm: 500 }], 9))).toEqual([]);
    expect(told(scene([{ ...PROBE, measuredMm: 400 }], 9))).toEqual([]);
  });

  it('by the limit in all where that is closer: 11.78 + 2 of 13', () => {
    const of = scene([PROBE], 20, { zones: [zone('Z1', rect(0, 0, 4, 3), 'deep', { imposedKNm2: 2 })] });
    const bays = [bay('C3', rect(0, 0, 4, 3), { permanentKNm2: 20, totalKNm2: 13 })];
    const [finding] = told({ ...of, deck: { ...of.deck, bays } });
    expect(finding).toMatchObject({ rule: 'load.total', severity: 'stop', value: expect.closeTo(13.78, 9), limit: 13 });
    expect(finding.says).toContain('imposed load included');
  });
});
