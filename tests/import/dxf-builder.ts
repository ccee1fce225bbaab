/** Small drawings in DXF, pair by pair. */

export type Pair = readonly [number, string | number];

export interface Drawing {
  /** Header variables: name, code, value. */
  readonly header?: readonly (readonly [string, number, string | number])[];
  readonly tables?: readonly (readonly Pair[])[];
  readonly blocks?: readonly (readonly Pair[])[];
  readonly entities: readonly (readonly Pair[])[];
}

const write = (pairs: readonly Pair[]) => pairs.map(([code, value]) => `${String(code).padStart(3)}\n${value}\n`).join('');

function section(name: string, pairs: readonly Pair[]): string {
  return write([[0, 'SECTION'], [2, name], ...pairs, [0, 'ENDSEC']]);
}

export function dxf({ header = [], tables = [], blocks = [], entities }: Drawing): string {
  return [
    section(
      'HEADER',
      header.flatMap(([name, code, value]): Pair[] => [
        [9, name],
        [code, value],
      ]),
    ),
    section('TABLES', tables.flat()),
    section('BLOCKS', blocks.flat()),
    section('ENTITIES', entities.flat()),
    write([[0, 'EOF']]),
  ].join('');
}

const at = (x: number, y: number, z?: number): Pair[] =>
  z === undefined
    ? [
        [10, x],
        [20, y],
      ]
    : [
        [10, x],
        [20, y],
        [30, z],
      ];

export const line = (layer: string, [x0, y0, x1, y1]: readonly number[], ...more: Pair[]): Pair[] => [
  [0, 'LINE'],
  [8, layer],
  ...at(x0, y0),
  [11, x1],
  [21, y1],
  ...more,
];

/** Vertices x, y and, where given, bulge. */
export const polyline = (layer: string, vertices: readonly (readonly number[])[], closed = true, ...more: Pair[]): Pair[] => [
  [0, 'LWPOLYLINE'],
  [8, layer],
  [90, vertices.length],
  [70, closed ? 1 : 0],
  ...more,
  ...vertices.flatMap(([x, y, bulge]): Pair[] => [...at(x, y), ...(bulge === undefined ? [] : [[42, bulge] as Pair])]),
];

export const rectangle = (layer: string, width: number, height: number, [x, y]: readonly number[] = [0, 0]): Pair[] =>
  polyline(layer, [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ]);

export const circle = (layer: string, x: number, y: number, radius: number): Pair[] => [
  [0, 'CIRCLE'],
  [8, layer],
  ...at(x, y),
  [40, radius],
];

export const arc = (layer: string, [x, y, radius, from, to]: readonly number[], ...more: Pair[]): Pair[] => [
  [0, 'ARC'],
  [8, layer],
  ...at(x, y),
  [40, radius],
  [50, from],
  [51, to],
  ...more,
];

export const point = (layer: string, x: number, y: number, z?: number): Pair[] => [[0, 'POINT'], [8, layer], ...at(x, y, z)];

export const text = (layer: string, x: number, y: number, says: string): Pair[] => [
  [0, 'TEXT'],
  [8, layer],
  ...at(x, y),
  [40, 0.2],
  [1, says],
];

export const block = (name: string, entities: readonly (readonly Pair[])[], base: readonly number[] = [0, 0], flags = 0): Pair[] => [
  [0, 'BLOCK'],
  [8, '0'],
  [2, name],
  [70, flags],
  ...at(base[0], base[1]),
  ...entities.flat(),
  [0, 'ENDBLK'],
];

export const insert = (layer: string, name: string, [x, y]: readonly number[], ...more: Pair[]): Pair[] => [
  [0, 'INSERT'],
  [8, layer],
  [2, name],
  ...at(x, y),
  ...more,
];

export const layer = (name: string, flags = 0, colour = 7): Pair[] => [
  [0, 'LAYER'],
  [2, name],
  [70, flags],
  [62, colour],
];

export const inMetres: readonly (readonly [string, number, string | number])[] = [['$INSUNITS', 70, 6]];
