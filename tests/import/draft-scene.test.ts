/** What was found becomes the part of a scene that the file holds; the rest waits for entries, and all of it is told. */

import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { draftScene } from '../../src/import/draft-scene.ts';
import type { LayerRoles } from '../../src/model/drawing.ts';
import { STARTER } from '../../src/model/drawn-parts.ts';
import { KNOWN_IDS } from '../../src/project/materials.ts';
import { parseScene } from '../../src/scene/parse-scene.ts';
import { block, circle, dxf, inMetres, insert, line, type Pair, point, polyline, rectangle, text } from './dxf-builder.ts';
import { readText } from './reading.ts';

const PLAN = dxf({
  header: inMetres,
  blocks: [block('TREE', [circle('0', 0, 0, 1)])],
  entities: [
    rectangle('Deck', 40, 30),
    rectangle('Shafts', 2, 3, [10, 10]),
    rectangle('Bays', 20, 30),
    rectangle('Bays', 20, 30, [20, 0]),
    text('Bays', 10, 20, 'A1'),
    text('Bays', 30, 20, 'B1'),
    polyline('Zones', [
      [1, 1],
      [39, 1],
      [39, 9],
      [1, 9],
    ]),
    rectangle('Columns', 0.4, 0.6, [19.8, 14.7]),
    circle('Columns', 5, 5, 0.25),
    point('Columns', 30, 15, 0),
    text('Columns', 30.5, 15.5, 'C7'),
    circle('Outlets', 15, 2, 0.1),
    insert('Trees', 'TREE', [25, 5]),
    insert('Trees', 'TREE', [30, 5], [41, 2], [42, 2]),
    text('Levels', 0.5, 0.5, '+1.20'),
    text('Levels', 39, 0.5, '+1.15'),
    text('Levels', 20, 29, '+1.10'),
    text('Levels', 10, 29, 'note'),
    line('Sills', [0, 0, 40, 0], [30, 1.5], [31, 1.5]),
    line('Walls', [0, 30, 40, 30]),
    ...[0, 20, 40].map((x) => line('Axes', [x, -1, x, 31])),
    ...[0, 30].map((y) => line('Axes', [-1, y, 41, y])),
    line('Rest', [3, 3, 4, 4]),
  ] as readonly (readonly Pair[])[],
});
const ROLES: LayerRoles = {
  Deck: 'outline',
  Shafts: 'openings',
  Bays: 'bays',
  Zones: 'zones',
  Columns: 'columns',
  Outlets: 'outlets',
  Trees: 'trees',
  Levels: 'levels',
  Sills: 'edges',
  Walls: 'edges',
  Axes: 'axes',
};

describe('a plan with all roles', () => {
  const result = readText(PLAN, {}, 'garden level.dxf');
  const draft = draftScene(result, ROLES);

  it('what is whole stands in the scene', () => {
    expect(draft.scene).toMatchObject({ format: 'loamdeck-scene', version: 1, name: 'garden level', zones: [], buildups: [] });
    expect(draft.scene?.deck).toMatchObject({
      outline: [
        [0, 0],
        [40, 0],
        [40, 30],
        [0, 30],
      ],
      openings: [
        [
          [10, 10],
          [12, 10],
          [12, 13],
          [10, 13],
        ],
      ],
      // Without their permitted loads, which only the engineer knows.
      bays: [
        {
          id: 'A1',
          outline: [
            [0, 0],
            [20, 0],
            [20, 30],
            [0, 30],
          ],
        },
        {
          id: 'B1',
          outline: [
            [20, 0],
            [40, 0],
            [40, 30],
            [20, 30],
          ],
        },
      ],
      levels: {
        spots: [
          [0.5, 0.5, 1.2],
          [39, 0.5, 1.15],
          [20, 29, 1.1],
        ],
      },
      outlets: [{ id: 'O1', at: [15, 2], kind: 'outlet' }],
      edges: [
        {
          id: 'E1',
          line: [
            [0, 0],
            [40, 0],
          ],
          kind: 'upstand',
          membraneTopM: 1.5,
        },
      ],
    });
    const columns = draft.scene?.deck.columns?.map(({ at, sizeM }) => [...at, ...sizeM].map((v) => Number(v.toFixed(9))));
    expect(columns).toHaveLength(2);
    // Middle of 19.8 … 20.2 and 14.7 … 15.3; a circle as wide as it is.
    expect(columns).toEqual(
      expect.arrayContaining([
        [20, 15, 0.4, 0.6],
        [5, 5, 0.5, 0.5],
      ]),
    );
  });

  it('the scene passes every check of a scene', () => {
    const { scene, issues } = parseScene(JSON.stringify(draft.scene), KNOWN_IDS);
    expect(issues.map(({ code, level, path }) => `${level} ${code} ${path}`)).toEqual([
      'warning BAY_NO_LIMIT deck.bays[0]',
      'warning BAY_NO_LIMIT deck.bays[1]',
    ]);
    expect(scene).toEqual(draft.scene);
  });

  it('what lacks an entry waits for it', () => {
    const needs = draft.waiting.map(({ part, id, needs: missing }) => `${part} ${id}: ${missing.join()}`);
    expect(needs.sort()).toEqual(
      [
        'bay A1: permanentKNm2',
        'bay B1: permanentKNm2',
        'zone Z1: buildup',
        'column C7: sizeM',
        'tree T1: massKg,spreadM',
        'tree T2: massKg,spreadM',
        'edge E2: kind,membraneTopM',
      ].sort(),
    );
  });

  it('the grid of the axes, the layers without a role, what could not be used', () => {
    expect(draft.grid).toEqual({ at: [0, 0], turnDeg: 0, alongM: [20, 20], acrossM: [30] });
    expect(draft.unassigned).toEqual(['Rest']);
    expect(draft.issues.map(({ code, path }) => `${code} ${path}`)).toEqual(['SHAPE_UNFIT Levels']);
  });

  it('entries for all parts of a kind take them into the scene, and the history says so', () => {
    const entries = {
      buildup: STARTER,
      columnM: [0.5, 0.5],
      tree: { massKg: 800, spreadM: 2 },
      edge: { kind: 'upstand', membraneTopM: 1.65 },
    } as const;
    const { scene, waiting, history } = draftScene(result, ROLES, { entries });
    expect(waiting.map(({ part }) => part)).toEqual(['bay', 'bay']);
    expect(parseScene(JSON.stringify(scene), KNOWN_IDS).issues.filter(({ code }) => code !== 'BAY_NO_LIMIT')).toEqual([]);
    expect(scene?.zones.map(({ id, buildup }) => [id, buildup])).toEqual([['Z1', STARTER]]);
    expect(scene?.deck.columns?.map(({ sizeM }) => sizeM)).toContainEqual([0.5, 0.5]);
    expect(scene?.objects).toHaveLength(2);
    // The sill is drawn at 1.5, the wall without a level.
    expect(scene?.deck.edges?.map(({ membraneTopM }) => membraneTopM)).toEqual([1.5, 1.65]);
    expect(history.filter((says) => says.startsWith('Entered: '))).toHaveLength(4);
    expect(scene?.history?.map(({ says }) => says)).toEqual(history);
  });

  it('axes cut the bays where none are drawn, of the deck that is open too', () => {
    const { Bays: _, Deck: __, ...without } = ROLES;
    const grid = { A1: 600, B1: 600 };
    const areas = (outline: readonly (readonly number[])[]) => {
      const [xs, ys] = [outline.map(([x]) => x!), outline.map(([, y]) => y!)];
      return (Math.max(...xs) - Math.min(...xs)) * (Math.max(...ys) - Math.min(...ys));
    };
    const deck = result.layers.find(({ name }) => name === 'Deck')!.shapes[0]!;
    if (deck.kind !== 'ring') throw new RangeError('no ring');
    const cut = [draftScene(result, { ...without, Deck: 'outline' }), draftScene(result, without, { deck: deck.points })];
    // 40 × 30 m in two fields of 20 m.
    for (const { parts } of cut) expect(Object.fromEntries(parts.bays!.map(({ id, outline }) => [id, areas(outline)]))).toEqual(grid);
    expect(cut[1]!.scene).toBeNull();
    expect(cut[1]!.issues.filter(({ level }) => level === 'error')).toEqual([]);
  });

  it('the history says what was read, asked and changed', () => {
    expect(draft.history[0]).toMatch(/^Read from "garden level\.dxf" \(dxf\): Deck as outline \(1 shape\), /);
    const millimetres = readText(dxf({ entities: [rectangle('Deck', 40_000, 30_000)] }), { unit: 'mm' });
    const { history } = draftScene(millimetres, { Deck: 'outline' });
    expect(history).toEqual([
      'Read from "test" (dxf): Deck as outline (1 shape).',
      'Asked: The drawing measures 40000 × 30000 in its own units (no unit given). Which unit was meant? Answer: mm.',
      'Lengths were changed from millimetres to metres: 40000 × 30000 in the file became 40 × 30 m.',
    ]);
    const guessed = readText(dxf({ entities: [rectangle('Deck', 40_000, 30_000)] }));
    expect(draftScene(guessed, { Deck: 'outline' }).history[1]).toMatch(/^Not answered: .*Taken: mm\.$/);
  });
});

describe('refusals', () => {
  const draftOf = (roles: Record<string, string>, ...entities: (readonly Pair[])[]) =>
    draftScene(readText(dxf({ header: inMetres, entities })), roles as LayerRoles);
  const told = (draft: ReturnType<typeof draftScene>) => draft.issues.map(({ code, level }) => `${level} ${code}`);

  it('no outline, no scene', () => {
    const draft = draftOf({ Deck: 'bays' }, rectangle('Deck', 40, 30));
    expect([draft.scene, told(draft)]).toEqual([null, ['error OUTLINE_MISSING']]);
  });

  it('two outlines: the largest is taken, and that is told', () => {
    const draft = draftOf({ Deck: 'outline' }, rectangle('Deck', 4, 3, [50, 0]), rectangle('Deck', 40, 30));
    expect(draft.scene?.deck.outline[2]).toEqual([40, 30]);
    expect(told(draft)).toEqual(['warning OUTLINE_SEVERAL']);
  });

  it('roles and layers that there are not', () => {
    expect(told(draftOf({ Deck: 'outline', Nowhere: 'bays', A: 'roof' }, rectangle('Deck', 40, 30), rectangle('A', 4, 3)))).toEqual([
      'error ROLE_UNKNOWN',
      'error ROLE_UNKNOWN',
    ]);
  });

  it('ids that come twice are told apart', () => {
    const draft = draftOf(
      { Deck: 'outline', Z: 'zones' },
      rectangle('Deck', 40, 30),
      rectangle('Z', 4, 3),
      rectangle('Z', 4, 3, [10, 0]),
      text('Z', 1, 1, 'Lawn'),
      text('Z', 11, 1, 'Lawn'),
    );
    expect(draft.waiting.map(({ id }) => id)).toEqual(['Lawn', 'Lawn-2']);
  });

  it('axes that meet at their ends, and were joined to a ring', () => {
    const lines = [0, 40].map((x) => line('X', [x, 0, x, 30])).concat([0, 30].map((y) => line('X', [0, y, 40, y])));
    const { grid } = draftOf({ Deck: 'outline', X: 'axes' }, rectangle('Deck', 40, 30), ...lines);
    expect(grid).toMatchObject({ alongM: [40], acrossM: [30] });
  });

  it('axes that make no grid', () => {
    expect(told(draftOf({ Deck: 'outline', X: 'axes' }, rectangle('Deck', 40, 30), line('X', [0, 0, 40, 0])))).toEqual([
      'warning AXES_UNFIT',
    ]);
  });
});

describe('on the command line', () => {
  const files: Readonly<Record<string, string>> = {
    'plan.dxf': PLAN,
    'mm.dxf': dxf({ entities: [rectangle('Deck', 40_000, 30_000)] }),
    'answers.json': '{"unit": "mm"}',
  };
  const call = (...args: string[]) =>
    run(['import', ...args], (file) => {
      const text = files[file];
      if (text === undefined) throw Object.assign(new Error('ENOENT'), { code: 'ENOENT' });
      return new TextEncoder().encode(text);
    });
  const roles = Object.entries(ROLES).flatMap(([layer, role]) => ['--role', `${layer}=${role}`]);

  it('writes a scene that check opens', async () => {
    const result = call('plan.dxf', ...roles, '--scene', 'out.scene.json');
    expect([result.code, result.file?.name]).toEqual([0, 'out.scene.json']);
    const written = await result.file!.bytes;
    expect(run(['check', 'out.scene.json', '--json'], () => written).code).toBe(0);
  });

  it('lists layers, what waits, bays from axes among it', () => {
    const { out } = call('plan.dxf', ...roles);
    // Axes reach 1 m beyond the deck on every side.
    expect(out).toContain('42.00 × 32.00 m');
    // The drawn bays count; the two fields of the grid would only repeat them.
    expect(out).toContain('2 × bay: needs permanentKNm2');
    expect(out).toContain('Layers without a role\n  Rest');
  });

  it('an open question is exit code 1, its answer 0, by flag or file', () => {
    expect(call('mm.dxf').code).toBe(1);
    expect(call('mm.dxf', '--answer', 'unit=mm').code).toBe(0);
    expect(call('mm.dxf', '--answers', 'answers.json').code).toBe(0);
    expect(
      JSON.parse(call('mm.dxf', '--json', '--answers', 'answers.json', '--answer', 'unit=cm').out).layers[0].shapes[0].points[2],
    ).toEqual([400, 300]);
  });

  it('refuses what it does not understand', () => {
    expect(call('mm.dxf', '--answer', 'unit')).toMatchObject({ code: 2, out: '' });
    expect(call('mm.dxf', '--scene', 'o').err).toContain('--scene needs --role');
    expect(call('mm.dxf', '--answers', 'plan.dxf').err).toContain('plan.dxf: answers are expected as JSON');
    expect(call('mm.dxf', '--deck', 'answers.json').err).toContain('answers.json: a scene was expected');
    expect(call('none.dxf').err).toContain('none.dxf: there is no such file');
  });
});

describe('a closed outline whose corners lie at different levels', () => {
  it('gives a breakline, and nothing of it is said to be of no use', () => {
    const corners = [
      [0, 0, 1],
      [40, 0, 1.2],
      [40, 30, 1.4],
      [0, 0, 1],
    ];
    const file = { type: 'Feature', properties: { layer: 'Levels' }, geometry: { type: 'Polygon', coordinates: [corners] } };
    const { parts, issues } = draftScene(readText(JSON.stringify(file)), { Levels: 'levels' }, { deck: [[0, 0]] });
    expect(parts.levels).toEqual({ spots: [], breaklines: [corners] });
    expect(issues).toEqual([]);
  });
});

describe('points without a level', () => {
  const file = (...points: readonly (readonly number[])[]) => {
    const feature = (coordinates: readonly number[]) => ({
      type: 'Feature',
      properties: { layer: 'Levels' },
      geometry: { type: 'Point', coordinates },
    });
    return readText(JSON.stringify({ type: 'FeatureCollection', features: points.map(feature) }));
  };
  const codesOf = (result: ReturnType<typeof readText>) => {
    const { issues } = draftScene(result, Object.fromEntries(result.layers.map(({ name }) => [name, 'levels'])), { deck: [[0, 0]] });
    return [...result.issues, ...issues].map(({ code }) => code);
  };

  it('are told once where the reading tells of them', () => {
    expect(codesOf(readText('point;x;y;z\n1;0;0;1.20\n2;40;0;1.25\n3;40;30;1.30\n4;20;20;\n'))).toEqual(['LEVELS_MISSING']);
  });

  it('are told with the role where it does not', () => {
    expect(codesOf(file([0, 0, 1.2], [40, 0, 1.25], [20, 20]))).toEqual(['SHAPE_UNFIT']);
  });
});
