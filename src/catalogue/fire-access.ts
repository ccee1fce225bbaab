/** Lanes for fire appliances by country, each value with its source. The fire authority decides; editions and local rules differ. */

import type { BendTable, FireTable, FireTableId, StandingRule } from '../model/fire-access.ts';
import type { Limit } from '../model/rule-input.ts';
import type { Source } from '../model/source.ts';
import { commonPractice, fromMemory } from './sources.ts';

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

/** The strips are repeated by two pages on fire protection, the rest as each value says. */
const strips = (place: string): Source => ({
  document: `${MODEL_GUIDELINE}, as two pages on fire protection repeat it`,
  place,
  grade: 'secondary',
});

const SET_UP: StandingRule = {
  widthM: { value: 3.5, source: strips('width of a set-up area') },
  lengthM: { value: 11, source: berlin('length of the strips beside a set-up area, taken as its own') },
  stripAlongM: { value: 2, source: strips('strip free of obstacles on the side away from the building, where it stands along it') },
  stripAcrossM: { value: 1.25, source: berlin('strips free of obstacles on both sides, where it stands across') },
  wallLeastM: { value: 3, source: fromMemory(MODEL_GUIDELINE, 'distance of a set-up area along the building') },
  wallMostM: { value: 9, source: fromMemory(MODEL_GUIDELINE, 'distance along the building for sills up to 18 m; 6 m for higher ones') },
  wallAcrossM: { value: 1, source: berlin('distance of a set-up area across to the building') },
  runOutM: null,
};

const MOVEMENT: StandingRule = {
  widthM: { value: 7, source: berlin('movement area per vehicle') },
  lengthM: { value: 12, source: berlin('movement area per vehicle') },
  stripAlongM: null,
  stripAcrossM: null,
  wallLeastM: null,
  wallMostM: null,
  wallAcrossM: null,
  runOutM: { value: 4, source: berlin('transitions before and after a movement area') },
};

/** The print is read for all cells but one: its scan says 5.2 for 40 to 70 m, where the series and later editions have 3.2. */
const GERMAN_WIDTHS: BendTable['rows'] = [
  { upToM: 12, widthM: 5 },
  { upToM: 15, widthM: 4.5 },
  { upToM: 20, widthM: 4 },
  { upToM: 40, widthM: 3.5 },
  { upToM: 70, widthM: 3.2 },
  { upToM: Infinity, widthM: 3 },
];

const GERMANY: FireTable = {
  id: 'de-mrflfw',
  country: 'Germany',
  name: MODEL_GUIDELINE,
  straightM: { value: 3, source: dinAccess('4.2, clear width of an access') },
  bounded: { value: 3.5, overM: 12, source: dinAccess('4.2, bounded on both sides over more than 12 m') },
  bends: {
    leastOuterM: 10.5,
    rows: GERMAN_WIDTHS,
    source: berlin('table of widths by outer radius; 3.2 m for 40 to 70 m from memory, the scan is misread there'),
  },
  transitionM: { value: 11, source: berlin('transitions before and after bends') },
  gradientPercent: { value: 10, source: fromMemory(MODEL_GUIDELINE, 'gradient of an access') },
  setUpPercent: { value: 5, source: berlin('gradient of a set-up area') },
  setUp: SET_UP,
  movement: MOVEMENT,
  stepMm: { value: 80, source: fromMemory(MODEL_GUIDELINE, 'steps and kerbs') },
};

const NORM = 'DIN 14090:2003';
const NO_STRIPS = { stripAlongM: null, stripAcrossM: null, wallLeastM: null, wallMostM: null, wallAcrossM: null } as const;

/** The norm where it differs from the guideline; what is not known of it is taken from the guideline, and said to be. */
const GERMAN_NORM: FireTable = {
  ...GERMANY,
  id: 'de-din14090',
  name: NORM,
  bends: {
    leastOuterM: 10.5,
    rows: GERMAN_WIDTHS,
    source: fromMemory(NORM, 'widths by outer radius, taken to be those of the model guideline'),
  },
  transitionM: { value: 11, source: fromMemory(NORM, 'transitions, taken to be those of the model guideline') },
  gradientPercent: { value: 10, source: fromMemory(NORM, 'gradient of an access') },
  setUpPercent: { value: 5, source: fromMemory(NORM, 'gradient of a set-up area') },
  setUp: {
    ...NO_STRIPS,
    widthM: { value: 5, source: dinAccess('set-up area, 5 m by 11 m') },
    lengthM: { value: 11, source: dinAccess('set-up area, 5 m by 11 m') },
    runOutM: null,
  },
  movement: {
    ...NO_STRIPS,
    widthM: { value: 7, source: dinAccess('movement area, 7 m by 12 m') },
    lengthM: { value: 12, source: dinAccess('movement area, 7 m by 12 m') },
    runOutM: { value: 4, source: dinAccess('transitions of 4 m before and after a movement area') },
  },
  stepMm: { value: 80, source: fromMemory(NORM, 'steps and kerbs') },
};

/** Supports stand level only on even ground; a joint of paving is no step. */
export const SET_UP_STEP: Limit = { value: 20, source: commonPractice('places where appliances are set up are laid without steps') };

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
    setUp: null,
    movement: null,
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
  setUp: null,
  movement: null,
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
  if (id === 'de-din14090') return GERMAN_NORM;
  return grossKN <= PUMP_KN + 1e-9 ? ENGLAND_PUMP : ENGLAND_HIGH_REACH;
}

/** All tables, for the list of sources. */
export const FIRE_TABLES: readonly FireTable[] = [GERMANY, GERMAN_NORM, ENGLAND_PUMP, ENGLAND_HIGH_REACH, UNITED_STATES];
