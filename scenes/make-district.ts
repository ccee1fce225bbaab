/**
 * Writes the large demo scene, an invented district deck of about 1.6 ha, beside this file.
 * Run again after a change:  npx tsx scenes/make-district.ts  (same input, same file; no random numbers).
 */

import { writeFileSync } from 'node:fs';
import {
  atGrid,
  atGrid3,
  CREST_Z,
  closed,
  DATUM_M,
  GARDEN_W,
  GARDEN_X0,
  GARDENS,
  gardenPlan,
  kindOf,
  MOUND_AT,
  NORTH,
  OUTLET_Z,
  OUTLINE,
  outletAt,
  RIDGE_Z,
  range,
  roundMm,
  SOUTH,
  SWEEPS,
  VALLEY_X,
  VALLEYS_Y,
  WELLS,
} from './district-plan.ts';
import { BUILDUPS, type DrawnZone, stages } from './district-work.ts';
import { areaOf, contains, type Face, type Point, rectangle } from './plan-faces.ts';
import { sceneText } from './scene-text.ts';

const BAY_W = 16;
const BAY_D = 15;
const basis = { document: 'load plan', revision: 'F', date: '2026-01-20', by: 'structural engineer' };

/** Just over the crests of the valleys: higher, and the light fill would float while it lies open. */
const OVERFLOW_M = roundMm(DATUM_M + CREST_Z + 0.005);

/** Where a valley meets the outline, 0.2 m inside. */
function valleyEnds(y: number): [number, number] {
  const ring = closed(OUTLINE);
  const xs = ring.slice(1).flatMap((to, side) => {
    const from = ring[side] as Point;
    const u = (y - from[1]) / (to[1] - from[1]);
    return u >= 0 && u <= 1 ? [from[0] + u * (to[0] - from[0])] : [];
  });
  return [roundMm(Math.min(...xs) + 0.2), roundMm(Math.max(...xs) - 0.2)];
}

/** Part of a rectangle inside the outline, which bulges everywhere: cut by one side after the other. */
function insideOutline(ring: readonly Point[]): Point[] {
  return closed(OUTLINE)
    .slice(1)
    .reduce<Point[]>(
      (kept, to, side) => {
        const from = OUTLINE[side] as Point;
        const left = (p: Point): number => (to[0] - from[0]) * (p[1] - from[1]) - (to[1] - from[1]) * (p[0] - from[0]);
        return kept.flatMap((p, i) => {
          const q = kept[(i + 1) % kept.length] as Point;
          const [dp, dq] = [left(p), left(q)];
          const start = dp >= 0 ? [p] : [];
          if ((dp > 0 && dq < 0) || (dp < 0 && dq > 0)) {
            const u = dp / (dp - dq);
            return [...start, [roundMm(p[0] + u * (q[0] - p[0])), roundMm(p[1] + u * (q[1] - p[1]))] as const];
          }
          return start;
        });
      },
      [...ring],
    );
}

function bays(): object[] {
  const hasMound = (ring: readonly Point[]): boolean =>
    MOUND_AT.some(
      ([x, y]) =>
        ring[0] !== undefined && x > ring[0][0] - 4 && x < ring[0][0] + BAY_W + 4 && y > ring[0][1] - 4 && y < ring[0][1] + BAY_D + 4,
    );
  return range(7).flatMap((row) =>
    range(10).map((column) => {
      const corner: Point = [column * BAY_W, row * BAY_D];
      const ring = rectangle(corner, [corner[0] + BAY_W, corner[1] + BAY_D]).slice(0, 4);
      const id = `${'ABCDEFGHIJ'[column]}${row + 1}`;
      const lane = row === 5;
      return {
        id,
        outline: insideOutline(ring).map(atGrid),
        permanentKNm2: lane || hasMound(ring) ? 14 : 12,
        imposedKNm2: lane ? 6 : 5,
        stageKNm2: id === 'E3' || id === 'F3' ? 12 : undefined,
        vehicles: lane ? ['fire-16t', 'wheel-loader-2t'] : ['wheel-loader-2t'],
        basis: id === 'J4' ? { document: 'load plan', by: 'structural engineer' } : basis,
      };
    }),
  );
}

function columns(): object[] {
  return range(8).flatMap((row) =>
    range(11).flatMap((column) => {
      const at: Point = [Math.min(159.7, Math.max(0.3, column * BAY_W)), Math.min(104.7, Math.max(0.3, row * BAY_D))];
      const onDeck = contains(OUTLINE, at) && !WELLS.some((well) => contains(well, at));
      return onDeck ? [{ id: `K${column + 1}-${row + 1}`, at: atGrid(at), sizeM: [0.5, 0.5] }] : [];
    }),
  );
}

function edges(): object[] {
  const doors = ([y0]: readonly [number, number]): object[] => {
    const [y, side] = y0 < 50 ? [0, 'south'] : [105, 'north'];
    const cuts = range(GARDENS).flatMap((i) => [GARDEN_X0 + i * GARDEN_W + 4.9, GARDEN_X0 + i * GARDEN_W + 6.1]);
    const stops = [y === 0 ? 0 : 12, ...cuts, y === 0 ? 146 : 148];
    return stops.slice(1).map((x, i) => {
      const line = [atGrid([stops[i] as number, y]), atGrid([x, y])];
      return i % 2 === 1
        ? { id: `door-${side}-${(i + 1) / 2}`, line, kind: 'threshold', membraneTopM: roundMm(DATUM_M + 0.02), drainedChannel: true }
        : { id: `wall-${side}-${i / 2 + 1}`, line, kind: 'upstand', membraneTopM: roundMm(DATUM_M + 0.2) };
    });
  };
  const upstand = (id: string, points: readonly Point[]): object => ({
    id,
    line: points.map(atGrid),
    kind: 'upstand',
    membraneTopM: roundMm(DATUM_M + 0.2),
  });
  return [
    ...doors(SOUTH),
    ...doors(NORTH),
    upstand('wall-south-east', [
      [146, 0],
      [160, 12],
    ]),
    upstand('wall-east', [
      [160, 15],
      [160, 84],
    ]),
    upstand('wall-north-east', [
      [160, 88.5],
      [160, 90],
      [148, 105],
    ]),
    upstand('wall-north-west', [
      [12, 105],
      [0, 95],
      [0, 88.5],
    ]),
    upstand('wall-west', [
      [0, 84],
      [0, 15],
    ]),
    upstand('wall-south-west', [
      [0, 12],
      [0, 0],
    ]),
    ...WELLS.map((well, i) => upstand(`well-${i + 1}`, closed(well))),
  ];
}

const GROVE_TREES: readonly Point[] = SWEEPS.flatMap((_, i) => {
  const west = i % 2 === 0;
  const low = i < 2;
  return range(7).flatMap((row) =>
    range(4).map((k): Point => {
      const x = 3 + 4.2 * k + (row % 2) * 2;
      const y = low ? 18 + 4.5 * row : 81 - 4.5 * row;
      return [roundMm(west ? x : 160 - x), y];
    }),
  );
});

function trees(zones: readonly { readonly id: string; readonly face: Face }[]): object[] {
  const groves = zones.filter(({ id }) => id.startsWith('grove'));
  const clear = (at: Point): boolean =>
    groves.some(({ face }) =>
      [0, 90, 180, 270].every((a) => {
        const p: Point = [at[0] + 1.6 * Math.cos((a * Math.PI) / 180), at[1] + 1.6 * Math.sin((a * Math.PI) / 180)];
        return contains(face.outline, p) && !face.holes.some((hole) => contains(hole, p));
      }),
    );
  const planted = [
    ...MOUND_AT.map((at) => ({ at, massKg: 1800, spreadM: 3.5 })),
    ...GROVE_TREES.filter(clear).map((at) => ({ at, massKg: 900, spreadM: 3 })),
  ];
  return planted.map(({ at, ...tree }, i) => ({ kind: 'tree', id: `T${i + 1}`, at: atGrid(at), ...tree }));
}

function district(): Record<string, unknown> {
  const zones = gardenPlan().flatMap((face): DrawnZone[] => {
    const kind = kindOf(face);
    return kind === null ? [] : [{ ...kind, face }];
  });
  const objects = trees(zones) as { readonly id: string }[];
  const nodes = (y: number, z: (i: number) => number): number[][] => VALLEY_X.map((x, i) => atGrid3([x, y, z(i)]));
  return {
    format: 'loamdeck-scene',
    version: 1,
    name: 'Sedgewater Quarter',
    about:
      'An invented district deck of about 1.6 ha with front gardens, lawns, groves and a fire lane, on invented grid coordinates; no place, firm or person is meant. Bay J4 has no confirmed basis on purpose. Drawn by scenes/make-district.ts.',
    currency: 'EUR',
    grid: { cellM: 0.25 },
    rain: { designLpsHa: 300, extremeLpsHa: 500, source: 'invented values of a usual size' },
    deck: {
      outline: OUTLINE.map(atGrid),
      openings: WELLS.map((well) => well.map(atGrid)),
      slabMm: 400,
      rootResistant: true,
      levels: {
        spots: [],
        breaklines: [
          ...range(8).map((j) => nodes(15 * j, () => RIDGE_Z)),
          ...VALLEYS_Y.map((y) => nodes(y, (i) => (i % 2 === 1 ? OUTLET_Z : CREST_Z))),
        ],
      },
      bays: bays(),
      columns: columns(),
      outlets: [
        ...outletAt.map((at, i) => ({ id: `O${i + 1}`, at: atGrid(at), kind: 'outlet', lps: 7 })),
        ...VALLEYS_Y.flatMap((y, i) =>
          valleyEnds(y).map((x, k) => ({
            id: `V${2 * i + k + 1}`,
            at: atGrid([x, y]),
            kind: 'overflow',
            lps: 70,
            invertM: OVERFLOW_M,
          })),
        ),
      ],
      edges: edges(),
    },
    materials: [
      {
        id: 'substrate-tree-light',
        name: 'Light tree substrate on expanded shale',
        role: 'substrate',
        density: { dry: 850, saturated: 1250 },
        waterCapacityPercent: 40,
        compactionFactor: 1.2,
        bearingKPa: 60,
        dispersal: 0.5,
        delivery: { unit: 'truck', m3: 25, kg: 24000 },
        source: 'assumed for this invented scene',
      },
      {
        id: 'subsoil-light',
        name: 'Light mineral subsoil of expanded shale',
        role: 'substrate',
        mineral: true,
        density: { dry: 850, saturated: 1250 },
        waterCapacityPercent: 40,
        compactionFactor: 1.2,
        bearingKPa: 60,
        dispersal: 0.5,
        delivery: { unit: 'truck', m3: 25, kg: 24000 },
        source: 'assumed for this invented scene',
      },
    ],
    buildups: BUILDUPS,
    zones: zones.map(({ face, ...zone }) => ({
      ...zone,
      outline: face.outline.map(atGrid),
      holes: face.holes.length > 0 ? face.holes.map((hole) => hole.map(atGrid)) : undefined,
    })),
    objects,
    traffic: [{ id: 'F1', vehicle: 'fire-16t', route: [atGrid([0.5, 86.25]), atGrid([159.5, 86.25])], widthM: 4.5 }],
    stages: stages(
      zones,
      objects.map(({ id }) => id),
    ),
    accessPoints: [
      { id: 'G1', at: atGrid([0, 86.25]), kind: 'gate' },
      { id: 'G2', at: atGrid([160, 86.25]), kind: 'gate' },
      { id: 'G3', at: atGrid([-6, 50]), kind: 'crane', reachM: 72 },
      { id: 'G4', at: atGrid([80, 60]), kind: 'crane', reachM: 72 },
      { id: 'G5', at: atGrid([166, 50]), kind: 'crane', reachM: 72 },
    ],
    views: [
      {
        id: 'V1',
        name: 'From the south',
        eye: atGrid3([80, -90, 70]),
        target: atGrid3([80, 50, 0]),
        says: 'Front gardens to the left and right, lawns and groves between them.',
      },
      {
        id: 'V2',
        name: 'Along the fire lane',
        eye: atGrid3([-20, 86, 8]),
        target: atGrid3([60, 86, 0]),
        says: 'The lane is the only way for wheels.',
      },
      {
        id: 'V3',
        name: 'Round lawn',
        eye: atGrid3([80, 18, 12]),
        target: atGrid3([80, 50, 0]),
        says: 'One tree mound stands on the round lawn.',
      },
    ],
  };
}

const scene = district();
const zoneAreaM2 = gardenPlan().reduce((sum, face) => sum + face.areaM2, 0);
const deckAreaM2 = areaOf(OUTLINE);
if (Math.abs(zoneAreaM2 - deckAreaM2) > 1e-6)
  throw new RangeError(`make-district: faces ${zoneAreaM2} m² do not tile the deck of ${deckAreaM2} m²`);
writeFileSync(new URL('district.scene.json', import.meta.url), sceneText(scene));
