/** The seeded deck of the benchmark: 100 × 100 m, 40 zones with wiggly shared edges, 36 bays, 12 layers, 10 stages. Invented. */

import type { BuildUpInput, DeckInput, LayerInput, Ring, StageInput } from '../../src/model/deck-input.ts';
import { ROLES } from '../../src/model/roles.ts';

const SIDE_M = 100;
const ACROSS = 8;
const UP = 5;
const POINTS_PER_SIDE = 28;

/** Small repeatable generator of numbers in 0 … 1. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Deck for one cell size. */
export function benchDeck(cellM: number): DeckInput {
  const rectangle = (x0: number, y0: number, x1: number, y1: number): Ring => Float64Array.of(x0, y0, x1, y0, x1, y1, x0, y1);
  const bay = SIDE_M / 6;
  return {
    originM: [0, 0],
    cellM,
    deck: { outer: rectangle(0, 0, SIDE_M, SIDE_M), holes: [] },
    levels: { spots: benchSpots(1000), breaklines: [] },
    bays: Array.from({ length: 36 }, (_, i) => ({
      id: `bay ${i}`,
      region: { outer: rectangle((i % 6) * bay, Math.floor(i / 6) * bay, ((i % 6) + 1) * bay, (Math.floor(i / 6) + 1) * bay), holes: [] },
      permanentKNm2: 10 + (i % 5),
      imposedKNm2: 5,
      totalKNm2: null,
      stageKNm2: 12,
      confirmed: true,
    })),
    zones: benchZoneRings().map((outer, z) => ({
      id: `zone ${z}`,
      region: { outer, holes: [] },
      buildUp: benchBuildUp(z),
      imposedKNm2: 4,
      finish: { kind: 'plane', x: 0, y: 0, z: 1.1, slopeX: 0, slopeY: 0 },
    })),
    objects: [],
    stages: benchStages(),
  };
}

/** Rings of 40 zones that share every inner edge vertex by vertex, in millimetres. */
export function benchZoneRings(): Ring[] {
  const random = seeded(7);
  const mm = (value: number) => Math.round(value * 1000) / 1000;
  const node = (i: number, j: number): [number, number] => {
    const jitter = (index: number, count: number) => (index === 0 || index === count ? 0 : 4 * (random() - 0.5));
    return [mm((i * SIDE_M) / ACROSS + jitter(i, ACROSS)), mm((j * SIDE_M) / UP + jitter(j, UP))];
  };
  const nodes = Array.from({ length: ACROSS + 1 }, (_, i) => Array.from({ length: UP + 1 }, (_, j) => node(i, j)));
  const chain = (a: [number, number], b: [number, number], straight: boolean): number[] => {
    const points = [a[0], a[1]];
    for (let k = 1; k < POINTS_PER_SIDE; k++) {
      const t = k / POINTS_PER_SIDE;
      const off = straight ? 0 : 0.5 * (random() - 0.5);
      const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      points.push(
        mm(a[0] + t * (b[0] - a[0]) - (off * (b[1] - a[1])) / length),
        mm(a[1] + t * (b[1] - a[1]) + (off * (b[0] - a[0])) / length),
      );
    }
    return points;
  };
  const reversed = (points: number[], end: [number, number]) => {
    const out = [end[0], end[1]];
    for (let k = points.length - 2; k >= 2; k -= 2) out.push(points[k], points[k + 1]);
    return out;
  };
  const across = nodes.slice(0, -1).map((column, i) => column.map((a, j) => chain(a, nodes[i + 1][j], j === 0 || j === UP)));
  const up = nodes.map((column, i) => column.slice(0, -1).map((a, j) => chain(a, column[j + 1], i === 0 || i === ACROSS)));
  const rings: Ring[] = [];
  for (let i = 0; i < ACROSS; i++) {
    for (let j = 0; j < UP; j++) {
      rings.push(
        Float64Array.from([
          ...across[i][j],
          ...up[i + 1][j],
          ...reversed(across[i][j + 1], nodes[i + 1][j + 1]),
          ...reversed(up[i][j], nodes[i][j + 1]),
        ]),
      );
    }
  }
  return rings;
}

function benchSpots(count: number): Float64Array {
  const random = seeded(11);
  const spots: number[] = [];
  for (const [x, y] of [
    [0, 0],
    [SIDE_M, 0],
    [SIDE_M, SIDE_M],
    [0, SIDE_M],
  ])
    spots.push(x, y, 0.02 * Math.abs((x % 20) - 10));
  while (spots.length < 3 * count) {
    const x = SIDE_M * random();
    const y = SIDE_M * random();
    spots.push(x, y, 0.02 * Math.abs((x % 20) - 10));
  }
  return Float64Array.from(spots);
}

function benchBuildUp(z: number): BuildUpInput {
  const layers = ROLES.slice(0, 12).map((role, i): LayerInput => {
    const makeUp = role === 'light fill';
    return {
      materialId: `${role} ${z}`,
      name: role,
      role,
      thicknessM: 0.02 + 0.01 * ((z + i) % 5),
      rangeM: makeUp ? { min: 0.05, max: 0.6 } : null,
      dryFixedKNm2: 0.01,
      dryPerMKNm3: 10 + ((z * 7 + i) % 9),
      saturatedFixedKNm2: 0.02,
      saturatedPerMKNm3: 12 + ((z * 5 + i) % 9),
      heldFixedLm2: 0,
      heldPerMLm2: 100,
      voidVolumeM: 0,
    };
  });
  return { id: `build-up ${z}`, layers, vegetationKNm2: 0.1 };
}

function benchStages(): StageInput[] {
  return Array.from({ length: 10 }, (_, s) => ({
    id: `S${s}`,
    name: `Stage ${s}`,
    place: [{ zones: null, roles: s === 9 ? ROLES.slice(9, 14) : [ROLES[s]], objects: [] }],
    stockpiles: [],
    floodKNm2: 0,
  }));
}
