/** Reads building models in the text form of IFC: the slab that is the deck with its openings and levels, and the columns under it. */

import { type Gathering, StopReading } from '../gathering.ts';
import { issueOf } from '../issue-of.ts';
import { type LengthUnit, UNITS } from '../length-unit.ts';
import { CHORD_ERROR_M, JOIN_M } from '../limits.ts';
import { partOf, type Steps } from '../steps.ts';
import { tellCut } from '../truncation.ts';
import { readColumns } from './ifc-columns.ts';
import { addDeck, chooseDeck, OUTLINE_LAYER } from './ifc-deck.ts';
import { IfcModel } from './ifc-model.ts';
import { settleOrigin } from './ifc-origin.ts';
import { readSlabs, SLAB_TYPES, type SlabOptions, tellUnread } from './ifc-slabs.ts';
import { unitsOf } from './ifc-units.ts';
import type { Mesher } from './mesher.ts';
import { indexStep } from './step-file.ts';

export interface ModelHead {
  readonly unit: LengthUnit | null;
  /** The file gives one that is not known here. */
  readonly unitInDoubt: boolean;
}

/** Ends nearer to each other are one point [m]. */
const SAME_M = 1e-4;

/** Reads deck and columns into the gathering, in the model's unit. */
export function* readIfc(text: string, gather: Gathering, mesher: Mesher | null): Steps<ModelHead> {
  const file = yield* partOf(indexStep(text), 0, 0.5);
  const whole = file.cutAt === null || tellCut(gather, file.ids.length, { unit: 'byte', at: file.cutAt });
  if (!whole) return { unit: null, unitInDoubt: false };
  if (file.damaged > 0) gather.warning('MODEL_DAMAGED', { count: file.damaged });
  const model = new IfcModel(file);
  const { length, radians, otherM } = unitsOf(model);
  if (otherM !== null) gather.warning('MODEL_UNIT', { unitM: otherM });
  const metres = UNITS[unitAnswered(gather) ?? length ?? 'm'].metres;
  const root = settleOrigin(gather, model, metres);
  const options: SlabOptions = {
    model,
    gather,
    mesher,
    metres,
    radians,
    root,
    same: SAME_M / metres,
    join: JOIN_M / metres,
    closed: { count: 0, most: 0 },
    chord: CHORD_ERROR_M / metres,
  };
  const read = yield* partOf(readSlabs(options), 0.5, 0.9);
  tellUnread(gather, read);
  if (read.slabs.length === 0) {
    const [slabs, columns] = [model.count(...SLAB_TYPES), model.count('IFCCOLUMN', 'IFCCOLUMNSTANDARDCASE')];
    throw new StopReading(issueOf('error', slabs === 0 ? 'NO_SLAB' : 'NO_SLAB:body', { slabs, columns }));
  }
  const deck = chooseDeck(read.slabs, options);
  addDeck(deck, gather);
  for (let i = deck.slabs.length; i < read.slabs.length; i++) gather.ignored(OUTLINE_LAYER, 'IfcSlab', 'not chosen');
  yield* partOf(readColumns(deck, options), 0.9, 1);
  const { count, most } = options.closed;
  if (count > 0) gather.mend('RINGS_CLOSED', { count, gapMm: Math.round(most * metres * 1000) }, OUTLINE_LAYER);
  tellOthers(gather, model);
  return { unit: length, unitInDoubt: otherM !== null };
}

/** The unit may have been answered in an earlier reading. */
function unitAnswered(gather: Gathering): LengthUnit | null {
  const answer = gather.answerTo('unit');
  return answer !== undefined && Object.hasOwn(UNITS, answer) ? (answer as LengthUnit) : null;
}

/** Elements that a deck does not need, as they are counted; each stands for its special cases too. */
const OTHERS = [
  'IfcWall',
  'IfcBeam',
  'IfcFooting',
  'IfcPile',
  'IfcPlate',
  'IfcMember',
  'IfcStair',
  'IfcStairFlight',
  'IfcRamp',
  'IfcRampFlight',
  'IfcRailing',
  'IfcCovering',
  'IfcCurtainWall',
  'IfcDoor',
  'IfcWindow',
  'IfcSpace',
  'IfcGrid',
  'IfcBuildingElementProxy',
  'IfcFurnishingElement',
  'IfcFurniture',
  'IfcReinforcingBar',
  'IfcReinforcingMesh',
  'IfcFlowSegment',
  'IfcFlowTerminal',
  'IfcPipeSegment',
  'IfcDuctSegment',
  'IfcSanitaryTerminal',
  'IfcGeographicElement',
  'IfcTransportElement',
] as const;
const OTHERS_LAYER = 'IfcProduct';

function tellOthers(gather: Gathering, model: IfcModel): void {
  for (const name of OTHERS) {
    const type = name.toUpperCase();
    const count = model.count(type, `${type}STANDARDCASE`, `${type}ELEMENTEDCASE`);
    for (let i = 0; i < count; i++) gather.ignored(OTHERS_LAYER, name, null);
  }
}
