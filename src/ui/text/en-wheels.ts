/** Sentences of the sheet of vehicles: where they stand, what they press, which bays they enter. */

import type { ReportTraffic } from '../../model/report.ts';
import type { Governs } from '../../model/run.ts';
import type { WheelName } from '../facts/run-facts.ts';
import { loadNumber, mmText, numberText, percentText, quantityOf } from '../format.ts';

const kPaText = (valueKPa: number) => quantityOf(valueKPa, 1, 'kPa');

const GOVERNS: Readonly<Record<Governs, string>> = {
  'one wheel': 'one wheel alone',
  'sum of wheels': 'sum of wheels that overlap',
  'enclosing rectangle': 'rectangle around wheels that hang together',
};

type Permitted = ReportTraffic['bays'][number]['vehiclePermitted'];

export const wheels = {
  says: 'Vehicles of the finished garden and machines of the stages, each on its line. Choose one to see it stand there and what it presses on every layer.',
  list: 'Vehicle',
  choose: 'Vehicle',
  none: 'None: all vehicles',
  option: (id: string, vehicle: string) => `${id}: ${vehicle}`,
  caption: 'Vehicles and machines: greatest share of what a layer bears, greatest pressure on the membrane, over the whole line',
  besides: (count: number) =>
    `The table has the end of each stage, with pressure spread by depth. ${count === 1 ? '1 finding says' : `${count} findings say`} where more comes out: as a stage begins, or by the second opinion, an elastic half-space. See Findings.`,
  used: 'Bearing used',
  membrane: 'Membrane, kPa',
  garden: 'Finished garden',
  stage: (number: number, name: string) => `Stage ${number}, ${name}`,
  usedShare: (share: number | null) => (share === null ? 'none given' : percentText(share)),
  overShare: (share: number) => `${percentText(share)}, over`,
  pressure: (valueKPa: number | null) => (valueKPa === null ? '–' : numberText(valueKPa, 1)),
  pick: (id: string, vehicle: string) => `Show ${vehicle} on ${id}`,
  factor: (factor: number) => `Wheel loads multiplied by ${numberText(factor, 2)}`,
  place: 'Front axle from the start of the line',
  supportPlace: 'Support from the start of the line',
  placeText: (frontM: number, travelM: number) => `${numberText(frontM, 2)} of ${quantityOf(travelM, 2, 'm')}`,
  standTitle: 'How it stands',
  stands: { wheels: 'on its wheels', support: 'one support set down' },
  supportNote: 'One support may be set down anywhere on the line; the vehicle itself is not drawn then.',
  worst: 'Worst place',
  noWorst: 'No wheel comes onto the deck.',
  drive: 'Drive',
  halt: 'Stop',
  otherStage: 'The model shows another stage, so the vehicle is not drawn.',
  showStage: 'Show its stage',
  wheel: 'Wheel',
  mostUsed: (name: string) => `Most used: ${name}`,
  wheelName: ({ axle, side, place, of }: WheelName) => {
    const sides = { left: 'left', middle: 'middle', right: 'right' } as const;
    if (of === 1) return `axle ${axle}, ${sides[side]}`;
    return `axle ${axle}, ${sides[side]}, ${place} of ${of} from outside`;
  },
  support: 'support',
  noWheel: 'No wheel stands on the line and on the deck here.',
  onZone: (zone: string | null) => (zone === null ? 'On bare deck' : `On zone ${zone}`),
  besideZone: (zone: string | null) => `Beside it: the patch laps onto zone ${zone ?? ''}`,
  layerCaption: (where: string) => `${where}: pressure on every layer, top to bottom, against what it bears, in kPa`,
  layer: 'Layer',
  here: 'Here',
  route: 'Whole line',
  bears: 'Bears',
  kPa: 'Pressures in kPa: wheels and saturated weight above; on the membrane wheels alone.',
  membraneName: 'Membrane',
  depth: (mm: number) => (mm < 0.05 ? 'at the surface' : `${mmText(Math.round(mm))} deep`),
  noBearing: 'not given',
  showFoot: (name: string) => `Draw the patches on ${name}`,
  footTitle: (name: string) => `Drawn on: ${name}`,
  patch: 'Patch',
  patchSize: (alongMm: number, acrossMm: number, growthMm: number) =>
    `${mmText(alongMm)} × ${mmText(acrossMm)}, grown by ${mmText(growthMm)} on every side`,
  wheelsAlone: 'Wheels',
  governs: (valueKPa: number, governs: Governs) => `${kPaText(valueKPa)}, ${GOVERNS[governs]}`,
  above: 'Weight above',
  aboveText: kPaText,
  elastic: 'Elastic ground',
  /** With the weight above it may be more than the layer bears, though the spread patch is not. */
  elasticText: (valueKPa: number, sumKPa: number, permittedKPa: number | null) =>
    permittedKPa !== null && sumKPa > permittedKPa
      ? `${kPaText(valueKPa)} of wheels, ${kPaText(sumKPa)} with the weight: by this second opinion more than it bears`
      : `${kPaText(valueKPa)} of wheels: a second opinion; under thin cover it is the higher one`,
  notUnder: 'The layer chosen does not lie here; no patch is drawn.',
  bays: 'Bays entered',
  bayCaption: 'Bays entered: load of wheels standing in the bay at once, over its area, against the permitted imposed load',
  bay: 'Bay',
  standing: 'Standing',
  standingText: (loadKN: number) => quantityOf(loadKN, 1, 'kN'),
  ofImposed: 'Over its area',
  imposed: (loadKNm2: number, permittedKNm2: number | null) =>
    permittedKNm2 === null
      ? `${loadNumber(loadKNm2)}, no imposed load given`
      : `${loadNumber(loadKNm2)} of ${quantityOf(permittedKNm2, 2, 'kN/m²')}`,
  permitted: 'Vehicle',
  permittedText: (permitted: Permitted) => {
    if (permitted === null) return 'not said';
    return permitted ? 'permitted' : 'not permitted';
  },
  noBays: 'It enters no bay.',
  note: 'Wheels are point loads: they are in no area load and in no load map. The structural engineer decides whether the deck carries them.',
} as const;
