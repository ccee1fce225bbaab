/** Another file against the scene: a scheme for the same deck can be a variant; anything else is a list, load plan first. */

import { describe, expect, it } from 'vitest';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { compareFile } from '../../src/project/compare-file.ts';
import { Session } from '../../src/project/session.ts';
import { bay, ON_SOUND, rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

const STANDS = sceneOf(ON_SOUND);
const OTHER_SCHEME: SceneFile = { ...STANDS, name: 'Other', buildups: [SOIL_100], zones: [zone('Z1', rect(0, 0, 4, 3), 'soil-100')] };
const OTHER_PLAN: SceneFile = { ...OTHER_SCHEME, deck: { ...STANDS.deck, bays: [bay('A1', rect(0, 0, 4, 3), { permanentKNm2: 9 })] } };

describe('compareFile', () => {
  it('keeps the scheme of a file for the same deck, whoever wrote it and however it is looked at', () => {
    const { scheme, groups, name } = compareFile(STANDS, { ...OTHER_SCHEME, about: 'Second thoughts', history: [{ says: 'Read' }] }, 'en');
    expect(name).toBe('Other');
    expect(scheme).toMatchObject({ buildups: OTHER_SCHEME.buildups, zones: OTHER_SCHEME.zones });
    expect(groups.flatMap(({ lines }) => lines)).toContain('build-up soil-100 is new');
  });

  it('takes it out of a file with variants of its own too', () => {
    const variants = [{ id: 'A', name: 'kept there', scheme: { buildups: STANDS.buildups, zones: STANDS.zones } }];
    expect(compareFile(STANDS, { ...OTHER_SCHEME, variants }, 'en').scheme).not.toBeNull();
  });

  it('tells a changed load plan first, and keeps nothing', () => {
    const { scheme, groups } = compareFile(STANDS, OTHER_PLAN, 'en');
    expect(scheme).toBeNull();
    expect(groups[0]).toMatchObject({ title: 'Load plan' });
    expect(groups[0]?.lines).toContain('bay A1: permanentKNm2 before 12 kN/m²; now 9 kN/m²');
    expect(compareFile(STANDS, OTHER_PLAN, 'de').groups[0]?.lines[0]).toMatch(/^Feld A1/);
  });

  it.each<[string, Partial<SceneFile>]>([
    ['rain', { rain: { designLpsHa: 300, extremeLpsHa: 500 } }],
    ['limits', { limits: { liftMm: 200 } }],
    ['probes', { probes: [{ id: 'Q1', at: [1, 1], measuredMm: 300 }] }],
  ])('keeps nothing where %s differ as well: a variant would lose them', (_, over) => {
    expect(compareFile(STANDS, { ...OTHER_SCHEME, ...over }, 'en').scheme).toBeNull();
  });

  it('of the same scene there is nothing to tell', () => {
    expect(compareFile(STANDS, STANDS, 'en')).toEqual({ name: STANDS.name, scheme: null, groups: [] });
  });
});

it('a file that is no scene is refused like one that is opened', () => {
  const session = new Session();
  session.open(JSON.stringify(STANDS));
  expect(session.compareFile('{ "format": "loamdeck-scene" }')).toMatchObject({ ok: false });
  expect(session.compareFile(JSON.stringify(OTHER_SCHEME))).toMatchObject({ ok: true });
  expect(session.opened().scene.buildups).toEqual(STANDS.buildups);
});
