/** What a random comparison with matrices worked out apart found: openings in slopes, face sets with places of points, systems of coordinates. */

import { describe, expect, it } from 'vitest';
import { importIn } from '../../../src/import/import-language.ts';
import type { ImportResult } from '../../../src/model/drawing.ts';
import type { PointM } from '../../../src/model/scene-file.ts';
import { areaOf } from '../../../src/scene/ring.ts';
import { codes, only, readText } from '../reading.ts';
import { IN_FEET, SEVERAL_SLABS, SLOPED_FACES, TILTED_PROFILE, TURNED_SLAB } from './models.ts';

const plus = (model: string, lines: string) => model.replace('ENDSEC;\nEND-ISO', `${lines}\nENDSEC;\nEND-ISO`);

/** An opening of a box in a slab: the middle of its foot, its size, and where its z points. */
interface Box {
  readonly slab: number;
  readonly at: readonly [number, number, number];
  readonly size: readonly [number, number, number];
  readonly up?: readonly [number, number, number];
}

const step = (numbers: readonly number[]) => `(${numbers.map((value) => (Number.isInteger(value) ? `${value}.` : value)).join(',')})`;

const withOpening = (model: string, { slab, at, size: [width, depth, height], up = [0, 0, 1] }: Box, id = 500) =>
  plus(
    model,
    `#${id}=IFCCARTESIANPOINT(${step(at)});
#${id + 1}=IFCDIRECTION(${step(up)});
#${id + 2}=IFCDIRECTION(${step([up[2], 0, -up[0]])});
#${id + 3}=IFCAXIS2PLACEMENT3D(#${id},#${id + 1},#${id + 2});
#${id + 4}=IFCDIRECTION((0.,0.,1.));
#${id + 5}=IFCCARTESIANPOINT((0.,0.));
#${id + 6}=IFCAXIS2PLACEMENT2D(#${id + 5},$);
#${id + 7}=IFCRECTANGLEPROFILEDEF(.AREA.,$,#${id + 6},${width},${depth});
#${id + 8}=IFCEXTRUDEDAREASOLID(#${id + 7},#${id + 3},#${id + 4},${height});
#${id + 9}=IFCSHAPEREPRESENTATION(#4,'Body','SweptSolid',(#${id + 8}));
#${id + 10}=IFCPRODUCTDEFINITIONSHAPE($,$,(#${id + 9}));
#${id + 11}=IFCOPENINGELEMENT('o',$,'O',$,$,#3,#${id + 10},$);
#${id + 12}=IFCRELVOIDSELEMENT('v',$,$,$,#${slab},#${id + 11});`,
  );

const micro = (value: number) => Math.round(value * 1e6) / 1e6;
const boxesOf = (result: ImportResult) =>
  (only(result, 'IfcSlab', 'ring').holes ?? []).map((hole: readonly PointM[]) =>
    [0, 1].flatMap((axis) => {
      const values = hole.map((point) => point[axis]!);
      return [micro(Math.min(...values)), micro(Math.max(...values))];
    }),
  );
const valuesOf = (result: ImportResult, code: string) => result.mends.find((mend) => mend.code === code)?.values;

describe('openings in a slope of faces: the top falls from 0.2 m at x = 0 to 0 at x = 20, 0.25 m thick', () => {
  const SLAB = 54;

  it('reaching 2 cm above the top where they are, they go through, though the nearest corner lies higher', () => {
    // At x = 5 the top is at 0.2 − 0.05 = 0.15; the opening ends at −1 + 1.17 = 0.17.
    const result = readText(withOpening(SLOPED_FACES, { slab: SLAB, at: [5, 5, -1], size: [1, 1, 1.17] }));
    expect(boxesOf(result)).toEqual([[4.5, 5.5, 4.5, 5.5]]);
    expect(valuesOf(result, 'SLAB_OPENINGS')).toEqual({ through: 1 });
  });

  it('10 cm deep, they are recesses', () => {
    // At x = 15 the top is at 0.05.
    const result = readText(withOpening(SLOPED_FACES, { slab: SLAB, at: [15, 5, -0.05], size: [1, 1, 0.5] }));
    expect(boxesOf(result)).toEqual([]);
    expect(valuesOf(result, 'OPENINGS_LEFT')).toEqual({ recesses: 1, below: 0 });
  });

  it('beside the slab, they are told', () => {
    const result = readText(withOpening(SLOPED_FACES, { slab: SLAB, at: [25, 5, -1], size: [1, 1, 3] }));
    expect(codes(result).issues).toEqual(['warning OPENINGS_BESIDE']);
    expect(importIn(result, 'de').issues[0]!.got).toBe('1 Öffnung von „Sloped“, von oben gesehen neben der Decke');
  });
});

it('an opening at right angles to a slope lies where it meets the top', () => {
  // The top passes (10, 5) at 1.3 + 0.2 = 1.5. The opening begins 1 m under it along (−0.02, 0, 1) and is 2 m high, so that its upper end lies
  // 2 cm to the left. Its 2 m along the slope are 2 / √1.0004 = 1.9996 m of plan: 10 ± 0.9998.
  const foot = [10.02, 5, 0.5] as const;
  const result = readText(withOpening(TILTED_PROFILE, { slab: 22, at: foot, size: [2, 1, 2 * Math.sqrt(1.0004)], up: [-0.02, 0, 1] }));
  const [[left, right, low, high]] = boxesOf(result) as [[number, number, number, number]];
  expect(left).toBeCloseTo(9.0002, 5);
  expect(right).toBeCloseTo(10.9998, 5);
  expect([low, high]).toEqual([4.5, 5.5]);
});

it.each(['.T.', '.F.'])('nor does it matter whether faces look outwards or inwards (%s)', (sense) => {
  // The top passes (10, 5) at 0.2 − 0.1 = 0.1 and falls 1 %. 2 m along it are 2 / √1.0001 of plan: 10 ± 0.99995.
  const model = SLOPED_FACES.replace(/(IFCFACEOUTERBOUND\(#\d+),\.T\./g, `$1,${sense}`);
  const box = { slab: 54, at: [9.99, 5, -0.9], size: [2, 1, 2 * Math.sqrt(1.0001)], up: [0.01, 0, 1] } as const;
  const [[left, right]] = boxesOf(readText(withOpening(model, box))) as [[number, number]];
  expect(left).toBeCloseTo(9.00005, 5);
  expect(right).toBeCloseTo(10.99995, 5);
});

it('openings of a whole cut its parts', () => {
  const whole = plus(SEVERAL_SLABS, "#300=IFCSLAB('w',$,'Whole',$,$,#3,$,$,.FLOOR.);\n#301=IFCRELAGGREGATES('a',$,$,$,#300,(#17,#37));");
  // 2 × 2 m over the joint at x = 10: 1 × 2 m of each part; the part at x = 0 to 10 keeps 98 m².
  const cut = withOpening(whole, { slab: 300, at: [10, 5, -1], size: [2, 2, 2] });
  expect(areaOf(only(readText(cut, { slab: '17' }), 'IfcSlab', 'ring').points)).toBeCloseTo(98, 6);
  // What lies in another part alone is no fault of this one.
  const apart = withOpening(whole, { slab: 300, at: [15, 5, -1], size: [2, 2, 2] });
  expect(readText(apart, { slab: '17' }).issues).toEqual([]);
});

describe('faces', () => {
  const points = [
    [0, 0, 0.2],
    [20, 0, 0],
    [20, 10, 0],
    [0, 10, 0.2],
    [0, 0, -0.05],
    [20, 0, -0.25],
    [20, 10, -0.25],
    [0, 10, -0.05],
  ];
  const quads = [
    [1, 2, 3, 4],
    [8, 7, 6, 5],
    [5, 6, 2, 1],
    [6, 7, 3, 2],
    [7, 8, 4, 3],
    [8, 5, 1, 4],
  ];
  const schema = SLOPED_FACES.replace("('IFC2X3')", "('IFC4')");

  it.each(['IFCTRIANGULATEDFACESET', 'IFCPOLYGONALFACESET'])('%s with places of its points (PnIndex)', (type) => {
    // Listed from behind, with a point far away before them: place of point i is 10 − i.
    const list = `#200=IFCCARTESIANPOINTLIST3D((${[[99, 99, 99], ...[...points].reverse()].map(step).join(',')}));`;
    const places = `(${points.map((_, i) => 9 - i).join(',')})`;
    const triangles = quads.flatMap(([a, b, c, d]) => [
      [a, b, c],
      [a, c, d],
    ]);
    const body =
      type === 'IFCPOLYGONALFACESET'
        ? `${quads.map((quad, i) => `#${201 + i}=IFCINDEXEDPOLYGONALFACE((${quad.join(',')}));`).join('\n')}
#51=${type}(#200,.T.,(${quads.map((_, i) => `#${201 + i}`).join(',')}),${places});`
        : `#51=${type}(#200,$,.T.,(${triangles.map((corners) => `(${corners.join(',')})`).join(',')}),${places});`;
    const result = readText(schema.replace('#51=IFCFACETEDBREP(#50);', `${list}\n${body}`));
    expect(result.issues).toEqual([]);
    const { points: corners } = only(result, 'IfcSlab', 'ring');
    expect([...corners].sort((a, b) => a[0] - b[0] || a[1] - b[1])).toEqual([
      [0, 0],
      [0, 10],
      [20, 0],
      [20, 10],
    ]);
    expect(valuesOf(result, 'SLAB_READ')).toMatchObject({ fromM: 0, toM: 0.2 });
  });

  it.each([
    ['as the outer edge', '#204,#203,#202,#201'],
    ['against it', '#201,#202,#203,#204'],
  ])('with a hole whose edge runs %s', (_, loop) => {
    const corners = [
      [8, 6, 0.12],
      [12, 6, 0.08],
      [12, 4, 0.08],
      [8, 4, 0.12],
    ];
    const lines = `${corners.map((corner, i) => `#${201 + i}=IFCCARTESIANPOINT(${step(corner)});`).join('\n')}
#205=IFCPOLYLOOP((${loop}));
#206=IFCFACEBOUND(#205,.T.);`;
    const result = readText(plus(SLOPED_FACES, lines).replace('#40=IFCFACE((#30))', '#40=IFCFACE((#30,#206))'));
    expect(boxesOf(result)).toEqual([[8, 12, 4, 6]]);
  });
});

describe('what is not applied is told', () => {
  it('a system of coordinates of the whole model', () => {
    // #31 lies at (6000, 5000, −400) mm.
    const result = readText(TURNED_SLAB.replace('1.E-5,#2,', '1.E-5,#31,'));
    expect(valuesOf(result, 'WORLD_LEFT')).toEqual({ xM: 6, yM: 5, zM: -0.4, turnDeg: 0, tiltDeg: 0 });
    expect(only(result, 'IfcSlab', 'ring').points).toEqual(only(readText(TURNED_SLAB), 'IfcSlab', 'ring').points);
    expect(codes(readText(TURNED_SLAB)).mends).not.toContain('WORLD_LEFT');
  });

  it('a scale of the grid; true north only of a plan that stays', () => {
    const scaled = SEVERAL_SLABS.replace('0.,1.,$)', '0.,1.,0.9996)');
    const result = readText(scaled, { slab: '57', origin: 'map' });
    expect(valuesOf(result, 'MAP_SCALE')!.scale).toBeCloseTo(0.9996, 12);
    expect(
      importIn(result, 'de')
        .mends.map(({ says }) => says)
        .join('\n'),
    ).toContain('1 m im Modell ist dort 0,9996 m');
    expect(codes(result).mends).not.toContain('TRUE_NORTH');
    expect(codes(readText(SEVERAL_SLABS, { slab: '57' })).mends).not.toContain('MAP_SCALE');
  });

  it('a scale of 0.001 of a model in millimetres says that the map is in metres', () => {
    const lines = "#600=IFCPROJECTEDCRS('an invented grid',$,$,$,$,$,$);\n#601=IFCMAPCONVERSION(#4,#600,400000.,5800000.,35.,1.,0.,0.001);";
    const result = readText(plus(TURNED_SLAB, lines));
    expect(valuesOf(result, 'MAP_LEFT')).toMatchObject({ eastM: 400_000, northM: 5_800_000, levelM: 35 });
    expect(codes(result).mends).not.toContain('MAP_SCALE');
  });

  it('a body added to the slab', () => {
    const result = readText(plus(TURNED_SLAB, "#600=IFCRELPROJECTSELEMENT('p',$,$,$,#26,#36);"));
    expect(codes(result).issues).toEqual(['warning MODEL_PROJECTIONS']);
  });
});

describe('units', () => {
  it('that are not known are told, and asked even where another fits', () => {
    // 125 × 50 units would do as metres.
    const result = readText(IN_FEET.replace('IFCLENGTHMEASURE(0.3048)', 'IFCLENGTHMEASURE(0.305)'));
    expect(codes(result)).toMatchObject({ issues: ['warning MODEL_UNIT'], open: ['unit'] });
    expect(result.issues[0]!.got).toBe('a unit of length of 0.305 m');
  });

  it('that the model gives count for a small slab as well', () => {
    // 20 × 10 ft are 6.096 × 3.048 m: less than decks have.
    const small = SLOPED_FACES.replace(
      'IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);',
      "IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'FOOT',#400);\n#400=IFCMEASUREWITHUNIT(IFCRATIOMEASURE(304.8),#401);\n#401=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);",
    );
    const result = readText(small);
    expect(codes(result).open).toEqual([]);
    expect(areaOf(only(result, 'IfcSlab', 'ring').points)).toBeCloseTo(6.096 * 3.048, 9);
  });
});

describe('slabs of one storey above each other', () => {
  const shapes = (result: ImportResult) => result.layers.find(({ name }) => name === 'IfcSlab z')!.shapes;
  // The east one over the west one, 10 cm higher.
  const moved = (x: string) => SEVERAL_SLABS.replace('#30=IFCCARTESIANPOINT((15.,5.,0.))', `#30=IFCCARTESIANPOINT((${x},5.,0.1))`);

  it('have the levels of the upper one', () => {
    const result = readText(moved('5.'), { slab: 'storey-70' });
    expect(shapes(result).map((shape) => shape.kind === 'point' && shape.levelM)).toEqual([0.1, 0.1, 0.1, 0.1]);
    expect(valuesOf(result, 'PARTS_COVERED')).toEqual({ count: 1 });
  });

  it('half covered, the lower one has its level beside the upper one', () => {
    // x = 0 to 5 and 5 to 15 of 10 m depth, levels 10 mm inside: 4.98 × 9.98 and 9.98 × 9.98 m².
    const result = readText(moved('10.'), { slab: 'storey-70' });
    const areas = shapes(result).flatMap((shape) => (shape.kind === 'ring' ? [[shape.levelM, areaOf(shape.points)] as const] : []));
    expect(areas.map(([z]) => z)).toEqual([0, 0.1]);
    expect(areas[0]![1]).toBeCloseTo(4.98 * 9.98, 6);
    expect(areas[1]![1]).toBeCloseTo(9.98 * 9.98, 6);
  });
});
