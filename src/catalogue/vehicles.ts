/** Vehicles and plant, laden, for traffic and construction stages. Axle loads in kN with 1 t = 9.81 kN, except category F. */

import type { BodyForm } from '../model/run.ts';
import type { SceneVehicle } from '../model/scene-file.ts';
import type { Source } from '../model/source.ts';
import { assumed, fromMemory } from './sources.ts';

export type VehicleNumber = 'grossKN' | 'widthM' | 'loadKN' | 'atM' | 'trackM' | 'contactM';

/** One of the supports that a vehicle stands on at work. */
export interface VehiclePad {
  readonly loadKN: number;
  /** Along × across. */
  readonly sizeM: readonly [number, number];
}

export interface CatalogueVehicle extends Omit<SceneVehicle, 'source'> {
  /** Laden; equals the sum of the axle loads. */
  readonly grossKN: number;
  /** What it is drawn as. */
  readonly form: BodyForm;
  /** Outermost radius of the tightest circle it drives; without it the lock of the wheels is assumed. */
  readonly turningRadiusM?: number;
  readonly pads?: VehiclePad;
  readonly sources: Readonly<Record<VehicleNumber, Source> & Partial<Record<'turningRadiusM' | 'pads', Source>>>;
}

const USUAL_SIZE: Source = assumed('usual size of this kind of machine');
const LADEN_SPLIT: Source = assumed('split of the laden weight over the axles');
const USUAL_CIRCLE: Source = assumed('usual turning circle of this kind of machine');
const FIRE_CONTACT: Source = fromMemory('DIN 1072, class 16/16, contact of front and rear wheels');
const FIRE_TRACK: Source = assumed('middle of tyres at a width of 2.5 m');
const FIRE_WIDTH: Source = fromMemory('greatest width of a road vehicle');
/** Pump and high reach appliance of the English guidance. */
const ENGLISH_WEIGHT: Source = {
  document: 'Approved Document B (England), typical vehicle access route specification, as a fire-safety forum repeats it',
  place: '2019 edition, Tables 13.1 and 15.2',
  grade: 'secondary',
};
const TYRE_PATCH: Source = assumed('tyre pressed flat under the laden wheel');

export const VEHICLES: readonly CatalogueVehicle[] = [
  {
    // 16 t = 156.96 kN; rear axle 10 t = 98.1 kN, front axle the remaining 6 t = 58.86 kN.
    id: 'fire-16t',
    name: 'Fire appliance 16 t',
    form: 'lorry',
    grossKN: 156.96,
    widthM: 2.5,
    turningRadiusM: 10.5,
    axles: [
      { atM: 0, loadKN: 58.86, wheels: 2, trackM: 2, contactM: [0.2, 0.26] },
      { atM: 3.6, loadKN: 98.1, wheels: 2, trackM: 2, contactM: [0.2, 0.4] },
    ],
    sources: {
      grossKN: {
        document: 'German model guideline on areas for the fire brigade, gross 16 t, as a forum thread quotes it',
        grade: 'secondary',
        url: 'https://feuerwehr-forum.de/f.php?fs=1&m=876883',
      },
      widthM: fromMemory('greatest width of a road vehicle'),
      loadKN: {
        document: 'German model guideline on areas for the fire brigade, axle 10 t; the front axle is the rest',
        grade: 'secondary',
        url: 'https://deploy.doczz.net/doc/5983430',
      },
      atM: assumed('short wheelbase of a two-axle appliance'),
      trackM: assumed('middle of tyres at a width of 2.5 m'),
      contactM: fromMemory('DIN 1072, class 16/16, contact of front and rear wheels'),
      turningRadiusM: {
        document: 'German model guideline on areas for the fire brigade, least outer radius of a bend',
        place: 'Dienstblatt des Senats von Berlin VI Nr. 11, 1985',
        grade: 'read',
        url: 'https://digital.zlb.de/viewer/fulltext/34665630_1985/71/',
      },
    },
  },
  {
    // 12.5 t = 122.625 kN; 4.5 t in front, 8 t behind.
    id: 'fire-12t5',
    name: 'Fire appliance 12.5 t (pump)',
    form: 'lorry',
    grossKN: 122.625,
    widthM: 2.5,
    turningRadiusM: 9.6,
    axles: [
      { atM: 0, loadKN: 44.145, wheels: 2, trackM: 2, contactM: [0.2, 0.26] },
      { atM: 3.6, loadKN: 78.48, wheels: 2, trackM: 2, contactM: [0.2, 0.4] },
    ],
    sources: {
      grossKN: ENGLISH_WEIGHT,
      widthM: FIRE_WIDTH,
      loadKN: LADEN_SPLIT,
      atM: assumed('short wheelbase of a two-axle appliance'),
      trackM: FIRE_TRACK,
      contactM: FIRE_CONTACT,
      turningRadiusM: {
        document: 'Approved Document B (England), turning circle between walls 19.2 m, as a county fire service repeats it',
        grade: 'secondary',
        url: 'https://hantsfire.gov.uk',
      },
    },
  },
  {
    // 17 t = 166.77 kN; 6 t in front, 11 t behind.
    id: 'fire-17t',
    name: 'Fire appliance 17 t (high reach)',
    form: 'lorry',
    grossKN: 166.77,
    widthM: 2.5,
    turningRadiusM: 14.5,
    axles: [
      { atM: 0, loadKN: 58.86, wheels: 2, trackM: 2, contactM: [0.2, 0.26] },
      { atM: 4.8, loadKN: 107.91, wheels: 2, trackM: 2, contactM: [0.2, 0.4] },
    ],
    sources: {
      grossKN: ENGLISH_WEIGHT,
      widthM: FIRE_WIDTH,
      loadKN: LADEN_SPLIT,
      atM: assumed('wheelbase of a two-axle ladder'),
      trackM: FIRE_TRACK,
      contactM: FIRE_CONTACT,
      turningRadiusM: fromMemory('Approved Document B (England), turning circle between walls 29.0 m'),
    },
  },
  {
    // 18 t = 176.58 kN; 6.5 t in front, 11.5 t behind. One support: 144 kN at 800 kN/m² on 0.18 m², a square of 0.424264 m.
    id: 'fire-18t-ladder',
    name: 'Fire appliance 18 t with 30 m ladder on supports',
    form: 'lorry',
    grossKN: 176.58,
    widthM: 2.5,
    turningRadiusM: 10.5,
    axles: [
      { atM: 0, loadKN: 63.765, wheels: 2, trackM: 2, contactM: [0.2, 0.3] },
      { atM: 4.8, loadKN: 112.815, wheels: 2, trackM: 1.9, contactM: [0.2, 0.5] },
    ],
    pads: { loadKN: 144, sizeM: [0.424264, 0.424264] },
    sources: {
      grossKN: {
        document: 'Swiss guideline on fire-brigade access and set-up areas (FKS, 2015), class 18 t, as a forum question quotes it',
        grade: 'secondary',
        url: 'https://forum-brandschutz.ch',
      },
      widthM: FIRE_WIDTH,
      loadKN: LADEN_SPLIT,
      atM: assumed('wheelbase of a two-axle ladder'),
      trackM: FIRE_TRACK,
      contactM: TYRE_PATCH,
      turningRadiusM: assumed('least outer radius of the German model guideline taken for this class too'),
      pads: {
        document:
          'Swiss guideline on fire-brigade access and set-up areas (FKS, 2015), support 144 kN at 800 kN/m², as a forum question quotes it',
        grade: 'secondary',
        url: 'https://forum-brandschutz.ch',
      },
    },
  },
  {
    // 75,000 lb = 34,019.43 kg = 333.730586 kN; 23,000 lb in front, two rear axles of 26,000 lb.
    id: 'fire-75000lb',
    name: 'Fire apparatus 75,000 lb',
    form: 'lorry',
    grossKN: 333.730586,
    widthM: 2.5,
    turningRadiusM: 13,
    axles: [
      { atM: 0, loadKN: 102.344046, wheels: 2, trackM: 2, contactM: [0.25, 0.35] },
      { atM: 5, loadKN: 115.69327, wheels: 2, trackM: 1.9, contactM: [0.25, 0.51] },
      { atM: 6.4, loadKN: 115.69327, wheels: 2, trackM: 1.9, contactM: [0.25, 0.51] },
    ],
    sources: {
      grossKN: {
        document: 'International Fire Code, Appendix D, surface for apparatus up to 75,000 lb',
        place: 'D102.1',
        grade: 'read',
        url: 'https://up.codes/s/access-and-loading',
      },
      widthM: FIRE_WIDTH,
      loadKN: LADEN_SPLIT,
      atM: assumed('three axles, the rear ones as a tandem'),
      trackM: assumed('middle of twin tyres at a width of 2.5 m'),
      contactM: {
        document: 'AASHTO LRFD 3.6.1.2.5, twin tyre 10 in × 20 in; front tyre assumed',
        grade: 'secondary',
        url: 'https://www.scribd.com/document/457815175',
      },
      turningRadiusM: USUAL_CIRCLE,
    },
  },
  {
    // 2.0 t + 0.6 t in the bucket = 25.506 kN; front 1.9 t, rear 0.7 t.
    id: 'wheel-loader-2t',
    name: 'Wheel loader 2 t, bucket full (2.6 t)',
    form: 'loader',
    grossKN: 25.506,
    widthM: 1.1,
    turningRadiusM: 2.4,
    axles: [
      { atM: 0, loadKN: 18.639, wheels: 2, trackM: 0.85, contactM: [0.2, 0.25] },
      { atM: 1.5, loadKN: 6.867, wheels: 2, trackM: 0.85, contactM: [0.15, 0.25] },
    ],
    sources: {
      grossKN: assumed('2.0 t service weight and 0.6 t in the bucket'),
      widthM: USUAL_SIZE,
      loadKN: LADEN_SPLIT,
      atM: USUAL_SIZE,
      trackM: USUAL_SIZE,
      contactM: TYRE_PATCH,
      turningRadiusM: USUAL_CIRCLE,
    },
  },
  {
    // 5.0 t + 1.8 t in the bucket = 66.708 kN; front 5.2 t, rear 1.6 t.
    id: 'wheel-loader-5t',
    name: 'Wheel loader 5 t, bucket full (6.8 t)',
    form: 'loader',
    grossKN: 66.708,
    widthM: 1.8,
    turningRadiusM: 4.5,
    axles: [
      { atM: 0, loadKN: 51.012, wheels: 2, trackM: 1.45, contactM: [0.25, 0.35] },
      { atM: 2.2, loadKN: 15.696, wheels: 2, trackM: 1.45, contactM: [0.2, 0.35] },
    ],
    sources: {
      grossKN: assumed('5.0 t service weight and 1.8 t in the bucket'),
      widthM: USUAL_SIZE,
      loadKN: LADEN_SPLIT,
      atM: USUAL_SIZE,
      trackM: USUAL_SIZE,
      contactM: TYRE_PATCH,
      turningRadiusM: USUAL_CIRCLE,
    },
  },
  {
    // 1.2 t + 1.5 t in the skip = 26.487 kN; front 1.8 t, rear 0.9 t.
    id: 'dumper-1t5',
    name: 'Dumper for 1.5 t, full (2.7 t)',
    form: 'dumper',
    grossKN: 26.487,
    widthM: 1.3,
    turningRadiusM: 3.5,
    axles: [
      { atM: 0, loadKN: 17.658, wheels: 2, trackM: 1.05, contactM: [0.2, 0.25] },
      { atM: 1.4, loadKN: 8.829, wheels: 2, trackM: 1.05, contactM: [0.2, 0.25] },
    ],
    sources: {
      grossKN: assumed('1.2 t empty and 1.5 t in the skip'),
      widthM: USUAL_SIZE,
      loadKN: LADEN_SPLIT,
      atM: USUAL_SIZE,
      trackM: USUAL_SIZE,
      contactM: TYRE_PATCH,
      turningRadiusM: USUAL_CIRCLE,
    },
  },
  {
    // Each track is one contact patch of an axle in the middle: 1.8 t = 17.658 kN.
    id: 'mini-excavator-1t8',
    name: 'Mini excavator 1.8 t on tracks',
    form: 'tracked',
    grossKN: 17.658,
    widthM: 1,
    axles: [{ atM: 0, loadKN: 17.658, wheels: 2, trackM: 0.77, contactM: [1.2, 0.23] }],
    sources: {
      grossKN: assumed('1.8 t service weight; digging over one side presses harder than this'),
      widthM: USUAL_SIZE,
      loadKN: assumed('even pressure under both tracks'),
      atM: USUAL_SIZE,
      trackM: USUAL_SIZE,
      contactM: USUAL_SIZE,
    },
  },
  {
    // 1.0 t pallet + 0.08 t = 10.5948 kN; load rollers 0.7 t, steering wheels 0.38 t.
    id: 'pallet-truck',
    name: 'Hand pallet truck with 1 t on it',
    form: 'hand truck',
    grossKN: 10.5948,
    widthM: 0.55,
    turningRadiusM: 1.5,
    axles: [
      { atM: 0, loadKN: 6.867, wheels: 2, trackM: 0.38, contactM: [0.06, 0.08] },
      { atM: 1.2, loadKN: 3.7278, wheels: 2, trackM: 0.15, contactM: [0.05, 0.05] },
    ],
    sources: {
      grossKN: assumed('1.0 t of load and 0.08 t of truck'),
      widthM: USUAL_SIZE,
      loadKN: LADEN_SPLIT,
      atM: USUAL_SIZE,
      trackM: USUAL_SIZE,
      contactM: assumed('pair of plastic rollers at each fork end, counted as one patch'),
      turningRadiusM: USUAL_CIRCLE,
    },
  },
  {
    // The code has one axle; the second makes up the gross weight so that a whole car stands on the deck.
    id: 'car-f',
    name: 'Car, category F (30 kN)',
    form: 'car',
    grossKN: 30,
    widthM: 2,
    turningRadiusM: 5.5,
    axles: [
      { atM: 0, loadKN: 10, wheels: 2, trackM: 1.8, contactM: [0.1, 0.1] },
      { atM: 2.6, loadKN: 20, wheels: 2, trackM: 1.8, contactM: [0.1, 0.1] },
    ],
    sources: {
      grossKN: {
        document: 'EN 1991-1-1:2002, category F, gross weight up to 30 kN',
        place: 'Table 6.8',
        grade: 'secondary',
      },
      widthM: USUAL_SIZE,
      loadKN: fromMemory('EN 1991-1-1:2002, axle 10 to 20 kN; the upper end behind, the rest of 30 kN in front', 'Table 6.8'),
      atM: assumed('usual wheelbase of a car'),
      trackM: fromMemory('EN 1991-1-1:2002', '6.3.3.2, Figure 6.2'),
      contactM: fromMemory('EN 1991-1-1:2002', '6.3.3.2, Figure 6.2'),
      turningRadiusM: assumed('usual turning circle of a car, 11 m'),
    },
  },
  {
    // The code has one axle of up to 90 kN; the rest of 160 kN goes in front so that a whole vehicle stands on the deck.
    id: 'van-g',
    name: 'Vehicle, category G (160 kN)',
    form: 'lorry',
    grossKN: 160,
    widthM: 2.5,
    turningRadiusM: 9,
    axles: [
      { atM: 0, loadKN: 70, wheels: 2, trackM: 1.8, contactM: [0.2, 0.2] },
      { atM: 4, loadKN: 90, wheels: 2, trackM: 1.8, contactM: [0.2, 0.2] },
    ],
    sources: {
      grossKN: {
        document: 'EN 1991-1-1:2002, category G, gross weight over 30 kN up to 160 kN',
        place: 'Table 6.8',
        grade: 'secondary',
      },
      widthM: FIRE_WIDTH,
      loadKN: fromMemory('EN 1991-1-1:2002, axle 40 to 90 kN; the upper end behind, the rest of 160 kN in front', 'Table 6.8'),
      atM: assumed('wheelbase of a light lorry'),
      trackM: fromMemory('EN 1991-1-1:2002', '6.3.3.2, Figure 6.2'),
      contactM: fromMemory('EN 1991-1-1:2002', '6.3.3.2, Figure 6.2'),
      turningRadiusM: USUAL_CIRCLE,
    },
  },
];
