/** Which run-off coefficient a zone has, and where it comes from. */

import { describe, expect, it } from 'vitest';
import type { SceneBuildUp, SceneMaterial, SceneRain } from '../../src/model/scene-file.ts';
import { materialLookup } from '../../src/project/materials.ts';
import { bareRunoff, zoneRunoffs } from '../../src/project/run-off.ts';
import { buildUp, MATERIALS, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const SURFACES: readonly SceneMaterial[] = [
  ...MATERIALS,
  { id: 'slab', name: 'Slab', role: 'surfacing', density: { dry: 2400, saturated: 2400 }, surface: 'open joints' },
  { id: 'deck', name: 'Boards', role: 'surfacing', areal: { dry: 25, saturated: 30 }, thicknessMm: 88 },
];
const rain = (table?: SceneRain['table']): SceneRain => ({ designLpsHa: 300, extremeLpsHa: 500, ...(table ? { table } : {}) });

const of = (one: SceneBuildUp, table?: SceneRain['table'], fall = 0) => {
  const levels = { spots: [[0, 0, 0] as const, [4, 0, 0] as const, [0, 3, 3 * fall] as const, [4, 3, 3 * fall] as const] };
  const scene = sceneOf({
    materials: SURFACES,
    buildups: [one],
    zones: [zone('Z1', rect(0, 0, 4, 3), one.id)],
    rain: rain(table),
    deck: { levels },
  });
  const { evaluation } = read(scene);
  const { peak, annual, slope } = zoneRunoffs(scene, evaluation, materialLookup(scene))[0];
  return { peak: peak.c, row: peak.row, annual: annual.c, yearRow: annual.row, known: peak.known, slope, source: peak.source };
};
const soil = (thicknessMm: number, more: Partial<SceneBuildUp> = {}) => buildUp('soil', [{ material: 'soil', thicknessMm }], more);

describe('planted', () => {
  it('by the depth of its substrate: 250 mm is 0.4 by DIN and 0.3 by depth, a year 0.4', () => {
    expect(of(soil(250))).toMatchObject({ peak: 0.4, annual: 0.4, row: 'extensive planting from 10 cm at up to 5°' });
    expect(of(soil(250), 'fll-depth')).toMatchObject({ peak: 0.3, annual: 0.4, row: 'planting over 15 to 25 cm at up to 5°' });
  });

  it('by the pitch of the membrane: 10 % are 5.7°', () => {
    expect(of(soil(80), 'din-1986-100', 0.1)).toMatchObject({ peak: 0.7, slope: expect.closeTo(0.1, 6) });
    expect(of(soil(80), 'din-1986-100', 0.08)).toMatchObject({ peak: 0.5 });
  });

  it('by the thinnest place of a make-up layer', () => {
    const range = { min: 100, max: 600, nominal: 400 };
    const one = buildUp('soil', [{ material: 'soil', thicknessMm: range }]);
    expect(of(one).peak).toBe(0.2);
    const scene = sceneOf({
      buildups: [one],
      zones: [{ ...zone('Z1', rect(0, 0, 4, 3), 'soil'), finish: { kind: 'plane', at: [0, 0, 0.5], fallPercent: 10, towardsDeg: 0 } }],
      rain: rain(),
    });
    // 0.5 at y = 0, 0.2 at y = 3
    expect(zoneRunoffs(scene, read(scene).evaluation, materialLookup(scene))[0].peak.c).toBe(0.4);
  });
});

describe('other zones', () => {
  it('paving by what its surfacing is', () => {
    expect(of(buildUp('paving', [{ material: 'slab', thicknessMm: 80 }]))).toMatchObject({ peak: 0.7, annual: 0.6 });
  });

  it("the scene's own values come first, each for itself", () => {
    const own = soil(250, { runoff: { peak: 0.55 } });
    expect(of(own)).toMatchObject({ peak: 0.55, row: null, source: 'the build-up in the scene file', annual: 0.4 });
    expect(of(soil(250, { runoff: { annual: 0.11 } }))).toMatchObject({ peak: 0.4, annual: 0.11, yearRow: null });
  });

  it('where no row fits, all rain is counted and said', () => {
    const boards = buildUp('boards', [{ material: 'deck' }]);
    expect(of(boards)).toMatchObject({ peak: 1, annual: 1, row: null, known: false });
  });

  it('deck without a zone: all of a strong rain, 0.9 of a year', () => {
    const { peak, annual } = bareRunoff(sceneOf({ rain: rain() }));
    expect([peak.c, annual.c]).toEqual([1, 0.9]);
  });
});
