/** Maps in groups, so that a bar of them can be read at a glance. */

import { isWaterMap, MAP_KINDS, type MapKind } from '../../model/maps.ts';

export const MAP_GROUPS = ['loads', 'depths', 'wheels', 'water'] as const;
export type MapGroup = (typeof MAP_GROUPS)[number];

/** A new map names its group here, or nothing compiles. */
const GROUP_OF: Readonly<Record<MapKind, MapGroup>> = {
  load: 'loads',
  utilisation: 'loads',
  'worst-stage': 'loads',
  difference: 'loads',
  depth: 'depths',
  substrate: 'depths',
  'make-up': 'depths',
  finished: 'depths',
  upstand: 'depths',
  fall: 'depths',
  'wheel-membrane': 'wheels',
  'wheel-bearing': 'wheels',
  reach: 'wheels',
  held: 'water',
  catchment: 'water',
  flow: 'water',
  ponding: 'water',
  blocked: 'water',
};

export interface GroupedMaps {
  readonly group: MapGroup;
  readonly kinds: readonly MapKind[];
}

export function groupOf(kind: MapKind): MapGroup {
  return GROUP_OF[kind];
}

/** What a scene has to show on maps. */
export interface MapMatter {
  /** Vehicles or machines drive in it. */
  readonly hasRuns: boolean;
  /** It draws outlets or gives rain. */
  readonly hasWater: boolean;
  /** A variant is compared with it. */
  readonly isCompared: boolean;
}

/** Whether a map of such a scene can show anything. */
export function isOffered(kind: MapKind, { hasRuns, hasWater, isCompared }: MapMatter): boolean {
  if (kind === 'difference') return isCompared;
  if (kind === 'wheel-membrane' || kind === 'wheel-bearing') return hasRuns;
  return hasWater || !isWaterMap(kind);
}

/** Groups that have a map, in their order. */
export function groupedMaps(matter: MapMatter): GroupedMaps[] {
  const offered = MAP_KINDS.filter((kind) => isOffered(kind, matter));
  return MAP_GROUPS.map((group) => ({ group, kinds: offered.filter((kind) => GROUP_OF[kind] === group) })).filter(
    ({ kinds }) => kinds.length > 0,
  );
}
