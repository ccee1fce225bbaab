/** Parts as shapes, given other points, and new parts; worked by hand. */

import { describe, expect, it } from 'vitest';
import { type Given, needsOf, withBuilding, withNew, withNewHole, withoutPiece } from '../../src/edit/new-part.ts';
import { planShapes, shapeOf, withPoints } from '../../src/edit/plan-shapes.ts';
import { type PlanPart, patched } from '../../src/edit/point-lists.ts';
import type { PointM } from '../../src/model/scene-file.ts';
import { errorsOf, PLAN, withPatch } from '../helpers/full-plan.ts';
import { rect } from '../helpers/scene-builder.ts';

it('the scene of these tests is sound', () => expect(errorsOf(PLAN)).toEqual([]));

describe('shapes', () => {
  it('shows every part once, a set-up area and its building line as two', () => {
    const told = planShapes(PLAN).map(({ part, id, form, piece }) => `${part} ${id}: ${form}${piece === undefined ? '' : ` ${piece}`}`);
    expect(told).toEqual([
      'outline outline: area',
      'opening 0: area',
      'opening 1: area',
      'bay A1: area',
      'bay A2: area',
      'edge E1: line',
      'levels spot 0: point',
      'levels spot 1: point',
      'levels spot 2: point',
      'levels breakline 0: line',
      'column C1: point',
      'outlet O1: point',
      'zone Z1: area',
      'zone Z2: area',
      'finish Z2 spot 0: point',
      'finish Z2 spot 1: point',
      'finish Z2 spot 2: point',
      'finish Z2 breakline 0: line',
      'object T1: point',
      'object P1: area',
      'route F1: line',
      'set-up area U1: area',
      'set-up area U1: line building',
      'stockpile K1: area',
      'plant S1 0: line',
      'access point G1: point',
      'probe P1: point',
    ]);
    expect(shapeOf(PLAN, { part: 'zone', id: 'Z1' })?.holes).toHaveLength(2);
  });

  it('gives a part other points and leaves all else the very same object', () => {
    const next = withPatch(withPoints(PLAN, { part: 'zone', id: 'Z1' }, rect(5, 5, 6, 6), 1));
    expect(next.zones[0]?.holes).toEqual([rect(1, 1, 2, 2), rect(5, 5, 6, 6)]);
    expect([next.deck, next.zones[1], next.stages]).toEqual([PLAN.deck, PLAN.zones[1], PLAN.stages]);
    expect(next.zones[1]).toBe(PLAN.zones[1]);
    expect(withPoints(PLAN, { part: 'zone', id: 'Z9' }, rect(0, 0, 1, 1))).toEqual({});
  });

  it('a spot that is moved keeps its level', () =>
    expect(withPatch(withPoints(PLAN, { part: 'levels', id: 'spot 1' }, [[19, 1]])).deck.levels?.spots[1]).toEqual([19, 1, 0.2]));
});

describe('new parts', () => {
  const given: Given = {
    kind: 'tree',
    membraneTopM: 0.3,
    sizeM: [0.4, 0.4],
    massKg: 900,
    spreadM: 2,
    kNm: 5,
    kNm2: 5,
    widthM: 0.5,
    side: 'left',
    retainedM: 1,
    baseM: 0.8,
    stemM: 0.15,
    slabM: 0.15,
    backfill: { density: 1800, frictionDeg: 30 },
    baseFriction: 0.4,
    vehicle: 'van',
    stage: 'S1',
    material: 'soil',
    heightM: 0.5,
    levelM: 0.4,
    measuredMm: 120,
  };
  const cases: readonly (readonly [PlanPart, string, string, readonly PointM[]])[] = [
    ['bay', '', 'A3', rect(1, 1, 2, 2)],
    ['zone', '', 'Z3', rect(1, 1, 2, 2)],
    [
      'edge',
      'upstand',
      'E2',
      [
        [0, 0],
        [1, 0],
      ],
    ],
    ['outlet', 'overflow', 'O2', [[1, 1]]],
    ['column', '', 'C2', [[1, 1]]],
    ['object', 'tree', 'T2', [[1, 1]]],
    [
      'object',
      'line',
      'W1',
      [
        [0, 0],
        [1, 0],
      ],
    ],
    ['object', 'block', 'P2', rect(1, 1, 2, 2)],
    [
      'object',
      'retaining',
      'W1',
      [
        [0, 0],
        [1, 0],
      ],
    ],
    [
      'route',
      '',
      'F2',
      [
        [0, 0],
        [1, 0],
      ],
    ],
    ['set-up area', 'movement', 'U2', rect(1, 1, 2, 2)],
    ['stockpile', '', 'K2', rect(1, 1, 2, 2)],
    [
      'plant',
      '',
      'S1 1',
      [
        [0, 0],
        [1, 0],
      ],
    ],
    ['access point', 'crane', 'G2', [[1, 1]]],
    ['probe', '', 'P2', [[1, 1]]],
    ['opening', '', '2', rect(5, 5, 6, 6)],
    ['levels', '', 'spot 3', [[1, 1]]],
    [
      'levels',
      '',
      'breakline 1',
      [
        [0, 1],
        [1, 0],
      ],
    ],
    ['outline', '', 'outline', rect(0, 0, 30, 10)],
  ];

  it.each(cases)('%s %s gets the next id, %s, and can be opened again', (part, kind, id, points) => {
    const made = withNew(PLAN, part, points, { ...given, ...(kind === '' ? {} : { kind }) });
    if (!('selected' in made)) return expect.fail(made.needs.join());
    expect(made.selected).toEqual({ part, id });
    const next = withPatch(made.patch);
    expect(errorsOf(next)).toEqual([]);
    expect(shapeOf(next, made.selected)?.points.map(([x, y]) => [x, y])).toEqual(points);
  });

  it('claims nothing: a bay without limits and basis; a zone with the first build-up; asks for what only a person knows', () => {
    const made = withNew(PLAN, 'bay', rect(1, 1, 2, 2));
    expect('patch' in made && made.patch.deck?.bays[2]).toEqual({ id: 'A3', outline: rect(1, 1, 2, 2) });
    const lawn = withNew(PLAN, 'zone', rect(1, 1, 2, 2), { name: 'Lawn', imposedKNm2: 5 });
    expect('patch' in lawn && lawn.patch.zones?.[2]).toEqual({
      id: 'Z3',
      buildup: 'soil-100',
      outline: rect(1, 1, 2, 2),
      name: 'Lawn',
      imposedKNm2: 5,
    });
    expect(withNew(PLAN, 'object', [[1, 1]], { kind: 'tree', spreadM: 2 })).toEqual({ needs: ['massKg'] });
    expect(withNew(PLAN, 'stockpile', rect(1, 1, 2, 2), { stage: 'S9', material: 'soil', heightM: 1 })).toEqual({ needs: ['stage'] });
    expect(needsOf('bay')).toEqual([]);
  });

  it('holes and building lines come and go', () => {
    const holed = patched(PLAN, withNewHole(PLAN, 'Z2', rect(12, 2, 13, 3)));
    expect(holed.zones[1]?.holes).toEqual([rect(12, 2, 13, 3)]);
    expect(patched(holed, withoutPiece(holed, { part: 'zone', id: 'Z2' }, 0)).zones).toEqual(PLAN.zones);
    const bare = withPatch(withoutPiece(PLAN, { part: 'set-up area', id: 'U1' }, 'building'));
    expect(bare.setUpAreas?.[0]).not.toHaveProperty('building');
    expect(
      patched(
        bare,
        withBuilding(bare, 'U1', [
          [11, 10],
          [14, 10],
        ]),
      ).setUpAreas,
    ).toEqual(PLAN.setUpAreas);
  });
});
