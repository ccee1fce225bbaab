/** Collects coloured low-poly shapes into one mesh: everything that stands on the garden for scale. */

import { rgbOf } from './cell-colour.ts';

/** A place to stand. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly zM: number;
  /** Counter-clockwise from +x [rad]. */
  readonly turn: number;
}

export interface LifeMesh {
  readonly positions: Float32Array;
  /** Red, green, blue in bytes. */
  readonly tints: Uint8Array;
  readonly triangles: Uint32Array;
}

/** Half extents of a section, along and across the way one looks [m]. */
export interface Ring {
  readonly zM: number;
  readonly alongM: number;
  readonly acrossM: number;
  /** Middle of the section before and left of the spot [m]. */
  readonly at?: readonly [number, number];
}

/** Number from 0 to 1 that depends on nothing but its seed. */
export function chance(seed: number): number {
  let h = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0) / 0xffffffff;
}

export class LifeBuilder {
  private readonly positions: number[] = [];
  private readonly tints: number[] = [];
  private readonly triangles: number[] = [];

  get triangleCount(): number {
    return this.triangles.length / 3;
  }

  /** Rings stacked upwards, with a lid on top and, where it can be seen, below. */
  stack(spot: Spot, rings: readonly Ring[], look: { readonly sides: number; readonly hex: string; readonly open?: boolean }): void {
    const { sides } = look;
    const first = this.positions.length / 3;
    const tint = rgbOf(look.hex);
    const [cos, sin] = [Math.cos(spot.turn), Math.sin(spot.turn)];
    for (const { zM, alongM, acrossM, at = [0, 0] } of rings) {
      for (let i = 0; i < sides; i++) {
        // Four sides make a box: its corners, not the middles of its faces, stand at the half extents.
        const angle = (2 * Math.PI * (i + 0.5)) / sides;
        const reach = sides === 4 ? Math.SQRT2 : 1;
        const ahead = at[0] + reach * alongM * Math.cos(angle);
        const left = at[1] + reach * acrossM * Math.sin(angle);
        this.positions.push(spot.x + cos * ahead - sin * left, spot.y + sin * ahead + cos * left, spot.zM + zM);
        this.tints.push(...tint);
      }
    }
    for (let ring = 0; ring + 1 < rings.length; ring++) {
      for (let i = 0; i < sides; i++) {
        const a = first + ring * sides + i;
        const b = first + ring * sides + ((i + 1) % sides);
        this.triangles.push(a, b, b + sides, a, b + sides, a + sides);
      }
    }
    const last = first + (rings.length - 1) * sides;
    for (let i = 1; i + 1 < sides; i++) {
      this.triangles.push(last, last + i, last + i + 1);
      if (look.open !== true) this.triangles.push(first, first + i + 1, first + i);
    }
  }

  box(
    spot: Spot,
    size: { readonly at: readonly [number, number, number]; readonly m: readonly [number, number, number] },
    hex: string,
  ): void {
    const [ahead, left, up] = size.at;
    const [alongM, acrossM] = [size.m[0] / 2, size.m[1] / 2];
    const ring = (zM: number): Ring => ({ zM, alongM, acrossM, at: [ahead, left] });
    this.stack(spot, [ring(up), ring(up + size.m[2])], { sides: 4, hex });
  }

  /** A leaf-like blade: one triangle from the ground to its tip. */
  blade(spot: Spot, size: { readonly widthM: number; readonly heightM: number; readonly leanM: number }, hex: string): void {
    const first = this.positions.length / 3;
    const [cos, sin] = [Math.cos(spot.turn), Math.sin(spot.turn)];
    const w = size.widthM / 2;
    this.positions.push(spot.x - sin * w, spot.y + cos * w, spot.zM, spot.x + sin * w, spot.y - cos * w, spot.zM);
    this.positions.push(spot.x + cos * size.leanM, spot.y + sin * size.leanM, spot.zM + size.heightM);
    const tint = rgbOf(hex);
    this.tints.push(...tint, ...tint, ...tint);
    this.triangles.push(first, first + 1, first + 2);
  }

  finish(): LifeMesh {
    return {
      positions: Float32Array.from(this.positions),
      tints: Uint8Array.from(this.tints),
      triangles: Uint32Array.from(this.triangles),
    };
  }
}
