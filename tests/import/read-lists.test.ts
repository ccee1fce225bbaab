/** Tables of points, maps and survey files that are in order: what each number means. */

import { describe, expect, it } from 'vitest';
import type { DrawingShape } from '../../src/model/drawing.ts';
import { codes, only, readText, shapesOn } from './reading.ts';

const spots = (shapes: readonly DrawingShape[]) => shapes.flatMap((shape) => (shape.kind === 'point' ? [[...shape.at, shape.levelM]] : []));

describe('tables', () => {
  const EXPECTED = [
    [0.5, 0, 1.2],
    [40.5, 0, 1.25],
    [40.5, 30.25, -0.35],
  ];

  it.each([
    ['semicolons and commas', 'Nr;x;y;z\n1;0,5;0;1,2\n2;40,5;0;1,25\n3;40,5;30,25;-0,35\n'],
    ['commas and points', 'id,x,y,z\n1,0.5,0,1.2\n2,40.5,0,1.25\n3,40.5,30.25,-0.35\n'],
    ['tabs', 'Punkt\tRechtswert\tHochwert\tHöhe\n1\t0.5\t0\t1.2\n2\t40.5\t0\t1.25\n3\t40.5\t30.25\t-0.35\n'],
    ['blanks in columns', '1   0.50    0.00   1.20\n2  40.50    0.00   1.25\n3  40.50   30.25  -0.35\n'],
    ['quotation marks', '"Nr";"x [m]";"y [m]";"z [m]"\n"1";"0,5";"0";"1,2"\n"2";"40,5";"0";"1,25"\n"3";"40,5";"30,25";"-0,35"\n'],
    ['north before east, by heading', 'N,E,Z\n0,0.5,1.2\n0,40.5,1.25\n30.25,40.5,-0.35\n'],
    ['a spreadsheet that names its separator', 'sep=;\nx;y;z\n0,5;0;1,2\n40,5;0;1,25\n40,5;30,25;-0,35\n'],
    ['notes above and below', '# survey\nLevels of the deck\nNr;x;y;z\n1;0,5;0;1,2\n2;40,5;0;1,25\n3;40,5;30,25;-0,35\nend\n'],
    ['old line ends', 'Nr;x;y;z\r1;0,5;0;1,2\r2;40,5;0;1,25\r3;40,5;30,25;-0,35\r'],
  ])('%s', (_, text) => {
    const result = readText(text);
    expect(spots(shapesOn(result, 'points'))).toEqual(EXPECTED);
    expect(codes(result).issues).toEqual([]);
  });

  it('one number that can be read one way only settles the mark for all', () => {
    const result = readText('x;y;z\n1.234;2.345;1.250\n21.234;2.345;0.260\n21.234;12.345;1.270\n');
    expect(codes(result).open).toEqual([]);
    expect(spots(shapesOn(result, 'points'))[0]).toEqual([1.234, 2.345, 1.25]);
  });

  it('the answer counts: thousands', () => {
    const text = 'id;x;y\na;1.234;2.345\nb;21.234;2.345\nc;21.234;12.345\n';
    expect(spots(shapesOn(readText(text, { decimal: ',', unit: 'm' }), 'points'))[1]).toEqual([21234, 2345, null]);
  });

  it('columns as answered', () => {
    const result = readText('7 1.5 0 9.25\n8 2.5 40 9.25\n9 1.75 40 39.25\n', { columns: 'id,z,x,y' });
    expect(spots(shapesOn(result, 'points'))).toEqual([
      [0, 9.25, 1.5],
      [40, 9.25, 2.5],
      [40, 39.25, 1.75],
    ]);
  });

  it('an answer that is none is refused, and the guess is taken', () => {
    const result = readText('x;y;z\n0;0;1.2\n40;0;1.3\n40;30;1.25\n', { columns: 'x,x,z', unit: 'parsec' });
    expect(codes(result).issues).toEqual(['error ANSWER_UNKNOWN', 'error ANSWER_UNKNOWN']);
  });

  it('feet by heading: 100 ft are 30.48 m', () => {
    expect(spots(shapesOn(readText('x [ft];y [ft];z [ft]\n0;0;1\n100;0;2\n100;50;1\n'), 'points'))[1]).toEqual([30.48, 0, 0.6096]);
  });

  it('dates as numbers where that is the answer', () => {
    const text = 'x;y;z\n0;0;1.2\n40;0;1.3\n22. Mai;30;1.25\n';
    expect(spots(shapesOn(readText(text, { dates: 'number' }), 'points'))[2]).toEqual([22.5, 30, 1.25]);
    expect(shapesOn(readText(text), 'points')).toHaveLength(2);
  });

  it('kinds of points become layers', () => {
    const result = readText('Nr;x;y;z;Code\n1;0;0;1.2;edge\n2;40;0;1.3;edge\n3;40;30;1.25;drain\n');
    expect(result.layers.map(({ name, shapes }) => [name, shapes.length])).toEqual([
      ['edge', 2],
      ['drain', 1],
    ]);
  });
});

describe('maps', () => {
  const map = (...features: object[]) => JSON.stringify({ type: 'FeatureCollection', features });
  const RING = [
    [0, 0],
    [40, 0],
    [40, 30],
    [0, 30],
    [0, 0],
  ];
  const HOLE = [
    [5, 5],
    [5, 8],
    [9, 8],
    [5, 5],
  ];

  it('outlines with holes either way round, several in one, by layer and name', () => {
    const polygon = {
      type: 'Feature',
      properties: { Layer: 'Deck', Name: 'Roof' },
      geometry: { type: 'Polygon', coordinates: [RING, HOLE] },
    };
    const several = {
      type: 'Feature',
      id: 7,
      properties: {},
      geometry: { type: 'MultiPolygon', coordinates: [[[...RING].reverse()], [HOLE]] },
    };
    const result = readText(map(polygon, several));
    expect(only(result, 'Deck', 'ring')).toMatchObject({ name: 'Roof', points: RING.slice(0, 4), holes: [HOLE.slice(0, 3)] });
    expect(shapesOn(result, 'Polygon').map(({ kind, name }) => [kind, name])).toEqual([
      ['ring', '7'],
      ['ring', '7'],
    ]);
    expect(codes(result)).toMatchObject({ issues: [], open: [] });
  });

  it('points with levels, in the coordinates or beside them', () => {
    const points = [{ coordinates: [1, 2, 1.5] }, { coordinates: [40, 2], properties: { Level: 1.25 } }, { coordinates: [40, 30] }];
    const features = points.map(({ coordinates, properties = {} }) => ({
      type: 'Feature',
      properties,
      geometry: { type: 'Point', coordinates },
    }));
    expect(spots(shapesOn(readText(map(...features)), 'Point'))).toEqual([
      [1, 2, 1.5],
      [40, 2, 1.25],
      [40, 30, null],
    ]);
  });

  it('a ring that does not come back to its beginning is closed and told, or stays open', () => {
    const open = (gap: number) =>
      map({ type: 'Feature', properties: {}, geometry: { type: 'Polygon', coordinates: [[...RING.slice(0, 4), [0, gap]]] } });
    expect(codes(readText(open(0.01))).mends).toContain('RINGS_CLOSED');
    expect(shapesOn(readText(open(2)), 'Polygon')[0]?.kind).toBe('line');
  });

  it('broken JSON is explained at its line', () => {
    const result = readText('{"type": "FeatureCollection",\n"features": [,]}');
    expect(result.issues).toMatchObject([{ code: 'JSON_SYNTAX', level: 'error', line: 2 }]);
  });
});

describe('survey files', () => {
  const survey = (inside: string, unit = '<Metric linearUnit="meter"/>') =>
    `<?xml version="1.0"?><LandXML xmlns="http://www.landxml.org/schema/LandXML-1.2"><Units>${unit}</Units>${inside}</LandXML>`;
  const POINTS =
    '<CgPoints><CgPoint name="a">100 10 1.5</CgPoint><CgPoint name="b" code="drain">100 50 1.4</CgPoint><CgPoint pntRef="a"/></CgPoints>';

  it('north comes before east, and that is told', () => {
    const result = readText(survey(POINTS));
    expect(only(result, 'CgPoints', 'point')).toMatchObject({ at: [10, 100], levelM: 1.5, name: 'a' });
    expect(only(result, 'drain', 'point')).toMatchObject({ at: [50, 100], levelM: 1.4, name: 'b' });
    expect(codes(result)).toMatchObject({ mends: ['NORTH_EAST'], open: [], issues: [] });
  });

  it('points of a surface, faces counted, breaklines with levels, boundary as outline', () => {
    const surface = `<Surfaces><Surface name="TOP"><SourceData><Breaklines><Breakline><PntList3D>0 0 1 0 40 1.2</PntList3D></Breakline></Breaklines>
      <Boundaries><Boundary><PntList2D>0 0 0 40 30 40 30 0 0 0</PntList2D></Boundary></Boundaries></SourceData>
      <Definition surfType="TIN"><Pnts><P id="1">0 0 1</P><P id="2">0 40 1.2</P><P id="3">30 0 1.1</P></Pnts><Faces><F>1 2 3</F><F i="1">1 2 3</F></Faces></Definition></Surface></Surfaces>`;
    const result = readText(survey(surface));
    expect(spots(shapesOn(result, 'TOP'))).toEqual([
      [0, 0, 1],
      [40, 0, 1.2],
      [0, 30, 1.1],
    ]);
    expect(only(result, 'TOP', 'line')).toMatchObject({
      points: [
        [0, 0],
        [40, 0],
      ],
      levelsM: [1, 1.2],
    });
    expect(only(result, 'TOP boundary', 'ring').points).toHaveLength(4);
    expect(result.mends.find(({ code }) => code === 'FACES_TO_POINTS')?.values).toEqual({ count: 1, surface: 'TOP' });
  });

  it('US survey feet: 3937 of them are 1200 m', () => {
    const result = readText(
      survey('<CgPoints><CgPoint>0 0 3.937</CgPoint><CgPoint>39.37 393.7 0</CgPoint></CgPoints>', '<Imperial linearUnit="USSurveyFoot"/>'),
    );
    expect(spots(shapesOn(result, 'CgPoints'))).toEqual([
      [0, 0, 1.2],
      [120, 12, 0],
    ]);
  });

  it('parcels and alignments are left out and counted', () => {
    const result = readText(
      survey(
        `${POINTS}<Parcels><Parcel><CoordGeom><Line><Start>0 0</Start></Line></CoordGeom></Parcel></Parcels><Alignments><Alignment/></Alignments>`,
      ),
    );
    expect(result.layers.find(({ name }) => name === 'survey')?.ignored).toEqual({ Parcel: 1, Alignment: 1 });
  });

  it('XML that breaks its rules names the line', () => {
    expect(readText(survey('<CgPoints>\n<CgPoint>1 2 3</CgPoints>')).issues).toMatchObject([{ code: 'XML_DAMAGED', level: 'error' }]);
  });
});
