/** Vehicles as they are drawn: true to their wheels, closed, standing on what is drawn; patches tied to their layer. */

import { describe, expect, it } from 'vitest';
import { VEHICLES } from '../../src/catalogue/vehicles.ts';
import type { PoseTop, PoseWheel, RunPose, VehicleBody } from '../../src/model/run.ts';
import { partStates } from '../../src/view3d/part-states.ts';
import { footFaces, footLines, footprints, routeLines, spreadLines } from '../../src/view3d/run-lines.ts';
import { JOINTS } from '../../src/view3d/vehicle-drawn.ts';
import { supportShape, type VehicleShape, vehicleShape, wheelPlacesM } from '../../src/view3d/vehicle-shape.ts';
import { standingFrames } from '../../src/view3d/vehicle-stand.ts';
import { smallPicture } from './small-picture.ts';

const bodyOf = ({ form, widthM, axles }: (typeof VEHICLES)[number]): VehicleBody => {
  return { form, widthM, axles: axles.map(({ contactM: [alongM, acrossM], ...axle }) => ({ ...axle, alongM, acrossM })) };
};

/** Signed volume of all triangles of one joint [m³]. */
function volume({ positions, triangles }: VehicleShape): number {
  let sum = 0;
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => [0, 1, 2].map((axis) => positions[3 * triangles[i + k] + axis])) as [
      number[],
      number[],
      number[],
    ];
    sum += a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  return sum / 6;
}

/** Least and greatest coordinate on an axis among the vertices of a joint. */
function extent({ positions, joints }: VehicleShape, axis: number, joint: number): [number, number] {
  const values = Array.from(joints).flatMap((own, v) => (own === joint ? [positions[3 * v + axis]] : []));
  return [Math.min(...values), Math.max(...values)];
}

describe.each(VEHICLES.map((vehicle) => [vehicle.id, vehicle] as const))('%s', (_, vehicle) => {
  const body = bodyOf(vehicle);
  const shape = vehicleShape(body);

  it('has wheels of the width of their patches where the calculation places them, standing on the ground', () => {
    body.axles.forEach((axle, a) => {
      const outer = Math.max(...wheelPlacesM(axle).map(Math.abs)) + axle.acrossM / 2;
      const [right, left] = extent(shape, 1, a + 1);
      expect(left).toBeCloseTo(outer, body.form === 'tracked' ? 1 : 5);
      expect(right).toBeCloseTo(-outer, body.form === 'tracked' ? 1 : 5);
      expect(extent(shape, 2, a + 1)[0]).toBeCloseTo(0, 5);
    });
  });

  it('turns all its faces outwards and joins what the shader can move', () => {
    expect(volume(shape)).toBeGreaterThan(0);
    expect(Math.max(...shape.joints)).toBe(body.axles.length);
    expect(body.axles.length).toBeLessThan(JOINTS);
    // Face normals of boxes and wheels agree with the order of their corners.
    const { positions, normals, triangles } = shape;
    for (let i = 0; i < triangles.length; i += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => [0, 1, 2].map((axis) => positions[3 * triangles[i + k] + axis])) as [
        number[],
        number[],
        number[],
      ];
      const [u, v] = [b.map((value, axis) => value - a[axis]), c.map((value, axis) => value - a[axis])];
      const cross = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
      const along = cross.reduce((sum, value, axis) => sum + value * normals[3 * triangles[i] + axis], 0);
      expect(along).toBeGreaterThanOrEqual(-1e-9);
    }
  });

  it('is no wider than it says', () => {
    const [right, left] = extent(shape, 1, 0);
    expect(Math.max(left, -right)).toBeLessThan(vehicle.widthM / 2 + (body.form === 'hand truck' ? 0.2 : 0.03));
  });
});

it('a support has a plate of its own size', () => {
  const shape = supportShape(0.4, 0.5);
  expect(extent(shape, 0, 0)).toEqual([Math.fround(-0.2), Math.fround(0.2)]);
  expect(extent(shape, 1, 0)).toEqual([-0.25, 0.25]);
});

const top = (materialId: string, layer: number, levelM: number, halfM: number): PoseTop =>
  ({
    materialId,
    layer,
    levelM,
    ring: Float64Array.from([2 - halfM, 3 - halfM, 2 + halfM, 3 - halfM, 2 + halfM, 3 + halfM, 2 - halfM, 3 + halfM]),
  }) as PoseTop;
/** On zone Z1 of the small picture, its two layers with a datum of 100 m. */
const wheel = (over: Partial<PoseWheel>): PoseWheel =>
  ({
    axle: 0,
    leftM: 0.5,
    x: 2,
    y: 3,
    dirX: 1,
    dirY: 0,
    onLine: true,
    surfaceM: 100.34,
    grounds: [{ zone: 'Z1', beside: false, tops: [top('soil', 1, 100.34, 0.1), top('mat', 0, 100.04, 0.3), top('', -1, 100, 0.3)] }],
    ...over,
  }) as PoseWheel;
const axle = (x: number) => ({ x, y: 3, dirX: 1, dirY: 0 });
const picture = smallPicture();

describe('standing', () => {
  it('pitches after its axles and tilts after its wheels', () => {
    // Rear axle at x = 1, 0.3 m lower; right wheels 0.1 m lower than left ones, 1 m apart
    const wheels = [
      wheel({ surfaceM: 100.4 }),
      wheel({ leftM: -0.5, surfaceM: 100.3 }),
      wheel({ axle: 1, surfaceM: 100.1 }),
      wheel({ axle: 1, leftM: -0.5, surfaceM: 100 }),
    ];
    const [body, front, rear] = standingFrames({ wheels, axles: [axle(4), axle(0)] } as unknown as RunPose, {
      picture,
      datumM: 100,
      explode: 0,
    });
    expect(front.origin.toArray()).toEqual([4, 3, expect.closeTo(0.35, 9)]);
    expect(rear.origin.z).toBeCloseTo(0.05, 9);
    expect(body.origin).toBe(front.origin);
    // 0.3 m over 4 m
    expect(body.ahead.z / body.ahead.x).toBeCloseTo(0.3 / 4, 9);
    expect(front.left.z / front.left.y).toBeCloseTo(0.1, 9);
    for (const { ahead, left, up } of [body, front, rear]) {
      expect([ahead.dot(left), ahead.dot(up), left.dot(up)].every((product) => Math.abs(product) < 1e-9)).toBe(true);
      expect(up.z).toBeGreaterThan(0.9);
    }
  });

  it('an axle beyond the deck is level with the one on it; nothing on the deck is not drawn', () => {
    const wheels = [wheel({}), wheel({ leftM: -0.5 }), wheel({ axle: 1, surfaceM: null, grounds: [] })];
    const frames = standingFrames({ wheels, axles: [axle(1), axle(-3)] } as unknown as RunPose, { picture, datumM: 100, explode: 0 });
    expect(frames[2].origin.z).toBeCloseTo(frames[1].origin.z, 9);
    expect(
      standingFrames({ wheels: wheels.slice(2), axles: [axle(-3)] } as unknown as RunPose, { picture, datumM: 100, explode: 0 }),
    ).toEqual([]);
  });

  it('rises with the layer it stands on when exploded: floor 2 by 1 m, 0.01 m of thin sheets', () => {
    const [one] = standingFrames({ wheels: [wheel({})], axles: [axle(2)] } as unknown as RunPose, { picture, datumM: 100, explode: 1 });
    expect(one.origin.z).toBeCloseTo(0.34 + 1.01, 9);
  });
});

describe('patches', () => {
  const pose = { wheels: [wheel({}), wheel({ onLine: false })] } as unknown as RunPose;

  it('lie on the chosen layer and move with it; wheels off the line have none', () => {
    const feet = footprints(pose, { materialId: 'mat', nth: 0 }, picture, 100);
    expect(feet.map(({ part, zM }) => [part, Math.round(100 * zM)])).toEqual([[1, 4]]);
    const lines = footLines(feet);
    expect([...lines.parts]).toEqual(new Array(8).fill(1));
    expect(footFaces(feet).triangles.length).toBe(6);
  });

  it('on the membrane lie on the slab', () => {
    expect(footprints(pose, { materialId: '', nth: 0 }, picture, 100).map(({ part }) => part)).toEqual([0]);
  });

  it('spread from the tyre down; on the surface itself there is nothing to spread', () => {
    const [foot] = footprints(pose, { materialId: 'mat', nth: 0 }, picture, 100);
    // Four lines, each from the substrate's top to the mat's
    expect([...spreadLines([foot]).parts]).toEqual([2, 1, 2, 1, 2, 1, 2, 1]);
    expect(spreadLines(footprints(pose, { materialId: 'soil', nth: 0 }, picture, 100)).parts.length).toBe(0);
  });

  it('are not drawn where the layer does not lie', () => {
    expect(footprints(pose, { materialId: 'slab', nth: 0 }, picture, 100)).toEqual([]);
    expect(footprints(pose, { materialId: 'mat', nth: 1 }, picture, 100)).toEqual([]);
  });
});

it('a lane is as wide as its vehicle and lies on what is drawn; beyond the deck there is none', () => {
  const look = { stage: null, hiddenKinds: new Set<never>(), hiddenZones: new Set<string>(), onlyKind: null, onlyZone: null };
  const run = { path: Float64Array.from([-2, 3, 1, 3, 3.5, 3]), body: { widthM: 2 } };
  const lines = routeLines([run as never], picture, partStates(picture.parts, look));
  const ys = new Set(Array.from(lines.positions).filter((_, i) => i % 3 === 1));
  expect([...ys].sort()).toEqual([2, 4]);
  expect(Math.min(...Array.from(lines.positions).filter((_, i) => i % 3 === 0))).toBe(1);
  // Both sides of the second piece, and its end
  expect(lines.parts.length).toBe(2 * 3);
});
