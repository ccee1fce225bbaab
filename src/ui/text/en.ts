/** Every sentence the user reads, in English. Parameters are given to functions, so that another language can order them its own way. */

import type { Rule, Severity } from '../../model/finding.ts';
import type { CoreLogLayer, CoreLogOther, MapKind } from '../../model/maps.ts';
import type { NumberRead } from '../../model/parse-number.ts';
import type { PartKind } from '../../model/picture.ts';
import type { ReportBay } from '../../model/report.ts';
import type { SceneBasis } from '../../model/scene-file.ts';
import type { BasisPart } from '../facts/basis.ts';
import type { BayCase, BayCount, BayStatus } from '../facts/bay-verdict.ts';
import type { MapGroup } from '../facts/map-groups.ts';
import type { Judgement } from '../facts/utilisation.ts';
import {
  areaText,
  coordinateText,
  levelText,
  loadNumber,
  mmText,
  numberText,
  percentText,
  quantityOf,
  quantityText,
  thicknessOf,
  unitText,
  wholePercent,
} from '../format.ts';
import { edit, edits, newScene } from './en-edits.ts';
import { exports, settings } from './en-export.ts';
import { file } from './en-file.ts';
import { help } from './en-help.ts';
import { imports } from './en-import.ts';
import { live } from './en-live.ts';
import { buildUpTexts } from './en-materials.ts';
import { draw } from './en-plan.ts';
import { sceneTexts } from './en-scenes.ts';
import { section } from './en-section.ts';
import { columns, edges, heaps, probes, sources, takeoff } from './en-sheets.ts';
import { siteTexts } from './en-site.ts';
import { stageEditor } from './en-stages.ts';
import { lighten, variants } from './en-variants.ts';
import { savedViews } from './en-views.ts';
import { water } from './en-water.ts';
import { wheels } from './en-wheels.ts';
import {
  allOf,
  basisShort,
  basisText,
  CASE_NAMES,
  JUDGEMENTS,
  LIMITS,
  list,
  MAP_BASES,
  MAP_GROUP_NAMES,
  MAP_NAMES,
  MAP_QUANTITIES,
  many,
  margin,
  missingText,
  OTHERS,
  PARTS,
  RULES,
  STATUS,
} from './en-words.ts';

export const en = {
  app: {
    name: 'Loamdeck',
    /** Of the browser's window. */
    title: (scene: string) => `${scene} – Loamdeck`,
    statement: 'Compares entered loads with entered limits. Not a structural check.',
    statementShort: 'Not a structural check.',
    statementFull: 'Compares entered loads with entered limits. Not a structural check. The structural engineer and local rules decide.',
    noScene: 'No scene open',
    working: 'Calculating…',
    /** What is shown is still of the state before. */
    follows: { tables: 'Tables follow…', map: 'The map follows…', section: 'The section follows…' },
    skip: 'Skip to the tables',
    language: 'Language',
  },
  ...sceneTexts,
  number: {
    refused: (read: Exclude<NumberRead, { ok: true }>) => {
      if (read.why === 'empty') return 'Type a number.';
      if (read.why === 'no unit') return 'Feet or inches? Type ft, in, mm, cm or m behind the number.';
      if (read.why === 'ambiguous') return `That could be ${read.small} or ${read.large}. Type it one of these ways.`;
      return 'That is not a number. Digits with one decimal comma or point are read.';
    },
    outOfRange: (min: string, max: string, unit: string) => `Give a number from ${min} to ${max} ${unit}.`,
    less: (label: string) => `${label}: less`,
    more: (label: string) => `${label}: more`,
  },
  core: {
    title: 'Core log',
    emptyTitle: 'Pick a place on the deck',
    emptyHow: 'Click or tap the model, or choose a row in the tables: each place shows its layers to scale and its weight line by line.',
    place: (x: number, y: number) => `x ${coordinateText(x)}, y ${coordinateText(y)} m`,
    cell: (column: number, row: number) => `column ${column}, row ${row}`,
    zone: (name: string) => `Zone ${name}`,
    share: (share: number) => `${percentText(share)} of the cell`,
    noZone: 'No build-up here: the bare deck.',
    stage: (number: number, name: string) => `As in stage ${number}, ${name}`,
    finishedGarden: 'Finished garden',
    finished: (m: number) => `Finished ${levelText(m)}`,
    membrane: (m: number) => `Membrane ${levelText(m)}`,
    drawing: (names: string) => `Column of layers from top to bottom: ${names}. The table below has every number.`,
    layerLine: ({ thicknessMm, intoVoidsLm2, dryKNm2, saturatedKNm2, makeUp }: CoreLogLayer) =>
      `${thicknessOf(thicknessMm)} ${makeUp ? 'make-up ' : ''}${intoVoidsLm2 > 0 ? '+ voids ' : ''}· ${loadNumber(dryKNm2)} / ${loadNumber(saturatedKNm2)}`,
    labelsSay: 'Labels: thickness · dry / saturated, kN/m².',
    notYet: 'not laid yet',
    thin: 'Marked layers are drawn thicker than they are.',
    sumTitle: 'Weight line by line',
    layer: 'Layer',
    mm: 'mm',
    dry: 'dry',
    saturated: 'saturated',
    unit: 'kN/m²',
    total: 'Total',
    other: (kind: CoreLogOther['kind'], id: string) => OTHERS[kind](id),
    unexplained: 'Not explained by the lines',
    rounding: 'Lines are rounded so that they add up to the total.',
    bay: (bay: string) => `Bay ${bay}`,
    noBay: 'No bay here: nothing says what the deck carries.',
    patch: 'Patch 1 × 1 m',
    permitted: 'Permitted',
    noPermitted: 'no permitted load given',
    limitOf: 'Limit for',
    limitName: (kind: string) => LIMITS[kind] ?? kind,
    basis: 'Basis',
    left: margin,
    close: 'Clear the picked place',
  },
  basis: {
    /** In a narrow column: document, revision, date. */
    short: (basis: SceneBasis | undefined, missing: readonly BasisPart[]) =>
      basis === undefined || missing.length > 0 ? missingText(missing) : basisText({ ...basis, by: '' }),
    given: (basis: SceneBasis | undefined, missing: readonly BasisPart[]) =>
      basis === undefined || missing.length > 0 ? missingText(missing) : basisText(basis),
  },
  judgement: (judgement: Judgement) => JUDGEMENTS[judgement],
  thickness: {
    title: 'Thicknesses',
    of: (zones: readonly string[]) => {
      const shown = zones.slice(0, 6);
      const rest = zones.length - shown.length;
      return `In ${many(zones.length, 'zone', 'zones')}: ${rest > 0 ? `${shown.join(', ')} and ${rest} more` : list(shown, 'and')}`;
    },
    choose: 'Build-up',
    field: (name: string) => `Thickness of ${name}`,
    nominal: (min: number, max: number) => `Make-up, ${mmText(min)} to ${mmText(max)}; this is its nominal thickness`,
    none: 'No layer of this build-up has a thickness to set.',
    layers: (count: number) => (count === 1 ? 'The one layer' : `${allOf(count, 'layer', 'layers')}, top to bottom`),
    source: (source: string) => `Source: ${source}`,
  },
  map: {
    label: 'Map',
    none: 'None',
    noMap: 'No map',
    group: (group: MapGroup) => MAP_GROUP_NAMES[group],
    name: (kind: MapKind) => MAP_NAMES[kind],
    quantity: (kind: MapKind) => MAP_QUANTITIES[kind],
    basis: (kind: MapKind) => MAP_BASES[kind],
    unit: (unit: string) => (unit === '-' ? '%' : unitText(unit)),
    place: 'Map drawn',
    top: 'on top',
    slab: 'on slab',
  },
  legend: {
    title: 'Legend',
    rolesTitle: 'Layers and parts',
    stage: (number: number, name: string) => `Stage ${number}, ${name}`,
    finished: 'Finished garden',
    allStages: 'All stages',
    unit: (unit: string) => `Unit: ${unit}`,
    upTo: (limit: string) => `up to ${limit}`,
    above: (limit: string) => `above ${limit}`,
    range: (from: string, to: string) => `${from} to ${to}`,
    overWord: 'over limit',
    overShort: 'over',
    spread: (min: string, mean: string, max: string) => `Least ${min}, mean ${mean}, most ${max}`,
    cells: (count: number, cellM: number) => `${many(count, 'cell', 'cells')} of ${quantityText(cellM * 1000, 'mm')}`,
    noData: (count: number, areaM2: number) =>
      count === 0 ? 'no value: no cell' : `no value: ${many(count, 'cell', 'cells')}, ${areaText(areaM2)}`,
    unconfirmed: 'not confirmed',
    bases: (bases: readonly SceneBasis[]) => `Permitted loads: ${list(bases.map(basisShort), 'and')}`,
    empty: 'No cell has a value here.',
    waiting: 'Calculating the map…',
    hide: (name: string) => `Hide ${name}`,
    show: (name: string) => `Show ${name}`,
    only: (name: string) => `Show only ${name}`,
    onlyWord: 'only',
    hiddenWord: 'hidden',
    showAll: 'Show everything',
    exploded: 'Thin sheets are drawn thicker than they are.',
  },
  tools: {
    title: 'View',
    explode: 'Explode',
    explodeField: 'Exploded by',
    cut: 'Cut',
    cutPlace: 'Place of the cut',
    cutLook: 'Look',
    looks: { 0: 'to +y', 90: 'to +x', 180: 'to −y', 270: 'to −x' } as Readonly<Record<number, string>>,
    home: 'Home',
    plan: 'Plan',
    side: 'Side',
    help: 'Help',
    percent: (ratio: number) => percentText(ratio),
    starting: 'Drawing the model…',
    lost: 'The picture was lost by the graphics driver. It is being drawn again; the tables keep working.',
    unavailable: 'No 3D here: this browser or device offers no WebGL2. The plan below, the tables and every check work all the same.',
    region: 'Model of the deck',
  },
  tabs: {
    title: 'Tables',
    core: 'Core',
    bays: 'Bays',
    findings: 'Findings',
    zones: 'Zones',
    cells: 'Cells',
    heaps: 'Heaps',
    edges: 'Edges',
    site: 'Site',
    wheels: 'Wheels',
    water: 'Water',
    takeoff: 'Take-off',
    probes: 'Probes',
    sources: 'Sources',
    stage: 'Stages',
    stops: (count: number) => many(count, 'stop finding', 'stop findings'),
  },
  bays: {
    allWithin: (bays: number, bases: readonly SceneBasis[]) =>
      `${allOf(bays, 'bay', 'bays')} within the permitted loads of ${list(bases.map(basisShort), 'and')}`,
    allWithinAdd: 'In the finished garden and in every stage.',
    otherStops: (count: number) => `${many(count, 'stop', 'stops')} besides the loads of bays: see Findings.`,
    notChecked: (parts: readonly string[]) => `Not part of this result: ${parts.join('; ')}.`,
    counts: ({ over, notConfirmed, noLimit, within }: BayCount) =>
      [
        `${over} over`,
        ...(notConfirmed > 0 ? [`${notConfirmed} not confirmed`] : []),
        ...(noLimit > 0 ? [`${noLimit} without a permitted load`] : []),
        `${within} within`,
      ].join(', '),
    overUnconfirmed: (count: number) => `Of those over, ${many(count, 'bay is', 'bays are')} not confirmed either.`,
    none: 'This scene has no bays: nothing says what the deck carries.',
    noneAdd: 'Bays and their permitted loads are entered under “Edit”, “Plan”: drawn, or made from the axes of the load plan.',
    column: 'Bay',
    load: 'Load and permitted, kN/m²',
    utilisation: 'Utilisation',
    caption: 'Bays, worst first: load, permitted load with its basis, utilisation',
    of: (load: number, permitted: number) => `${loadNumber(load)} of ${loadNumber(permitted)}`,
    withoutLimit: (load: number) => `${loadNumber(load)}, no permitted load`,
    governing: (kind: BayCase['kind']) => CASE_NAMES[kind],
    stage: (number: number, name: string) => `Stage ${number}, ${name}`,
    status: (status: BayStatus) => STATUS[status],
    margin,
    pick: (id: string) => `Go to bay ${id}`,
    band: (low: number, high: number, ofGoverning: boolean) => {
      // Word joiners keep the two ends in one line.
      const band = `${wholePercent(low)}\u2060–\u2060${wholePercent(high)}\u202F%`;
      return ofGoverning ? `tolerances: ${band}` : `finished garden, tolerances: ${band}`;
    },
    bandOver: 'could go over within tolerances',
    /** Beside a bay's name in the model: what it may carry. */
    note: ({ confirmed, permanent, total }: ReportBay) => {
      if (!confirmed) return 'not confirmed';
      if (permanent.permittedKNm2 !== null) return quantityOf(permanent.permittedKNm2, 1, 'kN/m²');
      return total ? `${quantityOf(total.permittedKNm2, 1, 'kN/m²')} in all` : 'no permitted load';
    },
  },
  findings: {
    none: 'No finding. That says only that no rule of this version was broken by the numbers entered.',
    severity: { stop: 'Stop', check: 'Check', note: 'Note' } as Readonly<Record<Severity, string>>,
    meaning: {
      stop: 'must not be built so',
      check: 'someone must look',
      note: 'to know',
    } as Readonly<Record<Severity, string>>,
    group: (severity: string, count: number) => `${severity} · ${numberText(count, 0)}`,
    zone: (id: string) => `Zone ${id}`,
    bay: (id: string) => `Bay ${id}`,
    stage: (id: string) => `Stage ${id}`,
    stageNamed: (number: number, name: string, id: string) => `Stage ${number}, ${name} (${id})`,
    object: (id: string) => `Object ${id}`,
    at: (x: number, y: number) => `x ${coordinateText(x)}, y ${coordinateText(y)} m`,
    rule: (rule: Rule, count: number) => (count === 1 ? RULES[rule] : `${RULES[rule]} · ${numberText(count, 0)}`),
    source: (rule: Rule, source: string) => (source === '' ? `Rule ${rule}` : `Rule ${rule} · ${source}`),
    more: (count: number) => `Show ${many(count, 'more', 'more')}`,
    whole: 'The scene as a whole',
  },
  zones: {
    caption: 'Zones: area, depth, saturated load, finished level; each can be hidden or shown alone',
    zone: 'Zone',
    area: 'm²',
    depth: 'Depth, mm',
    load: 'Saturated, kN/m²',
    range: (min: string, max: string) => `${min} to ${max}`,
    short: (areaM2: number) => `${areaText(areaM2)} too deep for the finished level`,
    over: (areaM2: number) => `${areaText(areaM2)} not filled up to the finished level`,
    pick: (name: string) => `Go to zone ${name}`,
    hide: (name: string) => `Hide zone ${name}`,
    unhide: (name: string) => `Show zone ${name}`,
    only: (name: string) => `Show only zone ${name}`,
    none: 'This scene has no zones.',
  },
  cells: {
    chooseMap: 'This table lists the values of a map. Choose one:',
    scope: 'Which cells',
    highest: 'Highest',
    lowest: 'Lowest',
    towards: (bearingDeg: number) => `towards ${numberText(bearingDeg, 0)}°`,
    inBay: (bay: string) => `Bay ${bay}`,
    shown: (shown: number, all: number, lowFirst: boolean) =>
      `${numberText(shown, 0)} of ${many(all, 'cell', 'cells')} shown, ${lowFirst ? 'lowest' : 'highest'} first`,
    caption: (quantity: string, unit: string, stage: string) => `${quantity}, ${unit}. ${stage}.`,
    column: 'Col.',
    row: 'Row',
    value: 'Value',
    remark: 'Remark',
    over: 'over',
    unconfirmed: 'not confirmed',
    pick: (column: number, row: number) => `Column ${column}, row ${row}`,
    none: 'No cell has a value.',
  },
  stage: {
    title: 'Stages',
    list: 'Stages of construction; arrow keys change the stage',
    play: 'Play the stages',
    pause: 'Pause',
    previous: 'Previous stage',
    next: 'Next stage',
    finished: 'Finished garden',
    number: (number: number, all: number) => `Stage ${number} of ${all}`,
    worst: (ratio: number, bay: string, judgement: Judgement) => `Highest ${percentText(ratio)} in bay ${bay}, ${JUDGEMENTS[judgement]}`,
    worstUnconfirmed: (ratio: number, bay: string) => `Highest ${percentText(ratio)} in bay ${bay}, not confirmed`,
    unconfirmed: (count: number) => many(count, 'bay is not confirmed', 'bays are not confirmed'),
    sheetOpen: 'Stage sheet',
    sheetClose: 'Close the sheet',
    lays: 'Laid',
    laysLine: (name: string, areaM2: number) => `${name} ${areaText(areaM2)}`,
    laysFull: (areaM2: number, volumeM3: number) => `${areaText(areaM2)}, ${quantityText(volumeM3, 'm³')} placed`,
    objects: 'Set up',
    nothing: 'Nothing is laid in this stage.',
    stockpiles: 'Stockpiles',
    floodTitle: 'Flood test',
    stockpile: (id: string, material: string, heightM: number) => `${id}: ${material}, ${numberText(heightM, 2)} m high`,
    flood: (mm: number) => `Flood test: ${mmText(mm)} of water`,
    holds: 'Hold points',
    hold: (id: string, says: string) => `${id} ${says}`,
    released: (by: string, on: string) => `released by ${by || 'nobody named'} on ${on}`,
    open: (by: string) => (by === '' ? 'open: not released' : `open: to be released by ${by}`),
    evidence: (evidence: string) => `Evidence: ${evidence}`,
    openCount: (count: number) => many(count, 'open hold point', 'open hold points'),
    cautions: 'Cautions',
    cautionCount: (count: number) => many(count, 'caution', 'cautions'),
    stockpileCount: (count: number) => many(count, 'stockpile', 'stockpiles'),
    derived: 'Stages derived from the build-ups: the file names none.',
    gardenSays: 'Everything is laid; no stockpile and no flood test is left.',
    weight: (placedKN: number) => `${quantityText(placedKN, 'kN')} placed, saturated`,
  },
  plan: {
    label: 'Plan of the deck with zones, bays and outlets. Choose places in the tables by keyboard.',
  },
  live,
  help,
  draw,
  file,
  edit,
  edits,
  stageEditor,
  savedViews,
  newScene,
  imports,
  variants,
  lighten,
  empty: {
    title: 'What lies on the deck, and what the deck may carry',
    says: 'Open a scene of a podium deck: its layers in 3D, the load of every cell against the permitted load of its bay, in the finished garden and in every stage of building it.',
    working: 'Opening the scene…',
  },
  heaps,
  columns,
  edges,
  wheels,
  water,
  takeoff,
  probes,
  sources,
  section,
  exports,
  settings,
  ...siteTexts,
  ...buildUpTexts,
  part: (kind: PartKind) => PARTS[kind],
} as const;
