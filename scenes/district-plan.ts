/** Plan of the invented district deck: its lines, and what every face between them is. */

import { arc, contains, type Face, type Point, planFaces, rectangle, until } from './plan-faces.ts';

/** Corner of the drawing in the invented national grid and its height datum [m]. */
const EAST_M = 412_300;
const NORTH_M = 5_731_800;
export const DATUM_M = 54;

export const roundMm = (value: number): number => Math.round(value * 1000) / 1000;
export const atGrid = ([x, y]: Point): Point => [roundMm(EAST_M + x), roundMm(NORTH_M + y)];
export const atGrid3 = ([x, y, z]: readonly [number, number, number]): number[] => [...atGrid([x, y]), roundMm(DATUM_M + z)];
export const range = (count: number): number[] => Array.from({ length: count }, (_, i) => i);

// ---- outline, light wells, levels -------------------------------------------------------------------------------

export const OUTLINE: Point[] = [
  [0, 0],
  [146, 0],
  [160, 12],
  [160, 90],
  [148, 105],
  [12, 105],
  [0, 95],
];
const WELL_CORNERS: readonly Point[] = [
  [22, 54],
  [60, 26],
  [92, 26],
  [130, 54],
  [60, 70],
  [92, 70],
];
export const WELLS = WELL_CORNERS.map(([x, y]) => rectangle([x, y], [x + 8, y + 5]).slice(0, 4));
const WELL_COLLARS = WELL_CORNERS.map(([x, y]) => rectangle([x - 0.5, y - 0.5], [x + 8.5, y + 5.5]));

export const VALLEYS_Y = range(7).map((j) => 7.5 + 15 * j);
const OUTLETS_X = range(7).map((i) => 8 + 24 * i);
export const VALLEY_X = [0, 8, 20, 32, 44, 56, 68, 80, 92, 104, 116, 128, 140, 152, 160];
export const RIDGE_Z = -0.5;
export const CREST_Z = -0.66;
export const OUTLET_Z = -0.72;

// ---- lines of the garden plan -----------------------------------------------------------------------------------

/** Front gardens along the south and the north edge: from x, of equal width. */
export const GARDENS = 12;
export const GARDEN_W = 11;
export const GARDEN_X0 = 13;
const PATH_W = 2;
export const SOUTH = [0.5, 9.5] as const;
export const NORTH = [95.5, 104.5] as const;
const LANE_Y = [84, 88.5] as const;
const WALK_Y = [12, 15] as const;
const AXIS_X = [78.5, 81.5] as const;
const CROSS_Y = [49, 52] as const;
const GARDEN_END = GARDEN_X0 + GARDENS * GARDEN_W;

export const closed = (ring: readonly Point[]): Point[] => [...ring, ring[0] as Point];
const line = (x0: number, y0: number, x1: number, y1: number): Point[] => [
  [x0, y0],
  [x1, y1],
];

const RING = arc([80, 50.5], [16, 12], [0, 360], 60);
const RING_INNER = arc([80, 50.5], [13, 9], [0, 360], 52);
const LAWNS: readonly { readonly id: string; readonly rim: Point[] }[] = [
  { id: 'sw', rim: arc([38, 33], [15, 10], [0, 360], 44) },
  { id: 'se', rim: arc([122, 33], [15, 10], [0, 360], 44) },
  { id: 'nw', rim: arc([38, 68], [15, 9], [0, 360], 44) },
  { id: 'ne', rim: arc([122, 68], [15, 9], [0, 360], 44) },
];
const PLAYS: readonly { readonly id: string; readonly rim: Point[] }[] = [
  { id: 'west', rim: arc([10, 30.5], [6.5, 6.5], [0, 360], 32) },
  { id: 'east', rim: arc([151, 72], [6.5, 6.5], [0, 360], 32) },
];
export const MOUND_AT: readonly Point[] = [
  [30, 31],
  [44.5, 33.5],
  [116, 33],
  [129, 30.5],
  [28, 68.5],
  [45, 69.5],
  [115.5, 69],
  [132, 68.5],
  [80, 46.5],
  [7, 62],
  [13, 74],
  [152, 33],
  [147, 27],
  [16, 20.5],
];
const MOUND_R = 3.2;
const MOUNDS = MOUND_AT.map((at) => arc(at, [MOUND_R, MOUND_R], [0, 360], 24));

/** Sweeping edges between planting and meadow in the four quarters. */
export const SWEEPS: readonly Point[][] = [
  arc([0.5, 15], [22, 34], [0, 90], 20),
  arc([159.5, 15], [22, 34], [90, 180], 20),
  arc([0.5, 84], [22, 32], [-90, 0], 20),
  arc([159.5, 84], [22, 32], [180, 270], 20),
];

/** Gardens between y0 and y1; their paths run on through the hedge to the lane or walk. */
function gardenLines([y0, y1]: readonly [number, number]): Point[][] {
  const [pathY0, pathY1] = y0 < 50 ? [y0, WALK_Y[0]] : [LANE_Y[1], y1];
  const walls = range(GARDENS + 1).map((i) => line(GARDEN_X0 + i * GARDEN_W, y0, GARDEN_X0 + i * GARDEN_W, y1));
  const paths = range(GARDENS).map((i) => {
    const x = GARDEN_X0 + i * GARDEN_W + 4.5;
    return [line(x, pathY0, x, pathY1), line(x + PATH_W, pathY0, x + PATH_W, pathY1)];
  });
  // A bed in front of the lawn on the right of every door: its edge swings out and in from garden to garden.
  const beds = range(GARDENS).map((i) => {
    const x = GARDEN_X0 + i * GARDEN_W + 4.5 + PATH_W;
    const middle = (y0 + y1) / 2;
    const swing = i % 2 === 0 ? 1.6 : -1.6;
    return arc([x + 2.25, middle], [2.25, swing], [180, 0], 12);
  });
  return [...walls, ...paths.flat(), ...beds];
}

/** Inside line of the gravel strip, 0.5 m off the whole outline. */
function stripLine(): Point[] {
  const offset = OUTLINE.map((at, i) => {
    const before = OUTLINE[(i + OUTLINE.length - 1) % OUTLINE.length] as Point;
    const after = OUTLINE[(i + 1) % OUTLINE.length] as Point;
    const unit = (from: Point, to: Point): Point => {
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    };
    const [a, b] = [unit(before, at), unit(at, after)];
    // The offset corner is at 0.5 m from both sides.
    const scale = 0.5 / (1 + a[0] * b[0] + a[1] * b[1]);
    return [roundMm(at[0] - scale * (a[1] + b[1])), roundMm(at[1] + scale * (a[0] + b[0]))] as const;
  });
  return closed(offset);
}

const STRIP = stripLine();

/** The strip is broken where lane and walk reach the edge of the deck. */
function stripPieces(): Point[][] {
  const bands = [WALK_Y, LANE_Y];
  return STRIP.slice(1).flatMap((to, i) => {
    const from = STRIP[i] as Point;
    const shares = bands
      .flat()
      .map((y) => (y - from[1]) / (to[1] - from[1]))
      .filter((share) => share > 0 && share < 1);
    const stops = [0, ...shares.sort((p, q) => p - q), 1].map(
      (u): Point => [roundMm(from[0] + u * (to[0] - from[0])), roundMm(from[1] + u * (to[1] - from[1]))],
    );
    const pieces = stops.slice(1).map((end, k) => [stops[k] as Point, end]);
    return pieces.filter(
      ([a, b]) => !bands.some(([low, high]) => (a as Point)[1] + (b as Point)[1] > 2 * low && (a as Point)[1] + (b as Point)[1] < 2 * high),
    );
  });
}

export const outletAt: readonly Point[] = VALLEYS_Y.flatMap((y) => OUTLETS_X.map((x): Point => [x, y]));

export function gardenPlan(): Face[] {
  const across = ([y0, y1]: readonly [number, number]): Point[][] =>
    [y0, y1].flatMap((y) => [until([80, y], [-9, y], [closed(OUTLINE)]), until([80, y], [170, y], [closed(OUTLINE)])]);
  const lines: (readonly Point[])[] = [
    closed(OUTLINE),
    ...stripPieces(),
    ...across(LANE_Y),
    ...across(WALK_Y),
    ...[SOUTH[1], NORTH[0]].flatMap((y) => [until([80, y], [-9, y], stripPieces()), until([80, y], [170, y], stripPieces())]),
    ...gardenLines(SOUTH),
    ...gardenLines(NORTH),
    ...AXIS_X.flatMap((x) => [until([x, WALK_Y[1]], [x, 50], [RING]), until([x, LANE_Y[0]], [x, 50], [RING])]),
    ...CROSS_Y.flatMap((y) => [until([0.5, y], [80, y], [RING]), until([159.5, y], [80, y], [RING])]),
    RING,
    RING_INNER,
    ...LAWNS.map(({ rim }) => rim),
    ...PLAYS.map(({ rim }) => rim),
    ...MOUNDS,
    ...WELLS.map(closed),
    ...WELL_COLLARS,
    ...SWEEPS,
    ...collars().map(collar),
  ];
  return planFaces(lines);
}

const collar = ([x, y]: Point): Point[] => rectangle([x - 0.5, y - 0.5], [x + 0.5, y + 0.5]);
const isPaved = ([, y]: Point): boolean => (y > LANE_Y[0] && y < LANE_Y[1]) || (y > WALK_Y[0] && y < WALK_Y[1]);
/** Outlets in planting get a collar of gravel; in paving they have a cover. */
const collars = (): Point[] => outletAt.filter((at) => !isPaved(at));

// ---- what every face is -----------------------------------------------------------------------------------------

export interface Kind {
  readonly id: string;
  readonly name: string;
  readonly use: string;
  readonly buildup: string;
  readonly imposedKNm2: number;
  readonly finish: object;
}

const level = (z: number): object => ({ kind: 'level', levelM: roundMm(DATUM_M + z) });

/** A point well inside a face, found on lines through it. */
export function innerPoint(face: Face): Point {
  const ys = face.outline.map(([, y]) => y);
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  let best: { at: Point; width: number } = { at: [0, 0], width: 0 };
  for (const share of [0.5, 0.31, 0.69, 0.13, 0.87, 0.04, 0.96]) {
    const y = low + share * (high - low) + 0.000137;
    const hits = [face.outline, ...face.holes]
      .flatMap((ring) =>
        ring.flatMap(([ax, ay], i) => {
          const [bx, by] = ring[(i + 1) % ring.length] as Point;
          return ay > y === by > y ? [] : [ax + ((y - ay) / (by - ay)) * (bx - ax)];
        }),
      )
      .sort((p, q) => p - q);
    for (let i = 0; i + 1 < hits.length; i += 2) {
      const [from, to] = [hits[i] as number, hits[i + 1] as number];
      if (to - from > best.width) best = { at: [(from + to) / 2, y], width: to - from };
    }
  }
  return best.at;
}

const counts = new Map<string, number>();
function numbered(name: string): string {
  const count = (counts.get(name) ?? 0) + 1;
  counts.set(name, count);
  return `${name}-${count}`;
}

export function kindOf(face: Face): Kind | null {
  const at = innerPoint(face);
  const [x, y] = at;
  if (WELLS.some((ring) => contains(ring, at))) return null;
  const mound = MOUND_AT.findIndex((_, i) => contains(MOUNDS[i] as Point[], at));
  if (collars().some((outlet) => contains(collar(outlet), at))) {
    return {
      id: numbered('outlet'),
      name: 'Gravel round an outlet',
      use: 'gravel strip',
      buildup: 'gravel',
      imposedKNm2: 2,
      finish: level(-0.08),
    };
  }
  if (WELL_COLLARS.some((ring) => contains(ring, at))) {
    return {
      id: numbered('well'),
      name: 'Gravel round a light well',
      use: 'gravel strip',
      buildup: 'gravel',
      imposedKNm2: 2,
      finish: level(-0.08),
    };
  }
  if (y > LANE_Y[0] && y < LANE_Y[1])
    return { id: numbered('lane'), name: 'Fire lane', use: 'fire lane', buildup: 'fire-lane', imposedKNm2: 5, finish: level(0) };
  if (y > WALK_Y[0] && y < WALK_Y[1])
    return { id: numbered('walk'), name: 'South walk', use: 'path', buildup: 'paving', imposedKNm2: 4, finish: level(-0.02) };
  if (!contains(STRIP, at))
    return { id: numbered('strip'), name: 'Gravel strip', use: 'gravel strip', buildup: 'gravel', imposedKNm2: 2, finish: level(-0.06) };
  if (y < SOUTH[1] || y > NORTH[0]) return frontGarden(x, y);
  if ((y < WALK_Y[0] || y > LANE_Y[1]) && onGardenPath(x)) {
    return {
      id: numbered('hedge-path'),
      name: 'Path through the hedge',
      use: 'path',
      buildup: 'paving',
      imposedKNm2: 4,
      finish: level(-0.02),
    };
  }
  if (y < WALK_Y[0] || y > LANE_Y[1])
    return {
      id: numbered('hedge'),
      name: 'Hedges and perennials',
      use: 'planting',
      buildup: 'shrubs',
      imposedKNm2: 2,
      finish: level(-0.04),
    };
  if (mound >= 0) return treeMound(mound);
  return park(at);
}

function onGardenPath(x: number): boolean {
  const along = (x - GARDEN_X0) / GARDEN_W;
  const fromWallM = (along - Math.floor(along)) * GARDEN_W;
  return x > GARDEN_X0 && x < GARDEN_END && fromWallM > 4.5 && fromWallM < 4.5 + PATH_W;
}

function frontGarden(x: number, y: number): Kind {
  const side = y < SOUTH[1] ? 'south' : 'north';
  const along = (x - GARDEN_X0) / GARDEN_W;
  const inGarden = along - Math.floor(along);
  const number = Math.floor(along) + 1;
  if (along < 0 || x > GARDEN_END)
    return {
      id: numbered(`${side}-end`),
      name: 'Shrubs at the corner',
      use: 'planting',
      buildup: 'shrubs',
      imposedKNm2: 2,
      finish: level(-0.04),
    };
  const id = `${side}-${number}`;
  if (onGardenPath(x)) {
    return {
      id: `${id}-path`,
      name: `Path to door ${number}, ${side}`,
      use: 'path',
      buildup: 'paving',
      imposedKNm2: 4,
      finish: level(-0.02),
    };
  }
  if (inGarden * GARDEN_W < 4.5)
    return {
      id: `${id}-terrace`,
      name: `Terrace ${number}, ${side}`,
      use: 'terrace',
      buildup: 'paving',
      imposedKNm2: 4,
      finish: level(-0.02),
    };
  const atHouse = side === 'south' ? y < (SOUTH[0] + SOUTH[1]) / 2 : y > (NORTH[0] + NORTH[1]) / 2;
  return atHouse
    ? { id: `${id}-bed`, name: `Bed ${number}, ${side}`, use: 'planting', buildup: 'perennials', imposedKNm2: 2, finish: level(-0.05) }
    : { id: `${id}-lawn`, name: `Lawn ${number}, ${side}`, use: 'lawn', buildup: 'lawn', imposedKNm2: 4, finish: level(-0.06) };
}

function treeMound(i: number): Kind {
  const [x, y] = MOUND_AT[i] as Point;
  const rim = arc([x, y], [MOUND_R * 1.06, MOUND_R * 1.06], [0, 330], 11);
  const spots = [...rim.map(([px, py]) => atGrid3([px, py, 0.25])), atGrid3([x, y, 0.6])];
  return {
    id: `mound-${i + 1}`,
    name: `Tree mound ${i + 1}`,
    use: 'tree mound',
    buildup: 'mound',
    imposedKNm2: 2,
    finish: { kind: 'spots', spots },
  };
}

function park(at: Point): Kind {
  const [x, y] = at;
  const lawn = LAWNS.find(({ rim }) => contains(rim, at));
  if (lawn)
    return {
      id: numbered(`lawn-${lawn.id}`),
      name: `Oval lawn ${lawn.id}`,
      use: 'lawn',
      buildup: 'lawn',
      imposedKNm2: 4,
      finish: level(-0.06),
    };
  const play = PLAYS.find(({ rim }) => contains(rim, at));
  if (play)
    return {
      id: numbered(`play-${play.id}`),
      name: `Play area ${play.id}`,
      use: 'play',
      buildup: 'play',
      imposedKNm2: 4,
      finish: level(-0.03),
    };
  if (contains(RING_INNER, at))
    return { id: numbered('square-lawn'), name: 'Round lawn', use: 'lawn', buildup: 'lawn', imposedKNm2: 4, finish: level(-0.05) };
  const onAxis = (x > AXIS_X[0] && x < AXIS_X[1]) || (y > CROSS_Y[0] && y < CROSS_Y[1]);
  if (contains(RING, at) || onAxis)
    return { id: numbered('path'), name: 'Path', use: 'path', buildup: 'paving', imposedKNm2: 4, finish: level(-0.03) };
  const outer = SWEEPS.some((_, i) => contains([...(SWEEPS[i] as Point[]), [i % 2 === 0 ? 0 : 160, i < 2 ? 15 : 84]], at));
  return outer
    ? { id: numbered('grove'), name: 'Grove', use: 'planting', buildup: 'mound', imposedKNm2: 2, finish: level(0.25) }
    : { id: numbered('meadow'), name: 'Meadow', use: 'lawn', buildup: 'meadow', imposedKNm2: 4, finish: level(-0.06) };
}
