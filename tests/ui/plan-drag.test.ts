/** Drags in the plan, by hand: two zones side by side over a bay as large as the left one. */

import { describe, expect, it } from 'vitest';
import { planShapes } from '../../src/edit/plan-shapes.ts';
import { patched } from '../../src/edit/point-lists.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { changedShapes, type Drag, type DragRules, dragged, dropped, joined } from '../../src/ui/facts/plan-drag.ts';
import { bay, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const SCENE: SceneFile = sceneOf({
  deck: { outline: rect(0, 0, 10, 4), bays: [bay('A1', rect(0, 0, 5, 4))] },
  zones: [zone('Z1', rect(0, 0, 5, 4), 'sound'), zone('Z2', rect(5, 0, 10, 4), 'sound')],
});
const TOGETHER: DragRules = { shared: true, isLocked: () => false };
const ALONE: DragRules = { ...TOGETHER, shared: false };
const EDGE: Drag = { kind: 'edge', of: { part: 'zone', id: 'Z1' }, edge: { a: [5, 0], b: [5, 4] } };

const once = (drag: Drag, to: readonly [number, number], rules: DragRules) => patched(SCENE, dropped(SCENE, drag, to, rules));
const xsOf = (scene: SceneFile, i: number) => [...new Set(scene.zones[i]!.outline.map(([x]) => x))].sort((a, b) => a - b);

describe('an edge', () => {
  it('comes to lie where the pointer is, in both zones', () => {
    const next = once(EDGE, [6.25, 1], TOGETHER);
    expect([xsOf(next, 0), xsOf(next, 1)]).toEqual([
      [0, 6.25],
      [6.25, 10],
    ]);
    expect(next.deck).toBe(SCENE.deck);
  });

  it('moves in one alone where points do not move together, or the sheet is locked', () => {
    expect(xsOf(once(EDGE, [6, 1], ALONE), 1)).toEqual([5, 10]);
    expect(xsOf(once(EDGE, [6, 1], { shared: true, isLocked: () => true }), 1)).toEqual([5, 10]);
  });
});

describe('a corner', () => {
  const corner: Drag = { kind: 'vertex', of: { part: 'zone', id: 'Z1' }, from: [5, 4], before: [5, 0] };

  it('dropped on another of its zone becomes one with it', () => {
    expect(once(corner, [0, 4], ALONE).zones[0]!.outline).toHaveLength(3);
  });

  it('dropped on the edge of its neighbour is put into that edge', () => {
    const next = once({ ...corner, from: [0, 4] } as Drag, [7, 4], TOGETHER);
    expect(next.zones[1]!.outline).toContainEqual([7, 4]);
    expect(next.deck.outline).toBe(SCENE.deck.outline);
  });

  it('drawn out of a side is new in both', () => {
    const next = once({ kind: 'insert', of: { part: 'zone', id: 'Z1' }, edge: { a: [5, 0], b: [5, 4] } }, [6, 2], TOGETHER);
    expect(next.zones.map(({ outline }) => outline.length)).toEqual([5, 5]);
    expect(next.deck.bays).toBe(SCENE.deck.bays);
  });
});

describe('parts', () => {
  const parts: Drag = { kind: 'parts', of: [{ part: 'zone', id: 'Z2' }], grab: [6, 1], anchor: [5, 0] };

  it('go where the corner that is held goes, without crumbs', () => {
    // 5 + 0.3 and 10 + 0.3
    expect(xsOf(once(parts, [5.3, 0], TOGETHER), 1)).toEqual([5.3, 10.3]);
  });

  it('only what changes is drawn anew', () => {
    const next = patched(SCENE, dragged(SCENE, parts, [5.3, 0], TOGETHER));
    expect(changedShapes(planShapes(SCENE), planShapes(next)).map(({ id }) => id)).toEqual(['Z2']);
  });
});

describe('a new area', () => {
  it('gives its neighbours of the same kind its corners', () => {
    const patch = joined(SCENE, 'zone', [
      [2, 4],
      [3, 4],
      [3, 6],
    ]);
    expect(Object.keys(patch)).toEqual(['zones']);
    expect(patch.zones![0]!.outline).toHaveLength(6);
  });
});
