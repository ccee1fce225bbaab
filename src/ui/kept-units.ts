/** The units chosen on this device, kept for next time. */

import { LENGTH_UNITS, LOAD_UNITS, type ShownUnits, USUAL_UNITS } from '../model/shown-units.ts';

const KEPT_AS = 'loamdeck.units';

export function keepUnits({ load, length }: ShownUnits): void {
  try {
    localStorage.setItem(KEPT_AS, `${load} ${length}`);
  } catch {
    // Nothing is lost but the choice for next time.
  }
}

export function keptUnits(): ShownUnits {
  try {
    const [kept, long] = (localStorage.getItem(KEPT_AS) ?? '').split(' ');
    const load = LOAD_UNITS.find((unit) => unit === kept);
    const length = LENGTH_UNITS.find((unit) => unit === long);
    return { load: load ?? USUAL_UNITS.load, length: length ?? USUAL_UNITS.length };
  } catch {
    return USUAL_UNITS;
  }
}
