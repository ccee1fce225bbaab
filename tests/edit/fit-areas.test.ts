/** Split, merged, cut at the edge, filled, subtracted, offset: worked by hand. */

import { describe, expect, it } from 'vitest';
import { cutAtEdge, gapFilled, offsetPart, remainderFilled, subtracted } from '../../src/edit/fit-areas.ts';
import { gapsOf } from '../../src/edit/gaps.ts';
import { merged } from '../../src/edit/merge.ts';
import { offsetArea } from '../../src/edit/offset.ts';
import { areaM2 } from '../../src/edit/overlay.ts';
import { patched } from '../../src/edit/point-lists.ts';
import { split } from '../../src/edit/split.ts';
import type { ScenePatch } from '../../src/model/history.ts';
import type { PointM, SceneFile } from '../../src/model/scene-file.ts';
import { bay, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const ZONE = (id: string) => ({ part: 'zone', id }) as const;
const BAY = (id: string) => ({ part: 'bay', id }) as const;
const done = (scene: SceneFile, result: { readonly patch: ScenePatch } | { readonly refused: string }): SceneFile => {
  if (!('patch' in result)) throw new Error(`refused: ${result.refused}`);
  return patched(scene, result.patch);
};
const sizes = (scene: SceneFile) => Object.fromEntries(scene.zones.map((one) => [one.id, Number(areaM2(one).toFixed(9))]));
const corners = (points: readonly PointM[] | undefined) => points?.map(([x, y]) => `${x} ${y}`).sort();

/** Deck of 10 m × 8 m: Z1 on the left 4 m, Z2 on the rest. */
const SCENE = sceneOf({
  deck: {
    outline: rect(0, 0, 10, 8),
    bays: [
      bay('A1', rect(0, 0, 5, 8)),
      bay('A2', rect(5, 0, 10, 8), {
        permanentKNm2: 9,
        totalKNm2: 14,
        basis: { document: 'load plan', revision: 'A', date: '2026-01-05' },
      }),
    ],
  },
  zones: [zone('Z1', rect(0, 0, 4, 8), 'soil-100', { name: 'Lawn', holes: [rect(1, 5, 2, 6)] }), zone('Z2', rect(4, 0, 10, 8), 'soil-100')],
  stages: [
    {
      id: 'S1',
      name: 'First',
      place: [
        { zones: ['Z1'], roles: ['substrate'] },
        { zones: ['Z2'], roles: ['substrate'] },
      ],
    },
  ],
});

describe('split', () => {
  it('a zone across: both pieces and the neighbour have the very same vertex; stages place both', () => {
    const result = split(SCENE, ZONE('Z1'), [
      [-1, 2],
      [5, 3],
    ]);
    const next = done(SCENE, result);
    // At x = 0 the line is at 2 + 1/6, at x = 4 at 2 + 5/6: below 4 × 2.5 = 10, above 32 - 10 - 1 = 21.
    expect(sizes(next)).toEqual({ Z1: 21, 'Z1-2': 10, Z2: 48 });
    expect('selected' in result && result.selected).toEqual([ZONE('Z1'), ZONE('Z1-2')]);
    const cut = next.zones[2]?.outline.filter(([x, y]) => x === 4 && y > 0 && y < 8);
    expect(cut).toHaveLength(1);
    for (const one of next.zones) expect(one.outline).toContainEqual(cut?.[0]);
    expect(next.deck.outline).toHaveLength(5);
    expect(next.stages?.[0]?.place?.[0]).toEqual({ zones: ['Z1', 'Z1-2'], roles: ['substrate'] });
    expect(next.zones.map(({ name, holes }) => [name, holes?.length])).toEqual([
      ['Lawn', 1],
      ['Lawn', undefined],
      [undefined, undefined],
    ]);
  });

  it('through a hole: the hole becomes a notch of both pieces', () => {
    const next = done(
      SCENE,
      split(SCENE, ZONE('Z1'), [
        [1.5, -1],
        [1.5, 9],
      ]),
    );
    expect(sizes(next)).toEqual({ Z1: 2.5 * 8 - 0.5, 'Z1-2': 1.5 * 8 - 0.5, Z2: 48 });
    expect(next.zones.every(({ holes }) => holes === undefined)).toBe(true);
  });

  it('a closed line inside cuts a piece out of a zone, not out of a bay', () => {
    const loop: PointM[] = [
      [5, 1],
      [6, 1],
      [6, 2],
      [5, 2],
      [5, 1],
    ];
    expect(sizes(done(SCENE, split(SCENE, ZONE('Z2'), loop)))).toEqual({ Z1: 31, Z2: 47, 'Z2-2': 1 });
    expect(
      split(SCENE, BAY('A2'), [
        [6, 1],
        [7, 1],
        [7, 2],
        [6, 2],
        [6, 1],
      ]),
    ).toEqual({ refused: 'bay with hole' });
  });

  it('a line that ends inside, or runs past, divides nothing', () => {
    expect(
      split(SCENE, ZONE('Z2'), [
        [3, 3],
        [8, 3],
      ]),
    ).toEqual({ refused: 'line does not divide' });
    expect(
      split(SCENE, ZONE('Z2'), [
        [0, 9],
        [9, 9],
      ]),
    ).toEqual({ refused: 'line does not divide' });
    expect(
      split(SCENE, ZONE('Z9'), [
        [3, 3],
        [11, 3],
      ]),
    ).toEqual({ refused: 'no such part' });
  });

  it('a bay in two keeps limits and basis in both: they lie where it lay', () => {
    const next = done(
      SCENE,
      split(SCENE, BAY('A2'), [
        [4, 4],
        [11, 4],
      ]),
    );
    const { outline: _, id: __, ...said } = SCENE.deck.bays[1] as (typeof SCENE.deck.bays)[number];
    expect(next.deck.bays.slice(1)).toMatchObject([
      { id: 'A2', ...said },
      { id: 'A2-2', ...said },
    ]);
  });
});

describe('merge', () => {
  it('split and merged again gives the outline that was', () => {
    const cut = done(
      SCENE,
      split(SCENE, ZONE('Z1'), [
        [-1, 2],
        [5, 3],
      ]),
    );
    const result = merged(cut, [ZONE('Z1'), ZONE('Z1-2')]);
    const next = done(cut, result);
    // The two ends of the cut stay: the deck and Z2 have them since.
    expect(corners(next.zones[0]?.outline)).toEqual(
      corners([...rect(0, 0, 4, 8), ...cut.zones[0]!.outline.filter(([, y]) => y > 2 && y < 3)]),
    );
    expect(next.zones[0]?.holes?.map((hole) => corners(hole))).toEqual([corners(rect(1, 5, 2, 6))]);
    expect(next.stages).toEqual(SCENE.stages);
    expect(result).toMatchObject({ selected: ZONE('Z1'), differing: [], changeM2: 0 });
  });

  it('points that only the two had, and that now lie on a straight edge, go', () => {
    const scene = sceneOf({
      deck: { outline: rect(0, 0, 10, 8) },
      zones: [zone('Z1', rect(1, 1, 3, 7), 'soil-100'), zone('Z2', rect(3, 1, 9, 7), 'soil-100')],
    });
    expect(corners(done(scene, merged(scene, [ZONE('Z1'), ZONE('Z2')])).zones[0]?.outline)).toEqual(corners(rect(1, 1, 9, 7)));
  });

  it('bays: the lower of what both have, no basis any more, nothing that one alone has', () => {
    const result = merged(SCENE, [BAY('A1'), BAY('A2')]);
    const [one] = done(SCENE, result).deck.bays;
    expect(one).toMatchObject({ id: 'A1', permanentKNm2: 9 });
    expect(Object.keys(one ?? {}).sort()).toEqual(['id', 'outline', 'permanentKNm2']);
    expect('differing' in result && result.differing).toEqual(['permanentKNm2', 'imposedKNm2', 'totalKNm2']);
  });

  it('a gap of half a millimetre is closed and told: 0.0005 × 8 = 0.004 m²', () => {
    const scene = sceneOf({
      deck: { outline: rect(0, 0, 10, 8) },
      zones: [zone('Z1', rect(0, 0, 4, 8), 'soil-100'), zone('Z2', rect(4.0005, 0, 10, 8), 'soil-100')],
    });
    const result = merged(scene, [ZONE('Z1'), ZONE('Z2')]);
    expect('changeM2' in result && result.changeM2).toBeCloseTo(0.004, 9);
  });

  it('refuses what touches in a corner or not at all, one alone, zones with bays', () => {
    const scene = sceneOf({
      deck: { outline: rect(0, 0, 10, 8) },
      zones: [zone('Z1', rect(0, 0, 4, 4), 'soil-100'), zone('Z2', rect(4, 4, 8, 8), 'soil-100')],
    });
    expect(merged(scene, [ZONE('Z1'), ZONE('Z2')])).toEqual({ refused: 'not touching' });
    expect(merged(scene, [ZONE('Z1')])).toEqual({ refused: 'too few parts' });
    expect(merged(SCENE, [ZONE('Z1'), BAY('A1')])).toEqual({ refused: 'wrong kind' });
  });
});

describe('fitted to the deck and to each other', () => {
  /** Z1 sticks 1 m out on the left, Z2 lies apart; between them 2 m × 8 m without a zone, with an opening of 1 m². */
  const loose = sceneOf({
    deck: { outline: rect(0, 0, 10, 8), openings: [rect(4.5, 1, 5.5, 2)], bays: [bay('A1', rect(0, 0, 4, 8))] },
    zones: [zone('Z1', rect(-1, 0, 4, 8), 'soil-100'), zone('Z2', rect(6, 0, 10, 6), 'soil-100')],
  });

  it('cut at the edge; what is inside already stays', () => {
    expect(sizes(done(loose, cutAtEdge(loose, ZONE('Z1'))))).toEqual({ Z1: 32, Z2: 24 });
    expect(cutAtEdge(loose, ZONE('Z2'))).toEqual({ patch: {}, selected: [] });
  });

  it('gaps: 2 × 8 + 4 × 2 - 1 for the opening, beside Z1 for 8 m and Z2 for 6 + 4 m', () => {
    const [gap, ...none] = gapsOf(loose, 'zone');
    expect(none).toEqual([]);
    expect(gap?.areaM2).toBeCloseTo(23, 9);
    expect(gap?.neighbours).toEqual(['Z2', 'Z1']);
    expect(gap?.holes?.map((hole) => corners(hole))).toEqual([corners(rect(4.5, 1, 5.5, 2))]);
  });

  it('filled from a neighbour, who then has the opening as a hole; a bay that grows loses its basis', () => {
    expect(sizes(done(loose, gapFilled(loose, [5, 4], ZONE('Z2'))))).toEqual({ Z1: 40, Z2: 47 });
    expect(gapFilled(loose, [1, 1], ZONE('Z2'))).toEqual({ refused: 'no gap' });
    const small = sceneOf({ deck: { outline: rect(0, 0, 4, 4), bays: [bay('A1', rect(0, 0, 3, 4))] } });
    const [grown] = done(small, gapFilled(small, [3.5, 1], BAY('A1'))).deck.bays;
    expect(corners(grown?.outline)).toEqual(corners([...rect(0, 0, 4, 4), [3, 0], [3, 4]]));
    expect(grown).not.toHaveProperty('basis');
  });

  it('the rest as new zones; as new bays in pieces without holes', () => {
    const filled = done(loose, remainderFilled(loose, 'zone', { name: 'Gravel' }));
    expect(sizes(filled)).toEqual({ Z1: 40, Z2: 24, Z3: 23 });
    expect(filled.zones[2]?.name).toBe('Gravel');
    expect(remainderFilled(filled, 'zone')).toEqual({ refused: 'no gap' });
    const bays = done(loose, remainderFilled(loose, 'bay')).deck.bays.slice(1);
    expect(bays).toHaveLength(2);
    expect(bays.reduce((sum, one) => sum + areaM2(one), 0)).toBeCloseTo(6 * 8 - 1, 9);
    expect(bays.every((one) => one.permanentKNm2 === undefined)).toBe(true);
  });

  it('one zone less another, or less an opening', () => {
    const over = sceneOf({
      deck: { outline: rect(0, 0, 10, 8), openings: [rect(1, 1, 2, 2)] },
      zones: [zone('Z1', rect(0, 0, 6, 8), 'soil-100'), zone('Z2', rect(4, 0, 10, 4), 'soil-100')],
    });
    expect(sizes(done(over, subtracted(over, ZONE('Z1'), [ZONE('Z2'), { part: 'opening', id: '0' }])))).toEqual({ Z1: 48 - 8 - 1, Z2: 24 });
    expect(subtracted(SCENE, ZONE('Z1'), [ZONE('Z2')])).toEqual({ refused: 'apart' });
    expect(subtracted(over, ZONE('Z1'), [{ part: 'outline', id: 'outline' }])).toEqual({ refused: 'nothing left' });
  });
});

describe('parallel', () => {
  it('0.5 m inside 4 × 3 leaves 3 × 2; 0.5 m outside makes 5 × 4, with round corners 1 - π/4 m² less', () => {
    const area = { outline: rect(0, 0, 4, 3) };
    expect(offsetArea(area, -0.5).map(({ outline }) => corners(outline))).toEqual([corners(rect(0.5, 0.5, 3.5, 2.5))]);
    expect(offsetArea(area, 0.5).map(areaM2)).toEqual([20]);
    // Four quarters of a circle of 0.5 m in place of four squares: 4 × 0.25 - π × 0.25.
    expect(areaM2(offsetArea(area, 0.5, 'round')[0] as { outline: PointM[] })).toBeCloseTo(20 - (1 - Math.PI / 4), 2);
    expect(offsetArea(area, -1.5)).toEqual([]);
  });

  it('a hole shrinks as the area grows, and in national coordinates all stays as exact as said', () => {
    const at = (x0: number, y0: number, x1: number, y1: number) => rect(392_000 + x0, 5_812_000 + y0, 392_000 + x1, 5_812_000 + y1);
    const [grown] = offsetArea({ outline: at(0, 0, 6, 6), holes: [at(2, 2, 4, 4)] }, 0.25);
    expect(corners(grown?.holes?.[0])).toEqual(corners(at(2.25, 2.25, 3.75, 3.75)));
    expect(corners(grown?.outline)).toEqual(corners(at(-0.25, -0.25, 6.25, 6.25)));
  });

  it('a strip of 0.5 m along the edge of Z2: 6 × 8 less 5 × 7, the zone keeps the rest', () => {
    const next = done(SCENE, offsetPart(SCENE, ZONE('Z2'), -0.5, 'strip'));
    expect(sizes(next)).toEqual({ Z1: 31, Z2: 35, Z3: 13 });
    expect(gapsOf(next, 'zone').map((gap) => gap.areaM2)).toEqual([1]);
  });

  it('the same smaller; a new one beside; nothing where it is too narrow', () => {
    expect(sizes(done(SCENE, offsetPart(SCENE, ZONE('Z2'), -1, 'same')))).toEqual({ Z1: 31, Z2: 24 });
    expect(sizes(done(SCENE, offsetPart(SCENE, { part: 'outline', id: 'outline' }, -1, 'new')))).toEqual({ Z1: 31, Z2: 48, Z3: 48 });
    expect(offsetPart(SCENE, ZONE('Z2'), -3, 'same')).toEqual({ refused: 'nothing left' });
  });
});
