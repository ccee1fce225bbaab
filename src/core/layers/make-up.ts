/** Thickness of the make-up layer in every cell of a zone, held to its limits, and where it had to be held back. */

import type { ZoneInput } from '../../model/deck-input.ts';
import type { GridShape } from '../../model/maps.ts';
import { cellCentreM } from '../geometry/grid.ts';
import type { RegionCells } from '../geometry/region-cells.ts';
import { isInside } from '../geometry/ring.ts';
import { fixedThicknessM, makeUpLayer } from './coefficients.ts';

/** A cell counts as short or over only when held back by more than this [m]; contract.md, section 2. */
export const HELD_BACK_M = 0.001;

export interface MakeUp {
  /** Per cell of the zone; one single value where it is the same everywhere [m]. */
  readonly thicknessM: Float64Array;
  /** No room: the finished level comes out too high [m²]. */
  readonly shortM2: number;
  /** Of that, in cells whose centre is in the zone: elsewhere the surfaces are extended, and the zone itself may fit [m²]. */
  readonly shortInsideM2: number;
  /** Greatest lack of room and its cell, inside the zone where any is. */
  readonly shortMostM: number;
  readonly shortCell: number;
  /** Too much room: the finished level comes out too low [m²]. */
  readonly overM2: number;
  readonly overInsideM2: number;
  readonly overMostM: number;
  readonly overCell: number;
}

/**
 * Make-up thickness of one zone.
 * @param zone - finish and build-up [m]
 * @param laid - the zone's cells [-]
 * @param deckLevels - level of the membrane at each cell's centre, whole grid [m]
 * @param finishLevels - finished level wanted at each cell's centre, whole grid; null for finish `build-up` [m]
 * @param grid - grid [m]
 * @returns thickness per cell and the areas held back [m]
 * @throws RangeError where a level is missing
 * @source contract.md, section 2, Make-up layer
 */
export function makeUpOf(
  zone: ZoneInput,
  laid: RegionCells,
  deckLevels: Float64Array,
  finishLevels: Float64Array | null,
  grid: GridShape,
): MakeUp {
  const index = makeUpLayer(zone.buildUp);
  const layer = index < 0 ? null : zone.buildUp.layers[index];
  if (finishLevels === null) return { thicknessM: Float64Array.of(layer ? layer.thicknessM : 0), ...told(noMiss(), noMiss()) };
  const fixedM = fixedThicknessM(zone.buildUp);
  const min = layer?.rangeM?.min ?? 0;
  const max = layer?.rangeM?.max ?? 0;
  const thicknessM = new Float64Array(layer ? laid.cells.length : 1);
  const short = noMiss();
  const over = noMiss();
  for (let i = 0; i < laid.cells.length; i++) {
    const cell = laid.cells[i];
    const wanted = finishLevels[cell] - deckLevels[cell] - fixedM;
    if (Number.isNaN(wanted)) throw new RangeError(`makeUpOf: no level at cell ${cell} of zone ${zone.id}`);
    if (layer) thicknessM[i] = wanted < min ? min : wanted > max ? max : wanted;
    const lack = min - wanted;
    const rest = wanted - max;
    if (lack <= HELD_BACK_M && rest <= HELD_BACK_M) continue;
    const inside = laid.shares[i] >= 1 || isInside(zone.region, ...cellCentreM(grid, cell));
    addMiss(lack > rest ? short : over, Math.max(lack, rest), cell, laid.shares[i] * grid.cellM ** 2, inside);
  }
  return { thicknessM, ...told(short, over) };
}

interface Miss {
  areaM2: number;
  insideM2: number;
  mostM: number;
  cell: number;
  mostInside: boolean;
}

function noMiss(): Miss {
  return { areaM2: 0, insideM2: 0, mostM: 0, cell: -1, mostInside: false };
}

/** A miss inside the zone counts before any outside it, then the greater one. */
function addMiss(miss: Miss, byM: number, cell: number, areaM2: number, inside: boolean): void {
  miss.areaM2 += areaM2;
  if (inside) miss.insideM2 += areaM2;
  if (miss.mostInside && !inside) return;
  if (inside === miss.mostInside && byM <= miss.mostM) return;
  miss.mostM = byM;
  miss.cell = cell;
  miss.mostInside = inside;
}

function told(short: Miss, over: Miss): Omit<MakeUp, 'thicknessM'> {
  return {
    shortM2: short.areaM2,
    shortInsideM2: short.insideM2,
    shortMostM: short.mostM,
    shortCell: short.cell,
    overM2: over.areaM2,
    overInsideM2: over.insideM2,
    overMostM: over.mostM,
    overCell: over.cell,
  };
}
