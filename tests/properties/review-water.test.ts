/** Faults that a review of the water found, each with the deck it was found on; numbers by hand. */

import { describe, expect, it } from 'vitest';
import type { Point3M, SceneEdge, SceneFile, SceneMaterial, SceneOutlet } from '../../src/model/scene-file.ts';
import { bay, buildUp, findingsOf, MATERIALS, read, rect, type SceneParts, sceneOf, zone } from '../helpers/scene-builder.ts';

/** Falls 2 % towards x = 0. */
const fallTo0 = (lengthM: number, lowM = 0): { spots: Point3M[] } => ({
  spots: [
    [0, 0, lowM],
    [lengthM, 0, lowM + 0.02 * lengthM],
    [lengthM, 4, lowM + 0.02 * lengthM],
    [0, 4, lowM],
  ],
});
const rain = { designLpsHa: 300, extremeLpsHa: 600, source: 'made up' };
const outlet = (more: Partial<SceneOutlet> = {}): SceneOutlet => ({ id: 'O', kind: 'outlet', at: [0.1, 2], lps: 5, ...more });
const overflow = (more: Partial<SceneOutlet> = {}): SceneOutlet => ({
  id: 'V',
  kind: 'overflow',
  at: [0.1, 3],
  lps: 5,
  invertM: 0.15,
  ...more,
});
const DRAIN: SceneMaterial = {
  id: 'drain',
  name: 'Drain',
  role: 'drainage fill',
  density: { dry: 1000, saturated: 1200 },
  porePercent: 30,
  permeabilityMs: 0.01,
};

const deckOf = (outlets: readonly SceneOutlet[], parts: SceneParts = {}, lengthM = 6): SceneFile =>
  sceneOf({
    rain,
    materials: [...MATERIALS, DRAIN],
    buildups: [{ ...buildUp('fill', [{ material: 'drain', thicknessMm: 100 }]), runoff: { peak: 0.5, annual: 0.3 } }],
    zones: [zone('Z', rect(0, 0, lengthM, 4), 'fill')],
    ...parts,
    deck: { outline: rect(0, 0, lengthM, 4), bays: [bay('B', rect(0, 0, lengthM, 4))], levels: fallTo0(lengthM), outlets, ...parts.deck },
  });
const waterOf = (scene: SceneFile) => {
  const { report } = read(scene);
  if (!report.water) throw new Error('no water');
  return { ...report.water, outlets: report.outlets ?? [] };
};

describe('drainage flow', () => {
  it('tells no flow, and no NaN, where water finds no way out', () => {
    for (const outlets of [[], [outlet({ at: [-3, 2] })]]) {
      const scene = deckOf(outlets);
      expect(waterOf(scene).zones[0].drain).toBeNull();
      expect(findingsOf(read(scene), 'water.flow')).toEqual([]);
    }
  });

  it('of others’ water in a zone that sheds none itself is not 0 high', () => {
    const none = { ...buildUp('none', [{ material: 'drain', thicknessMm: 100 }]), runoff: { peak: 0, annual: 0 } };
    const all = { ...buildUp('all', [{ material: 'drain', thicknessMm: 100 }]), runoff: { peak: 1, annual: 1 } };
    const zones = [zone('low', rect(0, 0, 3, 4), 'none'), zone('high', rect(3, 0, 20, 4), 'all')];
    const outlets = Array.from({ length: 16 }, (_, i) => outlet({ id: `O${i}`, at: [0.1, 0.125 + 0.25 * i] }));
    const [low, high] = waterOf(deckOf(outlets, { buildups: [none, all], zones }, 20)).zones;
    // 17 m at 300 l/(s·ha): 0.51 l/(s·m); full it carries 0.01 · 0.1 · 0.02 · 1000 = 0.02, so water must stand over 100 mm.
    expect(low.drain?.flowLsm).toBeCloseTo(0.51, 9);
    expect(low.drain?.capacityLsm).toBeCloseTo(0.02, 9);
    expect(low.drain?.headMm).toBeCloseTo(high.drain?.headMm ?? 0, 6);
    expect(low.drain?.headMm).toBeGreaterThan(100);
  });

  it('is told of a zone narrower than a cell too', () => {
    const strip = [zone('strip', rect(0, 0, 6, 0.2), 'fill'), zone('rest', rect(0, 0.2, 6, 4), 'fill')];
    const outlets = Array.from({ length: 16 }, (_, i) => outlet({ id: `O${i}`, at: [0.1, 0.125 + 0.25 * i] }));
    // 300 · 0.5 · 6 / 10 000
    expect(waterOf(deckOf(outlets, { zones: strip })).zones[0].drain?.flowLsm).toBeCloseTo(0.09, 9);
  });
});

describe('what is not counted', () => {
  it('has no flow and no use, where 0 % would read as enough', () => {
    const { invertM: _, ...levelless } = overflow();
    const { outlets, overflows } = waterOf(deckOf([outlet(), levelless, outlet({ id: 'off', at: [-3, 2] })]));
    expect(outlets[0].designLps).toBeCloseTo(0.36, 9);
    expect(outlets.slice(1)).toMatchObject([
      { id: 'V', designLps: null, utilisation: null },
      { id: 'off', designLps: null, utilisation: null },
    ]);
    expect(overflows).toMatchObject([{ id: 'V', dutyLps: null, utilisation: null, depthMm: null }]);
  });

  it('levels that are missing are told', () => {
    const { levels: _, ...deck } = deckOf([outlet(), overflow()]).deck;
    const found = findingsOf(read({ ...deckOf([outlet(), overflow()]), deck }), 'water.outlet');
    expect(found).toMatchObject([{ severity: 'check', says: expect.stringContaining('no levels of the membrane') }]);
    expect(findingsOf(read(deckOf([outlet(), overflow()])), 'water.outlet')).toEqual([]);
  });
});

describe('an outlet beside a low line', () => {
  // A gutter along y = 2 falls 2 % to x = 0, both sides fall 5 % into it. O2 stands at the end, O1 half way: in the gutter it takes the
  // water of x > 6, 24 m²; a cell beside it the gutter runs past it.
  const side = (x: number, y: number): Point3M => [x, y, 0.02 * x + 0.05 * Math.abs(y - 2)];
  const low: Point3M[] = [side(0, 2), side(12, 2)];
  const levels = { spots: [side(0, 0), side(12, 0), side(0, 4), side(12, 4)], breaklines: [low] };
  const at = (y: number) =>
    read(
      // The gutter lies on the border of two rows of cells, which carry half each: at 2.3 the outlet stands beside one, at 3.5 clear of both.
      deckOf(
        [outlet({ id: 'O1', at: [6.1, y] }), outlet({ id: 'O2', at: [0.1, 2] }), overflow()],
        { grid: { cellM: 0.2 }, deck: { levels } },
        12,
      ),
    );
  const passed = (y: number) => findingsOf(at(y), 'water.outlet').filter(({ says }) => says.includes('passes it within one cell'));

  it('is told, as nobody knows which of them takes the water', () => {
    const [found] = passed(2.3);
    expect(found).toMatchObject({ severity: 'check', where: { object: 'O1' } });
    // From x > 6 come 24 m² · 0.5 = 12 m², half of them in each row: 6 m² and what else joins on the way past the outlet.
    expect(found.value).toBeGreaterThan(5);
    expect(found.value).toBeLessThan(13);
  });

  it('is not where no stream is near', () => {
    expect(passed(3.5)).toEqual([]);
  });
});

describe('an edge given lower than the deck', () => {
  const edge = (kind: SceneEdge['kind'], membraneTopM: number): SceneEdge => ({
    id: 'E',
    kind,
    membraneTopM,
    line: [
      [0, 0],
      [0, 4],
    ],
  });
  const scene = (kind: SceneEdge['kind'], topM: number) =>
    deckOf([outlet({ at: [0.3, 2] }), overflow({ invertM: 0.25 })], { deck: { edges: [edge(kind, topM)], levels: fallTo0(6, 0.1) } });

  it('takes water in any rain, which is told', () => {
    const { outlets } = waterOf(scene('upstand', 0.05));
    const [found] = findingsOf(read(scene('upstand', 0.05)), 'water.outlet');
    expect(found).toMatchObject({ severity: 'check', where: { object: 'E' } });
    // What outlets do not get of the 24 m² the edge does.
    expect(found.value).toBeCloseTo(24 - outlets[0].catchmentM2, 6);
    expect(found.says).toContain('drain over upstand E in any rain');
    expect(findingsOf(read(scene('threshold', 0.05)), 'water.outlet')).toMatchObject([{ severity: 'stop' }]);
  });

  it('that is higher takes none, and nothing is told', () => {
    expect(waterOf(scene('upstand', 0.35)).outlets[0].catchmentM2).toBeCloseTo(24, 9);
    expect(findingsOf(read(scene('upstand', 0.35)), 'water.outlet')).toEqual([]);
  });
});

describe('an outlet set above the membrane', () => {
  const scene = deckOf([outlet({ invertM: 0.05 }), overflow()]);

  it('leaves water standing up to its level', () => {
    // 2 %: the lowest cells' centres lie at 0.0025, so 47.5 mm; wet are the columns up to 0.0475, ten of 1 m².
    const [pond] = waterOf(scene).ponds;
    expect(pond.levelM).toBeCloseTo(0.05, 5);
    expect(pond.depthMm).toBeCloseTo(47.5, 2);
    expect(pond.areaM2).toBeCloseTo(10, 9);
    // Depths 47.5, 42.5 … 2.5 mm on 1 m² each: 250 l, and 30 % pores.
    expect(pond.bareLitres).toBeCloseTo(250, 1);
    expect(pond.litres).toBeCloseTo(75, 1);
    expect(findingsOf(read(scene), 'water.pond')).toMatchObject([
      { severity: 'check', value: expect.closeTo(47.5, 2), says: expect.stringContaining('Outlet O takes water only from 0.050 m on') },
    ]);
  });

  it('still gets all of the deck’s water; one in a sump leaves none standing', () => {
    expect(waterOf(scene).outlets[0].catchmentM2).toBeCloseTo(24, 9);
    expect(waterOf(deckOf([outlet({ invertM: -0.1 }), overflow()])).ponds).toEqual([]);
  });
});

describe('water that stays with every outlet at work', () => {
  // Falls away from the outlet: cells' centres at 0.0025 … 0.1175, water to the outlet's own level at x = 5.9, 0.118, is held back.
  const deck = (permanentKNm2: number) =>
    deckOf([outlet({ at: [5.9, 2] }), overflow()], { deck: { bays: [bay('B', rect(0, 0, 6, 4), { permanentKNm2 })] } });
  // 100 mm of 1200 kg/m³: 1.1772 kN/m². The window at the low end, four columns: depths 115, 110, 105, 100 mm at the least; pores of 30 mm.
  const garden = (1200 * 0.1 * 9.81) / 1000;

  it('stops where its weight takes a bay beyond what is permitted', () => {
    const found = findingsOf(read(deck(garden + 0.2)), 'water.pond');
    const pond = found.find(({ says }) => says.includes('every outlet at work'));
    expect(pond).toMatchObject({ severity: 'stop', limit: 100, where: { bay: 'B' } });
    expect(pond?.value).toBeGreaterThan(100);
  });

  it('is a check with its weight where the bay bears it', () => {
    const found = findingsOf(read(deck(garden + 1)), 'water.pond');
    expect(found.map(({ severity }) => severity)).toEqual(['check']);
    expect(found[0].says).toContain("is in no bay's load");
  });

  it('weighs what a window of 1 m × 1 m has of it', () => {
    const { ponds } = waterOf(deck(garden + 0.2));
    const level = ponds[0].levelM;
    // Best window at x 0 … 0.625 (centre 0.125), or 0 … 1: the first has the deepest water. Two and a half columns.
    const pores = (depthM: number) => 0.3 * Math.min(depthM, 0.1) + Math.max(0, depthM - 0.1);
    const columnM = (i: number) => pores(level - 0.02 * (0.125 + 0.25 * i));
    const windowM = (0.25 * columnM(0) + 0.25 * columnM(1) + 0.125 * columnM(2)) / 0.625;
    const pond = findingsOf(read(deck(garden + 0.2)), 'water.pond').find(({ says }) => says.includes('every outlet at work'));
    expect(pond?.value).toBeCloseTo((100 * (garden + 9.81 * windowM)) / (garden + 0.2), 6);
  });
});
