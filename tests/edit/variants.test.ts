/** Schemes kept beside the one that is judged: nothing is lost, and each comes out as if it were opened alone. */

import { describe, expect, it } from 'vitest';
import { kept, nextVariantId, renamedVariant, takenOver, withoutVariant } from '../../src/edit/variants.ts';
import type { ScenePatch } from '../../src/model/history.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { Session } from '../../src/project/session.ts';
import { GRAVITY, rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

const FILE = sceneOf({ buildups: [SOIL_100], zones: [zone('A', rect(0, 0, 4, 3), 'soil-100')] });
const NOTE = { kind: 'parts', act: 'exchange', part: 'scene', names: [] } as const;

function opened() {
  const session = new Session();
  session.open(JSON.stringify(FILE));
  const edit = (make: (scene: SceneFile) => ScenePatch) => {
    const { project, issues } = session.edit(make(session.opened().scene), NOTE);
    if (!project) throw new Error(JSON.stringify(issues));
    return project;
  };
  return { session, edit, scene: () => session.opened().scene };
}

describe('variants', () => {
  it('are lettered, and a letter that became free is taken again', () => {
    const { edit, scene } = opened();
    for (const name of ['one', 'two', 'three']) edit((now) => kept(now, name));
    expect(scene().variants?.map(({ id }) => id)).toEqual(['A', 'B', 'C']);
    edit((now) => withoutVariant(now, 'B'));
    expect(nextVariantId(scene().variants ?? [])).toBe('B');
    edit((now) => renamedVariant(now, 'C', { name: 'light', says: 'less soil' }));
    expect(scene().variants?.[1]).toMatchObject({ id: 'C', name: 'light', says: 'less soil' });
    edit((now) => withoutVariant(withVariants(now, withoutVariant(now, 'A')), 'C'));
    expect('variants' in scene()).toBe(false);
  });

  it('taken over give the report that the kept scheme gave, and keep the one they replace', () => {
    const { session, edit, scene } = opened();
    const before = session.opened().report.deck;
    edit((now) => kept(now, '100 mm'));
    session.setThickness('soil-100', 0, 250);
    const heavy = session.opened().report.deck;
    edit((now) => takenOver(now, 'A', '250 mm'));
    expect(session.opened().report.deck).toEqual(before);
    expect(scene().variants?.map(({ name }) => name)).toEqual(['100 mm', '250 mm']);
    // Both are kept now: going back and forth adds none.
    edit((now) => takenOver(now, 'B', 'again'));
    expect(session.opened().report.deck).toEqual(heavy);
    expect(scene().variants).toHaveLength(2);
    session.travel('undo');
    expect(session.opened().report.deck).toEqual(before);
  });

  it('take out what they do not have', () => {
    const { edit, scene } = opened();
    edit((now) => kept(now, 'bare'));
    edit(() => ({ objects: [{ kind: 'tree', id: 'T1', at: [1, 1], massKg: 500, spreadM: 1 }] }));
    edit((now) => takenOver(now, 'A', 'with a tree'));
    expect('objects' in scene()).toBe(false);
  });
});

describe('comparison with a variant', () => {
  it('tells load, utilisation and masses by hand', () => {
    const { session, edit } = opened();
    edit((now) => kept(now, 'thin'));
    session.setThickness('soil-100', 0, 200);
    const answer = session.compareVariant('A');
    if (!answer.ok) throw new Error(JSON.stringify(answer.issues));
    const { before, after, takeOff, report, changes } = answer.comparison;
    // Soil of 1500 kg/m³ wet and 1000 dry, 200 and 100 mm on 12 m².
    expect(before.saturatedKN).toBeCloseTo(1.5 * GRAVITY * 0.2 * 12, 9);
    expect(after.saturatedKN).toBeCloseTo(1.5 * GRAVITY * 0.1 * 12, 9);
    expect(after.dryKN).toBeCloseTo(1 * GRAVITY * 0.1 * 12, 9);
    // Permitted are 12 kN/m².
    expect(before.worst?.utilisation).toBeCloseTo((1.5 * GRAVITY * 0.2) / 12, 9);
    expect(report.bays[0].utilisation.after).toBeCloseTo((1.5 * GRAVITY * 0.1) / 12, 9);
    expect(takeOff.map(({ placedM3 }) => [placedM3.before, placedM3.after])).toEqual([[expect.closeTo(2.4, 9), expect.closeTo(1.2, 9)]]);
    expect(changes).toHaveLength(1);
    expect(changes[0]).toContain('200');
    // 1.4715 kN/m² lighter on the whole deck.
    const map = session.map('difference', null, 'A');
    expect(map.classM2?.[map.names?.indexOf('lighter 0.5') ?? -1]).toBeCloseTo(12, 9);
    expect(map.classM2?.reduce((sum, areaM2) => sum + areaM2, 0)).toBeCloseTo(12, 9);
  });

  it('of a scheme that no scene could be is refused with the messages of a file', () => {
    const { session, edit } = opened();
    edit((now) => {
      const { variants } = kept(now, 'broken');
      const [first] = variants ?? [];
      if (!first) throw new Error('nothing was kept');
      return { variants: [{ ...first, scheme: { ...first.scheme, zones: [zone('A', rect(0, 0, 4, 3), 'nothing')] } }] };
    });
    const answer = session.compareVariant('A');
    expect(answer.ok || answer.issues.map(({ code }) => code)).toEqual(['UNKNOWN_ID']);
    // Taking it over is refused too, and leaves the scene alone.
    expect(session.edit(takenOver(session.opened().scene, 'A', 'x'), NOTE).project).toBeNull();
    expect(session.opened().scene.zones[0].buildup).toBe('soil-100');
  });
});

function withVariants(scene: SceneFile, { variants }: ScenePatch): SceneFile {
  return { ...scene, variants: variants ?? [] };
}
