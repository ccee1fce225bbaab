/**
 * What the 3D view draws, as plain arrays: local metres, z up, right-handed. Made by `src/mesh`, drawn by `src/view3d`.
 * Height changes (explode, stage, drawn minimum thickness) are not baked in: each vertex names its part, and each
 * part carries what the shader needs to move or hide it.
 */

import type { Role } from './roles.ts';

/** What a part is drawn as; roles of layers and everything else on the deck. */
export type PartKind =
  | Role
  | 'loose surfacing'
  | 'slab'
  | 'column'
  | 'outlet'
  | 'edge'
  | 'tree trunk'
  | 'tree crown'
  | 'line load'
  | 'retaining'
  | 'block'
  | 'stockpile'
  | 'flood water';

/** One thing that can be moved, shown or hidden by itself: a layer of a zone, the slab, a tree … */
export interface Part {
  readonly kind: PartKind;
  /** Zone, object, outlet … it belongs to; '' for the slab. */
  readonly owner: string;
  /** Position in the owner's build-up from the bottom, -1 where it is no layer. */
  readonly layer: number;
  readonly name: string;
  /** Floor of the exploded view: 0 for the slab, rising with the order; parts on one floor move together. */
  readonly floor: number;
  /** Added height when exploded: drawn minimum thickness of the sheets below (bottom) and with itself (top) [m]. */
  readonly extraBottomM: number;
  readonly extraTopM: number;
  /** Stage that brings it; -1 for always there. */
  readonly stageFrom: number;
  /** Stage after which it is gone again (stockpiles, flood water); -1 for stays. */
  readonly stageTo: number;
  /** Has no thickness anywhere, like a fill flush with its element: nothing of it is drawn. */
  readonly empty?: boolean;
  /** Topmost layer of its zone in the finished garden. */
  readonly top: boolean;
}

/** Merged closed solids of many parts. */
export interface SolidMesh {
  /** x y z per vertex [m]. */
  readonly positions: Float32Array;
  /** Unit normal × 127, x y z and one unused byte per vertex. */
  readonly normals: Int8Array;
  /** Index into `Picture.parts` per vertex. */
  readonly parts: Uint16Array;
  /** 1 where the vertex belongs to the upper surface, 0 lower (side walls: as their end). Per vertex. */
  readonly upper: Uint8Array;
  readonly triangles: Uint32Array;
}

/** Drawn edges of solids: two vertices per segment. */
export interface EdgeLines {
  readonly positions: Float32Array;
  readonly parts: Uint16Array;
  readonly upper: Uint8Array;
}

/**
 * A region in plan cut into triangles, with one height array per surface from the bottom up: surface k is the lower
 * face of layer k and the upper face of layer k-1. Solids and sections both come from it.
 */
export interface Prism {
  readonly owner: string;
  /** x y per vertex [m]. */
  readonly plan: Float64Array;
  readonly triangles: Uint32Array;
  /** Boundary edges, two vertex indices each, region on the left. */
  readonly rim: Uint32Array;
  /** Surface heights, (layers + 1) × vertices, bottom surface first [m]. */
  readonly heights: Float64Array;
  /** Index into `Picture.parts` of each layer. */
  readonly parts: readonly number[];
}

export interface Picture {
  readonly parts: readonly Part[];
  readonly prisms: readonly Prism[];
  /** Shapes within the solids that no layer has, for cuts: stems and base slabs of retaining edges. */
  readonly wallPrisms: readonly Prism[];
  readonly solids: SolidMesh;
  readonly edges: EdgeLines;
  /** Lift of each floor at 100 % [m]; no two floors touch then. */
  readonly floorLiftM: Float64Array;
  /** Inner border of the band along open edges, in plan: ax ay bx by per piece [m]. */
  readonly edgeBand: Float64Array;
  /** Outlines of bays on top of the slab: x y z per vertex, two per segment [m]. */
  readonly bayLines: Float32Array;
  readonly bays: readonly {
    readonly id: string;
    readonly label: string;
    readonly at: readonly [number, number, number];
    readonly confirmed: boolean;
  }[];
  readonly boundsM: { readonly min: readonly [number, number, number]; readonly max: readonly [number, number, number] };
  /** Parts that could not be drawn and why, for the user. */
  readonly notDrawn: readonly { readonly owner: string; readonly why: string }[];
}
