/** Drawings in DXF: what each entity is on the plan, worked out by hand. */

import { describe, expect, it } from 'vitest';
import { areaOf } from '../../src/scene/ring.ts';
import { arc, block, circle, dxf, inMetres, insert, line, type Pair, point, polyline, rectangle, text } from './dxf-builder.ts';
import { codes, only, readText, shapesOn } from './reading.ts';

const drawn = (...entities: (readonly Pair[])[]) => readText(dxf({ header: inMetres, entities }));
/** Size that raises no question. */
const frame = rectangle('frame', 40, 30);

describe('curves', () => {
  it('a bulge of 1 is a half circle to the right of the way: tan(180°/4) = 1', () => {
    const result = drawn(
      frame,
      polyline('A', [
        [0, 0, 1],
        [10, 0],
      ]),
    );
    const { points } = only(result, 'A', 'ring');
    // Half a chord's angle is acos(1 − 0.005/5) = 0.0447: π / 0.0894 = 35.1, so 36 chords.
    expect(points).toHaveLength(37);
    for (const [x, y] of points) {
      expect(Math.hypot(x - 5, y)).toBeCloseTo(5, 9);
      expect(y).toBeLessThanOrEqual(1e-9);
    }
    // No chord sags more than 5 mm: middle of each at least 4.995 from the centre.
    for (let i = 0; i + 1 < points.length; i++) {
      const [a, b] = [points[i]!, points[i + 1]!];
      if (b[1] === 0 && a[1] === 0) continue;
      expect(Math.hypot((a[0] + b[0]) / 2 - 5, (a[1] + b[1]) / 2)).toBeGreaterThan(4.995 - 1e-9);
    }
    expect(codes(result).mends).toContain('CURVES_TO_CHORDS');
  });

  it('a negative bulge of tan(22.5°) is a quarter circle to the left', () => {
    // From (0,0) to (10,10) clockwise with radius 10: centre (10, 0).
    const { points } = only(
      drawn(
        frame,
        polyline('A', [
          [0, 0, -Math.tan(Math.PI / 8)],
          [10, 10],
          [10, 0],
        ]),
      ),
      'A',
      'ring',
    );
    for (const [x, y] of points.slice(0, -1)) expect(Math.hypot(x - 10, y)).toBeCloseTo(10, 9);
    // Quarter disc less what the chords cut off, at most 5 mm of 15.7 m.
    expect(areaOf(points)).toBeLessThanOrEqual((Math.PI * 100) / 4);
    expect(areaOf(points)).toBeGreaterThan((Math.PI * 100) / 4 - 0.005 * 15.7);
  });

  it('an arc over 0° goes on: from 270° to 90° is the right half', () => {
    const { points } = only(drawn(frame, arc('A', [20, 10, 5, 270, 90])), 'A', 'line');
    expect(points[0]![1]).toBeCloseTo(5, 9);
    expect(points[points.length - 1]![1]).toBeCloseTo(15, 9);
    for (const [x] of points) expect(x).toBeGreaterThanOrEqual(20 - 1e-9);
  });

  it('an arc of a mirrored plane lies on the other side of x = 0', () => {
    const { points } = only(drawn(frame, arc('A', [20, 10, 5, 0, 90], [210, 0], [220, 0], [230, -1])), 'A', 'line');
    expect(points[0]!.map((v) => Number(v.toFixed(6)))).toEqual([-25, 10]);
    expect(points[points.length - 1]!.map((v) => Number(v.toFixed(6)))).toEqual([-20, 15]);
  });

  it('a whole ellipse has the area π·a·b', () => {
    const { points } = only(
      drawn(frame, [
        [0, 'ELLIPSE'],
        [8, 'A'],
        [10, 20],
        [20, 10],
        [11, 6],
        [21, 8],
        [40, 0.5],
        [41, 0],
        [42, 2 * Math.PI],
      ]),
      'A',
      'ring',
    );
    // a = √(6² + 8²) = 10, b = 5: 157.08 m²; chords cut off at most 5 mm of a perimeter under 2π·10.
    expect(areaOf(points)).toBeLessThanOrEqual(Math.PI * 50);
    expect(areaOf(points)).toBeGreaterThan(Math.PI * 50 - 0.005 * 63);
  });

  it('a rational spline of degree 2 with weights 1, √½, 1 is a quarter circle', () => {
    const spline: Pair[] = [
      [0, 'SPLINE'],
      [8, 'A'],
      [70, 4],
      [71, 2],
      ...[0, 0, 0, 1, 1, 1].map((knot): Pair => [40, knot]),
      ...[
        [10, 0, 1],
        [10, 10, Math.SQRT1_2],
        [0, 10, 1],
      ].flatMap(([x, y, w]): Pair[] => [
        [10, x!],
        [20, y!],
        [41, w!],
      ]),
    ];
    const { points } = only(drawn(frame, spline), 'A', 'line');
    expect(points.length).toBeGreaterThan(10);
    for (const [x, y] of points) expect(Math.hypot(x, y)).toBeCloseTo(10, 9);
  });

  it('a spline given only by points to pass through is left out and counted', () => {
    const result = drawn(frame, [
      [0, 'SPLINE'],
      [8, 'A'],
      [71, 3],
      [11, 0],
      [21, 0],
      [11, 5],
      [21, 5],
    ]);
    expect(result.layers.find(({ name }) => name === 'A')?.ignored).toEqual({ 'SPLINE given by points to pass through': 1 });
  });
});

describe('lines', () => {
  it('four lines with ends 3 mm apart make one outline, and that is said', () => {
    const sides = [
      [0, 0, 30, 0],
      [30, 0, 30, 20],
      [30.003, 20, 0, 20],
      [0, 20, 0, 0.001],
    ];
    const result = drawn(...sides.map((side) => line('A', side)));
    expect(areaOf(only(result, 'A', 'ring').points)).toBeCloseTo(600, 1);
    expect(result.mends.find(({ code }) => code === 'LINES_CHAINED')?.values).toMatchObject({
      count: 4,
      rings: 1,
      gapMm: 3,
      toleranceMm: 5,
    });
  });

  it('three lines that meet in one point are not joined: it would be a guess', () => {
    const result = drawn(line('A', [0, 0, 20, 0]), line('A', [20, 0, 40, 0]), line('A', [20, 0, 20, 30]));
    expect(shapesOn(result, 'A').map(({ kind }) => kind)).toEqual(['line', 'line', 'line']);
  });

  it('an arc and two lines make a quarter disc', () => {
    const result = drawn(frame, line('A', [0, 0, 10, 0]), arc('A', [0, 0, 10, 0, 90]), line('A', [0, 10, 0, 0]));
    expect(areaOf(only(result, 'A', 'ring').points)).toBeCloseTo((Math.PI * 100) / 4, 0);
  });

  it('a gap of 4 mm is closed and said, one of 60 mm stays open', () => {
    const corners = (gap: number) => [
      [0, 0],
      [30, 0],
      [30, 20],
      [0, 20],
      [0, gap],
    ];
    const small = drawn(polyline('A', corners(0.004), false));
    expect(only(small, 'A', 'ring').points).toHaveLength(5);
    expect(small.mends.find(({ code }) => code === 'RINGS_CLOSED')?.says).toBe('1 outline was not closed (gap up to 4 mm) and was closed.');
    expect(shapesOn(drawn(polyline('A', corners(0.06), false)), 'A')[0]?.kind).toBe('line');
  });

  it('a polyline in space keeps its levels', () => {
    const vertex = (x: number, y: number, z: number): Pair[] => [
      [0, 'VERTEX'],
      [8, 'A'],
      [10, x],
      [20, y],
      [30, z],
    ];
    const result = drawn(frame, [[0, 'POLYLINE'], [8, 'A'], [66, 1], [70, 8], ...vertex(0, 0, 1.5), ...vertex(10, 0, 1.4), [0, 'SEQEND']]);
    expect(only(result, 'A', 'line')).toMatchObject({
      points: [
        [0, 0],
        [10, 0],
      ],
      levelsM: [1.5, 1.4],
    });
  });

  it('the same outline drawn twice counts once', () => {
    const result = drawn(frame, frame);
    only(result, 'frame', 'ring');
    expect(result.mends.find(({ code }) => code === 'SHAPES_REPEATED')?.values).toEqual({ count: 1 });
  });
});

describe('hatches', () => {
  const corners = (x: number, y: number, side: number): Pair[] =>
    [
      [x, y],
      [x + side, y],
      [x + side, y + side],
      [x, y + side],
    ].flatMap(([px, py]): Pair[] => [
      [10, px!],
      [20, py!],
    ]);
  const head: Pair[] = [
    [0, 'HATCH'],
    [8, 'A'],
    [10, 0],
    [20, 0],
    [30, 0],
    [2, 'SOLID'],
    [70, 1],
    [71, 0],
  ];

  it('a loop inside another is its hole', () => {
    const loop = (x: number, y: number, side: number): Pair[] => [[92, 2], [72, 0], [73, 1], [93, 4], ...corners(x, y, side), [97, 0]];
    const { points, holes } = only(drawn(frame, [...head, [91, 2], ...loop(0, 0, 20), ...loop(5, 5, 4), [75, 0], [98, 0]]), 'A', 'ring');
    expect([areaOf(points), holes?.length, areaOf(holes?.[0] ?? [])]).toEqual([400, 1, 16]);
  });

  it('edges: three lines and a half circle, drawn clockwise', () => {
    // A 10 × 4 rectangle whose right side bulges out by a half circle of radius 2, seen clockwise from (0,4).
    const edge = (x0: number, y0: number, x1: number, y1: number): Pair[] => [
      [72, 1],
      [10, x0],
      [20, y0],
      [11, x1],
      [21, y1],
    ];
    // Clockwise, angles count clockwise: from (10,4), which is at 90°, written -90 = 270, to (10,0).
    const half: Pair[] = [
      [72, 2],
      [10, 10],
      [20, 2],
      [40, 2],
      [50, 270],
      [51, 450],
      [73, 0],
    ];
    const result = drawn(frame, [
      ...head,
      [91, 1],
      [92, 1],
      [93, 4],
      ...edge(0, 4, 10, 4),
      ...half,
      ...edge(10, 0, 0, 0),
      ...edge(0, 0, 0, 4),
      [97, 0],
    ]);
    expect(areaOf(only(result, 'A', 'ring').points)).toBeCloseTo(40 + (Math.PI * 4) / 2, 1);
  });
});

describe('blocks', () => {
  it('scaled, turned and moved: base (1,1), scale 2 × 3, turned by 90°, to (20,10)', () => {
    const blocks = [block('B', [line('0', [1, 1, 2, 1]), line('own', [1, 1, 1, 3])], [1, 1])];
    const result = readText(dxf({ header: inMetres, blocks, entities: [frame, insert('A', 'B', [20, 10], [41, 2], [42, 3], [50, 90])] }));
    // (1,0) · 2 turned by 90° is (0,2); (0,2) · 3 turned is (-6,0). What is on layer 0 takes the layer of the insert.
    const ends = (name: string) => only(result, name, 'line').points.map((p) => p.map((v) => Number(v.toFixed(9))));
    expect(ends('A')).toEqual([
      [20, 10],
      [20, 12],
    ]);
    expect(ends('own')).toEqual([
      [20, 10],
      [14, 10],
    ]);
    expect(only(result, 'A', 'block')).toMatchObject({ at: [20, 10], block: 'B', turnDeg: 90 });
  });

  it('in rows and columns that turn with it, blocks inside blocks', () => {
    const blocks = [block('INNER', [circle('0', 0, 0, 1)]), block('OUTER', [insert('0', 'inner', [2, 0])])];
    const array = insert('A', 'outer', [10, 10], [50, 90], [70, 2], [71, 3], [44, 5], [45, 7]);
    const result = readText(dxf({ header: inMetres, blocks, entities: [frame, array] }));
    const centres = shapesOn(result, 'A').flatMap((shape) => (shape.kind === 'circle' ? [shape.at.map((v) => Math.round(v))] : []));
    // Columns go along (0,5), rows along (-7,0), the circle stands 2 further along y.
    expect(centres.sort()).toEqual(
      [
        [10, 12],
        [10, 17],
        [3, 12],
        [3, 17],
        [-4, 12],
        [-4, 17],
      ].sort(),
    );
  });

  it('a circle squeezed by its block is an ellipse', () => {
    const blocks = [block('B', [circle('0', 0, 0, 1)])];
    const result = readText(dxf({ header: inMetres, blocks, entities: [frame, insert('A', 'B', [20, 10], [41, 4], [42, 2])] }));
    expect(areaOf(only(result, 'A', 'ring').points)).toBeCloseTo(Math.PI * 8, 0);
  });

  it('another drawing, a missing block and a block inside itself are counted and named', () => {
    const blocks = [block('X', [], [0, 0], 4), block('LOOP', [insert('0', 'loop', [1, 1])])];
    const entities = [frame, insert('A', 'X', [0, 0]), insert('A', 'none', [0, 0]), insert('A', 'LOOP', [0, 0])];
    const result = readText(dxf({ header: inMetres, blocks, entities }));
    expect(result.layers.find(({ name }) => name === 'A')?.ignored).toEqual({
      'INSERT of another drawing (XREF)': 1,
      'INSERT of a block that is not there': 1,
      'INSERT inside itself': 1,
    });
    expect(codes(result).issues).toEqual(['warning BLOCK_MISSING', 'warning BLOCK_CYCLE']);
  });

  it('blocks that double at every step stop at a limit', () => {
    const step = (i: number) => block(`B${i}`, [insert('0', `B${i + 1}`, [0, 0]), insert('0', `B${i + 1}`, [1, 0])]);
    const blocks = [...Array.from({ length: 25 }, (_, i) => step(i)), block('B25', [circle('0', 0, 0, 1)])];
    const result = readText(dxf({ header: inMetres, blocks, entities: [frame, insert('A', 'B0', [0, 0])] }));
    expect(codes(result).issues).toEqual(['error BLOCKS_TOO_MANY']);
  });
});

describe('texts and levels', () => {
  it.each([
    ['+35.42', 35.42],
    ['35,42 m', 35.42],
    ['%%p0.00', 0],
    ['-0.35', -0.35],
    ['\u22120,35', -0.35],
    ['OK 12.10', 12.1],
    ['A1', null],
    ['12', null],
    ['DN 100', null],
    ['1:100', null],
  ])('%s is the level %s', (says, levelM) => {
    expect(only(drawn(frame, text('A', 1, 2, says)), 'A', 'text').levelM).toBe(levelM);
  });

  it('a paragraph loses its formatting, not its words', () => {
    const paragraph: Pair[] = [
      [0, 'MTEXT'],
      [8, 'A'],
      [10, 1],
      [20, 2],
      [3, '{\\fSome Font|b0;\\H0.5x;Rasen'],
      [1, ' \\U+00FCber}\\PDecke \\S1/2;'],
    ];
    expect(only(drawn(frame, paragraph), 'A', 'text').says).toBe('Rasen über Decke 1/2');
  });

  it('points give levels, and attributes of blocks are read as texts', () => {
    const attribute: Pair[] = [
      [66, 1],
      [0, 'ATTRIB'],
      [8, 'A'],
      [10, 5],
      [20, 6],
      [1, '+1.25'],
      [2, 'LEVEL'],
      [0, 'SEQEND'],
    ];
    const result = readText(
      dxf({ header: inMetres, blocks: [block('B', [])], entities: [frame, point('A', 3, 4, 1.2), insert('A', 'B', [5, 6], ...attribute)] }),
    );
    expect(only(result, 'A', 'point')).toMatchObject({ at: [3, 4], levelM: 1.2 });
    expect(only(result, 'A', 'text')).toMatchObject({ at: [5, 6], levelM: 1.25 });
  });

  it('a drawing without levels gives none, and says so', () => {
    const result = drawn(frame, point('A', 3, 4, 0));
    expect(only(result, 'A', 'point').levelM).toBeNull();
    expect(codes(result).mends).toContain('LEVELS_DROPPED');
  });
});
