/** Trees: a tapered trunk and a crown of stacked uneven boulders of leaves, the same for the same tree every time. */

import { circleLoop, type FlatSolid, tube } from './flat-solid.ts';

export interface TreeShape {
  readonly x: number;
  readonly y: number;
  /** Level it stands on [m]. */
  readonly z: number;
  readonly spreadM: number;
  readonly heightM: number;
  /** Any whole number; makes trees differ. */
  readonly seed: number;
}

export interface TreeSolids {
  readonly trunk: FlatSolid;
  readonly crown: readonly FlatSolid[];
}

/** Lobes of a crown: height of the middle and half height as shares of the tree's height, radius as a share of the crown's. */
const TALL = [
  { middle: 0.52, half: 0.2, radius: 1 },
  { middle: 0.7, half: 0.18, radius: 0.8 },
  { middle: 0.86, half: 0.14, radius: 0.5 },
];
const SMALL = [
  { middle: 0.56, half: 0.26, radius: 1 },
  { middle: 0.8, half: 0.2, radius: 0.68 },
];
const TALL_FROM_M = 4;

/** Nearest and farthest a leaf point lies from a lobe's middle, as a share of the lobe's radius [-]. */
const LEAST_REACH = 0.86;

/**
 * Solids of one tree.
 * @param tree - place, size and seed [m]
 * @returns trunk and the lobes of the crown, which overlap; the crown stays within half the spread and under the height [m]
 * @source none: geometry; proportions are our own
 */
export function treeSolids(tree: TreeShape): TreeSolids {
  const radiusM = tree.spreadM / 2;
  const trunkM = Math.min(Math.max(0.05, 0.02 * tree.heightM), 0.3 * radiusM);
  const lobes = tree.heightM >= TALL_FROM_M ? TALL : SMALL;
  const foot = circleLoop({ x: tree.x, y: tree.y, radiusM: trunkM, sides: 7 }, tree.z);
  const head = circleLoop({ x: tree.x, y: tree.y, radiusM: 0.6 * trunkM, sides: 7 }, tree.z + lobes[0].middle * tree.heightM);
  const crown = lobes.map((lobe, index) => {
    const seed = 1000 * tree.seed + 50 * index;
    const angle = 2 * Math.PI * chance(seed);
    const offM = (1 - lobe.radius) * 0.5 * radiusM;
    return boulder({
      middle: [tree.x + offM * Math.cos(angle), tree.y + offM * Math.sin(angle), tree.z + lobe.middle * tree.heightM],
      radii: [lobe.radius * radiusM, lobe.half * tree.heightM],
      seed,
    });
  });
  return { trunk: tube([foot, head], false), crown };
}

/** Number from 0 to 1 that depends on nothing but its seed. */
function chance(seed: number): number {
  let h = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0) / 0xffffffff;
}

interface Boulder {
  readonly middle: readonly [number, number, number];
  /** In plan and upwards. */
  readonly radii: readonly [number, number];
  readonly seed: number;
}

function boulder(shape: Boulder): FlatSolid {
  const points: number[] = [];
  for (let i = 0; i < SPHERE.points.length; i += 3) {
    const reach = LEAST_REACH + (1 - LEAST_REACH) * chance(shape.seed + 1 + i / 3);
    points.push(
      shape.middle[0] + reach * shape.radii[0] * SPHERE.points[i],
      shape.middle[1] + reach * shape.radii[0] * SPHERE.points[i + 1],
      shape.middle[2] + reach * shape.radii[1] * SPHERE.points[i + 2],
    );
  }
  return { points, triangles: SPHERE.triangles };
}

/** Unit sphere of 80 triangles: an icosahedron with every face cut in four. */
const SPHERE = roundedIcosahedron();

function roundedIcosahedron(): FlatSolid {
  const g = (1 + Math.sqrt(5)) / 2;
  const corners = [
    [-1, g, 0],
    [1, g, 0],
    [-1, -g, 0],
    [1, -g, 0],
    [0, -1, g],
    [0, 1, g],
    [0, -1, -g],
    [0, 1, -g],
    [g, 0, -1],
    [g, 0, 1],
    [-g, 0, -1],
    [-g, 0, 1],
  ];
  const faces = [
    [0, 11, 5, 0, 5, 1, 0, 1, 7, 0, 7, 10, 0, 10, 11],
    [1, 5, 9, 5, 11, 4, 11, 10, 2, 10, 7, 6, 7, 1, 8],
    [3, 9, 4, 3, 4, 2, 3, 2, 6, 3, 6, 8, 3, 8, 9],
    [4, 9, 5, 2, 4, 11, 6, 2, 10, 8, 6, 7, 9, 8, 1],
  ].flat();
  const middles = new Map<string, number>();
  const middle = (p: number, q: number): number => {
    const key = p < q ? `${p} ${q}` : `${q} ${p}`;
    const known = middles.get(key);
    if (known !== undefined) return known;
    corners.push(corners[p].map((value, axis) => (value + corners[q][axis]) / 2));
    middles.set(key, corners.length - 1);
    return corners.length - 1;
  };
  const triangles: number[] = [];
  for (let t = 0; t < faces.length; t += 3) {
    const [a, b, c] = faces.slice(t, t + 3);
    const [ab, bc, ca] = [middle(a, b), middle(b, c), middle(c, a)];
    triangles.push(a, ab, ca, b, bc, ab, c, ca, bc, ab, bc, ca);
  }
  return { points: corners.flatMap((at) => at.map((value) => value / Math.hypot(...at))), triangles };
}
