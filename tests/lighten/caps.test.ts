/** A change that breaks a rule when it is thick is taken as thick as the rule lets it be: against every thickness, evaluated one by one. */

import { describe, expect, it } from 'vitest';
import { type Caps, lower, raise } from '../../src/lighten/caps.ts';
import type { SceneFile, SceneLayer, SceneMaterial } from '../../src/model/scene-file.ts';
import { lighten } from '../helpers/lightened.ts';
import { bay, buildUp, findingsOf, MATERIALS, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const OUTLINE = rect(0, 0, 4, 3);
const FILLS: readonly SceneMaterial[] = [
  { id: 'heavy', name: 'Heavy fill', role: 'light fill', density: { dry: 800, saturated: 1000 }, uplift: 'grains' },
  { id: 'foam', name: 'Foam fill', role: 'light fill', density: { dry: 20, saturated: 50 } },
];

/** Sheet of 10 mm, 390 mm of fills, cloth of 5 mm and 200 mm of soil; water up to a level may lift the foam. */
function sceneFor(fills: readonly SceneLayer[], waterLevelM: number): SceneFile {
  return sceneOf({
    materials: [...MATERIALS, ...FILLS],
    flotation: { waterLevelM },
    deck: {
      bays: [bay('A1', OUTLINE, { permanentKNm2: 6.5 })],
      rootResistant: true,
    },
    buildups: [buildUp('bed', [{ material: 'sheet' }, ...fills, { material: 'cloth' }, { material: 'soil', thicknessMm: 200 }])],
    zones: [zone('Z1', OUTLINE, 'bed', { finish: { kind: 'level', levelM: 0.605 } })],
    // Laid in one go: nothing floats while not all lies on it.
    stages: [{ id: 'S1', name: 'All', place: [{ roles: ['protection', 'light fill', 'filter', 'substrate'] }] }],
  });
}

const heavy = (nominal: number) => ({ material: 'heavy', thicknessMm: { min: 50, max: 1000, nominal } });
const floats = (scene: SceneFile) => findingsOf(read(scene), 'float.uplift').some(({ severity }) => severity === 'stop');

describe('foam that floats when it is thick', () => {
  it.each([0.28, 0.3, 0.32, 0.34])('water up to %f m', (waterLevelM) => {
    const thicknesses = Array.from({ length: 30 }, (_, i) => 50 + 10 * i);
    const floating = thicknesses.filter((mm) => floats(sceneFor([{ material: 'foam', thicknessMm: mm }, heavy(390 - mm)], waterLevelM)));
    // What breaks the rule breaks it at more as well.
    expect(thicknesses.slice(-floating.length)).toEqual(floating);
    const most = Math.max(...thicknesses.filter((mm) => !floating.includes(mm)));
    expect(floating.length).toBeGreaterThan(0);
    const [variant] = lighten(read(sceneFor([heavy(390)], waterLevelM)), { aims: ['weight'], fills: ['foam'], means: ['split'] }).variants;
    const foam = variant.zones[0].layers.find(({ material }) => material === 'foam');
    expect(foam?.afterMm?.mean).toBeCloseTo(most, 6);
    expect(floats(variant.scene)).toBe(false);
  });

  it('is told from the thickness on that broke the rule', () => {
    const answer = lighten(read(sceneFor([heavy(390)], 0.3)), { aims: ['weight'], fills: ['foam'], means: ['split'] });
    const foam = answer.variants[0].zones[0].layers.find(({ material }) => material === 'foam');
    expect(answer.leftOut.map(({ change, rule }) => [change, rule])).toEqual([['foam', 'float.uplift']]);
    expect(answer.leftOut[0].fromMm).toBeCloseTo((foam?.afterMm?.mean ?? 0) + 10, 6);
  });
});

describe('a cap', () => {
  it('goes half way to what held, and up again while more is wanted', () => {
    const caps: Caps = new Map();
    lower(caps, 'k', 400);
    expect(caps.get('k')?.mostMm).toBe(200);
    // 200 was wanted and held: half way to 400. 300 broke: half way back.
    expect(raise(caps, 'k', 200)).toBe(true);
    expect(caps.get('k')?.mostMm).toBe(300);
    lower(caps, 'k', 300);
    expect(caps.get('k')?.mostMm).toBe(250);
    // Far less was taken: nobody wants more.
    expect(raise(caps, 'k', 120)).toBe(false);
    expect(raise(caps, 'k', 250)).toBe(true);
  });

  it('ends where what held and what broke lie one step apart, and lets nothing through where nothing is left', () => {
    const caps: Caps = new Map();
    lower(caps, 'k', 100);
    raise(caps, 'k', 90);
    expect(caps.get('k')?.mostMm).toBe(90);
    // What held beside other changes breaks a rule now.
    lower(caps, 'k', 60);
    expect(caps.get('k')).toEqual({ heldMm: 0, brokeMm: 60, mostMm: 30 });
    lower(caps, 'k', 0);
    expect(caps.get('k')?.mostMm).toBe(-1);
    expect(raise(caps, 'other', 50)).toBe(false);
  });
});
