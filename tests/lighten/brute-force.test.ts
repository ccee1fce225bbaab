/**
 * Lightening against every combination tried one by one: two zones whose loads share windows, a sloping deck, one zone over two bays, a
 * least depth of substrate, all three aims, and what can not be helped. Worked from the meaning of the numbers alone: load of a cell from
 * thickness and density, windows of 1 m × 1 m over the deck round the centres of a bay's cells, thicknesses in steps of 10 mm.
 */

import { describe, expect, it } from 'vitest';
import { LIGHTEN_AIMS, type LightenAim, type LightenMeans } from '../../src/model/lighten.ts';
import type { SceneFile, SceneLevels, SceneMaterial } from '../../src/model/scene-file.ts';
import { lighten } from '../helpers/lightened.ts';
import { bay, buildUp, GRAVITY, MATERIALS, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const CELL_M = 0.25;
const [COLUMNS, ROWS] = [16, 12];
const STEP_MM = 10;
/** Least thickness of a layer that is brought, of the make-up layer, and what that may reach [mm]. */
const [LEAST_MM, MOST_MM] = [50, 1000];
const SOIL_MM = 200;

/** Saturated kg/m³ and price of a cubic metre as placed; the soil is ordered loose, 1.2 m³ at 40 for one placed. */
const FILL = {
  heavy: { density: 1000, price: 20 },
  light: { density: 300, price: 60 },
  foam: { density: 50, price: 120 },
} as const;
type Fill = keyof typeof FILL;
const FILLS = Object.keys(FILL) as Fill[];
const SOIL = { density: 1500, price: 48 };
/** Sheet of 2 kg/m² and 10 mm, cloth of 1 kg/m² and 5 mm. */
const SHEETS = { kgM2: 3, mm: 15 };

const PRICED: readonly SceneMaterial[] = [
  ...MATERIALS.filter(({ id }) => id !== 'light').map((one) =>
    one.id === 'soil' ? { ...one, price: { per: 'm3', amount: 40 } as const } : one,
  ),
  ...FILLS.map((id): SceneMaterial => {
    const { density, price } = FILL[id];
    return { id, name: id, role: 'light fill', density: { dry: density - 10, saturated: density }, price: { per: 'm3', amount: price } };
  }),
];

/** A zone from x0 to x1 over the whole height of the deck, and the room from membrane to finish at a cell's centre [mm]. */
interface TriedZone {
  readonly x0: number;
  readonly x1: number;
  readonly finishM: number;
}

interface Case {
  readonly zones: readonly TriedZone[];
  /** Bays from x0 to x1, with what they permit [kN/m²]. */
  readonly bays: readonly (readonly [x0: number, x1: number, permittedKNm2: number])[];
  /** How much lower the deck lies with every metre towards +x [m]. */
  readonly slope?: number;
  readonly lawnMm?: number;
}

const centreM = (i: number) => (i + 0.5) * CELL_M;
const roomMm = ({ finishM }: TriedZone, x: number, slope = 0) => 1000 * (finishM + slope * x);

function sceneFor({ zones, bays, slope = 0, lawnMm }: Case): SceneFile {
  const layers = [
    { material: 'sheet' },
    { material: 'heavy', thicknessMm: { min: LEAST_MM, max: MOST_MM, nominal: 390 } },
    { material: 'cloth' },
    { material: 'soil', thicknessMm: SOIL_MM },
  ];
  const levels: SceneLevels = {
    spots: [
      [0, 0, 0],
      [4, 0, -4 * slope],
      [4, 3, -4 * slope],
      [0, 3, 0],
    ],
  };
  return sceneOf({
    materials: PRICED,
    deck: {
      bays: bays.map(([x0, x1, permittedKNm2], i) => bay(`A${i}`, rect(x0, 0, x1, 3), { permanentKNm2: permittedKNm2 })),
      rootResistant: true,
      ...(slope === 0 ? {} : { levels }),
    },
    ...(lawnMm === undefined ? {} : { limits: { substrateMm: { lawn: lawnMm } } }),
    buildups: zones.map((_, z) => buildUp(`bed${z}`, layers, lawnMm === undefined ? {} : { vegetation: { form: 'lawn', kNm2: 0 } })),
    zones: zones.map(({ x0, x1, finishM }, z) =>
      zone(`Z${z}`, rect(x0, 0, x1, 3), `bed${z}`, { finish: { kind: 'level', levelM: finishM } }),
    ),
  });
}

/** One way to build a zone up: `even` is as thick everywhere, `rest` takes what the levels leave. */
interface Option {
  readonly soilMm: number;
  readonly even: Fill | null;
  readonly evenMm: number;
  readonly rest: Fill;
}

interface Told extends Option {
  /** Load at a cell: `fixed + perRoomMm · room` [kN/m²]. */
  readonly fixedKNm2: number;
  readonly perRoomKNm2: number;
  readonly price: number;
  readonly weightKN: number;
  readonly m3: Readonly<Record<Fill | 'soil', number>>;
}

function optionsOf(zoneTried: TriedZone, slope: number, soils: readonly number[]): Told[] {
  const columns = Array.from({ length: COLUMNS }, (_, i) => centreM(i)).filter((x) => x > zoneTried.x0 && x < zoneTried.x1);
  const rooms = columns.map((x) => roomMm(zoneTried, x, slope));
  const [least, most] = [Math.min(...rooms), Math.max(...rooms)];
  const found: Told[] = [];
  const consider = (option: Option) => {
    const othersMm = SHEETS.mm + option.soilMm + option.evenMm;
    if (least - othersMm < LEAST_MM - 1e-6 || most - othersMm > MOST_MM + 1e-6) return;
    found.push(tell(option, rooms));
  };
  for (const soilMm of soils) {
    for (const rest of FILLS) {
      consider({ soilMm, even: null, evenMm: 0, rest });
      for (const even of FILLS) {
        if (even === rest) continue;
        for (let evenMm = LEAST_MM; evenMm < least; evenMm += STEP_MM) consider({ soilMm, even, evenMm, rest });
      }
    }
  }
  return found;
}

function tell(option: Option, rooms: readonly number[]): Told {
  const { soilMm, even, evenMm, rest } = option;
  const evenKg = even === null ? 0 : (FILL[even].density * evenMm) / 1000;
  const othersMm = SHEETS.mm + soilMm + evenMm;
  const kg = SHEETS.kgM2 + (SOIL.density * soilMm) / 1000 + evenKg - (FILL[rest].density * othersMm) / 1000;
  const columnM2 = CELL_M * 3;
  const areaM2 = rooms.length * columnM2;
  const restM3 = rooms.reduce((sum, mm) => sum + ((mm - othersMm) / 1000) * columnM2, 0);
  const m3 = { heavy: 0, light: 0, foam: 0, soil: (soilMm / 1000) * areaM2 };
  m3[rest] += restM3;
  if (even !== null) m3[even] += (evenMm / 1000) * areaM2;
  const price = m3.soil * SOIL.price + FILLS.reduce((sum, fill) => sum + m3[fill] * FILL[fill].price, 0);
  const massKg = SHEETS.kgM2 * areaM2 + m3.soil * SOIL.density + FILLS.reduce((sum, fill) => sum + m3[fill] * FILL[fill].density, 0);
  const perKg = GRAVITY / 1000;
  return { ...option, fixedKNm2: kg * perKg, perRoomKNm2: (FILL[rest].density / 1000) * perKg, price, weightKN: massKg * perKg, m3 };
}

/** A window over the deck: share and room of each zone in it. */
interface Window {
  readonly permittedKNm2: number;
  readonly share: readonly number[];
  readonly roomMm: readonly number[];
}

/** Windows of all cells' centres, each different one once: rooms vary along x alone, so one row in the middle and one at the edge. */
function windowsOf({ zones, bays, slope = 0 }: Case): Window[] {
  const found = new Map<string, Window>();
  const overlap = (centre: number, i: number) => Math.max(0, Math.min(centre + 0.5, (i + 1) * CELL_M) - Math.max(centre - 0.5, i * CELL_M));
  for (let row = 0; row < ROWS; row++) {
    for (let column = 0; column < COLUMNS; column++) {
      const [x, y] = [centreM(column), centreM(row)];
      const own = bays.find(([x0, x1]) => x > x0 && x < x1);
      if (own === undefined) throw new RangeError('windowsOf: a cell without a bay');
      const share = zones.map(() => 0);
      const room = zones.map(() => 0);
      let all = 0;
      for (let j = 0; j < ROWS; j++) {
        for (let i = 0; i < COLUMNS; i++) {
          const part = overlap(x, i) * overlap(y, j);
          if (part === 0) continue;
          const z = zones.findIndex(({ x0, x1 }) => centreM(i) > x0 && centreM(i) < x1);
          all += part;
          share[z]! += part;
          room[z]! += part * roomMm(zones[z]!, centreM(i), slope);
        }
      }
      const window = { permittedKNm2: own[2], share: share.map((of) => of / all), roomMm: room.map((of) => of / all) };
      found.set(JSON.stringify([own[2], ...[...window.share, ...window.roomMm].map((of) => of.toFixed(9))]), window);
    }
  }
  return [...found.values()];
}

const loadIn = ({ share, roomMm: room }: Window, taken: readonly Told[]) =>
  taken.reduce((sum, { fixedKNm2, perRoomKNm2 }, z) => sum + share[z]! * fixedKNm2 + room[z]! * perRoomKNm2, 0);

interface Best {
  readonly cost: number;
  readonly weight: number;
  readonly change: number;
  readonly kept: number;
  readonly tried: number;
}

/** Every combination; the least of each aim among those that keep every window. */
function bestOf(tried: Case, soilsOf: (zoneTried: TriedZone) => readonly number[]): Best {
  const slope = tried.slope ?? 0;
  const options = tried.zones.map((one) => optionsOf(one, slope, soilsOf(one)));
  const windows = windowsOf(tried);
  const now = options.map((list) => list.find(({ soilMm, even, rest }) => soilMm === SOIL_MM && even === null && rest === 'heavy')!);
  const best = { cost: Infinity, weight: Infinity, change: Infinity, kept: 0, tried: 0 };
  const consider = (taken: readonly Told[]) => {
    best.tried++;
    if (windows.some((window) => loadIn(window, taken) > window.permittedKNm2 * (1 + 1e-9))) return;
    best.kept++;
    const sum = (of: (one: Told) => number) => taken.reduce((all, one) => all + of(one), 0);
    best.cost = Math.min(
      best.cost,
      sum(({ price }) => price),
    );
    best.weight = Math.min(
      best.weight,
      sum(({ weightKN }) => weightKN),
    );
    const brought = FILLS.reduce((all, fill) => {
      const more = taken.reduce((volume, { m3 }, z) => volume + m3[fill] - now[z]!.m3[fill], 0);
      return all + Math.max(0, more);
    }, 0);
    best.change = Math.min(best.change, brought);
  };
  const [first, second] = options;
  for (const a of first!) {
    if (second === undefined) consider([a]);
    else for (const b of second) consider([a, b]);
  }
  return best;
}

const asWritten = () => [SOIL_MM];
const wholeDeck = (more: Partial<TriedZone> = {}): TriedZone => ({ x0: 0, x1: 4, finishM: 0.605, ...more });

/** What the tool gives for an aim, as the number that aim counts. */
function foundFor(tried: Case, aim: LightenAim, means: readonly LightenMeans[]): { value: number; proven: boolean; weightKN: number } {
  const project = read(sceneFor(tried));
  const answer = lighten(project, { aims: [aim], fills: FILLS, means });
  const [variant] = answer.variants;
  if (variant === undefined) throw new Error(`nothing for ${aim}: ${JSON.stringify([answer.unsolved, answer.obstacles])}`);
  const after = read(variant.scene);
  const over = after.report.findings.filter(({ rule, severity }) => severity === 'stop' && rule.startsWith('load.'));
  expect(over).toEqual([]);
  const weightKN = after.report.deck.saturatedKN;
  const value = { cost: variant.costAfter ?? Number.NaN, weight: weightKN, change: variant.exchangedM3 }[aim];
  return { value, proven: variant.proven, weightKN };
}

describe.each(LIGHTEN_AIMS)('the least %s of all combinations', (aim) => {
  const fills = ['fill', 'split'] as const;
  const isBest = (tried: Case, means: readonly LightenMeans[], soilsOf: (one: TriedZone) => readonly number[] = asWritten) => {
    const best = bestOf(tried, soilsOf);
    // Some combinations must be kept out and some be left, or nothing is proved.
    expect(best.kept).toBeGreaterThan(0);
    expect(best.kept).toBeLessThan(best.tried);
    const found = foundFor(tried, aim, means);
    expect(found.proven).toBe(true);
    expect(found.value).toBeCloseTo(best[aim], 5);
  };

  it.each([6.2, 5.4, 4.6, 4, 3.5])('two zones whose loads share windows, in one bay for %f kN/m²', (limit) => {
    // The strip is half a metre wide: no window holds it alone, so a heavy strip may stand beside a light zone.
    const zones = [wholeDeck({ x1: 3.5 }), wholeDeck({ x0: 3.5, finishM: 0.705 })];
    isBest({ zones, bays: [[0, 4, limit]] }, fills);
  });

  it.each([6.8, 5.8, 4.8, 3.9])('a sloping deck whose make-up layer takes the difference, for %f kN/m²', (limit) => {
    isBest({ zones: [wholeDeck()], bays: [[0, 4, limit]], slope: 0.04 }, fills);
  });

  it.each([
    [5.5, 6.5],
    [6.6, 5.2],
    [4.2, 4.6],
  ])('one zone over two bays, for %f and %f kN/m², on a slope', (west, east) => {
    isBest(
      {
        zones: [wholeDeck()],
        bays: [
          [0, 2, west],
          [2, 4, east],
        ],
        slope: 0.03,
      },
      fills,
    );
  });

  it.each([5.9, 4.9, 3.6, 2.9])('a substrate that may get thinner, but not below what is required: %f kN/m²', (limit) => {
    // 160 mm are required of 200.
    const soils = () => [200, 190, 180, 170, 160];
    isBest({ zones: [wholeDeck()], bays: [[0, 4, limit]], lawnMm: 160 }, ['fill', 'split', 'substrate'], soils);
  });
});

describe('what can not be helped', () => {
  /** The least that the worst window can carry, whatever is chosen. */
  function lightestOf(tried: Case, soils: readonly number[]): number {
    const slope = tried.slope ?? 0;
    const [options] = tried.zones.map((one) => optionsOf(one, slope, soils));
    return Math.min(...options!.map((option) => Math.max(...windowsOf(tried).map((window) => loadIn(window, [option])))));
  }
  const obstacleIn = (tried: Case, means: readonly LightenMeans[]) => {
    const { variants, obstacles } = lighten(read(sceneFor(tried)), { fills: FILLS, means });
    expect(variants).toEqual([]);
    return obstacles.find(({ kind }) => kind === 'permanent')!;
  };

  it('on a slope: the deepest window, all of foam, just above the limit; just below it there is an answer', () => {
    const zones = [wholeDeck()];
    const slope = 0.04;
    const least = lightestOf({ zones, bays: [[0, 4, 9]], slope }, [SOIL_MM]);
    const { lightestKNm2, overKNm2, hindrances } = obstacleIn({ zones, bays: [[0, 4, least - 0.01]], slope }, ['fill', 'split']);
    expect(lightestKNm2).toBeCloseTo(least, 9);
    expect(overKNm2).toBeCloseTo(0.01, 9);
    expect(hindrances).toEqual([]);
    const { weightKN } = foundFor({ zones, bays: [[0, 4, least + 1e-6]], slope }, 'weight', ['fill', 'split']);
    expect(weightKN).toBeGreaterThan(0);
  });

  it('names the least depth of substrate where giving it up would do, and only there', () => {
    const zones = [wholeDeck()];
    const means = ['fill', 'split', 'substrate'] as const;
    const held = lightestOf({ zones, bays: [[0, 4, 9]] }, [160]);
    // Down to the least layer of 50 mm, were no depth asked for.
    const free = lightestOf({ zones, bays: [[0, 4, 9]] }, [LEAST_MM]);
    expect(free).toBeLessThan(held - 1);
    const between = obstacleIn({ zones, bays: [[0, 4, (held + free) / 2]], lawnMm: 160 }, means);
    expect(between.lightestKNm2).toBeCloseTo(held, 9);
    expect(between.hindrances).toEqual(['substrate depth']);
    const below = obstacleIn({ zones, bays: [[0, 4, free - 0.05]], lawnMm: 160 }, means);
    expect(below.hindrances).toEqual([]);
  });

  it('one bay of two: the limit that is broken is named, the other is not', () => {
    const tried: Case = {
      zones: [wholeDeck()],
      bays: [
        [0, 2, 2.5],
        [2, 4, 20],
      ],
    };
    const { obstacles, variants } = lighten(read(sceneFor(tried)), { fills: FILLS, means: ['fill', 'split'] });
    expect(variants).toEqual([]);
    expect(new Set(obstacles.map(({ bay: id }) => id))).toEqual(new Set(['A0']));
    // 303 kg/m² and 390 mm of foam at 50: 322.5 kg/m².
    expect(obstacles[0]!.lightestKNm2).toBeCloseTo(322.5 * 9.81e-3, 9);
  });
});
