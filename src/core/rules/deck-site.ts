/** What the rules of edges and falls look at: the deck on its grid, its surfaces and its zones. */

import type { ZoneInput } from '../../model/deck-input.ts';
import type { DeckGround, RegionCells } from '../geometry/region-cells.ts';
import type { Bounds } from '../geometry/ring.ts';
import type { Surface } from '../levels/surface.ts';

export interface DeckSite {
  readonly ground: DeckGround;
  /** Top of membrane; a plane only where the file gives no levels, or a single spot. */
  readonly deckSurface: Surface;
  readonly zones: readonly ZoneInput[];
  readonly zoneBounds: readonly Bounds[];
  readonly zoneCells: readonly RegionCells[];
  /** Per zone: finished level wanted; null for finish `build-up`. */
  readonly finishSurfaces: readonly (Surface | null)[];
}
