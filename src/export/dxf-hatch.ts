/** A hatch with a pattern of our own and with holes. */

import { type Dxfier, Hatch, HatchBoundaryPaths } from '@tarikjabiri/dxf';
import type { LineFamily } from './dxf-hatches.ts';

/** Flags of a boundary: drawn as a polyline; the outer one is also external. */
const POLYLINE = 2;
const EXTERNAL = 1;

export interface HatchLooks {
  /** Plain ASCII; `SOLID` for a plain fill. */
  readonly name: string;
  /** Null for a plain fill. */
  readonly families: readonly LineFamily[] | null;
  /** Metres of the model on a millimetre of paper. */
  readonly mPerMm: number;
}

/** Rings in metres: outer first, then holes. */
export class RegionHatch extends Hatch {
  constructor(
    private readonly rings: readonly (readonly (readonly [number, number])[])[],
    private readonly looks: HatchLooks,
    options: { readonly layerName: string; readonly trueColor: string },
  ) {
    super(new HatchBoundaryPaths(), { firstColor: 7 }, options);
  }

  protected override dxfyChild(dx: Dxfier): void {
    const { name, families } = this.looks;
    dx.point3d({ x: 0, y: 0, z: 0 });
    dx.push(210, 0);
    dx.push(220, 0);
    dx.push(230, 1);
    dx.name(name);
    dx.push(70, families === null ? 1 : 0);
    dx.push(71, 0);
    dx.push(91, this.rings.length);
    this.rings.forEach((ring, i) => {
      dx.push(92, i === 0 ? POLYLINE | EXTERNAL : POLYLINE);
      dx.push(72, 0);
      dx.push(73, 1);
      dx.push(93, ring.length);
      for (const [x, y] of ring) dx.point2d({ x, y });
      dx.push(97, 0);
    });
    dx.push(75, 0);
    dx.push(76, families === null ? 1 : 0);
    if (families !== null) this.pushFamilies(dx, families);
    dx.push(98, 0);
  }

  private pushFamilies(dx: Dxfier, families: readonly LineFamily[]): void {
    const { mPerMm } = this.looks;
    dx.push(52, 0);
    dx.push(41, 1);
    dx.push(77, 0);
    dx.push(78, families.length);
    for (const { angleDeg, spacingMm, shiftMm, dashesMm } of families) {
      const [cos, sin] = [Math.cos((angleDeg * Math.PI) / 180), Math.sin((angleDeg * Math.PI) / 180)];
      dx.push(53, angleDeg);
      dx.push(43, 0);
      dx.push(44, 0);
      dx.push(45, (shiftMm * cos - spacingMm * sin) * mPerMm);
      dx.push(46, (shiftMm * sin + spacingMm * cos) * mPerMm);
      dx.push(79, dashesMm.length);
      for (const dashMm of dashesMm) dx.push(49, dashMm * mPerMm);
    }
  }
}
