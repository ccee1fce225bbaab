/** Random sequences of operations: what an operation gives can be opened, or the check refuses it with a message; none throws, and what is refused leaves the scene as it was. */

import { describe, expect, it } from 'vitest';
import { cutAtEdge, gapFilled, offsetPart, remainderFilled, subtracted } from '../../src/edit/fit-areas.ts';
import { gapsOf } from '../../src/edit/gaps.ts';
import { merged } from '../../src/edit/merge.ts';
import { duplicated, moved, shift, turn } from '../../src/edit/move-parts.ts';
import { withNew } from '../../src/edit/new-part.ts';
import { areaM2 } from '../../src/edit/overlay.ts';
import { planShapes } from '../../src/edit/plan-shapes.ts';
import { patched, patchOf } from '../../src/edit/point-lists.ts';
import { removed, renamed } from '../../src/edit/references.ts';
import { movedVertex, removedVertex, settled, withVertexInserted } from '../../src/edit/shared-vertices.ts';
import { split } from '../../src/edit/split.ts';
import type { ScenePatch } from '../../src/model/history.ts';
import type { PointM, SceneFile } from '../../src/model/scene-file.ts';
import { errorsOf, PLAN } from '../helpers/full-plan.ts';
import { randomFrom, rect } from '../helpers/scene-builder.ts';

type Act = (scene: SceneFile, random: () => number) => { readonly patch: ScenePatch } | { readonly refused: string };

const pick = <T>(list: readonly T[], random: () => number): T => list[Math.floor(random() * list.length)] as T;
const place = (random: () => number): PointM => [Math.round(24 * random() - 2), Math.round(14 * random() - 2)];
const anyZone = (scene: SceneFile, random: () => number) => ({ part: 'zone', id: pick(scene.zones, random).id }) as const;
const anyBay = (scene: SceneFile, random: () => number) => ({ part: 'bay', id: pick(scene.deck.bays, random).id }) as const;
const anyArea = (scene: SceneFile, random: () => number) => (random() < 0.6 ? anyZone(scene, random) : anyBay(scene, random));
const anyPart = (scene: SceneFile, random: () => number) => pick(planShapes(scene), random);
const vertex = (scene: SceneFile, random: () => number): PointM => {
  const [x, y] = pick(anyPart(scene, random).points, random);
  return [x, y];
};

const ACTS: Readonly<Record<string, Act>> = {
  'new zone': (scene, random) => {
    const [x, y] = place(random);
    const made = withNew(scene, 'zone', rect(x, y, x + 1 + Math.round(3 * random()), y + 2));
    return 'patch' in made ? made : { refused: made.needs.join() };
  },
  split: (scene, random) => split(scene, anyArea(scene, random), [place(random), place(random), place(random)]),
  merge: (scene, random) => {
    const one = anyArea(scene, random);
    const list = one.part === 'zone' ? scene.zones : scene.deck.bays;
    return merged(scene, [one, { part: one.part, id: pick(list, random).id }]);
  },
  'cut at the edge': (scene, random) => cutAtEdge(scene, anyArea(scene, random)),
  'fill a gap': (scene, random) => {
    const { part, id } = anyArea(scene, random);
    const [gap] = gapsOf(scene, part);
    return gap === undefined ? { refused: 'no gap' } : gapFilled(scene, gap.at, { part, id });
  },
  'the rest': (scene, random) => remainderFilled(scene, random() < 0.5 ? 'zone' : 'bay'),
  less: (scene, random) => subtracted(scene, anyArea(scene, random), [anyArea(scene, random)]),
  parallel: (scene, random) =>
    offsetPart(scene, anyArea(scene, random), random() < 0.7 ? -0.3 : 0.3, pick(['same', 'new', 'strip'] as const, random)),
  move: (scene, random) => ({ patch: moved(scene, [anyPart(scene, random)], shift(Math.round(2 * random()), 1)) }),
  turn: (scene, random) => ({ patch: moved(scene, [anyPart(scene, random)], turn(place(random), 15)) }),
  copy: (scene, random) => duplicated(scene, [anyPart(scene, random)], shift(1, 0)),
  remove: (scene, random) => ({
    patch: removed(scene, scene.zones.length < 4 || scene.deck.bays.length < 4 ? [] : [anyPart(scene, random)]),
  }),
  rename: (scene, random) => {
    const { part, id } = anyPart(scene, random);
    return { patch: renamed(scene, part, id, `N${Math.floor(1e9 * random())}`) };
  },
  'drag and settle': (scene, random) => {
    const next = patched(scene, movedVertex(scene, vertex(scene, random), place(random)));
    return { patch: patchOf(scene, patched(next, settled(next))) };
  },
  drag: (scene, random) => ({ patch: movedVertex(scene, vertex(scene, random), place(random)) }),
  'take out': (scene, random) => removedVertex(scene, vertex(scene, random)),
  'put in': (scene, random) => ({ patch: withVertexInserted(scene, place(random)) }),
};

describe('any sequence of operations', () => {
  it.each([1, 2])('seed %i: 150 operations', (seed) => {
    const random = randomFrom(seed);
    let scene = PLAN;
    const told = { done: 0, refused: 0, checked: 0 };
    for (let i = 0; i < 150; i++) {
      const [name, act] = pick(Object.entries(ACTS), random);
      const before = JSON.stringify(scene);
      const result = act(scene, random);
      expect(JSON.stringify(scene)).toBe(before);
      if ('refused' in result) {
        told.refused++;
        continue;
      }
      const next = patched(scene, result.patch);
      const errors = errorsOf(next);
      // Operations that make areas of sound ones give sound ones; what moves points freely may be refused.
      const mayFail = ['move', 'turn', 'drag and settle', 'drag', 'take out', 'copy', 'put in', 'remove'].includes(name);
      if (!mayFail) expect(errors, `${name}, operation ${i}`).toEqual([]);
      if (errors.length > 0) told.checked++;
      else [scene, told.done] = [next, told.done + 1];
    }
    expect(told.done).toBeGreaterThan(60);
    expect(scene.zones.every((zone) => areaM2(zone) > 0)).toBe(true);
  });
});
