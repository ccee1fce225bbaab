/** A small made-up deck, drawn whole. */

import { describe, expect, it } from 'vitest';
import { netSurface } from '../../src/core/levels/net.ts';
import { levelSurface } from '../../src/core/levels/surface.ts';
import { buildPicture } from '../../src/mesh/build-picture.ts';
import type { Furniture, PictureInput } from '../../src/mesh/picture-input.ts';
import type { BayInput, DeckInput, LayerInput, StageInput, ZoneInput } from '../../src/model/deck-input.ts';
import type { Picture } from '../../src/model/picture.ts';
import { box, expectClosed, hole, layer, region, ring, trianglesOf, volumeM3, worstNormalDeg } from './solid-checks.ts';

const LAWN = [layer('protection', 0.004), layer('drainage element', 0.06), layer('drainage fill', 0), layer('substrate', 0.25)];
const PATH = [
  layer('protection', 0.004),
  layer('base course', 0.2, { min: 0.1, max: 0.6 }),
  layer('bedding', 0.04),
  layer('surfacing', 0.08),
];
const DECK_SURFACE = netSurface(
  {
    spots: Float64Array.from([0, 0, 0.2, 30, 0, 0.2, 30, 20, 0.2, 0, 20, 0.2]),
    breaklines: [Float64Array.from([0, 10, 0, 30, 10, 0])],
  },
  100,
);

function zone(id: string, outline: ZoneInput['region'], layers: readonly LayerInput[]): ZoneInput {
  return { id, region: outline, buildUp: { id, layers, vegetationKNm2: 0 }, imposedKNm2: 0, finish: { kind: 'build-up' } };
}

function bay(id: string, outline: BayInput['region'], confirmed: boolean): BayInput {
  return { id, region: outline, permanentKNm2: 12, imposedKNm2: 5, totalKNm2: null, stageKNm2: null, confirmed };
}

const STAGES: StageInput[] = [
  { id: 'S1', name: 'Test', place: [], stockpiles: [], floodKNm2: 0.981 },
  {
    id: 'S2',
    name: 'Drainage',
    place: [],
    stockpiles: [{ id: 'K1', heightM: 1, ring: box(2, 2, 8, 6), kNm2: 9 }],
    floodKNm2: 0,
  },
  { id: 'S3', name: 'Rest', place: [], stockpiles: [], floodKNm2: 0 },
];

const INPUT: DeckInput = {
  originM: [0, 0],
  cellM: 0.25,
  deck: region(box(0, 0, 30, 20), hole(14, 12, 16, 14)),
  levels: null,
  bays: [
    bay('A1', region(box(0, 0, 15, 20)), true),
    bay('A2', region(ring([15, 0], [30, 0], [30, 4], [19, 4], [19, 16], [30, 16], [30, 20], [15, 20])), false),
  ],
  zones: [
    zone('lawn', region(box(0, 0, 12, 20)), LAWN),
    zone('path', region(box(12, 0, 18, 20)), PATH),
    zone('away', region(box(40, 0, 50, 20)), LAWN),
  ],
  objects: [
    { id: 'T1', kind: 'tree', pieces: [] },
    { id: 'W1', kind: 'line', pieces: [] },
    { id: 'P1', kind: 'block', pieces: [] },
  ],
  stages: STAGES,
};

const FURNITURE: Furniture = {
  slabM: 0.35,
  columns: [{ id: 'C1', x: 6, y: 10, sizeM: [0.4, 0.4] }],
  outlets: [{ id: 'O1', x: 6, y: 10 }],
  edges: [
    { id: 'E1', kind: 'upstand', line: Float64Array.from([0, 0, 0, 20]), membraneTopM: 0.75 },
    { id: 'E2', kind: 'threshold', line: Float64Array.from([30, 0, 30, 5]), membraneTopM: 0.05 },
  ],
  trees: [{ object: 0, x: 5, y: 10, spreadM: 4, heightM: 6 }],
  lines: [{ object: 1, line: Float64Array.from([2, 10, 4, 10]), widthM: 0.4, heightM: 0.5 }],
  retaining: [],
  blocks: [{ object: 2, ring: box(25, 9, 27, 10), heightM: 1 }],
};

const PICTURE_INPUT: PictureInput = {
  input: INPUT,
  deckSurface: DECK_SURFACE,
  finishSurfaces: [null, levelSurface(0.7), null],
  layerStages: [Int16Array.from([1, 1, 1, -1]), Int16Array.from([1, 2, 2, 2]), Int16Array.from([1, 1, 1, 2])],
  objectStages: Int16Array.from([2, -1, 2]),
  furniture: FURNITURE,
};

const { picture, memory } = buildPicture(PICTURE_INPUT);
const partOf = (owner: string, kind: string) => picture.parts.findIndex((part) => part.owner === owner && part.kind === kind);
const volumeOf = (owner: string, kind: string) => volumeM3(trianglesOf(picture.solids, partOf(owner, kind)));
const heightsOf = (part: number) => [...picture.solids.parts].flatMap((p, v) => (p === part ? [picture.solids.positions[3 * v + 2]!] : []));

describe('parts', () => {
  it('every part is closed, faces outwards and has true normals, except the flush infill, which is not drawn', () => {
    picture.parts.forEach((part, p) => {
      const faces = trianglesOf(picture.solids, p);
      if (part.kind === 'drainage fill') expect(faces).toEqual([]);
      else {
        expectClosed(faces);
        expect(volumeM3(faces)).toBeGreaterThan(0);
      }
    });
    expect(worstNormalDeg(picture.solids)).toBeLessThan(0.5);
  });

  it('volumes', () => {
    // by hand: lawn 12 × 20 × 0.25 = 60; slab (600 − 4) × 0.35 = 208.6; water (600 − 4) × 0.981/9.81 = 59.6
    expect(volumeOf('lawn', 'substrate')).toBeCloseTo(60, 3);
    expect(volumeOf('', 'slab')).toBeCloseTo(208.6, 3);
    expect(volumeOf('S1', 'flood water')).toBeCloseTo(59.6, 3);
    // by hand: base course 0.7 − 0.124 − deck; deck 0.02 |y − 10|, mean 0.1 over 6 × 20, and over the opening 2 × 2 cut
    // out at y 12 … 14 mean 0.06: 120 × 0.476 − 4 × 0.516 = 55.056
    expect(volumeOf('path', 'base course')).toBeCloseTo(55.056, 3);
  });

  it('columns stand under the slab, outlets and upstands on the deck, objects on the finished garden', () => {
    const range = (owner: string, kind: string) => {
      const z = heightsOf(partOf(owner, kind));
      return [Math.min(...z), Math.max(...z)].map((value) => expect.closeTo(value, 5));
    };
    // by hand: deck at (6, 10) is 0.00; column corners at y = 10 ± 0.2 are 0.004 up: −0.346; foot −0.35 − 2.6
    expect([-2.95, -0.346]).toEqual(range('C1', 'column'));
    expect([0, 0.03]).toEqual(range('O1', 'outlet'));
    expect([0, 0.75]).toEqual(range('E1', 'edge'));
    // by hand: lawn 0.004 + 0.06 + 0.25 = 0.314 over the valley
    expect(Math.min(...heightsOf(partOf('T1', 'tree trunk')))).toBeCloseTo(0.314, 6);
    expect([0.314, 0.814]).toEqual(range('W1', 'line load'));
    // by hand: no zone there, so on the membrane: 0.02 at y = 9, 0.00 at y = 10; top 1 m over the higher
    expect([0, 1.02]).toEqual(range('P1', 'block'));
  });

  it('a stockpile stands on what its stage has placed', () => {
    // by hand: stage 1 has protection and element: deck + 0.064; foot at y = 2 … 6 on 0.16 … 0.08
    expect(Math.min(...heightsOf(partOf('K1', 'stockpile')))).toBeCloseTo(0.144, 6);
  });

  it('stages: from when on, until when, and never in any stage', () => {
    const stage = (owner: string, kind: string) => {
      const { stageFrom, stageTo } = picture.parts[partOf(owner, kind)]!;
      return [stageFrom, stageTo];
    };
    expect(stage('', 'slab')).toEqual([-1, -1]);
    expect(stage('lawn', 'protection')).toEqual([1, -1]);
    expect(stage('lawn', 'substrate')).toEqual([3, -1]);
    expect(stage('K1', 'stockpile')).toEqual([1, 1]);
    expect(stage('S1', 'flood water')).toEqual([0, 0]);
    expect(stage('T1', 'tree crown')).toEqual([2, -1]);
    expect(stage('W1', 'line load')).toEqual([3, -1]);
  });

  it('one top layer per drawn zone', () => {
    expect(picture.parts.filter((part) => part.top).map((part) => [part.owner, part.kind])).toEqual([
      ['lawn', 'substrate'],
      ['path', 'surfacing'],
    ]);
  });

  it('what cannot be drawn is said', () => {
    expect(picture.notDrawn).toEqual([
      { owner: 'away', why: 'no part of it lies on the deck' },
      { owner: 'E2', why: 'its membrane does not rise above the deck' },
    ]);
  });
});

/** Lowest and highest point of each floor when exploded fully, worked out from the mesh as the shader does it. */
function explodedFloors({ solids, parts, floorLiftM }: Picture): { low: number; high: number }[] {
  const floors = Array.from(floorLiftM, () => ({ low: Infinity, high: -Infinity }));
  solids.parts.forEach((p, v) => {
    const part = parts[p]!;
    const z = solids.positions[3 * v + 2]! + (solids.upper[v] === 1 ? part.extraTopM : part.extraBottomM) + floorLiftM[part.floor]!;
    const floor = floors[part.floor]!;
    floor.low = Math.min(floor.low, z);
    floor.high = Math.max(floor.high, z);
  });
  return floors;
}

describe('exploded', () => {
  it('all parts of successive floors are apart by the gap', () => {
    const floors = explodedFloors(picture);
    // by hand: slab; protection, element, base, bedding, surfacing, substrate; objects
    expect(floors).toHaveLength(8);
    // by hand: 1.5 % of 30 m = 0.45 m
    for (let f = 1; f < floors.length; f++) expect(floors[f]!.low - floors[f - 1]!.high).toBeGreaterThan(0.45 - 1e-5);
  });

  it('what stands on the garden goes up with the sheets drawn thicker below it', () => {
    // by hand: one sheet of 4 mm in either build-up, so 16 mm
    const tree = picture.parts.find((part) => part.kind === 'tree crown')!;
    expect([tree.extraBottomM, tree.extraTopM]).toEqual([expect.closeTo(0.016, 12), expect.closeTo(0.016, 12)]);
  });

  it('what stands on the garden rises above every layer', () => {
    const layers = picture.parts.filter((part) => part.layer >= 0);
    const highest = Math.max(...layers.map((part) => part.floor));
    for (const kind of ['tree trunk', 'tree crown', 'line load', 'block', 'stockpile']) {
      expect(picture.parts.find((part) => part.kind === kind)!.floor).toBe(highest + 1);
    }
    for (const kind of ['slab', 'column', 'outlet', 'edge', 'flood water']) {
      expect(picture.parts.find((part) => part.kind === kind)!.floor).toBe(0);
    }
  });
});

describe('bays', () => {
  it('outlines lie 5 mm over the slab and bend with it', () => {
    // by hand: A1 crosses the valley on both long sides: 4 + 2 pieces; A2 has 8 sides and crosses it at x = 15 and x = 19: 8 + 2
    expect(picture.bayLines).toHaveLength((6 + 10) * 6);
    for (let i = 0; i < picture.bayLines.length; i += 3) {
      expect(picture.bayLines[i + 2]).toBeCloseTo(0.02 * Math.abs(picture.bayLines[i + 1]! - 10) + 0.005, 6);
    }
  });

  it('labels lie inside their bays', () => {
    expect(picture.bays.map(({ id, at, confirmed }) => [id, ...at.slice(0, 2), confirmed])).toEqual([
      ['A1', 7.5, 10, true],
      // by hand: the centroid of the C-shape is in its mouth; half height y = 10 runs through x 15 … 19
      ['A2', 17, 10, false],
    ]);
    expect(picture.bays[0]!.at[2]).toBeCloseTo(0.005, 12);
  });
});

it('bounds hold everything', () => {
  const { min, max } = picture.boundsM;
  expect([...min]).toEqual([-0.06, 0, -2.95].map((value) => expect.closeTo(value, 5)));
  expect([max[0], max[1]]).toEqual([30, 20]);
  // by hand: the tree's 6 m on 0.314, of which the uneven crown takes nine tenths at least
  expect(max[2]).toBeGreaterThan(0.314 + 5.4);
  expect(max[2]).toBeLessThanOrEqual(6.314 + 1e-6);
});

describe('memory', () => {
  it('the same input gives the same picture from the same prisms', () => {
    const again = buildPicture(PICTURE_INPUT, memory);
    expect(again.picture).toEqual(picture);
    again.picture.prisms.forEach((prism, i) => {
      if (prism.owner !== '') expect(prism.heights).toBe(picture.prisms[i]!.heights);
    });
  });

  it('a changed layer rebuilds its own zone only, on the old net', () => {
    const thicker = LAWN.map((one) => (one.role === 'substrate' ? { ...one, thicknessM: 0.3 } : one));
    const zones = INPUT.zones.map((one) => (one.id === 'lawn' ? zone('lawn', one.region, thicker) : one));
    const changed = { ...PICTURE_INPUT, input: { ...INPUT, zones } };
    const { picture: next } = buildPicture(changed, memory);
    expect(next).toEqual(buildPicture(changed).picture);
    const prism = (of: Picture, owner: string) => of.prisms.find((one) => one.owner === owner)!;
    expect(prism(next, 'path').heights).toBe(prism(picture, 'path').heights);
    expect(prism(next, 'lawn').heights).not.toBe(prism(picture, 'lawn').heights);
    expect(prism(next, 'lawn').plan).toBe(prism(picture, 'lawn').plan);
  });

  it('another finished level rebuilds its zone', () => {
    const changed = { ...PICTURE_INPUT, finishSurfaces: [null, levelSurface(0.8), null] };
    expect(buildPicture(changed, memory).picture).toEqual(buildPicture(changed).picture);
  });

  it('another deck surface rebuilds everything', () => {
    const changed = { ...PICTURE_INPUT, deckSurface: levelSurface(0) };
    expect(buildPicture(changed, memory).picture).toEqual(buildPicture(changed).picture);
  });
});
