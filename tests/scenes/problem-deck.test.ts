/** Demo scene problem deck: one fault of many kinds, each by how much. */

import { describe, expect, it } from 'vitest';
import { byId } from '../helpers/scene-builder.ts';
import { kN, open, told } from './demo-scenes.ts';

describe('problem deck', () => {
  const { report } = open('problem-deck');
  /** 3.5 + 0.184 + 1.3 + 0.9 + 0.2 · 1750 kg/m². */
  const GRAVEL = kN(355.884);

  it('areas: 20 · 18, fields of 2.5 · 2.8', () => {
    expect(report.deck.areaM2).toBeCloseTo(360, 9);
    expect(byId(report.zones, 'flat').areaM2).toBeCloseTo(7, 9);
    // The gap: 2.5 · 0.3
    expect(report.deck.unzonedM2).toBeCloseTo(0.75, 9);
    // 0.3 · 2.8
    expect(report.deck.overlapM2).toBeCloseTo(0.84, 9);
  });

  it('gravel 3.4912, perennials 5.1288 kN/m²; the bay of a gravel field has that mean', () => {
    expect(byId(report.zones, 'flat').saturatedKNm2.mean).toBeCloseTo(GRAVEL, 9);
    expect(byId(report.bays, 'flat').permanent.meanKNm2).toBeCloseTo(GRAVEL, 9);
    // Root barrier 0.94, fleece 3.5, slip 0.184, element 1.8 + 12, lava 0.037 · 1300, filter 0.9, substrate 0.3 · 1450
    expect(byId(report.zones, 'facade-planting').saturatedKNm2.mean).toBeCloseTo(kN(502.424) + 0.2, 9);
  });

  it('the overlap counts both build-ups: 7 m² + 0.84 m² of gravel and all', () => {
    expect(byId(report.bays, 'overlap-east').permanent.meanKNm2).toBeCloseTo((GRAVEL * 7.84) / 7, 9);
  });

  it('has the faults it was drawn with, as far as they are calculated', () => {
    expect(told(report)).toEqual([
      'stop load.total total',
      'stop load.imposed imposed',
      'stop load.permanent overloaded',
      'stop load.stage heap S4',
      'stop depth.short depth-short',
      'stop stage.order wrong-order S2',
      'stop order.protection no-protection',
      'stop order.root no-root-barrier',
      'stop order.infill unfilled',
      'stop edge.upstand upstand-low',
      'stop edge.upstand sill-low',
      'stop water.outlet outlet-small',
      'stop water.overflow overflow-small',
      'stop float.uplift float',
      'stop stress.layer weak-fill',
      'stop traffic.bay not-permitted',
      'stop stress.layer open-elements S3',
      'stop wall.sliding wall-weak R-weak',
      'stop wall.bearing wall-weak R-weak',
      'stop stage.plant open-elements S3',
      'check load.basis unconfirmed',
      'check depth.over depth-over',
      'check level.outside spots-outside',
      'check level.outside',
      'check zone.gap',
      'check zone.overlap overlap-west',
      'check zone.outside zone-outside',
      'check bay.gap',
      'check bay.overlap bay-overlap-west',
      'check stage.left left',
      'check order.slip no-slip',
      'check order.drainage no-drainage',
      'check order.filter no-filter',
      'check order.separation no-separation',
      'check order.orientation wrong-way-up',
      'check depth.vegetation thin-substrate',
      'check depth.base weak-fill',
      'check edge.strip facade-planting',
      'check level.fall',
      'check water.pond hollow',
      'check water.flow outlet-small',
      'check wall.bearing wall-weak R-weak',
      'check traffic.width',
      'check traffic.width',
      'check traffic.gradient set-up-steep',
      'note depth.lift narrow-lane',
    ]);
  });

  const value = (rule: string) => report.findings.find((finding) => finding.rule === rule)?.value;

  it('edges: 45.6 mm at the upstand, 20.7 mm at the sill, no strip at the façade', () => {
    // Gravel 4 + 0.2 + 25 + 1.2 + 200 = 230.4 mm. Upstand: 0.32 − (0.044 + 0.2304) at (0, 14). Sill: deck 0.044 · (8.75 − 3)/8.75 at x = 3.
    expect(byId(report.edges ?? [], 'upstand-low').leastUpstandMm).toBeCloseTo(45.6, 6);
    expect(byId(report.edges ?? [], 'sill-low').leastUpstandMm).toBeCloseTo(1000 * (0.28 - (0.044 * 5.75) / 8.75 - 0.2304), 6);
    expect(value('edge.strip')).toBe(0);
  });

  it('water: all 360 m² on one outlet', () => {
    const [outlet, overflow] = report.outlets ?? [];
    expect(outlet.catchmentM2).toBeCloseTo(360, 6);
    expect(value('water.outlet')).toBeCloseTo(outlet.designLps ?? 0, 9);
    // Both together carry all of the extreme rain: 500 · 360/10 000
    expect((value('water.outlet') ?? 0) + (value('water.overflow') ?? 0)).toBeCloseTo(18, 6);
    expect(overflow.designLps).toBe(0);
    // The pit at 0.105 under a rim of 0.131: 26 mm, a little less at the centre of a cell
    expect(value('water.pond')).toBeGreaterThan(20);
    expect(value('water.pond')).toBeLessThan(26);
  });

  it('uplift: boards over 30.4 mm of sheets and element, held by 30.15 kg/m²', () => {
    // 4 + 0.2 + 25 + 1.2 mm below; 0.15 · 33 + 0.2 + 25 kg/m² in the boards and above
    const [finished] = report.water?.flotation.zones ?? [];
    expect(finished).toMatchObject({ zone: 'float', stage: null, layer: 'xps-board' });
    expect(finished.holdingKNm2).toBeCloseTo(kN(30.15), 9);
    expect(finished.upliftKNm2).toBeCloseTo(9.81 * (finished.waterMm / 1000 - 0.0304), 9);
    expect(value('float.uplift')).toBeCloseTo((0.9 * kN(30.15)) / finished.upliftKNm2, 9);
  });

  it('falls: level under the field that is named after it, 0.7 % in the triangle beside it', () => {
    const fall = report.findings.find((finding) => finding.rule === 'level.fall');
    // 2.5 · 2.8 and 6.25 · 2.8/2
    expect(fall?.value).toBeCloseTo(0, 9);
    expect(fall?.says).toContain('0.00 to 0.70 % on 15.75 m²');
  });

  it('by how much', () => {
    // 0.3 · 2.8 each; the gap 2.5 · 0.3; the corner without levels 2.2 · 2.5/2
    for (const rule of ['zone.overlap', 'zone.outside', 'bay.gap', 'bay.overlap']) expect(value(rule), rule).toBeCloseTo(0.84, 9);
    expect(value('zone.gap')).toBeCloseTo(0.75, 9);
    const outside = report.findings.filter((finding) => finding.rule === 'level.outside');
    expect(outside.find((finding) => !finding.where.zone)?.value).toBeCloseTo(2.75, 6);
    // A field of 2.5 · 2.8 with finish spots on 2 · 2
    expect(outside.find((finding) => finding.where.zone)?.value).toBeCloseTo(3, 9);
    expect(value('load.imposed')).toBe(4);
    expect(value('depth.vegetation')).toBeCloseTo(200, 9);
    expect(value('depth.base')).toBeCloseTo(100, 9);
    // 0.9 m of base course, loose: 0.9 · 2150/1.25 = 1548 kg/m², on sheets, element and filter 5.884
    expect(value('load.stage')).toBeCloseTo(kN(1553.884), 9);
    expect(value('depth.over')).toBeCloseTo(7, 9);
    // Short where the deck lies above 0.45 − 0.1819 − 0.1 + 0.001 = 0.1691: below y = 5.6 + 2.145 − 0.26 x, 4.55 m², give or take half a row
    expect(Math.abs((value('depth.short') ?? 0) - 4.55)).toBeLessThan(0.3);
  });

  it('overloaded: a window that takes a corner of both heavier neighbours', () => {
    // Centre (9.875, 5.375): 0.725 m of gravel in y; above it 0.275 m, of it 0.625 m without drainage (439.624 kg/m² + 0.2) and
    // 0.375 m without filter (501.524 kg/m² + 0.2)
    const above = 0.625 * (kN(439.624) + 0.2) + 0.375 * (kN(501.524) + 0.2);
    expect(value('load.permanent')).toBeCloseTo(0.725 * GRAVEL + 0.275 * above, 9);
  });

  it('retaining edge: slides, presses more than polystyrene bears, and opens at the heel', () => {
    // Per metre: H 0.6, B 0.4, stem and slab 0.1; soil 1450 kg/m³ = 14.2245 kN/m³, wall 24.525; Ka 1/3 at 30°; live load 4.
    // Thrust ½ · 14.2245 · 0.36/3 = 0.85347, and 4 · 0.6/3 = 0.8; moment 0.85347 · 0.2 + 0.8 · 0.3 = 0.410694.
    // Weights 0.1 · 0.5 · 24.525 = 1.22625, 0.4 · 0.1 · 24.525 = 0.981, soil 0.3 · 0.5 · 14.2245 = 2.133675: 4.340925 kN;
    // their moment 1.22625 · 0.05 + 0.981 · 0.2 + 2.133675 · 0.25 = 0.79093125.
    const thrustKNm = 1.65347;
    const fromFootM = (0.79093125 - 0.410694) / 4.340925;
    const of = report.findings.filter(({ where }) => where.object === 'R-weak').map((one) => [one.value, one.limit]);
    expect(of).toEqual([
      [expect.closeTo((0.2 * 4.340925) / thrustKNm, 9), 1.5],
      // 33.04 kPa on 30: a triangle over three times the distance of the resultant from the foot
      [expect.closeTo((2 * 4.340925) / (3 * fromFootM), 9), 30],
      [expect.closeTo(0.2 - fromFootM, 9), expect.closeTo(0.4 / 6, 12)],
    ]);
    // Stem and slab alone, 2.20725 kN/m over 4 m
    expect(report.deck.objectsKN).toBeCloseTo(8.829, 9);
  });

  it('set-up areas: 3.6 m long where 11 are asked for, and 6.02 % where 5 are permitted', () => {
    // South of y = 0 the membrane falls 0.24 m over 4 m at x = 20, and rises 0.056 m over 11.25 m along y = 0: 6 and 0.498 %.
    const [small, steep] = report.setUpAreas ?? [];
    expect(small).toMatchObject({ id: 'U-small', lengthM: expect.closeTo(3.6, 9), insideWidthM: 0, standing: [] });
    expect(steep).toMatchObject({ insideWidthM: expect.closeTo(3.6, 6), steepestPercent: expect.closeTo(Math.hypot(6, 5.6 / 11.25), 9) });
    const found = report.findings.filter(({ says }) => says.includes('et-up area'));
    expect(found.map(({ rule, value, limit }) => [rule, value, limit])).toEqual([
      ['traffic.width', expect.closeTo(3.6, 6), 11],
      ['traffic.gradient', expect.closeTo(Math.hypot(6, 5.6 / 11.25), 9), 5],
    ]);
  });
});
