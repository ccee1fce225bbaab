/** From a scene file to the core's numbers. */

import { describe, expect, it } from 'vitest';
import type { SceneFinish, SceneStage } from '../../src/model/scene-file.ts';
import { isConfirmed, resolveScene } from '../../src/project/resolve-scene.ts';
import { bay, byId, rect, type SceneParts, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

const inputOf = (parts: SceneParts, cellM?: number) => resolveScene(sceneOf(parts), { cellM }).input;

describe('finish', () => {
  const finishOf = (finish: SceneFinish) => {
    const resolved = inputOf({ deck: { outline: rect(10, 20, 14, 23) }, zones: [zone('Z', rect(10, 20, 14, 23), 'soil-100', { finish })] })
      .zones[0].finish;
    return (x: number, y: number) =>
      resolved.kind === 'plane'
        ? resolved.z + resolved.slopeX * (x - 10 - resolved.x) + resolved.slopeY * (y - 20 - resolved.y)
        : Number.NaN;
  };

  it.each([
    // 2 % over 3 m to the right and 2 m up from (11, 21, 0.5); bearing clockwise from +y
    ['0°, towards +y: lower with y', 0, 0.5 - 0.02 * 2],
    ['90°, towards +x: lower with x', 90, 0.5 - 0.02 * 3],
    ['180°, towards −y: higher with y', 180, 0.5 + 0.02 * 2],
    ['270°, towards −x: higher with x', 270, 0.5 + 0.02 * 3],
    // (3, 2) · (1, 1)/√2 = 5/√2
    ['45°: along the diagonal', 45, 0.5 - (0.02 * 5) / Math.SQRT2],
  ])('plane falling 2 %% to %s', (_, towardsDeg, z) => {
    const level = finishOf({ kind: 'plane', at: [11, 21, 0.5], fallPercent: 2, towardsDeg });
    expect(level(11, 21)).toBeCloseTo(0.5, 12);
    expect(level(14, 23)).toBeCloseTo(z, 12);
  });

  it('level is the same everywhere', () => {
    expect(finishOf({ kind: 'level', levelM: 0.62 })(13, 22)).toBe(0.62);
  });

  it('spots are a net in local metres; none is by the build-up', () => {
    const zones = [
      zone('S', rect(0, 0, 2, 3), 'soil-100', { finish: { kind: 'spots', spots: [[1, 2, 0.4]] } }),
      zone('B', rect(2, 0, 4, 3), 'soil-100'),
    ];
    const [spots, plain] = inputOf({ zones }).zones;
    expect(spots.finish.kind === 'net' && [...spots.finish.net.spots]).toEqual([1, 2, 0.4]);
    expect(plain.finish).toEqual({ kind: 'build-up' });
  });
});

describe('bays', () => {
  it('keep the limits they give and no others', () => {
    const limits = { totalKNm2: 17, stageKNm2: 14 };
    expect(inputOf({ deck: { bays: [bay('A', rect(0, 0, 4, 3), limits)] } }).bays[0]).toMatchObject({
      permanentKNm2: null,
      imposedKNm2: null,
      totalKNm2: 17,
      stageKNm2: 14,
      confirmed: true,
    });
  });

  it.each([
    ['all three', { document: 'd', revision: 'A', date: '2026-01-01' }, true],
    ['no date', { document: 'd', revision: 'A' }, false],
    ['no revision', { document: 'd', date: '2026-01-01' }, false],
    ['no document', { revision: 'A', date: '2026-01-01' }, false],
    ['a blank one', { document: '  ', revision: 'A', date: '2026-01-01' }, false],
  ])('are confirmed by document, revision and date: %s', (_, basis, confirmed) => {
    expect(isConfirmed({ ...bay('A', rect(0, 0, 1, 1)), basis })).toBe(confirmed);
  });

  it('without a basis are not confirmed', () => {
    expect(isConfirmed({ id: 'A', outline: rect(0, 0, 1, 1) })).toBe(false);
  });
});

describe('stages', () => {
  const objects = [
    { kind: 'block', id: 'P', outline: rect(0, 0, 1, 1), kNm2: 1 },
    { kind: 'block', id: 'Q', outline: rect(0, 0, 1, 1), kNm2: 1 },
  ] as const;
  const zones = [zone('A', rect(0, 0, 2, 3), 'soil-100'), zone('B', rect(2, 0, 4, 3), 'soil-100')];
  const stageOf = (stage: Partial<SceneStage>) => inputOf({ objects, zones, stages: [{ id: 'S', name: 'S', ...stage }] }).stages?.[0];

  it('are derived where the scene has none', () => {
    expect(inputOf({}).stages).toBeNull();
  });

  it('place by role in the zones named, else in all; objects alone place no layers', () => {
    expect(
      stageOf({
        place: [{ zones: ['B'], roles: ['slip'] }, { roles: ['filter'] }, { objects: ['Q'] }, { objects: ['P'], roles: ['bedding'] }],
      })?.place,
    ).toEqual([
      { zones: [1], roles: ['slip'], objects: [] },
      { zones: null, roles: ['filter'], objects: [] },
      { zones: [], roles: [], objects: [1] },
      { zones: null, roles: ['bedding'], objects: [0] },
    ]);
  });

  it('heap loosely: saturated density / compaction factor · g · height', () => {
    // 0.8 m · 1500 kg/m³ / 1.2 · 9.81 = 9.81 kN/m²
    const [pile] = stageOf({ stockpiles: [{ id: 'H', outline: rect(0, 0, 2, 1), material: 'soil', heightM: 0.8 }] })?.stockpiles ?? [];
    expect(pile.kNm2).toBeCloseTo(9.81, 12);
    expect([pile.id, pile.heightM]).toEqual(['H', 0.8]);
  });

  it('flood with 9.81 N per mm and m²: 100 mm are 0.981 kN/m²', () => {
    expect(stageOf({ floodTestMm: 100 })?.floodKNm2).toBeCloseTo(0.981, 12);
    expect(stageOf({})?.floodKNm2).toBe(0);
  });
});

describe('the grid', () => {
  it('takes the call’s cell before the scene’s, and 0.25 m by default', () => {
    expect(inputOf({}).cellM).toBe(0.25);
    expect(inputOf({ grid: { cellM: 0.5 } }).cellM).toBe(0.5);
    expect(inputOf({ grid: { cellM: 0.5 } }, 0.1).cellM).toBe(0.1);
  });

  it('works from a whole-metre origin at the deck', () => {
    const outline = rect(512_345.5, 5_812_345.25, 512_349.5, 5_812_348.25);
    const input = inputOf({ deck: { outline } });
    expect(input.originM).toEqual([512_345, 5_812_345]);
    expect([...input.deck.outer].slice(0, 2)).toEqual([0.5, 0.25]);
  });
});

describe('with the state before', () => {
  const scene = sceneOf({
    zones: [zone('A', rect(0, 0, 2, 3), 'soil-100', { finish: { kind: 'level', levelM: 0.3 } }), zone('B', rect(2, 0, 4, 3), 'thin')],
    buildups: [SOIL_100, { id: 'thin', name: 'thin', layers: [{ material: 'soil', thicknessMm: 50 }] }],
    objects: [{ kind: 'block', id: 'P', outline: rect(0, 0, 1, 1), kNm2: 1 }],
    stages: [{ id: 'S', name: 'S', stockpiles: [{ id: 'H', outline: rect(0, 0, 1, 1), material: 'soil', heightM: 1 }] }],
    deck: { levels: { spots: [[0, 0, 0]] } },
  });
  const before = resolveScene(scene);
  const again = (changed: typeof scene) => resolveScene(changed, { previous: before }).input;

  it('everything unchanged is the very same object, though the file was read anew', () => {
    const now = again(structuredClone(scene));
    const was = before.input;
    expect(now.deck).toBe(was.deck);
    expect(now.levels).toBe(was.levels);
    expect(now.bays[0].region).toBe(was.bays[0].region);
    expect(now.zones[0]).toBe(was.zones[0]);
    expect(now.zones[1]).toBe(was.zones[1]);
    expect(now.objects[0]).toBe(was.objects[0]);
    expect(now.stages?.[0].stockpiles).toBe(was.stages?.[0].stockpiles);
  });

  it('a thickness changes only the zones with that build-up, and not their shapes', () => {
    const thicker = { ...scene.buildups[1], layers: [{ material: 'soil', thicknessMm: 60 }] };
    const now = again({ ...scene, buildups: [SOIL_100, thicker] });
    expect(now.zones[0]).toBe(before.input.zones[0]);
    expect(now.zones[1]).not.toBe(before.input.zones[1]);
    expect(now.zones[1].region).toBe(before.input.zones[1].region);
    expect(now.zones[1].finish).toBe(before.input.zones[1].finish);
    expect(now.zones[1].buildUp.layers[0].thicknessM).toBe(0.06);
  });

  it('a material changes the zones it lies in', () => {
    const materials = (scene.materials ?? []).map((m) => (m.id === 'soil' ? { ...m, density: { dry: 900, saturated: 1400 } } : m));
    const now = again({ ...scene, materials });
    expect(now.zones[0]).not.toBe(before.input.zones[0]);
    // 1400 · 9.81 / 1000
    expect(now.zones[0].buildUp.layers[0].saturatedPerMKNm3).toBeCloseTo(13.734, 12);
    expect(byId(now.zones, 'A').region).toBe(before.input.zones[0].region);
  });
});
