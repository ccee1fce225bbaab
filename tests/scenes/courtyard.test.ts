/** Demo scene courtyard: totals by hand, and the findings it was drawn with. */

import { describe, expect, it } from 'vitest';
import { byId } from '../helpers/scene-builder.ts';
import { kN, laidM2, open, told } from './demo-scenes.ts';

describe('courtyard', () => {
  const { scene, report } = open('courtyard');

  it('deck: 45 · 38 less the corner 5 · 5.5/2 and openings of 3 · 3 and 3.5 · 3 m', () => {
    // 1710 − 13.75 − 9 − 10.5
    expect(report.deck.areaM2).toBeCloseTo(1676.75, 9);
    expect(report.deck.zonedM2).toBeCloseTo(1676.75, 6);
    // 45 · 4.5
    expect(byId(report.zones, 'lane').areaM2).toBeCloseTo(202.5, 9);
  });

  it('sheets: fleece and slip 3.684 kg/m², on the lane 5.6 + 0.368', () => {
    // 3.684 · (1676.75 − 202.5) + 5.968 · 202.5 = 6639.657 kg
    expect(byId(report.stages, 'S3').placedKN).toBeCloseTo(kN(6639.657), 6);
  });

  it('drainage fill: 58 mm of lava under planting, 14 mm flush under the lane', () => {
    const planted = laidM2(scene, 'lawn', 'meadow', 'perennials', 'raised-bed', 'shrubs', 'mound-light', 'mound-deep');
    // (48 + 10) mm · 1300 = 75.4 kg/m²; 14 mm · 1300 = 18.2 kg/m²
    expect(byId(report.stages, 'S5').placedKN).toBeCloseTo(kN(75.4 * planted + 18.2 * 202.5), 6);
  });

  it('gravel along the west façade: about 294 mm of foam glass', () => {
    // Deck −0.55 at the wall, falling by 0.225/11.25 to 0.26/11.25 m per metre: at 0.25 m −0.5550 to −0.5558; finish −0.08;
    // other layers 4 + 0.2 + 25 + 1.2 + 1.5 + 150 = 181.9 mm
    const strip = byId(report.zones, 'strip-w1');
    expect(strip.areaM2).toBeCloseTo(6.5, 9);
    expect(strip.makeUpMm?.mean).toBeGreaterThan(293.1);
    expect(strip.makeUpMm?.mean).toBeLessThan(293.9);
    // 3.5 + 0.184 + 1.3 + 0.9 + 1.2 + 0.15 · 1750 = 269.584 kg/m²
    expect(strip.saturatedKNm2.mean).toBeCloseTo(kN(269.584 + 0.2933 * 250), 2);
  });

  it('bay C2 in stage 5: fleece, slip, element with water, lava: 104.584 kg/m² of 8 kN/m²', () => {
    // 3.5 + 0.184 + 2.5 + 23 + 75.4
    const stage = byId(report.bays, 'C2').stages.find((entry) => entry.stage === 'S5');
    expect(stage).toMatchObject({ patchKNm2: expect.closeTo(kN(104.584), 9), permittedKNm2: 8 });
  });

  it('the mound over the ramp: 11.7 to 12.1 kN/m² in E3, which permits 10', () => {
    // Under the top (40.2, 24.2): 105.484 kg/m² of sheets, element, water and lava, trees to come 0.6 kN/m², tree of 1800 kg on 3.5 m
    // 1.835 kN/m², about 0.70 m of substrate at 1250 kg/m³: 12.05 at the peak, some 0.2 less over a square metre of the cone.
    const { permanent } = byId(report.bays, 'E3');
    expect(permanent.patchKNm2).toBeGreaterThan(11.7);
    expect(permanent.patchKNm2).toBeLessThan(12.05);
    expect(Math.hypot(permanent.patchAt[0] - 40.2, permanent.patchAt[1] - 24.2)).toBeLessThan(1.5);
  });

  it('the heap in D3: 0.9 m of loose lawn substrate on the meadow', () => {
    // 0.9 · 1600/1.2 = 1200 kg/m² on meadow of 5.40 to 6.00 kN/m² (506.684 kg/m², 0.05 kN/m², foam glass 0.15 to 0.39 m)
    const stage = byId(report.bays, 'D3').stages.find((entry) => entry.stage === 'S11');
    expect(stage?.patchKNm2).toBeGreaterThan(kN(1200 + 506.684 + 0.15 * 250) + 0.05);
    expect(stage?.patchKNm2).toBeLessThan(kN(1200 + 506.684 + 0.39 * 250) + 0.05);
  });

  it('sills: 30 mm are missing at the north-east door, the other two have 5 and 10 mm to spare', () => {
    const sill = (id: string) => byId(report.edges ?? [], id);
    // Terrace −0.02 along y = 38: 0 and 0.035 above it; path −0.03 at x = 0
    expect(sill('E-door-ne')).toMatchObject({ leastUpstandMm: expect.closeTo(20, 6), requiredMm: 50, zone: 'terrace' });
    expect(sill('E-door-nw').leastUpstandMm).toBeCloseTo(55, 6);
    expect(sill('E-door-w').leastUpstandMm).toBeCloseTo(60, 6);
    const { says, where } = report.findings.find((finding) => finding.rule === 'edge.upstand')!;
    expect(says).toContain('30 mm are missing');
    // The door stands at x = 28 … 30, y = 38
    expect(where.at?.[0]).toBeGreaterThan(28);
    expect(where.at?.[0]).toBeLessThan(30);
    expect(where.at?.[1]).toBe(38);
  });

  it('raised bed: its edge brings 1.70694 kN/m over 9.2 m and stands safely', () => {
    // Per metre: stem 0.08 · 0.42 · 24.525 = 0.82404, slab 0.45 · 0.08 · 24.525 = 0.8829; 2 · (3 + 1.6) m.
    const edgeKN = 1.70694 * 9.2;
    const treesKN = kN(1700 + 1800 + 1800 + 1600 + 1400 + 1300);
    const roundMound = scene.objects?.find(({ id }) => id === 'W1');
    const { line } = roundMound as { line: readonly (readonly [number, number])[] };
    const lengthM = line.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - line[i][0], y - line[i][1]), 0);
    // Low wall 3 kN/m, seat wall 7 m of 3.2 kN/m, planters 2 · 2 m² of 4 and 1.5 m² of 3 kN/m²
    expect(report.deck.objectsKN).toBeCloseTo(edgeKN + treesKN + 3 * lengthM + 22.4 + 16 + 4.5, 6);
    // Soil 0.37 · 0.42 · 14.2245 = 2.2104873; thrust 14.2245 · 0.25/6 + 2 · 0.5/3 = 0.92602083, its moment 0.182114583;
    // weights' moment 0.0329616 + 0.1986525 + 0.58577913 = 0.81739323; all per metre, with 3.9174273 kN/m on the base.
    const [{ bare, permittedKPa }] = report.walls ?? [];
    expect(bare.slidingRatio).toBeCloseTo((0.5 * 3.9174273) / 0.92602083, 5);
    expect(bare.overturningRatio).toBeCloseTo(0.81739323 / 0.182114583, 5);
    // e = 0.225 − 0.63527865/3.9174273 = 0.0628324 m, within 0.075: 8.705394 · (1 + 6 · 0.0628324/0.45) kPa
    expect(bare.pressure?.maxKPa).toBeCloseTo(15.9985, 3);
    // Foam glass and the element below it alike
    expect(permittedKPa).toBe(150);
  });

  it('set-up area on the lane: 12 by 4 m on 1 % of fall, in bays that list the appliance', () => {
    const [area] = report.setUpAreas ?? [];
    expect(area).toMatchObject({
      id: 'U1',
      onDeckM2: expect.closeTo(48, 9),
      insideWidthM: expect.closeTo(4, 6),
      standing: [],
      stepMm: null,
    });
    expect(area.steepestPercent).toBeCloseTo(1, 9);
    expect(area.bays.map(({ bay, vehiclePermitted }) => [bay, vehiclePermitted])).toEqual([
      ['B1', true],
      ['C1', true],
    ]);
    // 16 t stand in either bay of 9 · 9.5 m
    for (const { kNm2 } of area.bays) expect(kNm2).toBeCloseTo(kN(16000) / 85.5, 9);
  });

  it('water: the ridge at x = 22.5 parts the two overflows, just over the crests of the valleys', () => {
    // West 22.5 · 38 − 9; east 22.5 · 38 − 13.75 − 10.5
    const [west, east] = report.water?.overflows ?? [];
    expect([west.areaM2, east.areaM2]).toEqual([expect.closeTo(846, 0), expect.closeTo(830.75, 0)]);
    // −0.765 over the outlets at −0.81: 45 mm in the middle of the pit, a little less at the centre of a cell
    expect(west.depthMm).toBeGreaterThan(40);
    expect(west.depthMm).toBeLessThan(45);
    for (const { utilisation } of [west, east]) expect(utilisation).toBeLessThan(0.9);
  });

  it('has the faults it was drawn with, and no others', () => {
    expect(told(report)).toEqual([
      'stop load.permanent E3',
      'stop load.stage D3 S11',
      'stop load.stage E3 S11',
      'stop load.stage E3 S12',
      'stop edge.upstand terrace',
      'check load.basis B4',
      // Fire appliance on a grass grid of 50 mm: the spread patch passes on the bedding, the elastic second opinion does not
      'check stress.layer lane',
      // The loader that lays the base course must not come onto bare foam glass: 187 kPa of tyre on 150
      'check stress.layer lane S7',
      // The same appliance on the same bedding where it is set up
      'check stress.layer lane',
      // 300 mm of base course
      'note depth.lift lane',
      // Level lane, terrace and paths: told, and meant so
      'note level.fall lane',
    ]);
  });
});
