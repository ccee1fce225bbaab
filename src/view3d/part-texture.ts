/** The data of each part as texels, so that the shader can lift, hide and colour parts without new vertices. */

import { ROLE_STYLE } from '../model/palette.ts';
import type { Part, PartKind, Picture } from '../model/picture.ts';
import type { PartState } from './part-states.ts';

/** Texels of one part; the shader has the same number. */
export const TEXELS_PER_PART = 2;
export const PARTS_PER_ROW = 128;
export const PART_TEXTURE_WIDTH = TEXELS_PER_PART * PARTS_PER_ROW;

/** Order of the styles in the shader's tables. */
export const STYLE_KINDS = Object.keys(ROLE_STYLE) as readonly PartKind[];

/** Bits of the second texel's first channel. */
export const PART_SHOWN = 1;
export const PART_TOP = 2;
/** Left out while a map is shown on top: it would hide the cells under it. */
export const PART_OVERHEAD = 4;
export const PART_SLAB = 8;
/** Drawn in front of what it stands in: its faces lie in the faces of the soil it holds. */
export const PART_PROUD = 16;

/** Height of the texture, and so length of the array, for a number of parts. */
export function partTextureRows(partCount: number): number {
  return Math.max(1, Math.ceil(partCount / PARTS_PER_ROW));
}

/**
 * Mean height of each part, from its vertices [m]: how much room its edges have on the screen.
 */
export function partHeightsM(picture: Picture): Float64Array {
  const { positions, parts, upper } = picture.solids;
  const sums = new Float64Array(picture.parts.length * 2);
  const counts = new Uint32Array(picture.parts.length * 2);
  for (let v = 0; v < parts.length; v++) {
    const slot = parts[v] * 2 + upper[v];
    sums[slot] += positions[v * 3 + 2];
    counts[slot]++;
  }
  const mean = (slot: number) => (counts[slot] === 0 ? 0 : sums[slot] / counts[slot]);
  return Float64Array.from(picture.parts, (_, part) => Math.abs(mean(part * 2 + 1) - mean(part * 2)));
}

/** What is known of parts besides their states. */
export interface PartLooks {
  readonly heightsM: Float64Array;
  /** Zones with plants. */
  readonly green: ReadonlySet<string>;
}

/**
 * Writes the texels of all parts.
 * Texel 0: lift of the floor, extra height below, extra height above [m], style.
 * Texel 1: bits, arriving rank, height [m], 1 where plants cover it.
 */
export function writePartTexels(
  picture: Picture,
  states: readonly PartState[],
  { heightsM, green }: PartLooks,
  texels: Float32Array,
): void {
  picture.parts.forEach((part, i) => {
    const bits = bitsOf(part, states[i]);
    texels.set(
      [
        picture.floorLiftM[part.floor],
        part.extraBottomM,
        part.extraTopM,
        STYLE_KINDS.indexOf(part.kind),
        bits,
        states[i].arriving,
        heightsM[i],
        part.kind === 'substrate' && green.has(part.owner) ? 1 : 0,
      ],
      i * TEXELS_PER_PART * 4,
    );
  });
}

function bitsOf(part: Part, state: PartState): number {
  const bits = (state.shown ? PART_SHOWN : 0) | (state.top ? PART_TOP : 0);
  if (part.kind === 'slab') return bits | PART_SLAB;
  if (part.kind === 'retaining') return bits | PART_PROUD;
  return part.kind === 'tree crown' || part.kind === 'tree trunk' ? bits | PART_OVERHEAD : bits;
}
