/** Bodies of vehicles from plain boxes and wheels, to scale where numbers are given (wheels, tracks, width), usual sizes for the rest. */

import type { VehicleBody } from '../model/run.ts';

/** Tones of the surfaces; the shader has the same order. */
export const TONES = ['body', 'frame', 'glass', 'tyre', 'load'] as const;
export type Tone = (typeof TONES)[number];

/** Triangles in the vehicle's own metres: x ahead of the front axle, y to the left, z up from the ground. */
export interface VehicleShape {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  /** Per vertex: 0 moves with the body, 1 … with the axles. */
  readonly joints: Uint8Array;
  readonly tones: Uint8Array;
  /** Per vertex: distances from four sides of its face, for the drawn edges; far where there is none [m]. */
  readonly rims: Float32Array;
  readonly triangles: Uint32Array;
}

/** A box between two corners, turned about its middle. */
interface Box {
  readonly from: readonly [number, number, number];
  readonly to: readonly [number, number, number];
  readonly tone: Tone;
  /** Nose up, about the y axis [°]. */
  readonly pitchDeg?: number;
}

const FAR_M = 99;
const SPOKES = 24;

class ShapeWriter {
  private readonly positions: number[] = [];
  private readonly normals: number[] = [];
  private readonly joints: number[] = [];
  private readonly tones: number[] = [];
  private readonly rims: number[] = [];
  private readonly triangles: number[] = [];

  /** Four corners counter-clockwise seen from outside. */
  private quad(
    corners: readonly (readonly number[])[],
    of: { joint: number; tone: Tone; normals: readonly (readonly number[])[]; rims: readonly (readonly number[])[] },
  ): void {
    const first = this.positions.length / 3;
    corners.forEach((corner, i) => {
      this.positions.push(...corner);
      this.normals.push(...(of.normals[i] as number[]));
      this.joints.push(of.joint);
      this.tones.push(TONES.indexOf(of.tone));
      this.rims.push(...(of.rims[i] as number[]));
    });
    this.triangles.push(first, first + 1, first + 2, first, first + 2, first + 3);
  }

  box({ from, to, tone, pitchDeg = 0 }: Box, joint = 0): void {
    const middle = from.map((low, axis) => (low + (to[axis] as number)) / 2);
    // Bodies are given from the front to the rear, which runs against the axis.
    const half = from.map((low, axis) => Math.abs((to[axis] as number) - low) / 2);
    const pitch = (pitchDeg * Math.PI) / 180;
    const turned = ([x, y, z]: readonly number[]) => [
      (x as number) * Math.cos(pitch) - (z as number) * Math.sin(pitch),
      y as number,
      (x as number) * Math.sin(pitch) + (z as number) * Math.cos(pitch),
    ];
    for (let axis = 0; axis < 3; axis++) {
      for (const sign of [-1, 1]) {
        const [u, v] = sign > 0 ? [(axis + 1) % 3, (axis + 2) % 3] : [(axis + 2) % 3, (axis + 1) % 3];
        const normal = [0, 0, 0];
        normal[axis] = sign;
        const corners = [
          [-1, -1],
          [1, -1],
          [1, 1],
          [-1, 1],
        ].map(([a, b]) => {
          const at = [0, 0, 0];
          at[axis] = sign * (half[axis] as number);
          at[u as number] = (a as number) * (half[u as number] as number);
          at[v as number] = (b as number) * (half[v as number] as number);
          return turned(at).map((value, i) => value + (middle[i] as number));
        });
        const [w, h] = [2 * (half[u as number] as number), 2 * (half[v as number] as number)];
        const rims = [
          [0, w, 0, h],
          [w, 0, 0, h],
          [w, 0, h, 0],
          [0, w, h, 0],
        ];
        this.quad(corners, { joint, tone, normals: [0, 1, 2, 3].map(() => turned(normal)), rims });
      }
    }
  }

  /** A wheel that stands on the ground, its middle `leftM` from the middle of its axle. */
  wheel(leftM: number, radiusM: number, acrossM: number, joint: number): void {
    const hub = 0.45 * radiusM;
    for (let i = 0; i < SPOKES; i++) {
      const [a, b] = [i, i + 1].map((k) => (2 * Math.PI * k) / SPOKES) as [number, number];
      const at = (angle: number, r: number, side: number) => [
        r * Math.cos(angle),
        leftM + (side * acrossM) / 2,
        radiusM + r * Math.sin(angle),
      ];
      const out = (angle: number) => [Math.cos(angle), 0, Math.sin(angle)];
      this.quad([at(a, radiusM, -1), at(b, radiusM, -1), at(b, radiusM, 1), at(a, radiusM, 1)].reverse(), {
        joint,
        tone: 'tyre',
        normals: [out(a), out(b), out(b), out(a)].reverse(),
        rims: [
          [FAR_M, FAR_M, acrossM, 0],
          [FAR_M, FAR_M, acrossM, 0],
          [FAR_M, FAR_M, 0, acrossM],
          [FAR_M, FAR_M, 0, acrossM],
        ],
      });
      for (const side of [-1, 1]) {
        for (const [inner, outer, tone] of [
          [0, hub, 'frame'],
          [hub, radiusM, 'tyre'],
        ] as const) {
          const wide = outer - inner;
          const corners = [at(a, inner, side), at(a, outer, side), at(b, outer, side), at(b, inner, side)];
          const rims = [
            [FAR_M, FAR_M, FAR_M, wide],
            [FAR_M, FAR_M, FAR_M, 0],
            [FAR_M, FAR_M, FAR_M, 0],
            [FAR_M, FAR_M, FAR_M, wide],
          ];
          const turn = <T>(list: T[]) => (side < 0 ? list : list.reverse());
          this.quad(turn(corners), { joint, tone, normals: [0, 1, 2, 3].map(() => [0, side, 0]), rims: turn(rims) });
        }
      }
    }
  }

  shape(): VehicleShape {
    return {
      positions: Float32Array.from(this.positions),
      normals: Float32Array.from(this.normals),
      joints: Uint8Array.from(this.joints),
      tones: Uint8Array.from(this.tones),
      rims: Float32Array.from(this.rims),
      triangles: Uint32Array.from(this.triangles),
    };
  }
}

/** Wheels side by side around half the track, an odd one in the middle: as the calculation places them. */
export function wheelPlacesM({ wheels, trackM, acrossM }: VehicleBody['axles'][number]): number[] {
  const perSide = Math.floor(wheels / 2);
  const side = Array.from({ length: perSide }, (_, i) => trackM / 2 + (i - (perSide - 1) / 2) * acrossM);
  return [...(wheels % 2 === 1 ? [0] : []), ...side, ...side.map((off) => -off)];
}

/** Usual radius of the wheels [m]. */
function wheelRadiusM({ form, widthM }: VehicleBody): number {
  if (form === 'lorry') return 0.5;
  if (form === 'loader') return Math.min(0.62, 0.32 * widthM);
  if (form === 'dumper') return Math.min(0.5, 0.29 * widthM);
  if (form === 'hand truck') return 0.09;
  return form === 'car' ? 0.32 : 0.35;
}

/** Clearance of the lifted ground guard under a support's beam [m]. */
const SUPPORT_M = 1.1;

/**
 * Shape of a vehicle.
 * @param body - form and sizes
 * @returns triangles
 */
export function vehicleShape(body: VehicleBody): VehicleShape {
  const writer = new ShapeWriter();
  const radiusM = wheelRadiusM(body);
  body.axles.forEach((axle, a) => {
    for (const leftM of wheelPlacesM(axle)) {
      if (body.form === 'tracked') addTrack(writer, axle, leftM, a + 1);
      else writer.wheel(leftM, radiusM, axle.acrossM, a + 1);
    }
    const half = Math.max(0, axle.trackM / 2 - axle.acrossM / 2);
    if (body.form !== 'tracked' && body.form !== 'hand truck') {
      writer.box({ from: [-0.06, -half, radiusM - 0.06], to: [0.06, half, radiusM + 0.06], tone: 'frame' }, a + 1);
    }
  });
  for (const box of BOXES[body.form](body, radiusM)) writer.box(box);
  return writer.shape();
}

/**
 * Shape of one support set down: a plate of the pad's size and its leg.
 * @param alongM - length of the pad
 * @param acrossM - width of the pad
 * @returns triangles
 */
export function supportShape(alongM: number, acrossM: number): VehicleShape {
  const writer = new ShapeWriter();
  writer.box({ from: [-alongM / 2, -acrossM / 2, 0], to: [alongM / 2, acrossM / 2, 0.06], tone: 'frame' });
  writer.box({ from: [-0.07, -0.07, 0.06], to: [0.07, 0.07, SUPPORT_M], tone: 'body' });
  writer.box({ from: [-0.1, -0.1, SUPPORT_M], to: [0.1, 0.1, SUPPORT_M + 0.22], tone: 'body' });
  return writer.shape();
}

/** A crawler track: as long on the ground as its contact, its ends raised. */
function addTrack(writer: ShapeWriter, { alongM, acrossM }: VehicleBody['axles'][number], leftM: number, joint: number): void {
  const half = alongM / 2;
  const [right, left] = [leftM - acrossM / 2, leftM + acrossM / 2];
  writer.box({ from: [-half, right, 0], to: [half, left, 0.42], tone: 'tyre' }, joint);
  for (const end of [-1, 1])
    writer.box({ from: [end * half - 0.13, right, 0.12], to: [end * half + 0.13, left, 0.42], tone: 'tyre' }, joint);
  for (const x of [-0.6, 0, 0.6]) {
    writer.box({ from: [x * half - 0.1, right - 0.01, 0.11], to: [x * half + 0.1, left + 0.01, 0.31], tone: 'frame' }, joint);
  }
}

const lastM = ({ axles }: VehicleBody) => Math.max(...axles.map(({ atM }) => atM));

type Boxes = (body: VehicleBody, radiusM: number) => Box[];

const BOXES: Readonly<Record<VehicleBody['form'], Boxes>> = {
  lorry: (body) => {
    const half = body.widthM / 2;
    const rear = -(lastM(body) + 0.28 * lastM(body) + 0.6);
    return [
      { from: [1.25, -0.42, 0.55], to: [rear + 0.1, 0.42, 0.85], tone: 'frame' },
      { from: [-0.62, -half, 0.62], to: [1.35, half, 1.15], tone: 'body' },
      { from: [-0.62, -half, 1.15], to: [1.25, half, 2.75], tone: 'body' },
      { from: [1.24, -half + 0.14, 1.55], to: [1.262, half - 0.14, 2.5], tone: 'glass' },
      { from: [0.15, -half - 0.012, 1.6], to: [1.05, half + 0.012, 2.45], tone: 'glass' },
      { from: [rear, -half, 1.05], to: [-0.78, half, 2.95], tone: 'body' },
      ...[0.2, 0.52].map((share): Box => {
        const from = rear + share * (-0.78 - rear);
        return { from: [from, -half - 0.012, 1.2], to: [from + 0.26 * (-0.78 - rear), half + 0.012, 2.6], tone: 'frame' };
      }),
    ];
  },
  loader: (body, r) => {
    const half = body.widthM / 2;
    const back = -lastM(body);
    const high = 1.35 + 0.75 * Math.min(1.4, body.widthM);
    return [
      { from: [0.25, -0.32 * body.widthM, 0.8 * r], to: [0.4 * back, 0.32 * body.widthM, 1.7 * r], tone: 'body' },
      { from: [0.45 * back, -0.36 * body.widthM, 0.8 * r], to: [back - 0.42, 0.36 * body.widthM, 2.3 * r + 0.25], tone: 'body' },
      { from: [0.35 * back, -0.36 * body.widthM, 1.7 * r], to: [0.92 * back, 0.36 * body.widthM, high - 0.08], tone: 'glass' },
      { from: [0.32 * back, -0.38 * body.widthM, high - 0.08], to: [0.95 * back, 0.38 * body.widthM, high], tone: 'body' },
      ...[-1, 1].map(
        (side): Box => ({
          from: [0.3 * back, side * 0.28 * body.widthM - 0.04, 1.15 * r],
          to: [r + 0.45, side * 0.28 * body.widthM + 0.04, 1.15 * r + 0.16],
          tone: 'frame',
          pitchDeg: -18,
        }),
      ),
      { from: [r + 0.22, -half, 0.12], to: [r + 0.3, half, 0.12 + 1.35 * r], tone: 'frame' },
      { from: [r + 0.22, -half, 0.08], to: [r + 0.85, half, 0.14], tone: 'frame' },
      { from: [r + 0.3, -half + 0.03, 0.14], to: [r + 0.72, half - 0.03, 0.14 + 1.05 * r], tone: 'load' },
    ];
  },
  dumper: (body, r) => {
    const half = body.widthM / 2;
    const back = -lastM(body);
    return [
      { from: [0.1, -0.3 * body.widthM, r], to: [back - 0.3, 0.3 * body.widthM, 1.5 * r], tone: 'frame' },
      { from: [0.75, -half, 1.6 * r], to: [0.4 * back, half, 1.6 * r + 0.5], tone: 'body' },
      { from: [0.65, -half + 0.06, 1.6 * r + 0.5], to: [0.35 * back, half - 0.06, 1.6 * r + 0.6], tone: 'load' },
      { from: [0.55 * back, -0.36 * body.widthM, 1.5 * r], to: [back - 0.45, 0.36 * body.widthM, 1.5 * r + 0.5], tone: 'body' },
      ...[-1, 1].map(
        (side): Box => ({
          from: [0.95 * back, side * 0.36 * body.widthM - 0.03, 1.5 * r + 0.5],
          to: [0.95 * back - 0.06, side * 0.36 * body.widthM + 0.03, 2],
          tone: 'frame',
        }),
      ),
      { from: [0.95 * back - 0.06, -0.36 * body.widthM, 1.95], to: [0.95 * back, 0.36 * body.widthM, 2.02], tone: 'frame' },
    ];
  },
  tracked: (body) => {
    const half = body.widthM / 2;
    const long = body.axles[0]?.alongM ?? 1.2;
    return [
      { from: [-0.3 * long, -0.6 * half, 0.25], to: [0.3 * long, 0.6 * half, 0.52], tone: 'frame' },
      { from: [-0.62 * long, -half, 0.52], to: [0.38 * long, half, 0.95], tone: 'body' },
      { from: [-0.3 * long, -0.1 * half, 0.95], to: [0.36 * long, half, 2.15], tone: 'glass' },
      { from: [-0.32 * long, -0.14 * half, 2.15], to: [0.38 * long, half + 0.02, 2.22], tone: 'body' },
      { from: [0.2 * long, -0.45 * half - 0.08, 1.2], to: [0.2 * long + 1.5, -0.45 * half + 0.08, 1.42], tone: 'body', pitchDeg: 38 },
      {
        from: [0.2 * long + 1.0, -0.45 * half - 0.06, 1.05],
        to: [0.2 * long + 2.0, -0.45 * half + 0.06, 1.21],
        tone: 'body',
        pitchDeg: -68,
      },
      { from: [0.2 * long + 1.5, -0.45 * half - 0.2, 0.35], to: [0.2 * long + 1.95, -0.45 * half + 0.2, 0.7], tone: 'frame' },
    ];
  },
  'hand truck': (body) => {
    const back = -lastM(body);
    return [
      ...[-1, 1].map((side): Box => ({ from: [0.1, side * 0.19 - 0.08, 0.1], to: [back + 0.1, side * 0.19 + 0.08, 0.17], tone: 'frame' })),
      { from: [back + 0.1, -0.25, 0.08], to: [back - 0.15, 0.25, 0.5], tone: 'body' },
      { from: [back - 0.12, -0.03, 0.5], to: [back - 0.06, 0.03, 1.2], tone: 'frame', pitchDeg: 8 },
      { from: [back - 0.12, -0.18, 1.17], to: [back - 0.06, 0.18, 1.23], tone: 'frame' },
      { from: [0.08, -0.4, 0.17], to: [back + 0.12, 0.4, 0.95], tone: 'load' },
    ];
  },
  car: (body) => {
    const half = Math.max(body.widthM / 2 - 0.08, 0.6);
    const back = -lastM(body);
    return [
      { from: [0.85, -half, 0.28], to: [back - 0.85, half, 0.88], tone: 'body' },
      { from: [-0.65, -half + 0.1, 0.88], to: [back - 0.35, half - 0.1, 1.42], tone: 'glass' },
      { from: [-0.8, -half + 0.08, 1.42], to: [back - 0.3, half - 0.08, 1.48], tone: 'body' },
    ];
  },
  plain: (body, r) => {
    const half = body.widthM / 2;
    return [{ from: [0.5, -half, r + 0.1], to: [-(lastM(body) + 0.5), half, r + 0.7], tone: 'body' }];
  },
};
