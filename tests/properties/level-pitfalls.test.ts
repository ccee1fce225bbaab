/** Surveys as they come: spots on breaklines, breaklines that cross or start on spots, too few spots, decks beyond the survey. */

import { describe, expect, it } from 'vitest';
import { netSurface } from '../../src/core/levels/net.ts';
import { surfaceLevelM } from '../../src/core/levels/surface.ts';
import type { Point3M, SceneFile } from '../../src/model/scene-file.ts';
import { findingsOf, randomFrom, read, rect, sceneOf } from '../helpers/scene-builder.ts';

const SEED = 1618;
const REACH_M = 60;

function levelAt(spots: readonly Point3M[], breaklines: readonly (readonly Point3M[])[]) {
  const net = { spots: Float64Array.from(spots.flat()), breaklines: breaklines.map((line) => Float64Array.from(line.flat())) };
  const surface = netSurface(net, REACH_M);
  return (x: number, y: number) => surfaceLevelM(surface, x, y);
}

/** Corners of 10 m × 10 m at 0, and a ridge along y = 5 at 1. */
const CORNERS: Point3M[] = [
  [0, 0, 0],
  [10, 0, 0],
  [10, 10, 0],
  [0, 10, 0],
];
const RIDGE: Point3M[] = [
  [0, 5, 1],
  [10, 5, 1],
];
/** Level of a roof with that ridge, by hand. */
const roof = (y: number) => 1 - Math.abs(y - 5) / 5;

function expectRoof(z: (x: number, y: number) => number, toleranceM = 1e-9): void {
  for (let x = 0.3; x < 10; x += 1.1) for (let y = 0.2; y < 10; y += 0.7) expect(Math.abs(z(x, y) - roof(y))).toBeLessThan(toleranceM);
}

describe('breaklines', () => {
  it('keep a ridge that few spots would cut through', () => {
    // Two spots in the slopes would pull triangles across the ridge.
    expectRoof(levelAt([...CORNERS, [5, 4, 0.8], [5, 6.1, 0.78]], [RIDGE]));
  });

  it('spots on them count as they are', () => {
    expectRoof(levelAt([...CORNERS, [3.333, 5, 1], [7.1, 5, 1]], [RIDGE]));
    const raised = levelAt([...CORNERS, [4, 5, 1.2]], [RIDGE]);
    expect(raised(4, 5)).toBeCloseTo(1.2, 12);
    expect(raised(2, 5)).toBeCloseTo(1.1, 9); // by hand: half-way from 1.0 to 1.2 along the line
    expect(raised(7, 5)).toBeCloseTo(1.1, 9);
  });

  it('a spot half a millimetre beside them', () => {
    const z = levelAt([...CORNERS, [6, 5.0004, 1]], [RIDGE]);
    for (let x = 0.5; x < 10; x++) expect(Math.abs(z(x, 5) - 1)).toBeLessThan(1e-3);
    expect(z(3, 2.5)).toBeCloseTo(0.5, 3);
  });

  it('their corners on spots', () => {
    expectRoof(levelAt([...CORNERS, ...RIDGE], [RIDGE]));
    // A third of a millimetre beside: the fall of 1 : 5 makes it 0.06 mm at most.
    expectRoof(levelAt([...CORNERS, [0, 5.0003, 1]], [RIDGE]), 6.1e-5);
  });

  it('crossing each other at one level', () => {
    const cross: Point3M[] = [
      [5, 0, 0],
      [5, 5, 1],
      [5, 10, 0],
    ];
    expectRoof(levelAt(CORNERS, [RIDGE, cross]));
    // Without a corner where they cross; a straight line through the ridge at its own level.
    const level: Point3M[] = [
      [2, 4, 0.8],
      [8, 4, 0.8],
    ];
    const slope: Point3M[] = [
      [5, 3, 0.6],
      [5, 5, 1],
    ];
    expectRoof(levelAt(CORNERS, [RIDGE, level, slope]));
  });

  it('drawn twice, backwards and in pieces', () => {
    const pieces: Point3M[][] = [
      RIDGE,
      [...RIDGE].reverse(),
      [
        [2, 5, 1],
        [6, 5, 1],
      ],
      [
        [6, 5, 1],
        [10, 5, 1],
      ],
    ];
    expectRoof(levelAt(CORNERS, pieces));
  });

  it('alone, without any spot', () => {
    const border: Point3M[] = [...CORNERS, CORNERS[0]];
    expectRoof(levelAt([], [border, RIDGE]));
  });

  it(`many, at random, over many spots: never thrown, a plane stays a plane (seed ${SEED})`, () => {
    const random = randomFrom(SEED);
    const plane = (x: number, y: number) => 2 + 0.03 * x - 0.015 * y;
    const spot = (): Point3M => {
      const [x, y] = [Math.round(1e4 * random()) / 1e3, Math.round(1e4 * random()) / 1e3];
      return [x, y, plane(x, y)];
    };
    for (let n = 0; n < 25; n++) {
      const spots = [...CORNERS.map(([x, y]): Point3M => [x, y, plane(x, y)]), ...Array.from({ length: 40 }, spot)];
      const lines = Array.from({ length: 12 }, () => [
        spot(),
        random() < 0.4 ? spots[Math.floor(random() * spots.length)] : spot(),
        spot(),
      ]);
      const z = levelAt(spots, lines);
      for (let k = 0; k < 30; k++) {
        const [x, y] = [10 * random(), 10 * random()];
        // Points within a millimetre are made one, so the level may be off by a millimetre's fall.
        expect(Math.abs(z(x, y) - plane(x, y))).toBeLessThan(1e-4);
      }
    }
  });
});

describe('too few levels', () => {
  it('one spot: level everywhere', () => {
    const z = levelAt([[3, 4, 1.25]], []);
    for (const [x, y] of rect(-20, -20, 30, 30)) expect(z(x, y)).toBe(1.25);
  });

  it('two spots and spots on one line: the level of the nearest point of the line', () => {
    const z = levelAt(
      [
        [0, 0, 0],
        [10, 0, 1],
      ],
      [],
    );
    expect(z(4, 0)).toBeCloseTo(0.4, 12);
    expect(z(4, 7)).toBeCloseTo(0.4, 9);
    expect(z(4, -7)).toBeCloseTo(0.4, 9);
    expect(z(-5, 3)).toBeCloseTo(0, 9);
    expect(z(15, -3)).toBeCloseTo(1, 9);
    // A slanting line (3-4-5): (5, 0) is nearest to the point 3/5 of 5 m along it, (1.8, 2.4); levels rise by 0.1 per metre.
    const slanting = levelAt(
      [
        [0, 0, 0],
        [3, 4, 0.5],
        [6, 8, 1],
      ],
      [],
    );
    expect(slanting(1.5, 2)).toBeCloseTo(0.25, 9);
    expect(slanting(5, 0)).toBeCloseTo(0.3, 9); // by hand: (5, 0)·(0.6, 0.8) = 3 m along
  });

  it('a scene with spots on one line is read, and all of its deck is outside the survey', () => {
    const project = read(
      withLevels(rect(0, 0, 6, 4), [
        [0, 1, 0],
        [3, 1, 0.3],
        [6, 1, 0.6],
      ]),
    );
    expect(project.report.zones[0].finishedM.mean).toBeCloseTo(0.1 + 0.3, 9); // by hand: 0.10 m of soil on a mean level of 0.3
    const [outside] = findingsOf(project, 'level.outside');
    expect(outside?.value).toBeCloseTo(24, 9);
  });

  it('no levels: 0.000 everywhere, nothing outside', () => {
    const project = read(sceneOf());
    const { min, mean, max } = project.report.zones[0].finishedM;
    for (const level of [min, mean, max]) expect(level).toBeCloseTo(0.1, 12);
    expect(findingsOf(project, 'level.outside')).toEqual([]);
  });
});

function withLevels(outline: [number, number][] | readonly (readonly [number, number])[], spots: Point3M[]): SceneFile {
  return sceneOf({ deck: { outline, levels: { spots } } });
}

describe('outside the net', () => {
  const square: Point3M[] = [
    [0, 0, 0],
    [10, 0, 1],
    [10, 10, 1],
    [0, 10, 0],
  ];

  it('the level of the nearest point on its boundary', () => {
    const z = levelAt(square, []);
    expect(z(4, -3)).toBeCloseTo(0.4, 9); // straight down to the lower edge
    expect(z(4, 25)).toBeCloseTo(0.4, 9);
    expect(z(-6, 5)).toBeCloseTo(0, 9);
    expect(z(17, 5)).toBeCloseTo(1, 9);
    expect(z(13, 14)).toBeCloseTo(1, 9); // corner (10, 10)
    expect(z(-2, -2)).toBeCloseTo(0, 9);
  });

  it('its area is told', () => {
    // by hand: deck 14 m × 10 m from x = −1 to 13: outside are 1 m and 3 m of width, 40 m²
    const project = read(withLevels(rect(-1, 0, 13, 10), square));
    const [outside] = findingsOf(project, 'level.outside');
    expect(outside.value).toBeCloseTo(40, 9);
    expect(outside.severity).toBe('check');
    // by hand: means of the membrane 0 on 10 m², 0.5 on 100 m², 1 on 30 m²: 80 / 140, and 0.10 m of soil
    expect(project.report.zones[0].finishedM.mean).toBeCloseTo(0.1 + 80 / 140, 9);
  });

  it('its area is exact where the net’s edge cuts cells at a slant', () => {
    // by hand: deck 4 m × 3 m with spots at three of its corners: the half above the diagonal is outside
    const project = read(
      withLevels(rect(0, 0, 4, 3), [
        [0, 0, 0],
        [4, 0, 0.2],
        [0, 3, 0.1],
      ]),
    );
    expect(findingsOf(project, 'level.outside')[0].value).toBeCloseTo(6, 9);
  });

  it('a net a hair inside the deck edge is told as it is', () => {
    const inner = square.map(([x, y, z]): Point3M => [Math.min(9.9995, Math.max(0.0005, x)), Math.min(9.9995, Math.max(0.0005, y)), z]);
    const project = read(withLevels(rect(0, 0, 10, 10), inner));
    // by hand: 100 − 9.999² = 0.019999 m²
    const [outside] = findingsOf(project, 'level.outside');
    expect(outside.value).toBeCloseTo(0.019999, 9);
    expect(project.report.zones[0].finishedM.mean).toBeCloseTo(0.6, 9);
  });
});
