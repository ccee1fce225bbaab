/**
 * Every demo scene opens without a message, and chosen totals are what a hand finds: areas by the shoelace rule from the
 * file's coordinates, loads layer by layer from the catalogue's densities (kg/m² · 9.81/1000), findings by the faults
 * that the scene was drawn with.
 */

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Report } from '../../src/model/report.ts';
import type { PolygonM, SceneFile, SceneZone } from '../../src/model/scene-file.ts';
import { readProject } from '../../src/project/evaluate-project.ts';
import { byId } from '../helpers/scene-builder.ts';

const FOLDER = new URL('../../scenes/', import.meta.url);
const FILES = readdirSync(FOLDER).filter((name) => name.endsWith('.scene.json'));
const TEXTS = new Map(FILES.map((name) => [name, readFileSync(new URL(name, FOLDER), 'utf8')]));

function open(name: string): { scene: SceneFile; report: Report } {
  const { project, issues } = readProject(TEXTS.get(`${name}.scene.json`) ?? '');
  if (!project) throw new Error(issues.map((issue) => `${issue.path}: ${issue.got}`).join('\n'));
  return project;
}

/** Shoelace rule, relative to the first point. */
function areaM2(polygon: PolygonM): number {
  const [[x0, y0]] = polygon;
  const twice = polygon.reduce((sum, [x, y], i) => {
    const [nx, ny] = polygon[(i + 1) % polygon.length];
    return sum + (x - x0) * (ny - y0) - (nx - x0) * (y - y0);
  }, 0);
  return Math.abs(twice) / 2;
}

const zoneAreaM2 = (zone: SceneZone) => areaM2(zone.outline) - (zone.holes ?? []).reduce((sum, hole) => sum + areaM2(hole), 0);

/** Area of all zones with one of these build-ups. */
function laidM2(scene: SceneFile, ...buildups: string[]): number {
  return scene.zones.filter((zone) => buildups.includes(zone.buildup)).reduce((sum, zone) => sum + zoneAreaM2(zone), 0);
}

/** One line per finding: severity, rule, and where it is. */
const told = (report: Report) =>
  report.findings.map(({ severity, rule, where: { bay, zone, stage, object } }) =>
    [severity, rule, bay, zone, stage, object].filter((word) => word !== undefined).join(' '),
  );

const kN = (kg: number) => (kg * 9.81) / 1000;

describe('every scene', () => {
  it('is there', () => {
    expect(FILES.sort()).toEqual(['courtyard.scene.json', 'district.scene.json', 'problem-deck.scene.json', 'terrace.scene.json']);
  });

  it.each(FILES)('%s opens without a message, says it is invented, and carries what lies on it', (name) => {
    const { project, issues } = readProject(TEXTS.get(name) ?? '');
    expect(issues).toEqual([]);
    expect(project?.scene.about).toMatch(/invented/);
    const report = project!.report;
    for (const zone of project!.scene.zones) {
      // What lies beyond the deck is left out; only one zone does, by 0.3 m · 2.8 m.
      const beyondM2 = zone.id === 'zone-outside' ? 0.84 : 0;
      expect(byId(report.zones, zone.id).areaM2, zone.id).toBeCloseTo(zoneAreaM2(zone) - beyondM2, 6);
    }
  });

  it.each(['terrace', 'courtyard', 'district'])('%s: bays tile the deck, so that their means make the whole weight', (name) => {
    const { report } = open(name);
    const baysKN = report.bays.reduce((sum, bay) => sum + bay.permanent.meanKNm2 * bay.areaM2, 0);
    expect(baysKN / report.deck.saturatedKN).toBeCloseTo(1, 9);
    expect(report.deck.unzonedM2).toBeCloseTo(0, 6);
  });
});

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

  it('worst square metre: at the edging, window centre y = 0.125', () => {
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

  it('has nothing to find', () => {
    expect(told(report)).toEqual([]);
    expect(report.bays.every((bay) => bay.confirmed)).toBe(true);
    expect(scene.stages?.map((stage) => stage.id)).toEqual(report.stages.map((stage) => stage.id));
  });
});

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
    const planted = laidM2(scene, 'lawn', 'meadow', 'perennials', 'shrubs', 'mound-light', 'mound-deep');
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

  it('has the faults it was drawn with, and no others', () => {
    expect(told(report)).toEqual([
      'stop load.permanent E3',
      'stop load.stage D3 S11',
      'stop load.stage E3 S11',
      'stop load.stage E3 S12',
      'stop edge.upstand terrace',
      'check load.basis B4',
      // 300 mm of base course
      'note depth.lift lane',
      // Level lane, terrace and paths: told, and meant so
      'note level.fall lane',
    ]);
  });
});

describe('problem deck', () => {
  const { report } = open('problem-deck');
  /** 3.5 + 0.184 + 1.3 + 0.9 + 0.2 · 1750 kg/m². */
  const GRAVEL = kN(355.884);

  it('areas: 20 · 14, fields of 2.5 · 2.8', () => {
    expect(report.deck.areaM2).toBeCloseTo(280, 9);
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
});

describe('district', () => {
  const { scene, report } = open('district');

  it('deck: 160 · 105 less three corners and six openings of 8 · 5 m', () => {
    // 16800 − 14 · 12/2 − 12 · 15/2 − 12 · 10/2 − 240
    expect(report.deck.areaM2).toBeCloseTo(16326, 6);
    expect(scene.zones.length).toBeGreaterThanOrEqual(120);
  });

  it('trees: 14 of 1800 kg and 53 of 900 kg, 72.9 t', () => {
    expect(report.deck.objectsKN).toBeCloseTo(kN(72_900), 6);
    expect(byId(report.stages, 'S11').placedKN).toBeCloseTo(kN(72_900), 6);
  });

  it('sheets: 3.684 kg/m², on the lane 5.968', () => {
    const lane = laidM2(scene, 'fire-lane');
    expect(byId(report.stages, 'S3').placedKN).toBeCloseTo(kN(3.684 * (16326 - lane) + 5.968 * lane), 4);
  });

  it('drainage fill: 75.4 kg/m² under planting, 18.2 under the lane', () => {
    const planted = laidM2(scene, 'lawn', 'meadow', 'perennials', 'shrubs', 'mound');
    expect(byId(report.stages, 'S5').placedKN).toBeCloseTo(kN(75.4 * planted + 18.2 * laidM2(scene, 'fire-lane')), 4);
  });

  it('lawns: 531.684 kg/m², 0.05 kN/m², and foam glass as thick as the falls ask', () => {
    // 3.5 + 0.184 + 2.5 + 23 + 75.4 + 0.9 + 1.2 + 0.25 · 1600 + 25
    for (const zone of scene.zones.filter((entry) => entry.buildup === 'lawn')) {
      const { saturatedKNm2, makeUpMm } = byId(report.zones, zone.id);
      expect(saturatedKNm2.mean, zone.id).toBeCloseTo(kN(531.684 + ((makeUpMm?.mean ?? 0) / 1000) * 250) + 0.05, 9);
    }
  });

  it('flood: 80 mm are 0.7848 kN/m² everywhere', () => {
    for (const bay of report.bays) {
      expect(bay.stages.find((stage) => stage.stage === 'S2')?.patchKNm2, bay.id).toBeCloseTo(0.7848, 9);
    }
  });

  it('gives places on its own grid, each in its bay', () => {
    for (const bay of report.bays) {
      const outline = scene.deck.bays.find((entry) => entry.id === bay.id)?.outline ?? [];
      const [x, y] = bay.permanent.patchAt;
      expect(x).toBeGreaterThan(Math.min(...outline.map((p) => p[0])));
      expect(x).toBeLessThan(Math.max(...outline.map((p) => p[0])));
      expect(y).toBeGreaterThan(Math.min(...outline.map((p) => p[1])));
      expect(y).toBeLessThan(Math.max(...outline.map((p) => p[1])));
    }
  });

  it('has only the bay without a basis to find, 300 mm of base course to lay in lifts, and level paving', () => {
    expect(told(report)).toEqual(['check load.basis J4', 'note depth.lift lane-1', 'note level.fall lane-1']);
  });
});

function even(value: number) {
  return { min: expect.closeTo(value, 9), mean: expect.closeTo(value, 9), max: expect.closeTo(value, 9) };
}
