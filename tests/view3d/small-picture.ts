/** A picture small enough to reckon by hand: a slab 10 × 6 m, 0.2 m thick, and one zone of two layers on its left half. */

import type { Part, Picture, Prism } from '../../src/model/picture.ts';

export function part(change: Partial<Part>): Part {
  return {
    kind: 'slab',
    owner: '',
    layer: -1,
    name: '',
    floor: 0,
    extraBottomM: 0,
    extraTopM: 0,
    stageFrom: -1,
    stageTo: -1,
    top: false,
    ...change,
  };
}

/** A rectangle of two triangles; each surface is level except the last, which rises to the right by `riseM`. */
function rectangle(
  owner: string,
  box: readonly [number, number, number, number],
  levelsM: readonly number[],
  riseM = 0,
): Omit<Prism, 'parts'> {
  const [x0, y0, x1, y1] = box;
  const last = levelsM.length - 1;
  return {
    owner,
    plan: Float64Array.from([x0, y0, x1, y0, x1, y1, x0, y1]),
    triangles: Uint32Array.from([0, 1, 2, 0, 2, 3]),
    rim: Uint32Array.from([0, 1, 1, 2, 2, 3, 3, 0]),
    heights: Float64Array.from(levelsM.flatMap((z, i) => (i === last ? [z, z + riseM, z + riseM, z] : [z, z, z, z]))),
  };
}

export const PARTS: readonly Part[] = [
  part({ kind: 'slab' }),
  part({ kind: 'drainage element', owner: 'Z1', layer: 0, floor: 1, stageFrom: 1, extraTopM: 0.01 }),
  part({ kind: 'substrate', owner: 'Z1', layer: 1, floor: 2, stageFrom: 2, extraBottomM: 0.01, extraTopM: 0.01, top: true }),
  part({ kind: 'tree crown', owner: 'T1', floor: 3, stageFrom: 3 }),
  part({ kind: 'stockpile', owner: 'S1', floor: 3, stageFrom: 1, stageTo: 2 }),
];

/** Vertices of the slab and both layers: lower and upper surface of each rectangle, nothing else. */
function solidsOf(prisms: readonly Prism[]): Picture['solids'] {
  const positions: number[] = [];
  const parts: number[] = [];
  const upper: number[] = [];
  for (const prism of prisms) {
    prism.parts.forEach((index, layer) => {
      for (const side of [0, 1]) {
        for (let v = 0; v < 4; v++) {
          positions.push(prism.plan[v * 2], prism.plan[v * 2 + 1], prism.heights[(layer + side) * 4 + v]);
          parts.push(index);
          upper.push(side);
        }
      }
    });
  }
  return {
    positions: Float32Array.from(positions),
    normals: new Int8Array(parts.length * 4),
    parts: Uint16Array.from(parts),
    upper: Uint8Array.from(upper),
    triangles: new Uint32Array(0),
  };
}

export function smallPicture(): Picture {
  const prisms: Prism[] = [
    { ...rectangle('', [0, 0, 10, 6], [-0.2, 0]), parts: [0] },
    { ...rectangle('Z1', [0, 0, 5, 6], [0, 0.04, 0.34], 0.1), parts: [1, 2] },
  ];
  return {
    parts: PARTS,
    prisms,
    wallPrisms: [],
    edgeBand: new Float64Array(0),
    solids: solidsOf(prisms),
    edges: { positions: new Float32Array(0), parts: new Uint16Array(0), upper: new Uint8Array(0) },
    floorLiftM: Float64Array.from([0, 0.5, 1, 2]),
    bayLines: new Float32Array(0),
    bays: [],
    boundsM: { min: [0, 0, -0.2], max: [10, 6, 0.44] },
    notDrawn: [],
  };
}
