/** Lanes for fire appliances by country, each value with its source. The fire authority decides; editions and local rules differ. */

import type { FireTable, FireTableId } from '../model/fire-access.ts';
import type { Source } from '../model/source.ts';
import { fromMemory } from './sources.ts';

const MODEL_GUIDELINE = 'German model guideline on areas for the fire brigade';
const BERLIN_PRINT = 'https://digital.zlb.de/viewer/fulltext/34665630_1985/71/';

const berlin = (place: string): Source => ({
  document: `${MODEL_GUIDELINE}, as printed in the Berlin official gazette VI No. 11, 30 October 1985`,
  place,
  grade: 'read',
  url: BERLIN_PRINT,
});

const dinAccess = (place: string): Source => ({
  document: 'DIN 14090:2003, as two building glossaries repeat it',
  place,
  grade: 'secondary',
});

/** The print is read for all cells but one: its scan says 5.2 for 40 to 70 m, where the series and later editions have 3.2. */
const GERMANY: FireTable = {
  id: 'de-mrflfw',
  country: 'Germany',
  name: MODEL_GUIDELINE,
  straightM: { value: 3, source: dinAccess('4.2, clear width of an access') },
  bounded: { value: 3.5, overM: 12, source: dinAccess('4.2, bounded on both sides over more than 12 m') },
  bends: {
    leastOuterM: 10.5,
    rows: [
      { upToM: 12, widthM: 5 },
      { upToM: 15, widthM: 4.5 },
      { upToM: 20, widthM: 4 },
      { upToM: 40, widthM: 3.5 },
      { upToM: 70, widthM: 3.2 },
      { upToM: Infinity, widthM: 3 },
    ],
    source: berlin('table of widths by outer radius; 3.2 m for 40 to 70 m from memory, the scan is misread there'),
  },
  transitionM: { value: 11, source: berlin('transitions before and after bends') },
  gradientPercent: { value: 10, source: fromMemory(MODEL_GUIDELINE, 'gradient of an access') },
  setUpPercent: { value: 5, source: berlin('gradient of a set-up area') },
  stepMm: { value: 80, source: fromMemory(MODEL_GUIDELINE, 'steps and kerbs') },
};

const APPROVED = 'England, Approved Document B 2019, typical vehicle access route specification';
const PUMP: Source = {
  document: APPROVED,
  place: 'Table 13.1 of volume 1 and 15.2 of volume 2, row pump, as two fire authorities repeat it',
  grade: 'secondary',
};
const HIGH_REACH = fromMemory(APPROVED, 'Table 13.1 of volume 1 and 15.2 of volume 2, row high reach, turning circle between kerbs 26.0 m');

/** Half of the turning circle between kerbs; the road is as wide in bends as elsewhere. */
function england(turningCircleM: number, row: string, source: Source): FireTable {
  return {
    id: 'en-adb',
    country: 'England',
    name: `Approved Document B, ${row}`,
    straightM: { value: 3.7, source: PUMP },
    bounded: null,
    bends: { leastOuterM: turningCircleM / 2, rows: [{ upToM: Infinity, widthM: 3.7 }], source },
    transitionM: null,
    gradientPercent: null,
    setUpPercent: null,
    stepMm: null,
  };
}

const ENGLAND_PUMP = england(16.8, 'pump', PUMP);
const ENGLAND_HIGH_REACH = england(26, 'high reach', HIGH_REACH);
/** The pump of the English table weighs 12.5 t: 12.5 · 9.81 [kN]. */
const PUMP_KN = 122.625;

const FIRE_CODE = 'International Fire Code, Appendix D, where adopted';
const countyPrint = (place: string): Source => ({
  document: FIRE_CODE,
  place,
  grade: 'secondary',
  url: 'https://records.co.kittitas.wa.us',
});

/** 20 ft = 6.096 m. Radii are fixed by the fire code official, so no bend is judged. */
const UNITED_STATES: FireTable = {
  id: 'us-ifc',
  country: 'United States',
  name: FIRE_CODE,
  straightM: { value: 6.096, source: countyPrint('D103.4, 20 ft; D103.1 asks for 26 ft at a hydrant') },
  bounded: null,
  bends: null,
  transitionM: null,
  gradientPercent: { value: 10, source: countyPrint('D103.2') },
  setUpPercent: null,
  stepMm: null,
};

/**
 * The table a lane is held against.
 * @param id - choice of the scene
 * @param grossKN - weight of the appliance; the English table has two rows [kN]
 * @returns the table; null for `none`
 */
export function fireTable(id: FireTableId, grossKN: number): FireTable | null {
  if (id === 'none') return null;
  if (id === 'us-ifc') return UNITED_STATES;
  if (id === 'de-mrflfw') return GERMANY;
  return grossKN <= PUMP_KN + 1e-9 ? ENGLAND_PUMP : ENGLAND_HIGH_REACH;
}

/** All tables, for the list of sources. */
export const FIRE_TABLES: readonly FireTable[] = [GERMANY, ENGLAND_PUMP, ENGLAND_HIGH_REACH, UNITED_STATES];
