/** Drawings in DXF: units, what is left out; two other programs for comparison. */

import { DxfWriter, point3d, Units } from '@tarikjabiri/dxf';
import DxfParser from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaOf } from '../../src/scene/ring.ts';
import { circle, dxf, inMetres, layer, line, type Pair, polyline, rectangle } from './dxf-builder.ts';
import { codes, only, readText } from './reading.ts';

const drawn = (...entities: (readonly Pair[])[]) => readText(dxf({ header: inMetres, entities }));
/** Size that raises no question. */
const frame = rectangle('frame', 40, 30);

describe('units', () => {
  it.each([
    [4, 40_000, 0.001],
    [5, 4_000, 0.01],
    [6, 40, 1],
    [2, 131.2335958, 0.3048],
    [21, 131.2333333, 1200 / 3937],
  ])('$INSUNITS %i: %d is 40 m', (code, side) => {
    const result = readText(dxf({ header: [['$INSUNITS', 70, code]], entities: [rectangle('A', side, side / 2)] }));
    expect(result.box?.maxX).toBeCloseTo(40, 6);
    expect(codes(result).open).toEqual([]);
  });

  it('none given and 40 000 × 60 000: asks, takes millimetres, tells both sizes', () => {
    const result = readText(dxf({ entities: [rectangle('A', 40_000, 60_000)] }));
    expect(codes(result).open).toEqual(['unit']);
    const unit = result.questions.find(({ id }) => id === 'unit');
    expect(unit).toMatchObject({ taken: 'mm', guess: 'mm' });
    expect(unit?.choices.find(({ value }) => value === 'm')?.says).toBe('metres: 40000 × 60000 m');
    expect(unit?.choices.find(({ value }) => value === 'mm')?.says).toBe('millimetres: 40 × 60 m');
    expect(only(result, 'A', 'ring').points[2]).toEqual([40, 60]);
    const answered = readText(dxf({ entities: [rectangle('A', 40_000, 60_000)] }), { unit: 'cm' });
    expect(only(answered, 'A', 'ring').points[2]).toEqual([400, 600]);
    expect(codes(answered).open).toEqual([]);
  });

  it('metres keep every bit of the file', () => {
    const [x, y] = [392_000.123456789, 5_812_000.987654321];
    expect(only(drawn(rectangle('A', 40, 30, [x, y])), 'A', 'ring').points[0]).toEqual([x, y]);
  });
});

describe('what is not drawn on the plan', () => {
  it('paper space, invisible, tilted and unknown entities are counted by layer', () => {
    const result = drawn(
      frame,
      line('A', [0, 0, 1, 1], [67, 1]),
      line('A', [0, 0, 1, 1], [60, 1]),
      [...circle('A', 0, 0, 1), [210, 1], [220, 0], [230, 0]],
      [
        [0, '3DSOLID'],
        [8, 'A'],
        [1, 'x'],
      ],
      [
        [0, 'DIMENSION'],
        [8, 'A'],
        [2, '*D1'],
      ],
    );
    expect(result.layers.find(({ name }) => name === 'A')?.ignored).toEqual({
      'LINE in paper space': 1,
      'LINE set invisible': 1,
      'CIRCLE tilted': 1,
      '3DSOLID': 1,
      DIMENSION: 1,
    });
  });

  it('a layer that is off or frozen is read and marked', () => {
    const tables = [layer('off', 0, -7), layer('frozen', 1), layer('on')];
    const entities = ['off', 'frozen', 'on'].map((name) => rectangle(name, 40, 30));
    const result = readText(dxf({ header: inMetres, tables, entities }));
    expect(result.layers.map(({ name, hidden, shapes }) => [name, hidden, shapes.length])).toEqual([
      ['off', true, 1],
      ['frozen', true, 1],
      ['on', false, 1],
    ]);
  });

  it('an entity with a bad number is left out with its line, the rest is read', () => {
    const result = drawn(
      frame,
      line('A', [0, 0, 1, 1]).map(([code, value]) => (code === 11 ? ([11, 'NaN'] as Pair) : ([code, value] as Pair))),
    );
    expect(codes(result).issues).toEqual(['warning NUMBER_BAD']);
    only(result, 'frame', 'ring');
  });
});

describe('other programs', () => {
  const value = fc.double({ min: -500, max: 500, noNaN: true }).map((v) => Number(v.toFixed(4)));

  it('reads the same lines, polylines and circles as dxf-parser (MIT)', () => {
    const entity = fc.oneof(
      fc.tuple(value, value, value, value).map((ends) => line('A', ends)),
      fc.array(fc.tuple(value, value), { minLength: 3, maxLength: 6 }).map((vertices) => polyline('A', vertices)),
      fc.tuple(value, value, fc.double({ min: 1, max: 50, noNaN: true })).map(([x, y, r]) => circle('A', x, y, r)),
    );
    fc.assert(
      fc.property(fc.array(entity, { minLength: 1, maxLength: 8 }), (entities) => {
        const drawing = dxf({ header: inMetres, entities });
        const theirs = new DxfParser().parseSync(drawing)?.entities ?? [];
        const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
        const meet = (x: number, y: number) =>
          Object.assign(box, {
            minX: Math.min(box.minX, x),
            minY: Math.min(box.minY, y),
            maxX: Math.max(box.maxX, x),
            maxY: Math.max(box.maxY, y),
          });
        for (const one of theirs) {
          const { vertices, center, radius } = one as unknown as {
            vertices?: { x: number; y: number }[];
            center?: { x: number; y: number };
            radius?: number;
          };
          for (const { x, y } of vertices ?? []) meet(x, y);
          if (center && radius) for (const way of [-radius, radius]) meet(center.x + way, center.y + way);
        }
        const ours = readText(drawing, { stray: 'keep', unit: 'm' });
        const counted = Object.values(ours.layers[0]?.used ?? {}).reduce((a, b) => a + b, 0);
        expect(counted).toBe(theirs.length);
        const whole = ours.issues.length === 0 && !ours.mends.some(({ code }) => code === 'POINTS_REPEATED');
        if (whole) for (const key of ['minX', 'minY', 'maxX', 'maxY'] as const) expect(ours.box?.[key]).toBeCloseTo(box[key], 6);
      }),
      { seed: 7, numRuns: 100 },
    );
  });

  it('reads what @tarikjabiri/dxf (MIT) writes', () => {
    const writer = new DxfWriter();
    writer.setUnits(Units.Meters);
    writer.addLayer('Kante', 7, 'Continuous');
    writer.setCurrentLayerName('Kante');
    writer.addLWPolyline([{ point: point3d(0, 0) }, { point: point3d(40, 0) }, { point: point3d(40, 30) }, { point: point3d(0, 30) }], {
      flags: 1,
    });
    writer.addCircle(point3d(5, 5), 0.4);
    const result = readText(writer.stringify());
    expect(areaOf(only(result, 'Kante', 'ring').points)).toBe(1200);
    expect(only(result, 'Kante', 'circle')).toMatchObject({ at: [5, 5], radiusM: 0.4 });
    expect(codes(result)).toMatchObject({ issues: [], open: [] });
  });
});
