/** Units of length that drawings use, and which of them a size suggests. */

export const UNITS = {
  m: { metres: 1 },
  cm: { metres: 0.01 },
  mm: { metres: 0.001 },
  ft: { metres: 0.3048 },
  // US survey foot: 1200/3937 m.
  ftUS: { metres: 1200 / 3937 },
  in: { metres: 0.0254 },
  dm: { metres: 0.1 },
  yd: { metres: 0.9144 },
  km: { metres: 1000 },
} as const;

export type LengthUnit = keyof typeof UNITS;

/** Units offered where the file does not settle the matter. */
export const OFFERED: readonly LengthUnit[] = ['m', 'cm', 'mm', 'ft', 'in'];

/** `$INSUNITS` of DXF; 0 and what is missing here say nothing. */
export const DXF_UNITS: Readonly<Record<number, LengthUnit>> = {
  1: 'in',
  2: 'ft',
  4: 'mm',
  5: 'cm',
  6: 'm',
  7: 'km',
  10: 'yd',
  14: 'dm',
  21: 'ftUS',
};

/** Longest side of a deck [m]: from a small courtyard to a city block; common practice. */
const DECK_SIDE_M = { least: 8, most: 600 };

export function fitsDeck(sideM: number): boolean {
  return sideM >= DECK_SIDE_M.least && sideM <= DECK_SIDE_M.most;
}

export interface UnitGuess {
  readonly unit: LengthUnit;
  readonly certain: boolean;
}

/**
 * Guesses the unit.
 * @param side - longest side of what was drawn, in the file's units
 * @param said - unit the file gives, or null
 * @returns the unit said where the size fits it; else the first that fits, not certain
 */
export function guessUnit(side: number, said: LengthUnit | null): UnitGuess {
  if (!(side > 0)) return { unit: said ?? 'm', certain: true };
  if (said !== null && fitsDeck(side * UNITS[said].metres)) return { unit: said, certain: true };
  const fitting = (['m', 'mm', 'cm', 'ft', 'in'] as const).find((unit) => fitsDeck(side * UNITS[unit].metres));
  if (said === null && fitting === 'm') return { unit: 'm', certain: true };
  return { unit: fitting ?? said ?? 'm', certain: false };
}
