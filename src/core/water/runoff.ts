/** How much rain flows off: litres per second of a strong rain, cubic metres of a year. The two coefficients never mix. */

import type { AnnualC, Band, PeakC, RunoffArea, RunoffRow } from '../../model/runoff.ts';

/** Square metres of a hectare. */
const M2_PER_HA = 10_000;

/**
 * Flow of a rain off an area.
 * @param rainLpsHa - rain, litres per second and hectare [l/s]
 * @param c - peak coefficient [-]
 * @param areaM2 - area seen from above [m²]
 * @returns flow [l/s]
 * @source Q = r · C · A / 10 000, EN 12056-3 and DIN 1986-100 as trade pages repeat it
 */
export function designFlowLps(rainLpsHa: number, c: PeakC, areaM2: number): number {
  return (rainLpsHa * c * areaM2) / M2_PER_HA;
}

/**
 * What overflows must carry while the outlets run full: the extreme rain falls on soil that takes no more.
 * @param extremeLpsHa - extreme rain, litres per second and hectare [l/s]
 * @param designLpsHa - design rain, litres per second and hectare [l/s]
 * @param c - peak coefficient, counted with the design rain only [-]
 * @param areaM2 - area seen from above [m²]
 * @returns flow; 0 where the outlets carry all [l/s]
 * @source contract.md, section 2, Water: (extreme − design · C) · area
 */
export function overflowDutyLps(extremeLpsHa: number, designLpsHa: number, c: PeakC, areaM2: number): number {
  return Math.max(0, ((extremeLpsHa - designLpsHa * c) * areaM2) / M2_PER_HA);
}

/**
 * Water that leaves an area in a year.
 * @param rainMm - rain of a year [mm]
 * @param c - annual coefficient [-]
 * @param areaM2 - area seen from above [m²]
 * @returns volume [m³]
 * @source none: arithmetic
 */
export function yearlyRunoffM3(rainMm: number, c: AnnualC, areaM2: number): number {
  return (rainMm / 1000) * c * areaM2;
}

/**
 * Mean of coefficients of one kind, by area.
 * @param parts - areas with their coefficients [m²]
 * @returns mean coefficient; null without any area [-]
 * @source none: arithmetic
 */
export function meanC<C extends PeakC | AnnualC>(parts: readonly { readonly c: C; readonly areaM2: number }[]): C | null {
  let areaM2 = 0;
  let effectiveM2 = 0;
  for (const part of parts) {
    areaM2 += part.areaM2;
    effectiveM2 += part.c * part.areaM2;
  }
  return areaM2 > 0 ? ((effectiveM2 / areaM2) as C) : null;
}

/**
 * Row of a run-off table that an area falls into.
 * @param rows - rows of one table [-]
 * @param area - surface, depth of substrate and pitch [mm]
 * @returns the first row that fits, or null [-]
 * @source none: arithmetic
 */
export function runoffRow<C extends PeakC | AnnualC>(rows: readonly RunoffRow<C>[], area: RunoffArea): RunoffRow<C> | null {
  const fits = ({ surface, depthMm, pitchDeg }: RunoffRow<C>) =>
    surface === area.surface && inBand(area.depthMm, depthMm) && inBand(area.pitchDeg, pitchDeg);
  return rows.find(fits) ?? null;
}

/** Depths are sums of layers: what is this close to a limit is on it [mm, °]. */
const ON_LIMIT = 1e-6;

function inBand(value: number, band: Band | undefined): boolean {
  if (!band) return true;
  const { from, to, fromIncluded } = band;
  return fromIncluded ? value >= from - ON_LIMIT && value < to - ON_LIMIT : value > from + ON_LIMIT && value <= to + ON_LIMIT;
}

/**
 * Room left in what holds water, when part of it is full already.
 * @param heldLm2 - water held when full [l/m²]
 * @param filledPercent - how full it is before the rain [%]
 * @returns free storage [l/m²]
 * @source none: arithmetic
 */
export function freeStorageLm2(heldLm2: number, filledPercent: number): number {
  return heldLm2 * (1 - filledPercent / 100);
}

/**
 * Length of a rectangular overflow slot, its sill level, with water standing over it.
 * @param flowLps - flow [l/s]
 * @param headMm - water above the sill of the slot [mm]
 * @returns length of the slot [mm]
 * @source EN 12056-3:2001, L = 24 000 · Q / h^1.5, from memory
 */
export function slotLengthMm(flowLps: number, headMm: number): number {
  return (24_000 * flowLps) / headMm ** 1.5;
}
