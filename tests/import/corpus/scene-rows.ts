/** Bad scenes: those that tests/scene has no case for, or that only the check finds. */

import { buildUp, ON_SOUND, rect, SOIL_100, sceneOf, zone } from '../../helpers/scene-builder.ts';
import { type BadInput, utf16 } from './bad-input.ts';

type Json = ReturnType<typeof JSON.parse>;

/** The plain scene with one thing wrong. */
function scene(put: (scene: Json) => void): () => string {
  return () => {
    const plain = JSON.parse(JSON.stringify(sceneOf()));
    put(plain);
    return JSON.stringify(plain);
  };
}

const check = (row: number, what: string, put: (scene: Json) => void, expected: BadInput['expected']): BadInput => ({
  row,
  what,
  by: 'check',
  file: scene(put),
  expected,
});

export const SCENE_ROWS: readonly BadInput[] = [
  check(5, 'a gap between zones', (s) => (s.zones = [zone('Z1', rect(0, 0, 3, 3), 'soil-100')]), { finding: 'zone.gap', says: ['3.0'] }),
  check(
    6,
    'zones that overlap',
    (s) => (s.zones = [zone('Z1', rect(0, 0, 2.2, 3), 'soil-100'), zone('Z2', rect(2, 0, 4, 3), 'soil-100')]),
    { finding: 'zone.overlap', says: ['Z1', 'Z2', '0.6'] },
  ),
  check(
    7,
    'a sliver between zones',
    (s) => (s.zones = [zone('Z1', rect(0, 0, 2, 3), 'soil-100'), zone('Z2', rect(2.01, 0, 4, 3), 'soil-100')]),
    { finding: 'zone.gap', says: ['0.03'] },
  ),
  check(8, 'a zone that sticks out', (s) => (s.zones = [zone('Z1', rect(0, 0, 4.5, 3), 'soil-100')]), {
    finding: 'zone.outside',
    says: ['Z1'],
  }),
  check(17, 'kg/m² for kN/m²', (s) => (s.deck.bays[0].permanentKNm2 = 1500), {
    warning: 'LOAD_UNUSUAL',
    says: ['1500 kN/m²', 'kg/m²', '14.7'],
  }),
  // 250 / 20.885 = 11.97
  check(18, 'psf for kN/m²', (s) => (s.deck.bays[0].permanentKNm2 = 250), { warning: 'LOAD_UNUSUAL', says: ['psf', '11.97'] }),
  check(19, 'a layer 600 m thick', (s) => (s.buildups[0].layers[0].thicknessMm = 600_000), {
    warning: 'THICKNESS_UNUSUAL',
    says: ['600 m'],
  }),
  check(20, 't/m³ for kg/m³', (s) => (s.materials.find(({ id }: Json) => id === 'soil').density = { dry: 1, saturated: 1.5 }), {
    warning: 'DENSITY_UNUSUAL',
    says: ['t/m³', '1500'],
  }),
  check(
    20,
    'dry and saturated swapped',
    (s) => (s.materials.find(({ id }: Json) => id === 'soil').density = { dry: 1500, saturated: 1000 }),
    { warning: 'SATURATED_BELOW_DRY', says: ['swapped'] },
  ),
  check(21, 'a permitted load without its basis', (s) => delete s.deck.bays[0].basis, { finding: 'load.basis', says: ['A1'] }),
  check(
    22,
    'an imposed load as that of the zone and as a block',
    (s) => {
      s.zones[0].imposedKNm2 = 5;
      s.objects = [{ kind: 'block', id: 'P1', outline: rect(0, 0, 4, 3), kNm2: 5 }];
    },
    { finding: 'load.imposed', says: ['Z1', 'P1', 'counts twice'] },
  ),
  check(
    22,
    'a permanent load with the imposed load in it, and the imposed load beside it',
    (s) => Object.assign(s.deck.bays[0], { permanentKNm2: 17, basis: { ...s.deck.bays[0].basis, document: 'Lastenplan inkl. Nutzlast' } }),
    { finding: 'load.basis', says: ['A1', '“inkl. Nutzlast”', '17.00', '5.00'] },
  ),
  check(22, 'a total less than the permanent load', (s) => (s.deck.bays[0].totalKNm2 = 10), {
    finding: 'load.basis',
    says: ['total of 10.00', 'permanent load of 12.00'],
  }),
  check(23, 'a negative load', (s) => (s.deck.bays[0].permanentKNm2 = -3), {
    error: 'OUT_OF_RANGE',
    says: ['deck.bays[0].permanentKNm2', 'above 0'],
  }),
  {
    row: 24,
    what: 'a decimal comma in a scene',
    by: 'check',
    file: () => '{"format": "loamdeck-scene", "version": 1, "grid": {"cellM": 0,25}}',
    expected: { error: 'DECIMAL_COMMA', says: ['Write 0.25'] },
  },
  {
    row: 27,
    what: 'a scene in UTF-16',
    by: 'check',
    file: () => utf16(JSON.stringify(sceneOf())),
    expected: { mend: 'TEXT_DECODED', says: ['read as UTF-16LE'] },
  },
  {
    row: 29,
    what: 'a scene that stops in the middle',
    by: 'check',
    file: () => JSON.stringify(sceneOf()).slice(0, 400),
    expected: { error: 'JSON_TRUNCATED', says: ['byte 400', 'stops in the middle'] },
  },
  check(30, 'a scene of a later version', (s) => (s.version = 2), { error: 'VERSION_NEWER', says: ['newer'] }),
  check(30, 'a missing key', (s) => delete s.zones[0].buildup, { error: 'MISSING_KEY', says: ['zones[0]', 'buildup'] }),
  check(31, 'a zone without its build-up', (s) => (s.zones[0].buildup = 'lawn'), {
    error: 'UNKNOWN_ID',
    says: ['zones[0].buildup', 'lawn'],
  }),
  check(31, 'an id twice', (s) => s.zones.push({ ...s.zones[0] }), { error: 'DUPLICATE_ID', says: ['zones[1].id'] }),
  check(32, 'no protection on the membrane', (s) => (s.buildups = [SOIL_100]), { finding: 'order.protection', says: ['protection'] }),
  check(
    32,
    'drainage above the substrate',
    (s) => (s.buildups = [buildUp('soil-100', [{ material: 'sheet' }, { material: 'soil', thicknessMm: 100 }, { material: 'element' }])]),
    {
      finding: 'order.drainage',
      says: ['drainage'],
    },
  ),
  {
    row: 38,
    what: 'a scene nested without end',
    by: 'check',
    file: () => '{"deck":'.repeat(100_000),
    expected: { error: 'JSON_TOO_DEEP', says: ['64'] },
  },
  check(
    40,
    'a layer placed before the one below it',
    (s) => Object.assign(s, ON_SOUND, { stages: [{ id: 'S1', name: 'Soil', place: [{ zones: ['Z1'], roles: ['substrate'] }] }] }),
    {
      finding: 'stage.order',
      says: ['S1', 'Z1'],
    },
  ),
  check(
    42,
    'an old revision of the load plan, by other bays',
    (s) => {
      const [first] = s.deck.bays;
      const basis = { ...first.basis, revision: 'C', date: '2026-05-09' };
      s.deck.bays = [
        { ...first, outline: rect(0, 0, 2, 3) },
        { ...first, id: 'A2', outline: rect(2, 0, 4, 3), basis },
      ];
    },
    { finding: 'load.basis', says: ['A1', 'revision A of 2026-01-05', 'bay A2 knows revision C of 2026-05-09'] },
  ),
  check(
    42,
    'an old revision of the load plan, by the history',
    (s) => (s.history = [{ on: '2026-05-10', says: 'Load plan revision C of 2026-05-09 entered for A1' }]),
    { finding: 'load.basis', says: ['history', 'revision C of 2026-05-09'] },
  ),
];
