/** Machines in their stages: what they stand on when the stage begins, and whether that bears wheels at all. */

import type { BuildUpInput, Region, ZoneInput } from '../../model/deck-input.ts';
import type { Role } from '../../model/roles.ts';
import type { PlantInput } from '../../model/route-input.ts';
import { areaInConvexM2, clipConvex } from '../geometry/convex-clip.ts';
import { corridorPieces } from '../geometry/corridor.ts';
import { centroidM } from '../geometry/ring.ts';
import type { StagePlan } from './plan.ts';

/** Sheets that only pass on what lies below them. */
const SHEETS: ReadonlySet<Role> = new Set<Role>(['separation', 'filter']);
/** No machine drives on these; an element whose fill is laid has the fill on top. */
const NEVER: ReadonlySet<Role> = new Set<Role>(['root barrier', 'protection', 'slip', 'drainage element']);
/** Ground that a route only grazes, by rounding of the drawing [m²]. */
const GRAZED_M2 = 0.05;

/** A machine on ground that does not bear it. */
export interface WeakGround {
  readonly plant: PlantInput;
  /** -1 where no zone is drawn. */
  readonly zone: number;
  /** Layer it stands on; -1 for the bare membrane. */
  readonly layer: number;
  readonly areaM2: number;
  /** A place there, local [m]. */
  readonly x: number;
  readonly y: number;
}

/**
 * Layer a machine stands on when a stage begins: the topmost one laid in an earlier stage, filters and separation sheets passed over.
 * What the stage itself lays does not count, as nobody knows whether it lies before the machine or behind it.
 * @param layers - layers of the build-up, bottom to top [-]
 * @param layerStages - stage that lays each layer, -1 never [-]
 * @param stage - stage that begins [-]
 * @returns index of the layer; -1 for the bare membrane [-]
 * @source contract.md, section 2, Stages
 */
export function standingLayer(layers: BuildUpInput['layers'], layerStages: Int16Array, stage: number): number {
  for (let i = layers.length - 1; i >= 0; i--) {
    if (layerStages[i] >= 0 && layerStages[i] < stage && !SHEETS.has(layers[i].role)) return i;
  }
  return -1;
}

/**
 * Whether a layer may carry a machine at all; how much it carries is another check.
 * @param layers - layers of the build-up, bottom to top [-]
 * @param layer - layer stood on, -1 for the bare membrane [-]
 * @returns false on membrane, root barrier, protection, slip sheet and open elements [-]
 * @source common practice: no wheeled plant on membrane, protection, slip sheet or open elements
 */
export function bearsPlant(layers: BuildUpInput['layers'], layer: number): boolean {
  return layer >= 0 && !NEVER.has(layers[layer].role);
}

/**
 * Machines that drive on ground which does not bear them, zone by zone; one entry per route and zone.
 * @param deck - deck with its openings [m]
 * @param zones - zones [m]
 * @param plan - which stage lays what [-]
 * @param plants - machines with their routes [m]
 * @returns places and the ground driven on; ground passed twice counts twice [m²]
 * @source contract.md, section 4, `stage.plant`
 */
export function weakGround(deck: Region, zones: readonly ZoneInput[], plan: StagePlan, plants: readonly PlantInput[]): WeakGround[] {
  return plants.flatMap((plant): WeakGround[] => {
    const pieces = corridorPieces(plant.line, plant.widthM);
    const weak = zones.flatMap((zone, z): WeakGround[] => {
      const { layers } = zone.buildUp;
      const layer = standingLayer(layers, plan.layerStages[z], plant.stage);
      if (bearsPlant(layers, layer)) return [];
      const driven = drivenOn(zone.region, pieces);
      return driven.areaM2 > GRAZED_M2 ? [{ plant, zone: z, layer, ...driven }] : [];
    });
    const bare = bareGround(deck, zones, pieces);
    return bare.areaM2 > GRAZED_M2 ? [...weak, { plant, zone: -1, layer: -1, ...bare }] : weak;
  });
}

interface Driven {
  readonly areaM2: number;
  readonly x: number;
  readonly y: number;
}

function drivenOn(region: Region, pieces: readonly number[][]): Driven {
  const areas = pieces.map((piece) => areaInConvexM2(region, piece));
  const areaM2 = areas.reduce((sum, area) => sum + area, 0);
  if (areaM2 <= GRAZED_M2) return { areaM2, x: Number.NaN, y: Number.NaN };
  const most = pieces[areas.indexOf(Math.max(...areas))];
  const [x, y] = centroidM(Float64Array.from(clipConvex(Array.from(region.outer), most)));
  return { areaM2, x, y };
}

/** Deck under a route where no zone is drawn: nothing ever lies there but the membrane. Its place is the middle of the piece of route. */
function bareGround(deck: Region, zones: readonly ZoneInput[], pieces: readonly number[][]): Driven {
  const areas = pieces.map((piece) => {
    const onDeckM2 = areaInConvexM2(deck, piece);
    return Math.max(
      0,
      zones.reduce((left, zone) => left - areaInConvexM2(zone.region, piece), onDeckM2),
    );
  });
  const areaM2 = areas.reduce((sum, area) => sum + area, 0);
  if (areaM2 <= GRAZED_M2) return { areaM2, x: Number.NaN, y: Number.NaN };
  const [x, y] = centroidM(Float64Array.from(pieces[areas.indexOf(Math.max(...areas))]));
  return { areaM2, x, y };
}
