/** Finished levels given by spots and breaklines: begun, drawn, moved, copied, removed; worked by hand. */

import { describe, expect, it } from 'vitest';
import { begunFinish } from '../../src/edit/finishes.ts';
import { goesWith, limitedTo } from '../../src/edit/goes-with.ts';
import { duplicated, moved, shift, turn } from '../../src/edit/move-parts.ts';
import { withNew } from '../../src/edit/new-part.ts';
import { partIn, withParts } from '../../src/edit/part-values.ts';
import { withPoints } from '../../src/edit/plan-shapes.ts';
import { patched } from '../../src/edit/point-lists.ts';
import { removed } from '../../src/edit/references.ts';
import { movedVertex } from '../../src/edit/shared-vertices.ts';
import type { ScenePatch } from '../../src/model/history.ts';
import type { SceneFile, SceneFinish } from '../../src/model/scene-file.ts';
import { errorsOf, PLAN, withPatch } from '../helpers/full-plan.ts';
import { rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const finishOf = (scene: SceneFile, id = 'Z2') => scene.zones.find((one) => one.id === id)?.finish;
const become = (patch: ScenePatch) => finishOf(withPatch(patch));
const SPOTS = [
  [10, 0, 0.5],
  [20, 0, 0.6],
  [15, 9, 0.7],
];
const LINE = [
  [11, 5, 0.55],
  [19, 5, 0.55],
];

describe('levels of a finish', () => {
  it('are moved with their levels, and nothing else changes', () => {
    const next = withPatch(moved(PLAN, [{ part: 'finish', id: 'Z2 spot 1' }], shift(-1, 2)));
    expect(finishOf(next)).toEqual({ kind: 'spots', spots: [SPOTS[0], [19, 2, 0.6], SPOTS[2]], breaklines: [LINE] });
    expect([next.deck, next.zones[0]]).toEqual([PLAN.deck, PLAN.zones[0]]);
    expect(next.zones[0]).toBe(PLAN.zones[0]);
  });

  it('go along with their zone, once, even where both are chosen', () => {
    const all = ['Z2 spot 0', 'Z2 spot 1', 'Z2 spot 2', 'Z2 breakline 0'].map((id) => ({ part: 'finish', id }) as const);
    const patch = moved(PLAN, [{ part: 'zone', id: 'Z2' }, ...all], shift(1, 0));
    expect(become(patch)).toEqual({
      kind: 'spots',
      spots: [
        [11, 0, 0.5],
        [21, 0, 0.6],
        [16, 9, 0.7],
      ],
      breaklines: [
        [
          [12, 5, 0.55],
          [20, 5, 0.55],
        ],
      ],
    });
  });

  it('turn about a point: a quarter to the left takes (1, 0) to (0, 1)', () => {
    expect(become(moved(PLAN, [{ part: 'finish', id: 'Z2 breakline 0' }], turn([11, 5], 90)))).toMatchObject({
      breaklines: [
        [
          [11, 5, 0.55],
          [11, 13, 0.55],
        ],
      ],
    });
  });

  it('are typed: place and level', () => {
    expect(become(withPoints(PLAN, { part: 'finish', id: 'Z2 spot 0' }, [[12, 1]]))).toMatchObject({
      spots: [[12, 1, 0.5], ...SPOTS.slice(1)],
    });
    const one = { part: 'finish', id: 'Z2 spot 2' } as const;
    expect(partIn(PLAN, one)).toEqual({ levelM: 0.7 });
    expect(become(withParts(PLAN, [one], () => ({ levelM: 0.81 })))).toMatchObject({ spots: [...SPOTS.slice(0, 2), [15, 9, 0.81]] });
  });

  it('are copied to the end of their net', () => {
    const { patch, selected } = duplicated(PLAN, [{ part: 'finish', id: 'Z2 spot 0' }], shift(1, 1));
    expect(selected).toEqual([{ part: 'finish', id: 'Z2 spot 3' }]);
    expect(become(patch)).toMatchObject({ spots: [...SPOTS, [11, 1, 0.5]] });
  });

  it('are removed; without any left the check refuses, and nothing is taken for granted', () => {
    const spots = [0, 1, 2].map((i) => ({ part: 'finish', id: `Z2 spot ${i}` }) as const);
    expect(become(removed(PLAN, spots.slice(0, 1)))).toEqual({ kind: 'spots', spots: SPOTS.slice(1), breaklines: [LINE] });
    const line = { part: 'finish', id: 'Z2 breakline 0' } as const;
    expect(become(removed(PLAN, [line]))).toEqual({ kind: 'spots', spots: SPOTS });
    expect(errorsOf(withPatch(removed(PLAN, [...spots, line])))).toEqual([expect.stringMatching(/^LEVELS_EMPTY .*finish/)]);
  });
});

describe('drawn', () => {
  it('a level belongs to the zone it lies in, a breakline too', () => {
    const spot = withNew(PLAN, 'finish', [[12, 8]], { levelM: 0.66 });
    expect(spot).toMatchObject({ selected: { part: 'finish', id: 'Z2 spot 3' } });
    expect('patch' in spot && become(spot.patch)).toMatchObject({ spots: [...SPOTS, [12, 8, 0.66]], breaklines: [LINE] });
    const drawn = [
      [12, 2],
      [18, 2],
    ] as const;
    const line = withNew(PLAN, 'finish', drawn, { levelM: 0.6 });
    expect(line).toMatchObject({ selected: { part: 'finish', id: 'Z2 breakline 1' } });
    expect('patch' in line && become(line.patch)).toMatchObject({ breaklines: [LINE, drawn.map(([x, y]) => [x, y, 0.6])] });
  });

  it('asks for the level, and for a zone where that there is not given by levels', () => {
    expect(withNew(PLAN, 'finish', [[12, 8]])).toEqual({ needs: ['levelM'] });
    // Z1 is a plane.
    expect(withNew(PLAN, 'finish', [[5, 5]], { levelM: 0.6 })).toEqual({ needs: ['zone'] });
  });
});

describe('a finish begun in another way', () => {
  const begun = (finish: SceneFinish | undefined, kind: SceneFinish['kind']) => {
    const scene = sceneOf({
      deck: { outline: rect(0, 0, 8, 4), bays: [], levels: { spots: [[0, 0, 0.12]] } },
      zones: [zone('Z1', rect(0, 0, 8, 4), 'soil-100', finish && { finish })],
    });
    return begunFinish(scene, scene.zones[0]!, kind);
  };

  it('as spots has the corners at the levels there were', () => {
    expect(begun({ kind: 'level', levelM: 0.4 }, 'spots')).toEqual({ kind: 'spots', spots: rect(0, 0, 8, 4).map((at) => [...at, 0.4]) });
    // Falls 2 % downwards (180° clockwise from up) through 0.5 at y = 4: 4 m farther down 0.5 − 4 · 0.02 = 0.42.
    const plane = { kind: 'plane', at: [2, 4, 0.5], fallPercent: 2, towardsDeg: 180 } as const;
    expect(begun(plane, 'spots')).toEqual({
      kind: 'spots',
      spots: [
        [0, 0, 0.42],
        [8, 0, 0.42],
        [8, 4, 0.5],
        [0, 4, 0.5],
      ],
    });
    // Towards the right, 90°: from x = 2, 2 m to the left 0.54, 6 m to the right 0.38.
    expect(begun({ ...plane, towardsDeg: 90 }, 'spots')).toMatchObject({
      spots: [
        [0, 0, 0.54],
        [8, 0, 0.38],
        [8, 4, 0.38],
        [0, 4, 0.54],
      ],
    });
  });

  it('from the build-up lies half a metre over the deck’s highest level', () => {
    // 0.12 + 0.5
    expect(begun(undefined, 'level')).toEqual({ kind: 'level', levelM: 0.62 });
    expect(begun(undefined, 'spots')).toMatchObject({ spots: [0, 1, 2, 3].map(() => [expect.anything(), expect.anything(), 0.62]) });
  });

  it('from spots takes the nearest; of the same kind it stays', () => {
    const spots: SceneFinish = {
      kind: 'spots',
      spots: [
        [0, 0, 0.3],
        [4, 2, 0.35],
      ],
    };
    expect(begun(spots, 'level')).toEqual({ kind: 'level', levelM: 0.35 });
    expect(begun(spots, 'spots')).toBe(spots);
    expect(begun(spots, 'build-up')).toEqual({ kind: 'build-up' });
  });
});

it('the corner of a zone takes a breakline of its finish along; a level there stays', () => {
  const line = [
    [10, 0],
    [15, 5],
  ] as const;
  const scene = patched(PLAN, withPoints(PLAN, { part: 'finish', id: 'Z2 breakline 0' }, line));
  const patch = limitedTo(scene, movedVertex(scene, [10, 0], [10, 1]), ({ part }) => goesWith('zone').includes(part));
  expect(finishOf(patched(scene, patch))).toMatchObject({
    spots: SPOTS,
    breaklines: [
      [
        [10, 1, 0.55],
        [15, 5, 0.55],
      ],
    ],
  });
});
