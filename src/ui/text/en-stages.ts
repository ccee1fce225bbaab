/** Sentences of the stage editor. */

import type { HeapEntry } from '../facts/heap-board.ts';
import { areaText, loadText, numberText, percentText, quantityOf, quantityText } from '../format.ts';
import { list, many } from './en-words.ts';

/** What goes when stages are derived anew. */
export interface StagesGone {
  readonly stages: number;
  readonly stockpiles: number;
  readonly plant: number;
  readonly floodTests: number;
  readonly holdPoints: number;
  readonly cautions: number;
}

const heightText = (heightM: number) => quantityOf(heightM, 2, 'm');

const goneParts = ({ stockpiles, plant, floodTests, holdPoints, cautions }: StagesGone): string[] => [
  ...(stockpiles > 0 ? [many(stockpiles, 'stockpile', 'stockpiles')] : []),
  ...(plant > 0 ? [many(plant, 'machine', 'machines')] : []),
  ...(floodTests > 0 ? [many(floodTests, 'flood test', 'flood tests')] : []),
  ...(holdPoints > 0 ? [many(holdPoints, 'hold point', 'hold points')] : []),
  ...(cautions > 0 ? [many(cautions, 'caution', 'cautions')] : []),
];

const heapAt = ({ state, heightM, overKNm2 }: HeapEntry, more: string) => {
  if (state === 'no limit') return 'no permitted load, so no height';
  if (state === 'over') return `over by ${loadText(overKNm2)}`;
  return heightM === 0 ? `nothing ${more}` : `${heightText(heightM)} ${more}`;
};

export const stageEditor = {
  list: {
    caption: 'Stages in order: worst bay with its utilisation, findings',
    stage: 'Stage',
    worst: 'Worst bay',
    findings: 'Findings',
    choose: (number: number, name: string) => `${number} ${name}`,
    keys: 'Alt with arrow up or down moves the chosen stage.',
    worstOf: (bay: string, utilisation: number) => `${bay} · ${percentText(utilisation)}`,
    over: 'over',
    unconfirmed: 'not confirmed',
    noWorst: 'no limit',
    counts: (stops: number, checks: number, notes: number) =>
      [
        ...(stops > 0 ? [many(stops, 'stop', 'stops')] : []),
        ...(checks > 0 ? [many(checks, 'check', 'checks')] : []),
        ...(notes > 0 ? [many(notes, 'note', 'notes')] : []),
      ].join(', '),
    none: 'none',
    drag: 'Drag to another place in the order',
    moved: (name: string, number: number, count: number) => `${name} is stage ${number} of ${count} now.`,
    tools: 'The chosen stage',
    before: 'Add before',
    after: 'Add after',
    first: 'Add a stage',
    copy: 'Copy',
    remove: 'Remove',
    earlier: 'Earlier',
    later: 'Later',
    newName: (number: number) => `Stage ${number}`,
    copyName: (name: string) => `${name}, again`,
  },
  derive: {
    derived: 'The file names no stages. These follow from the build-ups: one per role, from the bottom up.',
    nothing: 'Without layers there is no stage to derive. Draw zones with a build-up, or add a stage.',
    write: 'Write them into the scene to change them',
    again: 'Derive from the build-ups',
    ask: (gone: StagesGone) => {
      const parts = goneParts(gone);
      const stages = many(gone.stages, 'stage', 'stages');
      const with_ = parts.length > 0 ? `, with ${list(parts, 'and')}` : '';
      return `One stage per role replaces your ${stages}${with_}. Undo brings them back.`;
    },
    replace: 'Replace them',
    keep: 'Keep mine',
  },
  page: {
    label: (number: number, name: string) => `Stage ${number}, ${name}`,
    name: 'Name',
    id: (id: string) => `Id ${id}`,
    pages: 'Pages of the stage',
    tabs: { lay: 'Laying', heaps: 'Stockpiles', plant: 'Machines', holds: 'Hold points' },
    tabCount: (name: string, count: number) => (count === 0 ? name : `${name} ${numberText(count, 0)}`),
    choose: 'Choose a stage to change it. The model shows the finished garden.',
    findings: 'Findings in this stage',
    noFindings: 'No finding in this stage.',
    left: 'Left over at the end',
    plan: 'Draw on the plan',
  },
  lay: {
    caption: (number: number) => `What stage ${number} lays: a tick per zone and role`,
    says: 'A tick lays the next layers of that role, from the bottom up.',
    done: (roles: readonly string[]) => `There in every zone that has it: ${list(roles, 'and')}.`,
    zone: 'Zone',
    all: 'All zones',
    group: (name: string, zones: number) => `${name}, ${many(zones, 'zone', 'zones')}`,
    open: (name: string) => `Zones of ${name}`,
    tick: (role: string, where: string, says: string) => `${role}, ${where}: ${says}`,
    state: {
      here: (layers: number, of: number) => (layers === of ? 'laid in this stage' : `${layers} of ${of} layers laid in this stage`),
      withTop: 'comes with the top layer',
      before: (stage: number) => `there since stage ${stage}`,
      later: (stage: number) => `comes in stage ${stage}`,
      never: 'no stage lays it',
      missing: (roles: readonly string[]) => `missing below: ${list(roles, 'and')}`,
      idle: 'nothing is left to lay',
      mixed: 'differs from zone to zone',
    },
    mark: {
      before: (stage: number) => `since ${stage}`,
      later: (stage: number) => `in ${stage}`,
      never: 'left over',
      missing: 'missing below',
      here: (layers: number, of: number) => `${layers} of ${of}`,
      withTop: 'with top',
      idle: 'no more',
    },
    objects: 'Trees, walls and blocks',
    object: (name: string, says: string) => `${name}: ${says}`,
    objectHere: 'set up in this stage',
    objectIn: (stage: number) => `in stage ${stage}`,
    objectNever: 'in no stage',
    noObjects: 'The scene has no trees, walls or blocks.',
    weight: (placedKN: number) => `This stage lays ${quantityText(placedKN, 'kN')}, saturated.`,
  },
  heaps: {
    says: 'Heights: what may lie all over a bay, on top of all that lies there and is heaped by the end of this stage; rounded down to 5 cm.',
    none: 'No stockpile in this stage.',
    title: (id: string) => `Stockpile ${id}`,
    material: 'Material',
    height: 'Height',
    x: 'Left edge, x',
    y: 'Lower edge, y',
    length: 'Along x',
    width: 'Along y',
    outline: 'Corners, one per line: x; y',
    weight: (areaM2: number, weightKN: number) => `${areaText(areaM2)}, ${quantityText(weightKN, 'kN')} loose and saturated`,
    offDeck: 'Lies on no bay: nothing says what the deck carries there.',
    /** Beside a heap that lies there. */
    room: (entry: HeapEntry) => `Bay ${entry.bay}: ${heapAt(entry, 'more may be heaped')}${entry.confirmed ? '' : ', not confirmed'}`,
    /** For one that is to be put there. */
    roomOf: (entry: HeapEntry) => `${entry.bay}: ${heapAt(entry, 'may be heaped')}${entry.confirmed ? '' : ', not confirmed'}`,
    unknown: 'The height is told once the first heap of it lies there.',
    tooHigh: (heightM: number, bay: string, entry: HeapEntry) =>
      entry.state === 'over'
        ? `Bay ${bay} is over already, by ${loadText(entry.overKNm2)}.`
        : `${heightText(heightM)} is ${heightText(heightM - entry.heightM)} more than bay ${bay} may carry. It can be put there; the check will say stop.`,
    add: 'Put it there',
    newTitle: 'New stockpile',
    bay: 'In the middle of bay',
    remove: (id: string) => `Remove stockpile ${id}`,
    ofScene: 'In the build-ups',
    ofCatalogue: 'Catalogue and own materials',
    noMaterial: 'No material of the scene or the catalogue lies loose.',
    noBay: 'The scene has no bays yet.',
  },
  plant: {
    none: 'No machine drives in this stage.',
    vehicle: 'Machine',
    route: 'Way, one point per line: x; y',
    newTitle: 'New machine',
    add: 'Let it drive',
    remove: (name: string) => `Remove ${name}`,
    pressure: (kPa: number, bays: readonly string[]) =>
      bays.length === 0
        ? `At most ${quantityText(kPa, 'kPa')} on the membrane`
        : `At most ${quantityText(kPa, 'kPa')} on the membrane; drives over ${bays.length === 1 ? 'bay' : 'bays'} ${list(bays, 'and')}`,
    offDeck: 'Does not touch the deck.',
    layer: (name: string, utilisation: number) => `${name}: ${percentText(utilisation)} of what it bears`,
    ofScene: 'Your own',
    ofCatalogue: 'Catalogue',
    own: 'Machines of your own',
    ownNone: 'None of your own in this scene.',
    name: 'Name',
    source: 'Source: data sheet, date',
    widthM: 'Width',
    axleHead: 'Axle',
    removeHead: 'Remove',
    axle: (number: number) => `Axle ${number}`,
    ofAxle: (number: number, what: string) => `Axle ${number}: ${what}`,
    atM: 'From front',
    loadKN: 'Load',
    wheels: 'Wheels',
    trackM: 'Track',
    along: 'Contact along',
    across: 'Contact across',
    axleCaption: 'Axles from the front: distance, load, wheels, middle of the outer tyres, contact patch',
    addAxle: 'Add an axle',
    removeAxle: (number: number) => `Remove axle ${number}`,
    ownAdd: 'Add a machine to fill in',
    ownRemove: (name: string) => `Remove the machine ${name}`,
    ownTitle: (name: string) => `${name}, your own`,
    newName: (number: number) => `Machine ${number}`,
    tracked: 'Tracks: one axle in the middle with two long contact patches.',
  },
  holds: {
    flood: 'Flood test, depth of water',
    floodSays: (waterKNm2: number) =>
      waterKNm2 > 0 ? `The water alone is ${loadText(waterKNm2)} on the deck, counted in this stage.` : '0 is no flood test.',
    title: 'Hold points',
    none: 'No hold point in this stage.',
    hold: (id: string) => `Hold point ${id}`,
    says: 'What must be seen before work goes on',
    by: 'Released by',
    evidence: 'Evidence',
    on: 'Released on',
    open: 'open',
    released: 'released',
    add: 'Add a hold point',
    newSays: 'What must be seen?',
    remove: (id: string) => `Remove hold point ${id}`,
    cautions: 'Cautions',
    caution: (number: number) => `Caution ${number}`,
    addCaution: 'Add a caution',
    newCaution: 'What to mind?',
    removeCaution: (number: number) => `Remove caution ${number}`,
  },
  points: {
    tooFew: (least: number) => `At least ${many(least, 'point', 'points')}, one per line.`,
    twoNumbers: (line: number) => `Line ${line}: two numbers are read, x and y, with a semicolon between them.`,
    inLine: (line: number, says: string) => `Line ${line}: ${says}`,
  },
} as const;
