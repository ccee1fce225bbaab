/** Sentences of water: outlets, what one blocked outlet does, storage, run-off, ponds, drainage, uplift. */

import type { SceneOutlet } from '../../model/scene-file.ts';
import type { BlockedVerdict, WetStatus } from '../facts/water-list.ts';
import { areaText, levelText, loadNumber, mmText, numberText, percentText, quantityOf } from '../format.ts';
import { many } from './en-words.ts';

const lpsOrDash = (valueLps: number | null) => (valueLps === null ? '–' : numberText(valueLps, 2));
/** Up, so that 20.2 mm never reads as 20. */
const deep = (depthMm: number) => mmText(Math.ceil(depthMm - 1e-6));
const m3 = (volumeM3: number) => quantityOf(volumeM3, 1, 'm³');
const litres = (volumeL: number) => (volumeL < 1000 ? quantityOf(volumeL, 0, 'l') : quantityOf(volumeL / 1000, 1, 'm³'));

const VERDICTS: Readonly<Record<BlockedVerdict, string>> = {
  unbounded:
    'Nothing lets this water out: no other outlet, no overflow, no edge of known height. How deep it gets can’t be told. Draw the overflows and edges.',
  'over by water': 'With this water a bay is over its permitted load.',
  'over anyway': 'A bay under this water is over its permitted load, with or without it.',
  'no limit': 'A bay under this water has no permitted load given, so nothing says whether it carries it.',
  'not confirmed': 'A bay under this water has a permitted load that is not confirmed.',
  within: 'With this water every bay stays within its permitted load.',
  dry: 'No water stands: it runs on to another outlet at once.',
};

const STATUS: Readonly<Record<WetStatus, string>> = {
  'over by water': 'over with the water',
  'over anyway': 'over, with or without water',
  'no limit': 'no permitted load given',
  'not confirmed': 'not confirmed',
  within: 'within the limit',
};

export const water = {
  decides:
    'Entered falls, outlets and rain compared with each other; not a drainage design. The drainage engineer and the local code decide.',
  rain: (designLpsHa: number, extremeLpsHa: number, source: string) =>
    `Design rain ${quantityOf(designLpsHa, 0, 'l/(s·ha)')}, extreme rain ${quantityOf(extremeLpsHa, 0, 'l/(s·ha)')}. Source: ${source}.`,
  noRain:
    'The file gives no rain, so no flow in l/s, no duty of overflows and no flow in the drainage are told. Add "rain" with its source; the local weather service has it. Areas, levels and ponds need none.',
  nothing: 'The file draws no outlets and gives no rain, so only what the build-ups hold is told. Draw outlets and overflows as they are.',
  undrained: (areaM2: number) => `${areaText(areaM2)} of the deck find no way to an outlet: see Findings.`,
  maps: 'Show on the model',
  outlets: 'Outlets',
  outletsSay: 'Areas and flows with all at work. Choose “block” to close one and see how far its water rises.',
  outletsCaption: 'Outlets, most used first: area, design flow of capacity in l/s',
  outlet: 'Outlet',
  area: 'Area, m²',
  flow: 'Flow of capacity, l/s',
  duty: 'Duty of capacity, l/s',
  ofCapacity: (flowLps: number | null, capacityLps: number | null) => `${lpsOrDash(flowLps)} of ${lpsOrDash(capacityLps)}`,
  noCapacity: 'no capacity given',
  used: (share: number | null) => (share === null ? '–' : percentText(share)),
  judged: (share: number) => `${percentText(share)}, over the limit`,
  pick: (id: string) => `Go to ${id}`,
  block: 'Block',
  blockPick: (id: string) => `Block outlet ${id}`,
  openShort: 'Open',
  open: (id: string) => `Open ${id} again`,
  noOutlets: 'No outlet is drawn.',
  more: (count: number) => `Show ${many(count, 'more', 'more')}`,
  overflows: 'Overflows',
  overflowsSay: 'With every outlet out of work, in the extreme rain, less what the outlets take in the design rain.',
  overflowsCaption: 'Overflows, most used first: level, depth until they run, duty of capacity in l/s',
  overflow: 'Overflow',
  levelAt: (levelM: number | null, depthMm: number | null) => {
    if (levelM === null) return 'no level given';
    return depthMm === null ? `runs from ${levelText(levelM)}` : `runs from ${levelText(levelM)}, water then ${deep(depthMm)} deep`;
  },
  noOverflows: 'No overflow is drawn. With outlets blocked, water then has no way off the deck but over its edges.',
  chosen: (id: string) => `Outlet ${id} blocked`,
  chosenSays: 'Rain without end, all other outlets at work and taking all that comes.',
  through: 'Drawn through the layers that hide it.',
  slabAlone: 'Slab alone',
  layersToo: 'Layers too',
  verdict: (verdict: BlockedVerdict) => VERDICTS[verdict],
  verdictDecides: 'The structural engineer decides whether the case counts.',
  rises: 'Rises to',
  deepest: 'Deepest',
  deep,
  spread: 'Stands on',
  litres: 'Water in pores and above',
  litresText: litres,
  leaves: 'Leaves at',
  leavesNowhere: 'nowhere',
  hold: 'Depth shown',
  holdText: (depthMm: number, levelM: number) => `${deep(depthMm)} at the deepest, ${levelText(levelM)}`,
  /** Below the slider. */
  holdShown: (depthMm: number, levelM: number) => `Shown: ${deep(depthMm)} at the deepest, ${levelText(levelM)}`,
  wetCaption: 'Bays under the water, worst first: water over the bay in kN/m², use without and with it',
  bay: 'Bay',
  waterLoad: 'Water, kN/m²',
  waterLoadText: (loadKNm2: number) => loadNumber(loadKNm2),
  useWith: 'Used, dry / with water',
  /** Without and with the water. */
  usedWith: (before: number | null, after: number | null) => {
    if (after === null) return '–';
    return before === null ? percentText(after) : `${percentText(before)} / ${percentText(after)}`;
  },
  wetStatus: (status: WetStatus) => STATUS[status],
  bayPick: (id: string) => `Go to bay ${id}`,
  ponds: 'Water that stays',
  pondsSay: 'With all outlets at work, where the membrane has no fall to an outlet.',
  noPonds: 'None: everywhere water finds a fall to an outlet.',
  pondPick: (number: number) => `Go to pond ${number}`,
  pond: (depthMm: number, areaM2: number, volumeL: number, zone: string | null) =>
    zone === null
      ? `${deep(depthMm)} deep on ${areaText(areaM2)}, ${litres(volumeL)}, outside the zones`
      : `${deep(depthMm)} deep on ${areaText(areaM2)}, ${litres(volumeL)}, in zone ${zone}`,
  pondDeep: 'deeper than is let pass',
  held: 'Water held',
  heldSays: 'What layers and elements hold when full, and what is left of it at a filling.',
  filling: 'Filled before the rain',
  fillingShort: (percent: number | null) => (percent === null ? 'not given' : quantityOf(percent, 0, '%')),
  freeUnknown: 'not known without a filling',
  heldAll: 'Holds when full',
  freeAll: 'Free',
  heldCaption: 'Zones: water held when full and free at the filling chosen, l/m² and m³',
  zone: 'Zone',
  zonePick: (id: string) => `Go to zone ${id}`,
  heldLm2: 'Holds, l/m²',
  freeLm2: 'Free, l/m²',
  freeM3: 'Free, m³',
  lm2: (value: number) => numberText(value, 1),
  m3Text: (value: number) => numberText(value, 2),
  m3,
  runoff: 'Run-off',
  table: (name: string) => `Peak coefficients: ${name}. Yearly ones are of another kind and only for the year.`,
  meanPeak: 'Mean of the deck, peak',
  meanAnnual: 'Mean of the deck, year',
  coefficient: (c: number | null) => (c === null ? '–' : numberText(c, 2)),
  design: 'Flow off the deck in the design rain',
  lps: (valueLps: number) => quantityOf(valueLps, 2, 'l/s'),
  yearly: 'Runs off in a year',
  noYearly: 'no yearly rain given',
  runoffCaption: 'Zones: run-off coefficients, peak and of the year, with their row and source',
  peak: 'Peak C',
  annual: 'Year C',
  yearRow: (row: string) => `Year: ${row}`,
  rowOf: (row: string, source: string) => `${row}: ${source}`,
  drains: 'Flow in the drainage',
  drainsSay: 'At the end of the longest way in each zone, in the design rain.',
  drainsCaption: 'Zones, most used first: flow against what the drainage layer carries, litres per second and metre of width',
  drainFlow: 'Flow, l/(s·m)',
  drainTakes: 'Carries',
  lsm: (value: number) => numberText(value, 3),
  head: (headMm: number, secondMm: number | null, thicknessMm: number) =>
    secondMm === null
      ? `water ${deep(headMm)} of ${mmText(thicknessMm)} high`
      : `water ${deep(headMm)} of ${mmText(thicknessMm)} high, second formula ${deep(secondMm)}`,
  drainOver: 'more comes than it carries',
  noDrains: 'No rain is given, or no drainage layer says what it carries.',
  uplift: 'Uplift of light layers',
  upliftSays: (up: number, down: number) =>
    `Water up to where the overflows run. Light fill counts as a sealed block, unless its material says that water gets in between its grains. Lift × ${numberText(up, 2)} against dry weight × ${numberText(down, 2)}; below 1 it floats.`,
  upliftCaption: 'Light layers, nearest to floating first: ratio, lift and dry weight in kN/m², ballast missing',
  ratio: 'Ratio',
  liftHold: 'Lift / dry weight',
  ballastText: (loadKNm2: number) => `floats: ${quantityOf(Math.ceil(100 * loadKNm2 - 1e-6) / 100, 2, 'kN/m²')} missing`,
  /** Down, so that 0.997 never reads as 1.00. */
  ratioText: (ratio: number) => numberText(Math.floor(100 * ratio + 1e-6) / 100, 2),
  liftHoldText: (liftKNm2: number, holdKNm2: number) => `${loadNumber(liftKNm2)} / ${loadNumber(holdKNm2)}`,
  under: (layer: string, waterMm: number) => `${layer}, water ${deep(waterMm)}`,
  model: (displaces: number) =>
    displaces === 1 ? 'counted as a sealed block' : `counted by its grains, which take ${numberText(100 * displaces, 0)} % of its volume`,
  garden: 'finished garden',
  stage: (number: number, name: string) => `stage ${number}, ${name}`,
  noUplift: 'No light layer lies under water.',
  dry: (count: number, areaM2: number) => `dry: ${many(count, 'cell', 'cells')}, ${areaText(areaM2)}`,
  arrows: 'Arrows: the way the water runs',
  choose: 'Blocked outlet',
  marks: {
    outlet: ({ id, kind, invertM }: SceneOutlet) =>
      kind === 'overflow' && invertM !== undefined ? `${id} runs from ${levelText(invertM)}` : id,
    blocked: (id: string) => `${id} blocked`,
    leaves: (into: string | null) => (into === null ? 'leaves here' : `leaves here to ${into}`),
  },
} as const;
