/** Demo scene terrace: totals by hand from the file and the catalogue (kg/m² · 9.81/1000). */

import { describe, expect, it } from 'vitest';
import { byId } from '../helpers/scene-builder.ts';
import { kN, open, told } from './demo-scenes.ts';

describe('terrace', () => {
  const { scene, report } = open('terrace');

  it('areas: 9 · 6 = 54; paving 9 · 3.5, bed 9 · 2, gravel 9 · 0.5', () => {
    expect(report.deck.areaM2).toBeCloseTo(54, 9);
    expect(report.zones.map((zone) => zone.areaM2)).toEqual([31.5, 18, 4.5].map((v) => expect.closeTo(v, 9)));
  });

  it('bed: 5.8308 saturated, 4.0586 dry, 176.9 l/m², 405.4 mm', () => {
    // Saturated: fleece 3.5, slip 0.184, element 1.8 + 12 l held, lava (27 mm in the voids + 10 mm) · 1300 = 48.1, filter 0.9,
    // substrate 0.35 · 1450 = 507.5: 573.984 kg/m², and 0.2 kN/m² of perennials
    const bed = byId(report.zones, 'bed');
    expect(bed.saturatedKNm2.mean).toBeCloseTo(kN(573.984) + 0.2, 9);
    // Dry: 0.5 + 0.184 + 1.8 + 0.037 · 1100 + 0.15 + 350 = 393.334
    expect(bed.dryKNm2.mean).toBeCloseTo(kN(393.334) + 0.2, 9);
    // 12 + 0.037 · 200 + 0.35 · 450
    expect(bed.heldLm2.mean).toBeCloseTo(176.9, 9);
    // 4 + 0.2 + 40 + 10 + 1.2 + 350
    expect(bed.depthMm.mean).toBeCloseTo(405.4, 9);
    expect(bed.makeUpMm).toBeNull();
  });

  it('gravel: 3.5 + 0.184 + 1.3 + 0.9 + 0.3 · 1750 = 530.884 kg/m²', () => {
    expect(byId(report.zones, 'gravel').saturatedKNm2).toEqual(even(kN(530.884)));
  });

  it('paving: make-up 85.0 … 114.4 … 143.7 mm', () => {
    // Deck 0.02 y + 0.01 |x − 4.5|, finish 0.5 + 0.015 (y − 6), other layers 4 + 0.2 + 25 + 1.2 + 1.5 + 120 + 40 + 60 = 251.9 mm:
    // t = 0.1581 − 0.005 y − 0.01 |x − 4.5|. Least at the centre (0.125, 5.875), greatest at (4.375, 2.625); mean y 4.25, mean |x − 4.5| 2.25.
    const paving = byId(report.zones, 'paving');
    expect(paving.makeUpMm).toEqual({ min: expect.closeTo(84.975, 6), mean: expect.closeTo(114.35, 6), max: expect.closeTo(143.725, 6) });
    // 3.5 + 0.184 + 1.3 + 0.9 + 1.2 + 0.12 · 2150 + 0.04 · 1900 + 0.06 · 2450 = 488.084 kg/m², foam glass 250 kg/m³
    expect(paving.saturatedKNm2.mean).toBeCloseTo(kN(488.084 + 0.11435 * 250), 9);
    // 0.5 + 0.015 · (4.25 − 6)
    expect(paving.finishedM.mean).toBeCloseTo(0.47375, 9);
  });

  const PAVING = kN(488.084 + 0.11435 * 250);
  const BED = kN(573.984) + 0.2;
  const GRAVEL = kN(530.884);

  it('weighs 31.5 paving + 18 bed + 4.5 gravel + edging 9 m · 1 + pot 1 m² · 2', () => {
    expect(report.deck.objectsKN).toBeCloseTo(11, 9);
    expect(report.deck.saturatedKN).toBeCloseTo(31.5 * PAVING + 18 * BED + 4.5 * GRAVEL + 11, 6);
  });

  it('bay means: half of everything each, the pot in B1', () => {
    const half = 15.75 * PAVING + 9 * BED + 2.25 * GRAVEL + 4.5;
    expect(byId(report.bays, 'B1').permanent.meanKNm2).toBeCloseTo((half + 2) / 27, 9);
    expect(byId(report.bays, 'B2').permanent.meanKNm2).toBeCloseTo(half / 27, 9);
  });

  it('worst patch of 1 m × 1 m: at the edging, window centre y = 0.125', () => {
    // The window lies from y = 0 (the edge of the deck) to 0.625: 0.5 m of gravel, 0.125 m of bed, 1 kN of edging over 0.625 m²
    const worst = (0.5 * GRAVEL + 0.125 * BED + 1) / 0.625;
    for (const bay of report.bays) {
      expect(bay.permanent.patchKNm2).toBeCloseTo(worst, 9);
      expect(bay.permanent.patchAt[1]).toBeCloseTo(0.125, 9);
    }
  });

  it('heaps: stage 3 brings 7.95, stage 5 7.47 kN/m² to B2', () => {
    const patch = (id: string) => byId(report.bays, 'B2').stages.find((stage) => stage.stage === id)?.patchKNm2;
    // 0.3 m of base course, loose: 0.3 · 2150/1.25 = 516 kg/m². Below it, without bedding and slabs, 265.084 kg/m² and foam glass
    // 0.118725 m at (6.625, 3.625), the heap's corner nearest to the valley where a window still lies wholly on it.
    expect(patch('S3')).toBeCloseTo(kN(516 + 265.084 + 0.118725 * 250), 6);
    // 0.2 · 1450/1.2 kg/m² of substrate on whole paving, 0.128725 m of foam glass at (5.625, 3.625)
    expect(patch('S5')).toBeCloseTo(kN((0.2 * 1450) / 1.2 + 488.084 + 0.128725 * 250), 6);
    // 100 mm of water
    expect(patch('S1')).toBeCloseTo(0.981, 9);
  });

  it('the door 60 mm above the slabs, the walls 200 mm, the south edge 224.6 mm', () => {
    // 0.56 − 0.5, 0.7 − 0.5, and 0.6 − (0.045 + 0.3304) at the corners, where the deck is highest
    expect(report.edges?.map((edge) => [edge.id, edge.leastUpstandMm, edge.requiredMm])).toEqual([
      ['E1', expect.closeTo(200, 6), 150],
      ['E2', expect.closeTo(60, 6), 50],
      ['E3', expect.closeTo(200, 6), 150],
      ['E4', expect.closeTo(224.6, 6), 150],
    ]);
  });

  it('water: 29.25 of 54 m² effective by the table, 176.9 l/m² held in the bed', () => {
    // Slabs 9 · 3.5 · 0.7, bed of 350 mm 9 · 2 · 0.2, gravel 9 · 0.5 · 0.8
    const [outlet] = report.outlets ?? [];
    expect(outlet).toMatchObject({ id: 'O1', catchmentM2: expect.closeTo(54, 9), effectiveM2: expect.closeTo(29.25, 9), capacityLps: 4.5 });
    expect(outlet.designLps).toBeCloseTo((300 * 29.25) / 10_000, 9);
    // 0.35 · 450, the element's 12, and 37 mm of lava at 20 %
    expect(report.water?.heldM3).toBeCloseTo((157.5 + 12 + 7.4) * 0.018, 9);
    // (500 · 54 − 300 · 29.25)/10 000
    const [overflow] = report.water?.overflows ?? [];
    expect(overflow.dutyLps).toBeCloseTo(1.8225, 9);
    // 0.08 over the lowest cell: its centre 0.125 m up the valley at 2 % and 0.125 m beside it at 1 %
    expect(overflow.depthMm).toBeCloseTo(80 - 2.5 - 1.25, 1);
    expect(report.water?.blocked).toMatchObject([{ outlet: 'O1', levelM: expect.closeTo(0.08, 5), into: 'V1' }]);
  });

  it('has nothing to find', () => {
    expect(told(report)).toEqual([]);
    expect(report.bays.every((bay) => bay.confirmed)).toBe(true);
    expect(scene.stages?.map((stage) => stage.id)).toEqual(report.stages.map((stage) => stage.id));
  });
});

function even(value: number) {
  return { min: expect.closeTo(value, 9), mean: expect.closeTo(value, 9), max: expect.closeTo(value, 9) };
}
