/** The readable summary of small scenes: numbers by hand, spaces aside. */

import { describe, expect, it } from 'vitest';
import { summary } from '../../src/cli/summary.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { bay, buildUp, byId, MAKE_UP, MATERIALS, ON_SOUND, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

function lines(scene: SceneFile): string[] {
  const text = summary(scene, read(scene).report);
  expect(text.endsWith('\n')).toBe(true);
  return text.split('\n').map((line) => line.trim().replace(/ +/g, ' '));
}

describe('a plain deck', () => {
  const plain = lines(sceneOf());

  it('opens with what it is and is not', () => {
    expect(plain[0]).toBe('Test deck');
    expect(plain[1]).toContain('Not a structural check');
  });

  it('sums up deck and weight', () => {
    // 12 m²; 11.772 and 17.658 kN
    expect(plain).toContain('Deck 12.0 m², 12.0 m² of it with a build-up; 192 cells of 0.25 m');
    expect(plain).toContain('Weight 12 kN dry, 18 kN saturated, of which objects 0 kN');
    expect(plain).toContain('Bays: 0 over, 0 not confirmed, 1 within the permitted loads');
  });

  it('has a row per bay, zone and stage', () => {
    // 1.4715 of 12 is 12.26 %; nobody is to walk there
    expect(plain).toContain('A1 1.47 12.00 12.3 % 0.00 5.00 0.0 % substrate 1.47 12.00 12.3 % load plan, rev A, 2026-01-05');
    expect(plain).toContain('Z1 12.0 100 - 1.47 1.47 1.47 40.0');
    expect(plain).toContain('1 Substrate 18 A1 12.3 %');
    // Bare soil on the membrane: no protection, no drainage
    expect(plain).toContain('Findings: 1 stop, 1 check, 0 note');
    expect(lines(sceneOf(ON_SOUND))).toContain('No findings.');
  });
});

describe('several bays', () => {
  const scene = sceneOf({
    deck: {
      outline: rect(0, 0, 8, 3),
      bays: [
        bay('light', rect(0, 0, 2, 3)),
        bay('over', rect(2, 0, 4, 3), { permanentKNm2: 1 }),
        { ...bay('open', rect(4, 0, 6, 3), { permanentKNm2: 2.5 }), basis: { document: 'plan' } },
        bay('all', rect(6, 0, 8, 3), { totalKNm2: 8 }),
      ],
    },
    zones: [zone('Z1', rect(0, 0, 8, 3), 'soil-100', { imposedKNm2: 2 })],
  });
  const text = lines(scene);

  it('stand worst first', () => {
    // over 147 %; open 59 %; all (1.4715 + 2)/8 = 43 %; light: imposed 2/5 = 40 %
    const bays = text.slice(0, text.indexOf('Zones (saturated, kN/m²)'));
    const rows = bays.filter((line) => /^(light|over|open|all) /.test(line)).map((line) => line.split(' ')[0]);
    expect(rows).toEqual(['over', 'open', 'all', 'light']);
  });

  it('are counted over, not confirmed, within', () => {
    expect(text).toContain('Bays: 1 over, 1 not confirmed, 2 within the permitted loads');
  });

  it('say what limit they have and that one is not confirmed', () => {
    // 3.4715/8 = 43.4 %; a stage 1.4715/8 = 18.4 %; 1.4715/2.5 = 58.9 %
    expect(text).toContain('all 3.47 8.00 in all 43.4 % 2.00 - - substrate 1.47 8.00 18.4 % load plan, rev A, 2026-01-05');
    expect(text).toContain('open 1.47 2.50 58.9 % 2.00 - - substrate 1.47 2.50 58.9 % NOT CONFIRMED');
  });

  it('show what brings a bay over its limit where it is the imposed load: 4 of 3 is 133.3 %', () => {
    const used = sceneOf({
      deck: { outline: rect(0, 0, 4, 3), bays: [bay('A1', rect(0, 0, 4, 3), { permanentKNm2: 12, imposedKNm2: 3 })] },
      zones: [zone('Z1', rect(0, 0, 4, 3), 'soil-100', { imposedKNm2: 4 })],
    });
    expect(lines(used)).toContain('A1 1.47 12.00 12.3 % 4.00 3.00 133.3 % substrate 1.47 12.00 12.3 % load plan, rev A, 2026-01-05');
  });

  it('have their findings by severity, with place and source', () => {
    // Bay over: permanent and its stage; basis of bay open; soil without protection and drainage
    expect(text).toContain('Findings: 3 stop, 2 check, 0 note');
    const [first] = text.filter((line) => line.startsWith('stop load.permanent'));
    expect(first).toMatch(/Bay over.*\[at [\d.]+, [\d.]+\] \(load plan, revision A, 2026-01-05\)$/);
  });
});

it('depths and make-up as ranges where they vary', () => {
  // Deck rising from 0 to 0.2 over 4 m, finish at 0.6: at the outer centres 0.00625 and 0.19375: depth 594 to 406, fill 484 to 296
  const scene = sceneOf({
    deck: {
      levels: {
        spots: [
          [0, 0, 0],
          [4, 0, 0.2],
          [4, 3, 0.2],
          [0, 3, 0],
        ],
      },
    },
    buildups: [MAKE_UP],
    zones: [zone('Z1', rect(0, 0, 4, 3), 'make-up', { finish: { kind: 'level', levelM: 0.6 } })],
  });
  expect(lines(scene).find((line) => line.startsWith('Z1'))).toContain('Z1 12.0 406–594 296–484 ');
});

describe('the heap board', () => {
  const rows = (deck: Partial<SceneFile['deck']>) => {
    const text = lines(sceneOf({ deck }));
    return text.slice(text.findIndex((line) => line.startsWith('Heap heights')));
  };

  it('has a row per bay: (12 − 1.4715)/12.2625 = 0.858', () => {
    expect(rows({})).toEqual(expect.arrayContaining(['bay tightest stage soil', 'A1 substrate 0.85']));
  });

  it('gives no height where the bay is over, and says what is not confirmed: 1.4715 of 1', () => {
    const over = bay('over', rect(0, 0, 2, 3), { permanentKNm2: 1 });
    const open = { ...bay('open', rect(2, 0, 4, 3)), basis: {} };
    const text = rows({ bays: [over, open] });
    expect(text).toContain('over substrate 0.00 already over by 0.47 kN/m²');
    expect(text).toContain('open substrate 0.85 NOT CONFIRMED');
  });

  it('names the stages that leave the least room, though heights come out alike: 10.5285 and then 10.51869 over 12.2625 are 0.85 m', () => {
    const covered = buildUp('covered', [{ material: 'soil', thicknessMm: 100 }, { material: 'cloth' }]);
    const scene = sceneOf({
      buildups: [covered],
      zones: [zone('Z1', rect(0, 0, 4, 3), 'covered')],
      stages: [
        { id: 'S1', name: 'Soil', place: [{ roles: ['substrate'] }] },
        { id: 'S2', name: 'Cloth', place: [{ roles: ['filter'] }] },
        { id: 'S3', name: 'Hand-over' },
      ],
    });
    expect(lines(scene)).toContain('A1 S2, S3 0.85');
  });
});

it('columns in kN and tonnes, heaviest first: 6.75 and 5.25 m² of 1.4715, over 9.81', () => {
  // Border half way between x = 1 and x = 2.5, at 1.75
  const columns = [
    { id: 'C1', at: [1, 1], sizeM: [0.4, 0.4] },
    { id: 'C2', at: [2.5, 1], sizeM: [0.4, 0.4] },
  ] as const;
  const text = lines(sceneOf({ deck: { columns } }));
  const from = text.findIndex((line) => line.startsWith('Columns:'));
  expect(text[from + 1]).toContain('structural engineer');
  // 9.933 kN = 1.0125 t; 7.725 kN = 0.7875 t
  expect(text.slice(from + 2, from + 5)).toEqual(['column share m² kN t', 'C2 6.8 10 1.0', 'C1 5.3 8 0.8']);
});

describe('the take-off', () => {
  const rows = (parts: Partial<SceneFile>) => {
    const text = lines(sceneOf(parts as Parameters<typeof sceneOf>[0]));
    return text.slice(text.findIndex((line) => line.startsWith('Take-off')) + 3);
  };

  it('12 m² · 0.1 = 1.2 m³, 1.44 loose, 1.2 t dry, 1.8 t wet, no deliveries known, no prices', () => {
    expect(rows({}).slice(0, 2)).toEqual(['material m² placed m³ order t dry t wet deliveries', 'soil 12.0 1.20 1.4 m³ loose 1.20 1.80 -']);
  });

  it('deliveries of 1.5 t and the price of 40 per m³ loose', () => {
    const delivery = { unit: 'truck', kg: 1500 };
    const soil = { ...byId(MATERIALS, 'soil'), delivery, price: { per: 'm3', amount: 40 } } as const;
    expect(rows({ materials: [soil], currency: 'EUR' }).slice(0, 2)).toEqual([
      'material m² placed m³ order t dry t wet deliveries EUR',
      'soil 12.0 1.20 1.4 m³ loose 1.20 1.80 2 by weight, 1 if dry 57.60',
    ]);
  });
});

it('tolerances as a range of use, the highest first', () => {
  // 1.05948, 1.4715 and 1.94238 of 1.7 and of 4
  const scene = sceneOf({
    tolerance: { thicknessMm: 20, densityPercent: 10 },
    deck: { bays: [bay('wide', rect(0, 0, 2, 3), { permanentKNm2: 4 }), bay('tight', rect(2, 0, 4, 3), { permanentKNm2: 1.7 })] },
  });
  const text = lines(scene);
  const from = text.findIndex((line) => line.startsWith('Tolerances'));
  expect(text.slice(from + 2, from + 5)).toEqual([
    'bay least planned most',
    'tight 62.3 % 86.6 % 114.3 % could go over',
    'wide 26.5 % 36.8 % 48.6 %',
  ]);
});

it('tolerances say whose permitted load is not confirmed, also beside what could go over', () => {
  const bays = [
    { ...bay('wide', rect(0, 0, 2, 3), { permanentKNm2: 4 }), basis: {} },
    { ...bay('tight', rect(2, 0, 4, 3), { permanentKNm2: 1.7 }), basis: {} },
  ];
  const text = lines(sceneOf({ tolerance: { thicknessMm: 20, densityPercent: 10 }, deck: { bays } }));
  const from = text.findIndex((line) => line.startsWith('Tolerances'));
  expect(text.slice(from + 3, from + 5)).toEqual([
    'tight 62.3 % 86.6 % 114.3 % could go over, NOT CONFIRMED',
    'wide 26.5 % 36.8 % 48.6 % NOT CONFIRMED',
  ]);
});

it('probed depths with what they mean', () => {
  // 130 mm found, 100 planned: 0.03 · 1500 · 9.81/1000 = 0.441, 1.4715 + 0.441 = 1.913 of 12
  const probes = [
    { id: 'P1', at: [1, 1], measuredMm: 130 },
    { id: 'P2', at: [2, 1], measuredMm: 90, layer: 'soil' },
    { id: 'P3', at: [9, 9], measuredMm: 90 },
    { id: 'P4', at: [1, 1], measuredMm: 90, layer: 'light' },
  ] as const;
  const text = lines(sceneOf({ probes }));
  const from = text.findIndex((line) => line.startsWith('As laid'));
  expect(text.slice(from + 1, from + 6)).toEqual([
    'probe zone layer planned mm measured difference kN/m² bay then kN/m² use',
    'P1 Z1 whole 100 130 +30 +0.44 A1 1.91 15.9 % counted as soil',
    'P2 Z1 soil 100 90 -10 -0.15 A1 1.32 11.0 %',
    'P3 - whole - 90 - - - - - no zone there',
    'P4 - light - 90 - - A1 - - no zone with such a layer there',
  ]);
});
