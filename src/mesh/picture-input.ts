/** What the picture is built from: the calculation's own input and surfaces, and what stands on, under and along the deck. */

import type { Surface } from '../core/levels/surface.ts';
import type { DeckInput, Ring } from '../model/deck-input.ts';
import type { RetainingShape } from './retaining.ts';

export interface PictureInput {
  readonly input: DeckInput;
  /** Top of the membrane, which is drawn as the top of the slab. */
  readonly deckSurface: Surface;
  /** Per zone; null where the finish follows from the build-up. */
  readonly finishSurfaces: readonly (Surface | null)[];
  /** Per zone and layer: index of the stage that places it, -1 where none does. */
  readonly layerStages: readonly Int16Array[];
  /** Per `input.objects`: index of the stage that places it, -1 where none does. */
  readonly objectStages: Int16Array;
  readonly furniture: Furniture;
}

/** Everything drawn besides layers; local metres. `object` is an index into `DeckInput.objects`. */
export interface Furniture {
  readonly slabM: number;
  readonly columns: readonly {
    readonly id: string;
    readonly x: number;
    readonly y: number;
    /** Along x and y. */
    readonly sizeM: readonly [number, number];
  }[];
  readonly outlets: readonly { readonly id: string; readonly x: number; readonly y: number }[];
  readonly edges: readonly {
    readonly id: string;
    readonly kind: 'upstand' | 'threshold';
    /** x y per point, first repeated as last where it closes. */
    readonly line: Float64Array;
    /** Level of the top of the membrane along it [m]. */
    readonly membraneTopM: number;
  }[];
  readonly trees: readonly {
    readonly object: number;
    readonly x: number;
    readonly y: number;
    readonly spreadM: number;
    readonly heightM: number;
  }[];
  readonly lines: readonly {
    readonly object: number;
    /** x y per point, first repeated as last where it closes. */
    readonly line: Float64Array;
    readonly widthM: number;
    readonly heightM: number;
  }[];
  readonly retaining: readonly (RetainingShape & { readonly object: number })[];
  readonly blocks: readonly { readonly object: number; readonly ring: Ring; readonly heightM: number }[];
}
