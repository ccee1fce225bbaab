/** Edits of any part of a scene: checked like a file, one step per gesture, the rest left alone. */

import { describe, expect, it } from 'vitest';
import type { PartsEdit } from '../../src/model/history.ts';
import { Session } from '../../src/project/session.ts';
import { rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

const FILE = sceneOf({ buildups: [SOIL_100], zones: [zone('A', rect(0, 0, 4, 3), 'soil-100')] });
const MOVED: PartsEdit = { kind: 'parts', act: 'move', part: 'zone', names: ['A'] };
const zones = (widthM: number) => [zone('A', rect(0, 0, widthM, 3), 'soil-100')];

function opened(): Session {
  const session = new Session();
  session.open(JSON.stringify(FILE));
  return session;
}

describe('an edit of parts', () => {
  it('gives the report that the same scene gives when it is opened', () => {
    const session = opened();
    const { project } = session.edit({ zones: zones(2) }, MOVED);
    const fresh = new Session();
    expect(project?.report).toEqual(fresh.open(JSON.stringify({ ...FILE, zones: zones(2) })).project?.report);
    // 2 m × 3 m.
    expect(project?.report.zones[0].areaM2).toBeCloseTo(6, 9);
  });

  it('leaves what it does not name the very same, and takes out what is null', () => {
    const session = opened();
    session.edit({ about: 'for a while' }, { ...MOVED, act: 'change', part: 'scene' });
    const { scene } = session.opened();
    session.edit({ zones: zones(3), about: null }, MOVED);
    expect(session.opened().scene.deck).toBe(scene.deck);
    expect(session.opened().scene.buildups).toBe(scene.buildups);
    expect('about' in session.opened().scene).toBe(false);
  });

  it('that a file could not hold is refused with the same message, and changes nothing', () => {
    const session = opened();
    const crossed = [
      zone(
        'A',
        [
          [0, 0],
          [4, 3],
          [4, 0],
          [0, 3],
        ],
        'soil-100',
      ),
    ];
    const { project, issues } = session.edit({ zones: crossed }, MOVED);
    expect(project).toBeNull();
    expect(issues.map(({ code, line }) => [code, line])).toEqual([['POLYGON_CROSSES_ITSELF', undefined]]);
    expect(session.history().undo).toBeNull();
    expect(session.opened().report.zones[0].areaM2).toBeCloseTo(12, 9);
  });

  it('in one gesture is one step, and none where it ends as it began', () => {
    const session = opened();
    for (const widthM of [3, 2.5, 2]) session.edit({ zones: zones(widthM) }, MOVED, 1);
    expect(session.history().undo).toEqual(MOVED);
    session.travel('undo');
    expect(session.history()).toMatchObject({ undo: null, changed: false });
    for (const widthM of [3, 2.5, 4]) session.edit({ zones: zones(widthM) }, MOVED, 2);
    expect(session.history()).toMatchObject({ undo: null, changed: false });
  });

  it('takes the cells of a changed grid', () => {
    const { project } = opened().edit({ grid: { cellM: 0.5 } }, { ...MOVED, act: 'change', part: 'scene' });
    expect(project?.report.cellM).toBe(0.5);
  });
});
