/** Retaining edges as drawn: one closed solid with the shape of an L, and the same shape as prisms for upright cuts. */

import { type FlatSolid, type MitredLine, mitredLine, tube } from './flat-solid.ts';
import type { BarePrism } from './prism.ts';

export interface RetainingShape {
  /** Free face of the stem, x y per point. */
  readonly line: ArrayLike<number>;
  /** Where the soil lies, seen along the line. */
  readonly side: 'left' | 'right';
  /** From the underside of the base slab to the surface of the soil. */
  readonly retainedM: number;
  /** From the free face to the end of the base slab under the soil. */
  readonly baseM: number;
  readonly stemM: number;
  readonly slabM: number;
}

/** A level at a place in plan [m]. */
export type LevelAt = (x: number, y: number) => number;

export interface RetainingSolid {
  readonly solid: FlatSolid;
  /** Stem and base slab: side by side, so that together they fill the solid. */
  readonly prisms: readonly BarePrism[];
}

/** Longest stretch between two looks at the ground [m]. */
const STEP_M = 0.5;
/** Corner of the profile from which all of it can be seen: where stem and base slab meet. */
const INNER_CORNER = 3;

/**
 * Solid of a retaining edge. Its top is level with the soil behind it; where the soil is too shallow for it, it stands on the membrane,
 * as the check counts it.
 * @param shape - line and section of the wall [m]
 * @param soil - surface of the soil behind [m]
 * @param membrane - top of the membrane [m]
 * @returns solid with its prisms, or null where the line has no length [m]
 * @source none: geometry
 */
export function retainingSolid(shape: RetainingShape, soil: LevelAt, membrane: LevelAt): RetainingSolid | null {
  const { retainedM, baseM, stemM, slabM } = shape;
  const bends = mitredLine(shape.side === 'left' ? shape.line : reversed(shape.line));
  if (bends === null) return null;
  const { stations, closed } = withSteps(bends, baseM);
  const undersideM = stations.map(({ x, y, mx, my }) => {
    const heelM = (stemM + baseM) / 2;
    const [hx, hy] = [x + mx * heelM, y + my * heelM];
    return Math.max(membrane(hx, hy), soil(hx, hy) - retainedM);
  });
  const profile = [
    [0, 0],
    [baseM, 0],
    [baseM, slabM],
    [stemM, slabM],
    [stemM, retainedM],
    [0, retainedM],
  ];
  const loops = stations.map(({ x, y, mx, my }, i) => profile.flatMap(([off, up]) => [x + mx * off, y + my * off, undersideM[i] + up]));
  const strip = (from: number, to: number, heightM: number) => stripPrism({ stations, closed }, [from, to], undersideM, heightM);
  return { solid: tube(loops, closed, INNER_CORNER), prisms: [strip(0, stemM, retainedM), strip(stemM, baseM, slabM)] };
}

function reversed(line: ArrayLike<number>): number[] {
  const out: number[] = [];
  for (let i = line.length - 2; i >= 0; i -= 2) out.push(line[i], line[i + 1]);
  return out;
}

/** Further stations between the bends, clear of the base slab's mitres, so that the wall follows the ground. */
function withSteps({ stations, closed }: MitredLine, baseM: number): MitredLine {
  const count = stations.length;
  const out: MitredLine['stations'][number][] = [];
  stations.forEach((from, i) => {
    out.push(from);
    if (i + 1 === count && !closed) return;
    const to = stations[(i + 1) % count];
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const lengthM = Math.hypot(dx, dy);
    const [ux, uy] = [dx / lengthM, dy / lengthM];
    // How far the mitres at both ends reach along the stretch.
    const startM = Math.abs(from.mx * ux + from.my * uy) * baseM;
    const endM = lengthM - Math.abs(to.mx * ux + to.my * uy) * baseM;
    const steps = Math.ceil(lengthM / STEP_M);
    for (let k = 1; k < steps; k++) {
      const alongM = (lengthM * k) / steps;
      if (alongM > startM && alongM < endM) out.push({ x: from.x + ux * alongM, y: from.y + uy * alongM, mx: -uy, my: ux });
    }
  });
  return { stations: out, closed };
}

/** One layer over the strip between two distances from the line. */
function stripPrism(
  { stations, closed }: MitredLine,
  off: readonly [number, number],
  undersideM: readonly number[],
  heightM: number,
): BarePrism {
  const n = stations.length;
  const plan = Float64Array.from(stations.flatMap(({ x, y, mx, my }) => off.flatMap((m) => [x + mx * m, y + my * m])));
  const triangles: number[] = [];
  const right: number[] = [];
  const left: number[] = [];
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const a = 2 * i;
    const b = 2 * ((i + 1) % n);
    triangles.push(a, b, b + 1, a, b + 1, a + 1);
    right.push(a, b);
    left.push(b + 1, a + 1);
  }
  const ends = closed ? [] : [2 * n - 2, 2 * n - 1, 1, 0];
  const bottom = undersideM.flatMap((z) => [z, z]);
  const heights = Float64Array.from([...bottom, ...bottom.map((z) => z + heightM)]);
  return { plan, triangles: Uint32Array.from(triangles), rim: Uint32Array.from([...right, ...left, ...ends]), heights };
}
