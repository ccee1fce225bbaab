/** Bad drawings, maps and survey files. */

import { arc, block, dxf, inMetres, insert, line, type Pair, point, polyline, rectangle, text } from '../dxf-builder.ts';
import { type BadInput, bytes8 } from './bad-input.ts';

const metres = (...entities: (readonly Pair[])[]) => dxf({ header: inMetres, entities });
const deck = rectangle('Deck', 40, 60);
const feature = (geometry: object, properties: object = {}) => ({ type: 'Feature', properties, geometry });
const map = (...features: object[]) => JSON.stringify({ type: 'FeatureCollection', features });
const polygon = (...rings: number[][][]) => ({ type: 'Polygon', coordinates: rings });
const SITE = [
  [0, 0],
  [40, 0],
  [40, 30],
  [0, 30],
  [0, 0],
];
const survey = (inside: string, head = '<?xml version="1.0"?>') =>
  `${head}<LandXML><Units><Metric linearUnit="meter"/></Units>${inside}</LandXML>`;

/** A wavy outline of so many points round a circle of 100 m. */
function wave(count: number): number[][] {
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    const radius = 100 + 0.001 * Math.sin(50 * angle);
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}

export const DRAWING_ROWS: readonly BadInput[] = [
  {
    row: 1,
    what: 'an outline that crosses itself',
    by: 'import',
    file: () =>
      metres(
        polyline('Deck', [
          [0, 0],
          [40, 30],
          [40, 0],
          [0, 20],
        ]),
      ),
    // The lines (0,0)–(40,30) and (40,0)–(0,20) cross where 0.75 x = 20 − 0.5 x: x = 16.
    expected: { warning: 'RING_CROSSES_ITSELF', says: ['crossing itself near (16.00, 12.00)'] },
  },
  {
    row: 1,
    what: 'an outline that crosses itself, used as the deck',
    by: 'import',
    file: () =>
      metres(
        polyline('Deck', [
          [0, 0],
          [40, 30],
          [40, 0],
          [0, 20],
        ]),
      ),
    roles: { Deck: 'outline' },
    expected: { error: 'POLYGON_CROSSES_ITSELF', says: ['(16.000, 12.000)'] },
  },
  {
    row: 2,
    what: 'an outline not closed by 4 mm',
    by: 'import',
    file: () =>
      metres(
        polyline(
          'Deck',
          [
            [0, 0],
            [40, 0],
            [40, 30],
            [0, 30],
            [0, 0.004],
          ],
          false,
        ),
      ),
    expected: { mend: 'RINGS_CLOSED', says: ['not closed (gap up to 4 mm)', 'closed'] },
  },
  {
    row: 2,
    what: 'an outline not closed by 60 mm, used as the deck',
    by: 'import',
    file: () =>
      metres(
        polyline(
          'Deck',
          [
            [0, 0],
            [40, 0],
            [40, 30],
            [0, 30],
            [0, 0.06],
          ],
          false,
        ),
      ),
    roles: { Deck: 'outline' },
    expected: { error: 'RING_OPEN', says: ['gap 60 mm', '(0.00, 0.00)'] },
  },
  {
    row: 2,
    what: 'an outline of two points',
    by: 'import',
    file: () =>
      metres(
        deck,
        polyline('P', [
          [0, 0],
          [10, 0],
        ]),
      ),
    expected: { warning: 'RING_TOO_FEW_POINTS', says: ['2 points'] },
  },
  {
    row: 2,
    what: 'an outline without area',
    by: 'import',
    file: () =>
      metres(
        deck,
        polyline('P', [
          [0, 0],
          [10, 0],
          [20, 0],
        ]),
      ),
    expected: { warning: 'RING_ZERO_AREA', says: ['encloses no area'] },
  },
  {
    row: 2,
    what: 'repeated points',
    by: 'import',
    file: () =>
      metres(
        polyline('Deck', [
          [0, 0],
          [40, 0],
          [40, 0],
          [40, 30],
          [0, 30],
        ]),
      ),
    expected: { mend: 'POINTS_REPEATED', says: ['1 point on top of the one before was removed'] },
  },
  {
    row: 3,
    what: 'millimetres without a unit',
    by: 'import',
    file: () => dxf({ entities: [rectangle('Deck', 40_000, 60_000)] }),
    expected: { asks: ['unit', 'mm'], says: ['40000 × 60000', 'millimetres: 40 × 60 m', 'metres: 40000 × 60000 m'] },
  },
  {
    row: 4,
    what: 'a unit that does not fit the size',
    by: 'import',
    file: () => dxf({ header: [['$INSUNITS', 70, 1]], entities: [deck] }),
    // 40 × 0.0254 = 1.016, 60 × 0.0254 = 1.524
    expected: { asks: ['unit', 'm'], says: ['inches', '1.02 × 1.52 m', 'fits metres better'] },
  },
  {
    row: 9,
    what: 'coordinates of a national grid',
    by: 'import',
    file: () => metres(rectangle('Deck', 40, 30, [392_000, 5_812_000])),
    expected: { mend: 'FAR_FROM_ORIGIN', says: ['392000', '5812000'] },
  },
  {
    row: 10,
    what: 'one point far away',
    by: 'import',
    file: () => metres(deck, point('P', 9_400, 30)),
    // Middle of the drawing at x = 40 or less.
    expected: { asks: ['stray', 'leave'], says: ['One point is', 'm from the rest', '(9400, 30)'] },
  },
  {
    row: 11,
    what: 'longitude and latitude',
    by: 'import',
    file: () =>
      map(
        feature(
          polygon([
            [13.4, 52.5],
            [13.4006, 52.5],
            [13.4006, 52.5005],
            [13.4, 52.5005],
            [13.4, 52.5],
          ]),
        ),
      ),
    expected: { asks: ['unit', 'degrees'], says: ['look like longitude and latitude', 'local metres'] },
  },
  {
    row: 13,
    what: 'y counted downwards, beside a deck that is there',
    by: 'import',
    file: () =>
      map(
        feature(
          polygon([
            [0, 0],
            [40, 0],
            [40, -30],
            [0, -30],
            [0, 0],
          ]),
        ),
      ),
    around: { minX: 0, minY: 0, maxX: 40, maxY: 30 },
    expected: { asks: ['axes', 'x-y'], says: ['mirrored'] },
  },
  {
    row: 16,
    what: 'two levels at one place',
    by: 'import',
    file: () => metres(deck, point('L', 10, 10, 1.2), point('L', 10, 10, 1.35), point('L', 20, 10, 1.2)),
    expected: { asks: ['doubleLevels', 'lower'], says: ['differ by up to 0.15 m', '(10, 10)'] },
  },
  {
    row: 23,
    what: 'a coordinate that is no number',
    by: 'import',
    file: () =>
      metres(deck, [
        [0, 'LINE'],
        [8, 'A'],
        [10, 'Infinity'],
        [20, 0],
        [11, 1],
        [21, 1],
      ]),
    expected: { warning: 'NUMBER_BAD', says: ['"Infinity"', 'finite numbers'] },
  },
  {
    row: 26,
    what: 'UTF-8 in a drawing that says another code page',
    by: 'import',
    file: () =>
      dxf({
        header: [
          ['$ACADVER', 1, 'AC1015'],
          ['$DWGCODEPAGE', 3, 'ANSI_1252'],
          ['$INSUNITS', 70, 6],
        ],
        entities: [deck, text('A', 1, 1, 'Büro')],
      }),
    expected: { asks: ['encoding', 'utf-8'], says: ['BÃ¼ro', 'utf-8: Büro'] },
  },
  {
    row: 26,
    what: 'letters lost when the drawing was written',
    by: 'import',
    file: () => metres(deck, text('A', 1, 1, 'B?ro')),
    expected: { warning: 'TEXT_LOST', says: ['"B?ro"', 'when the file was written'] },
  },
  {
    row: 26,
    what: 'a drawing in the code page it says',
    by: 'import',
    file: () =>
      bytes8(
        dxf({
          header: [
            ['$ACADVER', 1, 'AC1015'],
            ['$DWGCODEPAGE', 3, 'ANSI_1252'],
            ['$INSUNITS', 70, 6],
          ],
          entities: [deck, text('A', 1, 1, 'B\u00FCro')],
        }),
      ),
    expected: { mend: 'TEXT_DECODED', says: ['windows-1252'] },
  },
  {
    row: 29,
    what: 'a drawing that stops in the middle',
    by: 'import',
    file: () => metres(deck, line('A', [0, 0, 1, 1])).slice(0, -30),
    expected: { error: 'FILE_TRUNCATED', says: ['after', 'Save or send it again'] },
  },
  {
    row: 29,
    what: 'a map that stops in the middle, its whole part used',
    by: 'import',
    file: () => map(feature(polygon(SITE)), feature(polygon(SITE))).slice(0, -60),
    answers: { truncated: 'use' },
    expected: { mend: 'FEATURES_CUT', says: ['1 entry before that was read'] },
  },
  {
    row: 34,
    what: 'an outline of 100 000 points',
    by: 'import',
    file: () => metres(polyline('Deck', wave(100_000))),
    expected: { asks: ['simplify', 'simplify'], says: ['100,000 points', 'at most 5 mm', 'area changes by'] },
  },
  {
    row: 35,
    what: 'solids, other drawings, splines and arcs',
    by: 'import',
    file: () =>
      dxf({
        header: inMetres,
        blocks: [block('X', [], [0, 0], 4)],
        entities: [
          deck,
          arc('A', [5, 5, 2, 0, 90]),
          insert('A', 'X', [0, 0]),
          [
            [0, '3DSOLID'],
            [8, 'A'],
          ],
          [
            [0, 'SPLINE'],
            [8, 'A'],
            [11, 0],
            [21, 0],
          ],
        ],
      }),
    expected: {
      mend: 'CURVES_TO_CHORDS',
      says: ['1 arc', '1 solid body', '1 block of another drawing (XREF)', '1 free curve given by points to pass through'],
    },
  },
  {
    row: 35,
    what: 'a drawing with nothing that can be used',
    by: 'import',
    file: () =>
      metres([
        [0, '3DSOLID'],
        [8, 'A'],
      ]),
    expected: { error: 'NOTHING_FOUND', says: ['1 solid body'] },
  },
  {
    row: 38,
    what: 'a survey file that defines its own entities',
    by: 'import',
    file: () => survey('<a>&b;</a>', '<?xml version="1.0"?><!DOCTYPE LandXML [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]>'),
    expected: { error: 'XML_ENTITIES', says: ['its own entities'] },
  },
  {
    row: 38,
    what: 'a survey file nested without end',
    by: 'import',
    file: () => survey('<a>'.repeat(1000)),
    expected: { error: 'TOO_DEEP', says: ['32'] },
  },
  {
    row: 38,
    what: 'a map nested without end',
    by: 'import',
    file: () => `${'{"type":"GeometryCollection","geometries":['.repeat(5000)}${']}'.repeat(5000)}`,
    expected: { error: 'NOTHING_FOUND', warning: 'GEOJSON_DAMAGED', says: ['1 feature out of form', 'nothing drawn'] },
  },
  {
    row: 38,
    what: 'blocks that double at every step',
    by: 'import',
    file: () => {
      const step = (i: number) => block(`B${i}`, [insert('0', `B${i + 1}`, [0, 0]), insert('0', `B${i + 1}`, [1, 0])]);
      return dxf({ header: inMetres, blocks: Array.from({ length: 28 }, (_, i) => step(i)), entities: [deck, insert('A', 'B0', [0, 0])] });
    },
    expected: { error: 'BLOCKS_TOO_MANY', says: ['Nothing was changed'] },
  },
  {
    row: 39,
    what: 'a text that looks like a formula',
    by: 'import',
    file: () => metres(deck, text('A', 1, 1, '=HYPERLINK("x")'), text('A', 2, 2, '<script>alert(1)</script>')),
    expected: { mend: 'TEXT_KEPT', says: ['2 texts look like a formula or markup', 'plain text'] },
  },
];
