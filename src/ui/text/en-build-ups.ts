/** Sentences of the build-up editor. */

import type { TemplateId } from '../../edit/build-ups-templates.ts';
import type { BuildUpLoad } from '../../model/engine.ts';
import { areaText, loadNumber, loadText, mmText, numberText, percentText, quantityText, thicknessOf, unitText } from '../format.ts';
import { list, many } from './en-words.ts';

/** What a template is called, and where its figures come from. */
interface TemplateWords {
  readonly name: string;
  readonly says: string;
}

const SYSTEM = 'The rest is common practice: check it with the system’s data sheets.';

const TEMPLATES: Readonly<Record<TemplateId, TemplateWords>> = {
  lawn: {
    name: 'Lawn',
    says: `Rolled turf on 25 cm of lawn substrate; guide values are 15 to 35 cm (FLL green-roof guideline, from memory). ${SYSTEM}`,
  },
  perennials: {
    name: 'Perennials',
    says: `30 cm of intensive substrate; guide values are 15 to 50 cm (FLL green-roof guideline, from memory). ${SYSTEM}`,
  },
  shrubs: {
    name: 'Shrubs to 3 m',
    says: `35 cm of intensive substrate on an element that holds more; 30 to 60 cm are common practice. ${SYSTEM}`,
  },
  'tree pit': {
    name: 'Small trees',
    says: `35 cm of tree substrate on 30 cm of mineral subsoil; guide values for small trees are 60 to 125 cm, and 12 m³ of soil for each (FLL, from memory). Root ball and anchoring are not in it. ${SYSTEM}`,
  },
  sedum: {
    name: 'Sedum and herbs',
    says: `8 cm of extensive substrate; guide values are 6 to 10 cm (FLL green-roof guideline, from memory). ${SYSTEM}`,
  },
  path: {
    name: 'Path of slabs',
    says: `For people on foot: slabs of 6 cm on 4 cm of bedding and 15 cm of base course. ${SYSTEM}`,
  },
  terrace: {
    name: 'Terrace on light fill',
    says: `Slabs of 6 cm on 12 cm of base course; light fill of 5 to 40 cm takes up the level. ${SYSTEM}`,
  },
  'timber deck': {
    name: 'Timber deck',
    says: `Boards on bearers over 5 cm of gravel; it weighs little, so mind wind and floating. ${SYSTEM}`,
  },
  'drive lane': {
    name: 'Lane for cars and deliveries',
    says: `Slabs of 8 cm on 25 cm of base course in one lift, over a filled element; heavier vehicles by calculation. ${SYSTEM}`,
  },
  'fire lane': {
    name: 'Fire lane',
    says: `Grass pavers of 8 cm on 25 cm of base course, over a filled element. Thickness by calculation; the fire authority and the structural engineer decide. ${SYSTEM}`,
  },
  'gravel strip': {
    name: 'Gravel strip',
    says: `15 cm of gravel along façades, upstands and outlets; a strip 30 to 50 cm wide is common practice. ${SYSTEM}`,
  },
  'play surface': {
    name: 'Play surface',
    says: `5 cm of bound gravel on 15 cm of base course. Fall protection under equipment is not in it: its depth follows from the height of fall. ${SYSTEM}`,
  },
};

export const buildUps = {
  pages: { label: 'What to edit', buildUps: 'Build-ups', materials: 'Materials' },
  waiting: 'Reading the catalogue…',
  list: {
    title: 'Build-ups of the scene',
    none: 'This scene has no build-up yet. Begin with a template.',
    area: (zones: number, areaM2: number) => (zones === 0 ? 'in no zone' : `${many(zones, 'zone', 'zones')} · ${areaText(areaM2)}`),
    depth: (depthMm: number) => mmText(depthMm),
  },
  actions: {
    new: 'New',
    copy: 'Copy',
    assign: 'Lay in zones',
    remove: 'Remove',
    removeUsed: (zones: readonly string[]) =>
      `Not removed: ${zones.length === 1 ? 'zone' : 'zones'} ${list(zones, 'and')} ${zones.length === 1 ? 'has' : 'have'} it. Lay another build-up there first.`,
    create: 'Create',
    cancel: 'Cancel',
    close: 'Close',
  },
  template: {
    title: 'New build-up from a template',
    says: 'Compositions of ours from catalogue materials. They keep the rules of order and depth; they are no system and no proof.',
    choose: 'Use',
    words: TEMPLATES,
  },
  copyOf: {
    title: (name: string) => `Copy of ${name}`,
    says: 'The copy can be changed by itself. Choose zones to lay it in instead of their build-up, or none.',
    name: (name: string) => `${name}, variant`,
  },
  zones: {
    title: 'Zones',
    label: (id: string, name: string, buildUp: string) => `${name === '' ? id : `${name} (${id})`}, now ${buildUp}`,
    same: (id: string, name: string) => (name === '' ? id : `${name} (${id})`),
    assignTitle: (name: string) => `Lay ${name} in zones`,
    assign: (count: number) => (count === 0 ? 'Choose zones' : `Lay it in ${many(count, 'zone', 'zones')}`),
    find: 'Find a zone',
    none: 'No other zone.',
  },
  name: 'Name',
  id: 'Short name',
  idSays: 'Once only among the build-ups; zones follow it.',
  column: {
    title: (name: string) => `Layers of ${name}`,
    drawing: (names: readonly string[]) => `Column of layers to scale, from top to bottom: ${names.join(', ')}.`,
    handle: (name: string) => `Top of ${name}: its thickness`,
    limit: {
      min: (name: string) => `Least thickness of ${name}`,
      max: (name: string) => `Greatest thickness of ${name}`,
    },
    membrane: 'Membrane',
    place: (place: number, of: number) => `layer ${place} of ${of} from below`,
    line: ({ depthMm, dryKNm2, saturatedKNm2 }: BuildUpLoad, makeUp: boolean, infill: boolean) =>
      `${infill ? 'voids + ' : ''}${thicknessOf(depthMm)}${makeUp ? ' make-up' : ''} · ${loadNumber(dryKNm2)} / ${loadNumber(saturatedKNm2)}`,
    key: () => `Thickness · dry / saturated, ${unitText('kN/m²')}. Drag the handles or the rows.`,
    lane: 'Beside it: how thin and how thick the make-up layer may become, in mm.',
    thin: 'Marked layers are drawn thicker than they are.',
    grip: 'Drag to another place',
    keys: 'Alt with the arrow keys moves a layer up or down.',
  },
  live: {
    title: 'As it is now',
    nominal: 'With the make-up layer at its nominal thickness:',
    depth: 'Depth',
    dry: 'Dry',
    saturated: 'Saturated',
    held: 'Water held',
    brief: ({ depthMm, dryKNm2, saturatedKNm2 }: BuildUpLoad) => `${mmText(depthMm)} · ${loadNumber(dryKNm2)} / ${loadText(saturatedKNm2)}`,
    briefBay: (id: string, utilisation: number) => `Bay ${id} ${percentText(utilisation)}`,
    heldText: (heldLm2: number) => quantityText(heldLm2, 'l/m²'),
    inZones: 'In its zones',
    zoneLoads: (least: number, most: number) =>
      loadNumber(least) === loadNumber(most) ? loadText(most) : `${loadNumber(least)} to ${loadText(most)}`,
    bay: (id: string) => `Worst bay beneath: ${id}`,
    bayUse: (utilisation: number) => percentText(utilisation),
    noBay: 'No bay lies beneath it.',
    noZone: 'It lies in no zone: nothing is checked until it does.',
    findings: (count: number) => (count === 0 ? 'No finding in its zones and bays' : many(count, 'finding', 'findings')),
    findingsSay: 'In its zones and the bays beneath, whatever causes them.',
    more: (count: number) => `and ${many(count, 'more', 'more')}: see Findings`,
  },
  layer: {
    title: (name: string) => name,
    up: 'Up',
    down: 'Down',
    above: 'Insert above',
    below: 'Insert below',
    swap: 'Change material',
    remove: 'Remove',
    onlyOne: 'The only layer stays: a build-up has one at least.',
    voids: 'The fill above lies in the voids of this element. Remove that fill first, or choose an element with voids.',
    fixed: (mm: number) => `${thicknessOf(mm)} thick, as its material is.`,
    thickness: 'Thickness',
    makeUp: 'Make-up layer: takes up differences in level',
    makeUpOther: (name: string) => `Make-up layer instead of ${name}`,
    least: 'Least',
    nominal: 'Nominal',
    greatest: 'Greatest',
    orientation: 'Element laid',
    retention: 'to hold water',
    drained: 'to drain',
    infill: (name: string) => `Fills the voids of ${name}; the thickness lies above it`,
    density: (dry: number, saturated: number) => `${numberText(dry, 0)} kg/m³ dry, ${numberText(saturated, 0)} kg/m³ saturated`,
    areal: (dry: number, saturated: number) => `${numberText(dry, 2)} kg/m² dry, ${numberText(saturated, 2)} kg/m² saturated`,
    edit: 'Material’s values',
    names: (name: string, count: number) => (count > 1 ? `${name} with its fill` : name),
  },
  table: {
    title: 'Layers as a table, top to bottom',
    layer: 'Layer',
    thickness: 'Thickness',
    dry: () => `Dry, ${unitText('kN/m²')}`,
    saturated: () => `Saturated, ${unitText('kN/m²')}`,
    held: 'Held, l/m²',
    vegetation: 'Vegetation',
    total: 'Total',
    up: (name: string) => `Move ${name} up`,
    down: (name: string) => `Move ${name} down`,
  },
  plants: {
    title: 'Vegetation and run-off',
    form: 'Form',
    none: 'none',
    weight: 'Weight',
    least: (mm: number) => `Rules ask for at least ${mmText(mm)} of substrate under it.`,
    unknown: 'The rules know no least depth for this form.',
    runoff: 'Run-off coefficients instead of the table’s',
    peak: 'Peak',
    annual: 'Annual',
    table: 'Leave a field empty to take the table’s.',
  },
  picker: {
    title: 'Choose a material',
    find: 'Find by name or role',
    none: 'No material by these words.',
    thickness: (mm: number) => thicknessOf(mm),
    noSource: 'without source',
    close: 'Close the list of materials',
  },
} as const;
