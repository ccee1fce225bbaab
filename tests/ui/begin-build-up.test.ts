/** What new zones are built up as: as was chosen, and never a build-up that is not there. */

import { describe, expect, it } from 'vitest';
import { remainderFilled } from '../../src/edit/fit-areas.ts';
import { patched } from '../../src/edit/point-lists.ts';
import { isRefused } from '../../src/edit/refusal.ts';
import { buildUpFor, madeWithBuildUp, TEMPLATE_MARK } from '../../src/ui/plan/begin-build-up.ts';
import { rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

const OTHER = { ...SOIL_100, id: 'other' };
const SCENE = sceneOf({
  deck: { outline: rect(0, 0, 10, 4), bays: [] },
  buildups: [SOIL_100, OTHER],
  zones: [zone('Z1', rect(0, 0, 4, 4), SOIL_100.id)],
});
const EMPTY = { ...SCENE, buildups: [], zones: [] };

describe('the build-up of new zones', () => {
  it('is the one chosen before, as long as the scene has it; else the first, or a template', () => {
    expect(buildUpFor(SCENE, 'other')).toBe('other');
    expect(buildUpFor(SCENE, 'gone')).toBe(SOIL_100.id);
    expect(buildUpFor(SCENE, undefined)).toBe(SOIL_100.id);
    expect(buildUpFor(EMPTY, 'gone')).toBe(`${TEMPLATE_MARK}lawn`);
    expect(buildUpFor(EMPTY, `${TEMPLATE_MARK}perennials`)).toBe(`${TEMPLATE_MARK}perennials`);
  });

  const rest = (scene: typeof SCENE, choice: string) => {
    const made = madeWithBuildUp(scene, choice, (now, buildup) => remainderFilled(now, 'zone', { buildup }));
    if (isRefused(made)) throw new RangeError(made.refused);
    return patched(scene, made.patch);
  };

  it('goes to all that is left of the deck', () => {
    const next = rest(SCENE, 'other');
    expect(next.zones.map(({ id, buildup }) => [id, buildup])).toEqual([
      ['Z1', SOIL_100.id],
      ['Z2', 'other'],
    ]);
    expect(next.buildups).toBe(SCENE.buildups);
  });

  it('is begun where it is a template', () => {
    const next = rest(EMPTY, `${TEMPLATE_MARK}lawn`);
    expect(next.buildups).toHaveLength(1);
    expect(next.zones.map(({ buildup }) => buildup)).toEqual([next.buildups[0]!.id]);
  });

  it('is not begun where nothing is made', () => {
    const full = { ...SCENE, zones: [zone('Z1', rect(0, 0, 10, 4), SOIL_100.id)] };
    expect(madeWithBuildUp(full, `${TEMPLATE_MARK}lawn`, (now, buildup) => remainderFilled(now, 'zone', { buildup }))).toEqual({
      refused: 'no gap',
    });
  });
});
