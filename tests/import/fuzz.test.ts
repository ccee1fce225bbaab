/** Damaged drawings, maps, tables and survey files: whatever happens to them there is an answer, soon and without a throw. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { takeParts } from '../../src/edit/take-parts.ts';
import { draftIssues, draftScene } from '../../src/import/draft-scene.ts';
import { previewOf } from '../../src/import/preview.ts';
import { readDrawing } from '../../src/import/read-drawing.ts';
import { LAYER_ROLES } from '../../src/model/drawing.ts';
import { STARTER } from '../../src/model/drawn-parts.ts';
import { issueLine } from '../../src/model/issue.ts';
import { KNOWN_IDS } from '../../src/project/materials.ts';
import { sceneOf } from '../helpers/scene-builder.ts';
import { arc, block, circle, dxf, inMetres, insert, layer, line, type Pair, point, polyline, rectangle, text } from './dxf-builder.ts';

const SEED = 4711;
/** Of each kind of file: a busy machine tries fewer cases, not longer ones [ms]. */
const LONGEST_MS = 2500;
/** Longest work for one small file [ms of the processor, which a busy machine does not change]. */
const SOON_MS = 2000;

const workMs = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

const hatch: Pair[] = [
  [0, 'HATCH'],
  [8, 'H'],
  [91, 2],
  [92, 2],
  [72, 1],
  [73, 1],
  [93, 3],
  [10, 0],
  [20, 0],
  [42, 0.3],
  [10, 9],
  [20, 0],
  [10, 9],
  [20, 9],
  [92, 1],
  [93, 2],
  [72, 1],
  [10, 1],
  [20, 1],
  [11, 2],
  [21, 1],
  [72, 2],
  [10, 1.5],
  [20, 1],
  [40, 0.5],
  [50, 0],
  [51, 180],
  [73, 1],
];
const spline: Pair[] = [
  [0, 'SPLINE'],
  [8, 'S'],
  [71, 2],
  ...[0, 0, 0, 1, 1, 1].map((k): Pair => [40, k]),
  ...[
    [0, 0],
    [5, 5],
    [9, 0],
  ].flatMap(([x, y]): Pair[] => [
    [10, x!],
    [20, y!],
  ]),
];

const DXF = dxf({
  header: inMetres,
  tables: [layer('Deck'), layer('off', 1)],
  blocks: [block('T', [circle('0', 0, 0, 1), line('0', [0, 0, 1, 1]), insert('0', 'U', [1, 1])]), block('U', [arc('0', [0, 0, 1, 0, 90])])],
  entities: [
    rectangle('Deck', 40, 30),
    polyline('B', [
      [0, 0, 0.5],
      [10, 0],
      [10, 10, -0.2],
    ]),
    insert('T', 'T', [5, 5], [41, 2], [50, 30], [70, 2], [71, 2], [44, 3], [45, 3]),
    point('L', 1, 2, 1.2),
    point('L', 3, 2, 1.3),
    text('L', 2, 2, '+1.25'),
    hatch,
    spline,
    [
      [0, 'POLYLINE'],
      [8, 'P'],
      [66, 1],
      [70, 8],
      [0, 'VERTEX'],
      [8, 'P'],
      [10, 0],
      [20, 0],
      [30, 1],
      [0, 'VERTEX'],
      [8, 'P'],
      [10, 9],
      [20, 0],
      [30, 1],
      [0, 'SEQEND'],
    ],
  ],
});
const CSV = `Nr;x;y;z;Code\n${Array.from({ length: 12 }, (_, i) => `${i};${i * 3},5;${(i % 4) * 5},25;1,${i};K${i % 3}`).join('\n')}\n`;
const ring = [
  [0, 0],
  [40, 0],
  [40, 30],
  [0, 30],
  [0, 0],
];
const GEO = JSON.stringify({
  type: 'FeatureCollection',
  features: [
    {
      type: 'Feature',
      properties: { name: 'Deck', layer: 'Deck' },
      geometry: {
        type: 'Polygon',
        coordinates: [
          ring,
          [
            [5, 5],
            [6, 5],
            [6, 6],
            [5, 5],
          ],
        ],
      },
    },
    {
      type: 'Feature',
      id: 7,
      properties: { level: 1.2 },
      geometry: {
        type: 'MultiPoint',
        coordinates: [
          [1, 2, 3],
          [4, 5],
        ],
      },
    },
    {
      type: 'Feature',
      properties: null,
      geometry: {
        type: 'GeometryCollection',
        geometries: [
          {
            type: 'LineString',
            coordinates: [
              [0, 0],
              [9, 9],
            ],
          },
        ],
      },
    },
  ],
});
const XML = `<?xml version="1.0"?>\n<LandXML><Units><Metric linearUnit="meter"/></Units><CgPoints><CgPoint name="1">0 0 1.2</CgPoint><CgPoint name="2">30 40 1.3</CgPoint></CgPoints><Surfaces><Surface name="S"><SourceData><Breaklines><Breakline><PntList3D>0 0 1 9 9 2</PntList3D></Breakline></Breaklines></SourceData><Definition><Pnts><P id="1">0 0 1</P><P id="2">30 0 1.1</P><P id="3">0 40 1.2</P></Pnts><Faces><F>1 2 3</F></Faces></Definition></Surface></Surfaces></LandXML>`;

const scrap = fc.oneof(
  fc.string({ maxLength: 4, unit: 'binary' }),
  fc.constantFrom(
    '0\nSECTION\n',
    '0\nLINE\n',
    '0\nINSERT\n2\nT\n',
    '0\nENDBLK\n',
    '\n10\n',
    '1e308',
    '-1e300',
    'NaN',
    '99999999',
    '0',
    '-',
    ';',
    ',',
    '"',
    '[',
    ']',
    '{',
    '}',
    '<',
    '</',
    '>',
    '<!--',
    '&x;',
    '\r',
    '\0',
    '\uFEFF',
    'Ã¼',
    '22. Mai',
    '__proto__',
  ),
);

function damage(whole: string) {
  const position = fc.integer({ min: 0, max: whole.length });
  const one = fc.record({
    at: position,
    length: fc.nat(30),
    scrap,
    how: fc.constantFrom('delete', 'double', 'replace', 'insert', 'cut', 'repeat'),
  });
  return fc.array(one, { minLength: 1, maxLength: 5 }).map((damages) => {
    let out = whole;
    for (const { at, length, scrap: put, how } of damages) {
      const [before, piece, after] = [out.slice(0, at), out.slice(at, at + length), out.slice(at + length)];
      if (how === 'cut') out = before;
      else out = before + { delete: '', double: piece + piece, replace: put, insert: put + piece, repeat: piece.repeat(50) }[how] + after;
    }
    return out;
  });
}

const answers = fc.dictionary(
  fc.constantFrom('unit', 'axes', 'stray', 'levelUnit', 'truncated', 'decimal', 'columns', 'encoding'),
  fc.constantFrom('m', 'mm', 'degrees', 'yx', 'keep', 'use', ',', 'x,y,z', 'utf-8', ''),
);

const ENTRIES = {
  buildup: STARTER,
  columnM: [0.4, 0.4],
  tree: { massKg: 500, spreadM: 2 },
  edge: { kind: 'upstand', membraneTopM: 1 },
} as const;
const OPEN = sceneOf();

function expectAnswer(bytes: Uint8Array, given: Record<string, string>): void {
  const start = workMs();
  const result = readDrawing('damaged', bytes, given);
  const roles = Object.fromEntries(result.layers.map(({ name }, i) => [name, LAYER_ROLES[i % LAYER_ROLES.length]!]));
  const draft = draftScene(result, roles, { entries: ENTRIES });
  const ofDraft = draftIssues(draft, KNOWN_IDS);
  const into = { ...OPEN, ...takeParts(OPEN, draft.parts, { bays: 'replace', zones: 'replace' }, []) };
  const shown = previewOf(result.layers, result.box);
  expect(workMs() - start).toBeLessThan(SOON_MS);
  const { issues, layers, questions, mends } = result;
  // Either something was found, or it is a scene, or it is said why not.
  if (!issues.some(({ level }) => level === 'error') && result.kind !== 'scene')
    expect(layers.some(({ shapes }) => shapes.length > 0)).toBe(true);
  expect(issues.length).toBeLessThanOrEqual(52);
  expect(into.deck?.outline.length).toBeGreaterThan(2);
  for (const { points } of shown.layers) expect(points.every(Number.isFinite)).toBe(true);
  for (const issue of [...issues, ...ofDraft]) expect(issueLine(issue).length).toBeLessThan(2000);
  for (const { says } of [...questions, ...mends]) expect(says).not.toMatch(/undefined|\[object/);
  for (const { shapes } of layers) {
    for (const shape of shapes)
      for (const at of 'points' in shape ? shape.points : [shape.at]) expect(at.every(Number.isFinite)).toBe(true);
  }
}

describe(`damaged files (seed ${SEED})`, () => {
  it.each([
    ['a drawing', DXF],
    ['a table', CSV],
    ['a map', GEO],
    ['a survey file', XML],
    ['a scene', JSON.stringify(OPEN)],
  ])('%s, 800 times', (_, whole) => {
    expectAnswer(new TextEncoder().encode(whole), {});
    fc.assert(
      fc.property(damage(whole), answers, (damaged, given) => expectAnswer(new TextEncoder().encode(damaged), given)),
      { seed: SEED, numRuns: 800, interruptAfterTimeLimit: LONGEST_MS },
    );
  });

  it('any bytes at all, with the beginnings of known kinds', () => {
    const beginning = fc.constantFrom(
      '',
      '0\nSECTION\n',
      '{"type":"Feature",',
      '<LandXML>',
      '1;2;3\n',
      '\xFF\xFE',
      'PK\x03\x04',
      'ISO-10303-21;',
    );
    fc.assert(
      fc.property(beginning, fc.uint8Array({ maxLength: 200 }), (start, rest) => {
        expectAnswer(Uint8Array.from([...start].map((c) => c.charCodeAt(0)).concat([...rest])), {});
      }),
      { seed: SEED, numRuns: 800, interruptAfterTimeLimit: LONGEST_MS },
    );
  });
});
