/** The strip without plants along edges and round outlets, by true distance. */

import type { BuildUpInput } from '../../model/deck-input.ts';
import type { DeckRims } from '../../model/edge-input.ts';
import { boundsMeet, type Nearest, nearestOfRegion } from '../geometry/distance.ts';
import { boundsOf } from '../geometry/ring.ts';
import type { DeckSite } from './deck-site.ts';

/** Distances this little under the limit are rounding of the drawing [m]. */
const ROUNDING_M = 1e-6;

/** Planting that comes too near. */
export interface NearPlanting {
  readonly zone: number;
  readonly kind: 'upstand' | 'threshold' | 'outlet' | 'overflow';
  readonly id: string;
  /** Distance, and the nearest place of the planting, local [m]. */
  readonly nearest: Nearest;
}

/**
 * Whether plants grow on a build-up: substrate or vegetation on top, or a vegetation load on anything but a surfacing.
 * @param buildUp - layers bottom to top [m]
 * @returns true if planted [-]
 * @source none: arithmetic
 */
export function isPlanted(buildUp: BuildUpInput): boolean {
  const top = buildUp.layers.at(-1)?.role;
  if (top === 'substrate' || top === 'vegetation') return true;
  return buildUp.vegetationKNm2 > 0 && top !== 'surfacing';
}

/**
 * Planted zones that come nearer to an edge or an outlet than the strip is wide.
 * @param site - deck and zones [m]
 * @param rims - edges and outlets, local [m]
 * @param stripM - width of the strip [m]
 * @returns one entry per zone and edge or outlet, edges first [m]
 * @source none: geometry
 */
export function nearPlanting(site: DeckSite, rims: DeckRims, stripM: number): NearPlanting[] {
  const lines = [
    ...rims.edges.map(({ id, kind, line }) => ({ id, kind, line })),
    ...rims.outlets.map(({ id, kind, x, y }) => ({ id, kind, line: Float64Array.of(x, y) })),
  ];
  return lines.flatMap(({ id, kind, line }) => {
    const { minX, minY, maxX, maxY } = boundsOf(line);
    const near = { minX: minX - stripM, minY: minY - stripM, maxX: maxX + stripM, maxY: maxY + stripM };
    return site.zones.flatMap((zone, z) => {
      if (!boundsMeet(site.zoneBounds[z], near) || !isPlanted(zone.buildUp)) return [];
      const nearest = nearestOfRegion(line, zone.region);
      return nearest.distanceM < stripM - ROUNDING_M ? [{ zone: z, kind, id, nearest }] : [];
    });
  });
}
