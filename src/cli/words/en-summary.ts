/** Headings, notes and words of the summary of a check. */

import type { Severity } from '../../model/finding.ts';

export const SUMMARY_EN = {
  notACheck: 'Compares entered loads with entered limits. Not a structural check: the structural engineer and local rules decide.',
  deck: (areaM2: string, zonedM2: string, cells: number, cellM: string) =>
    `Deck ${areaM2} m², ${zonedM2} m² of it with a build-up; ${cells} cells of ${cellM} m`,
  weight: (dryKN: string, saturatedKN: string, objectsKN: string) =>
    `Weight ${dryKN} kN dry, ${saturatedKN} kN saturated, of which objects ${objectsKN} kN`,
  verdict: (over: number, open: number, within: number) =>
    `Bays: ${over} over, ${open} not confirmed, ${within} within the permitted loads`,
  notChecked: (list: string) => `Not part of this result: ${list}`,
  bays: 'Bays, worst first (kN/m² on the worst patch of 1 m × 1 m, saturated; imposed: the most that a zone on it is meant to carry)',
  baysHead: ['bay', 'permanent', 'permitted', 'use', 'imposed', 'permitted', 'use', 'worst stage', 'there', 'permitted', 'use', 'basis'],
  inAll: (kNm2: string) => `${kNm2} in all`,
  basis: (document: string, revision: string, date: string) => `${document}, rev ${revision}, ${date}`,
  notConfirmed: 'NOT CONFIRMED',
  zones: 'Zones (saturated, kN/m²)',
  zonesHead: ['zone', 'area m²', 'depth mm', 'make-up mm', 'least', 'mean', 'most', 'held l/m²'],
  stages: 'Stages',
  stagesHead: ['', 'stage', 'placed kN', 'worst bay', 'use'],
  noFindings: 'No findings.',
  findings: (stop: number, check: number, note: number) => `Findings: ${stop} stop, ${check} check, ${note} note`,
  severity: { stop: 'stop', check: 'check', note: 'note' } satisfies Record<Severity, string> as Readonly<Record<Severity, string>>,
  at: (place: string) => `[at ${place}]`,

  columns: [
    'Columns: permanent load, saturated, of the deck area nearest to each, heaviest first. Walls under the deck are not known here. This is',
    'no support reaction and no check: whether a column punches through the slab is for the structural engineer to say.',
  ],
  columnsHead: ['column', 'share m²', 'kN', 't'],

  edges: 'Sills and upstands (mm that the membrane ends above the finish, as built, at the least place)',
  edgesHead: ['edge', 'kind', 'least', 'required', 'spare', 'zone', 'at'],
  sill: (drained: boolean): string => (drained ? 'sill, drained' : 'sill, no channel'),
  upstand: 'upstand',
  noneAdjoins: 'none adjoins',

  heaps: [
    'Heap heights in m that hold at every stage, rounded down to 0.05 m, on top of all that then lies on the worst patch of 1 m × 1 m of the bay',
    '(layers, objects and the stage’s own stockpiles); the material counts wet through. The heights of each stage stand in the report (--json).',
    'From the load alone: the slope of the heap, distance from edges, wind and the reach of the machine may allow less.',
  ],
  heapsHead: ['bay', 'tightest stage'],
  noPermitted: 'no permitted load',
  alreadyOver: (kNm2: string) => `already over by ${kNm2} kN/m²`,

  probes: 'As laid: depths measured, the difference as load wet through, and the use of the bay if the whole square metre there is so',
  probesHead: ['probe', 'zone', 'layer', 'planned mm', 'measured', 'difference', 'kN/m²', 'bay', 'then kN/m²', 'use', ''],
  wholeDepth: 'whole',
  noZoneThere: 'no zone there',
  noLayerThere: 'no zone with such a layer there',
  weighsSame: 'weighs the same at any thickness',
  countedAs: (layer: string) => `counted as ${layer}`,

  lanes: 'Lanes for fire appliances, as drawn (the fire authority decides)',
  lanesHead: ['lane', 'rule', 'width m', 'asked for', 'least outer radius', 'steepest %', 'step mm'],
  straight: 'straight',
  setUps: 'Set-up and movement areas (the fire authority decides); pressures of one wheel or support on the membrane',
  setUpsHead: [
    'area',
    'kind',
    'rule',
    'vehicle',
    'm × m',
    'fits',
    'asked for',
    'steepest %',
    'step mm',
    'wheels kPa',
    'support kPa',
    'bays',
  ],
  setUpKind: { 'set-up': 'set-up', movement: 'movement' } as Readonly<Record<'set-up' | 'movement', string>>,
  noRule: 'none',
  tooShort: 'too short',
  reach: 'Reach when the stage begins: over ground that bears plant, by crane or hose; how wide a way is does not count',
  reachHead: ['stage', 'zones', 'area m²', 'not reached m²'],

  takeOff: [
    'Take-off: m² and m³ as laid and placed; to order with laps, or loose. Turn-ups at edges and waste are not in it; a material of two sheets',
    'counts its area once. Tonnes dry, and wet through as the most it can weigh on delivery (sheets and elements dry), by which deliveries are',
    'counted. By zone and stage in the report (--json).',
  ],
  takeOffHead: ['material', 'm²', 'placed m³', 'order', '', 't dry', 't wet', 'deliveries', ''],
  price: 'price',
  loose: 'm³ loose',
  deliveries: (by: 'volume' | 'weight', ifDry: number | null) => `by ${by}${ifDry === null ? '' : `, ${ifDry} if dry`}`,

  tolerances: [
    'Tolerances: use of each bay by the finished garden with every layer as thin and light, and as thick and heavy, as it may come out. A make-up',
    'layer under a set level keeps that level, so only its density varies; weights per m² (sheets, elements, plants) do not.',
  ],
  tolerancesHead: ['bay', 'least', 'planned', 'most', ''],
  over: 'over',
  couldGoOver: 'could go over',

  wheels: 'Wheels (kPa; the layer used most with what lies above it; on the membrane wheels alone, spread and as in an elastic half-space)',
  wheelsHead: ['line', 'vehicle', 'stage', 'zone', 'layer', 'most', 'bears', 'use', 'membrane', 'elastic', 'in bays kN/m²', 'permitted'],

  walls: [
    'Retaining edges: L-shapes per metre, drained soil, characteristic values, worse of live load behind the wall and also on its heel.',
    'No proof: the structural engineer proves the wall. Load on the deck is stem and base slab; the soil on it is counted with its zone.',
  ],
  wallsHead: [
    'edge',
    'own kN/m',
    'Ka',
    'live kN/m²',
    'thrust kN/m',
    'sliding',
    'overturning',
    'off centre m',
    'a sixth m',
    'most kPa',
    'bears kPa',
    'on',
  ],
  fallsOver: 'falls over',
  notKnown: 'not known',

  held: (m3: string, lm2: string) => `Water: ${m3} m³ held when full, ${lm2} l/m² of deck`,
  heldFree: (m3: string, lm2: string, freeM3: string, percent: string) =>
    `Water: ${m3} m³ held when full, ${lm2} l/m² of deck; ${freeM3} m³ of it free when ${percent} % full`,
  undrained: (m2: string) => `${m2} m² of deck drain to no outlet`,
  noRain: 'No rain in the scene: catchments are told, flows are not',
  rain: (design: string, extreme: string, source: string) => `Rain ${design} l/(s·ha), extreme ${extreme} l/(s·ha) (${source})`,
  flow: (lps: string, meanC: string, table: string) => `${lps} l/s in the design rain, mean peak coefficient ${meanC} (${table})`,
  yearly: (m3: string, mm: string) => `${m3} m³ a year off ${mm} mm (annual coefficients)`,
  runOff:
    'Run-off of the zones (held m³; peak coefficient and its row; flow in the drainage l/(s·m) at the end of the longest way, and what it carries)',
  runOffHead: ['zone', 'held', 'free l/m²', 'peak C', 'l/s', 'row', 'annual C', 'm³/year', 'drainage', 'flow', 'carries'],
  carries: (lsm: string, headMm: string, ofMm: string) => `${lsm}, head ${headMm} of ${ofMm} mm`,
  outlets: 'Outlets and overflows (design rain with all at work; overflows: extreme rain less design flow, with the outlets blocked)',
  outletsHead: ['', 'kind', 'area m²', 'l/s', 'takes', 'use', 'runs at m', 'water mm'],
  outletKind: { outlet: 'outlet', overflow: 'overflow' } as Readonly<Record<'outlet' | 'overflow', string>>,
  ponds: (count: number, most: number | null) =>
    `Ponds where the deck has no fall to an outlet (${count}${most === null ? '' : `, the deepest ${most}`})`,
  pondsHead: ['zone', 'depth mm', 'area m²', 'litres', 'at'],
  blocked: 'One outlet blocked, the others at work (saturated garden and water, worst patch of 1 m × 1 m)',
  blockedHead: ['outlet', 'to level m', 'depth mm', 'area m²', 'm³', 'then into', 'worst bay', 'kN/m²', 'use'],
  noEnd: 'no end',
  uplift: (up: string, down: string) => `Uplift of light layers (kN/m², dry; factors ${up} up, ${down} down; at least 1 holds)`,
  upliftHead: ['zone', 'stage', 'layer', 'water mm', 'lifts', 'holds', 'ratio', 'missing'],
  finished: 'finished',
  noDrainageDesign: 'No drainage design: the drainage engineer and the local code decide.',
};

export type SummaryWords = typeof SUMMARY_EN;
