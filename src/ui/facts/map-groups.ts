/** Maps in groups, so that a bar of them can be read at a glance. */

import { MAP_KINDS, type MapKind } from '../../model/maps.ts';

export const MAP_GROUPS = ['loads', 'depths', 'wheels', 'water'] as const;
export type MapGroup = (typeof MAP_GROUPS)[number];

/** A new map names its group here, or nothing compiles. */
const GROUP_OF: Readonly<Record<MapKind, MapGroup>> = {
  load: 'loads',
  utilisation: 'loads',
  'worst-stage': 'loads',
  depth: 'depths',
  substrate: 'depths',
  'make-up': 'depths',
  finished: 'depths',
  upstand: 'depths',
  fall: 'depths',
  'wheel-membrane': 'wheels',
  'wheel-bearing': 'wheels',
  reach: 'wheels',
};

export interface GroupedMaps {
  readonly group: MapGroup;
  readonly kinds: readonly MapKind[];
}

export function groupOf(kind: MapKind): MapGroup {
  return GROUP_OF[kind];
}

/**
 * Groups that have a map, in their order.
 * @param hasRuns - vehicles or machines drive in the scene; without them their maps are empty
 */
export function groupedMaps(hasRuns: boolean): GroupedMaps[] {
  const offered = MAP_KINDS.filter((kind) => hasRuns || !(kind === 'wheel-membrane' || kind === 'wheel-bearing'));
  return MAP_GROUPS.map((group) => ({ group, kinds: offered.filter((kind) => GROUP_OF[kind] === group) })).filter(
    ({ kinds }) => kinds.length > 0,
  );
}
