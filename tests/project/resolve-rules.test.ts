/** What the rules get to see of a scene: limits, wheels, make-up layers as they come out, soil of trees. Numbers by hand. */

import { describe, expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../src/catalogue/rule-limits.ts';
import type { SceneDeck, SceneFile } from '../../src/model/scene-file.ts';
import { materialLookup } from '../../src/project/materials.ts';
import { ruleLimits, treeFacts, zoneFacts } from '../../src/project/resolve-rules.ts';
import { buildUp, findingsOf, MAKE_UP, ON_SOUND, read, rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

/** Deck of 4 m × 3 m that rises by 0.1 m per metre along x. */
const RISING: Partial<SceneDeck> = {
  levels: {
    spots: [
      [0, 0, 0],
      [4, 0, 0.4],
      [4, 3, 0.4],
      [0, 3, 0],
    ],
  },
};

function zones(scene: SceneFile) {
  return zoneFacts(scene, read(scene).evaluation, materialLookup(scene));
}

describe('limits', () => {
  it('are the starting values where the scene gives none', () => {
    expect(ruleLimits()).toEqual(DEFAULT_LIMITS);
  });

  it('are replaced one by one, with the source entered', () => {
    const limits = ruleLimits({ treeSoilMm: 900, substrateMm: { lawn: 200, vines: 300 }, source: 'planting plan' });
    const entered = { document: 'planting plan', grade: 'entered' };
    expect(limits.treeSoilMm).toEqual({ value: 900, source: entered });
    expect(limits.substrateMm.get('lawn')).toEqual({ value: 200, source: entered });
    expect(limits.substrateMm.get('vines')?.value).toBe(300);
    expect(limits.substrateMm.get('perennials')).toBe(DEFAULT_LIMITS.substrateMm.get('perennials'));
    expect(limits.treeSoilM3).toBe(DEFAULT_LIMITS.treeSoilM3);
  });

  it('entered without a source say so', () => {
    expect(ruleLimits({ liftMm: 200, source: ' ' }).liftMm.source).toEqual({
      document: 'value in the scene file, no source given',
      grade: 'entered',
    });
  });
});

describe('wheels', () => {
  /** Zones 0 … 2 and 2 … 4 m; a lane up and down at x. */
  const driven = (x: number, widthM?: number, vehicle = 'wheel-loader-2t') => {
    const scene = sceneOf({
      zones: [zone('A', rect(0, 0, 2, 3), 'soil-100'), zone('B', rect(2, 0, 4, 3), 'soil-100')],
      traffic: [
        {
          id: 'F',
          vehicle,
          route: [
            [x, 0.5],
            [x, 2.5],
          ],
          ...(widthM === undefined ? {} : { widthM }),
        },
      ],
    });
    return zones(scene).map((facts) => facts.trafficked);
  };

  it('run where the lane covers more than 0.05 m² of the zone', () => {
    // 1.5 ± 0.5 ends where B begins
    expect(driven(1.5, 1)).toEqual([true, false]);
    // 1.52 ± 0.5: 0.02 · 2 = 0.04 m² of B; 1.53: 0.06 m²
    expect(driven(1.52, 1)).toEqual([true, false]);
    expect(driven(1.53, 1)).toEqual([true, true]);
  });

  it('need the width of the vehicle where none is drawn', () => {
    // The fire appliance is 2.5 m wide: 1 ± 1.25 reaches 0.25 m into B
    expect(driven(1, undefined, 'fire-16t')).toEqual([true, true]);
    expect(driven(1, 1, 'fire-16t')).toEqual([true, false]);
  });

  it('turn with the route, and spare a hole', () => {
    const holed = zone('A', rect(0, 0, 4, 3), 'soil-100', { holes: [rect(1, 1, 3, 2)] });
    const route = (points: [number, number][]) =>
      zones(sceneOf({ zones: [holed], traffic: [{ id: 'F', vehicle: 'fire-16t', route: points, widthM: 0.5 }] }))[0].trafficked;
    expect(
      route([
        [1.5, 1.5],
        [2.5, 1.5],
      ]),
    ).toBe(false);
    expect(
      route([
        [1.5, 1.5],
        [2.5, 1.5],
        [2.5, 2.5],
      ]),
    ).toBe(true);
  });
});

describe('layers', () => {
  it('come with their thickness, a make-up layer with its least and greatest over the zone', () => {
    // Deck rising from 0 to 0.4 over 4 m: centres 0.125 … 3.875 lie at 0.0125 … 0.3875; finish 0.6 less 0.11: 0.4775 … 0.1025 m
    const scene = sceneOf({
      deck: RISING,
      buildups: [MAKE_UP],
      zones: [zone('Z1', rect(0, 0, 4, 3), 'make-up', { finish: { kind: 'level', levelM: 0.6 } })],
    });
    const [sheet, light, soil] = zones(scene)[0].layers;
    expect([sheet.leastM, soil.greatestM]).toEqual([0.01, 0.1]);
    expect([light.leastM, light.greatestM]).toEqual([expect.closeTo(0.1025, 9), expect.closeTo(0.4775, 9)]);
  });

  it('come with role, orientation, infill, voids and what the material says of organic matter', () => {
    const scene = sceneOf({
      buildups: [
        buildUp('b', [
          { material: 'element', orientation: 'drained' },
          { material: 'light', infill: true },
          { material: 'substrate-subsoil', thicknessMm: 200 },
        ]),
      ],
      zones: [zone('Z1', rect(0, 0, 4, 3), 'b')],
    });
    expect(zones(scene)[0].layers).toMatchObject([
      { name: 'Element', role: 'drainage element', orientation: 'drained', voidLm2: 40, retentionLm2: 20, infill: false, mineral: false },
      { role: 'light fill', orientation: null, infill: true, leastM: 0, mineral: false },
      { role: 'substrate', mineral: true },
    ]);
  });

  it('of a zone beyond the deck are not looked at', () => {
    expect(
      zones(sceneOf({ zones: [zone('Z1', rect(0, 0, 4, 3), 'soil-100'), zone('far', rect(9, 9, 10, 10), 'soil-100')] })).map((z) => z.id),
    ).toEqual(['Z1']);
  });
});

describe('soil of trees', () => {
  const tree = (id: string, at: [number, number]) => ({ kind: 'tree', id, at, massKg: 900, spreadM: 1 }) as const;
  const soils = (scene: SceneFile) => treeFacts(scene, read(scene).evaluation);

  it('is the depth at its place and its share of the zone', () => {
    // Zone A 2 · 3 · 0.1 = 0.6 m³ for two trees; B 0.6 m³ for one; none for the tree on the bare strip
    const scene = sceneOf({
      zones: [zone('A', rect(0, 0, 2, 3), 'soil-100'), zone('B', rect(2, 0, 3.5, 3), 'soil-100')],
      objects: [tree('T1', [0.5, 0.5]), tree('T2', [1.5, 2.5]), tree('T3', [2.5, 1]), tree('T4', [3.75, 1])],
    });
    expect(soils(scene).map((of) => [of.id, of.zone, of.soilM, of.shareM3, of.sharedBy])).toEqual([
      ['T1', 'A', 0.1, expect.closeTo(0.3, 9), 2],
      ['T2', 'A', 0.1, expect.closeTo(0.3, 9), 2],
      ['T3', 'B', 0.1, expect.closeTo(0.45, 9), 1],
      ['T4', null, 0, 0, 1],
    ]);
  });

  it('follows a substrate that makes up levels', () => {
    // Soil as make-up on a deck rising 0.1 per metre, finish at 0.6: at x = 1.1 the cell's centre is 1.125, soil 0.6 − 0.1125 = 0.4875;
    // mean over the zone 0.6 − 0.2 = 0.4, on 12 m² 4.8 m³
    const scene = sceneOf({
      deck: RISING,
      buildups: [buildUp('wedge', [{ material: 'soil', thicknessMm: { min: 50, max: 900, nominal: 300 } }])],
      zones: [zone('Z1', rect(0, 0, 4, 3), 'wedge', { finish: { kind: 'level', levelM: 0.6 } })],
      objects: [tree('T', [1.1, 1.1])],
    });
    expect(soils(scene)).toMatchObject([{ soilM: expect.closeTo(0.4875, 9), shareM3: expect.closeTo(4.8, 9) }]);
  });

  it('counts nothing that is no substrate, and stands in the file’s coordinates', () => {
    const outline = rect(512_345, 5_812_345, 512_349, 5_812_348);
    const scene = sceneOf({
      deck: { outline },
      buildups: [MAKE_UP],
      zones: [zone('Z1', outline, 'make-up')],
      objects: [tree('T', [512_347, 5_812_346])],
    });
    expect(soils(scene)).toMatchObject([{ at: [512_347, 5_812_346], soilM: 0.1, shareM3: expect.closeTo(1.2, 9) }]);
  });

  it('over an opening there is none', () => {
    const scene = sceneOf({ deck: { openings: [rect(1, 1, 2, 2)] }, objects: [tree('T', [1.5, 1.5])] });
    expect(soils(scene)).toMatchObject([{ zone: 'Z1', soilM: 0 }]);
  });
});

describe('findings in the report', () => {
  it('none for a sound build-up; one more for a membrane that roots pass', () => {
    expect(read(sceneOf(ON_SOUND)).report.findings).toEqual([]);
    const leaky = read(sceneOf({ ...ON_SOUND, deck: { rootResistant: false } }));
    expect(leaky.report.findings.map((finding) => [finding.rule, finding.severity, finding.where])).toEqual([
      ['order.root', 'stop', { zone: 'Z1' }],
    ]);
  });

  it('follow a limit of the scene', () => {
    const lawn = { ...SOIL_100, vegetation: { form: 'lawn', kNm2: 0.05 } };
    const at = (limits: SceneFile['limits']) =>
      findingsOf(read(sceneOf({ buildups: [lawn], ...(limits ? { limits } : {}) })), 'depth.vegetation');
    // 100 mm of soil: 150 by the table, 80 by the scene
    expect(at(undefined)).toMatchObject([{ value: 100, limit: 150, source: expect.stringContaining('from memory') }]);
    expect(at({ substrateMm: { lawn: 80 } })).toEqual([]);
    expect(at({ substrateMm: { lawn: 120 }, source: 'our gardener' })).toMatchObject([{ limit: 120, source: 'our gardener (entered)' }]);
  });
});
